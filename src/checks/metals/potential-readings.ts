/** Hull potentials wherever they are recorded: as components of their own, or as rows of a table. */
import { nameOf, ofKind, rowsOf, siOf, wordOf, type Component, type Reading, type Row, type Span, type SurveyRecord } from '../../record/model.js';
import { millivolts } from '../phrasing.js';

/** What is read, by the names the rows of a table use. */
export type PotentialName = 'potential' | 'dc-on' | 'dc-off' | 'shore-in' | 'shore-out' | 'own-potential';

export interface PotentialReading {
    /** The component that is answered for: the reading itself, the part read, or what the table is on. */
    readonly components: readonly Component[];
    readonly name: string;
    /** The component that holds the facts; absent for a row of a table. */
    readonly component?: Component<'hull-potential'>;
    readonly cell: string | undefined;
    readonly gear: string | undefined;
    /** Water she lay in, where the table says. */
    readonly water: string | undefined;
    readonly volts: (name: PotentialName) => number | undefined;
    readonly span: (name: PotentialName) => Span;
    /** A figure in drafted prose: a reference where there is a fact to refer to. */
    readonly quoted: (name: PotentialName) => string;
}

const properties = {
    potential: 'potential', 'dc-on': 'potential-dc-on', 'dc-off': 'potential-dc-off', 'shore-in': 'potential-shore-in', 'shore-out': 'potential-shore-out', 'own-potential': 'own-potential',
} as const;

export function potentialReadings(record: SurveyRecord): PotentialReading[] {
    return [
        ...ofKind(record, 'hull-potential').map(component => ofComponent(record, component)),
        ...rowsOf(record, 'potential').map(({ reading, row }) => ofRow(record, reading, row)),
    ];
}

/** What the range is for, told by her hull and drives where it is not recorded at the reading. */
function gearOf(record: SurveyRecord): string | undefined {
    const value = record.vessel?.facts.get('hull-material')?.values[0];
    const hull = value?.type === 'material' ? value.material.class : undefined;
    if (hull === 'laminate') {
        const hasDrive = (['outdrive', 'saildrive', 'outboard', 'pod', 'jet-drive'] as const).some(kind => ofKind(record, kind).length > 0);
        const hasShaft = ofKind(record, 'shaft').length > 0;
        return hasShaft && !hasDrive ? 'fiberglass-bronze' : undefined;
    }
    return hull === 'aluminum' || hull === 'wood' ? hull : hull === 'iron-or-steel' ? 'steel' : undefined;
}

function waterOf(record: SurveyRecord): string | undefined {
    return record.vessel && wordOf(record.vessel, 'water');
}

function ofComponent(record: SurveyRecord, component: Component<'hull-potential'>): PotentialReading {
    return {
        components: [component], component, name: nameOf(component), cell: wordOf(component, 'cell'), gear: wordOf(component, 'gear') ?? gearOf(record), water: waterOf(record),
        volts: name => siOf(component, properties[name]),
        span: name => component.facts.get(properties[name])?.span ?? component.idSpan,
        quoted: name => `{${component.id}.${properties[name]}}`,
    };
}

function ofRow(record: SurveyRecord, reading: Reading, row: Row<'potential-row'>): PotentialReading {
    const part = row.facts.get('part')?.values[0];
    const component = part?.type === 'component' ? record.components.get(part.id) : undefined;
    const volts = (name: PotentialName) => name === 'own-potential' ? undefined : siOf(row, name);
    return {
        components: component ? [component] : reading.on.slice(0, 1),
        name: `${row.label}${row.label === '' ? 'A row' : ''} of ${reading.title ?? reading.id}`, cell: wordOf(reading, 'cell'), gear: wordOf(reading, 'gear') ?? gearOf(record), water: wordOf(reading, 'water') ?? waterOf(record), volts,
        span: name => row.facts.get(name)?.span ?? row.span,
        quoted: name => `${millivolts(volts(name) ?? 0)} mV`,
    };
}
