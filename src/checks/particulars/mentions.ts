/** Mentions of her dimensions in prose: "her beam is 12 ft 8 in", "LOA 40 ft", "she draws 5 ft 9 in". */
import { parseFigure, type QuantityFigure } from '../../quantities/index.js';
import type { ProseEntry } from '../../record/prose-entries.js';
import { figuresIn, sentencesOf } from '../wording/sentences.js';

export type Dimensions = 'length-overall' | 'length-on-deck' | 'length-waterline' | 'beam' | 'draft';

export interface Mention {
    /** Undefined where a length is given that is not named. */
    readonly property?: Dimensions;
    readonly figure: QuantityFigure;
    /** Where the figure stands, and its length. */
    readonly index: number;
    readonly length: number;
    /** Where a length that is not named has its word. */
    readonly wordAt?: { readonly index: number; readonly length: number };
    /** A round length by which a boat is called: a 40 ft sloop. */
    readonly isNominal?: boolean;
}

const joined = String.raw`(?:\s+(?:is|was|of|being|measured|measures|measured\s+as|at|to\s+be))*\s*[:,=]?\s*(?:just\s+)?$`;
const whose = String.raw`(?:\b(?:[Hh]er|[Tt]he\s+vessel['’]s|[Tt]he\s+boat['’]s|[Tt]he\s+yacht['’]s)\s+(?:own\s+|greatest\s+|maximum\s+|overall\s+|measured\s+)*)`;

/** What stands before the figure, and the dimension it names. */
const named: readonly (readonly [before: RegExp, property: Dimensions | 'length'])[] = [
    [new RegExp(String.raw`\b(?:LOA|[Ll]ength\s+over\s?all|[Oo]verall\s+length)(?:\s+of\s+the\s+vessel)?${joined}`), 'length-overall'],
    [new RegExp(String.raw`\b(?:LOD|[Ll]ength\s+on\s+deck|[Dd]eck\s+length)${joined}`), 'length-on-deck'],
    [new RegExp(String.raw`\b(?:LWL|[Ll]ength\s+(?:at|on|of)\s+(?:the\s+|her\s+)?waterline|[Ww]aterline\s+length)${joined}`), 'length-waterline'],
    [new RegExp(String.raw`(?:${whose}|(?:^\s*|[.;,(:]\s*|\band\s+))[Bb]eam${joined}`), 'beam'],
    [new RegExp(String.raw`(?:${whose}|(?:^\s*|[.;,(:]\s*|\band\s+))(?:[Dd]raft|[Dd]raught)${joined}`), 'draft'],
    [new RegExp(String.raw`\b[Ss]he\s+(?:draws|drew)\s+$`), 'draft'],
    [new RegExp(String.raw`${whose}length${joined}`), 'length'],
];

/** What stands after the figure, and the dimension it names: 38 ft long overall, 12 ft 8 in beam. */
const namedAfter: readonly (readonly [after: RegExp, property: Dimensions])[] = [
    [/^\s*(?:long\s+)?(?:LOA\b|over\s?all\b|in\s+length\s+over\s?all\b)/u, 'length-overall'],
    [/^\s*(?:LOD\b|long\s+on\s+deck\b)/u, 'length-on-deck'],
    [/^\s*(?:LWL\b|(?:long\s+)?on\s+the\s+waterline\b)/u, 'length-waterline'],
    [/^\s*(?:of\s+)?beam\b(?!\s+(?:under|of|at|below|shelf|end|over|in)\b)/u, 'beam'],
    [/^\s*(?:of\s+)?(?:draft|draught)\b/u, 'draft'],
];
/** No boat surveyed is so narrow or short: such a figure is of a deck beam or a part. */
const leastM: Readonly<Record<Dimensions, number>> = { 'length-overall': 2, 'length-on-deck': 2, 'length-waterline': 2, beam: 1, draft: 0.1 };
/** A 40 ft sloop, in the words of the engagement. */
const calledBefore = /\b(?:[Aa]n?|[Tt]he|[Tt]his)\s+$/u;
const calledAfter = /^[-\s]*(?:\p{L}+\s+){0,2}?(?:sloop|ketch|yawl|cutter|schooner|yacht|trawler|catamaran|trimaran|houseboat|cruiser|motorsailer|workboat)\b/u;

/** Sentences that report what others say, suppose, or speak of another state or vessel: no mention of hers. */
const apart = /\b(?:stated?|claim(?:ed|s)?|advertis\w*|list(?:ed|ing)|brochure|papers?|previous(?:ly)?|former(?:ly)?|original(?:ly)?|new(?:er)?\s+(?:vessel|boat)|sister|would|could|if|unless|nominal(?:ly)?|according|maker['’]s|designer['’]s|berth|slip|dock|than|before|raised|lowered|tender|dinghy|trailer)\b/i;
/** What follows a draft or beam that is measured in another state. */
const otherState = /^\s*(?:\([^)]*\)\s*)?,?\s*(?:with|when|aft\b|forward\b|light\b|loaded\b|at\s+(?:the\s+)?(?:stern|bow|transom|deck|waterline|half|full)|board|keel|plates?|drives?\s|on\s+deck|folded)/i;

/** Texts without any of these mention none, which most do. */
const anyName = /length|LOA|LOD|LWL|over\s?all|beam|dra(?:ft|ught|ws)|drew|waterline|on\s+deck|sloop|ketch|yawl|cutter|schooner|yacht|trawler|catamaran|trimaran|houseboat|cruiser|motorsailer|workboat/i;

export function mentionsIn(entry: ProseEntry): readonly Mention[] {
    if (!anyName.test(entry.said)) {
        return [];
    }
    const isOfEngagement = entry.owner.type === 'survey' || entry.owner.type === 'vessel';
    return sentencesOf(entry).filter(({ said }) => !apart.test(said)).flatMap(({ said, start }) => figuresIn(said).flatMap(({ text, index }): Mention[] => {
        const read = parseFigure(text);
        if (!read.ok || read.figure.kind !== 'quantity' || read.figure.dimension !== 'length') {
            return [];
        }
        const { figure } = read;
        const after = said.slice(index + text.length);
        const before = said.slice(Math.max(0, index - 80), index);
        const trailing = namedAfter.find(([pattern]) => pattern.test(after));
        if (trailing) {
            return figure.si < leastM[trailing[1]] ? [] : [{ figure, index: start + index, length: text.length, property: trailing[1] }];
        }
        if (isOfEngagement && calledBefore.test(before) && calledAfter.test(after)) {
            return [{ figure, index: start + index, length: text.length, isNominal: true }];
        }
        if (otherState.test(after)) {
            return [];
        }
        for (const [pattern, property] of named) {
            const match = pattern.exec(before);
            if (match && figure.si >= (property === 'length' ? 2 : leastM[property])) {
                const at = { figure, index: start + index, length: text.length };
                const word = index - before.length + match.index + match[0].indexOf('length');
                return [property === 'length' ? { ...at, wordAt: { index: start + word, length: 'length'.length } } : { ...at, property }];
            }
        }
        return [];
    }));
}
