import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'propeller-slip-odd';
// 2800 rpm, 2 to 1, 16 in: 18.43 kn without slip.
const text = (propeller: string, vessel = 'running: displacement', more = '') => `vessel "Marram" { ${vessel} }\ngearbox GB1 { ratio: 2 }\npropeller P1 { pitch: 16 in  rotation: 2800 rpm  ${propeller} }\n${more}`;
const message = (survey: string) => raisedBy(id, survey).map(problem => problem.message).join('\n');

describe('slip against its band', () => {
    it.each([
        ['speed: 14.2 kn', []], // 23 %
        ['speed: 15.6 kn', []], ['speed: 15.8 kn', ['warning P1 GB1']], // 15 %
        ['speed: 10.2 kn', []], ['speed: 10.1 kn', ['warning P1 GB1']], // 45 %
        ['speed: 17.8 kn', ['warning P1 GB1']], ['speed: 17.9 kn', ['error P1 GB1']], // 3 %
        ['speed: 19 kn', ['error P1 GB1']], ['speed: 16.3 mph', []], ['speed: 26.3 km/h', []],
        ['speed: 16.2 kn  speed-against: 12.2 kn', []], ['speed: 20 kn  speed-against: 8.4 kn', []], ['speed: 20 kn  speed-against: 17 kn', ['error P1 GB1']],
    ])('%s', (propeller, expected) => {
        expect(summary(id, text(propeller))).toEqual(expected);
    });

    it.each([
        ['running: planing', '15 kn', []], ['running: planing', '14.6 kn', ['warning P1 GB1']], ['running: semi-displacement', '13 kn', []], ['running: semi-displacement', '12.8 kn', ['warning P1 GB1']],
        ['type: sailing-yacht', '16.5 kn', []], ['type: sailing-yacht', '16.7 kn', ['warning P1 GB1']], ['type: rigid-inflatable', '17.4 kn', []], ['running: displacement  type: aluminum-workboat', '9.3 kn', []],
        ['running: displacement  type: motor-yacht', '9.3 kn', ['warning P1 GB1']],
        ['length-waterline: 98 ft', '14.2 kn', []], ['', '14.2 kn', ['hint P1']], ['', '9 kn', ['warning P1 GB1']],
    ])('%s, %s', (vessel, speed, expected) => {
        expect(summary(id, text(`speed: ${speed}`, vessel))).toEqual(expected);
    });

    it('takes the length of the waterline for a clue', () => {
        const slow = 'vessel "Marram" { length-waterline: 36 ft }\ngearbox GB1 { ratio: 2.5 }\npropeller P1 { pitch: 16 in  rotation: 2200 rpm  speed: 7.2 kn }\n'; // 37.9 % at 1.2 in its own wave
        expect(summary(id, slow)).toEqual([]);
        expect(summary(id, slow.replace('36 ft', '16 ft').replace('7.2 kn', '7.9 kn'))).toEqual([]); // 31.8 % at 1.98: displacement or semi
        expect(summary(id, slow.replace('36 ft', '10 ft'))).toEqual(['warning P1 GB1']); // 37.9 % at 2.28: semi or planing
    });

    it('tells the speed without slip in both systems, and is due with upkeep only when high', () => {
        expect(message(text('speed: 10 kn'))).toContain('18.4 kn');
        expect(urgencies(id, text('speed: 10 kn'))).toEqual(['in-upkeep']);
        expect(urgencies(id, text('speed: 17 kn'))).toEqual(['note-only']);
        expect(urgencies(id, text('speed: 19 kn'))).toEqual(['note-only']);
    });
});

describe('miles typed for knots', () => {
    it('is offered where miles give a usual slip', () => {
        const typed = text('speed: 19 kn', 'running: planing'); // -3.1 %; as miles 10.4 %
        expect(message(typed)).toContain('mph typed for knots');
        expect(correctionsIn(id, typed)).toEqual(['Read 19 kn as 19 mph']);
        expect(summary(id, corrected(typed, id, 'Read 19 kn as 19 mph'))).toEqual([]);
    });
    it('is not offered where miles would be odd too, or the speed is not in knots', () => {
        expect(correctionsIn(id, text('speed: 30 kn', 'running: planing'))).toEqual([]);
        expect(correctionsIn(id, text('speed: 19 kn', 'running: displacement'))).toEqual([]); // 10.4 %: not usual there
        expect(correctionsIn(id, text('speed: 22 mph', 'running: planing'))).toEqual([]);
    });
    it('is offered for both runs', () => {
        const typed = text('speed: 19.5 kn  speed-against: 18.5 kn', 'running: planing');
        expect(correctionsIn(id, typed)).toEqual(['Read 19.5 kn as 19.5 mph', 'Read 18.5 kn as 18.5 mph']);
        // One of them in miles, the other not: it asks.
        expect(summary(id, corrected(typed, id, 'Read 19.5 kn as 19.5 mph'))).not.toEqual([]);
    });
    it('is offered once for the two cells of a row', () => {
        const row = `vessel "Marram" { running: planing }\ngearbox GB1 { ratio: 2 }\npropeller P1 { pitch: 16 in }\nreading TR1 "Trial" {\n    measures: trial\n    row "Full": 2800 rpm, 19.5 kn, 18.5 kn\n}\n`;
        expect(correctionsIn(id, row)).toEqual(['Read 19.5 kn and 18.5 kn as mph']);
        const right = corrected(row, id, 'Read 19.5 kn and 18.5 kn as mph');
        expect(right).toContain('2800 rpm, 19.5 mph, 18.5 mph');
        expect(summary(id, right)).toEqual([]);
    });
});

describe('tables of the trial', () => {
    const table = (rows: string, facts = '') => `vessel "Marram" { running: displacement }\nmain-engine E1\ngearbox GB1 { ratio: 2 }\npropeller P1 { pitch: 16 in }\nreading TR1 "Trial" {\n    measures: trial\n${facts}${rows}\n}\n`;
    it('judges the run at the highest speed only by the band, each by the least', () => {
        expect(summary(id, table('    row "Slow": 1000 rpm, 6.4 kn, 6.4 kn\n    row "Full": 2800 rpm, 14.2 kn, 14.2 kn'))).toEqual(['error P1 GB1']); // 2.8 % when slow
        expect(summary(id, table('    row "Slow": 1000 rpm, 6.2 kn, 6.2 kn\n    row "Full": 2800 rpm, 14.2 kn, 14.2 kn'))).toEqual([]); // 5.8 % when slow
        expect(summary(id, table('    row "Full": 2800 rpm, 9 kn, 9.4 kn\n    row "Slow": 1000 rpm, 5 kn, 5 kn'))).toEqual(['warning P1 GB1']);
    });
    it('takes the columns that are named', () => {
        expect(summary(id, table('    row "Full": 19 kn, 19.2 kn, 2800 rpm', '    columns: speed, speed-against, rotation\n'))).toEqual(['error P1 GB1']);
        expect(summary(id, table('    row "Full": 2800 rpm, 2850 rpm, 14.2 kn'))).toEqual([]); // the second is what the helm shows
    });
    it('names the run and offers a finding', () => {
        const [problem] = raisedBy(id, table('    row "Full": 2800 rpm, 9 kn, 9.4 kn'));
        expect(problem?.draft?.seen).toContain('“Full” of Trial');
    });
});

describe('drive lines', () => {
    const twins = (second: string, extra = '') => `vessel "Marram" { running: displacement }\ngearbox GB1 { side: port  ratio: 2 }\ngearbox GB2 { side: starboard  ratio: 2 }\npropeller P1 { side: port  pitch: 16 in  rotation: 2000 rpm  speed: 10 kn }\npropeller P2 { side: starboard  pitch: 16 in  ${second} }\n${extra}`;
    it('compares twins at one speed', () => {
        expect(summary(id, twins('rotation: 2140 rpm  speed: 10 kn'))).toEqual([]); // 5 points less a little
        expect(summary(id, twins('rotation: 2150 rpm  speed: 10 kn'))).toEqual(['warning P1 P2']);
        expect(summary(id, twins('rotation: 2150 rpm  speed: 10.6 kn'))).toEqual([]); // another run
    });
    it('says it once for twins in one row', () => {
        const both = `vessel "Marram" { running: displacement }\ngearbox GB1 { side: port  ratio: 2 }\ngearbox GB2 { side: starboard  ratio: 2 }\npropeller P1 { side: port  pitch: 16 in }\npropeller P2 { side: starboard  pitch: 16 in }\nreading TR1 "Trial" {\n    measures: trial\n    row "Full": 2800 rpm, 9 kn, 9.4 kn\n}\n`;
        expect(summary(id, both)).toEqual(['warning P1 GB1 P2 GB2']);
    });
    it('finds the gearbox by what it serves, the side, or as the only one', () => {
        const served = (facts: string) => `vessel "Marram" { running: displacement }\ngearbox GB1 { ${facts} }\ngearbox GB2 { ratio: 3 }\npropeller P1 { pitch: 16 in  rotation: 2800 rpm  speed: 19 kn }\n`;
        expect(summary(id, served('ratio: 2  serves: P1'))).toEqual(['error P1 GB1']);
        expect(summary(id, served('ratio: 2'))).toEqual([]); // either could turn it
        expect(summary(id, 'vessel "Marram" { running: planing }\noutboard OB1 { ratio: 2 }\npropeller P1 { pitch: 16 in  rotation: 2800 rpm  speed: 19 kn }\n')).toEqual(['error P1 OB1']);
    });
    it('asks for the one figure that is missing', () => {
        expect(summary(id, 'vessel "Marram" { running: planing }\ngearbox GB1\npropeller P1 { pitch: 16 in  rotation: 2800 rpm  speed: 14 kn }\n')).toEqual(['hint P1']);
        expect(message('vessel "Marram" { running: planing }\ngearbox GB1\npropeller P1 { pitch: 16 in  rotation: 2800 rpm  speed: 14 kn }\n')).toContain('ratio of GB1');
        expect(message('vessel "Marram" { running: planing }\ngearbox GB1 { ratio: 2 }\npropeller P1 { rotation: 2800 rpm  speed: 14 kn }\n')).toContain('pitch of P1');
        expect(summary(id, 'gearbox GB1\npropeller P1 { rotation: 2800 rpm  speed: 14 kn }\n')).toEqual([]);
    });
});
