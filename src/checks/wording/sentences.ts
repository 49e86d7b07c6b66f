/** Sentences of a text with their places, and what a check of wording asks of them. */
import { scanFigure } from '../../quantities/index.js';
import type { ProseEntry } from '../../record/prose-entries.js';

export interface Sentence {
    /** The words said: references and quotations blanked. */
    readonly said: string;
    /** The words as written. */
    readonly raw: string;
    /** Where it begins in the entry's `raw`. */
    readonly start: number;
}

/** An end of a sentence: a stop before a blank and a capital or the end, not after a common abbreviation or an initial. */
const stop = /[.!?](?=\s+[\p{Lu}“"{(]|\s*["”]*\s*$)/gu;
const abbreviated = /(?:\b(?:approx|ca|no|nos|fig|stbd|port|dia|max|min|incl|vs|Mr|Mrs|Ms|Dr|St|Capt|e\.g|i\.e|etc)|\b\p{Lu})$/iu;

export function sentencesOf({ said, raw }: ProseEntry): Sentence[] {
    const sentences: Sentence[] = [];
    let start = 0;
    const push = (end: number) => {
        if (/[\p{L}\p{N}{]/u.test(raw.slice(start, end))) {
            sentences.push({ said: said.slice(start, end), raw: raw.slice(start, end), start });
        }
        start = end;
    };
    for (const match of raw.matchAll(stop)) {
        if (!abbreviated.test(raw.slice(start, match.index)) || /\s*["”]*\s*$/.test(raw.slice(match.index + 1)) && match.index + 3 >= raw.length) {
            push(match.index + 1);
        }
    }
    push(raw.length);
    return sentences;
}

/** A word that turns what follows into its opposite, in the same clause and at most five words before. */
const negation = /\b(?:not|no|never|none|nor|neither|without|cannot|can't|don't|doesn't|didn't|isn't|wasn't|aren't|weren't|won't|hardly|nothing|nobody|far from|less than)\b(?:[^.,;:!?\p{L}]+[\p{L}\p{N}'’-]+){0,5}[^.,;:!?\p{L}]*$/iu;

/** Whether the words before an offset deny what stands there. */
export function isDenied(said: string, index: number): boolean {
    return negation.test(said.slice(0, index));
}

/** Something measured or recorded stands in the sentence: a reference in braces or a figure with its unit. */
export function isMeasured({ raw }: Sentence): boolean {
    return /\{[^{}]+\.[^{}]+\}/.test(raw) || figuresIn(raw).some(figure => /\d\s*[\p{L}%°]/u.test(figure.text));
}

export interface FigureInText {
    readonly text: string;
    readonly index: number;
}

/** Figures with their units as the language reads them, wherever one stands by itself. */
export function figuresIn(text: string): FigureInText[] {
    const found: FigureInText[] = [];
    for (const match of text.matchAll(/(?<![\p{L}\p{N}.,/-])[-−]?[\d½¼¾⅛⅜⅝⅞⅓⅔]/gu)) {
        const last = found.at(-1);
        if (last && match.index < last.index + last.text.length) {
            continue;
        }
        const length = scanFigure(text, match.index);
        if (length > 0) {
            found.push({ text: text.slice(match.index, match.index + length).trimEnd(), index: match.index });
        }
    }
    return found;
}
