import { mkdtempSync, readFileSync, rmSync, cpSync, symlinkSync, mkdirSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

it('what is generated is what the grammar and the catalogue give', () => {
    const copy = mkdtempSync(join(tmpdir(), 'garboard-generated-'));
    try {
        for (const part of ['grammar', 'src', '.scripts', 'langium-config.json', 'package.json', 'tsconfig.json']) {
            cpSync(join(root, part), join(copy, part), { recursive: true });
        }
        mkdirSync(join(copy, 'syntaxes'));
        symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'), 'dir');
        const { status, stderr } = spawnSync(process.execPath, ['.scripts/generate.mjs'], { cwd: copy, encoding: 'utf8' });
        expect(status, stderr).toBe(0);
        for (const file of ['src/language/generated/ast.ts', 'src/language/generated/grammar.ts', 'src/language/generated/module.ts', 'src/catalogue/bundled.ts', 'src/record/generated/kinds.ts', 'src/checks/README.md', 'syntaxes/garboard.tmLanguage.json']) {
            expect(readFileSync(join(copy, file), 'utf8') === readFileSync(join(root, file), 'utf8'), `${file} is stale; run npm run generate`).toBe(true);
        }
    } finally {
        rmSync(copy, { recursive: true, force: true });
    }
}, 60_000);
