/** Commands: write the report in other forms or another paper of it, issue it, verify what was issued. The server does the work. */
import { commands, ProgressLocation, Uri, window, workspace, type ExtensionContext, type QuickPickItem } from 'vscode';
import { ProgressType, type BaseLanguageClient } from 'vscode-languageclient';
import { requests, type DocumentKind, type IssueAnswer, type IssueParams, type NotDone, type OutputForm, type SignersResult, type VerifyAnswer, type WriteParams, type WriteResult } from '../server/protocol.js';
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

export function registerPapers(context: ExtensionContext, client: BaseLanguageClient): void {
    context.subscriptions.push(
        commands.registerCommand('garboard.writeReportAs', (chosen?: { readonly document?: DocumentKind; readonly forms?: readonly OutputForm[] }) => writeReportAs(client, chosen)),
        commands.registerCommand('garboard.issueReport', (signedBy?: string) => issueReport(client, signedBy)),
        commands.registerCommand('garboard.verifyIssues', (folder?: Uri) => verifyIssues(client, folder)),
    );
}

/** A choice given by whoever runs the command is not asked for again. */
async function writeReportAs(client: BaseLanguageClient, chosen: { readonly document?: DocumentKind; readonly forms?: readonly OutputForm[] } = {}): Promise<readonly string[] | undefined> {
    const uri = surveyEditor()?.document.uri;
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
    const state = result.openErrors > 0 ? ` as DRAFT: ${result.openErrors} open ${result.openErrors === 1 ? 'problem' : 'problems'}` : '';
    const photos = result.photoFaults.length > 0 ? ` ${result.photoFaults.length} photo(s) could not be read: ${result.photoFaults.slice(0, 3).join('; ')}.` : '';
    void window.showInformationMessage(`Written${state}: ${result.paths.map(path => workspace.asRelativePath(path)).join(', ')}.${photos}`, 'Show in folder', ...result.openErrors > 0 ? ['Show problems'] : []).then(choice => {
        if (choice === 'Show in folder' && first !== undefined) {
            void commands.executeCommand('revealFileInOS', Uri.file(first));
        } else if (choice === 'Show problems') {
            void showOpenProblems(client);
        }
    });
    return result.paths;
}

async function issueReport(client: BaseLanguageClient, chosenName?: string): Promise<string | undefined> {
    const editor = surveyEditor();
    if (!editor) {
        return undefined;
    }
    const { uri } = editor.document;
    const known = await client.sendRequest<SignersResult | null>(requests.signers, { uri: uri.toString() });
    if (known && known.openErrors > 0) {
        void window.showWarningMessage(`The report cannot be issued: ${known.openErrors} ${known.openErrors === 1 ? 'problem is' : 'problems are'} to be answered first.`, 'Show problems').then(choice => choice && showOpenProblems(client));
        return undefined;
    }
    // What is frozen is what lies on disk.
    const unsaved = workspace.textDocuments.filter(document => document.languageId === 'garboard' && document.isDirty);
    if (unsaved.length > 0 && (await window.showInformationMessage('The survey is saved before it is issued.', { modal: true }, 'Save') !== 'Save' || !(await Promise.all(unsaved.map(document => document.save()))).every(Boolean))) {
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
            void window.showInformationMessage(`${result.name}. SHA-256 of its manifest: ${result.manifestSha256}. Send that figure with the report.`, 'Show in folder').then(choice => choice && commands.executeCommand('revealFileInOS', Uri.file(result.folder)));
            return result.folder;
        case 'refused':
            void window.showWarningMessage(`The report is not issued. ${result.refusals.slice(0, 3).join(' ')}${result.refusals.length > 3 ? ` And ${result.refusals.length - 3} more.` : ''}`, 'Show problems').then(choice => choice && showOpenProblems(client));
            return undefined;
        default:
            tellNotDone(result);
            return undefined;
    }
}

async function askSigner(names: readonly string[]): Promise<string | undefined> {
    const other = 'Somebody else…';
    const picked = names.length === 0 ? other : await window.showQuickPick([...names, other], { title: 'Who signs the report?' });
    return picked === other ? window.showInputBox({ title: 'Who signs the report?', prompt: 'Name as it stands under the statement', validateInput: text => text.trim() === '' ? 'A report is signed by somebody.' : undefined }) : picked;
}

async function verifyIssues(client: BaseLanguageClient, chosen?: Uri): Promise<VerifyAnswer['issues'] | undefined> {
    const folder = chosen ?? (await window.showOpenDialog({
        title: 'Folder of issued reports', openLabel: 'Verify', canSelectFiles: false, canSelectFolders: true, ...(workspace.workspaceFolders?.[0] ? { defaultUri: workspace.workspaceFolders[0].uri } : {}),
    }))?.[0];
    if (!folder) {
        return undefined;
    }
    const result = await client.sendRequest<VerifyAnswer | NotDone>(requests.verify, { folder: folder.toString() });
    if ('state' in result) {
        tellNotDone(result);
        return undefined;
    }
    const verdicts = { unchanged: 'nothing has changed', changed: 'not as it was made', unreadable: 'cannot be verified' };
    const wrong = result.issues.filter(({ verdict }) => verdict !== 'unchanged');
    if (wrong.length === 0) {
        void window.showInformationMessage(`${result.issues.map(({ name }) => name).join('; ')}: nothing has changed since.`);
    } else {
        void window.showQuickPick(result.issues.map(({ name, verdict, faults, folder: place }) => ({ label: `${name}: ${verdicts[verdict]}`, description: workspace.asRelativePath(place), detail: faults.join('; ') })), { title: `${wrong.length} of ${result.issues.length} issued reports are not as they were made`, matchOnDetail: true });
    }
    return result.issues;
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
