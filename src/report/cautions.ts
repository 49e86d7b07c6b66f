/**
 * The standing limits of a survey, in our own words. They say what the report does not prove, and that work is for
 * qualified people under local rules; each stands only where the record gives it something to limit, except the
 * general ones, which always stand.
 */
import type { SurveyRecord } from '../record/model.js';

export interface Caution {
    readonly title: string;
    readonly text: string;
}

export function cautionsFor(record: SurveyRecord): Caution[] {
    const has = (...kinds: string[]) => [...record.components.values()].some(c => record.vocabulary.kinds.get(c.kind)?.lineage.some(kind => kinds.includes(kind)) ?? kinds.includes(c.kind));
    const measures = (word: string) => record.readings.some(reading => reading.facts.get('measures')?.values.some(value => value.type === 'word' && value.word === word));
    const when = (condition: boolean, title: string, text: string): Caution[] => condition ? [{ title, text }] : [];
    return [
        { title: 'On the day', text: 'This report tells the state of the vessel as found at the attendances named. It promises nothing about any later day, and it is not a guarantee of the vessel or of any part of her.' },
        { title: 'What could be reached', text: 'Only what could be reached without taking the vessel apart was examined. What was closed, stowed over, lined, painted, or covered by slings, stands or blocks may hide what is not told here. That a part is not mentioned does not mean that it is in order.' },
        ...when(has('main-engine', 'engine', 'generator'), 'Engines', 'Engines and generators were judged from outside and by running only. Their inside was not opened.'),
        ...when(has('conductor', 'panel', 'battery', 'shore-inlet', 'breaker', 'battery-switch'), 'Wiring', 'Wiring behind panels and linings was not seen.'),
        ...when(has('fuel-tank', 'water-tank', 'holding-tank', 'tank'), 'Tanks', 'Tanks were neither opened nor put under pressure, except where a test is recorded.'),
        ...when(measures('moisture'), 'Moisture', 'Moisture readings compare places on the scale of one meter. By themselves they prove neither water nor decay.'),
        ...when(measures('percussion'), 'Sounding', 'Sounding with a hammer finds only what changes the sound.'),
        ...when(measures('thickness'), 'Gauging', 'Thickness readings speak for the points gauged and not for what lies between them.'),
        ...when(has('mast', 'boom', 'shroud', 'stay', 'sail'), 'Rig and sails', 'Masts were seen from deck, and sails as they lay, except where climbing, unstepping or hoisting is recorded.'),
        { title: 'Not computed', text: 'Stability, strength of the design, and agreement with any body of rules as a whole were not computed. Figures that were computed state what they assume.' },
        { title: 'Standards', text: 'Standards are cited as they read today. They may be voluntary, and may not bind a vessel built before them. Rules differ by place: follow those that hold where she is kept and used.' },
        { title: 'Work', text: 'Recommendations are to be carried out by people qualified for the work, by their own judgment of what they find when they open it up, and the result is to be inspected.' },
        ...when(record.valuations.length > 0, 'Value', 'The value is an opinion for the date given, from the sources named. Markets move, and another surveyor may come to another figure.'),
        { title: 'Title', text: 'Ownership, debts and legal title were not searched.' },
        { title: 'Whose report', text: 'The report is made for the client named. Nobody else may rely on it without the surveyor’s written consent.' },
    ];
}
