// `npm test`: sets up what a fresh clone lacks, then runs every test: types, layers, units, protocol, report in
// Chromium, and the editor tests in a real VS Code. `npm test -- --quick` leaves out what needs Chromium.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBuilt, ensureDependencies, root, run } from './set-up.mjs';

const quick = process.argv.includes('--quick');
ensureDependencies();
await ensureBuilt();

const bin = name => join(root, 'node_modules', '.bin', process.platform === 'win32' ? `${name}.cmd` : name);
const steps = [
    ['types', bin('tsc'), ['--noEmit']],
    ['layers and style', bin('eslint'), ['--config', '.config/eslint.config.mjs', '--max-warnings', '0', 'src', 'test', '.scripts']],
];
if (!quick) {
    const { findChromium } = await import('./ensure-chromium.mjs');
    console.log(`Chromium: ${await findChromium()}`);
    const { findLibreOffice } = await import('./ensure-libreoffice.mjs');
    console.log(`LibreOffice: ${await findLibreOffice() ?? 'none'}`);
}
steps.push(['units, protocol, report', bin('vitest'), ['run', '--config', '.config/vitest.config.ts', ...(quick ? ['--exclude', '**/*.browser.test.ts'] : [])]]);
if (!quick) {
    steps.push(['packing', process.execPath, ['.scripts/package.mjs']]);
    if (existsSync(join(root, 'test/editor'))) {
        steps.push(['editor', process.execPath, ['.scripts/editor-test.mjs']]);
    }
}

let failed = 0;
const times = [];
for (const [title, command, args] of steps) {
    console.log(`\n== ${title}`);
    const start = Date.now();
    const status = run(command, args);
    times.push(`${title}: ${status === 0 ? 'passed' : 'FAILED'} (${((Date.now() - start) / 1000).toFixed(0)} s)`);
    if (status !== 0) {
        failed++;
    }
}
console.log(`\n${times.join('\n')}`);
console.log(`${steps.length - failed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
