/** Words that turn an opinion of the day into a promise. */
import { proseOf, spanIn, type ProseEntry } from '../../record/prose-entries.js';
import { defineCheck, type Correction } from '../contract.js';
import { isConditional, isDenied, isReported, sentencesOf, spaced } from './sentences.js';

interface Promise_ {
    readonly pattern: RegExp;
    readonly says: string;
    /** What could stand in its place where that is certain. */
    readonly instead?: string;
}

/** What may follow "like new" where it is said of the thing itself, and not of its likeness to a new one. */
const asNewEnd = String.raw`(?=\s*(?:[.,;:!?)"”]|$)|\s+(?:condition|state|shape|order|inside|throughout|in|on|at|and|but|with|for|since|after|where|despite|though|when|below|above|forward|aft|or|to|overall|again)\b)`;
const geometry = '(?:square|flat|flush|round|straight|level|plumb|true|parallel|perpendicular|horizontal|vertical|circular|aligned|centered|concentric|in line|legible|visible|matched|alignment|balance|circles?|squares?|angles?|storm|conditions|weather|calm|day|timing|example|record)';
/** Things that a claim on all of them speaks for, seen or not. */
const whole = '(?:systems?|equipment|gear|machinery|electronics|appliances?|components?|items?|parts?|fittings?|wiring|installations?)';
const fine = String.raw`(?:works?|worked|functions?|functioned|operates?|operated|(?:is|are|was|were)(?: found)?(?: (?:to be|in))?(?: (?:very|good|full|proper|working|perfect))* (?:good|sound|working|proper|perfect|serviceable|satisfactory|fine|order|operational|functional))`;

const promises: readonly Promise_[] = [
    { pattern: /\b(?:we|I|the surveyor|surveyors?) (?:hereby |can |do )?(?:guarantees?|warrants?)\b/giu, says: 'promises' },
    { pattern: /(?<!(?:maker|builder|dealer|yard|manufacturer)['’]?s?['’]? )(?<!under )\b(?:is|are|be|can be|been) (?:guaranteed|warranted)\b/giu, says: 'promises' },
    { pattern: /\bin perfect (?:(?:working|running|sailing) )?(?:condition|order|shape)\b/giu, says: 'claims more than an eye can see', instead: 'sound where seen' },
    { pattern: new RegExp(String.raw`(?<!\b(?:the|(?:weather|wind|sea|visibility|day|light) (?:is|was)) )\bperfect(?:ly)?\b(?! (?:${geometry})\b)|\b(?:flawless|faultless)(?:ly)?\b|\b(?:mint|pristine|immaculate) condition\b`, 'giu'), says: 'claims more than an eye can see' },
    { pattern: /(?<!certificates? of )\bsea-?worth(?:y|iness)\b/giu, says: 'is a judgement of law and of use that a survey does not make' },
    { pattern: /\b(?:no|free (?:of|from)(?: all| any)?) (?:problems?|defects?|faults?|issues?)\b(?! (?:was|were|is|are|has been|have been) (?:seen|found|noted|heard|recorded|observed))(?=\s*(?:[.,;:!?"”]|$|at all|whatsoever|and\b|with\b|in\b|on\b|of any))/giu, says: 'speaks for what was not seen', instead: 'nothing wrong was seen' },
    { pattern: /\b(?:trouble|problem|defect|fault)-free\b/giu, says: 'speaks for what was not seen' },
    { pattern: new RegExp(String.raw`\b(?:like-new|(?:like|as) new${asNewEnd}|as-new|as good as new)\b`, 'giu'), says: 'cannot be measured', instead: 'little worn where seen' },
    { pattern: /\b(?:will|should|is sure to) (?:last|give|serve|run|hold|provide)\b(?=[^.;]*\b(?:years?|seasons?|decades?|life|lifetime|generations?|trouble|long)\b)/giu, says: 'promises the future' },
    { pattern: /\b(?:years|decades) of (?:service|life|use|trouble)\b/giu, says: 'promises the future' },
    { pattern: /\b(?:completely|fully|thoroughly) (?:and \p{L}+ly )?(?:inspected|examined|surveyed|checked)\b/giu, says: 'claims that nothing was left unseen' },
    { pattern: /\b(?:inspected|examined|surveyed|checked) in (?:its|her|their) entirety\b/giu, says: 'claims that nothing was left unseen' },
    { pattern: /\b(?:all|every|each|everything)\b(?: [\p{L}-]+){0,4} (?:was|were|has been|have been) (?:inspected|examined|surveyed|checked)\b/giu, says: 'claims that nothing was left unseen' },
    { pattern: new RegExp(String.raw`\b(?:everything(?: (?:on board|aboard))?|(?:all|every)(?: [\p{L}-]+){0,3}? ${whole})(?: [\p{L}-]+){0,3}? ${fine}\b`, 'giu'), says: 'speaks for what was not seen' },
].map(promise => ({ ...promise, pattern: spaced(promise.pattern) }));

/** A claim on all that says of which, or how they were tried, is an observation. */
const bounded = spaced(/\b(?:that|which|tried|tested|seen|reached|named|listed|opened|when|switched)\b/iu);
const inspected = spaced(/\b(?:inspected|examined|surveyed|checked)\b/iu);
const limited = spaced(/^,? (?:when|where|as far as|but for|except|apart from|other than|save|from (?:outside|inside|deck|the|below|above|ashore))\b/iu);
/** A sentence that gives no warranty denies whatever promise it names. */
const disclaimer = spaced(/\b(?:no|not|nor|neither|without)\b[^.;]*\b(?:warrant(?:y|ies|s)?|guarantees?|representations?|opinions?|assurances?|promises?|certif(?:y|ies|ied|icate))\b/iu);
/** A denial after the words: a perfect seal cannot be had, her seaworthiness was not judged. */
const deniedAfter = spaced(/^[^.,;:!?]{0,40}?\b(?:(?:is|was|are|were|has|have|had|can|could|will) (?:not|never|no)|cannot|isn['’]t|wasn['’]t|has lapsed|depends?)\b(?! in doubt)/iu);

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
    computes: 'Words that guarantee, that speak for what was not seen or for the future: guarantee, warrant, perfect, seaworthy, no problems, like new, will last for years, completely inspected, all … were inspected. Quotations, references in braces, denials, conditions and what others are said to have stated are not read.',
    sources: [
        { text: 'words that turn opinion into promise', provenance: 'practice' },
        { text: 'cautions of papers on surveyors’ liability', provenance: 'published' },
    ],
    limits: [
        'It knows words and not meaning: an irony or a denial further than seven words away is misread, and may be accepted.',
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
                        message: `${found.map(({ text, promise }) => `“${text.replace(/\s+/g, ' ')}” ${promise.says}`).join('; ')}. An opinion of the day would be read as a promise; say what was seen, where and how.`,
                        // Of several in one sentence none is put right by itself.
                        corrections: more.length > 0 ? [] : instead(entry, sentence.start + first.index, first.text, first.promise.instead),
                        related: more.map(({ index, text }) => ({ message: `“${text.replace(/\s+/g, ' ')}” too`, span: spanIn(entry, sentence.start + index, text.length) })),
                    });
                }
            }
        }
    },
});

function promisesIn(said: string): { readonly index: number; readonly text: string; readonly promise: Promise_ }[] {
    const found = promises.flatMap(promise => [...said.matchAll(promise.pattern)]
        .filter(match => isSaid(said, match)).map(match => ({ index: match.index, text: match[0], promise })));
    // Of two that overlap the first stands.
    return found.sort((a, b) => a.index - b.index).filter((each, i, all) => !all.slice(0, i).some(other => other.index + other.text.length > each.index));
}

/** A claim on the whole that says of which, from where, how they were tried, or but for what. */
function isBounded(text: string, after: string): boolean {
    const isOfAll = /^(?:all|every|each)/iu.test(text);
    const isInspected = inspected.test(text);
    return (isOfAll && !isInspected && bounded.test(text)) || ((isOfAll || isInspected) && limited.test(after));
}

/** Said outright by the surveyor: not denied, not hung on a condition, not another's words. */
function isSaid(said: string, { 0: text, index }: RegExpExecArray): boolean {
    const after = said.slice(index + text.length);
    return !isBounded(text, after) && !isDenied(said, index) && !isConditional(said, index) && !isReported(said, index) && !disclaimer.test(said)
        && !(!/\band\b/iu.test(after.slice(0, 40)) && deniedAfter.test(after));
}

function instead(entry: ProseEntry, index: number, text: string, words: string | undefined): Correction[] {
    return words === undefined || !entry.isWritten ? [] : [{ kind: 'replace-text', title: `Write “${words}”`, span: spanIn(entry, index, text.length), text: words }];
}
