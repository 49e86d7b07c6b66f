import { expect, it } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.js';
import { analyse } from '../../src/checks/analyse.js';
import { defineCheck } from '../../src/checks/contract.js';
import { analyseText } from './check-text.js';

it('a check that fails is told, and the others go on', () => {
    const { record } = analyseText('seacock SV1 { spigot: 38 mm }\nhose H1 { bore: 1-1/4 in }\nrun R1: SV1 -> H1\n');
    const broken = defineCheck({
        id: 'broken', group: 'record', severity: 'error', title: '', why: '', needs: [], computes: '', sources: [], limits: [], examples: [], silent: [],
        run() {
            throw new Error('no such table');
        },
    });
    const { problems, gaps } = analyse(record, [broken, ...allChecks]);
    expect(problems.map(problem => problem.check.id)).toContain('hose-and-spigot-differ');
    expect(gaps.filter(gap => gap.code === 'check-failed').map(gap => `${gap.severity} ${gap.message}`)).toEqual([expect.stringContaining('error broken could not be carried out on this survey (no such table)')]);
});
