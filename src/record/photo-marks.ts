/** Marks over photographs: their shapes and places, with what is missing told in the trade's words. */
import type { PhotoMark as MarkNode } from '../language/generated/ast.js';
import { parseFigure } from '../quantities/index.js';
import type { Gaps } from './gaps.js';
import type { PhotoMark, Vocabulary } from './model.js';
import { plainText } from './prose.js';
import { headSpan, partSpan, spanOf } from './source.js';

/** How many figures each shape takes, and how they read. */
const shapes: Readonly<Record<PhotoMark['shape'], { readonly counts: readonly number[]; readonly form: string }>> = {
    arrow: { counts: [2, 4], form: 'where it points, as 45 %, 52 %, or where it begins and where it points, as 20 %, 30 %, 45 %, 52 %' },
    ring: { counts: [2, 3], form: 'its center and radius, as 45 %, 52 %, 8 %' },
    box: { counts: [4], form: 'two of its corners, as 20 %, 30 %, 45 %, 52 %' },
    label: { counts: [2], form: 'its place, as 45 %, 52 %' },
};

/** Radius of a ring without one, as a share of the picture's width. */
const usualRadius = 0.08;

const isShape = (word: string): word is PhotoMark['shape'] => word in shapes;

export function lowerMarks(nodes: readonly MarkNode[], vocabulary: Vocabulary, gaps: Gaps, uri: string): PhotoMark[] {
    return nodes.flatMap(node => lowerMark(node, vocabulary, gaps, uri) ?? []);
}

function lowerMark(node: MarkNode, vocabulary: Vocabulary, gaps: Gaps, uri: string): PhotoMark | undefined {
    const { shape: word } = node;
    const known = vocabulary.wordLists.get('photo-mark')?.words.keys() ?? Object.keys(shapes);
    if (word === undefined || !isShape(word)) {
        if (word === undefined) {
            gaps.add('error', 'mark-shape-missing', headSpan(node, uri), 'What is drawn? Write mark arrow, ring, box or label, its words in quotes, and its place.');
        } else {
            gaps.unknown('word-unknown', partSpan(node, 'shape', uri), word, `${word} is not a shape of mark.`, known);
        }
        return undefined;
    }
    const { counts, form } = shapes[word];
    const label = node.label === undefined ? undefined : plainText(node.label);
    if (word === 'label' && (label ?? '').trim() === '') {
        gaps.add('error', 'mark-words-missing', headSpan(node, uri), 'A label needs its words, in quotes after the word label.');
        return undefined;
    }
    const shares: number[] = [];
    for (const item of node.value?.items ?? []) {
        const parsed = item.$type === 'FigureItem' ? parseFigure(item.figure) : undefined;
        const share = parsed?.ok && parsed.figure.kind === 'quantity' && parsed.figure.dimension === 'fraction' && parsed.figure.low === undefined ? parsed.figure.si : undefined;
        if (share === undefined || share < 0 || share > 1) {
            gaps.add('error', 'mark-place-wrong', spanOf(item, uri), 'Places on a photograph are shares of its width and height, from 0 % to 100 %, counted from its upper left corner.');
            return undefined;
        }
        shares.push(share);
    }
    if (!counts.includes(shares.length)) {
        gaps.add('error', 'mark-place-missing', headSpan(node, uri), `The ${word} needs ${form}: across first, then down, as shares of the photograph.`);
        return undefined;
    }
    const point = (at: number) => ({ across: shares[at] ?? 0, down: shares[at + 1] ?? 0 });
    return {
        shape: word, ...(label === undefined || label.trim() === '' ? {} : { label }), span: spanOf(node, uri),
        points: word === 'ring' || shares.length === 2 ? [point(0)] : [point(0), point(2)], ...(word === 'ring' ? { radius: shares[2] ?? usualRadius } : {}),
    };
}
