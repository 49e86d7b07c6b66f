import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
    root: fileURLToPath(new URL('..', import.meta.url)),
    plugins: [{
        // As the bundle does it: a .wasm module is its bytes.
        name: 'wasm-bytes', enforce: 'pre',
        load: id => id.endsWith('.wasm') ? `export default Uint8Array.from(atob('${readFileSync(id).toString('base64')}'), c => c.charCodeAt(0));` : undefined,
    }, {
        // And a font file is its base64.
        name: 'fonts-base64', enforce: 'pre',
        load: id => id.endsWith('.woff2') ? `export default '${readFileSync(id).toString('base64')}';` : undefined,
    }],
    test: {
        server: { deps: { inline: [/\.wasm$/, /\.woff2$/] } },
        include: ['test/**/*.test.ts'],
        exclude: ['test/editor/**', 'node_modules/**'],
        testTimeout: 30_000,
        // No test leaves photographs in the user's own folder, or finds those of an earlier run.
        env: { GARBOARD_CACHE: '' },
        // The tests change nothing of one another's modules: loading these once a worker halves the run.
        isolate: false,
        globalSetup: ['test/oracle/coverage.ts'],
    },
});
