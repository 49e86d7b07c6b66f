// `npm run demo`: the main job on the example survey, from a fresh clone: its problems printed, its report written.
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBuilt, ensureDependencies, root, run } from './set-up.mjs';

ensureDependencies();
await ensureBuilt();

const survey = join('examples', 'marram', 'marram.survey');
const cli = join(root, 'dist', 'cli.cjs');
console.log(`\nProblems of ${survey}, the answered ones too:\n`);
const checked = run(process.execPath, [cli, 'check', '--answered', survey]);
if (checked === 2) {
    process.exit(2);
}
console.log('\nAnd of a survey that is not answered yet, examples/unanswered:\n');
run(process.execPath, [cli, 'check', join('examples', 'unanswered')]);
console.log('');
const written = run(process.execPath, [cli, 'report', survey]);
const report = join(root, 'examples', 'marram', 'out', 'marram.html');
if (written === 2 || !existsSync(report)) {
    console.error('The report was not written; the lines above say why.');
    process.exit(2);
}
console.log(`Open it in a browser: ${report} (${(statSync(report).size / 1024).toFixed(0)} kB)`);
process.exitCode = written;
