import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import Ajv from 'ajv';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FileProblems } from '../../src/report/problem-list.js';
import { TestClient } from '../protocol/client.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const cli = join(root, 'dist/cli.cjs');
const garboard = (args: readonly string[], cwd: string) => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [cli, ...args], { cwd, encoding: 'utf8' });
    return { status, stdout, stderr };
};
const json = (args: readonly string[], cwd: string): { version: number; files: FileProblems[] } => JSON.parse(garboard(['check', '--format', 'json', ...args], cwd).stdout);

const unfit = `survey "1" pre-purchase { attended 2026-10-06 ashore "yard" }
vessel "Möwe ½ °C 😀" { water: salt }
seacock SC1 { metal: gunmetal  pattern: flanged-seacock  spigot: 1-1/2 in }
hose H1 "Schlauch" { bore: 1-1/4 in }
run R1: SC1 -> H1
`;

describe('the command', () => {
    let folder: string;
    beforeAll(() => {
        folder = mkdtempSync(join(tmpdir(), 'garboard-cli-'));
        writeFileSync(join(folder, 'a.survey'), unfit);
        writeFileSync(join(folder, 'crlf bom ñ.survey'), `\ufeff${unfit.replaceAll('\n', '\r\n')}`);
        cpSync(join(root, 'examples'), join(folder, 'examples'), { recursive: true, filter: source => !source.endsWith('/out') });
    });
    afterAll(() => rmSync(folder, { recursive: true, force: true }));

    it('lists problems as text, and ends with 1 while one is open at error', () => {
        const { status, stdout } = garboard(['check', 'a.survey'], folder);
        expect(status).toBe(1);
        expect(stdout).toMatch(/^a\.survey:4:28: error: .*6\.35 mm.*\(hose-and-spigot-differ\)$/m);
    });

    it('ends with 0 where every problem is answered', () => {
        expect(garboard(['check', 'examples/marram'], folder).status).toBe(0);
    });

    it('writes JSON by its published schema', () => {
        const validate = new Ajv({ strict: false }).compile(JSON.parse(readFileSync(join(root, 'src/report/check-output.schema.json'), 'utf8')));
        const output = json(['.'], folder);
        expect(validate(output), JSON.stringify(validate.errors)).toBe(true);
        expect(output.files.length).toBeGreaterThan(6);
        const problem = output.files.find(f => f.file === 'a.survey')?.problems.find(p => p.check === 'hose-and-spigot-differ');
        expect(problem).toMatchObject({ severity: 'error', line: 4, column: 28, components: ['H1', 'SC1'], answeredBy: null });
        expect(problem?.figures['difference']).toMatchObject({ unit: 'mm' });
        expect(output.files.flatMap(f => f.problems).some(p => p.answeredBy === 'F1')).toBe(true);
    });

    it('finds the same with Windows line ends, a byte-order mark and a name that is not ASCII', () => {
        const [plain, other] = [json(['a.survey'], folder), json(['crlf bom ñ.survey'], folder)];
        expect(other.files[0]?.file).toBe('crlf bom ñ.survey');
        expect(other.files[0]?.problems).toEqual(plain.files[0]?.problems);
    });

    it('writes SARIF with its rules', () => {
        const log = JSON.parse(garboard(['check', '--format', 'sarif', 'a.survey'], folder).stdout);
        expect(log.version).toBe('2.1.0');
        const [run] = log.runs;
        const result = run.results.find((r: { ruleId: string }) => r.ruleId === 'hose-and-spigot-differ');
        expect(run.tool.driver.rules[result.ruleIndex].id).toBe('hose-and-spigot-differ');
        expect(result.locations[0].physicalLocation.region.startLine).toBe(4);
    });

    it('writes to a file whole, leaving nothing beside it', () => {
        expect(garboard(['check', '--format', 'json', '-o', 'made/p.json', 'a.survey'], folder).stdout).toBe('');
        expect(readdirSync(join(folder, 'made'))).toEqual(['p.json']);
    });

    it('says what is wrong with its words, and ends with 2', () => {
        for (const [args, says] of [
            [[], /say what to do/], [['chek'], /no command chek/], [['check'], /at least one/], [['check', 'none.survey'], /none\.survey cannot be read/], [['check', '--format', 'xml', '.'], /not xml/],
            [['check', '--wat', '.'], /wat/], [['report', 'none.survey'], /cannot be read/], [['explain', 'hose-and-spigot-difer'], /Did you mean hose-and-spigot-differ/], [['report', 'examples/house/house.survey'], /no survey block/],
        ] as const) {
            const { status, stderr } = garboard(args, folder);
            expect(status, args.join(' ')).toBe(2);
            expect(stderr).toMatch(says);
        }
    });

    it('explains a check and lists them all', () => {
        expect(garboard(['explain', 'hose-and-spigot-differ'], folder).stdout).toMatch(/183\.558/);
        expect(garboard(['explain', '--list'], folder).stdout.split('\n').length).toBeGreaterThan(35);
    });

    it('writes the report, as a draft with 1 while problems are open', () => {
        const draft = garboard(['report', 'examples/unanswered/dunlin.survey'], folder);
        expect(draft.status).toBe(1);
        expect(draft.stdout).toMatch(/DRAFT, 7 open problems/);
        const done = garboard(['report', 'examples/marram/marram.survey', '-o', 'r/marram.html'], folder);
        expect(done.stderr).toBe('');
        expect(done.status).toBe(0);
        expect(readdirSync(join(folder, 'r'))).toEqual(['marram.html']);
        expect(existsSync(join(folder, 'examples/marram/out'))).toBe(false);
    });

    it('agrees with the editor on every example', async () => {
        const client = await TestClient.start(folder);
        const severities = ['', 'error', 'warning', 'info', 'hint'];
        try {
            for (const { file, problems } of json(['examples'], folder).files) {
                const path = join(folder, file);
                const uri = pathToFileURL(path).href;
                await client.open(uri, readFileSync(path, 'utf8'));
                const shown = (await client.diagnostics(uri)).map(d => `${d.range.start.line + 1}:${d.range.start.character + 1} ${severities[d.severity ?? 0]} ${String(d.code)} ${d.message}`).sort();
                const listed = problems.filter(p => p.answeredBy === null).map(p => `${p.line}:${p.column} ${p.severity} ${p.check} ${p.message}`).sort();
                expect(shown, file).toEqual(listed);
            }
        } finally {
            await client.stop();
        }
    }, 60_000);
});
