/** A shore inlet or cord that has been too hot, or is loaded so that it will be. */
import { formatQuantity } from '../../quantities/index.js';
import { isOverheated, loadShare, mostRiseK, riseK } from '../../trade/shore-power.js';
import { anyValue, flagOf, nameOf, ofKind, siOf, valueOf, yardstick, type Component, type Quantity, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, computedBoth } from '../phrasing.js';
import { systemVoltageOf } from './wires.js';

type Inlet = Component<'shore-inlet'>;
type Part = Inlet | Component<'shore-cord'>;

/** Voltage from which a wire is of shore power. */
const shoreV = 50;

export const inletOverheated = defineCheck({
    id: 'inlet-overheated',
    group: 'electrical',
    severity: 'error',
    title: 'Shore inlet or cord is overheated or overloaded',
    why: 'A poor contact at the inlet is the commonest start of a fire at the dock.',
    needs: ['shore-inlet or shore-cord: browned, warmed-to with air-beside, or temperature-rise as "40 F"', 'main-breaker and shore-cord: rating', 'shore-inlet: load, rating'],
    computes: 'A fault: browned or melted; more than 30 F (16.7 K) over the air under load; a main breaker rated over the cord. Advice: a steady load over 80 % of the inlet’s rating.',
    sources: [
        { text: 'browned contacts; 30 F over the air; 80 % for steady loads', provenance: 'practice' },
        { text: 'a breaker guards no cord of less than its rating', provenance: 'practice' },
    ],
    yardsticks: ['steady-shore-load'],
    limits: [
        'Where several main breakers or cords are recorded, only a breaker rated over every cord is judged.',
        'How long the load had been on when the temperature was read is not known to it.',
        'Loads that are not recorded are not in the sum.',
    ],
    examples: [{
        name: 'browned inlet',
        bad: `vessel "Marram" {}
shore-inlet SI1 { rating: 30 A  browned: yes  leakage-guarded: yes }
`,
        fixed: `vessel "Marram" {}
shore-inlet SI1 { rating: 30 A  browned: no  leakage-guarded: yes }
`,
    }, {
        name: 'end of the cord grown hot',
        bad: `shore-cord SC1 { rating: 30 A  warmed-to: 120 F  air-beside: 85 F }
`,
        fixed: `shore-cord SC1 { rating: 30 A  warmed-to: 110 F  air-beside: 85 F }
`,
    }, {
        name: 'breaker of 50 A on a cord of 30 A',
        bad: `shore-cord SC1 { rating: 30 A }
main-breaker MB1 { rating: 50 A }
`,
        fixed: `shore-cord SC1 { rating: 30 A }
main-breaker MB1 { rating: 30 A }
`,
        correction: 'Correct the rating of MB1 to 30 A',
    }, {
        name: '26 A on an inlet of 30 A',
        bad: `shore-inlet SI1 { rating: 30 A  load: 26 A  leakage-guarded: yes }
`,
        fixed: `shore-inlet SI1 { rating: 30 A  load: 22 A  leakage-guarded: yes }
`,
    }],
    silent: [
        { name: '24 A on an inlet of 30 A', text: 'shore-inlet SI1 { rating: 30 A  load: 24 A  leakage-guarded: yes }\n' },
        { name: '30 F over the air', text: 'shore-inlet SI1 { warmed-to: 115 F  air-beside: 85 F  leakage-guarded: yes }\n' },
        { name: 'breaker no larger than the cord', text: 'shore-cord SC1 { rating: 50 A }\nmain-breaker MB1 { rating: 30 A }\n' },
        { name: 'one of two cords may be that of the larger breaker', text: 'shore-cord SC1 { rating: 30 A }\nshore-cord SC2 { rating: 50 A }\nmain-breaker MB1 { rating: 50 A }\n' },
        { name: 'rating not recorded', text: 'shore-inlet SI1 { load: 26 A  leakage-guarded: yes }\n' },
    ],
    run(record, raise) {
        for (const part of [...ofKind(record, 'shore-inlet'), ...ofKind(record, 'shore-cord')]) {
            const problem = heat(part);
            if (problem) {
                raise(problem);
            }
        }
        for (const problem of [...breakers(record), ...ofKind(record, 'shore-inlet').map(inlet => load(record, inlet))]) {
            if (problem) {
                raise(problem);
            }
        }
    },
});

const why = 'A poor contact heats itself the more, and is the commonest start of a fire at the dock';
const renew = 'renew the inlet and the end of the cord together';

/** A difference of temperatures, which has no zero of its own. */
const riseText = (k: number): string => `${(k * 1.8).toFixed(0)} F (${k.toFixed(1)} K)`;

/** A rise written as text, such as "40 F" or "22 C over the air": a difference, which has no zero. */
function statedRise(part: Part): { readonly k: number } | undefined {
    const [, figure, unit] = /^\W*(?:about |by )?(\d+(?:\.\d+)?)\s?(?:degrees |deg )?°?\s?([FCK])\b/i.exec(anyValue(part, 'temperature-rise')?.prose.text ?? '') ?? [];
    return figure && unit ? { k: Number(figure) / (unit.toUpperCase() === 'F' ? 1.8 : 1) } : undefined;
}

function heat(part: Part): Raised | undefined {
    const isBrowned = flagOf(part, 'browned') === true;
    const [hot, air] = [valueOf(part, 'warmed-to'), valueOf(part, 'air-beside')];
    const stated = statedRise(part);
    const rise = hot && air ? riseK({ hotK: hot.si, airK: air.si }) : stated?.k;
    const isHot = rise !== undefined && isOverheated(rise);
    if (!isBrowned && !isHot) {
        // A temperature alone, over what the warmest air allows, says something only with the air beside it.
        return hot && !air && isOverheated(riseK({ hotK: hot.si, airK: 303.15 })) ? {
            components: [part], at: part.facts.get('warmed-to')?.span ?? part.idSpan, severity: 'hint',
            message: `${nameOf(part)} warmed to ${both(hot)} under load; record the air beside it (air-beside) to tell whether it grew too hot.`,
        } : undefined;
    }
    const says = [...(isBrowned ? ['is browned or melted'] : []), ...(isHot ? [`grew ${riseText(rise)} warmer than the air under load, where ${riseText(mostRiseK)} is the most`] : [])].join(' and ');
    const seen = [...(isBrowned ? ['is browned or melted'] : []), ...(isHot ? [`${hot && air ? `warmed to {${part.id}.warmed-to} under load in air of {${part.id}.air-beside}` : `grew {${part.id}.temperature-rise} warmer than the air under load`}, where a rise of ${riseText(mostRiseK)} is the most`] : [])].join(' and ');
    return {
        components: [part],
        at: part.facts.get(isBrowned ? 'browned' : hot && air ? 'warmed-to' : 'temperature-rise')?.span ?? part.idSpan,
        message: `${nameOf(part)} ${says}. ${why}; ${renew}.`,
        ...(rise === undefined ? {} : { figures: { rise: { value: rise, unit: 'K' }, most: { value: mostRiseK, unit: 'K' } } }),
        draft: {
            title: `${part.kind === 'shore-inlet' ? 'Shore inlet' : 'Shore cord'} ${part.id} has been too hot`,
            urgency: 'before-use',
            seen: `${part.kind === 'shore-inlet' ? 'Shore inlet' : 'Shore cord'} ${part.id} ${seen}.`,
            because: `${why}.`,
            recommend: 'Leave the shore power unplugged. Renew the inlet and the end of the cord together, for one bad half spoils the other, and feel both again after an hour under load.',
        },
    };
}

function breakers(record: SurveyRecord): readonly Raised[] {
    const cords = ofKind(record, 'shore-cord');
    const ratings = cords.map(cord => valueOf(cord, 'rating'));
    const [largest] = ratings.filter((rating): rating is Quantity => rating !== undefined).sort((x, y) => y.si - x.si);
    const cord = cords[ratings.findIndex(rating => rating === largest)];
    if (!largest || !cord || ratings.includes(undefined)) {
        return [];
    }
    return ofKind(record, 'main-breaker').flatMap((breaker): Raised[] => {
        const rating = valueOf(breaker, 'rating');
        return rating && rating.si > largest.si + 1e-9 ? [{
            components: [breaker, cord],
            at: breaker.facts.get('rating')?.span ?? breaker.idSpan,
            message: `${nameOf(breaker)} is rated at ${both(rating)}, and ${nameOf(cord)} at ${both(largest)}. The cord and its ends overheat before the breaker opens; fit a breaker of no more than the cord’s rating.`,
            figures: { breaker: { value: rating.si, unit: 'A' }, cord: { value: largest.si, unit: 'A' } },
            related: [{ message: `${nameOf(cord)} is rated at ${both(largest)}`, span: cord.facts.get('rating')?.span ?? cord.idSpan }],
            corrections: [
                { kind: 'set-fact', title: `Correct the rating of ${breaker.id} to ${largest.figure.written}`, component: breaker, property: 'rating', value: largest.figure.written },
                { kind: 'set-fact', title: `Correct the rating of ${cord.id} to ${rating.figure.written}`, component: cord, property: 'rating', value: rating.figure.written },
            ],
            draft: {
                title: `Main breaker ${breaker.id} is larger than the shore cord`,
                urgency: 'before-use',
                seen: `Main breaker ${breaker.id} is rated at {${breaker.id}.rating}, shore cord ${cord.id} at {${cord.id}.rating}.`,
                because: `The cord and its ends overheat before the breaker opens. ${why}.`,
                recommend: `Fit a main breaker of no more than the rating of ${cord.id}, or a cord and inlet of the rating of ${breaker.id}.`,
            },
        }] : [];
    });
}

function load(record: SurveyRecord, inlet: Inlet): Raised | undefined {
    const rating = valueOf(inlet, 'rating');
    const steady = valueOf(inlet, 'load');
    const most = yardstick(record, 'steady-shore-load');
    if (!rating) {
        return undefined;
    }
    if (!steady) {
        return summed(record, inlet, rating, most.si);
    }
    const share = loadShare({ loadA: steady.si, ratingA: rating.si });
    if (share <= most.si + 1e-9) {
        return undefined;
    }
    const mostA = computedBoth(most.si * rating.si, 'current');
    const percent = formatQuantity(share, 'fraction', 'us');
    return {
        components: [inlet],
        at: inlet.facts.get('load')?.span ?? inlet.idSpan,
        severity: 'warning',
        message: `${nameOf(inlet)} of ${both(rating)} carries a steady ${both(steady)}, ${percent} of its rating, where ${mostA} (${most.written}, ${most.whose}) is the most. Its contacts grow hot and loosen; take load off it.`,
        figures: { load: { value: steady.si, unit: 'A' }, most: { value: most.si * rating.si, unit: 'A' } },
        draft: {
            title: `Shore inlet ${inlet.id} is loaded near its rating`,
            urgency: 'in-upkeep',
            seen: `Shore inlet ${inlet.id} of {${inlet.id}.rating} carries a steady {${inlet.id}.load}, ${percent} of its rating.`,
            because: `${mostA} (${most.written}, ${most.whose}) is the most for a steady load; with more the contacts grow hot and loosen.`,
            recommend: `Run fewer loads at a time on ${inlet.id}, or have a second inlet fitted.`,
        },
    };
}

/** With one inlet, the loads of all circuits of shore power are its own. */
function summed(record: SurveyRecord, inlet: Inlet, rating: Quantity, mostShare: number): Raised | undefined {
    const loads = ofKind(record, 'conductor').filter(wire => (systemVoltageOf(wire) ?? 0) >= shoreV).map(wire => siOf(wire, 'load') ?? 0);
    const sum = loads.reduce((total, one) => total + one, 0);
    return ofKind(record, 'shore-inlet').length === 1 && loadShare({ loadA: sum, ratingA: rating.si }) > mostShare + 1e-9 ? {
        components: [inlet], at: inlet.idSpan, severity: 'hint',
        message: `The loads recorded of circuits of shore power come to ${computedBoth(sum, 'current')}, near the ${both(rating)} of ${nameOf(inlet)} or over it; record the steady load on it.`,
        corrections: [{ kind: 'set-fact', title: `Record the sum of the loads, ${computedBoth(sum, 'current')}`, component: inlet, property: 'load', value: computedBoth(sum, 'current') }],
    } : undefined;
}
