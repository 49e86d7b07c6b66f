/** The JSON of the whole record: by its published schema, complete, and the same bytes every time. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Ajv2020 from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseSurvey, analyseText } from '../../src/checks/survey.js';
import { load, addressOf, positionIn } from '../../src/host/files.js';
import { recordJson, recordText, type RecordDocument } from '../../src/report/record-json.js';
import { parseFigure, type DateFigure } from '../../src/quantities/index.js';
import { sampleText } from './sample.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const validate = new Ajv2020({ strict: true, strictRequired: false, allowUnionTypes: true }).compile<RecordDocument>(JSON.parse(readFileSync(join(root, 'src/report/record-output.schema.json'), 'utf8')));
const dateOf = (written: string): DateFigure => {
    const parsed = parseFigure(written);
    if (!parsed.ok || parsed.figure.kind !== 'date') {
        throw new Error(`${written} is no date`);
    }
    return parsed.figure;
};
const ofText = (text: string, stamp?: { number: number; date: string }): RecordDocument => recordJson(analyseText(text), {
    position: (_, offset) => positionIn(text, offset), name: uri => uri.split('/').at(-1) ?? '', ...(stamp ? { issue: { number: stamp.number, date: dateOf(stamp.date), signedBy: 'Ada Rowe' } } : {}),
});

async function ofFile(path: string): Promise<RecordDocument> {
    const { parsed, texts } = await load([path]);
    const analysis = analyseSurvey(addressOf(path), new Map([...parsed].map(([uri, { file }]) => [uri, file])));
    return recordJson(analysis, { position: (uri, offset) => positionIn(texts.get(uri) ?? '', offset), name: uri => uri.split('/').at(-1) ?? '' });
}

const surveys = [
    'examples/marram/marram.survey', 'examples/unanswered/dunlin.survey',
    ...readdirSync(join(root, 'test/surveys')).filter(name => name.endsWith('.survey')).map(name => `test/surveys/${name}`),
];

describe('the record as JSON', () => {
    it.each(surveys)('%s is by the published schema, and the same bytes twice', async file => {
        const document = await ofFile(join(root, file));
        // What a reader gets is the text, not the objects.
        expect(validate(JSON.parse(recordText(document))), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
        expect(recordText(await ofFile(join(root, file)))).toBe(recordText(document));
        expect(document.components.length).toBeGreaterThan(0);
        expect(document.problems.length).toBeGreaterThan(0);
    });

    it('refuses what the schema does not know', () => {
        expect(validate({ ...ofText(sampleText), more: 1 })).toBe(false);
    });

    it('gives quantities as written, in SI and in both systems', () => {
        // 1-1/2 in = 38.1 mm by the international inch, 25.4 mm (NIST SP 811, appendix B).
        const spigot = ofText(sampleText).components.find(({ id }) => id === 'SV1')?.facts['size'];
        expect(spigot).toEqual([{ type: 'quantity', written: '1-1/2 in', text: '1-1/2 in (38.1 mm)', dimension: 'length', si: 0.0381, unit: 'm' }]);
    });

    it('resolves the references of prose, and keeps them as written beside', () => {
        const [seen] = ofText(sampleText).findings.find(({ id }) => id === 'F1')?.facts['seen'] ?? [];
        expect(seen).toMatchObject({ type: 'text', text: 'The hose of 38 mm (1-1/2 in) sits on a tail of 32 mm (1.26 in), of bronze, alloy not identified.', written: expect.stringContaining('{H1.bore}') });
    });

    it('counts a due date from the date of issue by the calendar', () => {
        // 30 days after 31 January of a year that is no leap year: 2 March.
        const finding = ofText(sampleText.replace('issued: 2026-01-30', ''), { number: 1, date: '2026-01-31' }).findings.find(({ id }) => id === 'F2');
        expect(finding).toMatchObject({ due: 'By 2 March 2026, 30 days after issue', dueDate: '2026-03-02' });
    });

    it('adds up each comparable, and all of them by their weights', () => {
        // By hand: 22000 − 500 = 21500; 20000 + 250 = 20250; 0.6 × 21500 + 0.4 × 20250 = 21000; 500 / 22000.
        const [valuation] = ofText(sampleText).valuations;
        expect(valuation?.comparables.map(({ sum }) => sum)).toEqual([21_500, 20_250]);
        expect(valuation?.weighed).toEqual({ amount: 21_000, currency: 'USD', weights: 1 });
        expect(valuation?.comparables[0]?.grossShare).toBeCloseTo(500 / 22_000, 12);
    });

    it('has the stamp of an issue only where there is one', () => {
        expect(ofText(sampleText).issue).toBeNull();
        expect(ofText(sampleText, { number: 2, date: '2026-02-01' }).issue).toEqual({ number: 2, date: '2026-02-01', signedBy: 'Ada Rowe' });
    });

    it('names answered problems with their answer, as check does', () => {
        const problem = ofText(sampleText).problems.find(({ check }) => check === 'hose-and-spigot-differ');
        expect(problem).toMatchObject({ file: 'survey.survey', components: ['H1', 'SV1'], answeredBy: 'F1' });
        expect(problem?.line).toBe(sampleText.slice(0, sampleText.indexOf('bore: 38 mm')).split('\n').length);
    });

    it('names only people whom the survey names', () => {
        const people = ofText(`${sampleText}\nperson Z-Nobody "Zed Nobody" { telephone: "555 0199" }\n`).people;
        expect(people.map(({ id }) => id)).toEqual(['A-Rowe']);
    });

    it('holds no sign that cannot be printed, and stays within its schema, whatever a text says', () => {
        fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 40 }), words => {
            const escaped = JSON.stringify(words.replaceAll('\\', '').replaceAll('"', '').replaceAll('{', '').replaceAll('}', '')).slice(1, -1).replace(/\\u[0-9a-f]{4}|\\./g, ' ');
            const document = ofText(sampleText.replace('Seen dry.', `Seen dry. ${escaped}\u202e\u0007`));
            expect(validate(JSON.parse(recordText(document)))).toBe(true);
            expect(JSON.stringify(document)).not.toMatch(/[\u202a-\u202e\u2066-\u2069]|\\u0007|\\ud[89a-f]/);
            expect(document.vessel?.notes[0]).toMatch(/^Seen dry\./);
        }), { numRuns: 60 });
    }, 60_000);
});
