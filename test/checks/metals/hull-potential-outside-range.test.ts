import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary } from '../check-text.js';

const id = 'hull-potential-outside-range';
const reading = (potential: string, gear: string, { cell = 'silver-chloride', water = 'water: salt', more = '' } = {}) =>
    `vessel "M" { ${water} }\nhull-potential HP1 { potential: ${potential}  ${cell === '' ? '' : `cell: ${cell}`}  ${gear === '' ? '' : `gear: ${gear}`}  ${more} }\n`;
const raised = ['error HP1'];

describe('range', () => {
    it.each([
        ['fiberglass-bronze', '-749 mV', raised], ['fiberglass-bronze', '-750 mV', []], ['fiberglass-bronze', '-1000 mV', []], ['fiberglass-bronze', '-1001 mV', raised],
        ['fiberglass-aluminum-drive', '-899 mV', raised], ['fiberglass-aluminum-drive', '-1050 mV', []], ['aluminum', '-1100 mV', []], ['aluminum', '-1101 mV', raised],
        ['steel', '-820 mV', []], ['steel', '-799 mV', raised], ['wood', '-820 mV', raised], ['wood', '-600 mV', []], ['wood', '-0.55 V', []],
    ] as const)('%s at %s', (gear, potential, expected) => {
        expect(summary(id, reading(potential, gear))).toEqual(expected);
    });
});

describe('cell', () => {
    // Copper sulfate reads 68 mV more negative than silver chloride in sea water; zinc 1.03 V more positive.
    it.each([
        ['copper-sulfate', '-1068 mV', []], ['copper-sulfate', '-1069 mV', raised], ['copper-sulfate', '-818 mV', []], ['copper-sulfate', '-817 mV', raised],
    ] as const)('%s at %s', (cell, potential, expected) => {
        expect(summary(id, reading(potential, 'fiberglass-bronze', { cell }))).toEqual(expected);
    });
    it('of zinc is converted', () => {
        expect(summary(id, reading('0.08 V', 'fiberglass-bronze', { cell: 'zinc' }))).toEqual([]);
        expect(raisedBy(id, reading('0.02 V', 'fiberglass-bronze', { cell: 'zinc' }))[0]?.figures?.['potential']).toEqual({ value: -1010, unit: 'mV' });
    });
    it('is offered as another where that would put it in range, and then does', () => {
        const text = reading('-1040 mV', 'fiberglass-bronze');
        expect(correctionsIn(id, text)).toEqual(['Record it as read with a copper sulfate cell']);
        expect(summary(id, corrected(text, id, 'Record it as read with a copper sulfate cell'))).toEqual([]);
        expect(correctionsIn(id, reading('-500 mV', 'fiberglass-bronze'))).toEqual([]);
    });
});

describe('facts that are missing', () => {
    it.each([
        ['cell, in range with one of them', reading('-1080 mV', 'steel', { cell: '' }), ['hint HP1']], ['gear', reading('-500 mV', ''), ['hint HP1']], ['water, out of range', reading('-500 mV', 'steel', { water: '' }), ['hint HP1']],
        ['water, in range', reading('-900 mV', 'steel', { water: '' }), []], ['potential', 'vessel "M" { water: salt }\nhull-potential HP1 { gear: steel }\n', []],
        ['nothing, but fresh water', reading('-500 mV', 'steel', { water: 'water: fresh' }), []], ['nothing, but brackish water', reading('-500 mV', 'steel', { water: 'water: brackish' }), []],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
});

describe('shift from the metal’s own potential', () => {
    it.each([['-650 mV', []], ['-651 mV', raised], ['-800 mV', raised], ['-300 mV', []]] as const)('own %s at -850 mV', (own, expected) => {
        expect(summary(id, reading('-850 mV', 'steel', { more: `own-potential: ${own}` }))).toEqual(expected);
    });
    it('is told once with a reading out of range', () => {
        expect(summary(id, reading('-700 mV', 'steel', { more: 'own-potential: -650 mV' }))).toEqual(raised);
    });
});

describe('urgency', () => {
    it.each([
        ['-700 mV', 'steel', 'in-upkeep', undefined], ['-700 mV', 'wood', 'within-days', 30], ['-500 mV', 'wood', 'in-upkeep', undefined],
        ['-1150 mV', 'aluminum', 'in-upkeep', undefined], ['-1201 mV', 'aluminum', 'within-days', 7], ['-1201 mV', 'fiberglass-aluminum-drive', 'within-days', 7], ['-1201 mV', 'steel', 'in-upkeep', undefined],
    ] as const)('%s on %s: %s', (potential, gear, urgency, days) => {
        const [problem] = raisedBy(id, reading(potential, gear));
        expect([problem?.draft?.urgency, problem?.draft?.days]).toEqual([urgency, days]);
    });
});
