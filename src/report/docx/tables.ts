/** Tables of a Word document: those of the page, terms with their answers, and photographs side by side. */
import { BorderStyle, LineRuleType, Paragraph, Table, TableCell, TableLayoutType, TableRow, VerticalAlignTable, WidthType, type ITableBordersOptions, type TableVerticalAlign } from 'docx';
import type { Block, BlockWriter, CellBlock, Place } from './blocks.js';
import { ink, own, ruleColor } from './styles.js';
import { attribute, elementsOf, hasClass, plainText, type Element } from './tree.js';

const none = { style: BorderStyle.NONE, size: 0, color: 'auto' } as const;
const line = { style: BorderStyle.SINGLE, size: 4, color: ruleColor } as const;
const rules: ITableBordersOptions = { top: line, bottom: line, left: none, right: none, insideHorizontal: line, insideVertical: none };
const noRules: ITableBordersOptions = { top: none, bottom: none, left: none, right: none, insideHorizontal: none, insideVertical: none };
const padding = { top: 40, bottom: 30, left: 0, right: 110 } as const;

/** A table of more columns than this is set smaller. */
const manyColumns = 7;
/** Text of so many signs should not wrap. */
const shortText = 14;
/** A longer word is broken. */
const longWord = 18;
/** Text longer than this does not widen its column further. */
const longText = 220;

/** A small step down; it also keeps tables apart, which Word would join. */
export const spacer = (): Paragraph => new Paragraph({ spacing: { before: 0, after: 0, line: 120, lineRule: LineRuleType.EXACT } });

interface Cell {
    readonly element: Element;
    readonly column: number;
    readonly columns: number;
    readonly rows: number;
    readonly isHead: boolean;
}

/** A table of the page with its header row repeated on every page; undefined where it has no cells. */
export function tableOf(writer: BlockWriter, element: Element, place: Place): Table | undefined {
    const rows = elementsOf(element).flatMap(part => part.tagName === 'tr' ? [{ row: part, isHead: false }]
        : ['thead', 'tbody', 'tfoot'].includes(part.tagName) ? elementsOf(part).filter(row => row.tagName === 'tr').map(row => ({ row, isHead: part.tagName === 'thead' })) : []);
    const laidOut = layOut(rows);
    const count = Math.max(0, ...laidOut.flat().map(cell => cell.column + cell.columns));
    if (count === 0) {
        return undefined;
    }
    const widths = columnWidths(laidOut, count, place.width);
    const size = count > manyColumns ? 15 : undefined;
    return new Table({
        width: { size: place.width, type: WidthType.DXA }, columnWidths: widths, layout: TableLayoutType.FIXED, borders: rules, margins: count > manyColumns ? { ...padding, right: 70 } : padding,
        rows: rows.flatMap(({ row, isHead }, index) => {
            const cells = laidOut[index] ?? [];
            if (cells.length === 0) {
                return [];
            }
            writer.mark(row);
            return [new TableRow({
                tableHeader: isHead, cantSplit: true,
                children: cells.map(cell => {
                    const width = widths.slice(cell.column, cell.column + cell.columns).reduce((sum, w) => sum + w, 0);
                    return new TableCell({
                        width: { size: width, type: WidthType.DXA }, verticalAlign: bottomOrTop(isHead),
                        ...(cell.columns > 1 ? { columnSpan: cell.columns } : {}), ...(cell.rows > 1 ? { rowSpan: cell.rows } : {}),
                        ...(isHead ? { borders: { top: { style: BorderStyle.SINGLE, size: 8, color: ink } } } : {}),
                        children: cellBlocks(writer, cell, { width: width - padding.right, style: isHead ? own.cellHead : own.cell }, size),
                    });
                }),
            })];
        }),
    });
}

const bottomOrTop = (isBottom: boolean): TableVerticalAlign => isBottom ? VerticalAlignTable.BOTTOM : VerticalAlignTable.TOP;

function cellBlocks(writer: BlockWriter, { element }: Cell, place: Place, size: number | undefined): CellBlock[] {
    writer.mark(element);
    const isNumber = hasClass(element, 'number');
    const holdsOnlyText = !elementsOf(element).some(child => ['p', 'ul', 'ol', 'dl', 'div', 'table', 'figure'].includes(child.tagName));
    if (!holdsOnlyText) {
        return writer.cell(element.childNodes, place);
    }
    return [writer.paragraph(writer.runs(element.childNodes, place.width), {
        style: place.style ?? own.cell, ...(isNumber ? { alignment: 'right' } : {}), ...(size === undefined ? {} : { run: { size } }),
    })];
}

/** Cells with the column each begins in, those above that reach down taken account of. */
function layOut(rows: readonly { readonly row: Element; readonly isHead: boolean }[]): Cell[][] {
    const busyUntil: number[] = [];
    return rows.map(({ row, isHead }, index) => {
        let column = 0;
        return elementsOf(row).filter(({ tagName }) => tagName === 'td' || tagName === 'th').map(element => {
            while ((busyUntil[column] ?? 0) > index) {
                column++;
            }
            const cell = { element, column, columns: span(element, 'colspan'), rows: span(element, 'rowspan'), isHead };
            for (let c = column; c < column + cell.columns; c++) {
                busyUntil[c] = index + cell.rows;
            }
            column += cell.columns;
            return cell;
        });
    });
}

const span = (element: Element, name: string): number => Math.min(60, Math.max(1, Math.trunc(Number(attribute(element, name) ?? 1)) || 1));

/** Widths by the text: where there is room short columns keep their text on one line, and long ones share what is left. */
function columnWidths(rows: readonly (readonly Cell[])[], count: number, width: number): number[] {
    const words = Array.from({ length: count }, () => 3);
    const short = Array.from({ length: count }, () => 3);
    const wanted = Array.from({ length: count }, () => 3);
    for (const { element, column, columns, isHead } of rows.flat()) {
        if (columns > 1) {
            continue;
        }
        const text = plainText(element);
        const longestWord = Math.min(longWord, Math.max(0, ...text.split(/[\s-]/).map(word => word.length)));
        const widen = (list: number[], signs: number) => { list[column] = Math.max(list[column] ?? 0, signs + 1); };
        widen(words, longestWord);
        widen(short, isHead || text.length > shortText ? longestWord : text.length);
        widen(wanted, isHead ? longestWord : Math.min(text.length, longText));
    }
    const sum = (list: readonly number[]) => list.reduce((total, n) => total + n, 0);
    // Widths of an average sign in the two sizes of table text, in twips.
    const room = width / (count > manyColumns ? 82 : 98);
    const least = sum(short) <= room * 0.75 ? short : words;
    const spare = Math.max(0, room - sum(least));
    const more = wanted.map((n, index) => Math.sqrt(Math.max(0, n - (least[index] ?? 0))));
    const shares = sum(more) === 0 ? least : least.map((n, index) => n + spare * (more[index] ?? 0) / sum(more));
    const widths = shares.map(n => Math.floor(n / sum(shares) * width));
    return widths.map((n, index) => index === widths.length - 1 ? n + width - sum(widths) : n);
}

/** Terms on the left, their answers on the right. */
export function pairsTable(writer: BlockWriter, pairs: readonly { readonly terms: readonly Element[]; readonly answers: readonly Element[] }[], place: Place): Table {
    const first = Math.round(Math.min(2300, place.width * 0.24));
    const widths = [first, place.width - first];
    return new Table({
        width: { size: place.width, type: WidthType.DXA }, columnWidths: widths, layout: TableLayoutType.FIXED, borders: rules, margins: padding,
        rows: pairs.map(({ terms, answers }) => new TableRow({
            children: [
                new TableCell({ width: { size: first, type: WidthType.DXA }, children: terms.map(term => writer.paragraph(writer.runs(term.childNodes, first), { style: own.term })) }),
                new TableCell({ width: { size: place.width - first, type: WidthType.DXA }, children: answersOf(writer, answers, { width: place.width - first - padding.right, style: own.cell, isInDefinition: true }) }),
            ],
        })),
    });
}

const answersOf = (writer: BlockWriter, answers: readonly Element[], place: Place): CellBlock[] => {
    const blocks = answers.flatMap(answer => writer.cell(answer.childNodes, place));
    return blocks.length === 0 ? [spacer()] : blocks;
};

/** Photographs in pairs, each with its caption under it. */
export function photoGrid(writer: BlockWriter, figures: readonly Element[], place: Place): Block[] {
    const half = Math.floor(place.width / 2);
    const rows: TableRow[] = [];
    for (let index = 0; index < figures.length; index += 2) {
        rows.push(new TableRow({
            cantSplit: true,
            children: [figures[index], figures[index + 1]].map(figure => new TableCell({
                width: { size: half, type: WidthType.DXA }, children: figure ? writer.cell([figure], { width: half - padding.right, style: own.cell }) : [spacer()],
            })),
        }));
    }
    return [new Table({ width: { size: half * 2, type: WidthType.DXA }, columnWidths: [half, half], layout: TableLayoutType.FIXED, borders: noRules, margins: padding, rows }), spacer()];
}
