/**
 * Runs the checks over a record and matches problems with their answers.
 *
 * An answer names a check and components. It answers a problem of that check when every component of the problem is
 * named; or, where no problem of the check is matched so exactly, when the problem's own subject is named. A hose
 * with two faulty ends is thus answered for both by naming the hose, and for one end by naming that end's neighbour
 * too.
 */
import type { Component, Gap, Span, SurveyRecord } from '../record/model.js';
import { allChecks } from './all-checks.js';
import { listed } from './phrasing.js';
import type { Check, Problem, Raised, Severity } from './contract.js';
import { nearest } from '../quantities/index.js';

export interface Analysis {
    readonly record: SurveyRecord;
    readonly problems: readonly Problem[];
    /** What the text does not say properly, stale answers among it. */
    readonly gaps: readonly Gap[];
}

const checksById = new Map<string, Check>();
for (const check of allChecks) {
    checksById.set(check.id, check);
    for (const alias of check.aliases ?? []) {
        checksById.set(alias, check);
    }
}

/** The check with an id, earlier ids included. */
export function checkById(id: string): Check | undefined {
    return checksById.get(id);
}

interface Answer {
    readonly id: string;
    readonly check: Check;
    readonly components: ReadonlySet<Component>;
    /** Findings whose words an acceptance speaks of. */
    readonly findings: ReadonlySet<string>;
    readonly span: Span;
}

export function analyse(record: SurveyRecord, checks: readonly Check[] = allChecks): Analysis {
    const all: { check: Check; problem: Raised; severity: Severity }[] = [];
    const gaps: Gap[] = [...record.gaps];
    for (const check of checks) {
        try {
            check.run(record, problem => all.push({ check, problem, severity: problem.severity ?? check.severity }));
        } catch (error) {
            // One check that fails must not take the others with it, nor pass for one that found nothing.
            gaps.push({
                code: 'check-failed', severity: 'error', mends: [], span: record.survey?.span ?? { uri: record.mainUri, start: 0, end: 1 },
                message: `${check.id} could not be carried out on this survey (${error instanceof Error ? error.message : String(error)}); the other checks were. Please report it, and look at its matter by hand.`,
            });
        }
    }
    const raised = all.filter(({ check, problem }) => !check.yields
        || !all.some(other => other.check !== check && other.severity !== 'hint' && overlaps(other.problem.at, problem.at)));
    const answers = answersOf(record, gaps);
    const used = new Set<Answer>();

    const named = (answer: Answer, problem: Raised) => problem.components.length > 0 && problem.components.every(c => answer.components.has(c));
    // Problems and answers meet check by check: a report of hundreds of each costs no more than their matches.
    const answersByCheck = new Map<Check, Answer[]>();
    for (const answer of answers) {
        const others = answersByCheck.get(answer.check);
        if (others) {
            others.push(answer);
        } else {
            answersByCheck.set(answer.check, [answer]);
        }
    }
    const exact = new Map<Answer, Set<Component | undefined>>();
    for (const { check, problem } of raised) {
        for (const answer of answersByCheck.get(check) ?? []) {
            if (named(answer, problem)) {
                exact.set(answer, (exact.get(answer) ?? new Set()).add(problem.components[0]));
            }
        }
    }
    const problems = raised.map(({ check, problem, severity }): Problem => {
        const answer = answersByCheck.get(check)?.find(candidate => {
            if (problem.finding && candidate.findings.size > 0) {
                return candidate.findings.has(problem.finding.id);
            }
            if (problem.components.length === 0) {
                return candidate.components.size === 0 && candidate.findings.size === 0;
            }
            if (named(candidate, problem)) {
                return true;
            }
            const subject = problem.components[0];
            return subject !== undefined && candidate.components.has(subject) && !exact.get(candidate)?.has(subject);
        });
        if (answer) {
            used.add(answer);
            return { ...problem, check, severity, answeredBy: answer.id };
        }
        return { ...problem, check, severity };
    });

    for (const answer of answers) {
        if (!used.has(answer)) {
            gaps.push({
                code: 'stale-answer', severity: 'error', span: answer.span,
                message: `${answer.check.id} is answered here, but it raises no problem on ${answer.components.size + answer.findings.size === 0 ? 'the survey' : listed([...[...answer.components].map(c => c.id), ...answer.findings], 'or')} now; remove the answer, or read the facts again.`,
                mends: [],
            });
        }
    }
    return { record, problems, gaps };
}

function overlaps(a: Span, b: Span): boolean {
    return a.uri === b.uri && a.start < b.end && b.start < a.end;
}

function answersOf(record: SurveyRecord, gaps: Gap[]): Answer[] {
    const answers: Answer[] = [];
    const add = (id: string, checkId: string, span: Span, on: readonly Component[], findings: readonly string[] = []) => {
        const check = checksById.get(checkId);
        if (!check) {
            const close = nearest(checkId, checksById.keys());
            gaps.push({
                code: 'check-unknown', severity: 'error', span,
                message: `No check is called ${checkId}.${close ? ` Did you mean ${close}?` : ''}`,
                mends: close ? [{ title: `Change to ${close}`, span, text: close }] : [],
            });
            return;
        }
        answers.push({ id, check, components: new Set(on), findings: new Set(findings), span });
    };
    for (const finding of record.findings) {
        for (const answer of finding.answers) {
            add(finding.id, answer.id, answer.span, finding.on);
        }
    }
    for (const acceptance of record.acceptances) {
        add('accept', acceptance.check.id, acceptance.check.span, acceptance.on, acceptance.onFindings);
    }
    return answers;
}
