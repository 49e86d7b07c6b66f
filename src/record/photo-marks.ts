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

/** A place for a mark that has none yet. */
const middle: Readonly<Record<PhotoMark['shape'], string>> = { arrow: '50 %, 50 %', ring: '50 %, 50 %', box: '40 %, 40 %, 60 %, 60 %', label: '50 %, 50 %' };

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
            const span = headSpan(node, uri);
            gaps.add('error', 'mark-shape-missing', span, 'What is drawn? Write mark arrow, ring, box or label, its words in quotes, and its place.',
                [...known].map(shape => ({ title: `Make it: ${shape}`, span: { ...span, start: span.end }, text: ` ${shape}` })));
        } else {
            gaps.unknown('word-unknown', partSpan(node, 'shape', uri), word, `${word} is not a shape of mark.`, known);
        }
        return undefined;
    }
    const { counts, form } = shapes[word];
    const label = node.label === undefined ? undefined : plainText(node.label);
    if (word === 'label' && (label ?? '').trim() === '') {
        const span = partSpan(node, node.label === undefined ? 'shape' : 'label', uri);
        gaps.add('error', 'mark-words-missing', span, 'A label needs its words, in quotes after the word label.',
            [{ title: 'Draw a ring there, without words', span: { ...span, start: partSpan(node, 'shape', uri).start }, text: 'ring' }]);
        return undefined;
    }
    const shares: number[] = [];
    for (const item of node.value?.items ?? []) {
        const parsed = item.$type === 'FigureItem' ? parseFigure(item.figure) : undefined;
        const figure = parsed?.ok && parsed.figure.kind === 'quantity' && parsed.figure.low === undefined ? parsed.figure : undefined;
        const share = figure?.dimension === 'fraction' ? figure.si : undefined;
        if (share === undefined || share < 0 || share > 1) {
            // A bare number is meant in percent; what lies outside of the picture, at its edge.
            const meant = share !== undefined ? Math.min(1, Math.max(0, share)) * 100 : figure?.dimension === 'number' && figure.si >= 0 && figure.si <= 100 ? figure.si : undefined;
            const span = spanOf(item, uri);
            gaps.add('error', 'mark-place-wrong', span, 'Places on a photograph are shares of its width and height, from 0 % to 100 %, counted from its upper left corner.',
                meant === undefined ? [] : [{ title: `Change to ${meant} %`, span, text: `${meant} %` }]);
            return undefined;
        }
        shares.push(share);
    }
    if (!counts.includes(shares.length)) {
        const { end } = spanOf(node, uri);
        const colon = node.$cstNode?.text.trimEnd().endsWith(':') ? '' : ':';
        gaps.add('error', 'mark-place-missing', headSpan(node, uri), `The ${word} needs ${form}: across first, then down, as shares of the photograph.`,
            shares.length > 0 ? [] : [{ title: 'Draw it at the middle, to be moved', span: { uri, start: end, end }, text: `${colon} ${middle[word]}` }]);
        return undefined;
    }
    const point = (at: number) => ({ across: shares[at] ?? 0, down: shares[at + 1] ?? 0 });
    return {
        shape: word, ...(label === undefined || label.trim() === '' ? {} : { label }), span: spanOf(node, uri),
        points: word === 'ring' || shares.length === 2 ? [point(0)] : [point(0), point(2)], ...(word === 'ring' ? { radius: shares[2] ?? usualRadius } : {}),
    };
}
