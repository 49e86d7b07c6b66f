/** A fuse or breaker that lets through more than the wire behind it may carry. */
import { overcurrentLimitA, standardRatingWithin } from '../../trade/overcurrent.js';
import { flagOf, nameOf, siOf, valueOf, type Quantity, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, computedBoth } from '../phrasing.js';
import { guardTitle, guardedVoltage, guardedWire, guardsBefore, guardsOf, type Guard } from './guards.js';
import { federalRule } from './reach.js';
import { allowedFor, bestInsulationC, insulationOf, sizeText, tableCites, tableText, wireConditions, type Allowed, type Wire } from './wires.js';

/** Voltage from which a fuse may not exceed the value of its wire. */
const highV = 50;

export const fuseTooBig = defineCheck({
    id: 'fuse-too-big',
    group: 'electrical',
    severity: 'error',
    title: 'Fuse or breaker is too big for its wire',
    why: 'In a short circuit the wire becomes the fuse.',
    needs: ['fuse or breaker: rating, protects', 'conductor: gauge', 'insulation, else 75 C is taken', 'voltage, where the rating is over the value of the wire', 'in-engine-space'],
    computes: 'Under 50 V: rating > 150 % of what the wire may carry. At 50 V and over: rating > its value, or > the next standard rating where that is within 150 %. What a wire may carry is as for wire-too-small.',
    sources: [
        { text: '150 % under 50 V; the value or the next standard rating at 50 V and over', standard: '33 CFR 183', clause: '183.455', provenance: 'published' },
        { text: 'allowable amperes', standard: '33 CFR 183', clause: '183.425', provenance: 'published' },
        { text: 'standard ratings; factors for engine spaces and bundles; amperes of metric sizes', provenance: 'memory' },
    ],
    limits: [
        'The rule binds builders of boats with gasoline engines; elsewhere it is named as good practice. Its share of the value is used with metric sizes too.',
        'Where the insulation is not recorded, 75 C is taken and said so: advice, unless the rating is too big for the best insulation also.',
        'Where the voltage is not recorded the wider limit is used. A main breaker is taken to be of shore power.',
        'Cranking wires are left out, and a wire that a fitting fuse guards no farther from the source.',
    ],
    examples: [{
        name: '35 A on 14 AWG of 75 C at 12 V',
        bad: `vessel "Marram" { fuel: gasoline }
conductor W1 "Windlass switch" { gauge: 14 AWG  insulation: 75 C  voltage: 12 V  in-engine-space: no }
fuse FU1 { rating: 35 A  protects: W1 }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
conductor W1 "Windlass switch" { gauge: 14 AWG  insulation: 75 C  voltage: 12 V  in-engine-space: no }
fuse FU1 { rating: 30 A  protects: W1 }
`,
        correction: 'Correct the rating to 30 A',
    }, {
        name: '30 A breaker on 12 AWG at 120 V',
        bad: `conductor W1 { gauge: 12 AWG  insulation: 60 C  voltage: 120 V  in-engine-space: no }
breaker CB1 { rating: 30 A  protects: W1 }
`,
        fixed: `conductor W1 { gauge: 12 AWG  insulation: 60 C  voltage: 120 V  in-engine-space: no }
breaker CB1 { rating: 25 A  protects: W1 }
`,
        correction: 'Correct the rating to 25 A',
    }, {
        name: 'insulation not known',
        bad: `conductor W1 { gauge: 14 AWG  voltage: 12 V  in-engine-space: no }
fuse FU1 { rating: 40 A  protects: W1 }
`,
        fixed: `conductor W1 { gauge: 14 AWG  voltage: 12 V  in-engine-space: no  insulation: 105 C }
fuse FU1 { rating: 40 A  protects: W1 }
`,
        correction: 'Record the insulation of W1 as 105 C',
    }],
    silent: [
        { name: '30 A on 14 AWG of 75 C at 12 V', text: 'conductor W1 { gauge: 14 AWG  insulation: 75 C  voltage: 12 V  in-engine-space: no }\nfuse FU1 { rating: 30 A  protects: W1 }\n' },
        { name: 'next standard rating at 120 V', text: 'conductor W1 { gauge: 8 AWG  insulation: 60 C  voltage: 120 V  in-engine-space: no }\nbreaker CB1 { rating: 60 A  protects: W1 }\n' },
        { name: 'wire not named', text: 'conductor W1 { gauge: 14 AWG  insulation: 75 C  voltage: 12 V }\nfuse FU1 { rating: 35 A }\n' },
        { name: 'a smaller fuse nearer the source', text: 'conductor W1 { gauge: 14 AWG  insulation: 75 C  voltage: 12 V  in-engine-space: no }\nfuse FU1 { rating: 15 A  protects: W1  distance: 4 in }\nfuse FU2 { rating: 35 A  protects: W1  distance: 20 ft  sheathed-to-fuse: yes  source: charger }\n' },
        { name: 'cranking wire', text: 'conductor W1 { gauge: 2 AWG  insulation: 105 C  voltage: 12 V  purpose: cranking }\nfuse FU1 { rating: 400 A  protects: W1 }\n' },
    ],
    run(record, raise) {
        for (const guard of guardsOf(record)) {
            const wire = guardedWire(record, guard);
            const rating = valueOf(guard, 'rating');
            const gauge = wire && valueOf(wire, 'gauge');
            if (wire && rating && gauge && !guardsBefore(record, guard, wire).some(other => fits(record, other, wire, gauge))) {
                const problem = judge(record, { guard, wire, rating, gauge });
                if (problem) {
                    raise(problem);
                }
            }
        }
    },
});

interface Pair {
    readonly guard: Guard;
    readonly wire: Wire;
    readonly rating: Quantity;
    readonly gauge: Quantity;
}

/** Largest rating for a wire; where its voltage is not known that of a low one, which is wider. */
const limitFor = (allowed: Allowed, systemV: number | undefined): number => overcurrentLimitA({ allowableA: allowed.amperes, systemV: systemV ?? 12 });

function fits(record: SurveyRecord, guard: Guard, wire: Wire, gauge: Quantity): boolean {
    const rating = siOf(guard, 'rating');
    const allowed = allowedFor(wire, gauge);
    return rating !== undefined && allowed !== undefined && rating <= limitFor(allowed, guardedVoltage(record, guard, wire)) + 1e-9;
}

function judge(record: SurveyRecord, pair: Pair): Raised | undefined {
    const { guard, wire, rating, gauge } = pair;
    const allowed = allowedFor(wire, gauge);
    const systemV = guardedVoltage(record, guard, wire);
    if (!allowed) {
        return undefined;
    }
    const isOver = (value: Allowed | undefined, volts = systemV): boolean => value !== undefined && rating.si > limitFor(value, volts) + 1e-9;
    const isInsulationKnown = insulationOf(wire) !== undefined;
    if (isOver(allowed)) {
        return problem(record, pair, allowed, systemV, isInsulationKnown || isOver(allowedFor(wire, gauge, { insulationC: bestInsulationC })));
    }
    const missing = !isInsulationKnown ? undefined
        : systemV === undefined && isOver(allowed, highV) ? `the voltage of ${wire.id}`
            : systemV !== undefined && flagOf(wire, 'in-engine-space') === undefined && isOver(allowedFor(wire, gauge, { isEngineSpace: true })) ? `whether ${wire.id} runs through an engine space (in-engine-space)` : undefined;
    return missing === undefined ? undefined : {
        components: [guard, wire], at: guard.facts.get('rating')?.span ?? guard.idSpan, severity: 'hint',
        message: `${nameOf(guard)} of ${both(rating)} guards ${nameOf(wire)}, which may carry ${computedBoth(allowed.amperes, 'current')}; record ${missing} to tell whether it is too big.`,
    };
}

function problem(record: SurveyRecord, { guard, wire, rating, gauge }: Pair, allowed: Allowed, systemV: number | undefined, isFault: boolean): Raised {
    const limitA = limitFor(allowed, systemV);
    const proposed = `${standardRatingWithin(limitA) ?? Math.floor(limitA + 1e-9)} A`;
    const limit = computedBoth(limitA, 'current');
    const value = `${computedBoth(allowed.amperes, 'current')} by ${tableText(record, allowed)} (${wireConditions(wire)})`;
    const share = (systemV ?? 0) >= highV ? 'its value or the next standard rating' : '150 % of it';
    const rule = `${limit}, ${share}, is the most by ${federalRule(record, '183.455')}`;
    const at105 = isFault ? undefined : allowedFor(wire, gauge, { insulationC: 105 });
    const title = guardTitle(record, guard);
    return {
        components: [guard, wire],
        at: guard.facts.get('rating')?.span ?? guard.idSpan,
        severity: isFault ? 'error' : 'warning',
        message: `${nameOf(guard)} of ${both(rating)} guards ${nameOf(wire)}, ${sizeText(gauge)}, which may carry ${value}; ${rule}. In a short circuit the wire becomes the fuse; fit ${proposed} or less.`,
        figures: { rating: { value: rating.si, unit: 'A' }, limit: { value: limitA, unit: 'A' }, allowed: { value: allowed.amperes, unit: 'A' } },
        related: [{ message: `${nameOf(wire)} is ${sizeText(gauge)}`, span: wire.facts.get('gauge')?.span ?? wire.idSpan }],
        corrections: [
            { kind: 'set-fact', title: `Correct the rating to ${proposed}`, component: guard, property: 'rating', value: proposed },
            ...(at105 && rating.si <= limitFor(at105, systemV) + 1e-9
                ? [{ kind: 'set-fact', title: `Record the insulation of ${wire.id} as 105 C`, component: wire, property: 'insulation', value: '105 C' } as const] : []),
        ],
        draft: {
            title: `${title} ${guard.id} is too big for its wire`,
            urgency: isFault ? 'before-use' : 'in-upkeep',
            seen: `${title} ${guard.id} is rated at {${guard.id}.rating} and guards wire ${wire.id} of {${wire.id}.gauge}, which may carry ${value}.`,
            because: `${rule}. With more the wire overheats before the ${title.toLowerCase()} opens.`,
            recommend: `Fit ${proposed} or less in the place of ${guard.id}, or renew ${wire.id} in a larger size.`,
            cites: [['33 CFR 183', '183.455'], ...tableCites(allowed)],
        },
    };
}
