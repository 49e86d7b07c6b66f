/** Every check proves its own documentation: its examples, its corrections and the neighbours it leaves alone. */
import { describe, expect, it } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.js';
import type { IssuedBefore } from '../../src/checks/contract.js';
import type { PhotoFacts } from '../../src/record/model.js';
import { analyseText, corrected, faultsOf, idsOf, judged } from './check-text.js';

type Photos = Readonly<Record<string, PhotoFacts>>;
const said = (text: string, photos?: Photos, issued?: IssuedBefore) => analyseText(text, photos, issued).problems.map(problem => `${problem.severity} ${problem.check.id}: ${problem.message}`).join('\n');
const ofCheck = (text: string, id: string, photos?: Photos, issued?: IssuedBefore) => analyseText(text, photos, issued).problems.filter(problem => problem.check.id === id);

describe.each(allChecks.map(check => [check.id, check] as const))('%s', (id, check) => {
    it('has examples, silent neighbours, sources and limits', () => {
        expect(check.examples.length, 'examples').toBeGreaterThan(0);
        expect(check.silent.length, 'silent neighbours').toBeGreaterThan(0);
        expect(check.needs.length, 'needs').toBeGreaterThan(0);
        expect(check.sources.length, 'sources').toBeGreaterThan(0);
        expect(check.limits.length, 'limits').toBeGreaterThan(0);
        expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    });

    describe.each(check.examples.map(example => [example.name, example] as const))('example: %s', (_, { bad, fixed, correction, photos, issued }) => {
        it('is written in clean Garboard', () => {
            expect(faultsOf(bad), bad).toEqual([]);
            expect(faultsOf(fixed), fixed).toEqual([]);
        });
        it('raises this check and no other when bad', () => {
            expect(idsOf(judged(analyseText(bad, photos, issued).problems)), said(bad, photos, issued)).toEqual([id]);
        });
        it('raises nothing of this check when fixed', () => {
            expect(ofCheck(fixed, id, photos, issued), said(fixed, photos, issued)).toEqual([]);
        });
        it('says what is wrong, points at it, and offers a draft whose references resolve', () => {
            for (const problem of judged(ofCheck(bad, id, photos, issued))) {
                expect(problem.message.length).toBeGreaterThan(40);
                expect(problem.message).not.toMatch(/\b(safe|unsafe|undefined|NaN)\b/i);
                expect(problem.at.end).toBeGreaterThan(problem.at.start);
                // A fault of the report is put right in its text, not by a finding.
                expect(problem.draft !== undefined || check.isOfReport === true, 'draft').toBe(true);
                for (const [, component = '', property = ''] of `${problem.draft?.seen} ${problem.draft?.because} ${problem.draft?.recommend}`.matchAll(/\{([^{}.]+)\.([^{}]+)\}/g)) {
                    const record = analyseText(bad).record;
                    const set = component === 'vessel' ? record.vessel : component === 'survey' ? record.survey : record.components.get(component);
                    const known = set?.facts.has(property) || (component === 'vessel' && property === 'name') || (property === 'flooding-rate' && set !== undefined);
                    expect(known, `{${component}.${property}} in the draft`).toBe(true);
                }
            }
        });
        if (correction !== undefined) {
            it(`is put right by "${correction}"`, () => {
                const text = corrected(bad, id, correction, photos, issued);
                expect(faultsOf(text), text).toEqual([]);
                expect(ofCheck(text, id, photos, issued), `${text}\n${said(text, photos, issued)}`).toEqual([]);
            });
        }
    });

    it.each(check.silent.map(neighbour => [neighbour.name, neighbour] as const))('is silent: %s', (_, { text, photos, issued }) => {
        expect(faultsOf(text), text).toEqual([]);
        expect(ofCheck(text, id, photos, issued), said(text, photos, issued)).toEqual([]);
    });
});
