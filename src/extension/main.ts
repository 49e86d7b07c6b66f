/** The extension on the desktop: starts the language server and offers the commands. */
import { commands, languages, LanguageStatusSeverity, Uri, window, type ExtensionContext } from 'vscode';
import { LanguageClient, TransportKind, type LanguageClientOptions, type ServerOptions } from 'vscode-languageclient/node';
import { registerCommands } from './commands.js';
import { registerPages } from './pages.js';
import { registerPapers } from './papers.js';
import { registerPreview } from './preview.js';
import { registerStatus } from './status.js';

let client: LanguageClient | undefined;

export function activate(context: ExtensionContext): void {
    const module = Uri.joinPath(context.extensionUri, 'dist', 'server.cjs').fsPath;
    const server: ServerOptions = {
        // A survey is parsed at each keystroke: a larger nursery of the heap halves the pauses for collecting garbage.
        run: { module, transport: TransportKind.ipc, options: { execArgv: ['--max-semi-space-size=64'] } },
        debug: { module, transport: TransportKind.ipc, options: { execArgv: ['--nolazy', '--inspect=6019'] } },
    };
    const options: LanguageClientOptions = {
        // Every address but the read-only pages of the catalogue.
        documentSelector: [{ language: 'garboard', scheme: 'file' }, { language: 'garboard', scheme: 'untitled' }],
        outputChannelName: 'Garboard',
    };
    client = new LanguageClient('garboard', 'Garboard', server, options);
    const status = languages.createLanguageStatusItem('garboard.server', { language: 'garboard' });
    status.name = 'Garboard';
    status.text = 'Garboard is starting';
    status.busy = true;
    context.subscriptions.push(status);

    registerCommands(context, client);
    registerPapers(context, client);
    registerPages(context, client);
    registerPreview(context, client);
    registerStatus(context, client);
    context.subscriptions.push(commands.registerCommand('garboard.restart', async () => {
        await client?.restart();
        void window.setStatusBarMessage('Garboard: language server restarted', 3000);
    }));

    // Not awaited: the editor is ready before the server is.
    client.start().then(() => {
        status.text = 'Garboard';
        status.busy = false;
    }, (error: unknown) => {
        status.text = 'Garboard did not start';
        status.severity = LanguageStatusSeverity.Error;
        status.detail = String(error);
        status.busy = false;
    });
}

export function deactivate(): Thenable<void> | undefined {
    return client?.stop();
}
