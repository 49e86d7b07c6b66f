/** A recommendation that names no act: nobody can price it, and nobody can tell when it is done. */
import { proseOf, spanIn, type ProseEntry } from '../../record/prose-entries.js';
import type { Finding } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { figuresIn, sentencesOf, type Sentence } from './sentences.js';

/** Words that leave the extent to whoever reads them. */
const openEnded = /\b(?:as (?:needed|required|necessary|appropriate)|if (?:needed|required|necessary)|where (?:needed|required|necessary)|properly|accordingly|to (?:a )?(?:good|proper|satisfactory) (?:condition|standard|order))\b/giu;
/** Verbs that ask for no act by themselves. */
const idle = /\b(?:monitor|check|address|attend to|look (?:at|into)|keep an eye on|keep (?:a )?watch|watch|investigate|consider|review|rectify|deal with|sort out|see to|evaluate|assess)\b/giu;
const act = /\b(?:renew|replace|fit|refit|remove|repair|rebuild|rebed|bed|blank|cap|cut|crop|clean|strip|paint|coat|weld|grind|bolt|fasten|refasten|screw|rivet|tighten|slacken|drain|refill|fill|top up|flush|charge|wire|rewire|fuse|move|shift|lift|draw|test|measure|gauge|drill|sound|probe|weigh|inspect|service|lubricate|grease|free|seal|reseal|caulk|sleeve|secure|strap|support|hang|clip|clamp|isolate|insulate|bond|earth|ground|connect|disconnect|shut|close|open up|open|haul|mark|label|stow|lead|reroute|shorten|lengthen|raise|lower|add|carry|buy|engage|have|step|unstep|adjust|align|realign|balance|trace|stop|keep|make|install|provide|post|register|laminate|reinforce|stiffen|splice|scarf|sister|plug|close off|overhaul|recharge|requalify|swap|change|correct|set|take|put|use|run|leave|sample|swing|calibrate|photograph|read again|compare|refuse|tie|lock|pump|dry|peel|sand|prime|pack|repack|reseat|resecure|retorque|reattach|reterminate|reposition|varnish|recertify|galvanize|anneal|pressure-test|load-test|leak-test)(?:ed|s|ing)?\b/iu;
/** When, how often, or from what figure on. */
const trigger = /\b(?:before|until|when|whenever|once|after|every|each|daily|weekly|monthly|yearly|annually|twice|at (?:the|each|every) next|at (?:each|every)|within|by (?:the end|\d|January|February|March|April|May|June|July|August|September|October|November|December)|from .{1,40} on|per (?:day|week|month|year|season)|months?|weeks?|days?)\b/iu;

export const actTooVague = defineCheck({
    id: 'act-too-vague',
    group: 'wording',
    severity: 'error',
    isOfReport: true,
    title: 'Recommendation names no act',
    why: 'A yard cannot price "as needed", and an owner cannot show that he did it.',
    needs: ['finding: recommend'],
    computes: 'A sentence of the recommendation that says as needed, as required or properly without a figure, interval or event; or that only asks to monitor, check, address or consider, with no act, interval, event or figure anywhere in the recommendation.',
    sources: [{ text: 'act, part, place and date', provenance: 'practice' }],
    limits: ['It knows a list of verbs; an act in other words may be missed, and then the remark can be accepted on the finding.', 'English only.'],
    examples: [{
        name: 'repair as needed',
        bad: 'bulkhead BH1\nfinding F1 "Tabbing has let go" on BH1 {\n    urgency: next-haul-out\n    seen: "The tabbing is parted."\n    because: "It ties the hull."\n    recommend: "Repair as needed."\n}\n',
        fixed: 'bulkhead BH1\nfinding F1 "Tabbing has let go" on BH1 {\n    urgency: next-haul-out\n    seen: "The tabbing is parted."\n    because: "It ties the hull."\n    recommend: "Grind the parted tabbing off and laminate it anew."\n}\n',
    }, {
        name: 'monitor, and no more',
        bad: 'rudder RU1\nfinding F1 "Play in the rudder" on RU1 {\n    urgency: keep-watch\n    seen: "The rudder moves."\n    because: "It wears."\n    recommend: "Monitor."\n}\n',
        fixed: 'rudder RU1\nfinding F1 "Play in the rudder" on RU1 {\n    urgency: keep-watch\n    seen: "The rudder moves."\n    because: "It wears."\n    recommend: "Measure the play again at the next haul-out and compare it with the figure recorded here."\n}\n',
        correction: 'Measure again at the next haul-out',
    }],
    silent: [
        { name: 'an act beside it', text: 'rudder RU1\nfinding F1 "Play" on RU1 {\n    urgency: next-haul-out\n    seen: "It moves."\n    because: "It wears."\n    recommend: "Check the alignment, then renew the lower bearing."\n}\n' },
        { name: 'an interval', text: 'packed-gland G1\nfinding F1 "Drip" on G1 {\n    urgency: keep-watch\n    seen: "It drips."\n    because: "It fills the bilge."\n    recommend: "Monitor the drip monthly."\n}\n' },
        { name: 'a figure to aim at', text: 'packed-gland G1\nfinding F1 "Drip" on G1 {\n    urgency: in-upkeep\n    seen: "It drips."\n    because: "It fills the bilge."\n    recommend: "Tighten the gland as needed to 3 drops/min."\n}\n' },
        { name: 'vague words in what was seen', text: 'packed-gland G1\nfinding F1 "Drip" on G1 {\n    urgency: in-upkeep\n    seen: "The owner tops up as needed."\n    because: "It fills the bilge."\n    recommend: "Repack the gland."\n}\n' },
    ],
    run(record, raise) {
        for (const entry of proseOf(record)) {
            if (entry.owner.type !== 'finding' || entry.property !== 'recommend') {
                continue;
            }
            const { finding } = entry.owner;
            const sentences = sentencesOf(entry);
            const isVague = sentences.map(sentence => vagueWord(sentence));
            const hasAct = sentences.some(sentence => act.test(sentence.said.replaceAll(idle, '')) || hasTrigger(sentence));
            sentences.forEach((sentence, i) => {
                const word = isVague[i];
                if (word) {
                    raise(problem(entry, sentence, word, finding));
                } else if (!hasAct) {
                    const [match] = [...sentence.said.matchAll(idle)];
                    if (match) {
                        raise(problem(entry, sentence, { text: match[0], index: match.index, isIdle: true }, finding));
                    }
                }
            });
        }
    },
});

interface Vague {
    readonly text: string;
    readonly index: number;
    readonly isIdle?: boolean;
}

function hasTrigger({ said, raw }: Sentence): boolean {
    return trigger.test(said) || /\{[^{}]+\.[^{}]+\}/.test(raw) || figuresIn(raw).length > 0;
}

function vagueWord(sentence: Sentence): Vague | undefined {
    const [match] = [...sentence.said.matchAll(openEnded)];
    return match && !hasTrigger(sentence) ? { text: match[0], index: match.index } : undefined;
}

function problem(entry: ProseEntry, sentence: Sentence, { text, index, isIdle = false }: Vague, finding: Finding): Raised {
    const lead = sentence.raw.length - sentence.raw.trimStart().replace(/^"+/, '').length;
    const body = sentence.raw.slice(lead).replace(/"+\s*$/, '').trimEnd();
    return {
        components: [], finding, at: spanIn(entry, sentence.start + index, text.length),
        message: isIdle
            ? `${finding.id} only asks to ${text.toLowerCase()}: it names no act, no interval and no figure at which work is due. Nobody can tell when that is done; say what is to be done, on what and by when.`
            : `“${text}” leaves what is to be done to the reader. A yard cannot price it; name the act, the part and the place, or the figure it is to reach.`,
        corrections: isIdle && entry.isWritten ? [{
            kind: 'replace-text', title: 'Measure again at the next haul-out', span: spanIn(entry, sentence.start + lead, body.length),
            text: 'Measure it again at the next haul-out and compare it with what is recorded here.',
        }] : [],
    };
}
