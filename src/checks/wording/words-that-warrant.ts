/** Words that turn an opinion of the day into a promise. */
import { proseOf, spanIn, type ProseEntry } from '../../record/prose-entries.js';
import { defineCheck, type Correction } from '../contract.js';
import { isDenied, sentencesOf } from './sentences.js';

interface Promise_ {
    readonly pattern: RegExp;
    readonly says: string;
    /** What could stand in its place where that is certain. */
    readonly instead?: string;
}

const promises: readonly Promise_[] = [
    { pattern: /\b(?:we|I|the surveyor|surveyors?)\s+(?:hereby\s+|can\s+|do\s+)?(?:guarantees?|warrants?)\b/giu, says: 'promises' },
    { pattern: /(?<!(?:maker|builder|dealer|yard|manufacturer)['’]?s?['’]?\s+)(?<!under\s)\b(?:is|are|be|can be|been)\s+(?:guaranteed|warranted)\b/giu, says: 'promises' },
    { pattern: /\bin perfect (?:condition|order|shape)\b/giu, says: 'claims more than an eye can see', instead: 'sound where seen' },
    { pattern: /\bperfect(?:ly)?\b(?!\s+(?:condition|order|shape))/giu, says: 'claims more than an eye can see' },
    { pattern: /\b(?:un)?seaworth(?:y|iness)\b/giu, says: 'is a judgement of law and of use that a survey does not make' },
    { pattern: /\b(?:no|free (?:of|from)(?: all| any)?) (?:problems?|defects?|faults?)\b(?!\s+(?:was|were|is|are|has been|have been)\s+(?:seen|found|noted|heard|recorded))(?=\s*(?:[.,;:!?"”]|$|at all|whatsoever|and\b|with\b|in\b|on\b|of any))/giu, says: 'speaks for what was not seen', instead: 'nothing wrong was seen' },
    { pattern: /\b(?:like|as good as|as)[- ]new\b/giu, says: 'cannot be measured', instead: 'little worn where seen' },
    { pattern: /\b(?:will|should|is sure to) (?:last|give|serve|run|hold|provide)\b(?=[^.;]*\b(?:years?|seasons?|decades?|life|lifetime|generations?|trouble|long)\b)/giu, says: 'promises the future' },
    { pattern: /\b(?:years|decades) of (?:service|life|use|trouble)\b/giu, says: 'promises the future' },
    { pattern: /\b(?:completely|fully|thoroughly) (?:inspected|examined|surveyed|checked)\b/giu, says: 'claims that nothing was left unseen' },
    { pattern: /\b(?:all|every|each|everything)\b(?:\s+[\p{L}-]+){0,4}\s+(?:was|were|has been|have been)\s+(?:inspected|examined|surveyed|checked)\b/giu, says: 'claims that nothing was left unseen' },
];

/** Comparables speak of other vessels, definitions of words. */
const leftAlone: ReadonlySet<string> = new Set(['comparable', 'unseen']);
const standing: ReadonlySet<string> = new Set(['statement', 'limits', 'definitions', 'tools', 'fee-basis', 'method']);

export const wordsThatWarrant = defineCheck({
    id: 'words-that-warrant',
    group: 'wording',
    severity: 'warning',
    isOfReport: true,
    title: 'Words that promise',
    why: 'A survey is an opinion of what could be seen on the day; a promise in it can be held against the surveyor years later.',
    needs: ['prose of findings, components, survey and vessel'],
    computes: 'Words that guarantee, that speak for what was not seen or for the future: guarantee, warrant, perfect, seaworthy, no problems, like new, will last for years, completely inspected, all … were inspected. Quotations, references in braces and denials are not read.',
    sources: [
        { text: 'words that turn opinion into promise', provenance: 'practice' },
        { text: 'cautions of papers on surveyors’ liability', provenance: 'published' },
    ],
    limits: [
        'It knows words and not meaning: an irony or a denial further than five words away is misread, and may be accepted.',
        'A maker’s guarantee, the signed statement, the standing limits, comparables and definitions of value are not read.',
        'English only.',
    ],
    examples: [{
        name: 'a guarantee slipped in',
        bad: 'vessel "Marram" {}\nhose H1 {\n    note "The hoses are like new."\n}\n',
        fixed: 'vessel "Marram" {}\nhose H1 {\n    note "The hoses are little worn where seen."\n}\n',
        correction: 'Write “little worn where seen”',
    }, {
        name: 'years to come',
        bad: 'vessel "Marram" {\n    note "She is seaworthy and will give many years of service."\n}\n',
        fixed: 'vessel "Marram" {\n    note "Nothing was seen that should keep her from her coastal use."\n}\n',
    }],
    silent: [
        { name: 'denied', text: 'vessel "Marram" {\n    note "Her fitness for sea was not judged and is not guaranteed; this is not a perfect record."\n}\n' },
        { name: 'in quotation', text: 'vessel "Marram" {\n    note "The listing calls her “like new”."\n}\n' },
        { name: 'the same of what was seen', text: 'vessel "Marram" {\n    note "No defects were seen in the planks that could be reached."\n}\n' },
        { name: 'a maker’s guarantee', text: 'hose H1 {\n    note "The maker\'s guarantee runs to 2027."\n}\n' },
    ],
    run(record, raise) {
        for (const entry of proseOf(record)) {
            if (leftAlone.has(entry.owner.type) || standing.has(entry.property) || (entry.owner.type === 'valuation' && entry.property === 'basis')) {
                continue;
            }
            for (const sentence of sentencesOf(entry)) {
                const found = promisesIn(sentence.said);
                const [first, ...more] = found;
                if (first) {
                    const finding = entry.owner.type === 'finding' ? entry.owner.finding : undefined;
                    raise({
                        components: [], at: spanIn(entry, sentence.start + first.index, first.text.length), ...(finding ? { finding } : {}),
                        message: `${found.map(({ text, promise }) => `“${text}” ${promise.says}`).join('; ')}. An opinion of the day would be read as a promise; say what was seen, where and how.`,
                        // Of several in one sentence none is put right by itself.
                        corrections: more.length > 0 ? [] : instead(entry, sentence.start + first.index, first.text, first.promise.instead),
                        related: more.map(({ index, text }) => ({ message: `“${text}” too`, span: spanIn(entry, sentence.start + index, text.length) })),
                    });
                }
            }
        }
    },
});

function promisesIn(said: string): { readonly index: number; readonly text: string; readonly promise: Promise_ }[] {
    const found = promises.flatMap(promise => [...said.matchAll(promise.pattern)]
        .filter(match => !isDenied(said, match.index)).map(match => ({ index: match.index, text: match[0], promise })));
    // Of two that overlap the first stands.
    return found.sort((a, b) => a.index - b.index).filter((each, i, all) => !all.slice(0, i).some(other => other.index + other.text.length > each.index));
}

function instead(entry: ProseEntry, index: number, text: string, words: string | undefined): Correction[] {
    return words === undefined || !entry.isWritten ? [] : [{ kind: 'replace-text', title: `Write “${words}”`, span: spanIn(entry, index, text.length), text: words }];
}
