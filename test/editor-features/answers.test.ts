import { describe, expect, it } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.js';
import type { IssuedBefore, Problem } from '../../src/checks/contract.js';
import { analyseSurvey, parseTexts } from '../../src/checks/survey.js';
import { Writer, type Edit } from '../../src/editor/edits.js';
import { formatText } from '../../src/editor/formatter.js';

const uri = 'memory:/survey.survey';

function read(text: string, issued?: IssuedBefore) {
    const parsed = parseTexts(new Map([[uri, text]]));
    const files = new Map([...parsed].map(([at, { file }]) => [at, file]));
    const analysis = analyseSurvey(uri, files, issued);
    return { files, analysis, faults: [...[...parsed.values()].flatMap(p => p.gaps), ...analysis.gaps].filter(gap => gap.severity === 'error') };
}

const applied = (text: string, edits: readonly Edit[]): string =>
    [...edits].sort((a, b) => b.start - a.start).reduce((done, edit) => done.slice(0, edit.start) + edit.text + done.slice(edit.end), text);

const keyOf = (problem: Problem): string => `${problem.severity === 'hint' ? 'hint' : 'problem'} ${problem.check.id} on ${problem.components.map(c => c.id).join(', ')}`;

/** Examples as a surveyor would have them: laid out, in a system, so that answers land among findings. */
function layouts(bad: string): string[] {
    const plain = formatText(bad);
    const indented = bad.split('\n');
    const movable = !/^(survey|vessel|use|valuation|firm|person|kind|material|words|phrase|standard)\b/m.test(bad);
    const inSystem = movable ? [formatText(`system skin "Openings" {\n${indented.map(line => line === '' ? '' : `    ${line}`).join('\n')}}\n`)] : [];
    return [plain, ...inSystem, plain.replaceAll('\n', '\r\n')];
}

describe('every answer to every example', () => {
    for (const check of allChecks) {
        describe(check.id, () => {
            for (const { name, bad, issued } of check.examples) {
                it(name, () => {
                    for (const text of layouts(bad)) {
                        const { analysis, files } = read(text, issued);
                        for (const problem of analysis.problems.filter(p => p.check === check && p.answeredBy === undefined)) {
                            const holds = (what: string, edits: readonly Edit[], allowed: readonly string[] = [], isStep = false) => {
                                expect(edits.length, what).toBeGreaterThan(0);
                                const after = applied(text, edits);
                                const { analysis: now, faults } = read(after, issued);
                                expect(faults.filter(gap => !allowed.includes(gap.code)).map(gap => gap.message), `${what}\n${after}`).toEqual([]);
                                if (!isStep) {
                                    expect(now.problems.filter(p => p.answeredBy === undefined).map(keyOf), `${what}\n${after}`).not.toContain(keyOf(problem));
                                }
                                expect(formatText(after), what).toBe(after);
                            };
                            const writer = () => new Writer(analysis.record, files);
                            if (problem.draft) {
                                holds('draft a finding', writer().draftFinding([problem]));
                            }
                            if (problem.severity !== 'hint') {
                                holds('accept', writer().accept(problem), ['reason-missing']);
                            }
                            for (const correction of problem.corrections ?? []) {
                                holds(correction.title, writer().correct(correction), [], correction.isStep);
                            }
                        }
                    }
                });
            }
        });
    }
});
