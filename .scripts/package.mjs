// Packs the extension: `npm run package` writes garboard-VERSION.vsix and tells what is in it.
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBuilt, ensureDependencies, root } from './set-up.mjs';

ensureDependencies();
await ensureBuilt();
const { createVSIX, listFiles } = await import('@vscode/vsce');
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const packagePath = join(root, `garboard-${version}.vsix`);
await createVSIX({ cwd: root, packagePath, dependencies: false, allowMissingRepository: true, rewriteRelativeLinks: false, skipLicense: false });
for (const file of await listFiles({ cwd: root })) {
    if (!file.includes('node_modules')) {
        console.log(`  ${(statSync(join(root, file)).size / 1024).toFixed(0).padStart(6)} kB  ${file}`);
    }
}
const size = statSync(packagePath).size;
console.log(`${packagePath}: ${(size / 1024).toFixed(0)} kB`);
if (size > 3 * 1024 * 1024) {
    console.error('The packed extension is over 3 MB.');
    process.exitCode = 1;
}
