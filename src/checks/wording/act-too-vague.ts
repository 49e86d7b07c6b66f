/** A recommendation that names no act: nobody can price it, and nobody can tell when it is done. */
import { proseOf, spanIn, type ProseEntry } from '../../record/prose-entries.js';
import type { Finding } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { figuresIn, sentencesOf, spaced, type Sentence } from './sentences.js';

/** Words that leave the extent to whoever reads them. */
const openEnded = spaced(/\b(?:(?:as|when|if|where) (?:(?:found|deemed|considered) )?(?:to be )?(?:needed|required|necessary|appropriate|applicable|req(?:['’]?d)?\b|nec\b)(?<!required(?= by\b))(?! by \p{L}+ing\b)|properly|accordingly|to (?:a )?(?:good|proper|satisfactory) (?:condition|standard|order)|proper (?:operation|function(?:ing)?|working|installation)|up to (?:the )?(?:[\p{L}-]+ )?(?:standards?|code)|to (?:current|present|modern) (?:standards?|code)|appropriate (?:action|measures|repairs))\b/giu);
/** Verbs and phrases that ask for no act by themselves. */
const idle = spaced(/(?<![\p{L}-])(?:monitor(?:ed|ing)?|check(?:ed|ing)?|address(?:ed|ing)?|attend(?:ed|ing)? to|look(?:ed|ing)? (?:at|into)|keep(?:ing)? an eye on|ke(?:ep|eping|pt) (?:under |a )?(?:watch|observation|review)|watch(?:ed|ing)?|investigat(?:e|ed|ing)|consider(?:ed|ing)?|review(?:ed|ing)?|rectif(?:y|ied|ying)|de(?:al|aling|alt) with|sort(?:ed|ing)? out|see(?:n|ing)? to|evaluat(?:e|ed|ing)|assess(?:ed|ing)?|make good|made good|(?:needs?|requires?|wants?|needing|requiring) attention|attention (?:is |to )?(?:needed|required)|(?:further|additional|more) (?:investigation|inspection|evaluation|examination|assessment|study|testing))\b/giu);
/** Nouns that hold such a word: a check valve, a battery monitor, the owner's address. */
const things = spaced(/\bcheck (?:valves?|straps?|lists?|lines?|sheets?)\b|\bchecklists?\b|\b(?:battery|bilge|tank|engine|gas|depth|radar|oxygen|baby|voltage|shaft|exhaust|fire|load|the|a|new|second|colou?r) monitors?\b|\b(?:the|an|name and|owner['’]s|new) address(?:es)?\b(?! the\b)|\bdog watch\b|\bwatch(?:es|keepers?)?\b(?= (?:system|bill|keeper|officer))/giu);
/** A verb alone, which says neither what nor how. */
const bare = spaced(/^[\s"]*(?:(?:please|recommend(?:ed)?|suggest(?:ed)?|advised?|to be|should be|must be|needs? to be|to) )*(?:repair(?:s|ed|ing)?|fix(?:ed|ing)?|correct(?:ed|ing)?|rectif(?:y|ied)|inspect(?:ed|ion)?|service|upgraded?|maintain(?:ed)?|maintenance|repair(?:ed)?(?: (?:or|and) |\/)(?:replaced?|renew(?:ed)?)|(?:replaced?|renew(?:ed)?)(?: (?:or|and) |\/)repair(?:ed)?|inspect(?: (?:or|and) |\/)repair)[\s.!"]*$/iu);
const verbs = String.raw`(?:renew|replace|fit|refit|remove|repair|rebuild|rebed|bed|blank|cap|cut|crop|clean|strip|paint|coat|weld|grind|bolt|fasten|refasten|screw|rivet|tighten|slacken|drain|refill|fill|top up|flush|charge|wire|rewire|fuse|move|shift|lift|draw|test|measure|gauge|drill|sound|probe|weigh|inspect|service|lubricate|grease|free|seal|reseal|caulk|sleeve|secure|strap|support|hang|clip|clamp|isolate|insulate|bond|earth|ground|connect|disconnect|shut|close|open up|open|haul|mark|label|stow|lead|reroute|shorten|lengthen|raise|lower|add|carry|buy|engage|step|unstep|adjust|align|realign|balance|trace|stop|keep|make|install|provide|post|register|laminate|reinforce|stiffen|splice|scarf|sister|plug|close off|overhaul|recharge|requalify|swap|change|correct|set|take|put|use|run|leave|sample|swing|calibrate|photograph|read again|compare|refuse|tie|lock|pump|dry|peel|sand|prime|pack|repack|reseat|resecure|retorque|reattach|reterminate|reposition|varnish|recertify|galvanize|anneal|pressure-test|load-test|leak-test|blank off|strengthen|dewater|epoxy|crimp|solder|torque|extend|exchange|rename|number|cover|guard|shield|fair|scrape|shot-blast|blast|degrease|dispose of|consult|obtain|submit|apply|fabricate|prop|chock|shim|re-bed|re-seal|retest|discard|commission|unseize|exercise|operate|tape|glue|build|arrange|order|replumb|reglaze|restitch|sew|patch|inflate|deflate|vent|ventilate|relocate|remake|restore|return|bend|wrap|find|determine|establish|document|record|report|write|send|tow|winter|winterize|empty|re-fasten|deepen|divide|split|separate|join|reverse|bring|de-energize|energize|switch|unplug|hand|teach|refer|wash|rinse|brush|wipe|dress|file|polish|machine|bore|ream|turn|shave|plane|bevel|chamfer|notch|saw|trim|cast|pour|inject)`;
/** Where a verb stands as one: at the head of a clause, or after another verb. */
const act = spaced(new RegExp(String.raw`(?:^[\s"]*|[.;:,!?(–-]\s*|\b(?:and|or|then|to|not|but|first|please|now|also|must|should|shall|may|can|be|been|is|are|recommend(?:ed)?|suggest(?:ed)?|advised?|it|them|both|either|having|by|before|after|until|when|re) )(?:\p{L}+ly |also |then )?${verbs}\b|\b(?:have|get|let|ask|engage|instruct)\b[^.;]*\b${verbs}\b|\b${verbs}(?:e?d|ing)\b|\b(?:renewed|replaced|removed|renewal|replacement|removal|rebuilt|cut|drawn|made|built|hung|fitting|fitted|cropped|stripped|capped|plugged|clipped|strapped|clamped|shimmed|swapped|galvanized|bonded|greased|replacing|removing|changing|re-\p{L}+ed)\b`, 'iu'));
/** An order in a verb that is not known: a first word, then the thing. */
const order = spaced(/^[\s"]*(?!(?:as|if|when|where|for|in|on|at|to|the|this|that|these|with|within|after|before|until|from|recommend|suggest|advise|ensure|have|owner|please|under|all|any|both|no|check|monitor|address|attend|look|keep|watch|investigate|consider|review|rectify|deal|sort|see|evaluate|assess|maintain|repair|service)\b)\p{L}[\p{L}-]+ (?:(?:out|off|up|down|back|over|through|away) )?(?:the|a|an|both|all|its|her|their|these|new|two|three|four)\b/iu);
/** When, how often, or from what figure on. */
const trigger = spaced(/\b(?:before|until|when(?! (?:needed|required|necessary))|whenever|once|after|prior to|(?:every|each) (?:\d|other|second|third|few|hour|day|week|month|season|year|time|spring|summer|fall|autumn|winter|trip|passage|voyage|haul|lift|launch|use|departure|start|lay|morning|evening)|daily|weekly|monthly|yearly|annually|twice|at (?:the|each|every) next|at (?:each|every)|within|by (?:the end|\d|January|February|March|April|May|June|July|August|September|October|November|December)|from .{1,40} on|per (?:day|week|month|year|season)|months?|weeks?|days?)\b/iu);

export const actTooVague = defineCheck({
    id: 'act-too-vague',
    group: 'wording',
    severity: 'error',
    isOfReport: true,
    title: 'Recommendation names no act',
    why: 'A yard cannot price "as needed", and an owner cannot show that he did it.',
    needs: ['finding: recommend'],
    computes: 'A sentence of the recommendation that says as needed, as required, properly or up to standard without a figure, an interval or what is to be reached; one that only asks to monitor, check, address, investigate or consider, with no act, interval, event or figure anywhere in the recommendation; or a verb alone, as repair or service.',
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
            const hasAct = sentences.some(sentence => namesAct(sentence.said) || hasTrigger(sentence));
            sentences.forEach((sentence, i) => {
                const word = isVague[i];
                const [match] = [...withoutThings(sentence.said).matchAll(idle)];
                if (word) {
                    raise(problem(entry, sentence, word, finding));
                } else if (sentences.length === 1 && bare.test(sentence.said)) {
                    const text = sentence.said.trim().replace(/[\s.!]+$/, '');
                    raise(problem(entry, sentence, { text, index: sentence.said.indexOf(text), says: 'bare' }, finding));
                } else if (!hasAct && match) {
                    raise(problem(entry, sentence, { text: match[0], index: match.index, says: 'idle' }, finding));
                }
            });
        }
    },
});

interface Vague {
    readonly text: string;
    readonly index: number;
    /** An idle verb, or one that stands alone; else words that leave the extent open. */
    readonly says?: 'idle' | 'bare';
}

function hasTrigger({ said, raw }: Sentence): boolean {
    return trigger.test(said) || /\{[^{}]+\.[^{}]+\}/.test(raw) || figuresIn(raw).length > 0;
}

const withoutThings = (said: string) => said.replace(things, thing => '·'.repeat(thing.length));

/** An act asked for in words that can be told from those that only ask to look. */
function namesAct(said: string): boolean {
    const rest = withoutThings(said).replace(idle, words => '·'.repeat(words.length));
    return act.test(rest) || order.test(rest);
}

/** An interval, or what is to be reached, bounds an act; a date only says by when the unknown is due. */
const bounds = spaced(/\b(?:until|so that|(?:every|each) (?:\d|day|week|month|season|year|time|spring|fall|haul|trip)|daily|weekly|monthly|yearly|annually|per (?:day|week|month|year|season))\b|\b(?:any|those|all|each|every)\b[^.;]*\b(?:found|that|which|older|larger|deeper|over|under|showing|less|more|worn|rusty|cracked|broken|loose|wasted)\b/iu);
const dueBy = spaced(/\b(?:within|by|in) [^.;,]*?(?:days?|weeks?|months?|\d{4}(?:-\d\d)*)\b/giu);
/** With what or on what a thing is to be done properly. */
const means = spaced(/\b(?:with|using|by means of|in|on) (?:an?|two|three|four|new|its|the) \p{L}+/iu);
/** Acts whose extent does not hang on what is found: beside one of them "if needed" is a step of the work. */
const certain = spaced(/(?:^[\s"]*|[.;:,]\s*|\b(?:and|then) )(?:remove|draw|fit|cut|clean|strip|weld|grind|drain|test|measure|gauge|drill|sound|probe|lift|open|try|run|pressure-test|dry|scrape|shorten|lengthen|take|disconnect|unbolt|unscrew|haul|pull) (?:\p{L}+ )?(?:the|a|an|all|both|it|its|her|them|this|out|off|up|one|two)\b/iu);

function vagueWord(sentence: Sentence): Vague | undefined {
    const [match] = [...sentence.said.matchAll(openEnded)];
    if (!match) {
        return undefined;
    }
    const { said, raw } = sentence;
    const [text] = match;
    const isBounded = bounds.test(said) || /\{[^{}]+\.[^{}]+\}/.test(raw) || figuresIn(raw.replace(dueBy, '')).length > 0
        || (/^(?:if|where|when)\b/iu.test(text) && certain.test(said)) || (/^properly$/iu.test(text) && means.test(said));
    return isBounded ? undefined : { text, index: match.index };
}

/** Verbs that a date to measure again answers. */
const lookAgain = spaced(/^(?:monitor|check|watch|ke(?:ep|pt)|look(?:ed|ing)? at|review)/iu);

function problem(entry: ProseEntry, sentence: Sentence, { text, index, says }: Vague, finding: Finding): Raised {
    const lead = sentence.raw.length - sentence.raw.trimStart().replace(/^"+\s*/, '').length;
    const body = sentence.raw.slice(lead).replace(/\s*"+\s*$/, '').trimEnd();
    const words = text.replace(/\s+/g, ' ');
    return {
        components: [], finding, at: spanIn(entry, sentence.start + index, text.length),
        message: says === 'idle'
            ? `${finding.id} says only “${words.toLowerCase()}”: it names no act, no interval and no figure at which work is due. Nobody can tell when that is done; say what is to be done, on what and by when.`
            : says === 'bare' ? `${finding.id} says only “${words.toLowerCase()}”, neither the part nor how. A yard cannot price it; name the act, the part and the place.`
                : `“${words}” leaves what is to be done to the reader. A yard cannot price it; name the act, the part and the place, or the figure it is to reach.`,
        corrections: says === 'idle' && entry.isWritten && lookAgain.test(words) ? [{
            kind: 'replace-text', title: 'Measure again at the next haul-out', span: spanIn(entry, sentence.start + lead, body.length),
            text: 'Measure it again at the next haul-out and compare it with what is recorded here.',
        }] : [],
    };
}
