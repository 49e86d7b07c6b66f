/** A circuit that loses more of its voltage along the wire than its use allows. */
import { allowedDropShare, areaForDropM2, gaugeFor, gaugeTitle, type Circuit } from '../../trade/conductor.js';
import { isoAreasM2 } from '../../trade/iso-conductor.js';
import { flagOf, nameOf, ofKind, siOf, valueOf, type SurveyRecord } from '../../record/model.js';
import { significant } from '../../quantities/index.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';
import { both, computedBoth } from '../phrasing.js';
import { computed, dropShare, dropsOf, type Drop } from './drops.js';
import { isMetric, metricSize, purposeByWords, purposeOf, systemVoltageOf } from './wires.js';

/** Uses that are to lose no more than 3 %. */
const critical: ReadonlySet<string> = new Set(['panel-feed', 'bilge-pump', 'blower', 'navigation-light', 'electronics']);

const percent = (share: number): string => `${significant(share * 100, 2)} %`;

export const voltageDrop = defineCheck({
    id: 'voltage-drop',
    group: 'electrical',
    severity: 'error',
    title: 'Circuit loses too much voltage',
    why: 'A pump runs slow, and a lamp falls short of its range.',
    needs: ['conductor: source-voltage and load-voltage under load, or a table of voltage-drop', 'or load, length, gauge and voltage', 'purpose, or what it serves'],
    computes: 'Share lost = (source − load) / source as measured; else E = 10.75 × A × ft / CM (there and back) over the nominal voltage. More than 3 % for panel feeds, bilge pumps, blowers, navigation lights and electronics; more than 10 % for the rest.',
    sources: [
        { text: '3 % and 10 %', standard: 'ABYC E-11', provenance: 'secondary' },
        { text: '3 % for panel feeds, navigation lights, blowers and bilge pumps', standard: 'ISO 10133', provenance: 'published' },
        { text: '10 % for the rest', standard: 'ISO 13297', provenance: 'memory' },
        { text: 'K = 10.75 ohm circular mils a foot', standard: 'ABYC E-11', provenance: 'memory' },
        { text: 'voltage lost by load, length and size', provenance: 'computed' },
    ],
    limits: [
        'The computed figure knows of no bad joint; a measured one goes before it.',
        'Cabin lighting is among the rest, at 10 %: only navigation lights are held to 3 %.',
        'Where several readings of one wire are recorded the worst is judged. A load that reads more than its source is taken as a slip and not judged.',
        'Some boat cable holds about 10 % less copper than its gauge says, and loses that much more.',
        'Cranking wires are left out.',
    ],
    examples: [{
        name: 'bilge pump measured under load',
        bad: `vessel "Marram" {}
conductor W1 "Feed of the bilge pump" { source-voltage: 12.6 V  load-voltage: 11.9 V  purpose: bilge-pump }
`,
        fixed: `vessel "Marram" {}
conductor W1 "Feed of the bilge pump" { source-voltage: 12.6 V  load-voltage: 12.3 V  purpose: bilge-pump }
`,
    }, {
        name: 'navigation light by calculation',
        bad: `conductor W1 "Masthead light" { gauge: 14 AWG  load: 5 A  length: 36 ft  voltage: 12 V  purpose: navigation-light }
`,
        fixed: `conductor W1 "Masthead light" { gauge: 12 AWG  load: 5 A  length: 36 ft  voltage: 12 V  purpose: navigation-light }
`,
        correction: 'Correct the size to 12 AWG',
    }, {
        name: 'row of a table',
        bad: `conductor W1 { purpose: power }
reading M1 "Voltage drop" {
    measures: voltage-drop
    row "Windlass": W1, 12.6 V, 11.2 V, 60 A
}
`,
        fixed: `conductor W1 { purpose: power }
reading M1 "Voltage drop" {
    measures: voltage-drop
    row "Windlass": W1, 12.6 V, 11.5 V, 60 A
}
`,
    }],
    silent: [
        { name: '8 % on a circuit that may lose 10 %', text: 'conductor W1 { source-voltage: 12.6 V  load-voltage: 11.6 V  purpose: power }\n' },
        { name: 'cabin lighting at 5 %', text: 'conductor W1 { source-voltage: 12.6 V  load-voltage: 12 V  purpose: lighting }\n' },
        { name: 'measured within 3 %, though computed over', text: 'conductor W1 { gauge: 14 AWG  load: 5 A  length: 36 ft  voltage: 12 V  source-voltage: 12.6 V  load-voltage: 12.3 V  purpose: bilge-pump }\n' },
        { name: 'length not recorded', text: 'conductor W1 { gauge: 14 AWG  load: 5 A  voltage: 12 V  purpose: navigation-light }\n' },
        { name: 'the same wire on 24 V', text: 'conductor W1 { gauge: 14 AWG  load: 5 A  length: 36 ft  voltage: 24 V  purpose: navigation-light }\n' },
    ],
    run(record, raise) {
        const drops = dropsOf(record);
        const known = new Set(drops.map(drop => drop.wire));
        for (const drop of drops) {
            const problem = judge(record, drop);
            if (problem) {
                raise(problem);
            }
        }
        for (const wire of ofKind(record, 'conductor')) {
            const drop = systemVoltageOf(wire) === undefined && !known.has(wire) ? computed(wire, 12)[0] : undefined;
            const purpose = purposeOf(record, wire);
            if (drop && purpose !== undefined && purpose !== 'cranking' && dropShare(drop) > allowedDropShare(circuitOf(purpose)) + 1e-9) {
                raise({
                    components: [wire], at: drop.at, severity: 'hint',
                    message: `${nameOf(wire)} loses ${computedBoth(drop.lostV, 'voltage')} by calculation; record its voltage to tell whether that is too much.`,
                });
            }
        }
    },
});

const circuitOf = (purpose: string): Circuit => critical.has(purpose) ? 'critical' : 'other';

function judge(record: SurveyRecord, drop: Drop): Raised | undefined {
    const { wire } = drop;
    const purpose = wire ? purposeOf(record, wire) : purposeByWords(drop.label);
    const isOver = (circuit: Circuit) => dropShare(drop) > allowedDropShare(circuit) + 1e-9;
    if (purpose === 'cranking' || !isOver('critical')) {
        return undefined;
    }
    if (purpose === undefined && !isOver('other')) {
        return {
            components: wire ? [wire] : [], at: drop.at, severity: 'hint',
            message: `${wire ? nameOf(wire) : drop.label} loses ${percent(dropShare(drop))} of its voltage, over the 3 % allowed to pumps, blowers, navigation lights, electronics and panel feeds; record its purpose${wire ? '' : ', on a conductor that the row names,'} to tell whether that is too much.`,
        };
    }
    const circuit = circuitOf(purpose ?? 'other');
    return isOver(circuit) ? problem(drop, circuit, purpose) : undefined;
}

/** The thinnest size that loses no more than is allowed, where load and length are known. */
function neededSize({ wire, ofV }: Drop, circuit: Circuit): string | undefined {
    const [currentA, roundTripM, gauge] = wire ? [siOf(wire, 'load'), siOf(wire, 'length'), valueOf(wire, 'gauge')] : [];
    if (currentA === undefined || roundTripM === undefined) {
        return undefined;
    }
    const areaM2 = areaForDropM2({ currentA, roundTripM, dropV: ofV * allowedDropShare(circuit) });
    const needed = gauge && isMetric(gauge) ? isoAreasM2.find(size => size >= areaM2 * (1 - 1e-9)) : gaugeFor(areaM2);
    return needed === undefined ? undefined : gauge && isMetric(gauge) ? metricSize(needed) : gaugeTitle(needed);
}

function urgencyOf({ wire }: Drop, purpose: string | undefined): { readonly urgency: Urgency; readonly days?: number } {
    return wire && flagOf(wire, 'lights-dim') === true ? { urgency: 'before-departure' } : purpose === 'bilge-pump' ? { urgency: 'within-days', days: 30 } : { urgency: 'in-upkeep' };
}

const consequences: Readonly<Record<string, string>> = {
    'bilge-pump': 'A pump that is short of voltage moves less water than it should',
    'navigation-light': 'A lamp that is short of voltage falls short of its range',
    blower: 'A blower that is short of voltage clears less vapor than it should',
    electronics: 'Electronics that are short of voltage fall out when they are needed',
};

function problem(drop: Drop, circuit: Circuit, purpose: string | undefined): Raised {
    const { wire, label, measured } = drop;
    const name = wire ? nameOf(wire) : label;
    const lost = `${computedBoth(drop.lostV, 'voltage')}, ${percent(dropShare(drop))}`;
    const most = percent(allowedDropShare(circuit));
    const use = circuit === 'critical' ? 'its use' : 'most circuits';
    const because = consequences[purpose ?? ''] ?? 'What it feeds is short of voltage, and the rest goes into heat at the bad place';
    const size = neededSize(drop, circuit);
    const act = measured ? `find the joint that grows warm and clean it${size ? `, and fit ${size} where the wire is thinner` : ', or fit a larger wire'}` : size ? `fit ${size}` : 'fit a larger wire, or feed it at a higher voltage';
    const basis = measured ? `from ${both(measured.source)} at the source to ${both(measured.load)} at the load` : 'by calculation';
    return {
        components: wire ? [wire] : [],
        at: drop.at,
        message: `${name} loses ${lost}, ${basis}, where ${most} is the most for ${use} by ABYC E-11. ${because}; ${act}.`,
        figures: { drop: { value: drop.lostV, unit: 'V' }, share: { value: dropShare(drop) * 100, unit: '%' }, allowed: { value: allowedDropShare(circuit) * 100, unit: '%' } },
        corrections: wire && !measured && size ? [{ kind: 'set-fact', title: `Correct the size to ${size}`, component: wire, property: 'gauge', value: size }] : [],
        draft: {
            title: wire ? `Voltage is lost in wire ${wire.id}` : `Voltage is lost in the circuit ${label}`,
            ...urgencyOf(drop, purpose),
            seen: seenText(drop, lost),
            because: `${most} is the most for ${use} by ABYC E-11. ${because}.`,
            recommend: measured
                ? `With the load on, find and clean the joints of ${wire?.id ?? label} that lose voltage${size ? `; renew the wire in ${size} where it is thinner` : ', or renew the wire in a larger size'}. Measure again.`
                : `${size ? `Renew ${label} in ${size}` : `Renew ${label} in a larger size`}, and measure the voltage at the load while it runs.`,
            cites: [['ABYC E-11'], ...(circuit === 'critical' && purpose !== 'electronics' ? [['ISO 10133'] as const] : [])],
        },
    };
}

function seenText({ wire, label, measured }: Drop, lost: string): string {
    if (wire && measured && !measured.isInTable) {
        return `Under load wire ${wire.id} had {${wire.id}.source-voltage} at its source and {${wire.id}.load-voltage} at the load: ${lost} are lost.`;
    }
    if (measured) {
        return `Under load the circuit ${wire ? nameOf(wire) : label} had ${both(measured.source)} at its source and ${both(measured.load)} at the load: ${lost} are lost.`;
    }
    return wire ? `Wire ${wire.id} of {${wire.id}.gauge} carries {${wire.id}.load} over {${wire.id}.length} there and back: by calculation ${lost} of {${wire.id}.${wire.facts.has('voltage') ? 'voltage' : 'source-voltage'}} are lost.` : '';
}
