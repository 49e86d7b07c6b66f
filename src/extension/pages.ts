/** Read-only pages: the built-in catalogue and the explanation of each check. */
import { languages, Uri, workspace, type ExtensionContext } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { requests } from '../server/protocol.js';

export function registerPages(context: ExtensionContext, client: BaseLanguageClient): void {
    context.subscriptions.push(
        workspace.registerTextDocumentContentProvider('garboard-catalogue', {
            provideTextDocumentContent: async uri => await client.sendRequest<string | null>(requests.catalogue, { uri: `garboard-catalogue:${uri.path}` }) ?? '// There is no such file in the catalogue.',
        }),
        workspace.registerTextDocumentContentProvider('garboard-explain', {
            provideTextDocumentContent: async uri => {
                const check = uri.path.replace(/^\//, '').replace(/\.md$/, '');
                return await client.sendRequest<string | null>(requests.explain, { check }) ?? `No check is called ${check}.`;
            },
        }),
        workspace.onDidOpenTextDocument(document => {
            if (document.uri.scheme === 'garboard-catalogue' && document.languageId !== 'garboard') {
                void languages.setTextDocumentLanguage(document, 'garboard');
            }
        }),
    );
}

export const explanationPage = (check: string): Uri => Uri.parse(`garboard-explain:/${check}.md`);
