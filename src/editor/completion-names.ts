/** Names at the cursor: ids in use and free ones, kinds, checks, types of property. */
import { CompletionItemKind } from 'vscode-languageserver-types';
import { allChecks } from '../checks/all-checks.js';
import type { Check, Problem } from '../checks/contract.js';
import { asksNothing, earlierFindings, followedReport, nextFindingNumber } from '../record/earlier-findings.js';
import { runEnds, suggestedId } from '../record/lower.js';
import type { Component, SurveyRecord } from '../record/model.js';
import { plainTypes } from '../record/vocabulary.js';
import type { Offers, Where } from './completion-offers.js';
import type { View } from './resolve.js';

/** Problems that wait for an answer; hints ask for facts and take none. */
export function openProblems({ analysis }: View): readonly Problem[] {
    return (analysis?.problems ?? []).filter(problem => problem.answeredBy === undefined && problem.severity !== 'hint');
}

function kindOf(component: Component, { vocabulary }: View): string {
    return vocabulary.kinds.get(component.kind)?.title ?? component.kind;
}

/** Ids of components, those of the smaller rank first. */
export function offerIds(view: View, offers: Offers, rankOf: (component: Component) => number | undefined): void {
    for (const component of view.record?.components.values() ?? []) {
        const rank = rankOf(component);
        if (rank !== undefined) {
            offers.add(component.id, { rank, kind: CompletionItemKind.Variable, detail: [component.title, kindOf(component, view)].filter(part => part !== undefined).join(' · ') });
        }
    }
}

/** Components a finding, an acceptance, a contact or a reading may be about. */
export function offerTargets({ view, reader }: Where, offers: Offers): void {
    const { targets = [], word, check } = reader.statement ?? {};
    const problems = openProblems(view).filter(problem => check === undefined || problem.check.id === check);
    const wanting = new Set(word === 'finding' || word === 'accept' ? problems.flatMap(problem => problem.components.map(c => c.id)) : []);
    offerIds(view, offers, component => targets.includes(component.id) ? undefined : wanting.has(component.id) ? 0 : 1);
}

/** What comes next in a run: components in no run yet, then the others, then its ends. */
export function offerChain({ view, reader }: Where, offers: Offers): void {
    const chain = reader.statement?.chain ?? [];
    const id = reader.statement?.id;
    const others = new Set((view.record?.runs ?? []).filter(run => run.id !== id).flatMap(run => run.components.map(c => c.id)));
    offerIds(view, offers, component => chain.includes(component.id) ? 3 : others.has(component.id) ? 1 : 0);
    if (chain.length > 0) {
        const meanings: Readonly<Record<string, string>> = { open: 'the run ends open', capped: 'the run ends in a cap', blanked: 'the run ends in a blank' };
        for (const end of runEnds) {
            offers.add(end, { rank: 2, kind: CompletionItemKind.Keyword, detail: meanings[end] ?? '' });
        }
    }
}

export function offerKinds({ view }: Where, offers: Offers): void {
    for (const kind of view.vocabulary.kinds.values()) {
        offers.add(kind.id, { rank: kind.isForm ? 1 : 0, kind: CompletionItemKind.Class, detail: kind.title, docs: kind.about ?? '' });
    }
}

export function offerTypes({ view }: Where, offers: Offers): void {
    for (const type of plainTypes) {
        offers.add(type, { rank: 0, kind: CompletionItemKind.TypeParameter });
    }
    for (const list of view.vocabulary.wordLists.values()) {
        offers.add(list.id, { rank: 1, kind: CompletionItemKind.Enum, detail: list.title ?? 'a list of words' });
    }
}

/** Checks to accept, those with open problems first and with their components written out. */
export function offerCheck({ view }: Where, offers: Offers): void {
    for (const problem of openProblems(view)) {
        const ids = problem.components.map(c => c.id).join(', ');
        offers.add(ids === '' ? problem.check.id : `${problem.check.id} on ${ids}`, {
            rank: 0, kind: CompletionItemKind.Event, detail: problem.check.title, docs: problem.message, filter: problem.check.id,
            snippet: `${problem.check.id}${ids === '' ? '' : ` on ${ids}`} because "$1"`,
        });
    }
    offerChecks(view, offers, () => 1);
}

/** Ids of checks; an undefined rank leaves one out. */
export function offerChecks(view: View, offers: Offers, rankOf: (check: Check) => number | undefined): void {
    for (const check of allChecks) {
        const rank = rankOf(check);
        if (rank !== undefined) {
            offers.add(check.id, { rank, kind: CompletionItemKind.Event, detail: check.title, docs: check.why });
        }
    }
}

/** The next free id of a statement: F3 after F2, SV5 for a seacock after SV4; for a finding also the earlier numbers still to be taken up. */
export function offerNewId({ view, reader }: Where, offers: Offers): void {
    const { word, kind } = reader.statement ?? {};
    const id = word === 'component' ? nextId(view, kind ?? '') : word === 'finding' ? (view.record ? nextFindingNumber(view.record) : 'F1') : word === 'run' ? freeId('R', view.record)
        : word === 'reading' ? freeId('M', view.record) : word === 'comparable' ? 'C1' : undefined;
    if (id !== undefined) {
        offers.add(id, { rank: 0, kind: CompletionItemKind.Variable, detail: 'the next free id' });
    }
    const { record } = view;
    const followed = record && followedReport(record);
    if (word === 'finding' && followed) {
        for (const { issued, takenUpBy } of earlierFindings(record)) {
            if (!takenUpBy && !asksNothing(issued) && /^[\p{L}_][\p{L}\p{N}_-]*$/u.test(issued.id)) {
                offers.add(issued.id, { rank: 1, kind: CompletionItemKind.Variable, detail: `${issued.title}, of report ${followed.number}` });
            }
        }
    }
}

/** The next free id of a kind, with the stem its components have in this survey. */
export function nextId({ record }: View, kind: string): string {
    const stems = new Map<string, number>();
    for (const component of record?.components.values() ?? []) {
        const stem = component.kind === kind ? /^(.*?)\d+$/.exec(component.id)?.[1] : undefined;
        if (stem !== undefined && stem !== '') {
            stems.set(stem, (stems.get(stem) ?? 0) + 1);
        }
    }
    const usual = [...stems].sort((a, b) => b[1] - a[1])[0]?.[0];
    return freeId(usual ?? suggestedId(kind), record);
}

function freeId(stem: string, record: SurveyRecord | undefined): string {
    const used = new Set([...record?.components.keys() ?? [], ...(record?.runs ?? []).map(r => r.id), ...(record?.findings ?? []).map(f => f.id), ...(record?.readings ?? []).map(r => r.id)]);
    let number = 1;
    for (const id of used) {
        const digits = id.startsWith(stem) ? Number(id.slice(stem.length)) : Number.NaN;
        number = Number.isInteger(digits) && digits >= number && digits < 1_000_000 ? digits + 1 : number;
    }
    while (used.has(`${stem}${number}`)) {
        number++;
    }
    return `${stem}${number}`;
}
