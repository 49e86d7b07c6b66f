/** Commands: write the report in other forms or another paper of it, issue it, verify what was issued. The server does the work. */
import { commands, env, Position, ProgressLocation, QuickPickItemKind, Range, UIKind, Uri, window, workspace, type ExtensionContext, type QuickPickItem } from 'vscode';
import { ProgressType, type BaseLanguageClient } from 'vscode-languageclient';
import { requests, type DocumentKind, type IssueAnswer, type IssueParams, type NotDone, type OutputForm, type Refused, type SignersResult, type SurveyOfFile, type VerifyAnswer, type WriteParams, type WriteResult } from '../server/protocol.js';
import { showOpenProblems, surveyEditor } from './commands.js';

interface FormItem extends QuickPickItem {
    readonly form: OutputForm;
}

const forms: readonly FormItem[] = [
    { form: 'html', label: 'HTML', description: 'one page for screen and print', picked: true },
    { form: 'pdf', label: 'PDF', description: 'printed by a Chromium, Chrome or Edge of this machine' },
    { form: 'docx', label: 'Word', description: 'for a client who insists' },
    { form: 'csv', label: 'CSV', description: 'the recommendations as a table' },
    { form: 'json', label: 'JSON', description: 'the whole record' },
];

interface PaperItem extends QuickPickItem {
    readonly document: DocumentKind;
}

const papers: readonly PaperItem[] = [
    { document: 'report', label: 'Report' },
    { document: 'work-list', label: 'Work list', description: 'for the yard' },
    { document: 'urgent-letter', label: 'Letter on urgent matters', description: 'what was told the same day' },
    { document: 'compliance-letter', label: 'Letter of compliance', description: 'after repairs, for the underwriter' },
];

interface Chosen {
    readonly document?: DocumentKind;
    readonly forms?: readonly OutputForm[];
}

export function registerPapers(context: ExtensionContext, client: BaseLanguageClient): void {
    context.subscriptions.push(
        commands.registerCommand('garboard.writeReport', () => writeReportAs(client, { document: 'report', forms: ['html'] })),
        commands.registerCommand('garboard.writeReportAs', (chosen?: Chosen) => writeReportAs(client, chosen)),
        commands.registerCommand('garboard.issueReport', (signedBy?: string) => issueReport(client, signedBy)),
        commands.registerCommand('garboard.verifyIssues', (folder?: Uri) => verifyIssues(client, folder)),
    );
}

/** The main file of the survey that is in view. Where a file is part of several, the user says which one is meant. */
async function chooseSurvey(client: BaseLanguageClient): Promise<Uri | undefined> {
    const uri = surveyEditor()?.document.uri;
    if (!uri) {
        return undefined;
    }
    const surveys = await client.sendRequest<readonly SurveyOfFile[]>(requests.surveys, { uri: uri.toString() });
    if (surveys.length < 2) {
        return surveys[0] ? Uri.parse(surveys[0].uri) : uri;
    }
    const picked = await window.showQuickPick(surveys.map(survey => ({ label: survey.number, description: survey.vessel, detail: workspace.asRelativePath(Uri.parse(survey.uri)), uri: survey.uri })), { title: 'This file is part of several surveys. Which one?' });
    return picked && Uri.parse(picked.uri);
}

/** A choice given by whoever runs the command is not asked for again. */
async function writeReportAs(client: BaseLanguageClient, chosen: Chosen = {}): Promise<readonly string[] | undefined> {
    const uri = await chooseSurvey(client);
    if (!uri) {
        return undefined;
    }
    const document = chosen.document ?? (await window.showQuickPick([...papers], { title: 'Which paper?' }))?.document;
    if (!document) {
        return undefined;
    }
    const offered = forms.filter(({ form }) => document === 'report' || form !== 'json');
    const picked = chosen.forms ?? (await window.showQuickPick([...offered], { title: 'In which forms?', canPickMany: true }))?.map(({ form }) => form);
    if (!picked || picked.length === 0) {
        return undefined;
    }
    const folder = workspace.getConfiguration('garboard', uri).get<string>('report.folder', 'out');
    const result = await withProgress<WriteResult, WriteParams>(client, requests.write, 'Writing the report', { uri: uri.toString(), document, forms: picked, folder, ...printing(uri) });
    if (result.state !== 'written') {
        tellNotDone(result);
        return undefined;
    }
    const [first] = result.paths;
    const state = result.openErrors > 0 ? ` as DRAFT, with ${counted(result.openErrors, 'open problem')}` : '';
    const faults = result.photoFaults;
    const photos = faults.length > 0 ? ` ${counted(faults.length, 'photo')} could not be read: ${faults.slice(0, 3).join('; ')}${faults.length > 3 ? ' …' : ''}.` : '';
    void window.showInformationMessage(`Written${state}: ${result.paths.map(path => workspace.asRelativePath(path)).join(', ')}.${photos}`, 'Open', 'Show in folder', ...result.openErrors > 0 ? ['Show problems'] : []).then(choice => {
        if (choice === 'Open' && first !== undefined) {
            void open(Uri.file(first));
        } else if (choice === 'Show in folder' && first !== undefined) {
            void showInFolder(Uri.file(first));
        } else if (choice === 'Show problems') {
            void showOpenProblems(client);
        }
    });
    return result.paths;
}

async function issueReport(client: BaseLanguageClient, chosenName?: string): Promise<string | undefined> {
    const uri = await chooseSurvey(client);
    if (!uri) {
        return undefined;
    }
    if (uri.scheme !== 'file') {
        void window.showInformationMessage('Save the survey first: what is issued is what lies on disk.');
        return undefined;
    }
    const known = await client.sendRequest<SignersResult | null>(requests.signers, { uri: uri.toString() });
    if (known && known.openErrors > 0) {
        void window.showWarningMessage(`The report cannot be issued: ${known.openErrors} ${known.openErrors === 1 ? 'problem is' : 'problems are'} to be answered first.`, 'Show problems').then(choice => choice && showOpenProblems(client));
        return undefined;
    }
    if (!await saved(known?.files ?? [])) {
        return undefined;
    }
    const signedBy = chosenName ?? await askSigner(known?.names ?? []);
    if (signedBy === undefined) {
        return undefined;
    }
    const picked = chosenName !== undefined ? ['html' as const] : (await window.showQuickPick(forms.filter(({ form }) => form !== 'json'), { title: 'Issue in which forms?', canPickMany: true }))?.map(({ form }) => form);
    if (!picked || picked.length === 0) {
        return undefined;
    }
    const now = new Date();
    const today = `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
    const result = await withProgress<IssueAnswer, IssueParams>(client, requests.issue, 'Issuing the report', { uri: uri.toString(), forms: picked, signedBy, today, ...printing(uri) });
    switch (result.state) {
        case 'issued':
            void window.showInformationMessage(`${result.name}. Send the SHA-256 of its manifest with the report: ${result.manifestSha256}`, 'Copy the SHA-256', 'Show in folder').then(choice => {
                if (choice === 'Copy the SHA-256') {
                    void env.clipboard.writeText(result.manifestSha256);
                } else if (choice) {
                    void showInFolder(Uri.joinPath(Uri.file(result.folder), 'report.html'));
                }
            });
            return result.folder;
        case 'refused':
            tellRefused(result.refusals);
            return undefined;
        default:
            tellNotDone(result);
            return undefined;
    }
}

/** What is frozen is what lies on disk: the survey's files are saved first, where the user agrees. */
async function saved(files: readonly string[]): Promise<boolean> {
    const unsaved = workspace.textDocuments.filter(document => document.isDirty && files.includes(document.uri.toString()));
    if (unsaved.length === 0) {
        return true;
    }
    const names = unsaved.map(({ uri }) => workspace.asRelativePath(uri)).join(', ');
    const choice = await window.showWarningMessage('Save the survey before it is issued?', { modal: true, detail: `What is issued is what lies on disk. Not saved: ${names}.` }, 'Save');
    return choice === 'Save' && (await Promise.all(unsaved.map(document => document.save()))).every(Boolean);
}

/** One reason is told with the way to its place; several are listed, each with its own. */
function tellRefused(refusals: readonly Refused[]): void {
    const [first] = refusals;
    const place = ({ at }: Refused) => at && `${workspace.asRelativePath(Uri.parse(at.uri))}, line ${at.line + 1}`;
    const go = async ({ at }: Refused) => {
        if (at) {
            const start = new Position(at.line, at.character);
            await window.showTextDocument(Uri.parse(at.uri), { selection: new Range(start, start) });
        }
    };
    if (first && refusals.length === 1) {
        void window.showWarningMessage(`The report is not issued. ${first.message}`, ...first.at ? ['Show the place'] : []).then(async choice => {
            if (choice) {
                await go(first);
            }
        });
        return;
    }
    void window.showWarningMessage(`The report is not issued, for ${refusals.length} reasons. ${first?.message ?? ''}`, 'Show all').then(async choice => {
        const picked = choice && await window.showQuickPick(refusals.map(refusal => ({ label: place(refusal) ?? 'The survey', detail: refusal.message, refusal })), { title: 'Why the report is not issued', matchOnDetail: true });
        if (picked) {
            await go(picked.refusal);
        }
    });
}

/** Only whom the survey names may sign; where it names nobody, the name is asked for. */
async function askSigner(names: readonly string[]): Promise<string | undefined> {
    const title = 'Who signs the report?';
    return names.length > 0 ? window.showQuickPick(names.map((label, index) => ({ label, description: index === 0 ? 'surveyor' : 'reviewer' })), { title }).then(picked => picked?.label)
        : window.showInputBox({ title, prompt: 'Name as it stands under the statement', validateInput: text => text.trim() === '' ? 'A report is signed by somebody.' : undefined });
}

async function verifyIssues(client: BaseLanguageClient, chosen?: Uri): Promise<VerifyAnswer['issues'] | undefined> {
    const folder = chosen ?? (await window.showOpenDialog({
        title: 'Folder of issued reports', openLabel: 'Verify', canSelectFiles: false, canSelectFolders: true, ...(workspace.workspaceFolders?.[0] ? { defaultUri: workspace.workspaceFolders[0].uri } : {}),
    }))?.[0];
    if (!folder) {
        return undefined;
    }
    const result = await window.withProgress({ location: ProgressLocation.Window, title: 'Verifying issued reports' }, () => client.sendRequest<VerifyAnswer | NotDone>(requests.verify, { folder: folder.toString() }));
    if ('state' in result) {
        tellNotDone(result);
        return undefined;
    }
    const wrong = result.issues.filter(({ verdict }) => verdict !== 'unchanged');
    if (wrong.length === 0) {
        void window.showInformationMessage(`${result.issues.length === 1 ? 'It is' : `All ${result.issues.length} are`} as issued: ${result.issues.map(({ name }) => name).join('; ')}.`);
    } else {
        void window.showWarningMessage(`${wrong.length} of ${counted(result.issues.length, 'issued report')} ${wrong.length === 1 ? 'is' : 'are'} not as issued: ${wrong.map(({ name }) => name).join('; ')}.`, 'Show what changed').then(choice => choice && showFaults(result.issues));
    }
    return result.issues;
}

const verdicts: Readonly<Record<VerifyAnswer['issues'][number]['verdict'], string>> = { unchanged: 'as issued', changed: 'not as issued', unreadable: 'cannot be verified' };

/** Each fault under its issue; choosing one shows the folder of the issue. */
async function showFaults(issues: VerifyAnswer['issues']): Promise<void> {
    const items = issues.flatMap(({ name, verdict, faults, folder }) => [
        { label: `${name}: ${verdicts[verdict]}`, kind: QuickPickItemKind.Separator, folder },
        ...(verdict === 'unchanged' ? ['Nothing has changed'] : faults).map(label => ({ label, description: workspace.asRelativePath(folder), folder })),
    ]);
    const picked = await window.showQuickPick(items, { title: 'Issued reports against their manifests', matchOnDescription: true });
    if (picked) {
        await showInFolder(Uri.file(picked.folder));
    }
}

const counted = (count: number, thing: string) => `${count} ${thing}${count === 1 ? '' : 's'}`;

/** Opens a file as its kind is commonly opened: in a browser, a viewer or a word processor. A workbench that does not run on this machine shows it itself. */
async function open(file: Uri): Promise<void> {
    const isHere = env.uiKind === UIKind.Desktop && env.remoteName === undefined;
    if (!isHere || !await env.openExternal(file)) {
        await commands.executeCommand('vscode.open', file);
    }
}

/** In the system's file manager, or in the explorer of a workbench that does not run on this machine. */
async function showInFolder(file: Uri): Promise<void> {
    await commands.executeCommand(env.uiKind === UIKind.Desktop && env.remoteName === undefined ? 'revealFileInOS' : 'revealInExplorer', file);
}

function printing(uri: Uri): Pick<WriteParams, 'paper' | 'browser'> {
    const settings = workspace.getConfiguration('garboard', uri);
    const paper = settings.get<string>('report.paper', 'firm');
    return { browser: settings.get<string>('pdf.browser', ''), ...(paper === 'a4' || paper === 'letter' ? { paper } : {}) };
}

let requestsMade = 0;

/** A request with its progress shown, and stopped where the user says so. */
function withProgress<R, P extends { readonly progress?: string }>(client: BaseLanguageClient, request: string, title: string, params: P): Thenable<R> {
    return window.withProgress({ location: ProgressLocation.Notification, title, cancellable: true }, async (shown, token) => {
        const progress = `garboard-${++requestsMade}`;
        const listening = client.onProgress(new ProgressType<string>(), progress, message => shown.report({ message }));
        try {
            return await client.sendRequest<R>(request, { ...params, progress }, token);
        } finally {
            listening.dispose();
        }
    });
}

function tellNotDone({ state, message }: NotDone): void {
    if (state === 'stopped') {
        void window.showInformationMessage(message);
    } else if (state === 'no-browser') {
        void window.showErrorMessage(message, 'Open the setting').then(choice => choice && commands.executeCommand('workbench.action.openSettings', 'garboard.pdf.browser'));
    } else {
        void window.showErrorMessage(message);
    }
}
