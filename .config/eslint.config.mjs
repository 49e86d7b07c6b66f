// The one rule that matters most: imports follow the layers of DEVELOPERS.md downwards.
import tseslint from 'typescript-eslint';

const layers = {
    quantities: [],
    trade: ['quantities'],
    catalogue: [],
    language: ['catalogue', 'quantities'],
    record: ['language', 'catalogue', 'trade', 'quantities'],
    checks: ['record', 'language', 'trade', 'quantities'],
    report: ['checks', 'record', 'trade', 'quantities'],
    host: ['report', 'checks', 'record', 'language', 'quantities'],
    editor: ['checks', 'report', 'record', 'language', 'trade', 'quantities'],
    server: ['host', 'editor', 'report', 'checks', 'record', 'language', 'quantities'],
    cli: ['host', 'editor', 'report', 'checks', 'record', 'language', 'quantities'],
    extension: ['server'],
};
/** Hosts a layer may not know. */
const hosts = {
    quantities: ['langium', 'vscode*', 'node:*'], trade: ['langium', 'vscode*', 'node:*'], catalogue: ['langium', 'vscode*', 'node:*'],
    language: ['vscode*', 'node:*'], record: ['vscode', 'vscode-languageserver*', 'node:*'], checks: ['vscode', 'vscode-languageserver*', 'node:*'],
    report: ['vscode*', 'langium', 'node:*'], host: ['vscode*'], editor: ['vscode', 'node:*'], server: ['vscode'], cli: ['vscode'], extension: [],
};

const layerRules = Object.entries(layers).map(([layer, allowed]) => {
    const forbidden = Object.keys(layers).filter(other => other !== layer && !allowed.includes(other));
    return {
        files: [`src/${layer}/**/*.ts`],
        ignores: ['src/**/generated/**', 'src/catalogue/bundled.ts'],
        rules: {
            'no-restricted-imports': ['error', {
                patterns: [
                    ...forbidden.map(other => ({ group: [`**/${other}/*`, `**/${other}/**`], message: `${layer} may not import ${other}: imports point downwards only (DEVELOPERS.md).` })),
                    ...(hosts[layer].length > 0 ? [{ group: hosts[layer], message: `${layer} runs in every host and may not know this one.` }] : []),
                ],
            }],
        },
    };
});

export default tseslint.config(
    { ignores: ['dist/**', 'node_modules/**', '.cache/**', '.vscode-test/**', '**/generated/**', 'src/catalogue/bundled.ts'] },
    ...tseslint.configs.recommended,
    {
        files: ['src/**/*.ts'],
        rules: {
            '@typescript-eslint/no-explicit-any': 'error',
            '@typescript-eslint/no-non-null-assertion': 'error',
            '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
            'max-lines': ['warn', { max: 450, skipBlankLines: true, skipComments: true }],
            eqeqeq: 'error',
        },
    },
    ...layerRules,
);
