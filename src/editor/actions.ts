/** Quick-fixes: mend the text, correct the fact, draft the finding, accept with a reason. */
import type { LangiumDocument, MaybePromise } from 'langium';
import { URI } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import type { CodeActionParams } from 'vscode-languageserver-protocol';
import { CodeActionKind, type CodeAction, type Command, type Range, type TextEdit, type WorkspaceEdit } from 'vscode-languageserver-types';
import type { Problem } from '../checks/contract.js';
import type { SurveyAnalyser } from './analyser.js';
import { locatedIn, rangeOf, type Located } from './diagnostics.js';
import { Writer, type Edit } from './edits.js';
import type { GarboardServices } from './services.js';

/** Drafts findings for all open problems of a file. */
export const draftAllKind = `${CodeActionKind.Source}.draftFindings`;

export class SurveyCodeActionProvider implements CodeActionProvider {
    constructor(private readonly services: GarboardServices) {}

    private get analyser(): SurveyAnalyser {
        return this.services.editor.Analyser;
    }

    private lookup(uri: string): LangiumDocument | undefined {
        return this.services.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri));
    }

    getCodeActions(document: LangiumDocument, params: CodeActionParams): MaybePromise<(CodeAction | Command)[]> {
        const only = params.context.only;
        const wants = (kind: string) => !only || only.some(o => kind === o || kind.startsWith(`${o}.`));
        const located = locatedIn(document, this.analyser, uri => this.lookup(uri));
        const actions: CodeAction[] = [];
        if (wants(CodeActionKind.QuickFix)) {
            const here = located.filter(entry => overlap(entry.diagnostic.range, params.range));
            for (const entry of here) {
                actions.push(...this.fixes(document, entry, located));
            }
        }
        if (wants(draftAllKind) && only) {
            const action = this.draftAll(document, located);
            if (action) {
                actions.push(action);
            }
        }
        return actions;
    }

    private fixes(document: LangiumDocument, { diagnostic, gap, problem }: Located, all: readonly Located[]): CodeAction[] {
        const actions: CodeAction[] = [];
        const push = (title: string, edits: readonly Edit[], isPreferred = false, more: Partial<CodeAction> = {}) => {
            if (edits.length > 0) {
                actions.push({ title, kind: CodeActionKind.QuickFix, diagnostics: [diagnostic], edit: this.workspaceEdit(edits), ...(isPreferred ? { isPreferred } : {}), ...more });
            }
        };
        gap?.mends.forEach((mend, i) => push(mend.title, [{ ...mend.span, text: mend.text }], i === 0));
        if (!problem) {
            return actions;
        }
        const writer = () => this.writer(document);
        if (problem.draft) {
            push(`Draft a finding: ${problem.draft.title}`, writer()?.draftFinding([problem]) ?? []);
            const together = sameSubject(problem, all);
            if (together.length > 1) {
                push(`Draft one finding for the ${together.length} problems of ${problem.components[0]?.id ?? 'this'}`, writer()?.draftFinding(together) ?? []);
            }
        }
        for (const correction of problem.corrections ?? []) {
            push(correction.title, writer()?.correct(correction) ?? []);
        }
        if (problem.severity !== 'hint') {
            push('Accept as it stands, with a reason', writer()?.accept(problem) ?? [], false, {
                command: { title: 'Write the reason', command: 'garboard.writeReason', arguments: [document.uri.toString(), problem.check.id] },
            });
        }
        return actions;
    }

    /** One edit that drafts findings for every open problem of the file, those of one component together. */
    draftAll(document: LangiumDocument, located = locatedIn(document, this.analyser, uri => this.lookup(uri))): CodeAction | undefined {
        const writer = this.writer(document);
        const groups = new Map<string, Problem[]>();
        for (const { problem } of located) {
            if (problem?.draft && problem.severity !== 'hint') {
                // Problems at one joint or on one part make one finding; parts are not lumped together.
                const key = problem.components.map(c => c.id).join(',');
                groups.set(key, [...(groups.get(key) ?? []), problem]);
            }
        }
        const edits = [...groups.values()].flatMap(group => writer?.draftFinding(group) ?? []);
        if (edits.length === 0) {
            return undefined;
        }
        const title = edits.length === 1 ? 'Draft a finding for the open problem of this file' : `Draft ${edits.length} findings for all open problems of this file`;
        return { title, kind: draftAllKind, edit: this.workspaceEdit(edits) };
    }

    private writer(document: LangiumDocument): Writer | undefined {
        const analysis = this.analyser.analysisOf(document.uri);
        return analysis && new Writer(analysis.record, this.analyser.files());
    }

    private workspaceEdit(edits: readonly Edit[]): WorkspaceEdit {
        const changes: Record<string, TextEdit[]> = {};
        for (const { uri, start, end, text } of edits) {
            const document = this.lookup(uri);
            if (document) {
                (changes[uri] ??= []).push({ range: rangeOf({ uri, start, end }, document), newText: text });
            }
        }
        return { changes };
    }
}

function sameSubject(problem: Problem, all: readonly Located[]): Problem[] {
    const subject = problem.components[0];
    const others = all.map(entry => entry.problem).filter((p): p is Problem => p?.draft !== undefined && p.severity !== 'hint' && p.components[0] === subject && p !== problem);
    return subject ? [problem, ...others] : [problem];
}

function overlap(a: Range, b: Range): boolean {
    const before = (p: Range['start'], q: Range['start']) => p.line < q.line || (p.line === q.line && p.character < q.character);
    return !before(a.end, b.start) && !before(b.end, a.start);
}
