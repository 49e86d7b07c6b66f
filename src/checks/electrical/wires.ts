/** What is recorded of wires, and the current they may carry by the table that fits the way their size is written. */
import { allowableCurrentA, assumedInsulationC, gaugeForCurrent, gaugeTitle, gaugeWithin, insulationClassC } from '../../trade/conductor.js';
import { isoAllowableCurrentA, isoAreaForCurrentM2 } from '../../trade/iso-conductor.js';
import { flagOf, isKind, siOf, valueOf, wordOf, type Component, type Quantity, type SurveyRecord } from '../../record/model.js';
import type { Draft } from '../contract.js';
import { both } from '../phrasing.js';
import { federalRule } from './reach.js';

export type Wire = Component<'conductor'>;

/** Best insulation of the tables: what even this cannot carry, no wire of the size can. */
export const bestInsulationC = 200;

/** Zero of the Celsius scale, K. */
const zeroC = 273.15;

/** Bundles from which ISO reduces a value by factors that are not held. */
const isoBundle = 4;

export interface Allowed {
    readonly amperes: number;
    readonly isIso: boolean;
}

export function isMetric(gauge: Quantity): boolean {
    return gauge.figure.unit !== 'AWG';
}

/** Rating of the insulation, C, where it is recorded. */
export function insulationOf(wire: Wire): number | undefined {
    const kelvin = siOf(wire, 'insulation');
    return kelvin === undefined ? undefined : kelvin - zeroC;
}

/** Nominal voltage of the circuit; a voltage measured at its source tells as much for the limit of 50 V. */
export function systemVoltageOf(wire: Wire): number | undefined {
    return siOf(wire, 'voltage') ?? siOf(wire, 'source-voltage');
}

/** Current a wire may carry with the facts recorded; those given here stand for facts that are not. */
export function allowedFor(wire: Wire, gauge: Quantity, assumed: { readonly insulationC?: number; readonly isEngineSpace?: boolean } = {}): Allowed | undefined {
    const insulationC = insulationOf(wire) ?? assumed.insulationC ?? assumedInsulationC;
    const isEngineSpace = flagOf(wire, 'in-engine-space') ?? assumed.isEngineSpace ?? false;
    const bundled = siOf(wire, 'bundled') ?? 1;
    const iso = isMetric(gauge) && bundled < isoBundle ? isoAllowableCurrentA({ areaM2: gauge.si, insulationC, isEngineSpace }) : undefined;
    if (iso !== undefined) {
        return { amperes: iso, isIso: true };
    }
    const rated = insulationClassC(insulationC);
    const amperes = rated === undefined ? undefined
        : allowableCurrentA({ areaM2: gauge.si, insulationC: rated, isEngineSpace, bundled, systemV: systemVoltageOf(wire) ?? 12 });
    return amperes === undefined ? undefined : { amperes, isIso: false };
}

/** The thinnest size, as it is written, that may carry a current where this wire runs. */
export function sizeFor(wire: Wire, currentA: number, isIso: boolean): string | undefined {
    const insulationC = insulationOf(wire) ?? assumedInsulationC;
    const isEngineSpace = flagOf(wire, 'in-engine-space') ?? false;
    if (isIso) {
        const areaM2 = isoAreaForCurrentM2(currentA, { insulationC, isEngineSpace });
        return areaM2 === undefined ? undefined : metricSize(areaM2);
    }
    const rated = insulationClassC(insulationC);
    const gauge = rated === undefined ? undefined
        : gaugeForCurrent(currentA, { insulationC: rated, isEngineSpace, bundled: siOf(wire, 'bundled') ?? 1, systemV: systemVoltageOf(wire) ?? 12 });
    return gauge === undefined ? undefined : gaugeTitle(gauge);
}

export function metricSize(areaM2: number): string {
    return `${Math.round(areaM2 * 1e8) / 100} mm2`;
}

/** A size in a sentence: a gauge with its area, an area with the gauge next under it. */
export function sizeText(gauge: Quantity): string {
    if (!isMetric(gauge)) {
        return both(gauge);
    }
    const under = gaugeWithin(gauge.si);
    return under === undefined ? `${gauge.figure.written} (under 18 AWG)` : `${gauge.figure.written} (next smaller gauge: ${gaugeTitle(under)})`;
}

/** The table a value is from, to follow "by". */
export function tableText(record: SurveyRecord, { isIso }: Allowed): string {
    return isIso ? 'ISO 10133, Table A.1' : `${federalRule(record, '183.425')}, Table 5`;
}

export function tableCites({ isIso }: Allowed): NonNullable<Draft['cites']> {
    return isIso ? [['ISO 10133', 'Table A.1']] : [['33 CFR 183', '183.425']];
}

/** Insulation and place of a wire, as far as its value hangs on them. */
export function wireConditions(wire: Wire): string {
    const insulation = valueOf(wire, 'insulation');
    const rated = insulation ? `insulation of ${both(insulation)}` : `insulation taken as ${assumedInsulationC} C, for its rating is not recorded`;
    return flagOf(wire, 'in-engine-space') === true ? `${rated}, in an engine space` : rated;
}

const purposesByKind = [
    ['bilge-pump', 'bilge-pump'], ['blower', 'blower'], ['navigation-light', 'navigation-light'], ['panel', 'panel-feed'], ['instrument', 'electronics'], ['vhf', 'electronics'],
] as const;

/** Words in the name of a circuit that tell its purpose; the first that fits counts. */
const purposesByWord: readonly (readonly [RegExp, string])[] = [
    [/\b(start(er|ing)?|crank(ing)?)\b/i, 'cranking'], [/\bignition\b/i, 'ignition'], [/\bbilge[ -]pumps?\b/i, 'bilge-pump'], [/\bblowers?\b/i, 'blower'],
    [/\b(nav(igation)?|masthead|steaming|side|stern|running)[ -]?lights?\b/i, 'navigation-light'],
    [/\b(vhf|radio|plotter|radar|instruments|electronics|sounder|autopilot|ais)\b/i, 'electronics'], [/\b(solar|alternator|charger|charging)\b/i, 'charging'],
    [/\b(switch|distribution|breaker|fuse) ?panel\b|\bpanel feed\b|\bfeed (of|to) (the )?panel\b/i, 'panel-feed'],
    [/\b(windlass|winch|thruster|inverter|fridge|refrigerat\w*|freezer|heater|furnace|horn|wipers?|watermaker|toilet|macerator|pump|sump)\b/i, 'power'],
    [/\b(lights?|lamps?|lighting)\b/i, 'lighting'],
];

/** What a circuit carries current for, by what it is called. */
export function purposeByWords(text: string): string | undefined {
    return purposesByWord.find(([words]) => words.test(text))?.[1];
}

/** What a wire carries current for: as recorded, else by the kind of what it serves, else by what it feeds or is called. */
export function purposeOf(record: SurveyRecord, wire: Wire): string | undefined {
    const served = record.components.get(valueOf(wire, 'serves')?.id ?? '');
    return wordOf(wire, 'purpose') ?? (served && purposesByKind.find(([kind]) => isKind(record, served, kind))?.[1])
        ?? purposeByWords(valueOf(wire, 'feeds')?.prose.text ?? '') ?? purposeByWords(wire.title ?? '');
}
