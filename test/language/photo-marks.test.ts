import { describe, expect, it } from 'vitest';
import { analyseText } from '../../src/checks/survey.js';
import type { Gap } from '../../src/record/model.js';

const around = (body: string) => `vessel "Tern" {\n    photo "a.jpg" "Afloat" { ${body} }\n    beam: 3 m\n}\nhose H1 { bore: 38 mm }\n`;
const ours = (gaps: readonly Gap[]) => gaps.filter(({ code }) => /^mark-|^text-|^block-|^word-|^brace-/.test(code));
const read = (text: string) => {
    const { record, gaps } = analyseText(text);
    return { record, gaps: ours(gaps), marks: record.vessel?.photos[0]?.marks.map(({ shape, label, points, radius }) => ({ shape, label, points: points.map(({ across, down }) => [across, down]), radius })) };
};

describe('marks are read', () => {
    it.each([
        ['mark arrow "Cut end": 20 %, 30 %, 45 %, 52 %', [{ shape: 'arrow', label: 'Cut end', points: [[0.2, 0.3], [0.45, 0.52]], radius: undefined }]],
        ['mark arrow: 45 %, 52 %', [{ shape: 'arrow', label: undefined, points: [[0.45, 0.52]], radius: undefined }]],
        ['mark ring "x": 45 %, 52 %, 12.5 %', [{ shape: 'ring', label: 'x', points: [[0.45, 0.52]], radius: 0.125 }]],
        ['mark ring: 0 %, 100 %', [{ shape: 'ring', label: undefined, points: [[0, 1]], radius: 0.08 }]],
        ['mark box "": 5 %, 6 %, 7 %, 8 %', [{ shape: 'box', label: undefined, points: [[0.05, 0.06], [0.07, 0.08]], radius: undefined }]],
        ['mark label "SV4": 45 %,\n 52 %\n mark ring: 1 %, 2 %', [{ shape: 'label', label: 'SV4', points: [[0.45, 0.52]], radius: undefined }, { shape: 'ring', label: undefined, points: [[0.01, 0.02]], radius: 0.08 }]],
        ['', []],
    ])('%s', (body, expected) => {
        for (const text of [around(body), around(body).replaceAll('\n', '\r\n')]) {
            const { marks, gaps } = read(text);
            expect(gaps).toEqual([]);
            expect(marks).toEqual(expected);
        }
    });
});

describe('what is missing is told and mended, and hides nothing', () => {
    it.each([
        ['mark', 'mark-shape-missing', 'mark', ['mark arrow', 'mark ring', 'mark box', 'mark label']],
        ['mark "x": 5 %, 5 %', 'mark-shape-missing', 'mark', ['mark arrow "x": 5 %, 5 %', 'mark ring "x": 5 %, 5 %', 'mark box "x": 5 %, 5 %', 'mark label "x": 5 %, 5 %']],
        ['mark rign "x": 5 %, 5 %', 'word-unknown', 'rign', ['mark ring "x": 5 %, 5 %']],
        ['mark rign: 5 %, 5 %', 'word-unknown', 'rign', ['mark ring: 5 %, 5 %']],
        ['mark ring', 'mark-place-missing', 'mark', ['mark ring: 50 %, 50 %']],
        ['mark ring "x"', 'mark-place-missing', 'mark', ['mark ring "x": 50 %, 50 %']],
        ['mark ring "x":', 'mark-place-missing', 'mark', ['mark ring "x": 50 %, 50 %']],
        ['mark box "x":', 'mark-place-missing', 'mark', ['mark box "x": 40 %, 40 %, 60 %, 60 %']],
        ['mark arrow "x": 50 %', 'mark-place-missing', 'mark', []],
        ['mark label: 5 %, 5 %', 'mark-words-missing', 'label', ['mark ring: 5 %, 5 %']],
        ['mark label " ": 5 %, 5 %', 'mark-words-missing', '" "', ['mark ring: 5 %, 5 %']],
        ['mark ring "x": 5, 5 %', 'mark-place-wrong', '5', ['mark ring "x": 5 %, 5 %']],
        ['mark ring "x": 5 %, 105 %', 'mark-place-wrong', '105 %', ['mark ring "x": 5 %, 100 %']],
        ['mark ring "x": 5 mm, 5 %', 'mark-place-wrong', '5 mm', []],
    ])('%s', (body, code, at, mended) => {
        for (const text of [around(body), around(body).replaceAll('\n', '\r\n')]) {
            const { record, gaps } = read(text);
            expect(gaps.map(gap => [gap.code, text.slice(gap.span.start, gap.span.end)])).toEqual([[code, at]]);
            expect(record.vessel?.facts.has('beam')).toBe(true);
            expect(record.components.has('H1')).toBe(true);
            const results = (gaps[0]?.mends ?? []).map(({ span, text: by }) => text.slice(0, span.start) + by + text.slice(span.end));
            expect(results).toEqual(mended.map(after => text.replace(body, after)));
            // Each shape takes its own number of figures; everything else is whole once mended.
            if (code !== 'mark-shape-missing') {
                expect(results.flatMap(after => read(after).gaps.map(gap => gap.code))).toEqual([]);
            }
        }
    });
});

describe('a block of marks that is not closed hides nothing', () => {
    it.each([
        ['a fact after it', 'vessel "Tern" {\n    photo "a.jpg" "x" {\n        mark ring "y": 1 %, 2 %\n    beam: 3 m\n}\nhose H1 { bore: 38 mm }', 1],
        ['a note after it', 'vessel "Tern" {\n    photo "a.jpg" {\n        mark ring "y": 1 %, 2 %\n    note "z"\n    beam: 3 m\n}\nhose H1 { bore: 38 mm }', 1],
        ['a photograph after it', 'vessel "Tern" {\n    photo "a.jpg" "x" {\n        mark ring "y": 1 %, 2 %\n    photo "b.jpg"\n    beam: 3 m\n}\nhose H1 { bore: 38 mm }', 2],
        ['another component after it', 'vessel "Tern" {\n    beam: 3 m\n    photo "a.jpg" "x" {\n        mark ring "y": 1 %, 2 %\nhose H1 { bore: 38 mm }', 1],
        ['an empty block', 'vessel "Tern" {\n    photo "a.jpg" "x" {\n    beam: 3 m\n}\nhose H1 { bore: 38 mm }', 1],
    ])('%s', (_, text, photos) => {
        for (const guise of [text, text.replaceAll('\n', '\r\n')]) {
            const { record, gaps, marks } = read(guise);
            expect(new Set(gaps.map(({ code }) => code))).toEqual(new Set(['block-not-closed']));
            expect(gaps[0]?.message).toContain('photograph');
            expect(record.vessel?.photos.length).toBe(photos);
            expect(record.vessel?.facts.has('beam')).toBe(true);
            expect(record.components.has('H1')).toBe(true);
            expect(marks?.length).toBe(text.includes('mark ') ? 1 : 0);
        }
    });
});
