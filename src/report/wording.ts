/** How recorded values read in print: figures, dates, words, names of properties, sums of money. */
import { inBothSystems, otherSystem, type DateFigure, type Figure, type QuantityFigure } from '../quantities/index.js';
import type { PropertyType, Value, Vocabulary, Word } from '../record/model.js';
import { capital } from '../checks/phrasing.js';

export { capital, lowerFirst as inSentence } from '../checks/phrasing.js';

const months = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

/** "6 October 2026", "May 2009" or "1989": readable on either side of an ocean without mistaking day and month. */
export function dateText(date: DateFigure): string {
    const month = months[date.month - 1];
    if (date.precision === 'year' || month === undefined) {
        return String(date.year);
    }
    return date.precision === 'month' || date.day === undefined ? `${month} ${date.year}` : `${date.day} ${month} ${date.year}`;
}

/** The date so many days after another, by the calendar; undefined where the day is not known. */
export function daysAfter(date: DateFigure, days: number): string | undefined {
    if (date.precision !== 'day' || date.day === undefined || !Number.isFinite(days)) {
        return undefined;
    }
    const due = new Date(Date.UTC(date.year, date.month - 1, date.day) + Math.round(days) * 86_400_000);
    const month = months[due.getUTCMonth()];
    return month === undefined ? undefined : `${due.getUTCDate()} ${month} ${due.getUTCFullYear()}`;
}

const grouped = (digits: string) => digits.replace(/\B(?=(\d{3})+$)/g, ',');

/** Units and figures as printed: degrees, raised powers, thousands parted, ranges in words. */
function typeset(text: string): string {
    return text
        .replace(/(?<![\w.,/-])\d{5,}(?![\d/-])/g, grouped)
        .replace(/(\d) ([FC])(?=$|[\s),.])/g, '$1 °$2')
        .replace(/\b(k?m|ft|in|cm|mm)([23])\b/g, (_, unit: string, power: string) => `${unit}${power === '2' ? '²' : '³'}`)
        .replace(/ deg\b/g, '°')
        .replace(/ %/g, ' %')
        .replace(/\s*\+\/-\s*/g, ' ± ')
        .replace(/\s*\.\.\s*/g, ' to ')
        .replace(/(^|[\s(])-(?=\d)/g, '$1−');
}

/** An amount of money, thousands parted: "76,000 USD". */
export function moneyText(amount: number, currency = ''): string {
    const whole = Math.abs(amount - Math.round(amount)) < 0.005;
    const [units = '0', cents] = Math.abs(amount).toFixed(whole ? 0 : 2).split('.');
    return `${amount < 0 ? '−' : ''}${grouped(units)}${cents === undefined ? '' : `.${cents}`}${currency === '' ? '' : ` ${currency}`}`;
}

function moneyFigure(figure: QuantityFigure): string {
    return figure.low !== undefined && figure.high !== undefined
        ? `${moneyText(figure.low)} to ${moneyText(figure.high, figure.currency)}`
        : moneyText(figure.si, figure.currency);
}

/** A figure in both unit systems, as printed: "1-1/2 in (38.1 mm)", "24,000 lb (10,900 kg)", "6 October 2026". */
export function figureText(figure: Figure): string {
    if (figure.kind === 'date') {
        return dateText(figure);
    }
    return figure.dimension === 'money' ? moneyFigure(figure) : typeset(inBothSystems(figure));
}

/** The figure as written, and in the other system where there is one, for narrow tables. */
export function figureParts(figure: Figure): { readonly written: string; readonly other?: string } {
    if (figure.kind === 'date' || figure.dimension === 'money') {
        return { written: figureText(figure) };
    }
    const other = otherSystem(figure);
    return { written: typeset(figure.written), ...(other === undefined ? {} : { other: typeset(other) }) };
}

/** Computed text, such as a flow in both systems, with the same typography as recorded figures. */
export const computedText = typeset;

/** The time by a camera's clock: "5 October 2026 at 08:52:10, clock at UTC −04:00". What is not written so stays as it is. */
export function takenInWords(taken: string): string {
    const [, year, month, day, time, offset] = /^(\d{4})-(\d{2})-(\d{2})[ T](\d{2}:\d{2}(?::\d{2})?)(?: ?([+-]\d{2}:\d{2}|Z))?$/.exec(taken) ?? [];
    return year === undefined || time === undefined ? taken
        : `${Number(day)} ${months[Number(month) - 1] ?? month} ${year} at ${time}${offset === undefined ? '' : `, clock at UTC${offset === 'Z' ? '' : ` ${offset.replace('-', '−')}`}`}`;
}

const spoken: Readonly<Record<string, string>> = {
    'vhf': 'VHF', 'dc': 'DC', 'ac': 'AC', 'npt': 'NPT', 'nps': 'NPS', 'bspp': 'BSPP', 'bspt': 'BSPT', 'agm': 'AGM', 'b-i': 'B-I', 'b-ii': 'B-II', 'co2': 'CO2', 're-inspection': 're-inspection',
};

/** `not-proved` → "not proved". */
export function wordText(word: string): string {
    return spoken[word] ?? word.replaceAll('-', ' ');
}

/** `within-days 30` → "within 30 days". */
export function wordWithAmount({ word, amount }: Word): string {
    if (word === 'within-days') {
        const days = amount ? daysOf(amount.figure) : undefined;
        return days === undefined ? 'within a number of days not recorded' : `within ${days} ${days === 1 ? 'day' : 'days'}`;
    }
    return amount ? `${wordText(word)} ${figureText(amount.figure)}` : wordText(word);
}

/** Days of a figure written with or without a unit of time. */
export function daysOf(figure: QuantityFigure): number {
    return figure.dimension === 'time' ? Math.round(figure.si / 86_400) : figure.si;
}

/** `below-waterline` → "Below waterline". */
export const propertyTitle = (name: string): string => capital(spoken[name] ?? name.replaceAll('-', ' '));

/** Name in print of a word in a table: its label in the word list where that is a label, else the word itself. */
export function labelOfWord(value: Word, type: PropertyType | undefined, vocabulary: Vocabulary): string {
    const meaning = type ? vocabulary.wordLists.get(type.type)?.words.get(value.word) : undefined;
    return meaning !== undefined && meaning !== '' && !meaning.trim().endsWith('.') && !value.amount ? meaning : wordWithAmount(value);
}

export const isWord = (value: Value | undefined): value is Word => value?.type === 'word';

export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
