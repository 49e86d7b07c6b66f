/** Ventilation and sparks as surveyors record them in other ways. */
import { describe, expect, it } from 'vitest';
import { summary, urgencies } from '../check-text.js';

const gasoline = 'vessel "M" { fuel: gasoline }\n';
const absent = 'survey "1" pre-purchase { absent "Blower": "none is fitted" }\n';

describe('the only space recorded', () => {
    it('is that of blowers and ducts that name none', () => {
        const space = 'machinery-space S1 { volume: 60 ft3 }\n';
        expect(summary('blower-too-small', `${gasoline}${space}blower B1 { rated-flow: 80 cfm }\n`)).toEqual(['error B1']);
        expect(summary('blower-too-small', `${gasoline}${space}blower B1 { rated-flow: 90 cfm }\n`)).toEqual([]);
        expect(summary('vent-area-small', `${gasoline}${space}vent-duct D1 { way: supply  bore: 3 in }\nvent-duct D2 { way: exhaust  bore: 5 in }\n`)).toEqual(['error D1']);
    });
    it('is not that of a blower with a volume of its own', () => {
        expect(summary('blower-too-small', `${gasoline}machinery-space S1 { volume: 200 ft3 }\nblower B1 { rated-flow: 90 cfm  space-volume: 60 ft3 }\n`)).toEqual([]);
    });
});

describe('no blower', () => {
    it.each([
        [`${absent}${gasoline}machinery-space S1 { volume: 60 ft3 }\n`, ['error S1']], [`${absent}${gasoline}main-engine E1\n`, ['error E1']], [`${absent}${gasoline}outboard O1\n`, []],
        [`${absent}vessel "M" { fuel: diesel }\nmain-engine E1\n`, []], [`${absent}${gasoline}machinery-space S1 { space-open: yes }\n`, []], [`${gasoline}machinery-space S1 { volume: 60 ft3 }\n`, []],
        [`${absent}${gasoline}machinery-space S1 { gasoline: no }\nmain-engine E1 { fuel: diesel }\n`, []],
    ] as const)('%s', (text, expected) => {
        expect(summary('blower-too-small', text)).toEqual(expected);
    });
    it('keeps the engine out of use', () => {
        expect(urgencies('blower-too-small', `${absent}${gasoline}main-engine E1\n`)).toEqual(['before-use']);
    });
});

describe('a part without the mark', () => {
    it.each([
        [`${gasoline}charger C1 { ignition-protected: no }\n`, ['hint C1']], [`${gasoline}charger C1 { ignition-protected: no  ignition-space: yes }\n`, ['error C1']],
        [`${gasoline}alternator C1 { ignition-protected: no  ignition-space: yes  isolated-by: open-air }\n`, []], [`${gasoline}battery-switch C1 { ignition-protected: no }\n`, ['hint C1']],
        [`${gasoline}blower C1 { ignition-protected: no }\n`, ['error C1']], [`${gasoline}blower C1 { ignition-protected: no  ignition-space: no }\n`, []],
        ['vessel "M" { fuel: diesel }\nblower C1 { ignition-protected: no }\n', []], [`${gasoline}outboard O1\ncharger C1 { ignition-protected: no }\n`, []],
        [`${gasoline}charger C1 { ignition-protected: no }\nmachinery-space S1 { unmarked-parts: C1 }\n`, ['error C1 S1']],
    ] as const)('%s', (text, expected) => {
        expect(summary('spark-in-gasoline-space', text)).toEqual(expected);
    });
});
