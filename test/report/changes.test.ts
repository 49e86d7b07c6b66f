/** What differs between two records: nothing for the same, and whatever is changed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../src/checks/survey.js';
import { positionIn } from '../../src/host/files.js';
import { parseFigure, type DateFigure } from '../../src/quantities/index.js';
import { changesBetween, type Change } from '../../src/report/changes.js';
import { recordJson, type RecordDocument } from '../../src/report/record-json.js';
import { contrast } from '../../src/report/sections/changes.js';
import { sampleReport, sampleText, textOf } from './sample.js';

const dateOf = (written: string): DateFigure => {
    const parsed = parseFigure(written);
    if (!parsed.ok || parsed.figure.kind !== 'date') {
        throw new Error(`${written} is no date`);
    }
    return parsed.figure;
};
const issued = (number: number, date: string) => ({ number, date: dateOf(date), signedBy: 'Ada Rowe' });
const more = `
contact SV1, TH1 { insulated: no }
accept hose-old on H1 because "It is on the list."
`;
const full = `${sampleText.replace('issued: 2026-01-30', '')}${more}`;
const recordOf = (text: string, issue = issued(1, '2026-01-30')): RecordDocument =>
    recordJson(analyseText(text), { position: (_, offset) => positionIn(text, offset), name: uri => uri.split('/').at(-1) ?? '', issue });
const base = recordOf(full);
/** What is told where the text is put otherwise in one place. */
const told = (from: string, to: string, issue = issued(1, '2026-01-30')): readonly Change[] => {
    if (!full.includes(from)) {
        throw new Error(`The survey does not say ${from}`);
    }
    return changesBetween(base, recordOf(full.replace(from, to), issue));
};
const inShort = (changes: readonly Change[]) => changes.map(({ area, act, subject, what, before, after }) => `${area} ${act} | ${subject} | ${what} | ${before ?? '-'} | ${after ?? '-'}`);

describe('a figure in another unit', () => {
    it('is no change of the fact where it is the other converted and rounded as it is written', () => {
        expect(told('bore: 38 mm', 'bore: 1.496 in').filter(({ what }) => what === 'Bore')).toEqual([]); // 38 / 25.4 = 1.49606
    });

    it.each([
        ['a size that is sold under another name, not the same', '1.5 in'], ['a fraction near it', '1-1/2 in'], ['the last digit of four', '1.498 in'], ['the same unit, however little', '38.01 mm'], ['a range about it', '37.9 mm..38.1 mm'],
    ])('is told where it is another figure: %s', (_, to) => {
        expect(told('bore: 38 mm', `bore: ${to}`).filter(({ what }) => what === 'Bore')).toHaveLength(1);
    });
});

describe('two records that say the same', () => {
    it.each([
        ['nothing is changed', 'Seen dry.', 'Seen dry.'],
        ['another way of writing a figure', 'size: 1-1/2 in  metal: bronze  below', 'size: 38.1 mm  metal: bronze  below'],
        ['a decimal for a fraction', 'length: 0.7 m', 'length: 700 mm'],
        ['blanks and line breaks in a text', 'The fenders chafe.', 'The   fenders  chafe.'],
        ['the order of facts', 'type: sailing-yacht\n    hull-number: "XQZ12045K989"', 'hull-number: "XQZ12045K989"\n    type: sailing-yacht'],
        ['a remark to oneself', 'Seen dry."', 'Seen dry." // looked at twice'],
        ['the order of what is cited', '"ISO 9093" "4.1", "ABYC E-10" "10.7"', '"ABYC E-10" "10.7", "ISO 9093" "4.1"'],
        ['number and date of issue in the text', 'client:', 'issue: 2\n    issued: 2026-01-30\n    client:'],
    ])('%s: nothing is told', (_, from, to) => {
        expect(inShort(told(from, to))).toEqual([]);
    });
});

describe('what is changed in the text', () => {
    it.each([
        ['a figure, in both systems', 'spigot: 32 mm', 'spigot: 35 mm', 'part changed | SV1 Sink seacock | Spigot | 32 mm (1.26 in) | 35 mm (1-3/8 in)'],
        ['the same fact in the words of a finding', 'spigot: 32 mm', 'spigot: 35 mm', 'finding changed | F1 Sink hose larger than its tail | Seen |'],
        ['a finding withdrawn', /finding F2[\s\S]*?\n {4}\}/.exec(full)?.[0] ?? '', '', 'finding withdrawn | F2 Fenders chafe |'],
        ['a finding made', 'system hull', 'finding F9 "Loose" on H1 {\n urgency: at-once\n seen: "It is loose."\n}\nsystem hull', 'finding new | F9 Loose |  | - | It is loose. At once'],
        ['an urgency', 'within-days 30', 'within-days 14', 'finding changed | F2 Fenders chafe | Urgency | within 30 days | within 14 days'],
        ['an opinion of value', 'opinion: 21000 USD', 'opinion: 19500 USD', 'value changed | Opinion of value | Opinion | 21,000 USD | 19,500 USD'],
        ['an adjustment', 'adjust "Sails": 250 USD', 'adjust "Sails": -250 USD', 'value changed | Comparable B, Another | Adjustment: Sails | 250 USD | -250 USD'],
        ['a reading', 'row "Port": 11, 14', 'row "Port": 11, 19', 'reading changed | Table M1, Moisture, bottom | Row Port, value 2 (reading) | 14 | 19'],
        ['the path of a run', 'H1 -> SK1', 'H1 -> open', 'run changed | Run R1, Sink drain | Path | TH1 → SV1 → H1 → SK1 | TH1 → SV1 → H1 → open'],
        ['a fact of a joint', '{ clamps: 2 } H1', '{ clamps: 1 } H1', 'run changed | Run R1, Sink drain | Joint SV1 to H1: clamps | 2 | 1'],
        ['a contact', 'insulated: no', 'insulated: yes', 'run changed | Contact of SV1 with TH1 | Insulated | no | yes'],
        ['a reason to accept', 'It is on the list.', 'The owner renews it.', 'accepted changed | Accepted: hose old on H1 | Reason | It is on the list. | The owner renews it.'],
        ['what was not seen', 'it is encapsulated', 'it was locked', 'unseen changed | Not seen: Inside of the keel | Reason | it is encapsulated | it was locked'],
        ['an attendance', 'North yard, in a shed', 'South yard', 'survey changed | Survey | Attendance | 2026-01-20, ashore, North yard, in a shed | -'],
        ['who engaged the surveyor', 'B. Lindqvist', 'C. Lindqvist', 'survey changed | Survey | Client | B. Lindqvist | C. Lindqvist'],
        ['her number', 'XQZ12045K989', 'XQZ12046K989', 'vessel changed | Heron | Hull number | XQZ12045K989 | XQZ12046K989'],
        ['a caption', '"The tail"', '"The tail, port"', 'finding changed | F1 Sink hose larger than its tail | Photograph photos/tail.jpg: caption | The tail | The tail, port'],
        ['a mark on a photograph', '"The tail"', '"The tail" { mark ring "Cut": 40 %, 20 %, 5 % }', 'finding changed | F1 Sink hose larger than its tail | Photograph photos/tail.jpg: marks | - | ring “Cut” at 40 % across and 20 % down, radius 5 %'],
        ['a part taken out', 'hull-shell HS1 "Hull shell" { condition: sound  basis: seen }', 'hull-shell HS2 "Hull shell" { condition: sound  basis: seen }', 'part withdrawn | HS1 Hull shell |'],
        ['who signed', 'Surveying since 2001', 'Surveying since 2002', 'people changed | Ada Rowe | Credentials | Surveying since 2001 | Surveying since 2002'],
        ['a figure computed from another', 'below-waterline: 6 in', 'below-waterline: 9 in', 'computed changed | Sink drain (TH1) | Flooding rate |'],
    ])('%s', (_, from, to, expected) => {
        expect(inShort(told(from, to)).map(line => line.slice(0, expected.length))).toContain(expected);
    });

    it('tells a due date that only the new date of issue has moved, and says so', () => {
        // 30 days after 30 January 2026: 1 March; after 10 February: 12 March.
        expect(told('Seen dry.', 'Seen dry.', issued(2, '2026-02-10'))).toEqual([{
            area: 'finding', act: 'changed', id: 'F2', subject: 'F2 Fenders chafe', what: 'Due', before: 'By 1 March 2026, 30 days after issue', after: 'By 12 March 2026, 30 days after issue', followsFromIssue: true,
        }]);
    });

    it('tells a picture put in the place of another under one name', () => {
        const withDigest = (digest: string): RecordDocument => ({ ...base, vessel: base.vessel && { ...base.vessel, photos: base.vessel.photos.map(photo => ({ ...photo, sha256: digest })) } });
        expect(inShort(changesBetween(withDigest('a'.repeat(64)), withDigest('b'.repeat(64))))).toEqual([
            `vessel changed | Heron | Photograph photos/heron.jpg: the picture file | SHA-256 ${'a'.repeat(64)} | SHA-256 ${'b'.repeat(64)}`]);
    });
});

/** Where a record says something of its own: not what follows from it, nor another form of the same. */
const derived = new Set(['version', 'issue', 'issued', 'problems', 'files', 'computed', 'yardsticks', 'standards', 'type', 'dimension', 'unit', 'kindTitle', 'written', 'sum', 'adjusted', 'weighed', 'grossShare', 'netShare', 'price', 'isAsked', 'amount', 'weight', 'dueDate', 'due', 'from', 'to']);

interface Leaf {
    readonly path: readonly (string | number)[];
    readonly value: string | number | boolean;
}

function leaves(value: unknown, path: readonly (string | number)[] = []): Leaf[] {
    if (Array.isArray(value)) {
        return value.flatMap((item, index) => leaves(item, [...path, index]));
    }
    if (typeof value === 'object' && value !== null) {
        const inFact = 'type' in value && 'text' in value;
        // Of a value that has an id, a date or SI figures, these decide and the text follows.
        return Object.entries(value).filter(([key]) => !derived.has(key) && !(inFact && key === 'text' && value.type !== 'text')).flatMap(([key, inner]) => leaves(inner, [...path, key]));
    }
    return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? [{ path, value }] : [];
}

function changed(document: RecordDocument, { path, value }: Leaf): RecordDocument {
    const copy = structuredClone(document) as unknown as Record<string | number, unknown>;
    let at = copy;
    for (const key of path.slice(0, -1)) {
        at = at[key] as typeof at;
    }
    at[path.at(-1) ?? ''] = typeof value === 'string' ? `${value} otherwise` : typeof value === 'number' ? value + 1 : !value;
    return copy as unknown as RecordDocument;
}

describe('laws', () => {
    const all = leaves(base);

    it('whatever single fact is changed is told, with what it was or is', () => {
        expect(all.length).toBeGreaterThan(150);
        fc.assert(fc.property(fc.constantFrom(...all), leaf => {
            const other = changed(base, leaf);
            for (const changes of [changesBetween(base, other), changesBetween(other, base)]) {
                expect(changes.length, leaf.path.join('.')).toBeGreaterThan(0);
                expect(changes.every(change => change.before !== undefined || change.after !== undefined || change.act !== 'changed'), leaf.path.join('.')).toBe(true);
                expect(changes.every(change => change.before !== change.after || change.act !== 'changed'), leaf.path.join('.')).toBe(true);
            }
            if (leaf.path.at(-1) === 'text') {
                expect(JSON.stringify(changesBetween(base, other))).toContain('otherwise');
            }
        }), { numRuns: 400 });
    });

    it('a record against itself, or with its statements in another order, tells nothing', () => {
        expect(changesBetween(base, structuredClone(base))).toEqual([]);
        fc.assert(fc.property(fc.infiniteStream(fc.nat(1000)), stream => {
            const shuffled = <T>(list: readonly T[]): T[] => list.map(entry => ({ entry, rank: Number(stream.next().value) })).sort((a, b) => a.rank - b.rank).map(({ entry }) => entry);
            const facts = <T extends { facts: RecordDocument['components'][number]['facts'] }>(entry: T): T => ({ ...entry, facts: Object.fromEntries(shuffled(Object.entries(entry.facts))) });
            const other: RecordDocument = {
                ...base, components: shuffled(base.components).map(facts), findings: shuffled(base.findings).map(facts), systems: shuffled(base.systems), readings: shuffled(base.readings).map(facts),
                unseen: shuffled(base.unseen), acceptances: shuffled(base.acceptances), runs: shuffled(base.runs).map(facts), valuations: base.valuations.map(entry => ({ ...entry, comparables: shuffled(entry.comparables) })),
            };
            expect(inShort(changesBetween(base, other))).toEqual([]);
        }), { numRuns: 50 });
    });
});

describe('the section', () => {
    const amended = full.replace('spigot: 32 mm', 'spigot: 35 mm').replace('opinion: 21000 USD', 'opinion: 19500 USD');

    it('says since which issue, counts, and shows before and now', () => {
        const text = textOf(sampleReport({ lastRecord: base, issue: issued(2, '2026-02-10') }, amended));
        expect(text).toContain('Changes since issue 1 of 30 January 2026');
        expect(text).toMatch(/2 findings are changed, 1 change is made to the valuation and \d+ other facts? differ/);
        expect(text).toMatch(/SV1 Sink seacock Spigot 32 mm \(1\.26 in\) 35 mm \(1-3\/8 in\)/);
        expect(text).toMatch(/Opinion 21,000 USD 19,500 USD/);
        expect(text).toMatch(/Due, as it is counted from the date of issue By 1 March 2026, 30 days after issue By 12 March 2026/);
    });

    it('is left out without an earlier issue, and where the same record is drawn again', () => {
        expect(textOf(sampleReport({}, amended))).not.toContain('Changes since');
        expect(textOf(sampleReport({ lastRecord: base }, full.replace('client:', 'issued: 2026-01-30\n    client:')))).not.toContain('Changes since');
    });

    it('escapes what it shows', () => {
        const html = sampleReport({ lastRecord: base, issue: issued(2, '2026-02-10') }, full.replace('B. Lindqvist', '<script>alert(1)</script>'));
        expect(html).toContain('&lt;script&gt;alert(1)');
        expect(html).not.toContain('<script>alert');
    });

    it('cuts long texts down to where they differ', () => {
        const long = Array.from({ length: 80 }, (_, index) => `word${index}`);
        const [before, after] = contrast(long.join(' '), long.with(40, 'other').join(' '));
        expect(before).toBe('… word33 word34 word35 word36 word37 word38 word39 word40 word41 word42 word43 word44 word45 word46 word47 …');
        expect(after).toBe(before?.replace('word40', 'other'));
    });
});
