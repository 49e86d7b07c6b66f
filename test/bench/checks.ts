/**
 * Checks of all kinds over the largest survey, beside parsing it: the invented surveys of every kind of craft put
 * together, again and again under other ids, up to 20 000 lines. The checks are to take less time than the parser.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { EmptyFileSystem, URI } from 'langium';
import { allChecks } from '../../src/checks/all-checks.js';
import { analyse } from '../../src/checks/analyse.js';
import { parseTexts, recordOf } from '../../src/checks/survey.js';
import type { SurveyFile } from '../../src/language/generated/ast.js';
import { createGarboardServices } from '../../src/language/services.js';
import { catalogueSources } from '../../src/record/catalogue.js';
import { lowerSurvey } from '../../src/record/lower.js';
import { vocabularyOf } from '../../src/record/vocabulary.js';

const folder = join(process.cwd(), 'test/surveys');
const wanted = 20_000;

/** The systems of a survey as text, and the ids declared in it. */
function partsOf(text: string): { readonly systems: string[]; readonly ids: string[] } {
    const uri = 'memory:/part.survey';
    const parsed = parseTexts(new Map([[uri, text]]));
    const files = new Map([...parsed].map(([at, { file }]) => [at, file]));
    const record = recordOf(uri, files);
    const systems = (files.get(uri)?.root.elements ?? []).filter(element => element.$type === 'System').map(element => element.$cstNode?.text ?? '');
    return { systems, ids: [...record.components.keys(), ...record.runs.map(run => run.id), ...record.findings.map(finding => finding.id), ...record.readings.map(reading => reading.id), ...record.systems.map(system => system.id)] };
}

export function largestSurvey(): string {
    const parts = readdirSync(folder).filter(name => name.endsWith('.survey')).sort().map(name => partsOf(readFileSync(join(folder, name), 'utf8')));
    const lines = ['survey "B-2" pre-purchase { attended 2026-10-06 ashore "yard" }', 'vessel "Bench" { type: sailing-yacht  length-overall: 12 m  length-on-deck: 11.8 m  fuel: diesel  water: salt  built: 1998 }'];
    for (let round = 0; lines.length < wanted; round++) {
        for (const [index, { systems, ids }] of parts.entries()) {
            const known = new Set(ids);
            // A name that stands alone, not inside a longer word.
            lines.push(...systems.join('\n\n').replace(/(?<![\p{L}\p{N}_-])[\p{L}_][\p{L}\p{N}_-]*/gu, word => known.has(word) ? `${word}x${round}x${index}` : word).split('\n'));
        }
    }
    return `${lines.join('\n')}\n`;
}

export function median(times: readonly number[]): number {
    return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
}

function timed(run: () => unknown): number {
    const start = performance.now();
    run();
    return performance.now() - start;
}

/** Prints the comparison; true where the checks take less than the parser. */
export function benchChecks(rounds = 9): boolean {
    const text = largestSurvey();
    const { shared } = createGarboardServices(EmptyFileSystem);
    const parse = (n: number) => shared.workspace.LangiumDocumentFactory.fromString<SurveyFile>(text, URI.parse(`memory:/bench-${n}.survey`)).parseResult.value;
    const uri = 'memory:/bench.survey';
    const main = { uri, root: parse(-1), isBuiltIn: false };
    vocabularyOf(catalogueSources());
    const lower = () => lowerSurvey({ main, files: [main], catalogue: catalogueSources() });
    const times = { parse: [] as number[], lower: [] as number[], checks: [] as number[] };
    let slowest: { id: string; ms: number }[] = [];
    let problems = 0;
    let lines = 0;
    for (let round = 0; round < rounds; round++) {
        times.parse.push(timed(() => parse(round)));
        let record = lower();
        times.lower.push(timed(() => { record = lower(); }));
        times.checks.push(timed(() => { problems = analyse(record).problems.length; }));
        lines = text.split('\n').length;
        if (round === rounds - 1) {
            const fresh = lower();
            slowest = allChecks.map(check => ({ id: check.id, ms: timed(() => check.run(fresh, () => undefined)) })).sort((a, b) => b.ms - a.ms).slice(0, 6);
        }
    }
    const [p, l, c] = [median(times.parse), median(times.lower), median(times.checks)];
    console.log(`\nThe largest survey: ${lines} lines, ${allChecks.length} checks, ${problems} problems.`);
    console.log(`parse ${p.toFixed(1)} ms, lower to the record ${l.toFixed(1)} ms, all checks and answers ${c.toFixed(1)} ms: checks / parse ${(c / p).toFixed(2)} (budget under 1)`);
    console.log(`slowest: ${slowest.map(({ id, ms }) => `${id} ${ms.toFixed(1)} ms`).join(', ')}`);
    return c < p;
}
