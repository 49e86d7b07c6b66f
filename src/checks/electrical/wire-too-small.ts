/** A wire that carries more than its table allows, or is under the least size. */
import { gaugeAreaM2, gaugeTitle, thinnestGauge } from '../../trade/conductor.js';
import { isoLeastAreaM2 } from '../../trade/iso-conductor.js';
import { flagOf, nameOf, ofKind, siOf, valueOf, type Quantity, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, computedBoth } from '../phrasing.js';
import { federalRule } from './reach.js';
import { allowedFor, bestInsulationC, insulationOf, isMetric, metricSize, purposeOf, sizeFor, sizeText, tableCites, tableText, wireConditions, type Allowed, type Wire } from './wires.js';

/** Share of the value from which the circuit is to stay out of use (practice). */
const urgentShare = 1.2;
/** A pigtail is under 7 in; lengths are recorded there and back. */
const pigtailM = 2 * 7 * 0.0254;

export const wireTooSmall = defineCheck({
    id: 'wire-too-small',
    group: 'electrical',
    severity: 'error',
    title: 'Wire is too small for its load, or under the least size',
    why: 'A wire that carries too much overheats in its bundle, and a thin one alone breaks.',
    needs: ['conductor: gauge', 'load, for its value', 'insulation, else 75 C is taken', 'in-engine-space', 'voltage and bundled, at 50 V and over', 'sheathed, for the least size'],
    computes: 'load > Table 5 value × factor for engine spaces (60 C 0.58, 75 C 0.75, 80 C 0.78, 90 C 0.82, 105 C 0.85, 125 C 0.89, 200 C 1) × factor for bundles at 50 V and over. A nominal metric size is judged by ISO 10133, Table A.1; any other as the next smaller gauge. Least size: 16 AWG alone, 18 AWG sheathed; metric 1 mm2 alone, 0.75 mm2 sheathed.',
    sources: [
        { text: 'allowable amperes by gauge and insulation; least sizes', standard: '33 CFR 183', clause: '183.425', provenance: 'published' },
        { text: 'factors for engine spaces and bundles, notes 1 and 2', standard: '33 CFR 183', clause: '183.425', provenance: 'memory' },
        { text: 'amperes of metric sizes and factors for engine spaces', standard: 'ISO 10133', clause: 'Table A.1', provenance: 'memory' },
        { text: '1 mm2 alone, 0.75 mm2 sheathed', standard: 'ISO 10133', provenance: 'published' },
        { text: 'out of use from 120 % of the value', provenance: 'practice' },
    ],
    limits: [
        'The rule binds builders of boats with gasoline engines; elsewhere it is named as good practice. It asks 16 AWG (1.31 mm2) of a single wire also where that is metric, which is judged by ISO alone here.',
        'Where the insulation is not recorded, 75 C is taken and said so: advice, unless even the best insulation could not carry the load.',
        'Cranking and ignition wires and pigtails under 7 in are left out, and electronics from the least size. Wires inside housings are taken as not recorded.',
        'A wire in a bundle of four or more is not judged by ISO, whose factors for bundles are not held, but as the next smaller gauge.',
        'Length and voltage lost are for voltage-drop.',
    ],
    examples: [{
        name: '62 A on 10 AWG of 105 C',
        bad: `vessel "Marram" { fuel: diesel }
conductor W1 "Windlass feed" { gauge: 10 AWG  insulation: 105 C  load: 62 A  in-engine-space: no }
`,
        fixed: `vessel "Marram" { fuel: diesel }
conductor W1 "Windlass feed" { gauge: 8 AWG  insulation: 105 C  load: 62 A  in-engine-space: no }
`,
        correction: 'Correct the size to 8 AWG',
    }, {
        name: '2.5 mm2 in an engine space',
        bad: `conductor W1 { gauge: 2.5 mm2  insulation: 70 C  load: 22 A  in-engine-space: yes }
`,
        fixed: `conductor W1 { gauge: 4 mm2  insulation: 70 C  load: 22 A  in-engine-space: yes }
`,
        correction: 'Correct the size to 4 mm2',
    }, {
        name: 'insulation not known',
        bad: `conductor W1 { gauge: 14 AWG  load: 24 A  in-engine-space: no }
`,
        fixed: `conductor W1 { gauge: 14 AWG  load: 24 A  in-engine-space: no  insulation: 105 C }
`,
        correction: 'Record its insulation as 105 C',
    }, {
        name: 'single wire of 18 AWG run alone',
        bad: `vessel "Marram" { fuel: gasoline }
conductor W1 "Cabin lamp" { gauge: 18 AWG  load: 3 A  length: 20 ft  sheathed: no  purpose: lighting }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
conductor W1 "Cabin lamp" { gauge: 16 AWG  load: 3 A  length: 20 ft  sheathed: no  purpose: lighting }
`,
        correction: 'Correct the size to 16 AWG',
    }],
    silent: [
        { name: '60 A on 10 AWG of 105 C', text: 'conductor W1 { gauge: 10 AWG  insulation: 105 C  load: 60 A  in-engine-space: no }\n' },
        { name: '18 AWG in a sheath', text: 'conductor W1 { gauge: 18 AWG  load: 3 A  sheathed: yes  purpose: lighting }\n' },
        { name: '2.5 mm2 outside engine spaces', text: 'conductor W1 { gauge: 2.5 mm2  insulation: 70 C  load: 22 A  in-engine-space: no }\n' },
        { name: 'load not recorded', text: 'conductor W1 { gauge: 10 AWG  insulation: 105 C }\n' },
        { name: 'cranking wire', text: 'conductor W1 { gauge: 2 AWG  insulation: 105 C  load: 400 A  purpose: cranking }\n' },
        { name: 'thin wire of navigation electronics', text: 'conductor W1 { gauge: 22 AWG  load: 0.2 A  sheathed: no  purpose: electronics }\n' },
        { name: 'pigtail of 18 AWG', text: 'conductor W1 { gauge: 18 AWG  load: 3 A  length: 10 in  sheathed: no  purpose: lighting }\n' },
    ],
    run(record, raise) {
        for (const wire of ofKind(record, 'conductor')) {
            const gauge = valueOf(wire, 'gauge');
            const purpose = purposeOf(record, wire);
            const isPigtail = (siOf(wire, 'length') ?? Infinity) < pigtailM - 1e-9;
            if (!gauge || purpose === 'cranking' || purpose === 'ignition' || isPigtail) {
                continue;
            }
            const problem = overloaded(record, wire, gauge) ?? (purpose === 'electronics' ? undefined : underLeast(record, wire, gauge, purpose));
            if (problem) {
                raise(problem);
            }
        }
    },
});

function overloaded(record: SurveyRecord, wire: Wire, gauge: Quantity): Raised | undefined {
    const load = valueOf(wire, 'load');
    const allowed = allowedFor(wire, gauge);
    if (!load || !allowed) {
        return undefined;
    }
    if (load.si > allowed.amperes + 1e-9) {
        const best = insulationOf(wire) === undefined ? allowedFor(wire, gauge, { insulationC: bestInsulationC }) : allowed;
        return overload(record, wire, gauge, load, allowed, best !== undefined && load.si > best.amperes + 1e-9);
    }
    const isPlaceOpen = insulationOf(wire) !== undefined && flagOf(wire, 'in-engine-space') === undefined;
    const inEngineSpace = isPlaceOpen ? allowedFor(wire, gauge, { isEngineSpace: true }) : undefined;
    return inEngineSpace && load.si > inEngineSpace.amperes + 1e-9 ? {
        components: [wire], at: wire.facts.get('load')?.span ?? wire.idSpan, severity: 'hint',
        message: `${nameOf(wire)} may carry ${computedBoth(inEngineSpace.amperes, 'current')} in an engine space and carries ${both(load)}; record whether it runs through one (in-engine-space).`,
    } : undefined;
}

function overload(record: SurveyRecord, wire: Wire, gauge: Quantity, load: Quantity, allowed: Allowed, isFault: boolean): Raised {
    const size = sizeFor(wire, load.si, allowed.isIso);
    const most = computedBoth(allowed.amperes, 'current');
    const table = tableText(record, allowed);
    const act = size ? `fit ${size} or take load off` : 'take load off, or run a second circuit';
    return {
        components: [wire],
        at: wire.facts.get('load')?.span ?? wire.idSpan,
        severity: isFault ? 'error' : 'warning',
        message: `${nameOf(wire)}, ${sizeText(gauge)}, carries ${both(load)}, where ${most} is the most by ${table} (${wireConditions(wire)}). It overheats in its bundle; ${act}.`,
        figures: { load: { value: load.si, unit: 'A' }, allowed: { value: allowed.amperes, unit: 'A' } },
        corrections: [
            ...(isFault ? [] : insulationCorrection(wire, gauge, load)),
            ...(size ? [{ kind: 'set-fact', title: `Correct the size to ${size}`, component: wire, property: 'gauge', value: size } as const] : []),
        ],
        draft: {
            title: `Wire ${wire.id} is too small for its load`,
            urgency: isFault && load.si > urgentShare * allowed.amperes + 1e-9 ? 'before-use' : 'in-upkeep',
            seen: `Wire ${wire.id} of {${wire.id}.gauge} carries {${wire.id}.load}, where ${most} is the most by ${table} (${wireConditions(wire)}).`,
            because: 'A wire that carries more than its value overheats, quickest in a bundle, and its insulation fails.',
            recommend: size ? `Renew ${wire.id} in ${size} with the fuse that fits it, or take load off it.` : `Take load off ${wire.id}, or run a second circuit.`,
            cites: tableCites(allowed),
        },
    };
}

/** 105 C is what most marine wire is marked; offered only where it settles the matter. */
function insulationCorrection(wire: Wire, gauge: Quantity, load: Quantity): Correction[] {
    const at105 = allowedFor(wire, gauge, { insulationC: 105 });
    return at105 && load.si <= at105.amperes + 1e-9
        ? [{ kind: 'set-fact', title: 'Record its insulation as 105 C', component: wire, property: 'insulation', value: '105 C' }] : [];
}

function underLeast(record: SurveyRecord, wire: Wire, gauge: Quantity, purpose: string | undefined): Raised | undefined {
    const isSheathed = flagOf(wire, 'sheathed');
    const load = siOf(wire, 'load');
    const isUnder = (sheathed: boolean) => gauge.si < (isMetric(gauge) ? isoLeastAreaM2(sheathed) : gaugeAreaM2(thinnestGauge(sheathed))) * (1 - 1e-6);
    // Thin wires of electronics under 1 A are exempt, so the purpose of a light load must be known.
    const mayBeElectronic = purpose === undefined && (load ?? 0) < 1;
    if (!isUnder(isSheathed ?? false)) {
        return undefined;
    }
    if (mayBeElectronic || (isSheathed === undefined && !isUnder(true))) {
        return mayBeElectronic && isSheathed === undefined ? undefined : {
            components: [wire], at: wire.facts.get('gauge')?.span ?? wire.idSpan, severity: 'hint',
            message: mayBeElectronic ? `${nameOf(wire)} is ${sizeText(gauge)}, under the least size unless it feeds electronics; record its purpose.`
                : `${nameOf(wire)} is ${sizeText(gauge)}, under the least size unless it lies in a sheath; record whether it is sheathed.`,
        };
    }
    return thin(record, wire, gauge, isSheathed ?? false, isUnder(true));
}

function thin(record: SurveyRecord, wire: Wire, gauge: Quantity, isSheathed: boolean, isUnderSheathed: boolean): Raised {
    const least = isMetric(gauge) ? metricSize(isoLeastAreaM2(isSheathed)) : gaugeTitle(thinnestGauge(isSheathed));
    const rule = isMetric(gauge) ? 'ISO 10133' : federalRule(record, '183.425');
    const how = isSheathed ? 'in a sheath' : 'by itself';
    const assumed = wire.facts.has('sheathed') ? '' : ' Even a sheath would not allow it.';
    return {
        components: [wire],
        at: wire.facts.get('gauge')?.span ?? wire.idSpan,
        message: `${nameOf(wire)} is ${sizeText(gauge)}, where ${least} is the least for a wire ${how}, by ${rule}.${assumed} So thin a wire breaks by its own weight and at its ends; renew it in ${least} or more.`,
        figures: { area: { value: gauge.si * 1e6, unit: 'mm2' } },
        corrections: [
            { kind: 'set-fact', title: `Correct the size to ${least}`, component: wire, property: 'gauge', value: least },
            ...(isSheathed || isUnderSheathed ? [] : [{ kind: 'set-fact', title: 'Record it as sheathed', component: wire, property: 'sheathed', value: 'yes' } as const]),
        ],
        draft: {
            title: `Wire ${wire.id} is under the least size`,
            urgency: 'in-upkeep',
            seen: `Wire ${wire.id} is {${wire.id}.gauge}; ${least} is the least for a wire ${how}, by ${rule}.`,
            because: 'So thin a wire is broken by vibration and by its own weight where it is held.',
            recommend: isSheathed || isUnderSheathed ? `Renew ${wire.id} in ${least} or more.` : `Renew ${wire.id} in ${least} or more, or run it in a sheath.`,
            cites: isMetric(gauge) ? [['ISO 10133']] : [['33 CFR 183', '183.425']],
        },
    };
}
