/** Problems as SARIF 2.1.0 (OASIS), for code-review tools. */
import type { Check, Severity } from '../checks/contract.js';
import type { FileProblems } from './problem-list.js';

const levels: Readonly<Record<Severity, 'error' | 'warning' | 'note'>> = { error: 'error', warning: 'warning', info: 'note', hint: 'note' };

export function sarif(files: readonly FileProblems[], checks: readonly Check[]): object {
    const rules = checks.map(check => ({
        id: check.id, shortDescription: { text: check.title }, fullDescription: { text: check.why }, help: { text: `${check.computes}\n${check.limits.join('\n')}` },
        defaultConfiguration: { level: levels[check.severity] },
    }));
    const index = new Map(rules.map((rule, i) => [rule.id, i]));
    return {
        $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
        version: '2.1.0',
        runs: [{
            tool: { driver: { name: 'Garboard', rules } },
            columnKind: 'utf16CodeUnits',
            results: files.flatMap(({ file, problems }) => problems.map(problem => ({
                ruleId: problem.check, ...(index.has(problem.check) ? { ruleIndex: index.get(problem.check) } : {}), level: levels[problem.severity], message: { text: problem.message },
                locations: [{ physicalLocation: {
                    artifactLocation: { uri: encodeURI(file) },
                    region: { startLine: problem.line, startColumn: problem.column, endLine: problem.endLine, endColumn: problem.endColumn },
                } }],
                ...(problem.answeredBy === null ? {} : { suppressions: [{ kind: 'external', justification: `Answered by ${problem.answeredBy}` }] }),
            }))),
        }],
    };
}
