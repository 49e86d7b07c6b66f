import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'leakage-breaker-missing';
const built = (facts: string) => `vessel "Marram" { ${facts} }\n`;
const inlet = 'shore-inlet SI1 { leakage-guarded: no }\n';

describe(id, () => {
    it.each([
        [built('built: 2012') + inlet, ['warning SI1']], [built('built: 2013') + inlet, ['error SI1']], [built('model-year: 2016') + inlet, ['error SI1']], [inlet, ['warning SI1']],
        [built('built: 2016') + 'shore-inlet SI1\n', ['hint SI1']],
        [built('built: 2016') + 'shore-inlet SI1 { leakage-guarded: yes }\n', []],
        [built('built: 2016') + `${inlet}transformer T1 { distance-from-inlet: 10 ft }\n`, []],
        [built('built: 2016') + `${inlet}transformer T1 { distance-from-inlet: 3.1 m }\n`, ['error SI1']],
        [built('built: 2016') + `${inlet}transformer T1\n`, ['hint T1']],
        ['shore-inlet SI1\nleakage-breaker LB1 { works: no }\n', ['error LB1']],
        ['shore-inlet SI1\nleakage-breaker LB1 { works: not-tried }\n', []],
        ['shore-inlet SI1\nleakage-breaker LB1 { trip-current: 30 mA  trip-time: 100 ms }\n', []],
        ['shore-inlet SI1\nleakage-breaker LB1 { trip-current: 31 mA }\n', ['error LB1']],
        ['shore-inlet SI1\nleakage-breaker LB1 { trip-current: 28 mA  trip-time: 101 ms }\n', ['error LB1']],
        ['shore-inlet SI1\nleakage-breaker LB1 { works: no }\ntransformer T1 { distance-from-inlet: 2 m }\n', []],
        ['leakage-breaker LB1 { works: no }\n', []],
    ])('%s', (text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('tells an older boat that this is advice, and cites no breach', () => {
        const [problem] = raisedBy(id, built('built: 1985') + inlet);
        expect(problem?.message).toContain('this is advice');
        expect(problem?.draft?.because).toContain('not asked of them');
        expect(urgencies(id, built('built: 1985') + inlet)).toEqual(['within-days']);
    });
    it('offers to record what stands in its place', () => {
        expect(correctionsIn(id, inlet)).toEqual(['Record SI1 as guarded by a leakage breaker', 'Record an isolation transformer within 10 ft of SI1']);
    });
    it('says what the breaker did', () => {
        expect(raisedBy(id, 'shore-inlet SI1\nleakage-breaker LB1 { trip-current: 28 mA  trip-time: 140 ms }\n')[0]?.message).toContain('takes 140 ms to trip');
        expect(raisedBy(id, 'shore-inlet SI1\nleakage-breaker LB1 { trip-current: 0.1 A }\n')[0]?.message).toContain('trips at 100 mA');
    });
});
