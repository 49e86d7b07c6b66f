/**
 * The report beside the text. It is the report's own page, redrawn from the buffer after each edit and put in place
 * without losing the reader's position; a click on a finding or component goes to its source.
 */
import { commands, Range, Selection, Uri, ViewColumn, window, workspace, type ExtensionContext, type TextDocument, type WebviewPanel } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { requests, type ReportResult } from '../server/protocol.js';
import { previewShell } from './preview-shell.js';

interface Message {
    readonly type: 'ready' | 'reveal';
    readonly uri?: string;
    readonly start?: number;
}

export function registerPreview(context: ExtensionContext, client: BaseLanguageClient): void {
    let panel: WebviewPanel | undefined;
    let shown: Uri | undefined;
    let timer: NodeJS.Timeout | undefined;
    let drawing = 0;

    const draw = async () => {
        if (!panel || !shown) {
            return;
        }
        const turn = ++drawing;
        const result = await client.sendRequest<ReportResult | null>(requests.report, { uri: shown.toString(), mode: 'preview' }).catch(() => null);
        // A later edit has asked again meanwhile: its answer counts.
        if (panel && result && turn === drawing) {
            panel.title = `Report: ${Uri.parse(result.mainUri).path.split('/').at(-1) ?? ''}`;
            await panel.webview.postMessage({ type: 'report', html: result.html });
        }
    };
    const drawSoon = (document: TextDocument) => {
        if (panel && document.languageId === 'garboard') {
            clearTimeout(timer);
            timer = setTimeout(() => void draw(), 250);
        }
    };
    const attach = (view: WebviewPanel) => {
        panel = view;
        view.webview.options = { enableScripts: true, localResourceRoots: [] };
        view.webview.html = previewShell();
        view.webview.onDidReceiveMessage(async (message: Message) => {
            if (message.type === 'ready') {
                await draw();
            } else if (message.uri !== undefined && message.start !== undefined) {
                const document = await workspace.openTextDocument(Uri.parse(message.uri));
                const at = document.positionAt(message.start);
                const editor = await window.showTextDocument(document, { viewColumn: ViewColumn.One, preserveFocus: false });
                editor.selection = new Selection(at, at);
                editor.revealRange(new Range(at, at));
            }
        }, undefined, context.subscriptions);
        view.onDidDispose(() => {
            panel = undefined;
            clearTimeout(timer);
        }, undefined, context.subscriptions);
    };

    context.subscriptions.push(
        commands.registerCommand('garboard.preview', () => {
            const editor = window.activeTextEditor;
            if (editor?.document.languageId !== 'garboard') {
                void window.showInformationMessage('Open a file of the survey first (its name ends in .survey).');
                return;
            }
            shown = editor.document.uri;
            if (panel) {
                panel.reveal(ViewColumn.Beside, true);
                void draw();
                return;
            }
            attach(window.createWebviewPanel('garboard.preview', 'Report', { viewColumn: ViewColumn.Beside, preserveFocus: true }, { retainContextWhenHidden: true }));
        }),
        workspace.onDidChangeTextDocument(event => drawSoon(event.document)),
        workspace.onDidSaveTextDocument(drawSoon),
        window.onDidChangeActiveTextEditor(editor => {
            if (panel && editor?.document.languageId === 'garboard' && editor.document.uri.scheme !== 'garboard-catalogue') {
                shown = editor.document.uri;
                drawSoon(editor.document);
            }
        }),
    );
}
