/**
 * Lowers the files of a survey to its record. The one place that gives the syntax tree its meaning: it meets missing
 * and half-typed nodes, reports them as gaps, and never throws.
 */
import type * as ast from '../language/generated/ast.js';
import { nearest, parseFigure } from '../quantities/index.js';
import { computedProperties } from './computed.js';
import { lowerFacts, type ValueContext } from './facts.js';
import { Gaps } from './gaps.js';
import type {
    Acceptance, Attendance, CheckRef, Comparable, Component, Contact, DateFigure, Fact, Finding, Joint, OutsideFacts, Photo, Prose, Reading, Run, RunEnd, Span,
    SurveyHead, SurveyRecord, System, Unseen, Valuation, Value, Vessel,
} from './model.js';
import type { KindName } from './generated/kinds.js';
import { lowerMarks } from './photo-marks.js';
import { parseProse, plainText } from './prose.js';
import { columnsOf, lowerRows, rowKindOf } from './readings.js';
import { headSpan, nameSpan, partSpan, spanOf, type SourceFile } from './source.js';
import { vocabularyOf } from './vocabulary.js';

/** How a run may end instead of in a component. */
export const runEnds: ReadonlySet<string> = new Set(['open', 'capped', 'blanked']);

export interface SurveyFiles {
    /** The survey's main file, or the file itself where no survey uses it. */
    readonly main: SourceFile;
    /** Every file the main file uses, itself first, built-in catalogue not included. */
    readonly files: readonly SourceFile[];
    readonly catalogue: readonly SourceFile[];
    /** What the host knows of things outside the text. */
    readonly outside?: OutsideFacts;
}

interface Declared {
    readonly node: ast.Component;
    readonly uri: string;
    readonly system?: string;
}

type Placed<T> = { readonly node: T; readonly uri: string; readonly system?: string };

/** Elements of all files sorted by type, in order of the text. */
interface Sorted {
    surveys: Placed<ast.Survey>[];
    vessels: Placed<ast.Vessel>[];
    systems: System[];
    components: Placed<ast.Component>[];
    runs: Placed<ast.Run>[];
    contacts: Placed<ast.Contact>[];
    findings: Placed<ast.Finding>[];
    acceptances: Placed<ast.Acceptance>[];
    readings: Placed<ast.Reading>[];
    valuations: Placed<ast.Valuation>[];
    unseen: Placed<ast.Unseen>[];
}

export function lowerSurvey({ main, files, catalogue, outside = {} }: SurveyFiles): SurveyRecord {
    const { vocabulary, gaps: vocabularyGaps } = vocabularyOf([...catalogue, ...files]);
    const gaps = new Gaps();
    gaps.list.push(...vocabularyGaps);
    const sorted = sortElements(files, gaps);

    const declared = new Map<string, Declared>();
    for (const placed of sorted.components) {
        const { node, uri } = placed;
        if (!vocabulary.kinds.has(node.kind) || vocabulary.kinds.get(node.kind)?.isForm) {
            const known = [...vocabulary.kinds.values()].filter(kind => !kind.isForm).map(kind => kind.id);
            gaps.unknown('kind-unknown', headSpan(node, uri), node.kind, `${node.kind} is not a kind of component.`, [...known, ...statementWords], 'error',
                'A component is written kind id "title" { … }; house files may declare further kinds.');
        }
        if (!node.name) {
            gaps.add('error', 'id-missing', headSpan(node, uri), `This ${node.kind} has no id; write ${node.kind} and a short id, such as ${suggestedId(node.kind)}1.`);
            continue;
        }
        const earlier = declared.get(node.name);
        if (earlier) {
            gaps.add('error', 'id-twice', partSpan(node, 'name', uri), `${node.name} is declared already; ids must differ within a survey.`, [],
                [{ message: `${node.name} is first declared here`, span: partSpan(earlier.node, 'name', earlier.uri) }]);
            continue;
        }
        if (runEnds.has(node.name)) {
            gaps.add('error', 'id-reserved', partSpan(node, 'name', uri), `${node.name} says how a run ends and cannot be an id.`);
            continue;
        }
        declared.set(node.name, placed);
    }

    const proses: Prose[] = [];
    const contextOf = (uri: string, targets: readonly string[] = []): ValueContext => ({
        uri, vocabulary, gaps, targets,
        componentKind: id => declared.get(id)?.node.kind,
        componentIds: () => declared.keys(),
        prose: prose => proses.push(prose),
    });
    const proseAt = (node: { $cstNode?: unknown } & Parameters<typeof partSpan>[0], property: string, token: string | undefined, uri: string): Prose | undefined => {
        if (token === undefined) {
            return undefined;
        }
        const prose = parseProse(token, partSpan(node, property, uri).start, uri);
        proses.push(prose);
        return prose;
    };
    const photosOf = (members: readonly { $type: string }[], uri: string): Photo[] => members.filter((m): m is ast.Photo => m.$type === 'Photo').map(photo => {
        if (photo.file === undefined) {
            gaps.add('error', 'photo-missing', headSpan(photo, uri), 'Which picture? Write photo "file.jpg" and a caption in quotes.');
        }
        const caption = proseAt(photo, 'caption', photo.caption, uri);
        const span = photo.file === undefined ? spanOf(photo, uri) : partSpan(photo, 'file', uri);
        return { file: plainText(photo.file ?? '""').replaceAll('\\', '/'), ...(caption ? { caption } : {}), marks: lowerMarks(photo.marks, vocabulary, gaps, uri), span };
    }).filter(photo => photo.file !== '');
    const notesOf = (members: readonly { $type: string }[], uri: string): Prose[] => members.filter((m): m is ast.Note => m.$type === 'Note')
        .map(note => proseAt(note, 'text', note.text, uri)).filter((p): p is Prose => p !== undefined);

    const components = new Map<string, Component>();
    for (const [id, { node, uri, system }] of declared) {
        components.set(id, {
            // An unknown kind keeps its written name: it has no properties, so no check reads any.
            kind: node.kind as KindName, id, ...(node.title ? { title: plainText(node.title) } : {}), ...(system ? { system } : {}),
            facts: lowerFacts(node.members, node.kind, contextOf(uri)), notes: notesOf(node.members, uri), photos: photosOf(node.members, uri),
            span: spanOf(node, uri), idSpan: idSpanOf(node, id, uri),
        });
    }

    const componentAt = (id: string | undefined, span: Span): Component | undefined => {
        if (id === undefined) {
            return undefined;
        }
        const component = components.get(id);
        if (!component) {
            gaps.unknown('id-unknown', span, id, `No component has the id ${id}.`, components.keys());
        }
        return component;
    };
    const targetsOf = (targets: readonly ast.Target[], uri: string): Component[] => targets
        .map(target => componentAt(target.name, spanOf(target, uri))).filter((c): c is Component => c !== undefined);

    const runs = sorted.runs.map(placed => lowerRun(placed, contextOf(placed.uri), componentAt, gaps)).filter((run): run is Run => run !== undefined);
    reportTwice(runs, 'run', gaps);

    const contacts = sorted.contacts.map(({ node, uri }): Contact => {
        const touching = targetsOf(node.targets, uri);
        if (node.targets.length < 2) {
            gaps.add('error', 'contact-of-one', headSpan(node, uri), 'A contact names at least two components that touch, as in contact SH1, PR1.');
        }
        return { kind: 'contact', facts: lowerFacts(node.members, 'contact', contextOf(uri)), components: touching, span: spanOf(node, uri) };
    });

    const findings = sorted.findings.map(({ node, uri, system }): Finding | undefined => {
        if (!node.name) {
            gaps.add('error', 'id-missing', headSpan(node, uri), 'This finding has no number; write finding F1 "What is wrong" on the components concerned.');
            return undefined;
        }
        const on = targetsOf(node.targets, uri);
        const facts = lowerFacts(node.members, 'finding', contextOf(uri, on.map(c => c.id)));
        const answers = (facts.get('answers')?.values ?? []).filter((v): v is CheckRef => v.type === 'check');
        return {
            kind: 'finding', id: node.name, title: node.title ? plainText(node.title) : '', ...(system ? { system } : {}), facts, on, answers,
            photos: photosOf(node.members, uri), notes: notesOf(node.members, uri), span: spanOf(node, uri), idSpan: partSpan(node, 'name', uri),
        };
    }).filter((f): f is Finding => f !== undefined);
    reportTwice(findings, 'finding', gaps);

    const acceptances = sorted.acceptances.map(({ node, uri, system }): Acceptance | undefined => {
        if (!node.check) {
            gaps.add('error', 'check-missing', headSpan(node, uri), 'Which check is accepted? Write accept check-id on the component because "the reason".');
            return undefined;
        }
        const reason = proseAt(node, 'reason', node.reason, uri);
        if (!reason || reason.text.trim() === '') {
            gaps.add('error', 'reason-missing', partSpan(node, 'check', uri), 'An acceptance must give its reason: because "…". The report prints it.');
        }
        const isFinding = (target: ast.Target) => target.name !== undefined && !components.has(target.name) && findings.some(finding => finding.id === target.name);
        return {
            check: { type: 'check', id: node.check, span: partSpan(node, 'check', uri) }, on: targetsOf(node.targets.filter(target => !isFinding(target)), uri),
            onFindings: node.targets.filter(isFinding).map(target => target.name ?? ''),
            ...(reason ? { reason } : {}), ...(system ? { system } : {}), span: spanOf(node, uri),
        };
    }).filter((a): a is Acceptance => a !== undefined);

    const readings = sorted.readings.map(({ node, uri, system }): Reading => {
        const measures = node.members.find((m): m is ast.Property => m.$type === 'Property' && m.name === 'measures')?.value?.items[0];
        const rowKind = rowKindOf(measures?.$type === 'WordItem' ? measures.word : undefined, vocabulary);
        const facts = lowerFacts(node.members, 'reading', { ...contextOf(uri), columns: new Set(columnsOf(rowKind, vocabulary).map(([name]) => name)) });
        return {
            kind: 'reading', id: node.name ?? '', ...(node.title ? { title: plainText(node.title) } : {}), ...(system ? { system } : {}),
            on: targetsOf(node.targets, uri), facts, span: spanOf(node, uri), idSpan: partSpan(node, 'name', uri),
            rows: lowerRows(node.rows, rowKind, facts.get('columns')?.values ?? [], contextOf(uri)),
        };
    });
    reportTwice(readings, 'table of readings', gaps);

    const valuations = sorted.valuations.map(({ node, uri }): Valuation => ({
        kind: 'valuation', ...(node.title ? { title: plainText(node.title) } : {}), facts: lowerFacts(node.members, 'valuation', contextOf(uri)),
        comparables: node.comparables.map(comparable => lowerComparable(comparable, contextOf(uri), gaps)), span: spanOf(node, uri),
    }));

    const lowerUnseen = (node: ast.Unseen, uri: string, system?: string): Unseen | undefined => {
        if (node.what === undefined) {
            gaps.add('error', 'unseen-what', headSpan(node, uri), `What is ${node.keyword}? Write ${node.keyword} "what": "the reason".`);
            return undefined;
        }
        const reason = proseAt(node, 'reason', node.reason, uri);
        if (!reason) {
            gaps.add('warning', 'reason-missing', headSpan(node, uri), 'A reader needs the reason: write it after a colon.');
        }
        const parts = vocabulary.wordLists.get('part')?.words;
        if (node.part !== undefined && parts && !parts.has(node.part)) {
            gaps.unknown('word-unknown', partSpan(node, 'part', uri), node.part, `${node.part} is not a part of the vessel.`, parts.keys(), 'error', `It is one of ${[...parts.keys()].join(', ')}.`);
        }
        return {
            absent: node.keyword === 'absent', what: plainText(node.what), ...(node.part === undefined ? {} : { part: node.part }), ...(reason ? { reason } : {}),
            ...(system ? { system } : {}), span: spanOf(node, uri),
        };
    };
    const unseen = sorted.unseen.map(({ node, uri, system }) => lowerUnseen(node, uri, system));

    let survey: SurveyHead | undefined;
    for (const { node, uri } of sorted.surveys) {
        if (survey) {
            gaps.add('error', 'survey-twice', headSpan(node, uri), 'A survey has one survey block; this is a second one.', [], [{ message: 'The first one', span: survey.span }]);
            continue;
        }
        const members = node.members.filter((m): m is ast.Member => m.$type !== 'Attendance' && m.$type !== 'Unseen');
        for (const member of node.members) {
            if (member.$type === 'Unseen') {
                unseen.push(lowerUnseen(member, uri));
            }
        }
        const surveyKinds = vocabulary.wordLists.get('survey-kind')?.words;
        if (node.kind && surveyKinds && !surveyKinds.has(node.kind)) {
            gaps.unknown('word-unknown', partSpan(node, 'kind', uri), node.kind, `${node.kind} is not a kind of survey.`, surveyKinds.keys());
        }
        survey = {
            kind: 'survey', ...(node.number ? { number: plainText(node.number) } : {}), ...(node.kind ? { surveyKind: node.kind } : {}),
            facts: lowerFacts(members, 'survey', contextOf(uri)), photos: photosOf(members, uri), span: spanOf(node, uri),
            attendances: node.members.filter((m): m is ast.Attendance => m.$type === 'Attendance').map(a => lowerAttendance(a, uri, gaps)),
        };
    }

    let vessel: Vessel | undefined;
    for (const { node, uri } of sorted.vessels) {
        if (vessel) {
            gaps.add('error', 'vessel-twice', headSpan(node, uri), 'A survey is of one vessel; this is a second one.', [], [{ message: 'The first one', span: vessel.span }]);
            continue;
        }
        vessel = {
            kind: 'vessel', name: node.title ? plainText(node.title) : '', facts: lowerFacts(node.members, 'vessel', contextOf(uri)),
            photos: photosOf(node.members, uri), notes: notesOf(node.members, uri), span: spanOf(node, uri),
        };
    }

    const record: SurveyRecord = {
        mainUri: main.uri, uris: files.map(file => file.uri), ...(survey ? { survey } : {}), ...(vessel ? { vessel } : {}), systems: sorted.systems,
        components, runs, contacts, findings, acceptances, unseen: unseen.filter((u): u is Unseen => u !== undefined), readings, valuations, vocabulary,
        photoFacts: outside.photos ?? new Map(), ...(outside.followed ? { followed: outside.followed } : {}), ...(outside.lastIssue ? { lastIssue: outside.lastIssue } : {}),
        gaps: gaps.list,
    };
    // The firm's standing words are the same for every survey, and their references must hold in this one.
    const standing = [...vocabulary.wording.values()].filter(({ isFirms }) => isFirms).flatMap(({ fact }) => fact.values).flatMap(value => value.type === 'text' ? [value.prose] : []);
    checkReferences(record, [...proses, ...standing], gaps);
    return record;
}

function idSpanOf(node: ast.Component, id: string, uri: string): Span {
    return nameSpan(node, 'name', id, (node.$cstNode?.offset ?? 0) + node.kind.length, uri);
}

const statementWords = ['survey', 'vessel', 'system', 'run', 'contact', 'finding', 'accept', 'reading', 'valuation', 'unseen', 'use', 'person', 'firm', 'yardsticks', 'coverage', 'outline', 'wording', 'phrase', 'kind', 'material', 'standard', 'words'];

/** A short id from a kind's initials: TH for through-hull. */
export function suggestedId(kind: string): string {
    const initials = kind.split('-').map(part => part.charAt(0).toUpperCase()).join('');
    return initials || 'X';
}

function sortElements(files: readonly SourceFile[], gaps: Gaps): Sorted {
    const sorted: Sorted = { surveys: [], vessels: [], systems: [], components: [], runs: [], contacts: [], findings: [], acceptances: [], readings: [], valuations: [], unseen: [] };
    const systems = new Map<string, Span>();
    const sort = (node: ast.Element, uri: string, system?: string) => {
        const placed = <T>(n: T): Placed<T> => system === undefined ? { node: n, uri } : { node: n, uri, system };
        switch (node.$type) {
            case 'Survey': sorted.surveys.push(placed(node)); break;
            case 'Vessel': sorted.vessels.push(placed(node)); break;
            case 'Component': sorted.components.push(placed(node)); break;
            case 'Run': sorted.runs.push(placed(node)); break;
            case 'Contact': sorted.contacts.push(placed(node)); break;
            case 'Finding': sorted.findings.push(placed(node)); break;
            case 'Acceptance': sorted.acceptances.push(placed(node)); break;
            case 'Reading': sorted.readings.push(placed(node)); break;
            case 'Valuation': sorted.valuations.push(placed(node)); break;
            case 'Unseen': sorted.unseen.push(placed(node)); break;
            case 'System': {
                if (!node.name) {
                    gaps.add('error', 'id-missing', headSpan(node, uri), 'This system has no name; write system skin "Through-hulls and sea valves" { … }.');
                }
                const name = node.name ?? '';
                // A system may be continued in another file or further down: the same section of the report.
                if (name !== '' && !systems.has(name)) {
                    systems.set(name, spanOf(node, uri));
                    sorted.systems.push({ id: name, title: node.title ? plainText(node.title) : name, span: spanOf(node, uri) });
                }
                for (const element of node.elements) {
                    sort(element, uri, name === '' ? undefined : name);
                }
                break;
            }
            default: break; // Vocabulary is read elsewhere.
        }
    };
    for (const { root, uri } of files) {
        for (const element of root.elements) {
            sort(element, uri);
        }
    }
    return sorted;
}

function reportTwice(named: readonly { readonly id: string; readonly idSpan: Span }[], what: string, gaps: Gaps): void {
    const seen = new Map<string, Span>();
    for (const { id, idSpan } of named) {
        const earlier = seen.get(id);
        if (earlier && id !== '') {
            gaps.add('error', 'id-twice', idSpan, `There is a ${what} ${id} already; give this one another.`, [], [{ message: `The first ${id}`, span: earlier }]);
        } else {
            seen.set(id, idSpan);
        }
    }
}

function lowerRun(
    { node, uri, system }: Placed<ast.Run>, context: ValueContext, componentAt: (id: string | undefined, span: Span) => Component | undefined, gaps: Gaps
): Run | undefined {
    if (!node.name) {
        gaps.add('error', 'id-missing', headSpan(node, uri), 'This run has no id; write run R1 "What it is": TH1 -> SV1 -> H1.');
    }
    if (!node.first) {
        gaps.add('error', 'run-empty', headSpan(node, uri), 'This run leads nowhere yet; after the colon write its components in order, as in TH1 -> SV1 -> H1 -> open.');
    }
    const steps: { component: Component; step?: ast.RunStep }[] = [];
    const firstSpan = partSpan(node, 'first', uri);
    let end: RunEnd = 'component';
    if (node.first && runEnds.has(node.first)) {
        gaps.add('error', 'run-starts-at-end', firstSpan, `A run ends in ${node.first}; it begins at a component, the one next to the hull.`);
    } else {
        const first = componentAt(node.first, firstSpan);
        if (first) {
            steps.push({ component: first });
        }
    }
    let broken = steps.length === 0;
    const joints: Joint[] = [];
    const components = steps.map(s => s.component);
    const run: { -readonly [K in keyof Run]: Run[K] } = {
        kind: 'run', id: node.name ?? '', ...(node.title ? { title: plainText(node.title) } : {}), ...(system ? { system } : {}),
        facts: lowerFacts(node.members, 'run', context), components, joints, end, span: spanOf(node, uri), idSpan: partSpan(node, 'name', uri),
    };
    for (const [index, step] of node.steps.entries()) {
        const span = spanOf(step, uri);
        const facts: Map<string, Fact> = lowerFacts(step.joint, 'joint', context);
        if (!step.target) {
            gaps.add('error', 'run-step-missing', span, 'What comes next in this run? Write a component’s id, or open, capped or blanked.');
            broken = true;
            continue;
        }
        if (end !== 'component') {
            gaps.add('error', 'run-goes-on-after-end', span, `This run ended in ${end}; nothing can follow.`);
            continue;
        }
        if (runEnds.has(step.target)) {
            end = step.target as RunEnd; // It is one of runEnds.
            continue;
        }
        const targetSpan = step.joint.length > 0 ? partSpan(step, 'target', uri) : nameSpan(step, 'target', step.target, span.start + 2, uri);
        const to = componentAt(step.target, targetSpan);
        const from = components.at(-1);
        if (!to) {
            broken = true;
            continue;
        }
        if (from && from === to) {
            gaps.add('error', 'run-repeats', targetSpan, `${to.id} follows itself; a run names each component once.`);
            continue;
        }
        if (from && !broken) {
            // Travelling along the run, a part is entered at its first end and left at its second.
            joints.push({ kind: 'joint', facts, run, index, from, to, fromEnd: components.length > 1 || isSource(from) ? 1 : 0, toEnd: 0, span });
        }
        components.push(to);
        broken = false;
    }
    run.end = end;
    return run;
}

/** A part with two different ends that begins a run is left at its second end. */
function isSource(component: Component): boolean {
    return (component.facts.get('ends')?.values.length ?? 0) > 1;
}

function lowerAttendance(node: ast.Attendance, uri: string, gaps: Gaps): Attendance {
    let date: DateFigure | undefined;
    if (node.date === undefined) {
        gaps.add('error', 'value-missing', headSpan(node, uri), 'When was she attended? Write attended 2026-10-06 ashore "where".');
    } else {
        const parsed = parseFigure(node.date);
        if (parsed.ok && parsed.figure.kind === 'date') {
            date = parsed.figure;
        } else {
            gaps.add('error', 'figure-malformed', partSpan(node, 'date', uri), parsed.ok ? `${node.date} is not a date; write it as 2026-10-06.` : parsed.problem);
        }
    }
    const state = node.state === 'ashore' || node.state === 'afloat' ? node.state : undefined;
    if (node.state !== undefined && !state) {
        const close = nearest(node.state, ['ashore', 'afloat']);
        const span = partSpan(node, 'state', uri);
        gaps.add('error', 'word-unknown', span, `She lies ashore or afloat; ${node.state} is neither.`, close ? [{ title: `Change to ${close}`, span, text: close }] : []);
    }
    return { ...(date ? { date } : {}), state, ...(node.place ? { place: plainText(node.place) } : {}), span: spanOf(node, uri) };
}

function lowerComparable(node: ast.Comparable, context: ValueContext, gaps: Gaps): Comparable {
    return {
        kind: 'comparable', id: node.name ?? '', ...(node.title ? { title: plainText(node.title) } : {}), facts: lowerFacts(node.members, 'comparable', context),
        adjustments: node.adjustments.map(adjustment => {
            const value = node.adjustments.length > 0 ? looseFigure(adjustment.amount, partSpan(adjustment, 'amount', context.uri), gaps) : undefined;
            const base = { reason: plainText(adjustment.reason ?? '""'), span: spanOf(adjustment, context.uri) };
            return value?.type === 'quantity' ? { ...base, amount: value } : base;
        }),
        span: spanOf(node, context.uri),
    };
}

function looseFigure(written: string | undefined, span: Span, gaps: Gaps): Value | undefined {
    if (written === undefined) {
        return undefined;
    }
    const parsed = parseFigure(written);
    if (!parsed.ok) {
        gaps.add('error', 'figure-malformed', span, parsed.problem);
        return undefined;
    }
    return parsed.figure.kind === 'date' ? { type: 'date', figure: parsed.figure } : { type: 'quantity', si: parsed.figure.si, figure: parsed.figure };
}

/** Every reference in prose must lead to a component and to a fact that is recorded or can be computed. */
function checkReferences(record: SurveyRecord, proses: readonly Prose[], gaps: Gaps): void {
    const { components, vocabulary, vessel, survey } = record;
    const seen = new Set<string>();
    for (const prose of proses) {
        for (const segment of prose.segments) {
            if (typeof segment === 'string') {
                continue;
            }
            const key = `${segment.span.uri}:${segment.span.start}:${segment.component}.${segment.property ?? ''}`;
            if (seen.has(key)) {
                continue;
            }
            seen.add(key);
            const set = segment.component === 'vessel' ? vessel : segment.component === 'survey' ? survey : components.get(segment.component);
            if (!set) {
                const names = [...components.keys(), 'vessel', 'survey'];
                const close = nearest(segment.component, names);
                const span = { ...segment.span, end: segment.span.start + segment.component.length };
                gaps.add('error', 'id-unknown', segment.span, `{${segment.component}} names no component.${close ? ` Did you mean ${close}?` : ''}`, close ? [{ title: `Change to ${close}`, span, text: close }] : []);
                continue;
            }
            const { property } = segment;
            if (property === undefined || set.facts.has(property) || (property === 'name' && segment.component === 'vessel')) {
                continue;
            }
            const info = vocabulary.kinds.get(set.kind);
            const computed = computedProperties(info?.lineage ?? []);
            if (computed.has(property)) {
                continue; // Whether its facts are recorded is for the report to say; a hint says it below.
            }
            if (info && !info.properties.has(property)) {
                const close = nearest(property, [...info.properties.keys(), ...computed.keys()]);
                const start = segment.span.start + segment.component.length + 1;
                gaps.add('error', 'property-unknown', segment.span, `A ${info.title.toLowerCase()} has no property ${property}.${close ? ` Did you mean ${close}?` : ''}`,
                    close ? [{ title: `Change to ${close}`, span: { ...segment.span, start, end: start + property.length }, text: close }] : []);
            } else {
                gaps.add('warning', 'fact-not-recorded', segment.span, `${property} of ${segment.component} is not recorded; record it, or the report prints that it is not.`);
            }
        }
    }
}
