/**
 * Turns corrections and drafted answers into text edits, in the layout the formatter keeps. A correction is data;
 * this is the only place that knows how it is written.
 */
import { AstUtils, type CstNode, GrammarUtils, type AstNode } from 'langium';
import type * as ast from '../language/generated/ast.js';
import type { Correction, Problem } from '../checks/contract.js';
import { issuedNumbers } from '../record/earlier-findings.js';
import type { Component, Joint, Run, Span, SurveyRecord } from '../record/model.js';
import type { SourceFile } from '../record/source.js';

/** A replacement of text between two offsets of a file. */
export interface Edit {
    readonly uri: string;
    readonly start: number;
    readonly end: number;
    readonly text: string;
}

const indentUnit = '    ';

export class Writer {
    /** Ids given out in this batch, so that two drafts never share one. */
    private readonly taken = new Set<string>();

    constructor(private readonly record: SurveyRecord, private readonly files: ReadonlyMap<string, SourceFile>) {}

    /** Edits that carry a correction out; none where the text has moved on. */
    correct(correction: Correction): Edit[] {
        switch (correction.kind) {
            case 'set-fact': {
                const node = this.componentNode(correction.component);
                return node ? this.setProperty(node, node.members, correction.property, correction.value, correction.component.span.uri) : [];
            }
            case 'set-vessel-fact': {
                const found = this.find((n): n is ast.Vessel => n.$type === 'Vessel');
                return found ? this.setProperty(found.node, found.node.members, correction.property, correction.value, found.uri) : [];
            }
            case 'set-survey-fact': {
                const found = this.find((n): n is ast.Survey => n.$type === 'Survey');
                return found ? this.setProperty(found.node, found.node.members, correction.property, correction.value, found.uri) : [];
            }
            case 'add-to-survey': {
                const found = this.find((n): n is ast.Survey => n.$type === 'Survey');
                return found ? this.addLines(found.node, found.node.members, correction.text, found.uri) : [];
            }
            case 'add-statement': {
                const place = this.answerPlace(undefined);
                return place ? [this.insertStatement(place, correction.lines)] : [];
            }
            case 'set-finding-fact': {
                const { span } = correction.finding;
                const node = this.nodeAt(span.uri, span.start, (n): n is ast.Finding => n.$type === 'Finding');
                return node ? this.setProperty(node, node.members, correction.property, correction.value, span.uri) : [];
            }
            case 'set-joint-fact':
                return this.setJointFact(correction.joint, correction.property, correction.value);
            case 'insert-in-run': {
                const id = this.newId(correction.idStem);
                const { joint } = correction;
                const step: Edit = { uri: joint.span.uri, start: joint.span.start, end: joint.span.start, text: `-> ${id} ` };
                return [step, ...this.declareAfter(joint.from, correction.componentKind, id, correction.facts)];
            }
            case 'end-run':
                return this.endRun(correction.run, correction.end);
            case 'declare':
                return this.declareAfter(correction.beside, correction.componentKind, this.newId(correction.idStem), correction.facts);
            case 'replace-text':
                return [correction.text === '' ? this.removal(correction.span) : { ...correction.span, text: correction.text }];
        }
    }

    /** A finding drafted for problems of one kind or place, put with the findings of its component's system. */
    draftFinding(problems: readonly Problem[]): Edit[] {
        const first = problems[0];
        const drafts = problems.map(p => p.draft).filter(d => d !== undefined);
        const lead = drafts[0];
        if (!first || !lead) {
            return [];
        }
        const subject = first.components[0];
        const components = [...new Set(problems.flatMap(p => p.components.map(c => c.id)))];
        const checks = [...new Set(problems.map(p => p.check.id))];
        const all = (pick: (draft: NonNullable<Problem['draft']>) => string) => [...new Set(drafts.map(pick).filter(text => text !== ''))].join(' ');
        const urgent = mostUrgent(drafts);
        // A standard whose clause is not known is cited as practice: nobody could look it up.
        const known = drafts.flatMap(d => d.cites ?? []).map(([standard, clause]) => clause === undefined && !/\d\.\d/.test(standard) ? ['Good practice'] as const : [standard, clause] as const);
        const cites = [...new Map(known.map(c => [c.join('\n'), c])).values()];
        const place = this.answerPlace(subject);
        if (!place) {
            return [];
        }
        const inner = place.indent + indentUnit;
        const title = problems.length === 1 ? lead.title : all(d => `${d.title};`).replace(/;$/, '');
        const lines = [
            `${place.indent}finding ${this.newId('F')} ${quote(title)}${components.length > 0 ? ` on ${components.join(', ')}` : ''} {`,
            `${inner}answers: ${checks.join(', ')}`,
            `${inner}urgency: ${urgent.urgency}${urgent.urgency === 'within-days' ? ` ${urgent.days ?? 30}` : ''}`,
            `${inner}seen: ${quote(all(d => d.seen))}`,
            `${inner}because: ${quote(all(d => d.because))}`,
            `${inner}recommend: ${quote(all(d => d.recommend))}`,
            ...(cites.length > 0 ? [`${inner}cites: ${cites.map(([standard, clause]) => clause === undefined ? quote(standard) : `${quote(standard)} ${quote(clause)}`).join(', ')}`] : []),
            `${inner}photo ""`,
            `${place.indent}}`,
        ];
        return [this.insertStatement(place, lines)];
    }

    /** An acceptance of a problem; its reason is left for the surveyor to write. */
    accept(problem: Problem): Edit[] {
        const place = this.answerPlace(problem.components[0] ?? problem.finding?.on[0]);
        if (!place) {
            return [];
        }
        const ids = problem.finding ? [problem.finding.id] : problem.components.map(c => c.id);
        const on = ids.length > 0 ? ` on ${ids.join(', ')}` : '';
        return [this.insertStatement(place, [`${place.indent}accept ${problem.check.id}${on} because ""`])];
    }

    /** A stretch taken out, with its whole line where nothing else stands on it. */
    private removal({ uri, start, end }: Span): Edit {
        const text = this.files.get(uri)?.root.$cstNode?.root.fullText ?? '';
        const lineStart = text.lastIndexOf('\n', start - 1) + 1;
        const lineEnd = text.indexOf('\n', end);
        const isAlone = text.slice(lineStart, start).trim() === '' && (lineEnd < 0 || text.slice(end, lineEnd).trim() === '');
        // On a line with others the blanks before it go too.
        return isAlone && lineEnd >= 0 ? { uri, start: lineStart, end: lineEnd + 1, text: '' } : { uri, start: lineStart + text.slice(lineStart, start).trimEnd().length, end, text: '' };
    }

    /** The next free id with a stem: F3 after F2. Numbers that reports issued before gave to findings are never free. */
    private newId(stem: string): string {
        const used = new Set([...this.record.components.keys(), ...this.record.runs.map(r => r.id), ...this.record.findings.map(f => f.id), ...issuedNumbers(this.record), ...this.taken]);
        const numbers = [...used].filter(id => id.startsWith(stem)).map(id => Number(id.slice(stem.length))).filter(n => Number.isInteger(n) && n > 0);
        let next = Math.max(0, ...numbers) + 1;
        while (used.has(`${stem}${next}`)) {
            next++;
        }
        this.taken.add(`${stem}${next}`);
        return `${stem}${next}`;
    }

    private find<T extends AstNode>(guard: (node: AstNode) => node is T): { node: T; uri: string } | undefined {
        for (const uri of this.record.uris) {
            const node = (this.files.get(uri)?.root.elements as readonly AstNode[] | undefined)?.find(guard);
            if (node) {
                return { node, uri };
            }
        }
        return undefined;
    }

    /** The node of a type that begins at an offset of a file. */
    private nodeAt<T extends AstNode>(uri: string, start: number, guard: (node: AstNode) => node is T): T | undefined {
        const root = this.files.get(uri)?.root;
        for (const element of root?.elements ?? []) {
            const cst = element.$cstNode;
            if (cst && cst.offset <= start && cst.end >= start) {
                return AstUtils.streamAst(element).filter(guard).find(node => node.$cstNode?.offset === start);
            }
        }
        return undefined;
    }

    private componentNode(component: Component): ast.Component | undefined {
        return this.nodeAt(component.span.uri, component.span.start, (n): n is ast.Component => n.$type === 'Component');
    }

    private setProperty(node: AstNode, members: readonly (ast.Member | ast.SurveyMember)[], property: string, value: string, uri: string): Edit[] {
        const written = members.find((m): m is ast.Property => m.$type === 'Property' && m.name === property);
        const cst = node.$cstNode;
        if (!cst) {
            return [];
        }
        if (written?.$cstNode) {
            const at = written.value?.$cstNode;
            return at ? [{ uri, start: at.offset, end: at.end, text: value }]
                : [{ uri, start: written.$cstNode.end, end: written.$cstNode.end, text: ` ${value}` }];
        }
        return this.addMember(node, members, `${property}: ${value}`, uri);
    }

    /** Members put behind the last one of a block, each on a line of its own. */
    private addLines(node: AstNode, members: readonly AstNode[], lines: readonly string[], uri: string): Edit[] {
        const cst = node.$cstNode;
        const close = cst && GrammarUtils.findNodeForKeyword(cst, '}');
        const text = cst?.root.fullText ?? '';
        const last = members.at(-1)?.$cstNode;
        if (!cst || !last || !close) {
            // An empty or missing block is opened.
            const indent = indentOf(text, cst?.offset ?? 0);
            const open = cst && GrammarUtils.findNodeForKeyword(cst, '{');
            const body = `{${newline(text)}${lines.map(line => `${indent}${indentUnit}${line}${newline(text)}`).join('')}${indent}}`;
            return cst ? [open && close ? { uri, start: open.offset, end: close.end, text: body } : { uri, start: cst.end, end: cst.end, text: ` ${body}` }] : [];
        }
        const indent = text.slice(cst.offset, last.offset).includes('\n') ? indentOf(text, last.offset) : `${indentOf(text, cst.offset)}${indentUnit}`;
        return [{ uri, start: last.end, end: last.end, text: lines.map(line => `${newline(text)}${indent}${line}`).join('') }];
    }

    /** A member put behind the last one of a block: on a line of its own where the block has lines. */
    private addMember(node: AstNode, members: readonly AstNode[], fact: string, uri: string): Edit[] {
        const cst = node.$cstNode;
        if (!cst) {
            return [];
        }
        const open = GrammarUtils.findNodeForKeyword(cst, '{');
        const close = GrammarUtils.findNodeForKeyword(cst, '}');
        if (!open || !close) {
            return [{ uri, start: cst.end, end: cst.end, text: ` { ${fact} }` }];
        }
        const last = members.at(-1)?.$cstNode;
        if (!last) {
            return [{ uri, start: open.offset, end: close.end, text: `{ ${fact} }` }];
        }
        const text = cst.root.fullText;
        if (text.slice(open.end, close.offset).includes('\n')) {
            // A block over several lines: a line of its own, indented as the last one.
            const lastLine = members.map(m => m.$cstNode).filter((n): n is CstNode => n !== undefined).at(-1) ?? last;
            return [{ uri, start: lastLine.end, end: lastLine.end, text: `${newline(text)}${indentOf(text, lastLine.offset)}${fact}` }];
        }
        return [{ uri, start: last.end, end: last.end, text: `  ${fact}` }];
    }

    private setJointFact(joint: Joint, property: string, value: string): Edit[] {
        const { uri, start } = joint.span;
        const step = this.nodeAt(uri, start, (n): n is ast.RunStep => n.$type === 'RunStep');
        if (!step?.$cstNode) {
            return [];
        }
        const written = step.joint.find(p => p.name === property)?.value?.$cstNode;
        if (written) {
            return [{ uri, start: written.offset, end: written.end, text: value }];
        }
        const last = step.joint.at(-1)?.$cstNode;
        return last ? [{ uri, start: last.end, end: last.end, text: `  ${property}: ${value}` }]
            : [{ uri, start: start + 2, end: start + 2, text: ` { ${property}: ${value} }` }];
    }

    private endRun(run: Run, end: 'capped' | 'blanked' | 'open'): Edit[] {
        const { uri } = run.span;
        const node = this.nodeAt(uri, run.span.start, (n): n is ast.Run => n.$type === 'Run');
        const last = node?.steps.at(-1);
        if (!node?.$cstNode) {
            return [];
        }
        if (run.end !== 'component' && last?.target && last.$cstNode) {
            const target = GrammarUtils.findNodeForProperty(last.$cstNode, 'target');
            return target ? [{ uri, start: target.offset, end: target.end, text: end }] : [];
        }
        return [{ uri, start: node.$cstNode.end, end: node.$cstNode.end, text: ` -> ${end}` }];
    }

    private declareAfter(component: Component, kind: string, id: string, facts: readonly (readonly [string, string])[]): Edit[] {
        const { uri, end, start } = component.span;
        const text = this.files.get(uri)?.root.$cstNode?.root.fullText ?? '';
        const body = facts.map(([name, value]) => `${name}: ${value}`).join('  ');
        return [{ uri, start: end, end, text: `${newline(text)}${indentOf(text, start)}${kind} ${id}${body === '' ? '' : ` { ${body} }`}` }];
    }

    /**
     * Where an answer about a component goes: after the last answer in its system, else after the last statement of
     * the system; outside a system at the end of the component's file.
     */
    private answerPlace(component: Component | undefined): Place | undefined {
        const uri = component?.span.uri ?? this.record.mainUri;
        const root = this.files.get(uri)?.root;
        const text = root?.$cstNode?.root.fullText;
        if (!root || text === undefined) {
            return undefined;
        }
        const system = component && root.elements.find((e): e is ast.System => e.$type === 'System' && contains(e, component.span.start));
        if (!system) {
            const last = root.elements.at(-1)?.$cstNode;
            return { uri, at: last?.end ?? text.length, indent: '', newline: newline(text) };
        }
        const answers = system.elements.filter(e => e.$type === 'Finding' || e.$type === 'Acceptance');
        const after = (answers.at(-1) ?? system.elements.at(-1))?.$cstNode;
        return after ? { uri, at: after.end, indent: indentOf(text, after.offset) || indentUnit, newline: newline(text) } : undefined;
    }

    private insertStatement(place: Place, lines: readonly string[]): Edit {
        return { uri: place.uri, start: place.at, end: place.at, text: `${place.newline}${place.newline}${lines.join(place.newline)}` };
    }
}

interface Place {
    readonly uri: string;
    readonly at: number;
    readonly indent: string;
    readonly newline: string;
}

const urgencyOrder = ['at-once', 'before-launch', 'before-departure', 'before-use', 'before-completion', 'within-days', 'next-haul-out', 'in-upkeep', 'keep-watch', 'note-only'] as const;

function mostUrgent(drafts: readonly NonNullable<Problem['draft']>[]): NonNullable<Problem['draft']> {
    const ordered = [...drafts].sort((a, b) => urgencyOrder.indexOf(a.urgency) - urgencyOrder.indexOf(b.urgency));
    const first = ordered[0];
    if (!first) {
        throw new Error('A finding is drafted from at least one problem.');
    }
    return first;
}

/** Text in quotes, with what would end it escaped. Braces stay: they refer to facts. */
export function quote(text: string): string {
    return `"${text.replaceAll('\\', '\\\\').replaceAll('"', '\\"').replace(/\s*\n\s*/g, ' ')}"`;
}

function contains(node: AstNode, offset: number): boolean {
    const cst = node.$cstNode;
    return cst !== undefined && cst.offset <= offset && offset < cst.end;
}

export function newline(text: string): string {
    return text.includes('\r\n') ? '\r\n' : '\n';
}

/** The blanks that begin the line of an offset. */
export function indentOf(text: string, offset: number): string {
    const start = text.lastIndexOf('\n', offset - 1) + 1;
    return /^[ \t]*/.exec(text.slice(start, offset))?.[0] ?? '';
}
