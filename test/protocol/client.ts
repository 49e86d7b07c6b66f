/** A language client over stdio, as small as a test needs. Speaks to the built server. */
import { spawn, type ChildProcess } from 'node:child_process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { createMessageConnection, StreamMessageReader, StreamMessageWriter, type MessageConnection } from 'vscode-jsonrpc/node';
import type { Diagnostic, InitializeResult } from 'vscode-languageserver-protocol';

export const serverPath = fileURLToPath(new URL('../../dist/server.cjs', import.meta.url));

export class TestClient {
    private readonly published = new Map<string, { version: number | undefined; diagnostics: Diagnostic[] }>();
    private readonly waiting: { uri: string; test: (d: Diagnostic[], version: number | undefined) => boolean; resolve: (d: Diagnostic[]) => void }[] = [];
    private version = 1;

    private constructor(private readonly child: ChildProcess, readonly connection: MessageConnection, readonly capabilities: InitializeResult['capabilities']) {
        connection.onNotification('textDocument/publishDiagnostics', (params: { uri: string; version?: number; diagnostics: Diagnostic[] }) => {
            this.published.set(params.uri, { version: params.version, diagnostics: params.diagnostics });
            for (const waiter of [...this.waiting]) {
                if (waiter.uri === params.uri && waiter.test(params.diagnostics, params.version)) {
                    this.waiting.splice(this.waiting.indexOf(waiter), 1);
                    waiter.resolve(params.diagnostics);
                }
            }
        });
    }

    static async start(folder?: string): Promise<TestClient> {
        const child = spawn(process.execPath, [serverPath, '--stdio'], { stdio: ['pipe', 'pipe', 'pipe'] });
        let noise = '';
        child.stderr.on('data', (chunk: Buffer) => { noise += chunk.toString(); });
        const connection = createMessageConnection(new StreamMessageReader(child.stdout), new StreamMessageWriter(child.stdin));
        connection.onRequest('client/registerCapability', () => null);
        connection.onRequest('workspace/configuration', (params: { items: unknown[] }) => params.items.map(() => null));
        for (const refresh of ['workspace/codeLens/refresh', 'workspace/inlayHint/refresh', 'workspace/semanticTokens/refresh', 'workspace/diagnostic/refresh', 'window/workDoneProgress/create']) {
            connection.onRequest(refresh, () => null);
        }
        connection.listen();
        child.on('exit', code => {
            if (code !== 0 && code !== null) {
                console.error(`The server ended with ${code}.\n${noise}`);
            }
        });
        const result: InitializeResult = await connection.sendRequest('initialize', {
            processId: process.pid, rootUri: folder === undefined ? null : pathToFileURL(folder).href,
            workspaceFolders: folder === undefined ? null : [{ uri: pathToFileURL(folder).href, name: 'folder' }],
            capabilities: {
                textDocument: { publishDiagnostics: { relatedInformation: true, codeDescriptionSupport: true, versionSupport: true }, codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } }, completion: { completionItem: { snippetSupport: true } } },
                workspace: { configuration: true },
            },
        });
        const client = new TestClient(child, connection, result.capabilities);
        await connection.sendNotification('initialized', {});
        return client;
    }

    async open(uri: string, text: string): Promise<void> {
        await this.connection.sendNotification('textDocument/didOpen', { textDocument: { uri, languageId: 'garboard', version: this.version, text } });
    }

    async change(uri: string, text: string): Promise<void> {
        await this.connection.sendNotification('textDocument/didChange', { textDocument: { uri, version: ++this.version }, contentChanges: [{ text }] });
    }

    async close(uri: string): Promise<void> {
        await this.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
    }

    /** The diagnostics of a file once they pass the test. @throws Error after the time limit. */
    diagnostics(uri: string, test: (d: Diagnostic[], version?: number) => boolean = () => true, limitMs = 20_000): Promise<Diagnostic[]> {
        const now = this.published.get(uri);
        if (now && test(now.diagnostics, now.version)) {
            return Promise.resolve(now.diagnostics);
        }
        return new Promise((resolve, reject) => {
            const timer = setTimeout(() => reject(new Error(`No such diagnostics for ${uri}; the last were ${JSON.stringify(this.published.get(uri)?.diagnostics.map(d => d.message))}`)), limitMs);
            this.waiting.push({ uri, test, resolve: d => { clearTimeout(timer); resolve(d); } });
        });
    }

    /** Forgets what was published for a file, so that the next wait sees only what comes. */
    forget(uri: string): void {
        this.published.delete(uri);
    }

    request<R>(method: string, params: unknown): Promise<R> {
        return this.connection.sendRequest(method, params);
    }

    get isAlive(): boolean {
        return this.child.exitCode === null;
    }

    async stop(): Promise<void> {
        if (this.isAlive) {
            await this.connection.sendRequest('shutdown').catch(() => undefined);
            await this.connection.sendNotification('exit').catch(() => undefined);
        }
        this.connection.dispose();
        this.child.kill();
    }
}
