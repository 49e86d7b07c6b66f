/** Commands: new survey, show open problems, draft findings. */
import { commands, Position, Range, Selection, Uri, window, workspace, WorkspaceEdit, type ExtensionContext, type QuickPickItem, type TextEditor } from 'vscode';
import type { BaseLanguageClient, CodeAction } from 'vscode-languageclient';
import { requests, type OpenProblem, type ProblemsResult } from '../server/protocol.js';
import { explanationPage } from './pages.js';

const surveyKinds: readonly QuickPickItem[] = [
    { label: 'pre-purchase', description: 'for a buyer: everything, with trial and value' },
    { label: 'condition-and-value', description: 'for an owner’s underwriter' },
    { label: 'damage', description: 'cause, extent and cost of damage' },
    { label: 'appraisal', description: 'value only' },
    { label: 'delivery', description: 'a new boat against her contract' },
    { label: 're-inspection', description: 'what became of earlier recommendations' },
    { label: 'part-survey', description: 'rig, engine or another part only' },
];

export function surveyEditor(): TextEditor | undefined {
    const editor = window.activeTextEditor;
    if (editor?.document.languageId !== 'garboard') {
        void window.showInformationMessage('Open a file of the survey first (its name ends in .survey).');
        return undefined;
    }
    return editor;
}

export function registerCommands(context: ExtensionContext, client: BaseLanguageClient): void {
    const register = (name: string, run: (...args: never[]) => unknown) => context.subscriptions.push(commands.registerCommand(name, run));
    register('garboard.newSurvey', () => newSurvey(client));
    register('garboard.showOpenProblems', () => showOpenProblems(client));
    register('garboard.draftAllFindings', () => draftAll(client));
    register('garboard.writeReason', (uri: string, check: string) => writeReason(uri, check));
    register('garboard.explain', (check: string) => window.showTextDocument(explanationPage(check), { preview: true }));
}

async function newSurvey(client: BaseLanguageClient): Promise<void> {
    const folder = workspace.workspaceFolders?.[0]?.uri;
    const vessel = await window.showInputBox({ title: 'New survey', prompt: 'Name of the vessel', validateInput: text => text.trim() === '' ? 'The report needs her name.' : undefined });
    if (vessel === undefined) {
        return;
    }
    const kind = await window.showQuickPick([...surveyKinds], { title: 'Kind of survey' });
    if (!kind) {
        return;
    }
    const number = await window.showInputBox({ title: 'Number of the report', value: `${new Date().getFullYear()}-001` });
    if (number === undefined) {
        return;
    }
    const lies = await window.showQuickPick(['ashore', 'afloat'], { title: 'How does she lie?' });
    if (!lies) {
        return;
    }
    const today = new Date();
    const date = `${today.getFullYear()}-${String(today.getMonth() + 1).padStart(2, '0')}-${String(today.getDate()).padStart(2, '0')}`;
    const text = await client.sendRequest<string>(requests.newSurvey, { vessel, kind: kind.label, number, date, state: lies });
    if (!folder) {
        await window.showTextDocument(await workspace.openTextDocument({ language: 'garboard', content: text }));
        return;
    }
    const stem = vessel.trim().toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'survey';
    let file = Uri.joinPath(folder, `${stem}.survey`);
    for (let n = 2; await exists(file); n++) {
        file = Uri.joinPath(folder, `${stem}-${n}.survey`);
    }
    await workspace.fs.writeFile(file, new TextEncoder().encode(text));
    const editor = await window.showTextDocument(file);
    const client0 = editor.document.getText().indexOf('client: "') + 'client: "'.length;
    const at = editor.document.positionAt(client0);
    editor.selection = new Selection(at, at);
}

async function exists(uri: Uri): Promise<boolean> {
    try {
        await workspace.fs.stat(uri);
        return true;
    } catch {
        return false;
    }
}

export async function showOpenProblems(client: BaseLanguageClient): Promise<void> {
    const editor = surveyEditor();
    if (!editor) {
        return;
    }
    const result = await client.sendRequest<ProblemsResult | null>(requests.problems, { uri: editor.document.uri.toString() });
    const words: Readonly<Record<OpenProblem['severity'], string>> = { error: 'must be answered', warning: 'advice', info: 'remark', hint: 'would be checked if known' };
    const order: readonly OpenProblem['severity'][] = ['error', 'warning', 'info', 'hint'];
    const problems = [...result?.problems ?? []].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
    if (problems.length === 0) {
        void window.showInformationMessage(`No open problems in this survey; ${result?.answered ?? 0} are answered.`);
        return;
    }
    const picked = await window.showQuickPick(problems.map(problem => ({
        label: problem.message, description: problem.components.join(', '),
        detail: `${problem.code} · ${words[problem.severity]} · line ${problem.line + 1}`, problem,
    })), { title: `${problems.length} open ${problems.length === 1 ? 'problem' : 'problems'}, ${result?.answered ?? 0} answered`, matchOnDescription: true, matchOnDetail: true });
    if (picked) {
        const at = new Position(picked.problem.line, picked.problem.character);
        await window.showTextDocument(Uri.parse(picked.problem.uri), { selection: new Range(at, at) });
    }
}

async function draftAll(client: BaseLanguageClient): Promise<void> {
    const editor = surveyEditor();
    if (!editor) {
        return;
    }
    const action = await client.sendRequest<CodeAction | null>(requests.draftAll, { uri: editor.document.uri.toString() });
    if (!action?.edit) {
        void window.showInformationMessage('Every problem of this file is answered: there is nothing to draft.');
        return;
    }
    const edit: WorkspaceEdit = await client.protocol2CodeConverter.asWorkspaceEdit(action.edit) ?? new WorkspaceEdit();
    await workspace.applyEdit(edit);
}

/** Puts the cursor between the quotes of the acceptance just written. */
async function writeReason(uri: string, check: string): Promise<void> {
    const document = await workspace.openTextDocument(Uri.parse(uri));
    const editor = await window.showTextDocument(document);
    const text = document.getText();
    const found = [...text.matchAll(new RegExp(`accept ${check}[^\\n"]*because ""`, 'g'))].at(-1);
    if (found) {
        const at = document.positionAt(found.index + found[0].length - 1);
        editor.selection = new Selection(at, at);
        editor.revealRange(new Range(at, at));
    }
}
