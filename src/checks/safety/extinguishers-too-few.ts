/** Fewer portable extinguishers recorded than her length calls for. */
import { extinguishersNeeded } from '../../trade/extinguishers.js';
import { ofKind, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { listed, lengthBoth } from '../phrasing.js';
import { adding, isSaidAbsent } from './gear.js';
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
        'Where neither a portable extinguisher nor a fixed system is recorded, nothing is said, unless the survey says that none is aboard (absent "Fire extinguishers"): they may not have been looked for.',
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
        name: 'fixed system alone at 34 ft',
        bad: `vessel "Marram" { length-on-deck: 34 ft  fuel: diesel }
fixed-extinguisher FX1
`,
        fixed: `vessel "Marram" { length-on-deck: 34 ft  fuel: diesel }
fixed-extinguisher FX1
extinguisher X1 { rating: b-5 }
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
        { name: 'none at 25 ft with a fixed system', text: 'vessel "Marram" { length-on-deck: 25 ft  fuel: diesel }\nfixed-extinguisher FX1\n' },
        { name: 'none recorded', text: 'vessel "Marram" { length-on-deck: 42 ft  fuel: diesel }\n' },
        { name: 'no engine', text: 'vessel "Marram" { length-on-deck: 42 ft  fuel: none }\nextinguisher X1 { rating: b-5 }\n' },
    ],
    run(record, raise) {
        const lengthM = lengthForCarriageM(record);
        const bottles = bottlesOf(record);
        if (lengthM === undefined || (bottles.length === 0 && !isLookedFor(record)) || (record.vessel && wordOf(record.vessel, 'fuel') === 'none')) {
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
        if (bottles.length === 0 && lengthM < openBoatM && ofKind(record, 'outboard').length > 0) {
            const [outboard] = ofKind(record, 'outboard');
            if (outboard) {
                raise({ components: [outboard], at: outboard.idSpan, severity: 'hint', message: 'No fire extinguisher is aboard; under 26 ft an open outboard boat that can trap no vapor needs none. Record the extinguisher, or answer that she is such a boat.' });
            }
            return;
        }
        raise(problem(record, lengthM, ways, bottles));
    },
});

/** Length under which an open outboard boat may need none, m: 26 ft. */
const openBoatM = 26 * 0.3048;

/** Whether extinguishers were looked for although none is recorded: a fixed system is, or none is said to be aboard. */
function isLookedFor(record: SurveyRecord): boolean {
    return hasFixedSystem(record) || isSaidAbsent(record, /^(?!.*\bfixed\b).*\bextinguishers?\b/i);
}

type Way = { readonly b5: number; readonly b20: number };

const wayText = ({ b5, b20 }: Way) => listed([...(b20 > 0 ? [`${b20} of 20-B`] : []), ...(b5 > 0 ? [`${b5} of 5-B`] : [])]);

/** The fewest bottles of one rating that would do, where so many of it alone do. */
function adds(record: SurveyRecord, beside: Component | undefined, ways: readonly Way[], bottles: readonly Bottle[], counts: 'b5' | 'b20'): readonly Correction[] {
    const number = [1, 2, 3].find(count => ways.some(way => {
        const of = (kind: Bottle['counts']) => bottles.reduce((sum, bottle) => sum + (bottle.counts === kind ? bottle.count : 0), 0) + (kind === counts ? count : 0);
        return of('b20') >= way.b20 && of('b5') + of('b20') - way.b20 >= way.b5;
    }));
    const rating = counts === 'b5' ? '5-B' : '20-B';
    return number === undefined ? [] : [adding(record, beside, number === 1 ? `Add a ${rating} extinguisher` : `Add ${number} ${rating} extinguishers`, 'extinguisher', 'X', [
        ['rating', counts === 'b5' ? 'b-5' : 'b-20'], ...(number > 1 ? [['quantity', String(number)] as const] : []),
    ])];
}

function problem(record: SurveyRecord, lengthM: number, ways: readonly Way[], bottles: readonly Bottle[]): Raised {
    const count = (kind: Bottle['counts']) => bottles.reduce((sum, bottle) => sum + (bottle.counts === kind ? bottle.count : 0), 0);
    const have = listed([...(count('b20') > 0 ? [`${count('b20')} of 20-B`] : []), ...(count('b5') > 0 ? [`${count('b5')} of 5-B`] : [])]) || (bottles.length === 0 ? 'none' : 'none that counts');
    const void_ = count(undefined) > 0 ? `, and ${count(undefined)} whose marking does not count on her` : '';
    const fixed = hasFixedSystem(record) ? ' with a fixed system' : '';
    const need = ways.map(wayText).join(', or ');
    const fixedSystems = ofKind(record, 'fixed-extinguisher');
    const beside = bottles.at(-1)?.component ?? fixedSystems.at(-1);
    const said = record.unseen.find(({ absent, what }) => absent && /extinguisher/i.test(what));
    const lengthFact = record.vessel?.facts.has('length-on-deck') ? 'length-on-deck' : 'length-overall';
    return {
        components: bottles.length > 0 ? bottles.map(bottle => bottle.component) : fixedSystems,
        at: bottles[0]?.component.idSpan ?? said?.span ?? fixedSystems[0]?.idSpan ?? { uri: record.mainUri, start: 0, end: 0 },
        message: `At ${lengthBoth(lengthM)}${fixed} she is to carry ${need}; recorded are ${have}${void_}. What is not aboard puts out no fire; add what is missing.`,
        figures: { 'of 5-B': { value: count('b5'), unit: '' }, 'of 20-B': { value: count('b20'), unit: '' } },
        corrections: [
            ...adds(record, beside, ways, bottles, 'b5'),
            ...adds(record, beside, ways, bottles, 'b20'),
        ],
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
