/**
 * Lowers tables of readings. What is measured decides the columns, which the catalogue declares as the properties of
 * a row; a value goes to the column that `columns:` names at its place, or else to the next one that takes it.
 */
import type * as ast from '../language/generated/ast.js';
import { parseFigure } from '../quantities/index.js';
import { choicesOf, lowerItem, type ValueContext } from './facts.js';
import type { KindName } from './generated/kinds.js';
import type { Cell, Fact, PropertyType, Row, Value, Vocabulary } from './model.js';
import { parseProse, plainText } from './prose.js';
import { spanOf } from './source.js';

export type Columns = readonly (readonly [name: string, type: PropertyType])[];

/** Kind of the rows of a table, where what it measures has columns. */
export function rowKindOf(measures: string | undefined, vocabulary: Vocabulary): string | undefined {
    const kind = `${measures ?? ''}-row`;
    return vocabulary.kinds.has(kind) ? kind : undefined;
}

/** Columns of a kind of row: its own in the order declared, then those of every row. */
export function columnsOf(rowKind: string | undefined, vocabulary: Vocabulary): Columns {
    const all = [...(vocabulary.kinds.get(rowKind ?? '')?.properties ?? [])];
    return [...all.filter(([, type]) => type.declaredBy === rowKind), ...all.filter(([, type]) => type.declaredBy !== rowKind)];
}

/** Whether a cell is left empty on purpose. */
function isBlank(item: ast.ValueItem, type: PropertyType | undefined, vocabulary: Vocabulary): boolean {
    return item.$type === 'WordItem' && item.word === 'none' && ![...(type ? choicesOf(type, vocabulary) ?? [] : [])].includes('none');
}

function accepts(type: PropertyType, item: ast.ValueItem, { vocabulary, componentKind }: ValueContext): boolean {
    switch (item.$type) {
        case 'FigureItem': {
            const parsed = parseFigure(item.figure);
            if (!parsed.ok) {
                return false;
            }
            const { figure } = parsed;
            return figure.kind === 'date' ? type.type === 'date' : type.type === figure.dimension || type.type === 'figure';
        }
        case 'WordItem':
            return type.type === 'component' ? componentKind(item.word) !== undefined
                : type.type === 'material' ? vocabulary.materials.has(item.word)
                    : [...choicesOf(type, vocabulary) ?? []].includes(item.word);
        case 'TextItem': return type.type === 'text';
        default: return false;
    }
}

/** The rows of a table. `named` are the columns as written after `columns:`; a heading in quotes names none. */
export function lowerRows(rows: readonly ast.Row[], rowKind: string | undefined, named: readonly Value[], context: ValueContext): Row[] {
    const columns = columnsOf(rowKind, context.vocabulary);
    const byName = new Map(columns);
    const order = named.some(value => value.type === 'word') ? named.map(value => value.type === 'word' ? value.word : undefined) : undefined;
    return rows.map(row => lowerRow(row, rowKind, columns, byName, order, context));
}

function lowerRow(
    node: ast.Row, rowKind: string | undefined, columns: Columns, byName: ReadonlyMap<string, PropertyType>, order: readonly (string | undefined)[] | undefined,
    context: ValueContext,
): Row {
    const { uri, gaps, vocabulary } = context;
    const cells: Cell[] = [];
    const facts = new Map<string, Fact>();
    let next = 0;
    for (const [index, item] of (node.value?.items ?? []).entries()) {
        const span = spanOf(item, uri);
        let column: string | undefined;
        if (order) {
            column = order[Math.min(index, order.length - 1)];
            if (index >= order.length && !byName.get(column ?? '')?.isList) {
                gaps.add('warning', 'row-too-long', span, `This row has more values than columns: names; ${item.$cstNode?.text ?? 'the value'} stands under none.`);
                column = undefined;
            }
        } else if (columns.length > 0) {
            const ahead = columns.slice(next);
            const found = isBlank(item, ahead[0]?.[1], vocabulary) ? 0 : ahead.findIndex(([, type]) => accepts(type, item, context));
            const at = next + Math.max(0, found);
            column = columns[at]?.[0];
            if (column === undefined) {
                gaps.add('warning', 'row-too-long', span, `This row has more values than such a table has columns; name them after columns:, or take ${item.$cstNode?.text ?? 'the value'} out.`);
            } else if (!columns[at]?.[1].isList || columns[at][1].type === 'component' || columns[at][1].type === 'text' || columns[at][1].type === 'material') {
                next = at + 1;
            } else {
                next = at;
            }
        }
        const type = byName.get(column ?? '');
        if (isBlank(item, type, vocabulary)) {
            cells.push({ span, ...(column === undefined ? {} : { column }) });
            continue;
        }
        const value = column !== undefined && type ? lowerItem(item, column, type, context) : looseValue(item, context);
        cells.push({ span, ...(column === undefined ? {} : { column }), ...(value ? { value } : {}) });
        if (value && column !== undefined) {
            const earlier = facts.get(column);
            facts.set(column, {
                name: column, values: [...(earlier?.values ?? []), value], written: item.$cstNode?.text ?? '',
                span: earlier ? { ...earlier.span, end: span.end } : span, nameSpan: earlier?.nameSpan ?? span,
            });
        }
    }
    return {
        // Without columns a row is a row and no more.
        kind: (rowKind ?? 'reading-row') as KindName, label: plainText(node.label ?? '""'), facts, cells, span: spanOf(node, uri),
    };
}

/** A value of a table whose columns are not known: a figure, word or text as it comes. */
function looseValue(item: ast.ValueItem, { gaps, uri }: ValueContext): Value | undefined {
    switch (item.$type) {
        case 'FigureItem': {
            const parsed = parseFigure(item.figure);
            if (!parsed.ok) {
                gaps.add('error', 'figure-malformed', spanOf(item, uri), parsed.problem);
                return undefined;
            }
            return parsed.figure.kind === 'date' ? { type: 'date', figure: parsed.figure } : { type: 'quantity', si: parsed.figure.si, figure: parsed.figure };
        }
        case 'WordItem': return { type: 'word', word: item.word };
        case 'TextItem': return { type: 'text', prose: parseProse(item.text, item.$cstNode?.offset ?? 0, uri) };
        default: return undefined;
    }
}
