/** Above a finding what it answers, above a component its problems, above the survey how much is left to do. */
import type { LangiumDocument } from 'langium';
import type { CodeLensProvider } from 'langium/lsp';
import type { CodeLens, Command } from 'vscode-languageserver-types';
import type { Analysis } from '../checks/analyse.js';
import type { Problem } from '../checks/contract.js';
import type { Span } from '../record/model.js';
import type { GarboardServices } from './services.js';
import { isSwitchedOn } from './settings.js';

export interface Lens {
    readonly span: Span;
    readonly title: string;
    readonly command: 'garboard.showOpenProblems' | 'garboard.preview';
}

const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** Lenses of one file. */
export function lensesOf({ record, problems, gaps }: Analysis, uri: string): Lens[] {
    const lenses: Lens[] = [];
    const add = (span: Span, title: string, command: Lens['command'] = 'garboard.showOpenProblems') => {
        if (span.uri === uri) {
            lenses.push({ span, title, command });
        }
    };
    const proper = problems.filter(problem => problem.severity !== 'hint' || problem.answeredBy !== undefined);
    if (record.survey) {
        const open = proper.filter(p => p.answeredBy === undefined).length + gaps.filter(gap => gap.severity === 'error').length;
        add(record.survey.span, open === 0 ? 'No open problems' : count(open, 'open problem'));
        add(record.survey.span, count(record.findings.length, 'finding'), 'garboard.preview');
    }
    const answered = new Map<string, number>();
    const bySubject = new Map<string, Problem[]>();
    for (const problem of proper) {
        if (problem.answeredBy !== undefined) {
            answered.set(problem.answeredBy, (answered.get(problem.answeredBy) ?? 0) + 1);
        }
        const subject = problem.components[0];
        if (subject) {
            const list = bySubject.get(subject.id);
            if (list) {
                list.push(problem);
            } else {
                bySubject.set(subject.id, [problem]);
            }
        }
    }
    const stale = gaps.filter(gap => gap.code === 'stale-answer');
    for (const finding of record.findings) {
        const number = answered.get(finding.id) ?? 0;
        const isStale = stale.some(({ span }) => span.uri === finding.span.uri && span.start >= finding.span.start && span.end <= finding.span.end);
        const parts = [...(number > 0 ? [`answers ${count(number, 'problem')}`] : []), ...(isStale ? ['stale answer'] : [])];
        if (parts.length > 0) {
            add(finding.span, parts.join(' · '), isStale ? 'garboard.showOpenProblems' : 'garboard.preview');
        }
    }
    for (const [id, list] of bySubject) {
        const component = record.components.get(id);
        const open = list.filter(p => p.answeredBy === undefined).length;
        const answers = new Map<string, number>();
        for (const { answeredBy } of list) {
            if (answeredBy !== undefined) {
                answers.set(answeredBy, (answers.get(answeredBy) ?? 0) + 1);
            }
        }
        const parts = [...(open > 0 ? [`${open} open`] : []), ...[...answers].map(([answer, n]) => answer === 'accept' ? `${n} accepted` : `${n} answered by ${answer}`)];
        if (component && parts.length > 0) {
            add(component.span, parts.join(', '));
        }
    }
    return lenses.sort((a, b) => a.span.start - b.span.start);
}

export class SurveyCodeLensProvider implements CodeLensProvider {
    constructor(private readonly services: GarboardServices) {}

    async provideCodeLens(document: LangiumDocument): Promise<CodeLens[]> {
        if (!await isSwitchedOn(this.services, 'lenses')) {
            return [];
        }
        const uri = document.uri.toString();
        const { textDocument } = document;
        return this.services.editor.Analyser.analysesOf(uri).slice(0, 1).flatMap(analysis => lensesOf(analysis, uri)).map(({ span, title, command }) => {
            const position = textDocument.positionAt(span.start);
            const action: Command = { title, command, arguments: [uri] };
            return { range: { start: position, end: position }, command: action };
        });
    }
}
