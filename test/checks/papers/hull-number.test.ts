import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy } from '../check-text.js';

const vessel = (number: string, facts = '') => `vessel "M" { hull-number: "${number}"  ${facts} }\n`;

describe('hull-number-malformed', () => {
    const id = 'hull-number-malformed';
    it.each([
        ['ABC12345H495', 0], ['US-ABC12345H495', 0], ['ABC 12345 H495', 0], ['abc12345h495', 0], ['ABC12345M82H', 0], ['ABC123451278', 0], ['ABC12345I404', 0],
        ['ABC12O45A090', 1], ['ABC12345M790', 1], ['ABC12345C765', 1], ['ABC12345H49', 1], ['ABC12345H4955', 1], ['ABC123451378', 1],
        ['FR-ABC12345D404', 0], ['GBABC12345A090', 0], ['USABC12345A0901', 1],
    ])('%s: %i', (number, count) => {
        expect(raisedBy(id, vessel(number))).toHaveLength(count);
    });
    it('leaves boats of 1972 and before alone', () => {
        expect(raisedBy(id, vessel('4711', 'built: 1972'))).toHaveLength(0);
        expect(raisedBy(id, vessel('4711', 'built: 1973'))).toHaveLength(1);
    });
    it('offers another reading only where that is of a published form', () => {
        expect(correctionsIn(id, vessel('ABC/12345/H495'))).toEqual(['Leave out the signs between: ABC12345H495']);
        expect(correctionsIn(id, vessel('ABC12345M790'))).toEqual([]);
        expect(raisedBy(id, corrected(vessel('ABC12O45A090'), id, 'Read the letters in its serial as figures: ABC12045A090'))).toHaveLength(0);
    });
});

describe('hull-number-year-disagrees', () => {
    const id = 'hull-number-year-disagrees';
    it.each([
        ['ABC12345H495', 'built: 1994', 0], ['ABC12345H495', 'built: 1995', 0], ['ABC12345H495', 'built: 1993', 1], ['ABC12345H495', 'built: 1996', 1],
        ['ABC12345H495', 'model-year: 1995', 0], ['ABC12345H495', 'model-year: 1994', 1], ['ABC123451278', 'built: 1978', 0], ['ABC123451278', 'built: 1979', 1],
        ['ABC12345M78D', 'built: 1977', 0], ['ABC12345M78D', 'built: 1978', 0], ['ABC12345M78D', 'built: 1979', 1],
        ['ABC12345H495', '', 0], ['ABC12345M790', 'built: 1990', 0], ['ABC12345A395', '', 1], // model year 1995, built 1993
    ])('%s, %s: %i', (number, facts, count) => {
        expect(raisedBy(id, vessel(number, facts))).toHaveLength(count);
    });
});
