// Bundles the extension, the language server and the command line into dist/.
import { mkdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = dirname(dirname(fileURLToPath(import.meta.url)));

export async function buildAll() {
    rmSync(join(root, 'dist'), { recursive: true, force: true });
    mkdirSync(join(root, 'dist'), { recursive: true });
    const shared = {
        bundle: true, minify: true, sourcemap: false, legalComments: 'none', logLevel: 'warning', metafile: true, absWorkingDir: root,
        platform: 'node', format: 'cjs', target: 'node20', loader: { '.wasm': 'binary', '.woff2': 'base64' }, outdir: 'dist', outExtension: { '.js': '.cjs' },
        mainFields: ['module', 'main'], define: { 'process.env.NODE_ENV': '"production"', 'import.meta.url': '""' }, logOverride: { 'empty-import-meta': 'silent' },
    };
    const results = await Promise.all([
        build({ ...shared, entryPoints: { extension: 'src/extension/main.ts' }, external: ['vscode'] }),
        build({ ...shared, entryPoints: { server: 'src/server/main.ts' }, external: ['sharp'] }),
        build({ ...shared, entryPoints: { 'photo-worker': 'src/host/photo-worker.ts' } }),
        // The native image library is found beside the bundle where it is installed; it has no part in it.
        build({ ...shared, entryPoints: { cli: 'src/cli/main.ts' }, external: ['sharp'], banner: { js: '#!/usr/bin/env node' } }),
    ]);
    return results.flatMap(result => Object.entries(result.metafile.outputs).map(([file, { bytes }]) => ({ file, bytes })));
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
    for (const { file, bytes } of await buildAll()) {
        console.log(`${file}  ${(bytes / 1024).toFixed(0)} kB`);
    }
}
