/** A cause named without a measured basis, or a person blamed. */
import { proseOf, spanIn, type ProseEntry } from '../../record/prose-entries.js';
import { defineCheck, type Correction } from '../contract.js';
import { isDenied, isMeasured, sentencesOf, type Sentence } from './sentences.js';

const causes = /\b(?:caused by|(?:as|is|was|are|were) (?:a |the )?result of|resulted from|due to(?!\s+(?:be|have|expire|run|fall|come|go|arrive|return|end|start)\b)|owing to|brought about by)\b/giu;
const blame = /\b(?:negligen(?:t|ce|tly)|illegal(?:ly)?|unlawful(?:ly)?|fraud(?:ulent|ulently)?|incompeten(?:t|ce)|reckless(?:ly|ness)?|shoddy|botched|dishonest(?:ly)?|criminal|(?:is|was|are|were) to blame|at fault for|fault of the (?:owner|yard|builder|seller|broker|crew|skipper|previous owner))\b/giu;
/** Words that leave the cause open. */
const open = /\b(?:may|might|can|could|would|if|likely|probabl[ey]|possibl[ey]|appears?|seems?|suggests?|consistent with|perhaps|suspected|stated|states?|told|says|said|reported|according to)\b/iu;

export const causeOrBlameClaimed = defineCheck({
    id: 'cause-or-blame-claimed',
    group: 'wording',
    severity: 'warning',
    isOfReport: true,
    title: 'Cause or blame claimed',
    why: 'A cause that was not measured is speculation, and a person blamed may answer in court.',
    needs: ['prose of findings, components, survey and vessel'],
    computes: 'Words of cause (caused by, due to, as a result of) in a sentence that holds no recorded fact in braces, no figure and no word that leaves the cause open; words of blame (negligent, illegal, fraud) wherever they stand. Quotations and denials are not read.',
    sources: [{ text: 'consistent with, and facts only', provenance: 'practice' }],
    limits: ['A figure or a fact in the sentence counts as a measured basis, whether or not it bears on the cause.', 'A cause worded otherwise is not seen.', 'English only.'],
    examples: [{
        name: 'a cause without a basis',
        bad: 'vessel "Marram" {\n    note "The crack in the skeg was caused by grounding."\n}\n',
        fixed: 'vessel "Marram" {\n    note "The crack in the skeg is consistent with grounding."\n}\n',
    }, {
        name: 'due to',
        bad: 'vessel "Marram" {\n    note "Wear of the bearing due to poor alignment."\n}\n',
        fixed: 'vessel "Marram" {\n    note "Wear of the bearing consistent with poor alignment."\n}\n',
        correction: 'Change to “consistent with”',
    }, {
        name: 'blame',
        bad: 'vessel "Marram" {\n    note "The wiring was negligent work by the yard."\n}\n',
        fixed: 'vessel "Marram" {\n    note "The wiring is joined with twisted and taped ends."\n}\n',
    }],
    silent: [
        { name: 'with a measured basis', text: 'stern-bearing SB1 {\n    clearance: 0.4 mm\n    shaft-diameter: 40 mm\n    note "The noise is due to the clearance of {SB1.clearance}."\n}\n' },
        { name: 'left open', text: 'vessel "Marram" {\n    note "The crack may have been caused by grounding."\n}\n' },
        { name: 'denied', text: 'vessel "Marram" {\n    note "The leak is not due to the window."\n}\n' },
        { name: 'an appointment', text: 'vessel "Marram" {\n    note "The raft is due to be serviced."\n}\n' },
        { name: 'what the owner said', text: 'vessel "Marram" {\n    note "The owner states that the dent was caused by a dock."\n}\n' },
    ],
    run(record, raise) {
        for (const entry of proseOf(record)) {
            if (entry.owner.type === 'comparable' || ['statement', 'purpose', 'scope', 'limits', 'fee-basis'].includes(entry.property)) {
                continue;
            }
            for (const sentence of sentencesOf(entry)) {
                const finding = entry.owner.type === 'finding' ? { finding: entry.owner.finding } : {};
                for (const { text, index } of isMeasured(sentence) || open.test(sentence.said) ? [] : matches(sentence, causes)) {
                    raise({
                        components: [], ...finding, at: spanIn(entry, sentence.start + index, text.length),
                        message: `“${text}” names a cause, and the sentence gives nothing measured that shows it. Speculation can be held against its writer; write “consistent with”, or name the fact in braces.`,
                        corrections: consistent(entry, sentence, index, text),
                    });
                }
                for (const { text, index } of matches(sentence, blame)) {
                    raise({
                        components: [], ...finding, at: spanIn(entry, sentence.start + index, text.length),
                        message: `“${text}” blames somebody. A survey records facts and leaves judgement to others; say what was seen and against what it was measured.`,
                    });
                }
            }
        }
    },
});

function matches({ said }: Sentence, pattern: RegExp): { readonly text: string; readonly index: number }[] {
    return [...said.matchAll(pattern)].filter(match => !isDenied(said, match.index)).map(match => ({ text: match[0], index: match.index }));
}

/** "due to" may be changed as it stands; the others need their verb changed with them. */
function consistent(entry: ProseEntry, { start, said }: Sentence, index: number, text: string): Correction[] {
    const verb = /\b(?:is|was|are|were|been|be)\s+$/iu.exec(said.slice(0, index))?.[0];
    return !entry.isWritten || !/^due to$/iu.test(text) && verb !== undefined && !/^(?:is|are)/iu.test(verb) ? []
        : [{ kind: 'replace-text', title: 'Change to “consistent with”', span: spanIn(entry, start + index, text.length), text: 'consistent with' }];
}
