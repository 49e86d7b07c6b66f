/** What later surveys and issues need to know of a report: its recommendations as its record has them. */
import type { IssuedFinding, IssuedReport } from '../record/model.js';
import type { RecordDocument, RecordFacts, RecordFinding } from './record-document.js';

/** The report of a record. `source` is where it was read, for messages; `isFrozen` whether that is the record of an issue as it was made. */
export function issuedReportOf(document: RecordDocument, { source, isFrozen }: Pick<IssuedReport, 'source' | 'isFrozen'>): IssuedReport {
    const { survey, vessel, issue } = document;
    const names = new Map(document.components.map(({ id, title }) => [id, title === undefined ? id : `${title} (${id})`]));
    const number = issue?.number ?? numberOf(survey?.facts, 'issue');
    const issued = issue?.date ?? dateOf(survey?.facts, 'issued');
    const hullNumber = textOf(vessel?.facts, 'hull-number');
    return {
        number: survey?.number ?? '', ...(number === undefined ? {} : { issue: number }), ...(issued === undefined ? {} : { issued }), ...(vessel ? { vessel: vessel.name } : {}),
        ...(hullNumber === undefined ? {} : { hullNumber }), findings: document.findings.map(finding => issuedFindingOf(finding, names)), source, isFrozen,
    };
}

function issuedFindingOf({ id, title, on, facts, due }: RecordFinding, names: ReadonlyMap<string, string>): IssuedFinding {
    const texts: readonly (readonly [keyof IssuedFinding, string | undefined])[] = [
        ['urgency', wordOf(facts, 'urgency')], ['due', due], ['place', textOf(facts, 'place')], ['seen', textOf(facts, 'seen')], ['because', textOf(facts, 'because')],
        ['recommend', textOf(facts, 'recommend')], ['outcome', wordOf(facts, 'outcome')],
    ];
    return { id, title, on: on.map(component => names.get(component) ?? component), ...Object.fromEntries(texts.filter(([, text]) => text !== undefined)) };
}

const valuesOf = (facts: RecordFacts | undefined, name: string) => facts && Object.hasOwn(facts, name) ? facts[name] ?? [] : [];

function textOf(facts: RecordFacts | undefined, name: string): string | undefined {
    const values = valuesOf(facts, name);
    return values.length === 0 ? undefined : values.map(({ text }) => text).join('; ');
}

function wordOf(facts: RecordFacts | undefined, name: string): string | undefined {
    const [value] = valuesOf(facts, name);
    return value?.type === 'word' ? value.word : undefined;
}

function numberOf(facts: RecordFacts | undefined, name: string): number | undefined {
    const [value] = valuesOf(facts, name);
    return value?.type === 'quantity' ? value.si : undefined;
}

function dateOf(facts: RecordFacts | undefined, name: string): string | undefined {
    const [value] = valuesOf(facts, name);
    return value?.type === 'date' ? value.date : undefined;
}
