/**
 * What differs between two records of one survey, for the reader of an amendment. Only what a reader would hold for
 * different is told: not the order of statements, nor another way of writing the same figure, nor where in the text a
 * fact stands. What merely follows from other facts (sums, means, problems) is left to them, but for computed facts
 * that the report prints.
 */
import type {
    RecordComparable, RecordDocument, RecordFacts, RecordFinding, RecordMark, RecordPhoto, RecordQuantity, RecordReading, RecordRun, RecordValuation, RecordValue,
} from './record-document.js';
import { propertyTitle, wordText } from './wording.js';

/** Of what a change is; the report tells them in this order. */
export const changedAreas = ['finding', 'value', 'vessel', 'survey', 'part', 'run', 'reading', 'accepted', 'unseen', 'computed', 'limit', 'people'] as const;
export type ChangedArea = (typeof changedAreas)[number];

export interface Change {
    readonly area: ChangedArea;
    /** Whether the subject itself, such as a finding or a part, is new or gone, or something about it differs. */
    readonly act: 'new' | 'withdrawn' | 'changed';
    /** Id of the finding, part, run or table, where it has one. */
    readonly id?: string;
    /** Its name in print. */
    readonly subject: string;
    /** What about it; empty for the whole of it. */
    readonly what: string;
    /** As printed; undefined where nothing was, or is now, recorded. */
    readonly before?: string;
    readonly after?: string;
    /** The mere date of the new issue moved it, as it does every date counted from it. */
    readonly followsFromIssue?: true;
}

/** Everything that differs, by area in the order of `changedAreas`. Empty for two records that say the same. */
export function changesBetween(before: RecordDocument, after: RecordDocument): readonly Change[] {
    const changes = [
        ...findings(before, after), ...valuations(before, after), ...vessel(before, after), ...survey(before, after), ...systems(before, after), ...parts(before, after), ...runs(before, after),
        ...contacts(before, after), ...readings(before, after), ...acceptances(before, after), ...unseen(before, after), ...computed(before, after), ...limits(before, after), ...people(before, after),
    ];
    return changedAreas.flatMap(area => changes.filter(change => change.area === area));
}

interface Subject {
    readonly area: ChangedArea;
    readonly id?: string;
    readonly subject: string;
}

/** A change from one text to another; none where they say the same. Blanks do not count. */
function textChange(subject: Subject, what: string, before: string | undefined, after: string | undefined): Change[] {
    const [was, is] = [blanksAsOne(before), blanksAsOne(after)];
    return was === is ? [] : [{ ...subject, act: 'changed', what, ...(was === '' ? {} : { before: was }), ...(is === '' ? {} : { after: is }) }];
}

const blanksAsOne = (text: string | undefined): string => (text ?? '').replace(/\s+/g, ' ').trim();

function isNew(subject: Subject, after: string): Change {
    return { ...subject, act: 'new', what: '', ...(after === '' ? {} : { after }) };
}

function isWithdrawn(subject: Subject, before: string): Change {
    return { ...subject, act: 'withdrawn', what: '', ...(before === '' ? {} : { before }) };
}

/** Entries of two lists by key, those of the later list first; a key that recurs is told apart by its turn. */
function pairs<T>(before: readonly T[], after: readonly T[], keyOf: (entry: T) => string): { readonly was?: T; readonly is?: T }[] {
    const byKey = (entries: readonly T[]) => {
        const found = new Map<string, T>();
        const turns = new Map<string, number>();
        for (const entry of entries) {
            const key = keyOf(entry);
            const turn = (turns.get(key) ?? 0) + 1;
            turns.set(key, turn);
            found.set(JSON.stringify([key, turn]), entry);
        }
        return found;
    };
    const [old, now] = [byKey(before), byKey(after)];
    return [
        ...[...now].map(([key, is]) => ({ is, ...(old.has(key) ? { was: old.get(key) as T } : {}) })), // It has the key.
        ...[...old].filter(([key]) => !now.has(key)).map(([, was]) => ({ was })),
    ];
}

/** Two lists entry by entry: what is new, what is gone, and what `differ` finds in those that are in both. */
function entries<T>(before: readonly T[], after: readonly T[], { keyOf, subjectOf, summary, differ }: {
    readonly keyOf: (entry: T) => string; readonly subjectOf: (entry: T) => Subject; readonly summary: (entry: T) => string; readonly differ: (was: T, is: T, subject: Subject) => readonly Change[];
}): Change[] {
    return pairs(before, after, keyOf).flatMap(({ was, is }) =>
        was && is ? differ(was, is, subjectOf(is)) : is ? [isNew(subjectOf(is), summary(is))] : was ? [isWithdrawn(subjectOf(was), summary(was))] : []);
}

/** What makes two values the same however they are written. */
function keyOfValue(value: RecordValue): string {
    switch (value.type) {
        case 'quantity': {
            const rounded = (number: number | undefined) => number === undefined ? undefined : Number(number.toPrecision(9));
            return JSON.stringify([value.dimension, value.currency, rounded(value.si), rounded(value.low), rounded(value.high), rounded(value.tolerance)]);
        }
        case 'date': return value.date;
        case 'word': return value.amount ? `${value.word} ${keyOfValue(value.amount)}` : value.word;
        case 'material': return value.material;
        case 'component': return value.component;
        case 'person': return value.person;
        case 'text': return blanksAsOne(value.text);
        case 'citation': return JSON.stringify([value.standard, value.clause]);
        case 'check': return value.check;
    }
}

/** Two figures that differ by less than this share, in other units, may be one measurement: 38 mm is 1.496 in. */
const conversionShare = 5e-4;

/** Whether two values are one figure, or one is the other converted to another unit and rounded as it is written. */
function isSameFigure(one: RecordValue, other: RecordValue | undefined): boolean {
    if (!other || JSON.stringify([one.type, keyOfValue(one)]) === JSON.stringify([other.type, keyOfValue(other)])) {
        return other !== undefined;
    }
    if (one.type !== 'quantity' || other.type !== 'quantity' || one.dimension !== other.dimension || one.dimension === 'money') {
        return false;
    }
    const [a, b] = [decimalOf(one), decimalOf(other)];
    const apart = Math.abs(one.si - other.si);
    return a !== undefined && b !== undefined && a.unit !== b.unit && apart <= conversionShare * Math.abs(one.si) && apart <= Math.max(a.step, b.step) / 2;
}

/** Unit of a plain decimal figure, and what a step in its last digit is in SI; undefined for a fraction, a range, and a scale that does not begin at 0. */
function decimalOf({ written, si, low, high, tolerance, dimension }: RecordQuantity): { readonly unit: string; readonly step: number } | undefined {
    const [, number = '', unit = ''] = /^(\d+(?:\.\d+)?)\s*(\p{L}[^\s\d]*)$/u.exec(written.trim()) ?? [];
    const isPlain = low === undefined && high === undefined && tolerance === undefined && dimension !== 'temperature' && Number(number) > 0;
    return isPlain ? { unit, step: 10 ** -(number.split('.')[1]?.length ?? 0) * si / Number(number) } : undefined;
}

/** The order of figures tells which end or which reading; that of words and texts tells nothing. */
function keyOfValues(values: readonly RecordValue[]): string {
    const keys = values.map(value => JSON.stringify([value.type, keyOfValue(value)]));
    return JSON.stringify(values.some(value => value.type === 'quantity') ? keys : keys.sort());
}

const textOfValues = (values: readonly RecordValue[]): string => values.map(value => value.text).join(values.some(value => value.type === 'text') ? '; ' : ', ');

/** The values in print, more exactly where two that differ would print alike. */
function valuesChange(subject: Subject, what: string, before: readonly RecordValue[], after: readonly RecordValue[]): Change[] {
    if (keyOfValues(before) === keyOfValues(after) || before.length === after.length && before.every((value, index) => isSameFigure(value, after[index]))) {
        return [];
    }
    const [was, is] = [textOfValues(before), textOfValues(after)];
    if (blanksAsOne(was) !== blanksAsOne(is)) {
        return textChange(subject, what, was, is);
    }
    const exactly = (values: readonly RecordValue[]) => values.map(value => 'written' in value && value.type !== 'text' ? value.written : keyOfValue(value)).join(', ');
    const exact = textChange(subject, what, exactly(before), exactly(after));
    return exact.length > 0 ? exact : textChange(subject, what, keyOfValues(before), keyOfValues(after));
}

function factsChanges(subject: Subject, before: RecordFacts, after: RecordFacts, { prefix = '', except = [] }: { readonly prefix?: string; readonly except?: readonly string[] } = {}): Change[] {
    const [old, now] = [new Map(Object.entries(before)), new Map(Object.entries(after))];
    return [...new Set([...now.keys(), ...old.keys()])].filter(name => !except.includes(name)).flatMap(name =>
        valuesChange(subject, prefix === '' ? propertyTitle(name) : `${prefix}: ${wordText(name)}`, old.get(name) ?? [], now.get(name) ?? []));
}

const factsInWords = (facts: RecordFacts): string => Object.entries(facts).map(([name, values]) => `${wordText(name)} ${textOfValues(values)}`).join('; ');

/** Parts as sentences. */
const together = (...parts: readonly (string | undefined)[]): string => parts.flatMap(part => part === undefined || part.trim() === '' ? [] : part.trim().replace(/\.$/, '')).join('. ');

const markInWords = ({ shape, label, points, radius }: RecordMark): string => {
    const percent = (share: number) => `${Math.round(share * 1000) / 10} %`;
    return `${shape}${label === undefined ? '' : ` “${label}”`} at ${points.map(({ across, down }) => `${percent(across)} across and ${percent(down)} down`).join(' to ')}${radius === undefined ? '' : `, radius ${percent(radius)}`}`;
};

function photoChanges(subject: Subject, before: readonly RecordPhoto[], after: readonly RecordPhoto[]): Change[] {
    return pairs(before, after, photo => photo.file).flatMap(({ was, is }): Change[] => {
        const file = is?.file ?? was?.file ?? '';
        const what = `Photograph ${file}`;
        if (!was || !is) {
            const shown = (photo: RecordPhoto | undefined) => photo && (together(photo.caption, ...photo.marks.map(markInWords)) || 'shown');
            return textChange(subject, what, shown(was), shown(is));
        }
        const at = (photo: RecordPhoto) => photo.position && `${photo.position.latitude}, ${photo.position.longitude}`;
        const isReplaced = was.sha256 !== undefined && is.sha256 !== undefined && was.sha256 !== is.sha256;
        return [
            ...isReplaced ? textChange(subject, `${what}: the picture file`, `SHA-256 ${was.sha256 ?? ''}`, `SHA-256 ${is.sha256 ?? ''}`) : [],
            ...textChange(subject, `${what}: caption`, was.caption, is.caption),
            ...textChange(subject, `${what}: marks`, was.marks.map(markInWords).sort().join('; '), is.marks.map(markInWords).sort().join('; ')),
            ...textChange(subject, `${what}: time by the camera`, was.taken, is.taken),
            ...textChange(subject, `${what}: place by the camera`, at(was), at(is)),
        ];
    });
}

const notesChange = (subject: Subject, before: readonly string[], after: readonly string[]): Change[] =>
    [...before].map(blanksAsOne).sort().join('\n') === [...after].map(blanksAsOne).sort().join('\n') ? [] : textChange(subject, 'Notes', before.join(' '), after.join(' '));

const sorted = (ids: readonly string[]): string => [...ids].sort().join(', ');

/** Ids with their names in a record. */
function namer({ components }: RecordDocument): (id: string) => string {
    const titles = new Map(components.map(component => [component.id, component.title ?? component.kindTitle]));
    return id => {
        const title = titles.get(id);
        return title === undefined ? id : `${title} (${id})`;
    };
}

function findings(before: RecordDocument, after: RecordDocument): Change[] {
    const [wasNamed, isNamed] = [namer(before), namer(after)];
    return entries(before.findings, after.findings, {
        keyOf: ({ id }) => id, subjectOf: ({ id, title }) => ({ area: 'finding', id, subject: `${id} ${title}`.trim() }),
        summary: finding => together(textOfValues(finding.facts['seen'] ?? []), finding.due),
        differ: (was, is, subject) => [
            ...textChange(subject, 'Title', was.title, is.title), ...textChange(subject, 'System', was.system, is.system),
            ...sorted(was.on) === sorted(is.on) ? [] : textChange(subject, 'On', was.on.map(wasNamed).join(', '), is.on.map(isNamed).join(', ')),
            ...textChange(subject, 'Answers', sorted(was.answers), sorted(is.answers)), ...factsChanges(subject, was.facts, is.facts), ...dueChange(subject, was, is),
            ...notesChange(subject, was.notes, is.notes), ...photoChanges(subject, was.photos, is.photos),
        ],
    });
}

/** A due date that has moved although the urgency has not: it is counted from the date of issue. */
function dueChange(subject: Subject, was: RecordFinding, is: RecordFinding): Change[] {
    const isSameUrgency = keyOfValues(was.facts['urgency'] ?? []) === keyOfValues(is.facts['urgency'] ?? []);
    return isSameUrgency ? textChange(subject, 'Due', was.due, is.due).map(change => ({ ...change, followsFromIssue: true })) : [];
}

function valuations(before: RecordDocument, after: RecordDocument): Change[] {
    return entries(before.valuations, after.valuations, {
        // A survey has one valuation as a rule, and its title may be put otherwise.
        keyOf: valuation => before.valuations.length <= 1 && after.valuations.length <= 1 ? '' : valuation.title ?? '', subjectOf: ({ title }) => ({ area: 'value', subject: title ?? 'Valuation' }),
        summary: ({ facts }) => factsInWords(facts),
        differ: (was: RecordValuation, is: RecordValuation, subject) => [
            ...textChange(subject, 'Title', was.title, is.title), ...factsChanges(subject, was.facts, is.facts), ...comparables(was, is),
        ],
    });
}

function comparables(before: RecordValuation, after: RecordValuation): Change[] {
    const stepsOf = (entry: RecordComparable) => entry.adjustments.map(({ reason, written }) => `${reason}${written === undefined ? '' : ` ${written}`}`).join('; ');
    return entries(before.comparables, after.comparables, {
        keyOf: ({ id }) => id, subjectOf: ({ id, title }) => ({ area: 'value', id, subject: `Comparable ${id}${title === undefined ? '' : `, ${title}`}` }),
        summary: entry => together(factsInWords(entry.facts), stepsOf(entry)),
        differ: (was, is, subject) => [
            ...textChange(subject, 'Title', was.title, is.title), ...factsChanges(subject, was.facts, is.facts),
            ...pairs(was.adjustments, is.adjustments, ({ reason }) => blanksAsOne(reason)).flatMap(step =>
                step.was && step.is && step.was.amount !== undefined && step.was.amount === step.is.amount ? []
                    : textChange(subject, `Adjustment: ${step.is?.reason ?? step.was?.reason ?? ''}`, step.was && (step.was.written ?? 'not stated'), step.is && (step.is.written ?? 'not stated'))),
        ],
    });
}

function vessel(before: RecordDocument, after: RecordDocument): Change[] {
    const none = { name: '', facts: {}, notes: [], photos: [] };
    const [was, is] = [before.vessel ?? none, after.vessel ?? none];
    const subject: Subject = { area: 'vessel', subject: is.name || was.name || 'Vessel' };
    return [...textChange(subject, 'Name', was.name, is.name), ...factsChanges(subject, was.facts, is.facts), ...notesChange(subject, was.notes, is.notes), ...photoChanges(subject, was.photos, is.photos)];
}

/** What every new issue changes by being one. */
const ofTheIssue = ['issue', 'issued'];

function survey(before: RecordDocument, after: RecordDocument): Change[] {
    const none: NonNullable<RecordDocument['survey']> = { facts: {}, attendances: [], photos: [] };
    const [was, is] = [before.survey ?? none, after.survey ?? none];
    const subject: Subject = { area: 'survey', subject: 'Survey' };
    const attended = ({ date, state, place }: (typeof is.attendances)[number]) => [date, state, place].filter(part => part !== undefined).join(', ');
    return [
        ...textChange(subject, 'Number of the report', was.number, is.number), ...textChange(subject, 'Kind of survey', was.kind && wordText(was.kind), is.kind && wordText(is.kind)),
        ...factsChanges(subject, was.facts, is.facts, { except: ofTheIssue }),
        ...pairs(was.attendances, is.attendances, attended).flatMap(pair => pair.was && pair.is ? [] : textChange(subject, 'Attendance', pair.was && attended(pair.was), pair.is && attended(pair.is))),
        ...photoChanges(subject, was.photos, is.photos),
    ];
}

function systems(before: RecordDocument, after: RecordDocument): Change[] {
    return entries(before.systems, after.systems, {
        keyOf: ({ id }) => id, subjectOf: ({ id, title }) => ({ area: 'part', id, subject: `System ${id}${title === '' ? '' : `, ${title}`}` }), summary: ({ title }) => title,
        differ: (was, is, subject) => textChange(subject, 'Title', was.title, is.title),
    });
}

function parts(before: RecordDocument, after: RecordDocument): Change[] {
    return entries(before.components, after.components, {
        keyOf: ({ id }) => id, subjectOf: ({ id, title, kindTitle }) => ({ area: 'part', id, subject: `${id} ${title ?? kindTitle}` }),
        summary: ({ kindTitle, title, facts, notes, photos }) => together(title === undefined ? undefined : kindTitle, factsInWords(facts), ...notes, ...photos.map(({ file }) => `Photograph ${file}`)),
        differ: (was, is, subject) => [
            ...was.kind === is.kind ? [] : textChange(subject, 'Kind', was.kindTitle === is.kindTitle ? was.kind : was.kindTitle, was.kindTitle === is.kindTitle ? is.kind : is.kindTitle),
            ...textChange(subject, 'Title', was.title, is.title), ...textChange(subject, 'System', was.system, is.system),
            ...factsChanges(subject, was.facts, is.facts), ...notesChange(subject, was.notes, is.notes), ...photoChanges(subject, was.photos, is.photos),
        ],
    });
}

function runs(before: RecordDocument, after: RecordDocument): Change[] {
    const path = ({ components, end }: RecordRun) => `${components.join(' → ')}${end === 'component' ? '' : ` → ${end}`}`;
    return entries(before.runs, after.runs, {
        keyOf: ({ id }) => id, subjectOf: ({ id, title }) => ({ area: 'run', id, subject: `Run ${id}${title === undefined ? '' : `, ${title}`}` }),
        summary: run => together(path(run), factsInWords(run.facts)),
        differ: (was, is, subject) => [
            ...textChange(subject, 'Title', was.title, is.title), ...textChange(subject, 'System', was.system, is.system), ...textChange(subject, 'Path', path(was), path(is)), ...factsChanges(subject, was.facts, is.facts),
            ...pairs(was.joints, is.joints, ({ from, to }) => JSON.stringify([from, to])).flatMap(joint => {
                const { from = '', to = '' } = joint.is ?? joint.was ?? {};
                const name = `Joint ${from} to ${to}`;
                const ends = (of: RecordRun['joints'][number] | undefined) => of && `end ${of.fromEnd + 1} of ${from} to end ${of.toEnd + 1} of ${to}`;
                return [
                    ...joint.was && joint.is ? textChange(subject, `${name}: which ends meet`, ends(joint.was), ends(joint.is)) : [],
                    ...factsChanges(subject, joint.was?.facts ?? {}, joint.is?.facts ?? {}, { prefix: name }),
                ];
            }),
        ],
    });
}

function contacts(before: RecordDocument, after: RecordDocument): Change[] {
    return entries(before.contacts, after.contacts, {
        keyOf: ({ components }) => sorted(components), subjectOf: ({ components }) => ({ area: 'run', subject: `Contact of ${components.join(' with ')}` }), summary: ({ facts }) => factsInWords(facts),
        differ: (was, is, subject) => factsChanges(subject, was.facts, is.facts),
    });
}

const cellText = (cell: RecordReading['rows'][number]['cells'][number] | undefined): string | undefined => cell && (cell.value?.text ?? 'left empty');

function readings(before: RecordDocument, after: RecordDocument): Change[] {
    const rowText = ({ cells }: RecordReading['rows'][number]) => cells.map(cellText).join(', ');
    return entries(before.readings, after.readings, {
        keyOf: ({ id }) => id, subjectOf: ({ id, title }) => ({ area: 'reading', id, subject: `Table ${id}${title === undefined ? '' : `, ${title}`}` }),
        summary: ({ facts, rows }) => together(factsInWords(facts), ...rows.map(row => `${row.label}: ${rowText(row)}`)),
        differ: (was, is, subject) => [
            ...textChange(subject, 'Title', was.title, is.title), ...textChange(subject, 'System', was.system, is.system), ...textChange(subject, 'On', sorted(was.on), sorted(is.on)), ...factsChanges(subject, was.facts, is.facts),
            ...pairs(was.rows, is.rows, ({ label }) => blanksAsOne(label)).flatMap(row => {
                const label = `Row ${row.is?.label ?? row.was?.label ?? ''}`;
                return row.was && row.is ? cellChanges(subject, label, row.was, row.is) : textChange(subject, label, row.was && rowText(row.was), row.is && rowText(row.is));
            }),
        ],
    });
}

function cellChanges(subject: Subject, label: string, was: RecordReading['rows'][number], is: RecordReading['rows'][number]): Change[] {
    const cells = Array.from({ length: Math.max(was.cells.length, is.cells.length) }, (_, index) => ({ was: was.cells[index], is: is.cells[index], index }));
    return cells.flatMap(cell => {
        const column = cell.is?.column ?? cell.was?.column;
        const what = `${label}, value ${cell.index + 1}${column === undefined ? '' : ` (${wordText(column)})`}`;
        if (cell.was?.value && cell.is?.value) {
            return [...valuesChange(subject, what, [cell.was.value], [cell.is.value]), ...textChange(subject, `${what}: column`, cell.was.column, cell.is.column)];
        }
        return textChange(subject, what, cellText(cell.was), cellText(cell.is));
    });
}

function acceptances(before: RecordDocument, after: RecordDocument): Change[] {
    return entries(before.acceptances, after.acceptances, {
        keyOf: ({ check, on, onFindings }) => JSON.stringify([check, sorted(on), sorted(onFindings)]), summary: ({ reason }) => reason,
        subjectOf: ({ check, on, onFindings }) => ({ area: 'accepted', subject: [`Accepted: ${wordText(check)}`, sorted([...on, ...onFindings])].filter(Boolean).join(' on ') }),
        differ: (was, is, subject) => [...textChange(subject, 'Reason', was.reason, is.reason), ...textChange(subject, 'System', was.system, is.system)],
    });
}

function unseen(before: RecordDocument, after: RecordDocument): Change[] {
    return entries(before.unseen, after.unseen, {
        keyOf: ({ what, isAbsent }) => JSON.stringify([blanksAsOne(what), isAbsent]), subjectOf: ({ what, isAbsent }) => ({ area: 'unseen', subject: `${isAbsent ? 'Not fitted' : 'Not seen'}: ${what}` }),
        summary: ({ reason }) => reason ?? '',
        differ: (was, is, subject) => [...textChange(subject, 'Reason', was.reason, is.reason), ...textChange(subject, 'Part of the vessel', was.part, is.part), ...textChange(subject, 'System', was.system, is.system)],
    });
}

/** Computed facts of parts that both records have. */
function computed(before: RecordDocument, after: RecordDocument): Change[] {
    const [old, now] = [new Map(Object.entries(before.computed)), new Map(Object.entries(after.computed))];
    const inBoth = new Set(before.components.map(({ id }) => id).filter(id => after.components.some(component => component.id === id)));
    const nameOf = namer(after);
    return [...new Set([...now.keys(), ...old.keys()])].flatMap(fact => {
        const [id = '', name = ''] = fact.split('.');
        return inBoth.has(id) ? textChange({ area: 'computed', id, subject: nameOf(id) }, propertyTitle(name), old.get(fact), now.get(fact)) : [];
    });
}

function limits(before: RecordDocument, after: RecordDocument): Change[] {
    const subject: Subject = { area: 'limit', subject: 'Limit used' };
    return [
        ...pairs(before.yardsticks, after.yardsticks, ({ name }) => name).flatMap(({ was, is }) => {
            const text = (limit: typeof is) => limit && `${limit.written}, ${limit.isFirms ? 'the firm’s' : 'the usual one'}`;
            // A usual limit comes and goes with the problems that it judges.
            return was && is || (was ?? is)?.isFirms ? textChange(subject, is?.about ?? was?.about ?? '', text(was), text(is)) : [];
        }),
        ...pairs(before.standards, after.standards, ({ name }) => name).flatMap(({ was, is }) => was && is ? [
            ...textChange({ area: 'limit', subject: is.name }, 'Title', was.title, is.title), ...factsChanges({ area: 'limit', subject: is.name }, was.facts, is.facts),
        ] : []),
    ];
}

function people(before: RecordDocument, after: RecordDocument): Change[] {
    const none = { name: '', facts: {} };
    const [was, is] = [before.firm ?? none, after.firm ?? none];
    const firm: Subject = { area: 'people', subject: is.name || was.name || 'Firm' };
    return [
        ...textChange(firm, 'Name of the firm', was.name, is.name), ...factsChanges(firm, was.facts, is.facts),
        ...entries(before.people, after.people, {
            keyOf: ({ id }) => id, subjectOf: ({ id, name }) => ({ area: 'people', id, subject: name || id }), summary: ({ name }) => name,
            differ: (old, now, subject) => [...textChange(subject, 'Name', old.name, now.name), ...factsChanges(subject, old.facts, now.facts)],
        }),
    ];
}
