/** An air tube whose pressure fell over its test by more than the air's cooling accounts for. */
import { coolingThatExplainsK, mostCoolingK, standardAtmospherePa, tubeEndAtStartPa, tubeFallShare, type TubeTest } from '../../trade/tube-pressure.js';
import { anyValue, nameOf, ofKind, rowsOf, valueOf, valuesOf, wordOf, yardstick, type Component, type FactSet, type Quantity, type Reading, type Span, type SurveyRecord, type Yardstick } from '../../record/model.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';
import { both, computedBoth, listed, percent } from '../phrasing.js';


/** Past this share lost the tube does not carry her through a day (chosen). */
const halfGone = 0.5;

export const tubeLosesPressure = defineCheck({
    id: 'tube-loses-pressure',
    group: 'deck',
    severity: 'error',
    title: 'Air tube loses pressure',
    why: 'Tubes are her buoyancy and, on an inflatable, her stiffness; a chamber that leaks is gone when it is needed.',
    needs: ['inflatable-tube: start-pressure, end-pressure, air-start, air-end', 'reading that measures tube-pressure: start, end, air-start, air-end of each row'],
    computes: 'The second reading is brought to the temperature of the first by the gas law, p2′ = (p2 + 1013.25 mbar) × T1 ÷ T2 − 1013.25 mbar with T in kelvin; fall = (p1 − p2′) ÷ p1 of gauge pressures. A fault over the yardstick tube-fall, 20 %. Where an air temperature is missing and the fall as read is over it, the temperatures are asked for, unless air colder by 40 °C (72 °F) would not explain it.',
    sources: [
        { text: 'gas law at constant volume', provenance: 'computed' },
        { text: '20 % over the test', provenance: 'practice' },
    ],
    yardsticks: ['tube-fall'],
    limits: [
        'A tube stretches a little, and the sun on dark cloth warms the air in it beyond the air outside; both are left out.',
        'The barometer is taken as standard (1013.25 mbar) at both readings.',
        'How long it was watched is told, and the fall is not reckoned to a day.',
        'Facts of a tube are left alone where a table of tube pressures is on it.',
    ],
    examples: [{
        name: 'a chamber that leaks',
        bad: 'inflatable-tube TB1 "Starboard tube" { start-pressure: 240 mbar  end-pressure: 150 mbar  duration: 24 h  air-start: 20 C  air-end: 18 C }\n',
        fixed: 'inflatable-tube TB1 "Starboard tube" { start-pressure: 240 mbar  end-pressure: 225 mbar  duration: 24 h  air-start: 20 C  air-end: 18 C }\n',
    }, {
        name: 'one chamber of a table',
        bad: table('"Chamber 2, starboard": 240 mbar, 130 mbar, 24 h, 20 C, 15 C'),
        fixed: table('"Chamber 2, starboard": 240 mbar, 210 mbar, 24 h, 20 C, 15 C'),
    }],
    silent: [
        { name: 'explained by a cold night', text: 'inflatable-tube TB1 "Starboard tube" { start-pressure: 240 mbar  end-pressure: 150 mbar  duration: 24 h  air-start: 30 C  air-end: 10 C }\n' },
        { name: 'a little lost', text: 'inflatable-tube TB1 { start-pressure: 3.5 psi  end-pressure: 3.1 psi  air-start: 68 F  air-end: 68 F }\n' },
        { name: 'a fifth, and no more', text: 'inflatable-tube TB1 { start-pressure: 250 mbar  end-pressure: 200 mbar  air-start: 20 C  air-end: 20 C }\n' },
        { name: 'the firm’s own limit', text: 'yardsticks { tube-fall: 50 % }\ninflatable-tube TB1 "Starboard tube" { start-pressure: 240 mbar  end-pressure: 150 mbar  air-start: 20 C  air-end: 18 C }\n' },
        { name: 'only the start recorded', text: 'inflatable-tube TB1 { start-pressure: 240 mbar }\n' },
    ],
    run(record, raise) {
        const limit = yardstick(record, 'tube-fall');
        for (const group of groupsOf(record)) {
            const problem = judge(record, group, limit);
            if (problem) {
                raise(problem);
            }
        }
    },
});

interface Chamber {
    /** The row's label, or the number of the chamber; nothing where the tube has one reading. */
    readonly label: string | undefined;
    readonly start: Quantity;
    readonly end: Quantity;
    readonly airStart: Quantity | undefined;
    readonly airEnd: Quantity | undefined;
    readonly duration: string | undefined;
    readonly at: Span;
}

/** Chambers that are reported together: of one tube, or of one table. */
interface Group {
    readonly components: readonly Component[];
    readonly name: string;
    readonly tube?: Component;
    readonly reading?: Reading;
    readonly chambers: readonly Chamber[];
}

const quantity = (set: FactSet, property: 'air-start' | 'air-end'): Quantity | undefined => {
    const value = anyValue(set, property);
    return value?.type === 'quantity' ? value : undefined;
};

function groupsOf(record: SurveyRecord): Group[] {
    const tables = new Map<Reading, Chamber[]>();
    for (const { reading, row } of rowsOf(record, 'tube-pressure')) {
        const start = valueOf(row, 'start');
        const end = valueOf(row, 'end');
        if (start && end) {
            tables.set(reading, [...tables.get(reading) ?? [], {
                label: row.label, start, end, airStart: quantity(row, 'air-start'), airEnd: quantity(row, 'air-end'), duration: row.facts.get('duration')?.written, at: row.span,
            }]);
        }
    }
    const inTables = new Set([...tables.keys()].flatMap(reading => reading.on));
    const ofTubes = ofKind(record, 'inflatable-tube').filter(tube => !inTables.has(tube)).map((tube): Group => ({ components: [tube], name: nameOf(tube), tube, chambers: chambersOf(tube) }));
    return [...ofTubes, ...[...tables].map(([reading, chambers]): Group => ({ components: reading.on, name: `${reading.title ?? 'Tube pressures'} (${reading.id})`, reading, chambers }))];
}

/** Readings of the start and the end in the same order; one start may stand for all. */
function chambersOf(tube: Component<'inflatable-tube'>): Chamber[] {
    const starts = valuesOf(tube, 'start-pressure');
    const ends = valuesOf(tube, 'end-pressure');
    if (starts.length !== ends.length && starts.length !== 1) {
        return [];
    }
    const at = tube.facts.get('end-pressure')?.span ?? tube.idSpan;
    return ends.flatMap((end, i): Chamber[] => {
        const start = starts[i] ?? starts[0];
        return start ? [{ label: ends.length > 1 ? `chamber ${i + 1}` : undefined, start, end, airStart: quantity(tube, 'air-start'), airEnd: quantity(tube, 'air-end'), duration: tube.facts.get('duration')?.written, at }] : [];
    });
}

function testOf({ start, end, airStart, airEnd }: Chamber): TubeTest {
    return { startPa: start.si, endPa: end.si, ...(airStart ? { airStartK: airStart.si } : {}), ...(airEnd ? { airEndK: airEnd.si } : {}) };
}

function judge(record: SurveyRecord, group: Group, limit: Yardstick): Raised | undefined {
    const over = group.chambers.flatMap(chamber => {
        const test = testOf(chamber);
        const share = tubeFallShare(test);
        const isCorrected = tubeEndAtStartPa(test) !== undefined;
        return share === undefined || share <= limit.si + 1e-9 ? [] : [{ chamber, share, isCorrected, isCertain: isCorrected || coolingThatExplainsK(test, limit.si) > mostCoolingK }];
    });
    const faults = over.filter(({ isCertain }) => isCertain).sort((a, b) => b.share - a.share);
    const [worst] = faults;
    if (worst) {
        return leak(record, group, faults, worst, limit);
    }
    const [asked] = over.toSorted((a, b) => b.share - a.share);
    return asked && { components: group.components, at: asked.chamber.at, severity: 'hint', message: askFor(group, over, asked.chamber, limit) };
}

interface Lost {
    readonly chamber: Chamber;
    readonly share: number;
}

const labelOf = ({ chamber }: Lost): string => chamber.label === undefined ? '' : `${chamber.label} `;

function askFor(group: Group, over: readonly Lost[], { airStart, airEnd, ...chamber }: Chamber, limit: Yardstick): string {
    const missing = [...(airStart ? [] : ['air-start']), ...(airEnd ? [] : ['air-end'])];
    const cooling = coolingThatExplainsK(testOf({ airStart, airEnd, ...chamber }), limit.si);
    return `${group.name}: ${listed(over.map(lost => `${labelOf(lost)}fell by ${percent(lost.share)} as read`))}, over ${limit.whose} of ${limit.written}. Air colder by ${degrees(cooling)} would bring that within it; record the air temperature (${listed(missing)}) to tell a leak from a cold night.`;
}

const degrees = (kelvin: number): string => `${Math.round(kelvin)} °C (${Math.round(kelvin * 1.8)} °F)`;
const mbar = (pa: number): number => Math.round(pa / 10) / 10;
const kelvin = (value: Quantity): number => Math.round(value.si * 10) / 10;

/** What was read, and what the gas law makes of it. */
function told({ chamber }: Lost): string {
    const { start, end, airStart, airEnd, duration } = chamber;
    const test = testOf(chamber);
    const corrected = tubeEndAtStartPa(test);
    const read = `fell from ${both(start)} to ${end.si === 0 ? end.figure.written : both(end)}${duration === undefined ? '' : ` in ${duration}`}`;
    if (airStart && airEnd && Math.abs(airStart.si - airEnd.si) < 0.05) {
        return `${read}, the air at ${airStart.figure.written} both times`;
    }
    return corrected === undefined || !airStart || !airEnd ? `${read}, more than any cooling of the air accounts for`
        : `${read}; from ${airEnd.figure.written} brought back to the ${airStart.figure.written} of the start by the gas law, (${mbar(test.endPa)} + ${mbar(standardAtmospherePa)}) × ${kelvin(airStart)} ÷ ${kelvin(airEnd)} − ${mbar(standardAtmospherePa)}, the end is ${computedBoth(corrected, 'pressure')}`;
}

function leak(record: SurveyRecord, { components, name, tube, reading, chambers }: Group, faults: readonly Lost[], worst: Lost, limit: Yardstick): Raised {
    const isGrave = worst.share > halfGone;
    const isHers = record.vessel !== undefined && wordOf(record.vessel, 'type') === 'rigid-inflatable';
    const due: { readonly urgency: Urgency; readonly days?: number } = isGrave ? { urgency: isHers ? 'before-departure' : 'before-use' } : { urgency: 'within-days', days: 30 };
    const corrected = tubeEndAtStartPa(testOf(worst.chamber));
    const which = listed(faults.map(({ chamber }) => chamber.label ?? 'the tube'));
    const others = faults.length > 1 ? ` So do ${listed(faults.slice(1).map(lost => `${labelOf(lost)}by ${percent(lost.share)}`))}.` : '';
    return {
        components, at: worst.chamber.at,
        message: `${name}: ${labelOf(worst)}${told(worst)}. ${percent(worst.share)} of the starting pressure is lost, over ${limit.whose} of ${limit.written}.${others.replace(' So do', faults.length > 2 ? ' Others lose it too:' : ' Another loses it too:')} A chamber that leaks is gone when it is needed; find the leak with soapy water and close it.`,
        figures: { lost: { value: Math.round(worst.share * 1000) / 10, unit: '%' }, limit: { value: limit.si * 100, unit: '%' }, ...(corrected === undefined ? {} : { 'end at the starting temperature': { value: mbar(corrected), unit: 'mbar' } }) },
        draft: {
            title: `Pressure lost: ${tube ? tube.title ?? `tube ${tube.id}` : which}`, ...due,
            seen: seen(tube, reading, chambers, faults),
            because: 'The tubes give her buoyancy and stiffness; a chamber that leaks is gone when it is needed.',
            recommend: `Find the leak of ${which} with soapy water at valve, seams and patches, close it, and watch the pressure again over 24 h with the air temperature written down.`,
            cites: [['Good practice']],
        },
    };
}

function seen(tube: Component | undefined, reading: Reading | undefined, chambers: readonly Chamber[], faults: readonly Lost[]): string {
    const shares = (lost: Lost) => `${labelOf(lost)}lost ${percent(lost.share)}`;
    const out = faults.some(({ chamber }) => tubeEndAtStartPa(testOf(chamber)) !== undefined) ? ', the change of temperature taken out' : '';
    if (!tube) {
        return `By the readings (${reading?.id ?? 'see the table'}), ${listed(faults.map(shares))} of the starting pressure${out}.`;
    }
    const { airStart, airEnd } = chambers[0] ?? {};
    const air = airStart && airEnd ? `, the air at {${tube.id}.air-start} and then {${tube.id}.air-end}` : '';
    const over = tube.facts.has('duration') ? ` in {${tube.id}.duration}` : '';
    return `${tube.title ?? 'The tube'} (${tube.id}) went from {${tube.id}.start-pressure} to {${tube.id}.end-pressure}${over}${air}; ${faults.some(({ chamber }) => chamber.label !== undefined) ? '' : 'it '}${listed(faults.map(shares))} of the starting pressure${out}.`;
}

function table(row: string): string {
    return `reading M1 "Tube pressures" { measures: tube-pressure\n    row "Chamber 1, port": 240 mbar, 225 mbar, 24 h, 20 C, 15 C\n    row ${row}\n}\n`;
}
