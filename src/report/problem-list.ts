/** Problems and gaps of analysed surveys as a flat list by file: the contract of `garboard check --format json`. */
import type { Analysis } from '../checks/analyse.js';
import type { ProblemFigure, Severity } from '../checks/contract.js';
import type { Gap } from '../record/model.js';

export interface ListedProblem {
    readonly check: string;
    readonly severity: Severity;
    readonly line: number;
    readonly column: number;
    readonly endLine: number;
    readonly endColumn: number;
    readonly components: readonly string[];
    readonly message: string;
    readonly figures: Readonly<Record<string, ProblemFigure>>;
    readonly sources: readonly string[];
    readonly answeredBy: string | null;
}

export interface FileProblems {
    readonly file: string;
    readonly problems: readonly ListedProblem[];
}

export interface ListOptions {
    /** One-based line and column of an offset. */
    readonly position: (uri: string, offset: number) => { readonly line: number; readonly column: number };
    readonly name: (uri: string) => string;
    /** Files to list, those without problems too, in this order. */
    readonly files: readonly string[];
}

export function listProblems(analyses: readonly Analysis[], syntax: readonly Gap[], { position, name, files }: ListOptions): FileProblems[] {
    const byFile = new Map<string, Map<string, ListedProblem>>(files.map(uri => [uri, new Map()]));
    const add = (uri: string, start: number, end: number, rest: Omit<ListedProblem, 'line' | 'column' | 'endLine' | 'endColumn'>) => {
        const from = position(uri, start);
        const to = position(uri, end);
        const listed: ListedProblem = {
            check: rest.check, severity: rest.severity, line: from.line, column: from.column, endLine: to.line, endColumn: to.column,
            components: rest.components, message: rest.message, figures: rest.figures, sources: rest.sources, answeredBy: rest.answeredBy,
        };
        const problems = byFile.get(uri) ?? new Map<string, ListedProblem>();
        byFile.set(uri, problems);
        // A house file shared by two surveys is told once.
        problems.set(`${start}:${rest.check}:${rest.message}`, listed);
    };
    for (const gap of [...syntax, ...analyses.flatMap(a => a.gaps)]) {
        add(gap.span.uri, gap.span.start, gap.span.end, { check: gap.code, severity: gap.severity, components: [], message: gap.message, figures: {}, sources: [], answeredBy: null });
    }
    for (const problem of analyses.flatMap(a => a.problems)) {
        add(problem.at.uri, problem.at.start, problem.at.end, {
            check: problem.check.id, severity: problem.severity, components: problem.components.map(c => c.id), message: problem.message, figures: problem.figures ?? {},
            sources: problem.check.sources.map(source => [source.standard, source.clause, source.text].filter(Boolean).join(', ')), answeredBy: problem.answeredBy ?? null,
        });
    }
    return [...byFile].map(([uri, problems]) => ({
        file: name(uri), problems: [...problems.values()].sort((a, b) => a.line - b.line || a.column - b.column),
    }));
}
