/**
 * The standing limits of a survey. They say what the report does not prove, and that work is for qualified people
 * under local rules; each stands only where the record gives it something to limit, except the general ones, which
 * always stand. Their words are in the catalogue and may be a firm's own.
 */
import { flagOf, ofKind, wordOf, type SurveyRecord } from '../record/model.js';
import type { KindName } from '../record/generated/kinds.js';
import type { ReportContext } from './context.js';
import type { Html } from './html.js';
import { standingInline, type StandingWords } from './standing-words.js';

export interface Caution {
    readonly words: StandingWords;
    readonly title: string;
    readonly text: Html;
}

interface Standing {
    readonly words: StandingWords & `caution-${string}`;
    readonly title: string;
    /** Left out where the caution always stands. */
    readonly stands?: (record: SurveyRecord) => boolean;
}

const has = (...kinds: readonly KindName[]) => (record: SurveyRecord) => kinds.some(kind => ofKind(record, kind).length > 0);
const measures = (word: string) => (record: SurveyRecord) => record.readings.some(reading => wordOf(reading, 'measures') === word);

const cautions: readonly Standing[] = [
    { words: 'caution-day', title: 'On the day' },
    { words: 'caution-reach', title: 'What could be reached' },
    { words: 'caution-stated', title: 'What was told', stands: record => [...record.components.values()].some(component => wordOf(component, 'basis') === 'stated') },
    { words: 'caution-engines', title: 'Engines', stands: has('engine') },
    { words: 'caution-wiring', title: 'Wiring', stands: has('conductor', 'panel', 'battery', 'shore-inlet', 'breaker', 'battery-switch') },
    { words: 'caution-tanks', title: 'Tanks', stands: has('tank', 'holding-tank') },
    { words: 'caution-moisture', title: 'Moisture', stands: record => measures('moisture')(record) || [...record.components.values()].some(component => component.facts.has('moisture-reading') || component.facts.has('core-reading')) },
    { words: 'caution-sounding', title: 'Sounding', stands: measures('percussion') },
    { words: 'caution-gauging', title: 'Gauging', stands: measures('thickness') },
    { words: 'caution-potentials', title: 'Potentials', stands: measures('potential') },
    { words: 'caution-mast', title: 'Masts', stands: record => ofKind(record, 'mast').some(mast => wordOf(mast, 'inspected') === undefined || wordOf(mast, 'inspected') === 'from-deck') },
    { words: 'caution-sails', title: 'Sails', stands: record => ofKind(record, 'sail').some(sail => flagOf(sail, 'hoisted') !== true) },
    { words: 'caution-computed', title: 'Not computed' },
    { words: 'caution-standards', title: 'Standards' },
    { words: 'caution-work', title: 'Work' },
    { words: 'caution-value', title: 'Value', stands: record => record.valuations.length > 0 },
    { words: 'caution-title', title: 'Title' },
    { words: 'caution-reliance', title: 'Whose report' },
];

export function cautionsFor(context: ReportContext): Caution[] {
    return cautions.filter(({ stands }) => stands?.(context.record) ?? true).map(({ words, title }) => ({ words, title, text: standingInline(context, words) }));
}
