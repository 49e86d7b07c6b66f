/** Reads a figure: what it says in SI, and how it was written. */
import { nearest } from './nearest.js';
import { allUnits, dimensionTitle, units, type Dimension, type Unit } from './units.js';

export interface QuantityFigure {
    readonly kind: 'quantity';
    readonly dimension: Dimension;
    /** Value in SI; of a range its middle. Money: the amount. */
    readonly si: number;
    /** The unit as the library names it; empty where none is written. */
    readonly unit: string;
    readonly currency?: string;
    /** The first number in its unit; feet and inches count as feet. */
    readonly value: number;
    readonly low?: number;
    readonly high?: number;
    readonly tolerance?: number;
    readonly written: string;
}

export interface DateFigure {
    readonly kind: 'date';
    readonly year: number;
    readonly month: number;
    readonly day?: number;
    readonly precision: 'day' | 'month' | 'year';
    readonly written: string;
    readonly iso: string;
}

export type Figure = QuantityFigure | DateFigure;

export type FigureResult =
    | { readonly ok: true; readonly figure: Figure }
    | { readonly ok: false; readonly problem: string; readonly suggestion?: string };

const vulgarValues: Readonly<Record<string, number>> = {
    '½': 1 / 2, '¼': 1 / 4, '¾': 3 / 4, '⅓': 1 / 3, '⅔': 2 / 3, '⅛': 1 / 8, '⅜': 3 / 8, '⅝': 5 / 8, '⅞': 7 / 8, '⅙': 1 / 6, '⅚': 5 / 6, '⅕': 1 / 5, '⅖': 2 / 5, '⅗': 3 / 5, '⅘': 4 / 5,
};

const kept = new Map<string, FigureResult>();
const keptAtMost = 20_000;
/** No figure is as long as this; anything longer is text that went astray. */
const longest = 120;

/** Reads a figure as written. Results are kept by text, for the same few sizes recur all over a survey. */
export function parseFigure(written: string): FigureResult {
    const known = kept.get(written);
    if (known) {
        return known;
    }
    // A copy of its own: a slice of a document's text would keep the whole document in memory as long as it is kept.
    const own = (' ' + written).slice(1);
    const result = read(own.trim());
    if (kept.size >= keptAtMost) {
        kept.clear();
    }
    if (own.length <= longest) {
        kept.set(own, result);
    }
    return result;
}

class Problem extends Error {
    constructor(message: string, readonly suggestion?: string) {
        super(message);
    }
}

function read(written: string): FigureResult {
    try {
        return { ok: true, figure: readFigure(written) };
    } catch (error) {
        if (error instanceof Problem) {
            const suggestion = sound(error.suggestion, written);
            return suggestion === undefined ? { ok: false, problem: error.message } : { ok: false, problem: error.message, suggestion };
        }
        throw error;
    }
}

/** A text is proposed only if it can be read itself; one that has a second fault is mended further. */
function sound(suggestion: string | undefined, written: string): string | undefined {
    if (suggestion === undefined || suggestion === written || suggestion.length > longest) {
        return undefined;
    }
    const result = read(suggestion);
    return result.ok ? suggestion : result.suggestion;
}

/** Reads part of a figure, so that what is proposed for the part becomes a proposal for the whole. */
function readPart(part: string, whole: string, borrowed?: string): One {
    try {
        return readOne(part, borrowed);
    } catch (error) {
        if (error instanceof Problem && error.suggestion !== undefined) {
            const { message, suggestion } = error;
            throw new Problem(message, whole.endsWith(part) && !whole.startsWith(part) ? whole.slice(0, whole.length - part.length) + suggestion : whole.replace(part, () => suggestion));
        }
        throw error;
    }
}

function readFigure(written: string): Figure {
    if (written.length > longest) {
        throw new Problem(`${written.slice(0, 30)}… is too long for a figure.`);
    }
    const date = /^(\d{4})-(\d{1,2})(?:-(\d+))?$/.exec(written);
    if (date) {
        return readDate(written, date[1] ?? '', date[2] ?? '', date[3]);
    }
    const otherDate = /^(\d{1,2})\/(\d{1,2})\s*\/(\d{4})$/.exec(written);
    if (otherDate) {
        throw dateInOtherOrder(written, Number(otherDate[1]), Number(otherDate[2]), otherDate[3] ?? '');
    }
    const range = /^(.*?)\s*\.\.(\.?)\s*(.*)$/s.exec(written);
    if (range) {
        return readRange(written, range[1] ?? '', range[2] ?? '', range[3] ?? '');
    }
    const tolerance = /^(.*?)\s*(?:\+\/-|±)\s*(.*)$/s.exec(written);
    if (tolerance) {
        return readTolerance(written, tolerance[1] ?? '', tolerance[2] ?? '');
    }
    const one = readOne(written);
    return { kind: 'quantity', ...one.head, si: one.si, value: one.value, written };
}

interface Head {
    readonly dimension: Dimension;
    readonly unit: string;
    readonly currency?: string;
}

interface One {
    readonly head: Head;
    readonly si: number;
    readonly value: number;
}

/** A single number with its unit, feet and inches, or a time of day. */
function readOne(written: string, borrowed?: string): One {
    const time = /^(\d{1,2}):(\d{2})$/.exec(written);
    if (time) {
        const hours = Number(time[1]);
        const minutes = Number(time[2]);
        if (hours > 23 || minutes > 59) {
            throw new Problem(`${written} is no time of day; write it from 00:00 to 23:59.`);
        }
        return { head: { dimension: 'time-of-day', unit: '' }, si: hours * 3600 + minutes * 60, value: hours + minutes / 60 };
    }
    const split = /^([-−]?(?:\d[\d.,]*(?:(?:-|\s+)?(?:\d+\/\d+|[½¼¾⅓⅔⅛⅜⅝⅞⅙⅚⅕⅖⅗⅘]))?(?:\/\d+)?(?:[eE][-+]?\d+(?![\p{L}\d]))?(?::1)?|\.\d+|[½¼¾⅓⅔⅛⅜⅝⅞⅙⅚⅕⅖⅗⅘]))\s*(.*)$/su.exec(written);
    // A rest that is a unit of its own is no inches: 100 ft3/min.
    const compound = units.has(split?.[2] ?? '') ? undefined : /^(.+?)\s*(ft|feet|foot|′|lb|lbs)\s*([\d½¼¾⅓⅔⅛⅜⅝⅞].*?)\s*(in|inch|inches|″|oz)$/u.exec(written);
    if (compound) {
        const large = units.get(compound[2] ?? '');
        const small = units.get(compound[4] ?? '');
        if (large && small && large.dimension === small.dimension) {
            const first = readNumber(compound[1] ?? '', written);
            const second = readNumber(compound[3] ?? '', written);
            const inLarge = Math.round(large.factor / small.factor);
            if (second >= inLarge) {
                throw new Problem(`${written} counts ${compound[3]} ${compound[4]} beside ${compound[2]}; ${inLarge} ${small.name} make one ${large.name}.`);
            }
            const si = (Math.abs(first) * large.factor + second * small.factor) * (first < 0 || Object.is(first, -0) ? -1 : 1);
            return { head: { dimension: large.dimension, unit: large.name }, si, value: si / large.factor };
        }
    }
    if (!split) {
        throw new Problem(written === '' ? 'A figure is missing here.' : `${written} is no figure Garboard can read.`);
    }
    const numberText = split[1] ?? '';
    const word = (split[2] ?? '').replace(/\s+/g, ' ') || (borrowed ?? '');
    if (word === 'AWG' || word === 'awg') {
        return readGauge(numberText, written);
    }
    const value = readNumber(numberText, written);
    if (word === '') {
        return { head: { dimension: 'number', unit: '' }, si: value, value };
    }
    const unit = units.get(word);
    if (unit) {
        const si = value * unit.factor + (unit.offset ?? 0);
        if (unit.dimension === 'temperature' && si < -1e-9) {
            throw new Problem(`${written} is colder than anything can be (-273.15 C, -459.67 F).`);
        }
        return { head: { dimension: unit.dimension, unit: unit.name }, si, value };
    }
    // Any three capitals are a currency, unless they are a unit in capitals: 2800 RPM.
    if (/^[A-Z]{3}$/.test(word) && !inOtherCase(word)) {
        return { head: { dimension: 'money', unit: word, currency: word }, si: value, value };
    }
    const hyphen = /^\d{4}-\d/.test(written) ? undefined : /^([^-–+±]*?)\s*[-–]\s*([-−]?[\d.½¼¾⅓⅔⅛⅜⅝⅞⅙⅚⅕⅖⅗⅘].*)$/su.exec(word);
    if (hyphen) {
        const meant = `${numberText}${hyphen[1] === '' ? '' : ` ${hyphen[1]}`}..${hyphen[2]}`;
        throw new Problem(`${written} has a hyphen where a range has two dots; write ${meant}.`, meant);
    }
    const close = nearestUnit(word);
    throw new Problem(`${word} is not a unit Garboard knows${close === undefined ? '' : `; did you mean ${close}`}.`.replace(/\.$/, close === undefined ? '.' : '?'),
        close === undefined ? undefined : `${numberText} ${close}`);
}

/** American wire gauge to area: diameter in inches 0.005 x 92^((36-n)/39) (ASTM B258). */
function readGauge(numberText: string, written: string): One {
    // Larger than 0 they are counted in noughts: 3/0 is also written 000.
    const aught = /^([1-4])\/0$/.exec(numberText);
    const gauge = aught ? 1 - Number(aught[1]) : /^0{2,4}$/.test(numberText) ? 1 - numberText.length : Number(numberText);
    if (!Number.isInteger(gauge) || gauge > 40 || gauge < -3) {
        throw new Problem(`${written} is no wire gauge; write 14 AWG or 2/0 AWG.`);
    }
    const diameterM = 0.005 * 92 ** ((36 - gauge) / 39) * 0.0254;
    return { head: { dimension: 'area', unit: 'AWG' }, si: Math.PI / 4 * diameterM ** 2, value: gauge };
}

function readNumber(text: string, written: string): number {
    const negative = /^[-−]/.test(text);
    const body = negative ? text.slice(1).trim() : text.trim();
    const sign = negative ? -1 : 1;
    if (body.endsWith(':1')) {
        return sign * readNumber(body.slice(0, -2), written);
    }
    if (body.includes(',')) {
        throw commaProblem(text, body, negative ? '-' : '', written);
    }
    const mixed = /^(?:(\d+)(?:-|\s+))?(\d+)\/(\d+)$/.exec(body);
    if (mixed) {
        const denominator = Number(mixed[3]);
        if (denominator === 0) {
            throw new Problem(`${text} divides by zero.`);
        }
        return sign * (Number(mixed[1] ?? 0) + Number(mixed[2]) / denominator);
    }
    const vulgar = /^(\d*)(?:-|\s*)([½¼¾⅓⅔⅛⅜⅝⅞⅙⅚⅕⅖⅗⅘])$/u.exec(body);
    if (vulgar) {
        return sign * (Number(vulgar[1] || 0) + (vulgarValues[vulgar[2] ?? ''] ?? 0));
    }
    const value = Number(body);
    if (!/^(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?$/.test(body) || !Number.isFinite(value)) {
        throw new Problem(`${text} is no number Garboard can read; write 38.1, 1-1/2 or 1 1/2.`);
    }
    return sign * value;
}

/** A comma is either a decimal one or parts thousands; only where both are possible is nothing proposed. */
function commaProblem(text: string, body: string, sign: string, written: string): Problem {
    const instead = (meant: string): string => written.replace(text, () => `${sign}${meant}`);
    if (/^\d{1,3},\d{3}$/.test(body)) {
        return new Problem(`${text} can be read two ways; write ${sign}${body.replace(',', '')} without a comma, or ${sign}${body.replace(',', '.')} if the comma is a decimal one.`);
    }
    if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(body)) {
        const meant = body.replaceAll(',', '');
        return new Problem(`${text} has commas between its thousands; write ${sign}${meant}.`, instead(meant));
    }
    if (/^\d{1,3}(\.\d{3})+,\d+$/.test(body)) {
        const meant = body.replaceAll('.', '').replace(',', '.');
        return new Problem(`${text} has a decimal comma; write ${sign}${meant}.`, instead(meant));
    }
    if (/^\d+,\d+$/.test(body)) {
        const meant = body.replace(',', '.');
        return new Problem(`${text} has a decimal comma; write ${sign}${meant}.`, instead(meant));
    }
    return new Problem(`${text} has commas that Garboard cannot read; write 38.1 with a decimal point, or 38100 without a separator.`);
}

function readRange(written: string, first: string, thirdDot: string, second: string): QuantityFigure {
    if (second.trim() === '') {
        throw new Problem(`${written} has no upper end; write it as 250 USD..400 USD.`);
    }
    if (thirdDot !== '' && /^\d/.test(second)) {
        throw new Problem(`${written} has three dots; write a range with two.`, `${first}..${second}`);
    }
    if (/^\d{4}-\d/.test(first) || /^\d{4}-\d/.test(second)) {
        throw new Problem(`${written} runs over several dates; write one date, or one entry for each.`);
    }
    const high = readPart(thirdDot + second, written);
    let low = readPart(first, written);
    if (low.head.unit === '' && high.head.unit !== '') {
        low = readPart(first, written, high.head.unit);
    }
    const upper = high.head.unit === '' && low.head.unit !== '' ? readPart(thirdDot + second, written, low.head.unit) : high;
    if (low.head.dimension !== upper.head.dimension || low.head.currency !== upper.head.currency) {
        throw new Problem(`${written} runs from ${name(low.head)} to ${name(upper.head)}; both ends must be of one kind.`);
    }
    if (low.si > upper.si) {
        throw new Problem(`${written} runs downwards; write the smaller end first.`, `${second.trim()}..${first.trim()}`);
    }
    return { kind: 'quantity', ...low.head, si: (low.si + upper.si) / 2, value: low.value, low: low.si, high: upper.si, written };
}

function readTolerance(written: string, first: string, second: string): QuantityFigure {
    if (second.trim() === '') {
        throw new Problem(`${written} has no tolerance after the sign; write it as 5 mm +/- 0.5 mm.`);
    }
    const margin = readPart(second, written);
    let main = readPart(first, written);
    if (main.head.unit === '' && margin.head.unit !== '') {
        main = readPart(first, written, margin.head.unit);
    }
    if (margin.head.unit !== '' && main.head.dimension !== margin.head.dimension && margin.head.dimension !== 'fraction') {
        throw new Problem(`${written} gives ${name(main.head)} with a tolerance in ${name(margin.head)}.`);
    }
    if (main.head.dimension === 'temperature' && margin.head.dimension === 'fraction') {
        throw new Problem(`${written} gives a temperature with a tolerance in percent; write it in degrees, as 20 C +/- 2 C.`);
    }
    if (main.head.unit === 'AWG' || margin.head.unit === 'AWG') {
        throw new Problem(`${written} gives a wire gauge with a tolerance; gauges are whole sizes.`);
    }
    const unit = units.get(main.head.unit);
    const marginUnit = units.get(margin.head.unit) ?? unit;
    const tolerance = margin.head.dimension === 'fraction' && main.head.dimension !== 'fraction' ? Math.abs(main.si) * margin.si
        : Math.abs(margin.value) * (marginUnit?.factor ?? 1);
    return { kind: 'quantity', ...main.head, si: main.si, value: main.value, tolerance, written };
}

const name = (head: Head): string => head.dimension === 'money' ? `an amount in ${head.unit}` : dimensionTitle(head.dimension).split(',')[0] ?? head.dimension;

/** 10/13/2026 can only be one date; 10/06/2026 may be two. */
function dateInOtherOrder(written: string, first: number, second: number, year: string): Problem {
    const iso = (month: number, day: number): string => `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
    const ways = [...new Set([iso(first, second), iso(second, first)])].filter(way => /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(way));
    return ways.length === 1 ? new Problem(`${written} is not how Garboard writes dates; write ${ways[0]}, the year first.`, ways[0])
        : new Problem(`${written} is not how Garboard writes dates; write ${ways.length === 0 ? 'the year, the month and the day, as 2026-10-06' : ways.join(' or ')}.`);
}

function readDate(written: string, yearText: string, monthText: string, dayText: string | undefined): DateFigure {
    const year = Number(yearText);
    const month = Number(monthText);
    if (month < 1 || month > 12) {
        throw new Problem(`${written} has no month ${monthText.padStart(2, '0')}; write the year, the month and the day, as in 2026-10-06.`);
    }
    if (year < 1000) {
        throw new Problem(`${written} lies in the year ${year}; write the year with four figures, as in 2026-10-06.`);
    }
    const padded = `${yearText}-${monthText.padStart(2, '0')}`;
    if (dayText === undefined) {
        if (monthText.length !== 2) {
            throw new Problem(`${written} has a month of one figure; write ${padded}.`, padded);
        }
        return { kind: 'date', year, month, precision: 'month', written, iso: written };
    }
    const day = Number(dayText);
    const days = new Date(Date.UTC(year, month, 0)).getUTCDate();
    if (dayText.length > 2 || day < 1 || day > days) {
        throw new Problem(`${written} is no day of that month; write the day with two figures, from 01 to ${days}.`);
    }
    if (monthText.length !== 2 || dayText.length !== 2) {
        const meant = `${padded}-${dayText.padStart(2, '0')}`;
        throw new Problem(`${written} needs two figures each for the month and the day; write ${meant}.`, meant);
    }
    return { kind: 'date', year, month, day, precision: 'day', written, iso: written };
}

/** A unit or a usual currency that is this word but for capitals. */
function inOtherCase(word: string): string | undefined {
    const lower = word.toLowerCase();
    const found = lowerNames.get(lower);
    return found ?? (currencies.has(word.toUpperCase()) && word !== word.toUpperCase() ? word.toUpperCase() : undefined);
}

/** First of the units whose name is the same but for capitals: MM is mm, RPM rpm. */
const lowerNames: ReadonlyMap<string, string> = new Map([...units].reverse().map(([name, unit]) => [name.toLowerCase(), unit.name] as const));

const currencies: ReadonlySet<string> = new Set(['USD', 'EUR', 'GBP', 'CAD', 'AUD', 'NZD', 'CHF', 'SEK', 'NOK', 'DKK', 'PLN', 'JPY']);

/** What surveyors write for units that are called otherwise here. */
const meantUnits: ReadonlyMap<string, string> = new Map([
    ['ga', 'AWG'], ['gauge', 'AWG'], ['cc', 'mL'], ['sq-ft', 'ft2'], ['sq-in', 'in2'], ['sq-m', 'm2'], ['cu-ft', 'ft3'], ['yards', 'yd'], ['yard', 'yd'], ['quarts', 'qt'], ['quart', 'qt'],
    ['gals', 'gal'], ['horsepower', 'hp'], ['bhp', 'hp'], ['bars', 'bar'], ['amperes', 'A'], ['kilowatts', 'kW'], ['kph', 'km/h'], ['kmh', 'km/h'], ['ftlb', 'lbf-ft'], ['ft-lb', 'lbf-ft'], ['ft-lbs', 'lbf-ft'],
    ['lb-ft', 'lbf-ft'], ['fl', 'fl-oz'], ['dollars', 'USD'], ['euros', 'EUR'], ['euro', 'EUR'], ['pounds-force', 'lbf'], ['fahrenheit', 'F'], ['celsius', 'C'], ['kelvin', 'K'],
]);

/** The known unit nearest to a misspelt one: other capitals, a usual other name, or a slip or two of spelling. */
export function nearestUnit(word: string): string | undefined {
    const meant = inOtherCase(word) ?? meantUnits.get(word.toLowerCase());
    if (meant !== undefined) {
        return meant;
    }
    // In words of two letters a slip leaves nothing to go by but the first.
    const names = [...units.keys()].filter(name => name.length > 1 && (word.length > 2 || name.charAt(0) === word.charAt(0)));
    const found = nearest(word, names);
    return found === undefined ? undefined : units.get(found)?.name ?? found;
}

/** A value in SI in the unit named. @throws Error for an unknown unit, and for wire gauges. */
export function convertTo(si: number, unitName: string): number {
    const unit: Unit | undefined = units.get(unitName) ?? allUnits.find(u => u.name === unitName);
    if (!unit || Number.isNaN(unit.factor)) {
        throw new Error(`${unitName} is no unit to convert to.`);
    }
    return (si - (unit.offset ?? 0)) / unit.factor;
}
