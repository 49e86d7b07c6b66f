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

/** Reads a figure as written. Results are kept by text, for the same few sizes recur all over a survey. */
export function parseFigure(written: string): FigureResult {
    const known = kept.get(written);
    if (known) {
        return known;
    }
    const result = read(written.trim());
    if (kept.size >= keptAtMost) {
        kept.clear();
    }
    kept.set(written, result);
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
            return error.suggestion === undefined ? { ok: false, problem: error.message } : { ok: false, problem: error.message, suggestion: error.suggestion };
        }
        throw error;
    }
}

function readFigure(written: string): Figure {
    const date = /^(\d{4})-(\d{2})(?:-(\d+))?$/.exec(written);
    if (date) {
        return readDate(written, Number(date[1]), Number(date[2]), date[3]);
    }
    const time = /^(\d{1,2}):(\d{2})$/.exec(written);
    if (time) {
        const hours = Number(time[1]);
        const minutes = Number(time[2]);
        if (hours > 23 || minutes > 59) {
            throw new Problem(`${written} is no time of day; write it from 00:00 to 23:59.`);
        }
        return { kind: 'quantity', dimension: 'time-of-day', si: hours * 3600 + minutes * 60, unit: '', value: hours + minutes / 60, written };
    }
    const range = /^(.*?)\s*\.\.\s*(.*)$/s.exec(written);
    if (range) {
        return readRange(written, range[1] ?? '', range[2] ?? '');
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

/** A single number with its unit, or feet and inches. */
function readOne(written: string, borrowed?: string): One {
    const compound = /^(.+?)\s*(ft|feet|foot|′|lb|lbs)\s*([\d½¼¾⅓⅔⅛⅜⅝⅞].*?)\s*(in|inch|inches|″|oz)$/u.exec(written);
    if (compound) {
        const large = units.get(compound[2] ?? '');
        const small = units.get(compound[4] ?? '');
        if (large && small && large.dimension === small.dimension) {
            const first = readNumber(compound[1] ?? '', written);
            const second = readNumber(compound[3] ?? '', written);
            const si = (Math.abs(first) * large.factor + second * small.factor) * (first < 0 || Object.is(first, -0) ? -1 : 1);
            return { head: { dimension: large.dimension, unit: large.name }, si, value: si / large.factor };
        }
    }
    const split = /^([-−]?(?:\d[\d.,]*(?:(?:-|\s+)?(?:\d+\/\d+|[½¼¾⅓⅔⅛⅜⅝⅞⅙⅚⅕⅖⅗⅘]))?(?:\/\d+)?(?:[eE][-+]?\d+(?![\p{L}\d]))?(?::1)?|\.\d+|[½¼¾⅓⅔⅛⅜⅝⅞⅙⅚⅕⅖⅗⅘]))\s*(.*)$/su.exec(written);
    if (!split) {
        throw new Problem(written === '' ? 'A figure is missing here.' : `${written} is no figure Garboard can read.`);
    }
    const numberText = split[1] ?? '';
    const word = (split[2] ?? '') || (borrowed ?? '');
    if (word === 'AWG' || word === 'awg') {
        return readGauge(numberText, written);
    }
    const value = readNumber(numberText, written);
    if (word === '') {
        return { head: { dimension: 'number', unit: '' }, si: value, value };
    }
    const unit = units.get(word);
    if (unit) {
        return { head: { dimension: unit.dimension, unit: unit.name }, si: value * unit.factor + (unit.offset ?? 0), value };
    }
    if (/^[A-Z]{3}$/.test(word)) {
        return { head: { dimension: 'money', unit: word, currency: word }, si: value, value };
    }
    const close = nearestUnit(word);
    throw new Problem(`${word} is not a unit Garboard knows${close === undefined ? '' : `; did you mean ${close}`}.`.replace(/\.$/, close === undefined ? '.' : '?'),
        close === undefined ? undefined : `${numberText} ${close}`);
}

/** American wire gauge to area: diameter in inches 0.005 x 92^((36-n)/39) (ASTM B258). */
function readGauge(numberText: string, written: string): One {
    const aught = /^([1-4])\/0$/.exec(numberText);
    const gauge = aught ? 1 - Number(aught[1]) : Number(numberText);
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
        const groups = /^\d{1,3}(,\d{3})+(\.\d+)?$/.test(body);
        const rest = written.slice(written.indexOf(text) + text.length);
        if (groups) {
            throw new Problem(`${text} can be read two ways; write ${body.replaceAll(',', '')} without a comma, or ${body.replace(',', '.')} if the comma is a decimal one.`);
        }
        const meant = body.replace(',', '.');
        throw new Problem(`${text} has a decimal comma; write ${negative ? '-' : ''}${meant}.`, /^\d+\.\d+$/.test(meant) ? `${negative ? '-' : ''}${meant}${rest}` : undefined);
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

function readRange(written: string, first: string, second: string): QuantityFigure {
    if (second.trim() === '') {
        throw new Problem(`${written} has no upper end; write it as 250 USD..400 USD.`);
    }
    const high = readOne(second);
    let low = readOne(first);
    if (low.head.unit === '' && high.head.unit !== '') {
        low = readOne(first, high.head.unit);
    }
    const upper = high.head.unit === '' && low.head.unit !== '' ? readOne(second, low.head.unit) : high;
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
    const margin = readOne(second);
    let main = readOne(first);
    if (main.head.unit === '' && margin.head.unit !== '') {
        main = readOne(first, margin.head.unit);
    }
    if (margin.head.unit !== '' && main.head.dimension !== margin.head.dimension && margin.head.dimension !== 'fraction') {
        throw new Problem(`${written} gives ${name(main.head)} with a tolerance in ${name(margin.head)}.`);
    }
    const unit = units.get(main.head.unit);
    const marginUnit = units.get(margin.head.unit) ?? unit;
    const tolerance = margin.head.dimension === 'fraction' && main.head.dimension !== 'fraction' ? Math.abs(main.si) * margin.si
        : Math.abs(margin.value) * (marginUnit?.factor ?? 1);
    return { kind: 'quantity', ...main.head, si: main.si, value: main.value, tolerance, written };
}

const name = (head: Head): string => head.dimension === 'money' ? `an amount in ${head.unit}` : dimensionTitle(head.dimension).split(',')[0] ?? head.dimension;

function readDate(written: string, year: number, month: number, dayText: string | undefined): DateFigure {
    if (month < 1 || month > 12) {
        throw new Problem(`${written} has no month ${String(month).padStart(2, '0')}; write the year, the month and the day, as in 2026-10-06.`);
    }
    if (dayText === undefined) {
        return { kind: 'date', year, month, precision: 'month', written, iso: written };
    }
    const day = Number(dayText);
    const days = new Date(Date.UTC(year, month, 0)).getUTCDate();
    if (dayText.length !== 2 || day < 1 || day > days) {
        throw new Problem(`${written} is no day of that month; write the day with two figures, from 01 to ${days}.`);
    }
    return { kind: 'date', year, month, day, precision: 'day', written, iso: written };
}

/** The known unit nearest to a misspelt one. */
export function nearestUnit(word: string): string | undefined {
    const names = [...units.keys()].filter(n => n.length > 1);
    const lower = word.toLowerCase();
    const exact = names.find(n => n.toLowerCase() === lower);
    const found = exact ?? nearest(word, names);
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
