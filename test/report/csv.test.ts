/** The table of recommendations, read back by a parser of our own after RFC 4180, so that it is not the writer that vouches for itself. */
import { expect, test } from 'vitest';
import { recommendationsCsv } from '../../src/report/csv.js';
import { sampleInput, sampleText } from './sample.js';

/** RFC 4180, section 2: fields in quotes may hold commas, line breaks and doubled quotes. */
function parse(text: string): string[][] {
    const rows: string[][] = [];
    let row: string[] = [];
    const field = /("(?:[^"]|"")*"|[^,"\r\n]*)(,|\r\n|$)/y;
    while (field.lastIndex < text.length) {
        const match = field.exec(text);
        if (!match) {
            throw new Error(`Not RFC 4180 at ${field.lastIndex}`);
        }
        const [, value = '', end] = match;
        row.push(value.startsWith('"') ? value.slice(1, -1).replaceAll('""', '"') : value);
        if (end !== ',') {
            rows.push(row);
            row = [];
        }
    }
    return rows;
}

function table(text = sampleText, isDraft = false): Record<string, string>[] {
    const csv = recommendationsCsv(sampleInput({}, text), isDraft);
    expect(csv.charCodeAt(0)).toBe(0xfeff);
    const [head = [], ...rows] = parse(csv.slice(1));
    expect(rows.every(row => row.length === head.length)).toBe(true);
    return rows.map(row => Object.fromEntries(head.map((title, index) => [title, row[index] ?? ''])));
}

test('each finding is a row, in the order of the report, with figures apart', () => {
    const rows = table();
    expect(rows.map(row => row.Number)).toEqual(['F1', 'F2']);
    expect(rows[0]).toMatchObject({
        Report: 'AR-77', Title: 'Sink hose larger than its tail', On: 'Sink hose (H1); Sink seacock (SV1)', Size: 'H1 38 mm (1-1/2 in); SV1 1-1/2 in (38.1 mm)', 'What to do': expect.stringMatching(/^Renew the hose /),
        Due: 'Before launch', 'Due date': '', Authority: 'ISO 9093, 4.1, ABYC E-10, 10.7', 'Cost low': '90', 'Cost high': '180', Currency: 'USD',
    });
    // 30 days after 30 January 2026 is 1 March: January has 31 days and February 28.
    expect(rows[1]).toMatchObject({ 'Due date': '2026-03-01', 'Cost low': '', Currency: '' });
});

test('a draft says so in every row', () => {
    expect(table(sampleText, true).map(row => row.Report)).toEqual(['AR-77, DRAFT', 'AR-77, DRAFT']);
});

// Signs that OWASP, "CSV Injection", names as the beginning of a formula, and their full-width twins.
test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1+1', '\r=1+1', ' =1+1', '\n=1+1', '＝1+1', '＠A1', '=cmd|\'/C calc\'!A0'])('no cell begins a formula: %j', hostile => {
    const rows = table(sampleText.replace('Fenders chafe', () => hostile.replace(/[\r\n]/g, ' ')).replace('"Hang them otherwise."', () => `"""${hostile}"""`));
    expect(rows.length).toBe(2);
    const cells = rows.flatMap(row => Object.values(row));
    expect(cells.filter(cell => cell.includes(hostile.trim().slice(-3))).length).toBeGreaterThan(0);
    for (const cell of cells) {
        expect(cell).not.toMatch(/^[\s]*[=+\-@＝＋－＠\t\r]/);
    }
});

test('commas, quotes and line breaks stay within their cell', () => {
    const [, row] = table(sampleText.replace('"Hang them otherwise."', '"""Hang them, "otherwise".\n\n    Then look, again."""'));
    expect(row?.['What to do']).toContain('Hang them, "otherwise".');
    expect(row?.['What to do']).toContain('Then look, again.');
});
