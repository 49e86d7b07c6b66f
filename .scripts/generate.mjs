// Generates what is derived: the parser's data from grammar/, the catalogue as a module, the typed kinds and
// properties from the catalogue, the table of checks, and the TextMate grammar. The results are committed; a test compares them.
import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = dirname(dirname(fileURLToPath(import.meta.url)));

export function writeAtomically(path, text) {
    mkdirSync(dirname(path), { recursive: true });
    const temporary = `${path}.tmp`;
    writeFileSync(temporary, text);
    renameSync(temporary, path);
}

function generateParser() {
    execFileSync(process.execPath, ['--import', pathToFileURL(join(root, '.scripts/group-by.mjs')).href, join(root, 'node_modules/langium-cli/bin/langium.js'), 'generate'],
        { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] });
}

export function catalogueModule() {
    const folder = join(root, 'src/catalogue');
    const names = readdirSync(folder).filter(name => name.endsWith('.survey')).sort();
    const entries = names.map(name => `    ${JSON.stringify(name)}: ${JSON.stringify(readFileSync(join(folder, name), 'utf8').replaceAll('\r\n', '\n'))},`);
    return [
        '// Generated from the .survey files beside this one by `npm run generate`. Do not edit.',
        '/* eslint-disable */',
        '/** The built-in catalogue: text by file name. */',
        'export const catalogueFiles: Readonly<Record<string, string>> = {',
        ...entries,
        '};',
        '',
    ].join('\n');
}

/** Bundles a TypeScript module of the project and imports it. */
export async function importTypeScript(path) {
    const outfile = join(root, '.cache', `generate-${Date.now()}.mjs`);
    await build({ entryPoints: [join(root, path)], outfile, bundle: true, platform: 'node', format: 'esm', packages: 'external', logLevel: 'error' });
    return import(pathToFileURL(outfile).href);
}

export async function generateAll() {
    generateParser();
    writeAtomically(join(root, 'src/catalogue/bundled.ts'), catalogueModule());
    const { checksTable, kindsModule, textMateGrammar } = await importTypeScript('.scripts/generate-entry.ts');
    writeAtomically(join(root, 'src/record/generated/kinds.ts'), await kindsModule());
    writeAtomically(join(root, 'src/checks/README.md'), checksTable());
    writeAtomically(join(root, 'syntaxes/garboard.tmLanguage.json'), textMateGrammar());
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
    await generateAll();
    console.log('Generated: parser data, catalogue module, typed kinds, table of checks, TextMate grammar.');
}
