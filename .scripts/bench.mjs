// `npm run bench`: what things cost, beside a peer in the same run. How long from a keystroke to its problems, beside a JSON and a YAML language server that hold the
// same facts under a JSON Schema of the same strictness. Ratios count; milliseconds depend on the machine.
import { ensureBuilt, ensureDependencies, run } from './set-up.mjs';
import { join } from 'node:path';
import { root } from './set-up.mjs';

ensureDependencies();
await ensureBuilt();
const { build } = await import('esbuild');
const outfile = join(root, '.cache', 'bench.mjs');
await build({ entryPoints: [join(root, 'test/bench/main.ts')], outfile, bundle: true, platform: 'node', format: 'esm', packages: 'external', logLevel: 'error', absWorkingDir: root,
    // Fonts are no modules that Node could load; they are bundled as everywhere.
    loader: { '.woff2': 'base64' }, alias: { '@fontsource': join(root, 'node_modules', '@fontsource') } });
process.exitCode = run(process.execPath, [outfile, ...process.argv.slice(2)]);
