import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'marks-or-placards-short';
const documented = 'vessel "M" { official-number: "1234567" }\n';

describe(id, () => {
    it.each([
        ['official-number O1 { letter-height: 3 in }', 0], ['official-number O1 { letter-height: 2.9 in }', 1], ['official-number O1 { letter-height: 76.2 mm }', 0], ['official-number O1 { letter-height: 75 mm }', 1], ['official-number O1', 0],
        ['official-number O1 { text: "NO. 1234567" }', 0], ['official-number O1 { text: "No 1234567" }', 0], ['official-number O1 { text: "1234567" }', 1], ['official-number O1 { permanent: no }', 1], ['official-number O1 { permanent: no  text: "1"  letter-height: 1 in }', 1],
        ['marking M1 { marked: official-number  letter-height: 2 in }', 1], ['marking M1 { marked: name  letter-height: 4 in }', 0], ['marking M1 { marked: name  letter-height: 3.9 in }', 1], ['marking M1 { marked: hailing-port  letter-height: 101.6 mm }', 0], ['marking M1 { marked: name-and-port  letter-height: 100 mm }', 1],
        ['marking M1 { marked: draft  letter-height: 1 in }', 0], ['marking M1 { letter-height: 1 in }', 0],
    ])('documented: %s: %i', (marks, count) => {
        expect(raisedBy(id, `${documented}${marks}\n`)).toHaveLength(count);
    });
    it('asks nothing of the name where she is not documented', () => {
        expect(summary(id, 'vessel "M" {}\nmarking M1 { marked: name  letter-height: 1 in }\n')).toEqual([]);
    });
    it.each([
        ['marking M1 { marked: state-number  letter-height: 3 in  side: both }', []], ['marking M1 { marked: state-number  letter-height: 2.9 in  side: both }', ['error M1']], ['marking M1 { marked: state-number  side: port }', ['error M1']], ['marking M1 { marked: state-number }', []],
        ['marking M1 { marked: state-number  side: port }\nmarking M2 { marked: state-number  side: starboard }', []], ['marking M1 { marked: state-number  side: port }\nmarking M2 { marked: state-number }', []],
    ])('%s', (marks, expected) => {
        expect(summary(id, `${marks}\n`)).toEqual(expected);
    });
    const placards = (length: string, text: string, more = 'fuel: diesel') => `vessel "M" { length-on-deck: ${length}  ${more} }\n${text}\n`;
    const two = 'placard P1 { placard-for: oil }\nplacard P2 { placard-for: garbage }';
    it.each([
        ['26 ft', two, []], ['26 ft', 'placard P1 { placard-for: oil }', ['error P1']], ['25.9 ft', 'placard P1 { placard-for: oil }', []], ['7.93 m', 'placard P1 { placard-for: garbage }', ['error P1']], ['7.92 m', 'placard P1 { placard-for: garbage }', []],
        ['26 ft', 'placard P1', ['hint P1']], ['26 ft', 'placard P1 { placard-for: oil  posted: no }\nplacard P2 { placard-for: garbage }', ['error P1']], ['26 ft', 'placard P1 { placard-for: oil  posted: no }\nplacard P3 { placard-for: oil  posted: yes }\nplacard P2 { placard-for: garbage }', []], ['26 ft', 'placard P1 { placard-for: oil  quantity: 0 }\nplacard P2 { placard-for: garbage }', ['error P1 P2']],
        ['26 ft', 'placard P1 { placard-for: oil  width: 8 in  height: 5 in }\nplacard P2 { placard-for: garbage  width: 9 in  height: 4 in }', []], ['26 ft', 'placard P1 { placard-for: oil  width: 8 in  height: 4.9 in }\nplacard P2 { placard-for: garbage }', ['error P1']],
        ['26 ft', 'placard P1 { placard-for: oil  width: 5 in  height: 8 in }\nplacard P2 { placard-for: garbage  width: 4 in  height: 9 in }', ['error P2']], ['26 ft', 'placard P1 { placard-for: oil  width: 4 in }\nplacard P2 { placard-for: garbage }', ['error P1']], ['26 ft', 'placard P1 { placard-for: oil  width: 6 in }\nplacard P2 { placard-for: garbage }', []],
    ])('%s: %s', (length, text, expected) => {
        expect(summary(id, placards(length, text))).toEqual(expected);
    });
    it('asks no oil placard of a vessel without oil', () => {
        expect(summary(id, placards('30 ft', 'placard P1 { placard-for: garbage }', 'fuel: electric'))).toEqual([]);
    });
    it('asks a waste plan of a vessel with a galley that goes to sea', () => {
        const galley = `stove S1\n${two}`;
        expect(summary(id, placards('40 ft', galley, 'fuel: diesel  used-on: offshore'))).toEqual(['warning P1 P2']);
        expect(summary(id, placards('39.9 ft', galley, 'fuel: diesel  used-on: offshore'))).toEqual([]);
        expect(summary(id, placards('40 ft', galley, 'fuel: diesel  water: salt'))).toEqual(['warning P1 P2']);
        expect(summary(id, placards('40 ft', galley))).toEqual(['hint P1 P2']);
        expect(summary(id, placards('40 ft', two, 'fuel: diesel  used-on: offshore'))).toEqual([]);
        expect(summary(id, placards('40 ft', `${galley}\nplacard P3 { placard-for: waste-plan }`, 'fuel: diesel  used-on: offshore'))).toEqual([]);
    });
    it.each([
        ['certificate C1 { expires: 2026-10-05 }', ['error C1']], ['certificate C1 { expires: 2026-10-06 }', []], ['radio-license C1 { expires: 2026-09 }', ['error C1']], ['radio-license C1 { expires: 2026-10 }', []], ['insurance C1 { expires: 2025 }', ['error C1']], ['certificate C1', []],
    ])('%s', (paper, expected) => {
        const text = `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\n${paper}\n`;
        expect(summary(id, text)).toEqual(expected);
        expect(urgencies(id, text)).toEqual(expected.map(() => 'within-days'));
    });
    it('asks for the day and the length', () => {
        expect(summary(id, 'certificate C1 { expires: 2020 }\n')).toEqual(['hint C1']);
        expect(summary(id, 'vessel "M" {}\nplacard P1 { placard-for: oil }\n')).toEqual(['hint P1']);
    });
    it('adds the placards that are missing', () => {
        const text = placards('30 ft', 'placard P1 { placard-for: other }');
        expect(raisedBy(id, corrected(corrected(text, id, 'Add an oil placard'), id, 'Add a garbage placard'))).toEqual([]);
    });
});
