/** Hull potentials wherever they are recorded: as components of their own, or as rows of a table. */
import { nameOf, ofKind, rowsOf, siOf, wordOf, type Component, type Reading, type Row, type Span, type SurveyRecord } from '../../record/model.js';

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
    readonly volts: (name: PotentialName) => number | undefined;
    readonly span: (name: PotentialName) => Span;
    /** A figure in drafted prose: a reference where there is a fact to refer to. */
    readonly quoted: (name: PotentialName) => string;
}

export const millivolts = (v: number): number => Math.round(v * 1000);

const properties = {
    potential: 'potential', 'dc-on': 'potential-dc-on', 'dc-off': 'potential-dc-off', 'shore-in': 'potential-shore-in', 'shore-out': 'potential-shore-out', 'own-potential': 'own-potential',
} as const;

export function potentialReadings(record: SurveyRecord): PotentialReading[] {
    return [
        ...ofKind(record, 'hull-potential').map(ofComponent),
        ...rowsOf(record, 'potential').map(({ reading, row }) => ofRow(record, reading, row)),
    ];
}

function ofComponent(component: Component<'hull-potential'>): PotentialReading {
    return {
        components: [component], component, name: nameOf(component), cell: wordOf(component, 'cell'), gear: wordOf(component, 'gear'),
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
        name: `${row.label}${row.label === '' ? 'A row' : ''} of ${reading.title ?? reading.id}`, cell: wordOf(reading, 'cell'), gear: wordOf(reading, 'gear'), volts,
        span: name => row.facts.get(name)?.span ?? row.span,
        quoted: name => `${millivolts(volts(name) ?? 0)} mV`,
    };
}
