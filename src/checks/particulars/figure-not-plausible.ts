/** A weight, speed or tank that cannot be true of a vessel of her size: pounds for kilograms, miles for knots. */
import { blockCoefficient, speedLengthRatio } from '../../trade/hull-speed.js';
import { blockBounds, fuelShare, fuelShareMost, speedLengthMost } from '../../trade/plausible-particulars.js';
import { ofKind, rowsOf, siOf, valueOf, wordOf, type Component, type Quantity, type Span, type SurveyRecord, type Vessel } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, computedBoth } from '../phrasing.js';
import { hasDrive, hullsOf, inOtherUnits, isBox, isMultihull, isPower, typeOf } from './craft.js';

export const figureNotPlausible = defineCheck({
    id: 'figure-not-plausible',
    group: 'particulars',
    severity: 'warning',
    isOfReport: true,
    title: 'A figure cannot be true of a vessel of her size',
    why: 'A slip of a unit on the first page goes into lifting, premium and price.',
    needs: ['vessel: displacement, length-waterline, beam, draft (of a catamaran hull-beam)', 'vessel: hull-draft, where the draft counts keel or drive', 'vessel: running, with cruising-speed, top-speed or runs of a trial both ways', 'vessel: fuel-capacity or fuel-tank: capacity, with displacement'],
    computes: 'Block coefficient = mass / (1025 x waterline x beam x draft), of one hull of a catamaran: 0.12 to 0.85 (0.04 where the draft counts a keel, to 1 for a box). A displacement hull under power: at most 1.5 x sqrt(waterline in ft) knots. Fuel: at most 25 % of her displacement.',
    sources: [
        { text: 'mass over the block of her waterline in sea water', provenance: 'computed' },
        { text: 'block coefficient 0.12 to 0.85, speed 1.5 x sqrt(LWL ft), fuel a quarter of the mass', provenance: 'practice' },
        { text: '0.04 where a keel or drive is counted in the draft, 1 for a box', provenance: 'chosen' },
        { text: 'diesel 840, gasoline 740 kg/m3', provenance: 'memory' },
    ],
    limits: [
        'A draft that counts a keel or drive makes the block larger than the hull; between 0.04 and 0.12 the depth of the hull alone is asked for instead.',
        'Hulls that plane, or run between, and multihulls have no such limit of speed, and are left alone. Where it is not recorded how she runs, that is asked.',
        'Where the waterline is not recorded, the length of the hull stands for it, which can only clear her. The three hulls of a trimaran are unequal and not judged.',
        'Whether the displacement is light or loaded is not known to it.',
    ],
    examples: [{
        name: 'pounds written as kilograms',
        bad: 'vessel "Marram" { type: motor-yacht  length-waterline: 11 m  beam: 4.2 m  draft: 0.9 m  displacement: 38000 kg }\n',
        fixed: 'vessel "Marram" { type: motor-yacht  length-waterline: 11 m  beam: 4.2 m  draft: 0.9 m  displacement: 38000 lb }\n',
        correction: 'Write the displacement as 38000 lb',
    }, {
        name: 'kilograms written as pounds',
        bad: 'vessel "Marram" { type: motor-yacht  length-waterline: 11 m  beam: 4.2 m  draft: 1.3 m  displacement: 12000 lb }\n',
        fixed: 'vessel "Marram" { type: motor-yacht  length-waterline: 11 m  beam: 4.2 m  draft: 1.3 m  displacement: 12000 kg }\n',
        correction: 'Write the displacement as 12000 kg',
    }, {
        name: 'miles written as knots',
        bad: 'vessel "Marram" { running: displacement  length-waterline: 36 ft  top-speed: 10 kn }\n',
        fixed: 'vessel "Marram" { running: displacement  length-waterline: 36 ft  top-speed: 10 mph }\n',
        correction: 'Write the top-speed as 10 mph',
    }, {
        name: 'liters written as gallons',
        bad: 'vessel "Marram" { fuel: diesel  displacement: 9000 kg  fuel-capacity: 800 gal }\n',
        fixed: 'vessel "Marram" { fuel: diesel  displacement: 9000 kg  fuel-capacity: 800 L }\n',
        correction: 'Write the fuel-capacity as 800 L',
    }],
    silent: [
        { name: 'cruising yacht with a fin keel', text: 'vessel "Marram" { type: sailing-yacht  length-waterline: 33 ft 6 in  beam: 3.85 m  draft: 5 ft 9 in  displacement: 24000 lb }\n' },
        { name: 'motor yacht in kilograms', text: 'vessel "Marram" { type: motor-yacht  length-waterline: 11 m  beam: 4.2 m  draft: 0.9 m  displacement: 17000 kg }\n' },
        { name: 'catamaran, per hull', text: 'vessel "Marram" { type: catamaran  length-waterline: 11.5 m  beam: 6.8 m  hull-beam: 1.6 m  draft: 1.1 m  displacement: 9000 kg }\n' },
        { name: 'planing at twenty-eight knots', text: 'vessel "Marram" { type: motor-yacht  running: planing  length-waterline: 36 ft  top-speed: 28 kn }\n' },
        { name: 'between the two at fourteen', text: 'vessel "Marram" { type: motor-yacht  running: semi-displacement  length-waterline: 36 ft  top-speed: 14 kn }\n' },
        { name: 'catamaran at twelve knots', text: 'vessel "Marram" { type: catamaran  running: displacement  length-waterline: 36 ft  top-speed: 12 kn }\n' },
        { name: 'displacement hull at hull speed', text: 'vessel "Marram" { running: displacement  length-waterline: 36 ft  top-speed: 8 kn }\n' },
        { name: 'long-range fuel', text: 'vessel "Marram" { fuel: diesel  displacement: 27000 kg  fuel-capacity: 1000 gal }\n' },
        { name: 'houseboat, a box', text: 'vessel "Marram" { type: houseboat  length-waterline: 14 m  beam: 4.5 m  draft: 0.5 m  displacement: 29000 kg }\n' },
    ],
    run(record, raise) {
        const { vessel } = record;
        if (vessel) {
            judgeBlock(record, vessel, raise);
            judgeSpeeds(vessel, raise);
            judgeTrial(record, vessel, raise);
            judgeFuel(record, vessel, raise);
        }
    },
});

type Raise = (problem: Raised) => void;

interface Block {
    /** Of the mass given, against the block of her dimensions. */
    readonly of: (massKg: number) => number;
    readonly least: number;
    readonly most: number;
    /** Whether the draft may count a keel or drive, which the hull alone would not. */
    readonly isDraftDeep: boolean;
    readonly words: string;
}

function blockOf(record: SurveyRecord, vessel: Vessel): Block | string | undefined {
    const hulls = hullsOf(vessel);
    const waterline = valueOf(vessel, 'length-waterline');
    const length = waterline ?? valueOf(vessel, 'length-on-deck') ?? valueOf(vessel, 'length-overall');
    const beam = valueOf(vessel, hulls === 2 ? 'hull-beam' : 'beam');
    const hullDraft = valueOf(vessel, 'hull-draft');
    const draft = hullDraft ?? valueOf(vessel, 'draft');
    if (hulls === undefined || !length || !draft) {
        return undefined;
    }
    if (!beam) {
        return hulls === 2 && waterline ? 'hull-beam' : undefined;
    }
    const isDraftDeep = !hullDraft && (!isPower(record, vessel) || hasDrive(record, vessel));
    return {
        of: massKg => blockCoefficient(massKg / hulls, length.si, beam.si, draft.si),
        least: waterline ? (isDraftDeep ? blockBounds.leastWithKeel : blockBounds.least) : 0,
        most: isBox(vessel) ? blockBounds.mostOfBox : blockBounds.most,
        isDraftDeep: isDraftDeep && waterline !== undefined,
        words: `${hulls === 2 ? 'one hull of ' : ''}${both(length)} by ${both(beam)} by ${both(draft)}`,
    };
}

function judgeBlock(record: SurveyRecord, vessel: Vessel, raise: Raise): void {
    const displacement = valueOf(vessel, 'displacement');
    const at = vessel.facts.get('displacement')?.span;
    const block = blockOf(record, vessel);
    if (!displacement || !at || block === undefined) {
        return;
    }
    if (typeof block === 'string') {
        raise({ components: [], at, severity: 'hint', message: `${block} is not recorded; record it to tell whether a displacement of ${both(displacement)} is that of two such hulls.` });
        return;
    }
    const coefficient = block.of(displacement.si);
    if (coefficient > block.most || coefficient < block.least) {
        raise(blockProblem(displacement, at, block, coefficient));
    } else if (block.isDraftDeep && coefficient < blockBounds.least && typeOf(vessel) !== undefined && isPower(record, vessel)) {
        raise({ components: [], at, severity: 'hint', message: `${both(displacement)} fills ${share(coefficient)} of the block of her waterline, beam and draft, which is little unless her drive is counted in the draft; record hull-draft, the depth of the hull alone, to tell.` });
    }
}

const share = (value: number): string => String(Math.round(value * 1000) / 1000);

function blockProblem(displacement: Quantity, at: Span, block: Block, coefficient: number): Raised {
    const isOver = coefficient > block.most;
    const meant = inOtherUnits(displacement, ['lb', 'kg', 't', 'ton']).filter(({ si }) => block.of(si) <= block.most && block.of(si) >= Math.max(block.least, blockBounds.leastWithKeel));
    return {
        components: [], at,
        message: `A displacement of ${both(displacement)} would fill ${share(coefficient)} of the block of ${block.words}; hulls fill ${block.least > 0 ? `${block.least} to ` : 'at most '}${block.most}. ${isOver ? 'She cannot weigh so much' : 'She weighs more than that'} at these dimensions; one of the figures, or its unit, is wrong, pounds for kilograms as a rule.`,
        figures: { 'block coefficient': { value: coefficient, unit: '' }, displacement: { value: displacement.si, unit: 'kg' } },
        corrections: meant.map(({ text }): Correction => ({ kind: 'set-vessel-fact', title: `Write the displacement as ${text}`, property: 'displacement', value: text })),
    };
}

function judgeSpeeds(vessel: Vessel, raise: Raise): void {
    const length = valueOf(vessel, 'length-waterline') ?? valueOf(vessel, 'length-on-deck') ?? valueOf(vessel, 'length-overall');
    if (!length || isMultihull(vessel)) {
        return;
    }
    const running = wordOf(vessel, 'running');
    for (const property of ['cruising-speed', 'top-speed'] as const) {
        const speed = valueOf(vessel, property);
        const at = vessel.facts.get(property)?.span;
        if (!speed || !at || speedLengthRatio(speed.si, length.si) <= speedLengthMost + 1e-9) {
            continue;
        }
        if (running === 'displacement') {
            raise(speedProblem(property, speed, at, length));
        } else if (running === undefined && ['sailing-yacht', 'wooden-classic', 'steel-vessel', 'houseboat'].includes(typeOf(vessel) ?? '')) {
            raise({ components: [], at, severity: 'hint', message: `${both(speed)} is more than a displacement hull of ${both(length)} reaches; record running: displacement, semi-displacement or planing, to tell whether it can be true.` });
        }
    }
}

/** Runs of the trial, both ways averaged so that a current falls out. */
function judgeTrial(record: SurveyRecord, vessel: Vessel, raise: Raise): void {
    const length = valueOf(vessel, 'length-waterline') ?? valueOf(vessel, 'length-on-deck') ?? valueOf(vessel, 'length-overall');
    if (!length || isMultihull(vessel) || wordOf(vessel, 'running') !== 'displacement') {
        return;
    }
    for (const { row } of rowsOf(record, 'trial')) {
        const [one, other] = [siOf(row, 'speed'), siOf(row, 'speed-against')];
        const at = row.facts.get('speed')?.span;
        const mean = one !== undefined && other !== undefined ? (one + other) / 2 : undefined;
        if (at && mean !== undefined && speedLengthRatio(mean, length.si) > speedLengthMost + 1e-9) {
            raise({
                components: [], at,
                message: `At the trial (${row.label}) she made ${computedBoth(mean, 'speed')} on the mean of both ways, more than a displacement hull of ${both(length)} on the waterline reaches under power. Miles an hour may have been taken for knots; verify the unit of the instrument.`,
                figures: { speed: { value: mean * 3600 / 1852, unit: 'kn' } },
                corrections: [{ kind: 'set-vessel-fact', title: 'Record that she is a semi-displacement hull', property: 'running', value: 'semi-displacement' }],
            });
        }
    }
}

function speedProblem(property: 'cruising-speed' | 'top-speed', speed: Quantity, at: Span, length: Quantity): Raised {
    const limitMs = speedLengthMost * speed.si / speedLengthRatio(speed.si, length.si);
    const meant = inOtherUnits(speed, ['mph', 'km/h', 'kn']).filter(({ si }) => si <= limitMs + 1e-9).slice(0, 1);
    const name = property.replace('-', ' ');
    return {
        components: [], at,
        message: `A ${name} of ${both(speed)} is more than a displacement hull of ${both(length)} on the waterline reaches under power, ${computedBoth(limitMs, 'speed')}. Miles an hour may have been taken for knots; verify it, or record how she runs.`,
        figures: { speed: { value: speed.si * 3600 / 1852, unit: 'kn' }, limit: { value: limitMs * 3600 / 1852, unit: 'kn' } },
        corrections: [
            ...meant.map(({ text }): Correction => ({ kind: 'set-vessel-fact', title: `Write the ${property} as ${text}`, property, value: text })),
            { kind: 'set-vessel-fact', title: 'Record that she is a semi-displacement hull', property: 'running', value: 'semi-displacement' },
        ],
    };
}

interface Fuel {
    readonly volumeM3: number;
    readonly at: Span;
    readonly tanks: readonly Component[];
    /** The one figure it rests on, where it is one. */
    readonly quantity?: Quantity;
}

function fuelOf(record: SurveyRecord, vessel: Vessel): Fuel | undefined {
    const capacity = valueOf(vessel, 'fuel-capacity');
    const at = vessel.facts.get('fuel-capacity')?.span;
    if (capacity && at) {
        return { volumeM3: capacity.si, at, tanks: [], quantity: capacity };
    }
    const tanks = ofKind(record, 'fuel-tank');
    const volumes = tanks.flatMap(tank => siOf(tank, 'capacity') ?? []);
    const span = tanks[0]?.facts.get('capacity')?.span;
    if (!span || volumes.length === 0) {
        return undefined;
    }
    const only = tanks.length === 1 && tanks[0] ? valueOf(tanks[0], 'capacity') : undefined;
    return { volumeM3: volumes.reduce((sum, volume) => sum + volume, 0), at: span, tanks, ...(only ? { quantity: only } : {}) };
}

function judgeFuel(record: SurveyRecord, vessel: Vessel, raise: Raise): void {
    const displacement = valueOf(vessel, 'displacement');
    const fuel = fuelOf(record, vessel);
    const kind = wordOf(vessel, 'fuel') ?? (fuel?.tanks[0] ? wordOf(fuel.tanks[0], 'fuel') : undefined);
    if (!displacement || !fuel || (kind !== 'diesel' && kind !== 'gasoline' && kind !== undefined)) {
        return;
    }
    const of = (volumeM3: number) => fuelShare(volumeM3, kind ?? 'gasoline', displacement.si) ?? 0;
    const part = of(fuel.volumeM3);
    if (part <= fuelShareMost + 1e-9) {
        return;
    }
    const [tank] = fuel.tanks;
    const meant = fuel.quantity ? inOtherUnits(fuel.quantity, ['L']).filter(({ si }) => of(si) <= fuelShareMost) : [];
    const volume = fuel.quantity ? both(fuel.quantity) : computedBoth(fuel.volumeM3, 'volume');
    raise({
        components: fuel.tanks, at: fuel.at,
        message: `${volume} of fuel would weigh ${Math.round(part * 100)} % of her displacement of ${both(displacement)}; a quarter is already much. Either the capacity or the displacement, or a unit of theirs, is wrong; verify both.`,
        figures: { fuel: { value: part * 100, unit: '% of displacement' } },
        ...(tank ? {} : { related: [{ message: 'displacement', span: vessel.facts.get('displacement')?.span ?? fuel.at }] }),
        corrections: meant.map(({ text }): Correction => tank
            ? { kind: 'set-fact', title: `Write the capacity as ${text}`, component: tank, property: 'capacity', value: text }
            : { kind: 'set-vessel-fact', title: `Write the fuel-capacity as ${text}`, property: 'fuel-capacity', value: text }),
    });
}
