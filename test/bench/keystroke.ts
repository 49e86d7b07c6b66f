/**
 * From a keystroke to its problems at 200, 2 000 and 20 000 lines: Garboard beside a JSON and a YAML language server.
 *
 * All three hold the same facts. The JSON Schema knows each kind's properties, their patterns and words, so that the
 * peers judge as strictly as they can; what they cannot do (units, fit, runs) Garboard does besides. An edit makes
 * one value wrong, then right again; the time runs from the change to the publication for that version.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { benchChecks } from './checks.js';
import { createMessageConnection, StreamMessageReader, StreamMessageWriter, type MessageConnection } from 'vscode-jsonrpc/node';

const require = createRequire(import.meta.url);
const root = process.cwd();

interface Peer {
    readonly name: string;
    readonly languageId: string;
    readonly extension: string;
    readonly command: readonly string[];
    readonly text: (lines: number, broken: boolean) => string;
}

/** One vessel's worth of statements: about 15 lines in each form. */
interface Group { readonly through: string; readonly valve: string; readonly hose: string; readonly size: string }

function groups(lines: number): Group[] {
    return Array.from({ length: Math.max(1, Math.round(lines / 15)) }, (_, i) => ({ through: `TH${i}`, valve: `SV${i}`, hose: `H${i}`, size: i % 2 === 0 ? '1-1/2 in' : '1 in' }));
}

function survey(lines: number, broken: boolean): string {
    const all = groups(lines);
    const middle = Math.floor(all.length / 2);
    return `survey "B-1" pre-purchase { attended 2026-10-06 ashore "yard" }\nvessel "Bench" { hull-material: grp }\nsystem skin "Openings" {\n${all.map(({ through, valve, hose, size }, i) => `    through-hull ${through} "Discharge" { size: ${size}  metal: gunmetal  above-waterline: 14 in }
    seacock ${valve} "Valve" {
        size: ${size}
        metal: gunmetal
        pattern: ${broken && i === middle ? 'ball-valv' : 'ball-valve'}
        works: free
    }
    hose ${hose} {
        bore: ${size}
        reinforcement: wire
        condition: sound
    }
    run R${i} "Discharge": ${through} -> ${valve} -> ${hose} -> capped
    // drawn at the yard
`).join('\n')}}\n`;
}

function json(lines: number, broken: boolean): string {
    const all = groups(lines);
    const middle = Math.floor(all.length / 2);
    const list = all.flatMap(({ through, valve, hose, size }, i) => [
        { kind: 'through-hull', id: through, title: 'Discharge', size, metal: 'gunmetal', 'above-waterline': '14 in' },
        { kind: 'seacock', id: valve, title: 'Valve', size, metal: 'gunmetal', pattern: broken && i === middle ? 'ball-valv' : 'ball-valve', works: 'free' },
        { kind: 'hose', id: hose, bore: size, reinforcement: 'wire', condition: 'sound' },
        { kind: 'run', id: `R${i}`, steps: [through, valve, hose, 'capped'] },
    ]);
    // One fact a line where the survey has one a line, so that the three texts have about as many lines.
    return `{ "components": [\n${list.map(item => item.kind === 'seacock' || item.kind === 'hose' ? JSON.stringify(item, undefined, 2) : JSON.stringify(item)).join(',\n')}\n] }\n`;
}

function yaml(lines: number, broken: boolean): string {
    const all = groups(lines);
    const middle = Math.floor(all.length / 2);
    return `components:\n${all.map(({ through, valve, hose, size }, i) => `  - { kind: through-hull, id: ${through}, title: Discharge, size: "${size}", metal: gunmetal, above-waterline: 14 in }
  - kind: seacock
    id: ${valve}
    title: Valve
    size: "${size}"
    metal: gunmetal
    pattern: ${broken && i === middle ? 'ball-valv' : 'ball-valve'}
    works: free
  - kind: hose
    id: ${hose}
    bore: "${size}"
    reinforcement: wire
    condition: sound
  - { kind: run, id: R${i}, steps: [${through}, ${valve}, ${hose}, capped] }
`).join('')}`;
}

const length = { type: 'string', pattern: '^\\d+(-\\d+/\\d+)?(\\.\\d+)? (in|mm|ft|m)$' };
const id = { type: 'string', pattern: '^[A-Za-z][A-Za-z0-9-]*$' };
const metal = { enum: ['gunmetal', 'bronze', 'silicon-bronze', 'brass', 'dzr-brass', 'stainless-316', 'nickel-copper', 'mild-steel', 'aluminum'] };
const kind = (name: string, properties: object, required: string[] = []) => ({ type: 'object', properties: { kind: { const: name }, id, title: { type: 'string' }, ...properties }, required: ['kind', 'id', ...required], additionalProperties: false });
const schema = {
    $schema: 'http://json-schema.org/draft-07/schema#', type: 'object', required: ['components'], additionalProperties: false,
    properties: { components: { type: 'array', items: { oneOf: [
        kind('through-hull', { size: length, metal, 'above-waterline': length, 'below-waterline': length }),
        kind('seacock', { size: length, metal, pattern: { enum: ['ball-valve', 'flanged-seacock', 'plug-cock', 'gate-valve', 'globe-valve'] }, works: { enum: ['free', 'stiff', 'seized', 'not-tried'] } }),
        kind('hose', { bore: length, reinforcement: { enum: ['none', 'textile', 'wire'] }, condition: { enum: ['sound', 'serviceable', 'worn', 'defective', 'failed'] } }),
        kind('run', { steps: { type: 'array', items: { type: 'string' }, minItems: 1 } }, ['steps']),
    ] } } },
};

const jsonServer = require.resolve('vscode-langservers-extracted/bin/vscode-json-language-server');
const yamlServer = require.resolve('yaml-language-server/bin/yaml-language-server');

const peers: readonly Peer[] = [
    { name: 'Garboard', languageId: 'garboard', extension: 'survey', command: ['--max-semi-space-size=64', join(root, 'dist/server.cjs'), '--stdio'], text: survey },
    { name: 'JSON', languageId: 'json', extension: 'json', command: ['--max-semi-space-size=64', jsonServer, '--stdio'], text: json },
    { name: 'YAML', languageId: 'yaml', extension: 'yaml', command: ['--max-semi-space-size=64', yamlServer, '--stdio'], text: yaml },
];

class Session {
    private readonly waiting = new Map<string, () => void>();
    private latest: { diagnostics: unknown[] } = { diagnostics: [] };

    private constructor(readonly connection: MessageConnection, private readonly kill: () => void, private readonly pulls: boolean) {
        connection.onNotification('textDocument/publishDiagnostics', (params: { uri: string; diagnostics: unknown[] }) => {
            this.latest = params;
            this.waiting.get(params.uri)?.();
        });
    }

    static async start(peer: Peer, folder: string): Promise<Session> {
        const child = spawn(process.execPath, [...peer.command], { stdio: ['pipe', 'pipe', 'ignore'] });
        const connection = createMessageConnection(new StreamMessageReader(child.stdout), new StreamMessageWriter(child.stdin));
        const settings = { json: { validate: { enable: true }, schemas: [{ fileMatch: ['*.json'], schema, url: 'memory:/schema.json' }] }, yaml: { validate: true, schemaStore: { enable: false }, schemas: { [pathToFileURL(join(folder, 'schema.json')).href]: '*.yaml' } } };
        connection.onRequest('workspace/configuration', (params: { items: { section?: string }[] }) => params.items.map(item => (settings as Record<string, unknown>)[item.section ?? ''] ?? null));
        connection.onRequest('client/registerCapability', () => null);
        connection.onRequest('client/unregisterCapability', () => null);
        connection.onUnhandledNotification(() => undefined);
        connection.listen();
        const folderUri = pathToFileURL(folder).href;
        await connection.sendRequest('initialize', {
            processId: process.pid, rootUri: folderUri, workspaceFolders: [{ uri: folderUri, name: 'bench' }],
            // The JSON server waits half a second before it publishes, but answers at once when it is asked: it is asked.
            capabilities: {
                workspace: { configuration: true, didChangeConfiguration: { dynamicRegistration: true } },
                textDocument: { publishDiagnostics: { versionSupport: true }, ...(peer.languageId === 'json' ? { diagnostic: { dynamicRegistration: false } } : {}) },
            },
        });
        await connection.sendNotification('initialized', {});
        await connection.sendNotification('workspace/didChangeConfiguration', { settings });
        return new Session(connection, () => child.kill(), peer.languageId === 'json');
    }

    /** The problems after a change, once there are some, or none. */
    async settled(uri: string, wantsProblem: boolean, send: () => Promise<void>): Promise<void> {
        if (!this.pulls) {
            const published = this.next(uri, wantsProblem);
            await send();
            return published;
        }
        await send();
        for (const until = Date.now() + 60_000; Date.now() < until;) {
            const report: { items?: { severity?: number }[] } = await this.connection.sendRequest('textDocument/diagnostic', { textDocument: { uri } });
            if ((report.items ?? []).some(d => (d.severity ?? 1) <= 2) === wantsProblem) {
                return;
            }
        }
        throw new Error(`the JSON server did not settle for ${uri}`);
    }

    /** The next publication for a file that has (or has not) a problem. */
    private next(uri: string, wantsProblem: boolean): Promise<void> {
        return new Promise((resolve, reject) => {
            const timer = setTimeout(() => reject(new Error(`no ${wantsProblem ? '' : 'clean '}publication for ${uri}; last: ${JSON.stringify(this.latest.diagnostics).slice(0, 300)}`)), 60_000);
            this.waiting.set(uri, () => {
                const problems = (this.latest.diagnostics as { severity?: number }[]).filter(d => (d.severity ?? 1) <= 2);
                if (problems.length > 0 === wantsProblem) {
                    clearTimeout(timer);
                    this.waiting.delete(uri);
                    resolve();
                }
            });
        });
    }

    stop(): void {
        this.connection.dispose();
        this.kill();
    }
}

function percentile(sorted: readonly number[], share: number): number {
    return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

async function measure(peer: Peer, lines: number, edits: number, folder: string): Promise<{ p50: number; p95: number; lines: number }> {
    const session = await Session.start(peer, folder);
    const uri = pathToFileURL(join(folder, `bench.${peer.extension}`)).href;
    const [right, wrong] = [peer.text(lines, false), peer.text(lines, true)];
    await session.settled(uri, true, () => session.connection.sendNotification('textDocument/didOpen', { textDocument: { uri, languageId: peer.languageId, version: 1, text: wrong } }));
    let first = 0;
    while (right.charCodeAt(first) === wrong.charCodeAt(first)) {
        first++;
    }
    const before = right.slice(0, first);
    const position = { line: before.split('\n').length - 1, character: first - (before.lastIndexOf('\n') + 1) };
    const times: number[] = [];
    for (let i = 0; i < edits; i++) {
        const mends = i % 2 === 0;
        // One character typed, or taken away, as an editor sends it.
        const change = mends ? { range: { start: position, end: position }, text: 'e' } : { range: { start: position, end: { ...position, character: position.character + 1 } }, text: '' };
        const start = performance.now();
        await session.settled(uri, !mends, () => session.connection.sendNotification('textDocument/didChange', { textDocument: { uri, version: i + 2 }, contentChanges: [change] }));
        times.push(performance.now() - start);
        await new Promise(resolve => setTimeout(resolve, 20));
    }
    session.stop();
    const sorted = times.slice(4).sort((a, b) => a - b);
    return { p50: percentile(sorted, 0.5), p95: percentile(sorted, 0.95), lines: right.split('\n').length };
}

const folder = mkdtempSync(join(tmpdir(), 'garboard-bench-'));
writeFileSync(join(folder, 'schema.json'), JSON.stringify(schema));
try {
    console.log('Keystroke to problems, milliseconds (p50 / p95), and Garboard’s ratio to each peer’s p50:\n');
    const garboard: Record<number, number> = {};
    for (const [lines, edits] of [[200, 44], [2000, 44], [20000, 24]] as const) {
        const results: Record<string, { p50: number; p95: number; lines: number }> = {};
        for (const peer of peers) {
            results[peer.name] = await measure(peer, lines, edits, folder);
        }
        const own = results['Garboard'];
        if (!own) {
            continue;
        }
        garboard[lines] = own.p50;
        for (const [name, { p50, p95, lines: real }] of Object.entries(results)) {
            const ratio = name === 'Garboard' ? '' : `  Garboard/${name} ${(own.p50 / p50).toFixed(2)} (p95 ${(own.p95 / p95).toFixed(2)})`;
            console.log(`${String(lines).padStart(6)} lines  ${name.padEnd(9)} ${p50.toFixed(1).padStart(8)} / ${p95.toFixed(1).padStart(8)}  (${real} lines of text)${ratio}`);
        }
        console.log('');
    }
    console.log(`Cost of size: 20 000 lines take ${((garboard[20000] ?? 0) / (garboard[2000] ?? 1)).toFixed(1)} times the 2 000-line figure (budget 12).`);
    console.log('Budget: at most twice the JSON server at each size, aiming at no more than it.');
} finally {
    rmSync(folder, { recursive: true, force: true });
}
benchChecks();
