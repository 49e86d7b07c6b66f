/**
 * Supplies the braces and names that half-typed text lacks, so that a component being typed never hides the rest of
 * the file. It reads only tokens and their lines: a line that begins a new statement inside a block shows that the
 * block was not closed. Text that is complete passes through unchanged.
 */
import type { IToken, TokenType } from 'chevrotain';
import type { LayoutError } from './lexer.js';

/** Statements that stand at the top of a file and close every open block. */
const topStatements = new Set([
    'use', 'survey', 'vessel', 'system', 'valuation', 'kind', 'material', 'standard', 'words', 'phrase', 'person', 'firm', 'yardsticks', 'coverage', 'outline', 'wording',
]);
/** Statements that may stand in a system and close the block of a component. */
const systemStatements = new Set(['run', 'contact', 'finding', 'accept', 'reading']);
/** What may begin a line inside the block of a photograph; anything else shows that the block was not closed. */
const ofPhoto = new Set(['mark', 'FIGURE', 'TEXT', ':', ',', '{', '}']);
const continuing = new Set(['->', ',', ':', 'on', 'is', 'because', '(', 'finding', 'accept', 'reading', 'run', 'system', 'contact']);

interface Open {
    readonly brace: IToken;
    readonly statement: string;
    readonly name: string;
    readonly isContainer: boolean;
}

export function repairLayout(
    tokens: readonly IToken[], text: string, types: Readonly<Record<string, TokenType>>, errors: LayoutError[]
): IToken[] {
    const missing = types['MISSING'];
    const closing = types['}'];
    if (!missing || !closing) {
        return [...tokens];
    }
    const result: IToken[] = [];
    const stack: Open[] = [];
    let statement = '';
    let statementName = '';
    /** Whether the last brace closed a joint: the run goes on after it. */
    let closedJoint = false;

    const virtual = (type: TokenType, after: IToken): IToken => ({
        image: '', startOffset: after.endOffset ?? after.startOffset, endOffset: after.endOffset ?? after.startOffset,
        startLine: after.endLine, endLine: after.endLine, startColumn: after.endColumn, endColumn: after.endColumn,
        tokenTypeIdx: type.tokenTypeIdx ?? 0, tokenType: type,
        // Tokens so marked leave no trace in the concrete syntax tree.
        isInsertedInRecovery: true,
    });

    const closeTop = (previous: IToken) => {
        const open = stack.pop();
        if (!open) {
            return;
        }
        result.push(virtual(closing, previous));
        const what = open.statement === 'photo' ? 'a photograph\'s marks' : open.name ? `${open.statement} ${open.name}` : open.statement;
        const end = (previous.endOffset ?? previous.startOffset) + 1;
        errors.push({
            offset: open.brace.startOffset, length: 1, line: open.brace.startLine ?? 1, column: open.brace.startColumn ?? 1,
            code: 'block-not-closed',
            message: `The block of ${what} is not closed; add } after its last line.`,
            mend: { title: 'Add the closing brace', offset: end, length: 0, text: lineBreak(text) + '}' },
        });
    };

    for (let i = 0; i < tokens.length; i++) {
        const token = tokens[i];
        if (!token) {
            continue;
        }
        const previous = tokens[i - 1];
        const next = tokens[i + 1];
        const name = token.tokenType.name;
        const startsLine = !previous || previous.endLine !== token.startLine;
        const opensComponent = name === 'ID' && !!next && next.startLine === token.startLine && next.tokenType.name === 'ID';
        const continues = !!previous && continuing.has(previous.tokenType.name);

        if (startsLine && previous) {
            const innermost = stack.at(-1);
            if (innermost && !innermost.isContainer) {
                if (innermost.statement === 'photo' && !ofPhoto.has(name) && previous.tokenType.name !== 'mark') {
                    closeTop(previous);
                }
                const inSurvey = stack.at(-1)?.statement === 'survey';
                const breaksOut = opensComponent
                    || (!continues && (systemStatements.has(name) || topStatements.has(name)
                        || (!inSurvey && (name === 'unseen' || name === 'absent'))));
                if (breaksOut) {
                    closeTop(previous);
                    while (stack.length > 0 && !stack.at(-1)?.isContainer) {
                        closeTop(previous);
                    }
                }
            }
            if (stack.length > 0 && stack.at(-1)?.isContainer && topStatements.has(name) && !continues) {
                while (stack.length > 0) {
                    closeTop(previous);
                }
            }
            const outer = stack.at(-1);
            if ((!outer || outer.isContainer) && opensComponent && continues) {
                result.push(virtual(missing, previous));
            }
        }

        const outer = stack.at(-1);
        const atElement = !outer || outer.isContainer;
        const beginsStatement = atElement && (startsLine || previous?.tokenType.name === '{' || (previous?.tokenType.name === '}' && !closedJoint))
            && !(continues && !opensComponent);
        if (beginsStatement && (name === 'ID' || topStatements.has(name) || systemStatements.has(name) || name === 'unseen' || name === 'absent')) {
            statement = name === 'ID' ? token.image : name;
            statementName = next && (next.tokenType.name === 'ID' || next.tokenType.name === 'PROPERTY') ? next.image : '';
        }

        if (name === '{') {
            const joint = previous?.tokenType.name === '->';
            const photo = !atElement && [previous, tokens[i - 2], tokens[i - 3]].find(before => before?.tokenType.name !== 'TEXT')?.tokenType.name === 'photo';
            stack.push({
                brace: token, statement: joint ? 'joint' : photo ? 'photo' : statement, name: joint || photo ? '' : statementName,
                isContainer: !joint && atElement && statement === 'system',
            });
        } else if (name === '}') {
            if (stack.length === 0) {
                errors.push({
                    offset: token.startOffset, length: 1, line: token.startLine ?? 1, column: token.startColumn ?? 1,
                    code: 'brace-closes-nothing', message: 'This } closes nothing; remove it, or look for a { that is missing above.',
                    mend: { title: 'Remove the brace', offset: token.startOffset, length: 1, text: '' },
                });
                continue;
            }
            closedJoint = stack.pop()?.statement === 'joint';
        }
        result.push(token);

        // A kind alone on its line, the next statement below it: its id has not been typed yet.
        if (atElement && beginsStatement && name === 'ID' && next && next.startLine !== token.endLine && next.tokenType.name === 'ID') {
            result.push(virtual(missing, token));
        }
    }
    const last = tokens.at(-1);
    while (last && stack.length > 0) {
        closeTop(last);
    }
    return result;
}

function lineBreak(text: string): string {
    return text.includes('\r\n') ? '\r\n' : '\n';
}
