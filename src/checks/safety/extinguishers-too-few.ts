/** Fewer portable extinguishers recorded than her length calls for. */
import { extinguishersNeeded } from '../../trade/extinguishers.js';
import { wordOf, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { listed, lengthBoth } from '../fit/wording.js';
import { bottlesOf, hasFixedSystem, lengthForCarriageM, satisfies, type Bottle } from './bottles.js';

export const extinguishersTooFew = defineCheck({
    id: 'extinguishers-too-few',
    group: 'safety',
    severity: 'error',
    title: 'Too few extinguishers for her length',
    why: 'What is not aboard puts out no fire, and the number is a rule of carriage.',
    needs: ['vessel: length-on-deck or length-overall, fuel', 'extinguisher: rating, quantity', 'fixed-extinguisher, where there is one', 'vessel: model-year or built, for B-I and B-II'],
    computes: 'Under 26 ft one 5-B (none with a fixed system); to 40 ft two 5-B or one 20-B (one 5-B); to 65 ft three 5-B, or one 20-B and one 5-B (two 5-B or one 20-B). To model year 2017 B-I counts as 5-B and B-II as 20-B.',
    sources: [
        { text: 'extinguishers to be carried', standard: '33 CFR 175', clause: '175.320', provenance: 'published' },
        { text: 'the numbers by length', standard: '33 CFR 175', clause: '175.320', provenance: 'secondary' },
    ],
    limits: [
        'The rule holds in the United States; elsewhere it is a yardstick.',
        'Where no extinguisher is recorded at all, nothing is said: they may not have been looked for.',
        'Bottles out of date are counted here and reported by extinguisher-out-of-date.',
        'Over 65 ft tonnage decides, which is not judged. Open outboard boats under 26 ft that can trap no vapor need none, and are not told apart.',
    ],
    examples: [{
        name: 'two small bottles at 42 ft',
        bad: `vessel "Marram" { length-on-deck: 42 ft  fuel: diesel }
extinguisher X1 { rating: b-5  quantity: 2 }
`,
        fixed: `vessel "Marram" { length-on-deck: 42 ft  fuel: diesel }
extinguisher X1 { rating: b-5  quantity: 2 }
extinguisher X2 { rating: b-5 }
`,
        correction: 'Add a 5-B extinguisher',
    }, {
        name: 'older marking on a boat of 2019',
        bad: `vessel "Marram" { length-on-deck: 25 ft  fuel: gasoline  model-year: 2019 }
extinguisher X1 { rating: b-i }
`,
        fixed: `vessel "Marram" { length-on-deck: 25 ft  fuel: gasoline  model-year: 2019 }
extinguisher X1 { rating: b-5 }
`,
    }],
    silent: [
        { name: 'three at 42 ft', text: 'vessel "Marram" { length-on-deck: 42 ft  fuel: diesel }\nextinguisher X1 { rating: b-5  quantity: 3 }\n' },
        { name: 'a large and a small one at 42 ft', text: 'vessel "Marram" { length-on-deck: 42 ft  fuel: diesel }\nextinguisher X1 { rating: b-20 }\nextinguisher X2 { rating: b-5 }\n' },
        { name: 'two at 42 ft with a fixed system', text: 'vessel "Marram" { length-on-deck: 42 ft  fuel: diesel }\nextinguisher X1 { rating: b-5  quantity: 2 }\nfixed-extinguisher FX1\n' },
        { name: 'no length recorded', text: 'vessel "Marram" { fuel: diesel }\nextinguisher X1 { rating: b-5 }\n' },
        { name: 'none recorded', text: 'vessel "Marram" { length-on-deck: 42 ft  fuel: diesel }\n' },
        { name: 'no engine', text: 'vessel "Marram" { length-on-deck: 42 ft  fuel: none }\nextinguisher X1 { rating: b-5 }\n' },
    ],
    run(record, raise) {
        const lengthM = lengthForCarriageM(record);
        const bottles = bottlesOf(record);
        if (lengthM === undefined || bottles.length === 0 || (record.vessel && wordOf(record.vessel, 'fuel') === 'none')) {
            return;
        }
        const ways = extinguishersNeeded(lengthM, hasFixedSystem(record));
        if (!ways || satisfies(ways, bottles.filter(bottle => !bottle.needsYear))) {
            return;
        }
        const [first] = bottles;
        if (satisfies(ways, bottles)) {
            const older = bottles.find(bottle => bottle.needsYear) ?? first;
            if (older) {
                raise({
                    components: [older.component], at: older.component.facts.get('rating')?.span ?? older.component.idSpan, severity: 'hint',
                    message: 'The extinguishers are enough only if the older markings B-I and B-II count; record the model year of the vessel, for they do to 2017.',
                });
            }
            return;
        }
        const unrated = bottles.find(({ component }) => !component.facts.has('rating'));
        if (unrated) {
            raise({
                components: [unrated.component], at: unrated.component.idSpan, severity: 'hint',
                message: `The rating of ${unrated.component.id} is not recorded; record it to tell whether the extinguishers are enough for her length.`,
            });
            return;
        }
        raise(problem(record, lengthM, ways, bottles));
    },
});

type Way = { readonly b5: number; readonly b20: number };

const wayText = ({ b5, b20 }: Way) => listed([...(b20 > 0 ? [`${b20} of 20-B`] : []), ...(b5 > 0 ? [`${b5} of 5-B`] : [])]);

function problem(record: SurveyRecord, lengthM: number, ways: readonly Way[], bottles: readonly Bottle[]): Raised {
    const count = (kind: Bottle['counts']) => bottles.reduce((sum, bottle) => sum + (bottle.counts === kind ? bottle.count : 0), 0);
    const have = listed([...(count('b20') > 0 ? [`${count('b20')} of 20-B`] : []), ...(count('b5') > 0 ? [`${count('b5')} of 5-B`] : [])]) || 'none that counts';
    const void_ = count(undefined) > 0 ? `, and ${count(undefined)} whose marking does not count on her` : '';
    const fixed = hasFixedSystem(record) ? ' with a fixed system' : '';
    const need = ways.map(wayText).join(', or ');
    const beside = bottles.at(-1)?.component;
    const lengthFact = record.vessel?.facts.has('length-on-deck') ? 'length-on-deck' : 'length-overall';
    return {
        components: bottles.map(bottle => bottle.component),
        at: bottles[0]?.component.idSpan ?? { uri: record.mainUri, start: 0, end: 0 },
        message: `At ${lengthBoth(lengthM)}${fixed} she is to carry ${need}; recorded are ${have}${void_}. What is not aboard puts out no fire; add what is missing.`,
        figures: { 'of 5-B': { value: count('b5'), unit: '' }, 'of 20-B': { value: count('b20'), unit: '' } },
        corrections: beside ? [
            { kind: 'declare', title: 'Add a 5-B extinguisher', beside, componentKind: 'extinguisher', idStem: 'X', facts: [['rating', 'b-5']] },
            { kind: 'declare', title: 'Add a 20-B extinguisher', beside, componentKind: 'extinguisher', idStem: 'X', facts: [['rating', 'b-20']] },
        ] : [],
        draft: {
            title: 'Too few fire extinguishers',
            urgency: 'before-departure',
            seen: `She measures {vessel.${lengthFact}}${fixed}. Portable fire extinguishers seen: ${have}${void_}.`,
            because: `A vessel of her length is to carry ${need}.`,
            recommend: `Add portable fire extinguishers so that she carries ${need}.`,
            cites: [['33 CFR 175', '175.320']],
        },
    };
}
