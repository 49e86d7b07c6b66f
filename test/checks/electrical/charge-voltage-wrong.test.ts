import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'charge-voltage-wrong';
const pair = (battery: string, charger: string) => `battery B1 { ${battery} }\ncharger CH1 { ${charger} }\n`;

describe(id, () => {
    it.each([
        ['chemistry: flooded  voltage: 12 V', 'voltage: 14.1 V  stage: absorption', []], ['chemistry: flooded  voltage: 12 V', 'voltage: 14.09 V  stage: absorption', ['error CH1 B1']],
        ['chemistry: flooded  voltage: 12 V', 'voltage: 14.8 V  stage: absorption', []], ['chemistry: flooded  voltage: 12 V', 'voltage: 14.81 V', ['error CH1 B1']],
        ['chemistry: flooded  voltage: 12 V', 'voltage: 13.9 V', ['hint CH1']], ['chemistry: flooded  voltage: 12 V', 'voltage: 13.4 V  stage: float', []], ['chemistry: flooded  voltage: 12 V', 'voltage: 13.4 V  stage: bulk', []],
        ['chemistry: flooded  voltage: 12 V', 'voltage: 15.5 V  stage: equalizing', []], ['chemistry: flooded  voltage: 12 V', 'voltage: 15.5 V  stage: float', ['error CH1 B1']],
        ['chemistry: gel  voltage: 12 V', 'voltage: 14.4 V', []], ['chemistry: gel  voltage: 12 V', 'voltage: 14.41 V', ['error CH1 B1']], ['chemistry: gel  voltage: 12 V', 'voltage: 13.2 V  stage: absorption', []],
        ['chemistry: agm  voltage: 12 V', 'voltage: 15.5 V', []], ['chemistry: lithium  cut-off: yes  voltage: 12 V', 'voltage: 15 V', []], ['voltage: 12 V', 'voltage: 15.5 V', []],
        // 24 V doubles.
        ['chemistry: flooded  voltage: 24 V', 'voltage: 29.6 V', []], ['chemistry: flooded  voltage: 24 V', 'voltage: 29.7 V', ['error CH1 B1']], ['chemistry: gel  voltage: 12 V', 'voltage: 28.8 V  bank-voltage: 24 V', []],
        ['chemistry: flooded  voltage: 12 V', 'voltage: 28.8 V', ['hint CH1']], ['chemistry: flooded  voltage: 6 V', 'voltage: 14.4 V', ['hint CH1']], ['chemistry: flooded  voltage: 6 V', 'voltage: 14.4 V  bank-voltage: 12 V', []],
        ['chemistry: flooded', 'voltage: 15.1 V', ['hint CH1']],
        // Its maker's figure goes before all.
        ['chemistry: flooded  voltage: 12 V  charging-voltage: 15 V..15.4 V', 'voltage: 15.2 V', []], ['chemistry: flooded  voltage: 12 V  charging-voltage: 15 V..15.4 V', 'voltage: 15.41 V', ['error CH1 B1']],
        ['chemistry: agm  voltage: 12 V  charging-voltage: 14.6 V', 'voltage: 14.7 V', []], ['chemistry: agm  voltage: 12 V  charging-voltage: 14.6 V', 'voltage: 14.71 V', ['error CH1 B1']],
        ['voltage: 12 V  charging-voltage: 14.6 V', 'voltage: 14.4 V  stage: absorption', ['error CH1 B1']],
        // A cold battery may take more, a hot one less: 0.03 V a degree at 12 V.
        ['chemistry: flooded  voltage: 12 V  temperature: 5 C', 'voltage: 15.4 V', []], ['chemistry: flooded  voltage: 12 V  temperature: 5 C', 'voltage: 15.41 V', ['error CH1 B1']],
        ['chemistry: flooded  voltage: 12 V  temperature: 95 F', 'voltage: 13.8 V  stage: absorption', []], ['chemistry: flooded  voltage: 12 V  temperature: 95 F', 'voltage: 13.79 V  stage: absorption', ['error CH1 B1']],
        ['chemistry: lithium  cut-off: no', 'current: 20 A', ['error B1']], ['chemistry: lithium', 'current: 20 A', ['hint B1']], ['chemistry: flooded  cut-off: no', 'current: 20 A', []],
    ])('%s, %s', (battery, charger, expected) => {
        expect(summary(id, pair(battery, charger))).toEqual(expected);
    });
    it('asks which battery where they are not alike', () => {
        const two = (charger: string) => `battery B1 { chemistry: gel  voltage: 12 V }\nbattery B2 { chemistry: flooded  voltage: 12 V }\ncharger CH1 { voltage: 14.7 V  ${charger} }\n`;
        expect(summary(id, two(''))).toEqual(['hint CH1']);
        expect(summary(id, two('charges: B1'))).toEqual(['error CH1 B1']);
        expect(summary(id, two('charges: B2'))).toEqual([]);
        expect(summary(id, 'charger CH1 { voltage: 15.7 V }\n')).toEqual([]);
    });
    it('is due at once when the battery is hot or swollen', () => {
        const due = (facts: string) => urgencies(id, pair(`chemistry: flooded  voltage: 12 V  ${facts}`, 'voltage: 15.5 V'));
        expect(due('')).toEqual(['within-days']);
        expect(due('swollen: yes')).toEqual(['at-once']);
        expect(due('temperature: 50 C')).toEqual(['within-days']);
        expect(due('temperature: 123 F')).toEqual(['at-once']);
        expect(urgencies(id, 'battery B1 { chemistry: lithium  cut-off: no  swollen: yes }\n')).toEqual(['at-once']);
    });
    it('reads the highest row of a source, and its voltage before the table', () => {
        const table = (charger: string) => `battery B1 { chemistry: gel  voltage: 12 V }\n${charger}\nreading M1 {\n    measures: charging\n    row "Idle": ALT1, 13.9 V, 10 A\n    row "Cruising": ALT1, 14.9 V, 40 A\n}\n`;
        expect(summary(id, table('alternator ALT1'))).toEqual(['error ALT1 B1']);
        expect(summary(id, table('alternator ALT1 { voltage: 14.2 V }'))).toEqual([]);
    });
    it('offers the bank of 24 V, and judges by the firm’s range', () => {
        const text = pair('chemistry: flooded  voltage: 12 V', 'voltage: 28.8 V');
        expect(correctionsIn(id, text)).toEqual(['Record the bank as of 24 V']);
        expect(summary(id, corrected(text, id, 'Record the bank as of 24 V'))).toEqual([]);
        const firm = `yardsticks "Firm" { charge-flooded: 14.1 V..15 V }\n${pair('chemistry: flooded  voltage: 12 V', 'voltage: 15.1 V')}`;
        expect(raisedBy(id, firm)[0]?.message).toContain('15 V is the most by the firm’s limit');
    });
});
