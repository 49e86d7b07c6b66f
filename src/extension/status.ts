/** The count of open problems in the status bar, while a survey is in view. */
import { StatusBarAlignment, languages, window, workspace, type ExtensionContext } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { requests, type ProblemsResult } from '../server/protocol.js';

export function registerStatus(context: ExtensionContext, client: BaseLanguageClient): void {
    const item = window.createStatusBarItem('garboard.problems', StatusBarAlignment.Left, 10);
    item.name = 'Garboard: open problems';
    item.command = 'garboard.showOpenProblems';
    let timer: NodeJS.Timeout | undefined;
    const refresh = () => {
        clearTimeout(timer);
        timer = setTimeout(() => void update(), 300);
    };
    const update = async () => {
        const document = window.activeTextEditor?.document;
        if (document?.languageId !== 'garboard' || !client.isRunning()) {
            item.hide();
            return;
        }
        const result = await client.sendRequest<ProblemsResult | null>(requests.problems, { uri: document.uri.toString() }).catch(() => null);
        if (!result) {
            item.hide();
            return;
        }
        const open = result.problems.filter(p => p.severity === 'error' || p.severity === 'warning').length;
        item.text = open === 0 ? 'Survey: all answered' : `Survey: ${open} open`;
        item.tooltip = `${open} open, ${result.answered} answered, ${result.findings} findings. Select to list them.`;
        item.show();
    };
    context.subscriptions.push(item, languages.onDidChangeDiagnostics(refresh), window.onDidChangeActiveTextEditor(refresh), workspace.onDidCloseTextDocument(refresh),
        { dispose: () => clearTimeout(timer) });
}
