/**
 * Whole numbers in English words, both ways, and amounts of money in a sentence, in figures or in words. Words follow
 * the usage of checks and contracts, American scale: a thousand million is a billion.
 */
import { ToWords } from 'to-words/en-US';

const small = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve', 'thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen'];
const tens = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];
const scales: readonly (readonly [word: string, size: number])[] = [['billion', 1e9], ['million', 1e6], ['thousand', 1000]];

/** Tens and units, which English joins by a hyphen. */
const hyphenated = new RegExp(`\\b(${tens.slice(2).join('|')}) (${small.slice(1, 10).join('|')})\\b`, 'g');

const smallValues = new Map(small.map((word, value) => [word, value]));
const tensValues = new Map(tens.flatMap((word, ten) => word === '' ? [] : [[word, ten * 10] as const]));

const english = new ToWords();
/** How far words go, both ways: under a million million. */
const most = 1e12;

/**
 * A whole number in words, as an opinion of value is written beside its figures: "two hundred six thousand ten". The
 * library gives the words, here set with hyphens and in small letters; "and" is kept for the hundredths, as on checks.
 * Undefined for a number below zero, with decimals, or of a million million and more.
 */
export function numberInWords(value: number): string | undefined {
    if (!Number.isInteger(value) || value < 0 || value >= most) {
        return undefined;
    }
    return english.convert(value).toLowerCase().replace(hyphenated, '$1-$2');
}

/** Currencies whose name in words the reader below knows; any other stands by its code. */
const currencyNames: ReadonlyMap<string, readonly [one: string, many: string]> = new Map([
    ['USD', ['US dollar', 'US dollars']], ['EUR', ['euro', 'euros']], ['GBP', ['pound sterling', 'pounds sterling']],
]);

/**
 * An amount of money in words with its currency, hundredths as on checks: "seventy-six thousand and 50/100 US dollars".
 * Undefined as for `numberInWords`, save that hundredths may be.
 */
export function amountInWords(amount: number, currency = ''): string | undefined {
    const cents = Math.round(amount * 100);
    const words = numberInWords(Math.floor(cents / 100));
    if (words === undefined) {
        return undefined;
    }
    const rest = cents % 100;
    const [one, many] = currencyNames.get(currency) ?? [currency, currency];
    return `${words}${rest === 0 ? '' : ` and ${String(rest).padStart(2, '0')}/100`} ${cents === 100 ? one : many}`.trim();
}

/** A number read from words and how many of them it took. */
interface Read {
    readonly value: number;
    readonly next: number;
}

function belowHundred(words: readonly string[], at: number): Read | undefined {
    const word = words[at] ?? '';
    const ten = tensValues.get(word);
    if (ten !== undefined) {
        const unit = smallValues.get(words[at + 1] ?? '');
        return unit !== undefined && unit > 0 && unit < 10 ? { value: ten + unit, next: at + 2 } : { value: ten, next: at + 1 };
    }
    const value = smallValues.get(word);
    return value === undefined ? undefined : { value, next: at + 1 };
}

/** Skips "and" where a number goes on after it. */
const after = (words: readonly string[], at: number): number => words[at] === 'and' ? at + 1 : at;

function belowThousand(words: readonly string[], at: number): Read | undefined {
    const first = words[at] === 'a' ? { value: 1, next: at + 1 } : belowHundred(words, at);
    if (!first || words[first.next] !== 'hundred' || first.value === 0) {
        return words[at] === 'a' && !scales.some(([word]) => word === words[at + 1]) ? undefined : first;
    }
    const hundreds = first.value * 100;
    const rest = belowHundred(words, after(words, first.next + 1));
    return rest && rest.value > 0 ? { value: hundreds + rest.value, next: rest.next } : { value: hundreds, next: first.next + 1 };
}

/** Reads the number that starts at a word, as far as it goes. */
function readNumber(words: readonly string[], start: number): Read | undefined {
    let total = 0;
    let at = start;
    let bound = Number.POSITIVE_INFINITY;
    let isRead = false;
    for (;;) {
        const part = belowThousand(words, isRead ? after(words, at) : at);
        if (!part || (isRead && part.value === 0)) {
            break;
        }
        const scale = scales.find(([word]) => word === words[part.next]);
        const size = scale?.[1] ?? 1;
        if (size >= bound || part.value * size >= bound) {
            break;
        }
        total += part.value * size;
        at = scale ? part.next + 1 : part.next;
        isRead = true;
        if (!scale || part.value === 0) {
            break;
        }
        bound = size;
    }
    return isRead ? { value: total, next: at } : undefined;
}

const wordsOf = (text: string): string[] => text.toLowerCase().match(/[a-z]+/g) ?? [];

/** The number that words say, as "seventy-six thousand five hundred"; undefined for anything else. */
export function numberFromWords(text: string): number | undefined {
    if (/[^A-Za-z\s,-]/.test(text)) {
        return undefined;
    }
    const words = wordsOf(text);
    const read = readNumber(words, 0);
    return read?.next === words.length ? read.value : undefined;
}

/** An amount in a sentence: its place, and the currencies it may be in; none where none is written. */
export interface AmountInText {
    readonly amount: number;
    readonly currencies?: readonly string[];
    readonly isInWords: boolean;
    readonly start: number;
    readonly end: number;
}

const dollars = ['USD', 'CAD', 'AUD', 'NZD', 'BSD', 'BBD', 'BMD', 'HKD', 'SGD', 'XCD'];
const currencyWords: readonly (readonly [pattern: RegExp, currencies: readonly string[]])[] = [
    [/^(?:U\.?S\.?A?\.?|United States)\s+dollars?\b/i, ['USD']], [/^US\$/, ['USD']], [/^dollars?\b/i, dollars], [/^\$/, dollars],
    [/^euros?\b/i, ['EUR']], [/^€/, ['EUR']], [/^pounds?\s+sterling\b/i, ['GBP']], [/^£/, ['GBP']],
];

/** The currency written at the start of a text, with its length. */
function currencyAt(text: string): { readonly currencies: readonly string[]; readonly length: number } | undefined {
    const code = /^[A-Z]{3}\b/.exec(text);
    if (code) {
        return { currencies: [code[0]], length: 3 };
    }
    for (const [pattern, currencies] of currencyWords) {
        const match = pattern.exec(text);
        if (match) {
            return { currencies, length: match[0].length };
        }
    }
    return undefined;
}

/** The currency written at the end of a text, before a figure. */
function currencyBefore(text: string): { readonly currencies: readonly string[]; readonly length: number } | undefined {
    const match = /(?:\b[A-Z]{3}\s?|US\$\s?|[$€£]\s?)$/.exec(text);
    const known = match ? currencyAt(match[0].trim()) : undefined;
    return match && known ? { currencies: known.currencies, length: match[0].length } : undefined;
}

/** Amounts of money in a sentence, in figures with a currency, or in words with a currency or of a hundred upwards. */
export function amountsInText(text: string): AmountInText[] {
    return [...amountsInFigures(text), ...amountsInWords(text)].sort((a, b) => a.start - b.start);
}

function amountsInFigures(text: string): AmountInText[] {
    const found: AmountInText[] = [];
    for (const match of text.matchAll(/(?<![\d.,/-])(?:\d{1,3}(?:[,\u00a0\u202f ]\d{3})+|\d+)(?:\.\d{1,2})?(?![\d/]|[.,]\d)/g)) {
        const start = match.index;
        const scaled = /^\s?(billion|million|thousand)\b/i.exec(text.slice(start + match[0].length));
        const end = start + match[0].length + (scaled?.[0].length ?? 0);
        const scale = scaled ? (scales.find(([word]) => word === scaled[1]?.toLowerCase())?.[1] ?? 1) : 1;
        const before = currencyBefore(text.slice(0, start));
        const gap = /^[ \u00a0\u202f]?/.exec(text.slice(end))?.[0].length ?? 0;
        const behind = currencyAt(text.slice(end + gap));
        const currency = behind ?? before;
        if (currency) {
            found.push({
                amount: Math.round(Number(match[0].replace(/[,\u00a0\u202f ]/g, '')) * scale * 100) / 100, currencies: currency.currencies, isInWords: false,
                start: before ? start - before.length : start, end: behind ? end + gap + behind.length : end,
            });
        }
    }
    return found;
}

function amountsInWords(text: string): AmountInText[] {
    const tokens = [...text.matchAll(/[A-Za-z]+/g)].map(match => ({ word: match[0].toLowerCase(), start: match.index, end: match.index + match[0].length }));
    const isNext = (index: number) => /^(?:[\s-]+|,\s+)$/.test(text.slice(tokens[index - 1]?.end ?? 0, tokens[index]?.start ?? 0));
    const found: AmountInText[] = [];
    for (let at = 0; at < tokens.length;) {
        let until = at + 1;
        while (until < tokens.length && isNext(until)) {
            until++;
        }
        const read = readNumber(tokens.slice(at, until).map(token => token.word), 0);
        const last = read ? tokens[at + read.next - 1] : undefined;
        const first = tokens[at];
        if (!read || !last || !first) {
            at++;
            continue;
        }
        const hundredths = /^(?:\s+and)?\s+\d{1,2}\/100/.exec(text.slice(last.end))?.[0] ?? '';
        const blank = /^\s*/.exec(text.slice(last.end + hundredths.length))?.[0].length ?? 0;
        const currencyStart = last.end + hundredths.length + blank;
        const currency = currencyAt(text.slice(currencyStart));
        if (currency || read.value >= 100) {
            const cents = Number(/(\d{1,2})\/100/.exec(hundredths)?.[1] ?? 0) / 100;
            found.push({
                amount: read.value + cents, ...(currency ? { currencies: currency.currencies } : {}), isInWords: true,
                start: first.start, end: currency ? currencyStart + currency.length : last.end + hundredths.length,
            });
        }
        at += read.next;
    }
    return found;
}
