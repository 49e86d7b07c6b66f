/** How a comparable stands to the vessel surveyed in the matter of an adjustment, where words or facts tell it. */
import type { Standing } from '../../trade/comparables.js';
import { dimensionsDiffer } from '../../trade/plausible-particulars.js';
import { ofKind, siOf, wordOf, type Comparable, type SurveyRecord } from '../../record/model.js';

const better = /\b(?:superior|better|newer|larger|bigger|longer|(?:fewer|lower|less)\s+(?:engine\s+)?hours)\b/i;
const worse = /\b(?:inferior|worse|poorer|older|smaller|shorter|(?:more|higher)\s+(?:engine\s+)?hours)\b/i;
/** Words that turn the sense, or speak of the market, where a rise or fall is no matter of the vessel. */
const turned = /\b(?:not|no|never|nor|need(?:s|ed)?|want(?:s|ed)?|without|until|sale|sold|market|price[sd]?|time|exposure|season|broker\w*)\b/i;

const opposite: Readonly<Record<Standing, Standing>> = { better: 'worse', worse: 'better' };

/** What the words of the reason say; undefined where they do not tell whom they speak of. */
export function standingInWords(reason: string, vesselName?: string): Standing | undefined {
    const [up, down] = [better.exec(reason), worse.exec(reason)];
    const word = up ?? down;
    if (!word || (up && down) || turned.test(reason)) {
        return undefined;
    }
    const said: Standing = up ? 'better' : 'worse';
    const name = vesselName?.trim().replace(/[.*+?^${}()|[\]\\]/g, '\\$&') ?? '';
    const subject = new RegExp(`\\b(than|to|of)?\\s*(?:the\\s+|this\\s+)?\\b(?:subject|vessel\\s+surveyed|surveyed\\s+vessel|ours${name === '' ? '' : `|${name}`})\\b`, 'i').exec(reason);
    if (!subject) {
        return said;
    }
    if (subject[1] !== undefined) {
        return subject.index > word.index ? said : undefined;
    }
    return subject.index < word.index ? opposite[said] : undefined;
}

/** What facts of the two say: year, length, hours, condition and gear, each for reasons that speak of it. */
function standingInFacts(record: SurveyRecord, comparable: Comparable, reason: string): Standing | undefined {
    const against = (theirs: number | undefined, hers: number | undefined, moreIs: Standing): Standing | undefined =>
        theirs === undefined || hers === undefined || theirs === hers ? undefined : theirs > hers ? moreIs : opposite[moreIs];
    const stated = (property: 'condition' | 'gear'): Standing | undefined => {
        const word = wordOf(comparable, property);
        return word === 'better' || word === 'worse' ? word : undefined;
    };
    const { vessel } = record;
    const votes: (Standing | undefined)[] = [];
    if (/\b(?:age|year|built)\b/i.test(reason)) {
        votes.push(against(siOf(comparable, 'built'), vessel && (siOf(vessel, 'model-year') ?? siOf(vessel, 'built')), 'better'));
    }
    if (/\b(?:length|size)\b/i.test(reason)) {
        const [theirs, hers] = [siOf(comparable, 'length'), vessel && siOf(vessel, 'length-overall')];
        votes.push(theirs !== undefined && hers !== undefined && dimensionsDiffer(theirs, hers) ? against(theirs, hers, 'better') : undefined);
    }
    if (/\bhours\b/i.test(reason)) {
        const hers = ofKind(record, 'main-engine').flatMap(engine => siOf(engine, 'hours') ?? []);
        votes.push(against(siOf(comparable, 'engine-hours'), hers.length === 1 ? hers[0] : undefined, 'worse'));
    }
    if (/\bcondition\b/i.test(reason)) {
        votes.push(stated('condition'));
    }
    if (/\b(?:gear|equipment|inventory|sails?|electronics)\b/i.test(reason)) {
        votes.push(stated('gear'));
    }
    const told = new Set(votes.filter(vote => vote !== undefined));
    return told.size === 1 ? [...told][0] : undefined;
}

/** Whether the comparable is better or worse than the vessel surveyed, in the matter an adjustment names. */
export function standingOf(record: SurveyRecord, comparable: Comparable, reason: string): Standing | undefined {
    const inWords = standingInWords(reason, record.vessel?.name);
    const inFacts = turned.test(reason) ? undefined : standingInFacts(record, comparable, reason);
    return inWords !== undefined && inFacts !== undefined && inWords !== inFacts ? undefined : inWords ?? inFacts;
}
