import { it } from 'vitest';
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { analyseSurvey, parseTexts } from '/work/main/src/checks/survey.js';
const ids = new Set(['wire-too-small','fuse-too-big','fuse-missing-or-far','voltage-drop','leakage-current','leakage-breaker-missing','polarity-or-earth','inlet-overheated','battery-loose-or-bare','battery-weak-or-mixed','charge-voltage-wrong','pump-endurance-short']);
it('look', () => {
    const root = '/work/main/examples';
    for (const dir of readdirSync(root).filter(d => statSync(join(root, d)).isDirectory())) {
        const texts = new Map(readdirSync(join(root, dir)).filter(f => f.endsWith('.survey')).map(f => [`file://${join(root, dir, f)}`, readFileSync(join(root, dir, f), 'utf8')] as const));
        const files = new Map([...parseTexts(texts)].map(([at, { file }]) => [at, file]));
        const main = [...texts.keys()].find(k => texts.get(k)?.includes('survey "')) ?? [...texts.keys()][0];
        const a = analyseSurvey(main ?? '', files);
        console.log(dir, a.problems.filter(p => ids.has(p.check.id)).map(p => `\n  ${p.severity} ${p.check.id} ${p.answeredBy ?? '-'}: ${p.message}`).join(''));
    }
});
