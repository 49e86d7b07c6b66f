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

/** An end of a sentence: a stop before a blank and a capital or the end, not after a common abbreviation or an initial; or an empty line, or a line that begins an item of a list. */
const stop = /[.!?](?=\s+[\p{Lu}“"{(]|\s*["”]*\s*$)|\n(?=[ \t\r]*(?:\n|[-*•] ))/gu;
const abbreviated = /(?:\b(?:approx|ca|no|nos|fig|stbd|port|dia|max|min|incl|vs|Mr|Mrs|Ms|Dr|St|Capt|e\.g|i\.e|etc)|\b\p{Lu})$/iu;
/** Of these a capital after the stop begins a sentence all the same. */
const alsoWord = /\b(?:no|port|max|min)$/iu;

/** A pattern whose blanks also stand for a line break with what indents the next line. */
export function spaced({ source, flags }: RegExp): RegExp {
    return new RegExp(source.replaceAll(/ [?*](?!\?)/g, '\\s*').replaceAll(' ', '\\s+'), flags);
}

/** In a text over several lines a quotation needs no backslashes; what stands in it is not said by the surveyor. */
const inQuotes = ({ said, raw }: ProseEntry) => raw.startsWith('"""') ? said.replace(/(?<!\d)"[^"]*"/g, quoted => quoted.replace(/[^\n]/g, ' ')) : said;

/** Sentences by their text: several checks read the same ones. */
const known = new WeakMap<ProseEntry, readonly Sentence[]>();

export function sentencesOf(entry: ProseEntry): readonly Sentence[] {
    let sentences = known.get(entry);
    if (!sentences) {
        sentences = readSentences(entry);
        known.set(entry, sentences);
    }
    return sentences;
}

function readSentences(entry: ProseEntry): Sentence[] {
    const { raw } = entry;
    const said = inQuotes(entry);
    const sentences: Sentence[] = [];
    let start = 0;
    const push = (end: number) => {
        if (/[\p{L}\p{N}{]/u.test(raw.slice(start, end))) {
            sentences.push({ said: said.slice(start, end), raw: raw.slice(start, end), start });
        }
        start = end;
    };
    for (const match of raw.matchAll(stop)) {
        const before = raw.slice(start, match.index);
        const after = raw.slice(match.index + 1);
        const isWhole = match[0] === '\n' || !abbreviated.test(before) || (alsoWord.test(before) && /^\s+\p{Lu}/u.test(after)) || /^\s*["”]*\s*$/.test(after);
        if (isWhole) {
            push(match.index + 1);
        }
    }
    push(raw.length);
    return sentences;
}

/** Where a new clause begins, which a denial before it does not reach. */
const clauseBreak = /[.,;:!?]|\b(?:but|yet|however|although|though|because|while|which|and (?:she|it|he|they|we|I|the|this|that|her|his|its|all))\b/giu;
/** A word that turns what follows into its opposite, at most seven words before. */
const negation = spaced(/\b(?:not(?! only| just| merely)|no(?! doubt)|never|none|nor|neither|without(?! (?:any )?doubt)|cannot|can['’]t|don['’]t|doesn['’]t|didn['’]t|isn['’]t|wasn['’]t|aren['’]t|weren['’]t|won['’]t|hardly|nothing(?! but)|nobody|far from|less than)\b(?:[^\p{L}]+[\p{L}\p{N}'’-]+){0,7}[^\p{L}]*$/iu);

/** Whether the words before an offset deny what stands there. */
export function isDenied(said: string, index: number): boolean {
    // An aside between commas does not end the clause: not, in the surveyor's view, sound.
    const before = said.slice(0, index).replace(/,\s[^,.;:]{1,40},(?=\s)/gu, aside => ' '.repeat(aside.length));
    const from = [...before.matchAll(clauseBreak)].reduce((_, match) => match.index + match[0].length, 0);
    return negation.test(before.slice(from));
}

const reporter = "(?:owners?|sellers?|brokers?|buyers?|clients?|yards?|builders?|makers?|manufacturers?|dealers?|skippers?|captains?|masters?|crew|mechanics?|engineers?|riggers?|operators?|insurers?|underwriters?|previous surveyors?|listing|advertisements?|brochures?|sheet|logs?|logbook|papers?|invoices?|receipts?|labels?|manuals?|certificates?|claim|statements?|earlier reports?|previous reports?|he)";
const reports = '(?:stat(?:es?|ed|ing)|sa(?:ys?|id)|reports?|reported|claim(?:s|ed)?|describ(?:es?|ed)|advertis(?:es?|ed)|calls?|called|alleg(?:es?|ed)|told|tells?|writes?|wrote|judged?|inform(?:s|ed)|advis(?:es?|ed)|believ(?:es?|ed)|thinks?|thought|assur(?:es?|ed)|reads?|notes?|noted|mention(?:s|ed)?|recall(?:s|ed)?|lists?|listed|guarantees?|guaranteed|warrants?|warranted|has it)';
const reportedBefore = spaced(new RegExp(`\\b${reporter}\\b(?:['’]s? [\\p{L}-]+)?(?: [\\p{L}()-]+){0,5}? ${reports}\\b|\\baccording to\\b|\\b(?:is|was|are|were|been) (?:said|stated|reported|claimed|believed|understood|alleged|advertised|described|listed|sold|represented)(?: to| as| that| by|,)|\\bas (?:stated|reported|told|advertised|claimed|said)\\b|\\b(?:told|informed|advised) (?:that|by|of)\\b`, 'iu'));
const reportedAfter = spaced(new RegExp(`\\b(?:${reports} (?:by )?(?:the |her |his |previous )*${reporter}|(?:the )?${reporter} ${reports}|according to|as stated|as (?:reported|told|claimed))\\b[^;]*$`, 'iu'));

/** Whether a sentence gives the words at an offset as another's: the owner states, according to, is said to be. */
export function isReported(said: string, index: number): boolean {
    const before = said.slice(0, index);
    const clause = before.slice(before.lastIndexOf(';') + 1);
    return reportedBefore.test(clause) || reportedAfter.test(said.slice(index));
}

const condition = spaced(/(?:\b(?:whether|if|unless|until|till|once|provided (?:that|she|it|the)|so that|in order|to (?:make|render|keep|become|get|bring)|(?<!\b(?:I|we) )(?:would|could|might|may)(?! be (?:considered|regarded|deemed|said|taken))|asked)\b|(?:^|[,(])\s*to be\b)[^.;:!?]*$/iu);

/** Whether the words at an offset hang on a condition or a question, and are not said outright. */
export function isConditional(said: string, index: number): boolean {
    return condition.test(said.slice(0, index)) || /^[^.;:!?]*\?/.test(said.slice(index));
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
