import { describe, expect, it } from 'vitest';
import { raisedBy, summary } from '../check-text.js';

const id = 'fault-without-finding';
const answeredBy = (text: string) => raisedBy(id, text).map(problem => problem.answeredBy);

describe('conditions', () => {
    it.each([['defective', 1], ['failed', 1], ['sound', 0], ['serviceable', 0], ['worn', 0], ['not-proved', 0], ['not-seen', 0]])('%s: %i', (condition, count) => {
        expect(raisedBy(id, `valve SV1 { condition: ${condition} }\n`)).toHaveLength(count);
    });
    it('leaves to hose-old what that judges of a hose, and keeps the rest', () => {
        expect(summary(id, 'hose H1 { condition: cracked }\n')).toEqual([]);
        expect(summary(id, 'hose H1 { condition: chafed }\n')).toEqual(['error H1']);
    });
});

describe('answers', () => {
    const failed = 'valve SV1 { condition: failed }\nvalve SV2\n';
    it('is silent where a finding names the component', () => {
        expect(summary(id, `${failed}finding F1 "It does not turn" on SV1 { urgency: in-upkeep }\n`)).toEqual([]);
    });
    it('is raised where a finding names another', () => {
        expect(summary(id, `${failed}finding F1 "It does not turn" on SV2 { urgency: in-upkeep }\n`)).toEqual(['error SV1']);
    });
    it('stays matched with a finding or an acceptance that answers it by name', () => {
        expect(answeredBy(`${failed}finding F1 "It does not turn" on SV1 { answers: fault-without-finding  urgency: in-upkeep }\n`)).toEqual(['F1']);
        expect(answeredBy(`${failed}accept fault-without-finding on SV1 because "It is out of use."\n`)).toEqual(['accept']);
    });
});
