/** A figure outside what is usual for its fact, or outside what its instrument can show: most often a slip of the pen. */
import { nameOf, valueOf, type Component, type FactSet, type Quantity, type Reading, type Span, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { readOtherwise } from '../other-unit.js';

const slack = 1e-9;

export const figureUnusual = defineCheck({
    id: 'figure-unusual',
    group: 'record',
    severity: 'warning',
    isOfReport: true,
    yields: true,
    title: 'Figure outside the usual range',
    why: 'A slip of a digit or a unit, miles for knots or inches for millimeters, passes into the report and into every figure computed from it.',
    needs: ['any figure whose fact has a usual range in the catalogue', 'reading: instrument-range'],
    computes: 'The figure, or the ends of its range, against the usual range of its property in the catalogue, and, in a table, against the range of its instrument.',
    sources: [{ text: 'ranges for typing slips; outside asks and does not refuse', provenance: 'practice' }],
    limits: ['Usual is wide: a wrong figure inside it is not seen.', 'A figure that is truly so is accepted with its reason.', 'Where another check finds fault with the same figure, that one speaks and this is silent.'],
    examples: [{
        name: 'inches for millimeters',
        bad: 'vessel "Marram" {}\nhose H1 { bore: 38 in }\n',
        fixed: 'vessel "Marram" {}\nhose H1 { bore: 38 mm }\n',
        correction: 'Read 38 in as 38 mm',
    }, {
        name: 'a reading that its gauge cannot show',
        bad: 'reading M1 "Potentials" {\n    measures: potential\n    instrument-range: -1200 mV..0 mV\n    row "Rudder": -1300 mV\n}\n',
        fixed: 'reading M1 "Potentials" {\n    measures: potential\n    instrument-range: -1200 mV..0 mV\n    row "Rudder": -1100 mV\n}\n',
    }],
    silent: [
        { name: 'at the end of the range', text: 'hose H1 { bore: 6 mm }\n' },
        { name: 'usual in either unit', text: 'hose H1 { bore: 1-1/2 in }\nhose H2 { bore: 38 mm }\n' },
    ],
    run(record, raise) {
        const judge = (set: FactSet, components: readonly Component[], whose: string) => judgeFacts(record, set, components, whose, raise);
        if (record.survey) {
            judge(record.survey, [], 'the survey');
        }
        if (record.vessel) {
            judge(record.vessel, [], 'the vessel');
        }
        for (const component of record.components.values()) {
            judge(component, [component], nameOf(component));
        }
        for (const run of record.runs) {
            judge(run, [], run.title ?? run.id);
            run.joints.forEach(joint => joint.facts.size > 0 && judge(joint, [], `the joint of ${joint.from.id} and ${joint.to.id}`));
        }
        record.contacts.forEach(contact => judge(contact, [], `the contact of ${contact.components.map(c => c.id).join(' and ')}`));
        for (const reading of record.readings) {
            judge(reading, [], reading.title ?? reading.id);
            judgeRows(record, reading, raise);
        }
        for (const valuation of record.valuations) {
            judge(valuation, [], valuation.title ?? 'the valuation');
            valuation.comparables.forEach(comparable => judge(comparable, [], comparable.title ?? comparable.id));
        }
    },
});

interface Range {
    readonly low: number;
    readonly high: number;
    readonly written: string;
}

const isOutside = ({ si, low, high }: Quantity, range: Range) => (low ?? si) < range.low - slack * Math.max(1, Math.abs(range.low)) || (high ?? si) > range.high + slack * Math.max(1, Math.abs(range.high));

function judgeFacts(record: SurveyRecord, set: FactSet, components: readonly Component[], whose: string, raise: (problem: Raised) => void): void {
    const properties = record.vocabulary.kinds.get(set.kind)?.properties;
    for (const fact of set.facts.values()) {
        const usual = properties?.get(fact.name)?.usual;
        const value = usual && fact.values.find((each): each is Quantity => each.type === 'quantity' && isOutside(each, usual));
        if (usual && value) {
            raise(problem(components, fact.span, `${fact.name} of ${whose}`, value, usual, 'is usual', fact.values.length === 1));
        }
    }
}

function judgeRows(record: SurveyRecord, reading: Reading, raise: (problem: Raised) => void): void {
    const instrument = valueOf(reading, 'instrument-range');
    for (const row of reading.rows) {
        const properties = record.vocabulary.kinds.get(row.kind)?.properties;
        for (const { column, value, span } of row.cells) {
            if (column === undefined || value?.type !== 'quantity') {
                continue;
            }
            const usual = properties?.get(column)?.usual;
            const where = `${column} of “${row.label}” in ${reading.title ?? reading.id}`;
            if (usual && isOutside(value, usual)) {
                raise(problem([], span, where, value, usual, 'is usual', true));
            } else if (instrument?.type === 'quantity' && instrument.figure.dimension === value.figure.dimension && instrument.low !== undefined && instrument.high !== undefined) {
                const range = { low: instrument.low, high: instrument.high, written: instrument.figure.written };
                if (isOutside(value, range)) {
                    raise(problem([], span, where, value, range, 'is what its instrument shows', true));
                }
            }
        }
    }
}

function problem(components: readonly Component[], at: Span, what: string, value: Quantity, range: Range, says: string, isOne: boolean): Raised {
    const suits = (si: number) => si >= range.low && si <= range.high;
    return {
        components, at,
        message: `${what.charAt(0).toUpperCase()}${what.slice(1)} is ${value.figure.written}; ${range.written.replace('..', ' to ')} ${says}. Read it again, and its unit.`,
        corrections: isOne && value.low === undefined ? readOtherwise(value, suits).map(({ title, text }) => ({ kind: 'replace-text' as const, title, span: at, text })) : [],
    };
}
