/**
 * A browser driven over a pipe, as its developer tools drive it: no port is opened, and a browser whose pipe closes ends itself. It runs on an
 * empty profile of its own, without network, extensions or the user's settings.
 */
import { spawn, type ChildProcess } from 'node:child_process';
import { dirname } from 'node:path';
import type { Readable, Writable } from 'node:stream';

interface Reply {
    readonly id?: number;
    readonly result?: unknown;
    readonly error?: { readonly message: string };
    readonly method?: string;
    readonly sessionId?: string;
}

const switches: readonly string[] = [
    '--headless=new', '--remote-debugging-pipe', '--no-first-run', '--no-default-browser-check', '--disable-gpu', '--hide-scrollbars', '--mute-audio',
    '--host-resolver-rules=MAP * ~NOTFOUND', '--no-proxy-server', '--disable-quic', '--no-pings',
    '--disable-background-networking', '--disable-component-update', '--disable-component-extensions-with-background-pages', '--disable-default-apps', '--disable-domain-reliability',
    '--disable-extensions', '--disable-sync', '--disable-breakpad', '--disable-client-side-phishing-detection', '--disable-dev-shm-usage', '--metrics-recording-only',
    '--password-store=basic', '--use-mock-keychain', '--disable-features=Translate,OptimizationHints,MediaRouter,DialMediaRouteProvider',
];

/** How many of the browser's last words are kept, for the message should it end unasked. */
const keptWords = 2000;

export class BrowserPipe {
    readonly #child: ChildProcess;
    readonly #toBrowser: Writable;
    readonly #waiting = new Map<number, { resolve(value: unknown): void; reject(error: Error): void }>();
    readonly #events: { method: string; sessionId: string; resolve(): void; reject(error: Error): void }[] = [];
    readonly #closed: Promise<void>;
    #pieces: Buffer[] = [];
    #lastId = 0;
    #words = '';
    #end: Error | undefined;

    private constructor(child: ChildProcess, toBrowser: Writable, fromBrowser: Readable) {
        this.#child = child;
        this.#toBrowser = toBrowser;
        fromBrowser.on('data', (chunk: Buffer) => this.#read(chunk));
        child.stderr?.on('data', (chunk: Buffer) => { this.#words = (this.#words + chunk.toString('utf8')).slice(-keptWords); });
        // A pipe that breaks is told by the end of the process.
        toBrowser.on('error', () => undefined);
        fromBrowser.on('error', () => undefined);
        this.#closed = new Promise(resolve => {
            child.once('error', error => {
                this.#fail(new Error(`The browser ${child.spawnfile} could not be started: ${error.message}.`));
                resolve();
            });
            child.once('exit', (code, signal) => {
                this.#fail(new Error(`The browser ${child.spawnfile} ended before the page was printed (${signal ?? `status ${code ?? '?'}`}).${lastWords(this.#words)}`));
                resolve();
            });
        });
    }

    /** Starts the program on an empty profile in `profile`, a folder that the caller removes. */
    static start(program: string, profile: string): BrowserPipe {
        // Root on Linux, as in a container, has no sandbox to offer; elsewhere the browser keeps its own.
        const asRoot = process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : [];
        const child = spawn(program, [...switches, ...asRoot, `--user-data-dir=${profile}`, 'about:blank'], {
            // A group of its own on POSIX, so that all its processes can be ended together, and only when we say so.
            // What it leaves in the temporary folder when it is ended goes with the caller's.
            env: { ...process.env, TMPDIR: dirname(profile), TMP: dirname(profile), TEMP: dirname(profile) },
            detached: process.platform !== 'win32', windowsHide: true, stdio: ['ignore', 'ignore', 'pipe', 'pipe', 'pipe'],
        });
        // By `stdio` above the fourth is written to and the fifth read from.
        return new BrowserPipe(child, child.stdio[3] as Writable, child.stdio[4] as Readable);
    }

    /** Sends a command and gives its result. @throws Error of the browser, or that it has ended. */
    send<R>(method: string, params: object = {}, sessionId?: string): Promise<R> {
        if (this.#end) {
            return Promise.reject(this.#end);
        }
        const id = ++this.#lastId;
        return new Promise((resolve, reject) => {
            // The protocol says which shape answers which command; callers name it.
            this.#waiting.set(id, { resolve: value => resolve(value as R), reject: error => reject(new Error(`${method}: ${error.message}`)) });
            this.#toBrowser.write(`${JSON.stringify({ id, method, params, ...(sessionId === undefined ? {} : { sessionId }) })}\0`);
        });
    }

    /** The next event of this name in a session. */
    event(method: string, sessionId: string): Promise<void> {
        return this.#end ? Promise.reject(this.#end) : new Promise((resolve, reject) => this.#events.push({ method, sessionId, resolve, reject }));
    }

    /** Ends the browser with all its processes, and resolves when it has ended. */
    async close(): Promise<void> {
        const { pid } = this.#child;
        if (pid !== undefined && this.#child.exitCode === null && this.#child.signalCode === null) {
            if (process.platform === 'win32') {
                spawn('taskkill', ['/pid', String(pid), '/T', '/F'], { stdio: 'ignore', windowsHide: true }).once('error', () => this.#child.kill());
            } else {
                try {
                    process.kill(-pid, 'SIGKILL');
                } catch {
                    this.#child.kill('SIGKILL');
                }
            }
        }
        await this.#closed;
    }

    #read(chunk: Buffer): void {
        let rest = chunk;
        for (let end = rest.indexOf(0); end !== -1; end = rest.indexOf(0)) {
            this.#pieces.push(rest.subarray(0, end));
            const message = Buffer.concat(this.#pieces).toString('utf8');
            this.#pieces = [];
            rest = rest.subarray(end + 1);
            this.#receive(JSON.parse(message) as Reply);
        }
        if (rest.length > 0) {
            this.#pieces.push(rest);
        }
    }

    #receive({ id, result, error, method, sessionId }: Reply): void {
        const waiting = id === undefined ? undefined : this.#waiting.get(id);
        if (id !== undefined && waiting) {
            this.#waiting.delete(id);
            if (error) {
                waiting.reject(new Error(error.message));
            } else {
                waiting.resolve(result);
            }
            return;
        }
        const at = this.#events.findIndex(event => event.method === method && event.sessionId === sessionId);
        if (at !== -1) {
            this.#events.splice(at, 1)[0]?.resolve();
        }
    }

    #fail(error: Error): void {
        this.#end ??= error;
        for (const { reject } of [...this.#waiting.values(), ...this.#events]) {
            reject(this.#end);
        }
        this.#waiting.clear();
        this.#events.length = 0;
    }
}

function lastWords(words: string): string {
    const lines = words.trim().split('\n').filter(line => /FATAL|ERROR:.*(?:sandbox|zygote|profile)|cannot|No usable sandbox/i.test(line));
    return lines.length === 0 ? '' : ` It said: ${lines.slice(-2).join(' ').slice(0, 400)}`;
}
