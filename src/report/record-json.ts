/**
 * Makes the JSON of the whole record. Nothing in it depends on a clock, a machine or the order of hashing: the same
 * survey gives the same bytes. Every text is plain, without signs that cannot be printed.
 */
import type { Analysis } from '../checks/analyse.js';
import { ladderOf, weighedOf, type Rung } from '../checks/valuation/ladder.js';
import type { Dimension } from '../quantities/index.js';
import { computedFacts } from '../record/computed.js';
import type { DateFigure, Fact, FactSet, Finding, Photo, Prose, Quantity, Reading, Row, SurveyRecord, Valuation, Value } from '../record/model.js';
import { computedCellText, computedColumnsOf } from '../record/reading-columns.js';
import { grossShare, netShare, weightedSum, weightSum } from '../trade/comparables.js';
import { ReportContext, type IssueStamp } from './context.js';
import { printable } from './html.js';
import { listProblems, type ListOptions } from './problem-list.js';
import { valueInSentence } from './prose.js';
import type {
    RecordComparable, RecordDocument, RecordFacts, RecordFinding, RecordPhoto, RecordQuantity, RecordReading, RecordRow, RecordValuation, RecordValue,
} from './record-document.js';
import { capital, computedText, daysOf, figureText, isWord, wordText } from './wording.js';

export type * from './record-document.js';

/** `position` gives one-based line and column of an offset; `name` the path of a file beside the main file. */
export interface RecordOptions extends Pick<ListOptions, 'position' | 'name'> {
    readonly issue?: IssueStamp;
}

/** Units that the values of a dimension are in; money is in its currency instead. */
const siUnits: Readonly<Partial<Record<Dimension, string>>> = {
    number: '1', length: 'm', area: 'm2', volume: 'm3', mass: 'kg', time: 's', temperature: 'K', pressure: 'Pa', flow: 'm3/s', speed: 'm/s', voltage: 'V', current: 'A', resistance: 'ohm',
    power: 'W', charge: 'C', energy: 'J', force: 'N', torque: 'N m', angle: 'rad', fraction: '1', rotation: 'rad/s', rate: '1/s', frequency: 'Hz', 'density-per-area': '1/m2', 'time-of-day': 's',
};

/** The record of an analysed survey. Serialize it with `recordText`. */
export function recordJson(analysis: Analysis, { position, name, issue }: RecordOptions): RecordDocument {
    const { record, problems, gaps } = analysis;
    const computed = computedFacts(record);
    // The report's own context, so that the record says of each finding what the report says.
    const context = new ReportContext({
        record, problems, gaps, computed, photos: new Map(), mode: 'file', ...(issue ? { issue } : {}),
        lineOf: span => ({ file: name(span.uri), line: position(span.uri, span.start).line }),
    });
    const { survey, vessel, vocabulary } = record;
    const { firm } = vocabulary;
    const facts = (set: FactSet) => factsOf(context, set.facts);
    const photos = (list: readonly Photo[]) => list.map(photo => photoOf(context, photo));
    const plain = (prose: Prose) => context.plain(prose);
    const document: RecordDocument = {
        version: 1,
        issue: issue ? { number: issue.number, date: issue.date.iso, ...given('signedBy', issue.signedBy) } : null,
        survey: survey ? {
            ...given('number', survey.number), ...given('kind', survey.surveyKind), facts: facts(survey),
            attendances: survey.attendances.map(({ date, state, place }) => ({ ...given('date', date?.iso), ...given('state', state), ...given('place', place) })), photos: photos(survey.photos),
        } : null,
        vessel: vessel ? { name: vessel.name, facts: facts(vessel), notes: vessel.notes.map(plain), photos: photos(vessel.photos) } : null,
        systems: record.systems.map(({ id, title }) => ({ id, title })),
        components: [...record.components.values()].map(component => ({
            id: component.id, kind: component.kind, kindTitle: vocabulary.kinds.get(component.kind)?.title ?? capital(wordText(component.kind)), ...given('title', component.title),
            ...given('system', component.system), facts: facts(component), notes: component.notes.map(plain), photos: photos(component.photos),
        })),
        runs: record.runs.map(run => ({
            id: run.id, ...given('title', run.title), ...given('system', run.system), facts: facts(run), components: run.components.map(c => c.id),
            joints: run.joints.map(joint => ({ from: joint.from.id, to: joint.to.id, fromEnd: joint.fromEnd, toEnd: joint.toEnd, facts: facts(joint) })), end: run.end,
        })),
        contacts: record.contacts.map(contact => ({ components: contact.components.map(c => c.id), facts: facts(contact) })),
        readings: record.readings.map(reading => readingOf(context, reading)),
        findings: record.findings.map(finding => findingOf(context, finding)),
        acceptances: record.acceptances.map(acceptance => ({
            check: acceptance.check.id, on: acceptance.on.map(c => c.id), onFindings: acceptance.onFindings, reason: acceptance.reason ? plain(acceptance.reason) : '', ...given('system', acceptance.system),
        })),
        unseen: record.unseen.map(({ what, absent, part, reason, system }) => ({
            what, isAbsent: absent, ...given('part', part), ...given('reason', reason && plain(reason)), ...given('system', system),
        })),
        valuations: record.valuations.map(valuation => valuationOf(context, valuation)),
        computed: Object.fromEntries([...computed].map(([fact, text]) => [fact, computedText(text)])),
        problems: listProblems([analysis], [], { position, name, files: record.uris }).flatMap(({ file, problems: listed }) => listed.map(problem => ({ file, ...problem }))),
        yardsticks: yardsticksOf(context),
        standards: standardsOf(context),
        firm: firm ? { name: firm.name, facts: facts(firm) } : null,
        people: [...peopleNamed(record)].flatMap(id => {
            const person = vocabulary.people.get(id);
            return person ? [{ id, name: person.name, facts: facts(person) }] : [];
        }),
        files: record.uris.map(name),
    };
    return allPrintable(document);
}

/** The record as it is written to a file. */
export const recordText = (document: RecordDocument): string => `${JSON.stringify(document, undefined, 2)}\n`;

/** A property that is left out where there is nothing to say. */
function given<K extends string, V>(key: K, value: V | undefined): { readonly [P in K]?: V } {
    return value === undefined ? {} : { [key]: value } as { readonly [P in K]: V }; // The one key is K.
}

/** Texts without signs that cannot be printed, numbers without the last digits that only arithmetic put there. */
function allPrintable<T>(value: T): T {
    if (typeof value === 'string') {
        return printable(value) as T;
    }
    if (typeof value === 'number') {
        return Number(value.toPrecision(12)) as T;
    }
    if (Array.isArray(value)) {
        return value.map(allPrintable) as T;
    }
    if (typeof value === 'object' && value !== null) {
        return Object.fromEntries(Object.entries(value).map(([key, inner]) => [printable(key), allPrintable(inner)])) as T;
    }
    return value;
}

function factsOf(context: ReportContext, facts: ReadonlyMap<string, Fact>): RecordFacts {
    return Object.fromEntries([...facts].map(([name, fact]) => [name, fact.values.map(value => valueOf(context, value))]));
}

function quantityOf({ si, low, high, figure }: Quantity): RecordQuantity {
    const { dimension, currency, tolerance, written } = figure;
    return {
        type: 'quantity', written, text: figureText(figure), dimension, si, ...dimension === 'money' ? given('currency', currency || undefined) : given('unit', siUnits[dimension]),
        ...given('low', low), ...given('high', high), ...given('tolerance', tolerance),
    };
}

function valueOf(context: ReportContext, value: Value): RecordValue {
    const text = valueInSentence(context, value);
    switch (value.type) {
        case 'quantity': return quantityOf(value);
        case 'date': return { type: 'date', written: value.figure.written, text, date: value.figure.iso };
        case 'word': return { type: 'word', word: value.word, text, ...given('amount', value.amount && quantityOf(value.amount)) };
        case 'material': return { type: 'material', material: value.material.id, text: value.material.title };
        case 'component': return { type: 'component', component: value.id, text };
        case 'person': return { type: 'person', person: value.id, text };
        case 'text': return { type: 'text', text, ...given('written', value.prose.segments.some(segment => typeof segment !== 'string') ? value.prose.text : undefined) };
        case 'citation': return { type: 'citation', standard: value.standard, ...given('clause', value.clause), text };
        case 'check': return { type: 'check', check: value.id, text };
    }
}

function photoOf(context: ReportContext, { file, caption, marks }: Photo): RecordPhoto {
    const facts = context.record.photoFacts.get(file);
    return {
        file, ...given('caption', caption && context.plain(caption)),
        marks: marks.map(({ shape, label, points, radius }) => ({ shape, ...given('label', label), points: points.map(({ across, down }) => ({ across, down })), ...given('radius', radius) })),
        ...given('taken', facts?.taken), ...given('sha256', facts?.sha256),
    };
}

function readingOf(context: ReportContext, reading: Reading): RecordReading {
    return {
        id: reading.id, ...given('title', reading.title), ...given('system', reading.system), on: reading.on.map(c => c.id), facts: factsOf(context, reading.facts),
        rows: reading.rows.map(row => ({
            label: row.label, cells: row.cells.map(({ column, value }) => ({ ...given('column', column), value: value ? valueOf(context, value) : null })), computed: computedOf(context, row, reading),
        })),
    };
}

function computedOf({ record }: ReportContext, row: Row, reading: Reading): RecordRow['computed'] {
    return computedColumnsOf(reading, record).flatMap(column => {
        const si = column.of(row, reading, record);
        const texts = si === undefined ? [] : [...new Set([computedCellText(si, column, 'us'), computedCellText(si, column, 'metric')])];
        return si === undefined ? [] : [{
            name: column.name, title: column.title, dimension: column.dimension, si, text: computedText(texts.length === 1 ? texts.join('') : `${texts[0] ?? ''} (${texts[1] ?? ''})`), formula: column.formula,
        }];
    });
}

function findingOf(context: ReportContext, finding: Finding): RecordFinding {
    return {
        id: finding.id, title: finding.title, ...given('system', finding.system), on: finding.on.map(c => c.id), answers: finding.answers.map(answer => answer.id),
        facts: factsOf(context, new Map([...finding.facts].filter(([name]) => name !== 'answers'))), due: context.dueOf(finding), ...given('dueDate', dueDateOf(context, finding)),
        notes: finding.notes.map(note => context.plain(note)), photos: finding.photos.map(photo => photoOf(context, photo)),
    };
}

/** ISO date of a finding due within days, counted from a date of issue that is known to the day. */
export function dueDateOf(context: ReportContext, finding: Finding): string | undefined {
    const urgency = context.first(finding, 'urgency');
    const issued: DateFigure | undefined = context.issued;
    if (!isWord(urgency) || urgency.word !== 'within-days' || !urgency.amount || issued?.precision !== 'day' || issued.day === undefined) {
        return undefined;
    }
    const due = new Date(Date.UTC(issued.year, issued.month - 1, issued.day) + Math.round(daysOf(urgency.amount.figure)) * 86_400_000);
    return Number.isNaN(due.getTime()) ? undefined : due.toISOString().slice(0, 10);
}

function valuationOf(context: ReportContext, valuation: Valuation): RecordValuation {
    const rungs = ladderOf(valuation);
    const weighed = weighedOf(rungs);
    return {
        ...given('title', valuation.title), facts: factsOf(context, valuation.facts), comparables: rungs.map(rung => comparableOf(context, rung)),
        ...given('weighed', weighed && { amount: weightedSum(weighed), currency: rungs[0]?.currency ?? '', weights: weightSum(weighed.map(({ weight }) => weight)) }),
    };
}

function comparableOf(context: ReportContext, { comparable, price, isAsked, steps, sum, adjusted, weight }: Rung): RecordComparable {
    const amounts = steps.flatMap(({ amount }) => amount ?? []);
    const isComplete = price !== undefined && amounts.length > 0 && amounts.length === steps.length;
    return {
        id: comparable.id, ...given('title', comparable.title), facts: factsOf(context, comparable.facts), ...given('price', price && { amount: price.amount, currency: price.currency }), isAsked,
        adjustments: steps.map(({ reason, written, amount }) => ({ reason, ...given('written', written?.figure.written), ...given('amount', amount) })),
        ...given('sum', sum), ...given('adjusted', adjusted), ...given('weight', weight),
        ...given('grossShare', isComplete ? grossShare(price.amount, amounts) : undefined), ...given('netShare', isComplete ? netShare(price.amount, amounts) : undefined),
    };
}

function yardsticksOf({ record, problems }: ReportContext): RecordDocument['yardsticks'] {
    const { yardsticks, kinds } = record.vocabulary;
    const used = new Set<string>(problems.filter(({ severity }) => severity !== 'hint').flatMap(({ check }) => check.yardsticks ?? []));
    return [...yardsticks].filter(([name, { isFirms }]) => isFirms || used.has(name)).map(([name, { fact, isFirms }]) => ({
        name, about: kinds.get('yardsticks')?.properties.get(name)?.about ?? wordText(name), written: fact.written, isFirms,
    }));
}

function standardsOf(context: ReportContext): RecordDocument['standards'] {
    const cited = new Set(context.record.findings.flatMap(finding => (finding.facts.get('cites')?.values ?? []).flatMap(value => value.type === 'citation' ? [value.standard] : [])));
    return [...cited].sort().flatMap(name => {
        const standard = context.record.vocabulary.standards.get(name);
        return standard ? [{ name, title: standard.title, facts: factsOf(context, standard.facts) }] : [];
    });
}

/** Ids of people in the order the survey names them: others of the firm's are nobody's business. */
function peopleNamed({ survey }: SurveyRecord): Set<string> {
    return new Set([...survey?.facts.values() ?? []].flatMap(fact => fact.values.flatMap(value => value.type === 'person' ? [value.id] : [])));
}
