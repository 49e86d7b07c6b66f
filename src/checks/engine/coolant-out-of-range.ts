/** Engine coolant too weak, too strong, not proof against the frost expected, past its term, or read with an instrument that cannot read it. */
import { nameOf, ofKind, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type ProblemFigure, type Raised } from '../contract.js';
import { both } from '../phrasing.js';
import {
    ageFaults, coldestExpected, freezingPointsK, frostFaults, frostMarginK, shareFaults, temperatureBoth, voidReading, yearsSinceChange, type Fault,
} from './coolant-faults.js';
import { mixFigures, mixText, remedyText } from './coolant-mix.js';
import { measured } from '../../record/trial-runs.js';

export const coolantOutOfRange = defineCheck({
    id: 'coolant-out-of-range',
    group: 'engine',
    severity: 'error',
    title: 'Coolant is out of range',
    why: 'A thin mix rusts and freezes, a thick one cools badly and, past about 68 %, freezes sooner again.',
    needs: [
        'coolant: glycol (share by volume) or freeze-point', 'glycol-kind, instrument', 'maker-low and maker-high, where the maker names a band',
        'vessel or survey: coldest-expected', 'inhibitor or makers-term, changed and the date she was attended', 'volume, short-by and added, for what to drain and fill', 'cap-pressure, for boiling under the cap',
    ],
    computes: 'A fault where the share of glycol is under 30 % or over 60 % (or outside the maker’s band), advice from 30 to 40 %; over about 80 % flushing is recommended, for silicates drop out as gel. A fault where the freezing point, recorded or computed from share and kind, is above the coldest temperature expected less 5 K; where a hydrometer has read propylene glycol; where kinds are mixed or the coolant is past its term. Freezing and boiling points of the mix are computed. To exchange: V × (target − now) ÷ (added − now); to top up: V × target − now × (V − short), in glycol.',
    sources: [
        { text: '40 to 60 %, never under 30 nor over 60 for fear of gel', provenance: 'published' },
        { text: 'freezing points of ethylene and propylene glycol in water, volume share, to 60 %', provenance: 'computed' },
        { text: 'freezing points of ethylene glycol past 60 %', provenance: 'published' },
        { text: 'boiling points', provenance: 'memory' },
        { text: 'flushing over 80 %; 5 K under the coldest expected', provenance: 'chosen' },
        { text: 'terms: 2 years plain, 5 years organic', provenance: 'practice' },
    ],
    yardsticks: ['glycol-least', 'glycol-working', 'glycol-most'],
    limits: [
        'Freezing points agree between sources to 2 or 3 K, boiling points to 2 K.',
        'Freezing points of propylene glycol are tabulated to 60 %; past that they are only known to be lower, and it is said.',
        'Where the kind of glycol is not recorded, frost is judged only if both kinds give the same answer.',
        'Without the coldest temperature expected, a freezing point is judged only as a sign of a thin mix, by the share that freezes there.',
        'Where the inhibitors are not recorded, only five years, the longest usual term, are judged.',
        'Whether gel has formed is not known to it: it recommends to look. Coolant with organic inhibitors holds no silicates.',
    ],
    examples: [{
        name: 'weak mix',
        bad: `vessel "Marram" {}
engine E1
coolant C1 { glycol: 25 %  glycol-kind: ethylene  instrument: refractometer  volume: 12 L }
`,
        fixed: `vessel "Marram" {}
engine E1
coolant C1 { glycol: 50 %  glycol-kind: ethylene  instrument: refractometer  volume: 12 L }
`,
    }, {
        name: 'too strong',
        bad: `vessel "Marram" { coldest-expected: -10 C }
coolant C1 { glycol: 75 %  glycol-kind: ethylene  instrument: refractometer }
`,
        fixed: `vessel "Marram" { coldest-expected: -10 C }
coolant C1 { glycol: 50 %  glycol-kind: ethylene  instrument: refractometer }
`,
    }, {
        name: 'so strong that silicates drop out',
        bad: `vessel "Marram" { coldest-expected: -10 C }
coolant C1 { glycol: 88 %  glycol-kind: ethylene  inhibitor: hybrid  volume: 12 L }
`,
        fixed: `vessel "Marram" { coldest-expected: -10 C }
coolant C1 { glycol: 50 %  glycol-kind: ethylene  inhibitor: hybrid  volume: 12 L }
`,
    }, {
        name: 'weak, and short of full',
        bad: `coolant C1 { glycol: 28 %  glycol-kind: propylene  volume: 12 L  short-by: 4 L }
`,
        fixed: `coolant C1 { glycol: 48 %  glycol-kind: propylene  volume: 12 L  short-by: 0 L }
`,
    }, {
        name: 'not proof against the frost expected',
        bad: `vessel "Marram" { coldest-expected: -25 C }
coolant C1 { glycol: 42 %  glycol-kind: propylene  instrument: refractometer }
`,
        fixed: `vessel "Marram" { coldest-expected: -25 C }
coolant C1 { glycol: 50 %  glycol-kind: propylene  instrument: refractometer }
`,
    }, {
        name: 'propylene glycol read with a hydrometer',
        bad: `coolant C1 { glycol: 50 %  glycol-kind: propylene  instrument: hydrometer }
`,
        fixed: `coolant C1 { glycol: 50 %  glycol-kind: propylene  instrument: refractometer }
`,
        correction: 'Record C1 as read again with a refractometer',
    }, {
        name: 'Celsius typed for Fahrenheit',
        bad: `vessel "Marram" { coldest-expected: -20 C }
coolant C1 { glycol: 42 %  glycol-kind: ethylene  freeze-point: -16 C }
`,
        fixed: `vessel "Marram" { coldest-expected: -20 C }
coolant C1 { glycol: 42 %  glycol-kind: ethylene  freeze-point: -16 F }
`,
        correction: 'Read -16 C as -16 F',
    }],
    silent: [
        { name: 'half and half', text: 'vessel "Marram" { coldest-expected: -20 C }\ncoolant C1 { glycol: 50 %  glycol-kind: ethylene }\n' },
        { name: '35 %, within the band of its maker', text: 'vessel "Marram" { coldest-expected: 0 C }\ncoolant C1 { glycol: 35 %  glycol-kind: ethylene  maker-low: 33 %  maker-high: 50 % }\n' },
        { name: 'firm that allows 25 to 70 %', text: 'yardsticks { glycol-least: 20 %  glycol-working: 25 %  glycol-most: 70 % }\ncoolant C1 { glycol: 65 %  glycol-kind: ethylene }\ncoolant C2 { glycol: 26 %  glycol-kind: ethylene }\n' },
        { name: 'six years old, and its maker lets it stay ten', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\ncoolant C1 { glycol: 50 %  inhibitor: organic  changed: 2020-05  makers-term: 10 years }\n' },
        { name: 'kind not recorded, and it would not matter', text: 'vessel "Marram" { coldest-expected: -10 C }\ncoolant C1 { glycol: 50 % }\n' },
        { name: 'nothing measured', text: 'coolant C1 { glycol-kind: ethylene }\n' },
    ],
    run(record, raise) {
        for (const coolant of ofKind(record, 'coolant')) {
            // Where the instrument cannot have read the mix, nothing else is read from its figures.
            const unread = voidReading(coolant);
            const faults = [...(unread ?? [...frostFaults(record, coolant), ...shareFaults(record, coolant)]), ...ageFaults(record, coolant)];
            if (faults.length > 0) {
                raise(problem(coolant, faults, unread !== undefined));
            } else {
                const question = ask(record, coolant);
                if (question) {
                    raise(question);
                }
            }
        }
    },
});

function problem(coolant: Component, faults: readonly Fault[], isVoid: boolean): Raised {
    const isFrost = faults.some(fault => fault.isFrost);
    const severity = faults.some(fault => fault.severity === 'error') ? 'error' : 'warning';
    const remedy = remedyText(coolant, faults);
    const because = [...new Set(faults.map(fault => fault.because))];
    // Frost tells the freezing point already; a reading that is void tells nothing.
    const mix = isVoid ? '' : mixText(coolant, !isFrost && !coolant.facts.has('freeze-point'));
    return {
        components: [coolant],
        at: faults[0]?.fact?.span ?? coolant.idSpan,
        severity,
        message: `${nameOf(coolant)} ${faults.map(fault => fault.what).join('; it ')}.${mix} ${because[0] ?? ''} ${sentence(remedy)}`,
        figures: Object.assign({}, isVoid ? {} : mixFigures(coolant), ...faults.map(fault => fault.figures ?? {})) as Record<string, ProblemFigure>, // Each is such a record.
        corrections: faults.flatMap(fault => fault.corrections ?? []),
        draft: {
            title: isFrost ? `Coolant ${coolant.id} is not proof against the frost expected` : `Coolant ${coolant.id} is out of range`,
            ...(isFrost ? { urgency: 'within-days' as const, days: 30 } : { urgency: 'in-upkeep' as const }),
            seen: `Coolant ${coolant.id} ${faults.map(fault => fault.seen).join('; it ')}.${mix}`,
            because: because.join(' '),
            recommend: `For coolant ${coolant.id}: ${remedy}.`,
        },
    };
}

function sentence(text: string): string {
    return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function ask(record: SurveyRecord, coolant: Component<'coolant'>): Raised | undefined {
    if (wordOf(coolant, 'instrument') === 'hydrometer' && !['ethylene', 'propylene', 'mixed'].includes(wordOf(coolant, 'glycol-kind') ?? '')) {
        return {
            components: [coolant], at: coolant.facts.get('instrument')?.span ?? coolant.idSpan, severity: 'hint',
            message: `${nameOf(coolant)} was read with a hydrometer; record its glycol-kind, for a hydrometer cannot read propylene glycol.`,
        };
    }
    const coldest = coldestExpected(record);
    const recorded = measured(coolant, 'freeze-point');
    if (recorded && !coldest) {
        return {
            components: [coolant], at: recorded.fact.span, severity: 'hint',
            message: `${nameOf(coolant)} freezes at ${both(recorded.quantity)}; record coldest-expected of the vessel to tell whether that is enough.`,
        };
    }
    const points = freezingPointsK(coolant);
    const glycol = coolant.facts.get('glycol');
    if (coldest && glycol && points.length > 1 && points.some(point => point > coldest.quantity.si - frostMarginK)) {
        return {
            components: [coolant], at: glycol.span, severity: 'hint',
            message: `${nameOf(coolant)} of ${glycol.written} freezes at about ${points.map(temperatureBoth).join(' as ethylene glycol and ')} as propylene glycol, and ${both(coldest.quantity)} is expected; record glycol-kind to tell whether that is enough.`,
        };
    }
    const age = yearsSinceChange(record, coolant);
    const changed = coolant.facts.get('changed');
    const inhibitor = wordOf(coolant, 'inhibitor');
    if (changed && age !== undefined && age > 2 && !coolant.facts.has('makers-term') && (inhibitor === undefined || inhibitor === 'unknown')) {
        return {
            components: [coolant], at: changed.span, severity: 'hint',
            message: `${nameOf(coolant)} was last changed in ${changed.written}; record its inhibitor to tell whether it is past its term, 2 years plain or 5 organic.`,
        };
    }
    return undefined;
}
