/** A cause named without a measured basis, or a person blamed. */
import { proseOf, spanIn, type ProseEntry } from '../../record/prose-entries.js';
import { defineCheck, type Correction } from '../contract.js';
import { isDenied, isMeasured, isReported, sentencesOf, spaced, type Sentence } from './sentences.js';

/** After "due to", a verb that makes it an appointment; some of them are nouns as well, and need what follows a verb. */
const appointment = String.raw`(?:(?:be|have|expire|lapse|arrive|undergo|receive|attend|depart|go|come|begin|retire|become)\b|(?:run|fall|return|end|start|launch|leave|sail|finish|close|open|meet|move|pass|haul|replace|renew|take|reach)\b(?=\s*(?:[.,;)]|$)|\s+(?:in|on|at|by|from|to|out|up|within|next|this|again|before|after|her|his|their|the)\b))`;
const owed = '(?<!\\b(?:amounts?|sums?|payments?|fees?|balances?|money|moneys|premiums?|tax(?:es)?|rent|share|salvage|wages|credit) )';
const actor = '(?:grounding|collision|allision|strike|impact|neglect|stray current|electrolysis|lightning|overheating|overload(?:ing)?|frost|freezing|misalignment|vibration|abuse|misuse|galvanic action|osmosis|owner|yard|builder|seller|operator|crew|skipper|mechanic)';
const causes = spaced(new RegExp(String.raw`\b(?:caused by|(?:as|is|was|are|were) (?:a |the )?(?:direct )?result of|result(?:ed|s) from|${owed}due to(?! ${appointment})|owing to|because of|brought about by|attribut(?:able|ed) to|stem(?:s|med) from)\b|(?<=\b${actor} (?:has |have |had |must have )?)caused\b(?! by)`, 'giu'));
const blame = spaced(/\b(?:negligen(?:t|ce|tly)|(?:illegal|unlawful)(?:ly)?(?! (?:to|in|under|within|without|inside|discharges?|overboard)\b)|fraud(?:ulent|ulently)?(?! (?:register|check|desk|database)\b)|incompeten(?:t|ce)|reckless(?:ly|ness)?|careless(?:ly|ness| (?:work|workmanship|installation|repairs?|owner|yard|use|handling))|shoddy|botched|dishonest(?:ly)?|criminal|(?:is|was|are|were) to blame|at fault for|fault of the (?:owner|yard|builder|seller|broker|crew|skipper|last yard|previous owner)|(?:owner|yard|builder|seller|broker|crew|skipper) (?:has |had |deliberately |knowingly )*(?:concealed|covered up|neglected))\b/giu);
/** Words that leave the cause open, or speak of what is so in general. */
const open = spaced(/\b(?:may|might|can|could|would|if|whether|likely|unlikely|doubtful|unclear|unknown|probabl[ey]|possibl[ey]|appears?|seems?|suggests?|consistent with|perhaps|suspected|stated|states?|told|says|said|reported|reports|alleges?|alleged|claims|claimed|informed|believe[sd]?|understood|according to|common(?:ly)?|often|usually|typically|normally|generally|frequently|sometimes|always|any|such|(?:to be|is) expected|not (?:known|established|determined|found))\b|\?/iu);
/** What kept a thing from being done or seen gives a reason and claims no cause of damage. */
const hindered = spaced(/\b(?:(?:not|never) (?:be )?(?:inspected|seen|sighted|reached|opened|tested|tried|climbed|run|done|made|removed|lifted|operated|sounded|measured|carried out|performed|conducted|examined|surveyed|accessed|possible)|in?accessib(?:le|ility)|unable|impossible|access|limited|restricted|obscured|hidden|cancell?ed|cut short|postponed|aborted|omitted|deferred|delayed|curtailed|prevented|out of reach|beyond reach|visibility)\b|\b(?:due to|owing to|because of|as a result of) (?:the |a |lack of |prevailing |bad |high |poor |strong |heavy |normal |ordinary |fair |her |its |old )*(?:weather|wind|rain|sea|sea state|tides?|ice|time|access|linings?|use|age|wear)\b|\b(?:due to|owing to|because of) (?:this|that|these|its|their|her (?:age|size|depth|shape)|the (?:depth|height|position|shape|size|location|angle|slope|lie|length|weight|age|fact|way))\b|\bas a result,|\bas a result of (?:the|this) (?:survey|inspection|finding|offer|visit|test)/iu);

export const causeOrBlameClaimed = defineCheck({
    id: 'cause-or-blame-claimed',
    group: 'wording',
    severity: 'warning',
    isOfReport: true,
    title: 'Cause or blame claimed',
    why: 'A cause that was not measured is speculation, and a person blamed may answer in court.',
    needs: ['prose of findings, components, survey and vessel'],
    computes: 'Words of cause (caused by, due to, as a result of) in a sentence that holds no recorded fact in braces, no figure and no word that leaves the cause open; words of blame (negligent, illegal, fraud) wherever they stand. Quotations, denials, what others are said to have stated, and reasons why a thing was not done or seen are not read.',
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
                for (const { text, index } of isMeasured(sentence) || open.test(sentence.said) || hindered.test(sentence.said) ? [] : matches(sentence, causes)) {
                    raise({
                        components: [], ...finding, at: spanIn(entry, sentence.start + index, text.length),
                        message: `“${text.replace(/\s+/g, ' ')}” names a cause, and the sentence gives nothing measured that shows it. Speculation can be held against its writer; write “consistent with”, or name the fact in braces.`,
                        corrections: consistent(entry, sentence, index, text),
                    });
                }
                for (const { text, index } of matches(sentence, blame)) {
                    raise({
                        components: [], ...finding, at: spanIn(entry, sentence.start + index, text.length),
                        message: `“${text.replace(/\s+/g, ' ')}” blames somebody. A survey records facts and leaves judgement to others; say what was seen and against what it was measured.`,
                    });
                }
            }
        }
    },
});

function matches({ said }: Sentence, pattern: RegExp): { readonly text: string; readonly index: number }[] {
    return [...said.matchAll(pattern)].filter(match => !isDenied(said, match.index) && !isReported(said, match.index)).map(match => ({ text: match[0], index: match.index }));
}

const verbBefore = spaced(/\b(?:(is|was|has been|had been|must have been)|(?:are|were|have been))(?: (?:clearly|evidently|obviously|certainly|undoubtedly|definitely|directly|entirely))* $/iu);

/** The words of cause, with the verb before them, become "consistent with"; a verb of their own is left to the writer. */
function consistent(entry: ProseEntry, { start, said }: Sentence, index: number, text: string): Correction[] {
    const verb = verbBefore.exec(said.slice(0, index));
    const isWithVerb = /^(?:is|was|are|were)\s/iu.test(text);
    if (!entry.isWritten || !/^(?:caused\s|due\s|attribut|(?:as|is|was|are|were)\s)/iu.test(text) || (/^(?:caused|attribut)/iu.test(text) && /\b(?:be|been)\s+$/iu.test(said.slice(0, index)) && !verb)) {
        return [];
    }
    const isSingular = verb ? verb[1] !== undefined : /^(?:is|was)/iu.test(text);
    const from = verb ? verb.index : index;
    const words = verb !== null || isWithVerb ? `${isSingular ? 'is' : 'are'} consistent with` : 'consistent with';
    return [{ kind: 'replace-text', title: 'Change to “consistent with”', span: spanIn(entry, start + from, index + text.length - from), text: words }];
}
