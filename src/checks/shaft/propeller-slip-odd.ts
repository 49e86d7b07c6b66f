/** Slip that no propeller has, or that is unusual for her hull, or that differs between twins. */
import { convertTo } from '../../quantities/index.js';
import { nameOf, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { leastSlip, propellerSlip, servicesAtRatio, spannedBand, theoreticalSpeedMs, twinSlipDifference, usualSlip, type HullService, type SlipBand } from '../../trade/propeller-slip.js';
import { speedLengthRatio } from '../../trade/hull-speed.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, computedBoth, listed } from '../phrasing.js';
import { driveLines, type DriveLine } from '../../record/drive-lines.js';
import { measured, trialRuns, type Measured, type TrialRun } from '../../record/trial-runs.js';

const mphPerKn = 1609.344 / 1852;
const allServices = Object.keys(usualSlip) as readonly HullService[]; // The keys of a record by service are the services.

export const propellerSlipOdd = defineCheck({
    id: 'propeller-slip-odd',
    group: 'shaft',
    severity: 'error',
    title: 'Slip of the propeller is odd',
    why: 'An odd slip tells of a wrong propeller, a foul bottom or a false tachometer, or of a figure written down wrongly.',
    needs: [
        'propeller: pitch', 'gearbox or drive leg: ratio', 'propeller: rotation, speed and speed-against, or a table of the trial with rotation, speed and speed-against',
        'vessel: running, type, or length-waterline, for the usual band',
    ],
    computes: 'speed without slip = rotation ÷ ratio × pitch (knots = rpm × inches ÷ ratio ÷ 1215.2); slip = 1 − speed ÷ that, the speed being the mean of two opposite runs. Under 3 % or negative: a figure is wrong. Advice outside the usual band: planing 5 to 20 %, semi-displacement 15 to 30, displacement 15 to 45, sailing auxiliary 10 to 45, work boats 20 to 50; and where twins at one speed differ by more than 5 points.',
    sources: [
        { text: 'speed without slip and slip, constants 1215.2, 1056 and 656', provenance: 'published' },
        { text: 'usual bands, from calculators’ pages and textbooks, which differ by ten points', provenance: 'published' },
        { text: 'less than 3 % is a wrong figure; twins within 5 points', provenance: 'practice' },
    ],
    limits: [
        'The bands span what published tables say, which differ by ten points; slip inside the band does not prove the propeller right.',
        'Of the runs of a table only the one at the highest engine speed is held against the band; at low speed slip differs.',
        'A single run carries the current with it; two opposite runs at like engine speed cancel it.',
        'Which gearbox turns which propeller is taken from serves, from the side, or from there being one of each; else the propeller is not judged.',
        'Jets, folding propellers turned the wrong way and controllable pitch are not told apart.',
    ],
    examples: [{
        name: 'miles typed for knots',
        bad: `vessel "Marram" { running: planing }
gearbox GB1 { ratio: 1.5 }
propeller P1 { pitch: 19 in  rotation: 4600 rpm  speed: 49 kn }
`,
        fixed: `vessel "Marram" { running: planing }
gearbox GB1 { ratio: 1.5 }
propeller P1 { pitch: 19 in  rotation: 4600 rpm  speed: 49 mph }
`,
        correction: 'Read 49 kn as 49 mph',
    }, {
        name: 'too much slip for a planing hull',
        bad: `vessel "Marram" { running: planing }
main-engine E1
gearbox GB1 { ratio: 2 }
propeller P1 { pitch: 16 in }
reading TR1 "Trial" {
    measures: trial
    row "Half": 1800 rpm, 8.1 kn, 8.3 kn
    row "Full": 2800 rpm, 12.4 kn, 12.8 kn
}
`,
        fixed: `vessel "Marram" { running: planing }
main-engine E1
gearbox GB1 { ratio: 2 }
propeller P1 { pitch: 16 in }
reading TR1 "Trial" {
    measures: trial
    row "Half": 1800 rpm, 8.1 kn, 8.3 kn
    row "Full": 2800 rpm, 15.4 kn, 15.8 kn
}
`,
    }, {
        name: 'twins that slip differently',
        bad: `vessel "Marram" { running: displacement }
gearbox GB1 { side: port  ratio: 2 }
gearbox GB2 { side: starboard  ratio: 2 }
propeller P1 { side: port  pitch: 16 in  rotation: 2000 rpm  speed: 10 kn }
propeller P2 { side: starboard  pitch: 16 in  rotation: 2300 rpm  speed: 10 kn }
`,
        fixed: `vessel "Marram" { running: displacement }
gearbox GB1 { side: port  ratio: 2 }
gearbox GB2 { side: starboard  ratio: 2 }
propeller P1 { side: port  pitch: 16 in  rotation: 2000 rpm  speed: 10 kn }
propeller P2 { side: starboard  pitch: 16 in  rotation: 2050 rpm  speed: 10 kn }
`,
    }],
    silent: [
        { name: 'slip of 23 % on a displacement hull', text: 'vessel "Marram" { running: displacement }\ngearbox GB1 { ratio: 2 }\npropeller P1 { pitch: 16 in  rotation: 2800 rpm  speed: 14.2 kn }\n' },
        { name: 'fast one way with the current', text: 'vessel "Marram" { running: displacement }\ngearbox GB1 { ratio: 2 }\npropeller P1 { pitch: 16 in  rotation: 2800 rpm  speed: 18.2 kn  speed-against: 10.2 kn }\n' },
        { name: 'no ratio recorded, none that could turn it', text: 'vessel "Marram" { running: displacement }\npropeller P1 { pitch: 16 in }\n' },
        { name: 'auxiliary at 12 %', text: 'vessel "Marram" { type: sailing-yacht }\nsaildrive SD1 { ratio: 2.2 }\npropeller P1 { pitch: 11 in  rotation: 3000 rpm  speed: 10.86 kn }\n' },
    ],
    run(record, raise) {
        const lines = driveLines(record);
        const runs = trialRuns(record, lines);
        const judged = lines.flatMap(line => judgeLine(record, line, runs.filter(run => run.line === line)));
        for (const problem of merged(judged)) {
            raise(problem);
        }
        // Runs that are told by themselves are left out; a slip outside its band says already what the twins would.
        const told = new Set(judged.map(problem => problem.at));
        const isJudgedByBand = judged.some(problem => problem.severity !== 'hint' && (problem.figures?.['slip']?.value ?? 0) >= leastSlip * 100);
        if (!isJudgedByBand) {
            const twins = twinsApart(lines, runs.filter(run => !told.has(run.at)));
            if (twins) {
                raise(twins);
            }
        }
    },
});

interface Slip {
    readonly run: TrialRun;
    readonly ratio: Measured & { readonly on: Component };
    readonly pitch: Measured;
    readonly theoreticalMs: number;
    readonly slip: number;
}

function slipOf(run: TrialRun): Slip | undefined {
    const { propeller, reducer } = run.line;
    const pitch = measured(propeller, 'pitch');
    const ratio = reducer && measured(reducer, 'ratio');
    if (!pitch || !ratio) {
        return undefined;
    }
    const trial = { rotationRadS: run.rotation.quantity.si, ratio: ratio.quantity.si, pitchM: pitch.quantity.si };
    const slip = propellerSlip(run.speedMs, trial);
    return slip === undefined ? undefined : { run, ratio: { ...ratio, on: reducer }, pitch, theoreticalMs: theoreticalSpeedMs(trial), slip };
}

function judgeLine(record: SurveyRecord, line: DriveLine, runs: readonly TrialRun[]): Raised[] {
    const missing = missingFact(line, runs);
    if (missing) {
        return [missing];
    }
    const slips = runs.map(slipOf).filter(slip => slip !== undefined);
    const impossible = slips.filter(({ slip }) => slip < leastSlip - 1e-9);
    if (impossible.length > 0) {
        return impossible.map(slip => wrongFigure(record, slip));
    }
    const fastest = slips.reduce<Slip | undefined>((best, slip) => !best || slip.run.rotation.quantity.si > best.run.rotation.quantity.si ? slip : best, undefined);
    const unusual = fastest && againstBand(record, fastest);
    const mixed = runs.find(({ speeds }) => new Set(speeds.map(({ quantity }) => quantity.figure.unit)).size > 1);
    return unusual ? [unusual] : mixed ? [{
        components: [line.propeller], at: mixed.at, severity: 'hint',
        message: `The two runs of ${runName(mixed)} are written in different units, ${mixed.speeds.map(({ quantity }) => both(quantity)).join(' and ')}; make sure that both are as read.`,
    }] : [];
}

/** Asks for the one fact that keeps a run from being judged. */
function missingFact({ propeller, reducer }: DriveLine, runs: readonly TrialRun[]): Raised | undefined {
    const [run] = runs;
    const hasPitch = propeller.facts.has('pitch');
    if (!run || (!hasPitch && !reducer?.facts.has('ratio')) || !reducer) {
        return undefined;
    }
    const fact = hasPitch ? reducer.facts.has('ratio') ? undefined : `ratio of ${reducer.id}` : `pitch of ${propeller.id}`;
    return fact === undefined ? undefined : { components: [propeller], at: run.at, severity: 'hint', message: `${nameOf(propeller)} was run at ${both(run.rotation.quantity)}; record the ${fact} to tell its slip.` };
}

/** Services her hull may be in at a speed; none where the record does not tell. */
function servicesOf(record: SurveyRecord, speedMs: number): readonly HullService[] {
    const { vessel } = record;
    const waterline = vessel && siOf(vessel, 'length-waterline');
    const running = vessel && wordOf(vessel, 'running');
    const type = vessel && wordOf(vessel, 'type');
    const bySpeed = waterline === undefined ? [] : servicesAtRatio(speedLengthRatio(speedMs, waterline));
    const isHull = (word: string | undefined): word is 'planing' | 'semi-displacement' | 'displacement' => word === 'planing' || word === 'semi-displacement' || word === 'displacement';
    const byType: HullService[] = type === 'sailing-yacht' ? ['sailing'] : type === 'rigid-inflatable' || type === 'gasoline-cruiser' ? ['planing'] : [];
    const declared: HullService[] = isHull(running) ? [running] : byType;
    const work: HullService[] = type === 'aluminum-workboat' && (declared.length > 0 || bySpeed.length > 0) ? ['work'] : [];
    return [...new Set([...declared, ...(type === 'sailing-yacht' ? byType : []), ...bySpeed, ...work])];
}

const percent = (share: number) => `${(Math.round(share * 1000) / 10).toString().replace('-', '−')} %`;
const bandText = ({ low, high }: SlipBand) => `${percent(low)} to ${percent(high)}`;

function againstBand(record: SurveyRecord, slip: Slip): Raised | undefined {
    const services = servicesOf(record, slip.run.speedMs);
    const band = spannedBand(services.length > 0 ? services : allServices);
    if (slip.slip >= band.low - 1e-9 && slip.slip <= band.high + 1e-9) {
        const isOpen = services.length === 0 && allServices.some(service => slip.slip < usualSlip[service].low || slip.slip > usualSlip[service].high);
        return isOpen ? {
            components: [slip.run.line.propeller], at: slip.run.at, severity: 'hint',
            message: `${nameOf(slip.run.line.propeller)} has a slip of ${percent(slip.slip)}; record running or length-waterline of the vessel to tell whether that is usual for her.`,
        } : undefined;
    }
    return unusualSlip(slip, services, band);
}

function runName({ row, line }: TrialRun): string {
    return row ? `“${row.row.label}” in ${row.reading.title ?? row.reading.id}` : nameOf(line.propeller);
}

const speedText = ({ speeds, speedMs }: TrialRun) => {
    const [first, second] = speeds;
    return second ? `${speedBoth(speedMs)}, the mean of two opposite runs` : first ? both(first.quantity) : '';
};
const speedBoth = (ms: number) => computedBoth(ms, 'speed');

/** "at 2800 rpm, 2 to 1 and a pitch of 16 in …, without slip she would make 18.4 kn". */
function withoutSlip({ run, ratio, pitch, theoreticalMs }: Slip): string {
    return `${both(run.rotation.quantity)} at ${ratio.fact.written} to 1 and a pitch of ${both(pitch.quantity)} would give ${speedBoth(theoreticalMs)} without slip`;
}

const figuresOf = ({ slip, theoreticalMs, run }: Slip) => ({
    slip: { value: slip * 100, unit: '%' }, speed: { value: convertTo(run.speedMs, 'kn'), unit: 'kn' }, 'without slip': { value: convertTo(theoreticalMs, 'kn'), unit: 'kn' },
});

/** What was seen, with references where the facts stand on the propeller. */
function seenText({ run, ratio, slip, theoreticalMs }: Slip): string {
    const { propeller } = run.line;
    const name = propeller.title ?? 'The propeller';
    const of = `${name} (${propeller.id}) of pitch {${propeller.id}.pitch} turns at {${ratio.on.id}.ratio} to 1`;
    const at = run.row ? `In the run “${run.row.row.label}” of ${run.row.reading.title ?? run.row.reading.id}`
        : `At {${propeller.id}.rotation} of the engine she made ${run.speeds.map(({ fact }) => `{${propeller.id}.${fact.name}}`).join(' one way and ')}${run.speeds.length > 1 ? ' the other' : ''}; there`;
    return `${of}. ${at} its slip works out at ${percent(slip)}, against ${speedBoth(theoreticalMs)} without slip.`;
}

function wrongFigure(record: SurveyRecord, slip: Slip): Raised {
    const { run } = slip;
    const { propeller } = run.line;
    const asMiles = readAsMiles(record, slip);
    const isSingle = run.speeds.length === 1;
    const checked = isSingle ? 'pitch, ratio, tachometer and current, and run her both ways' : 'pitch, ratio and tachometer';
    return {
        components: [propeller, slip.ratio.on],
        at: run.at,
        message: `${nameOf(propeller)} made ${speedText(run)}, where ${withoutSlip(slip)}: a slip of ${percent(slip.slip)}, which no propeller has. ${asMiles
            ? `Read as miles an hour, that is ${percent(asMiles.slip)}, a usual slip: mph typed for knots? Else check`
            : 'One of the figures is wrong; check'} ${checked}.`,
        figures: figuresOf(slip),
        related: [{ message: 'The pitch', span: slip.pitch.fact.span }, { message: 'The ratio', span: slip.ratio.fact.span }],
        corrections: asMiles?.corrections ?? [],
        draft: {
            title: `Slip of propeller ${propeller.id} cannot be right`,
            urgency: 'note-only',
            seen: seenText(slip),
            because: `No propeller slips by less than ${percent(leastSlip)}: one of the figures is wrong.`,
            recommend: `Check the tachometer, the pitch as marked on the hub, the ratio on the plate of the gearbox, and the unit of the speed${isSingle ? '; run her both ways' : ''}.`,
        },
    };
}

/** The slip if the speeds were miles an hour, where that is usual, and the corrections that say so. */
function readAsMiles(record: SurveyRecord, { run, theoreticalMs }: Slip): { readonly slip: number; readonly corrections: readonly Correction[] } | undefined {
    if (run.speeds.some(({ quantity }) => quantity.figure.unit !== 'kn')) {
        return undefined;
    }
    const speedMs = run.speedMs * mphPerKn;
    const slip = 1 - speedMs / theoreticalMs;
    const services = servicesOf(record, speedMs);
    const band = spannedBand(services.length > 0 ? services : allServices);
    return slip < band.low - 1e-9 || slip > band.high + 1e-9 ? undefined : { slip, corrections: milesCorrections(run) };
}

const inMiles = ({ quantity }: Measured) => `${quantity.figure.value} mph`;

function milesCorrections({ row, speeds, line }: TrialRun): Correction[] {
    const [first, second] = speeds;
    if (row && first && second && areNeighbours(row.row.cells, first, second)) {
        return [{
            kind: 'replace-text', title: `Read ${first.fact.written} and ${second.fact.written} as mph`,
            span: { ...first.fact.span, end: second.fact.span.end }, text: `${inMiles(first)}, ${inMiles(second)}`,
        }];
    }
    return speeds.map((speed): Correction => {
        const title = `Read ${speed.fact.written} as ${inMiles(speed)}`;
        return row ? { kind: 'replace-text', title, span: speed.fact.span, text: inMiles(speed) }
            : { kind: 'set-fact', title, component: line.propeller, property: speed.fact.name, value: inMiles(speed) };
    });
}

/** Whether two cells stand side by side in a row, the first before the second. */
function areNeighbours(cells: readonly { readonly column?: string }[], first: Measured, second: Measured): boolean {
    const at = cells.findIndex(cell => cell.column === first.fact.name);
    return at >= 0 && cells[at + 1]?.column === second.fact.name;
}

function unusualSlip(slip: Slip, services: readonly HullService[], band: SlipBand): Raised {
    const { run } = slip;
    const { propeller } = run.line;
    const isHigh = slip.slip > band.high;
    const whose = services.length === 0 ? 'any hull' : `${listed(services.map(service => serviceText[service]), 'or')}`;
    const causes = isHigh ? 'A foul bottom or propeller, too little pitch, or a heavy hull makes it so' : 'Too much pitch marked, or a false tachometer or speed, makes it so';
    return {
        components: [propeller, slip.ratio.on],
        at: run.at,
        severity: 'warning',
        message: `${nameOf(propeller)} made ${speedText(run)}, where ${withoutSlip(slip)}: a slip of ${percent(slip.slip)}, ${isHigh ? 'over' : 'under'} the ${bandText(band)} usual for ${whose}. ${causes}; check tachometer, pitch and bottom.`,
        figures: { ...figuresOf(slip), low: { value: band.low * 100, unit: '%' }, high: { value: band.high * 100, unit: '%' } },
        related: [{ message: 'The pitch', span: slip.pitch.fact.span }, { message: 'The ratio', span: slip.ratio.fact.span }],
        draft: {
            title: `${isHigh ? 'High' : 'Low'} slip of propeller ${propeller.id}`,
            urgency: isHigh ? 'in-upkeep' : 'note-only',
            seen: seenText(slip),
            because: `${bandText(band)} is usual for ${whose}. ${causes}.`,
            recommend: 'Prove the tachometer, read the pitch off the hub or have the propeller measured, and clean bottom and propeller before running her again.',
        },
    };
}

const serviceText: Readonly<Record<HullService, string>> = {
    planing: 'a planing hull', 'semi-displacement': 'a semi-displacement hull', displacement: 'a displacement hull', sailing: 'a sailing yacht under engine', work: 'a work boat',
};

/** Port and starboard at one speed with slips apart. */
function twinsApart(lines: readonly DriveLine[], runs: readonly TrialRun[]): Raised | undefined {
    const [port, starboard] = ['port', 'starboard'].map(side => lines.filter(line => wordOf(line.propeller, 'side') === side));
    const [one, other] = [port?.[0], starboard?.[0]];
    if (port?.length !== 1 || starboard?.length !== 1 || !one || !other) {
        return undefined;
    }
    for (const a of runs.filter(run => run.line === one).map(slipOf)) {
        for (const b of runs.filter(run => run.line === other).map(slipOf)) {
            // The twins of one vessel move at one speed; slips taken at different speeds say nothing of each other.
            if (a && b && Math.abs(a.run.speedMs - b.run.speedMs) <= 0.02 * a.run.speedMs && Math.abs(a.slip - b.slip) > twinSlipDifference + 1e-9) {
                return twinProblem(a, b);
            }
        }
    }
    return undefined;
}

const twinPoints = `${twinSlipDifference * 100}`;

function twinProblem(a: Slip, b: Slip): Raised {
    const [p, s] = [a.run.line.propeller, b.run.line.propeller];
    const points = Math.round(Math.abs(a.slip - b.slip) * 1000) / 10;
    return {
        components: [p, s],
        at: a.run.at,
        severity: 'warning',
        message: `At one speed ${nameOf(p)} slips by ${percent(a.slip)} and ${nameOf(s)} by ${percent(b.slip)}, ${points} points apart, where twins keep within ${twinPoints} points. Pitch, ratio or tachometer of one of them is not what is written, or one propeller is damaged or foul; compare them.`,
        figures: { port: { value: a.slip * 100, unit: '%' }, starboard: { value: b.slip * 100, unit: '%' } },
        related: [{ message: `The run of ${s.id}`, span: b.run.at }],
        draft: {
            title: `Propellers ${p.id} and ${s.id} slip differently`,
            urgency: 'in-upkeep',
            seen: `${seenText(a)} ${seenText(b)}`,
            because: `Twins at one speed keep within ${twinPoints} points; these are ${points} points apart.`,
            recommend: 'Prove both tachometers with one instrument, compare pitch and ratio as marked, and look both propellers over for damage and growth.',
        },
    };
}

/** Twins of one pitch and ratio in one row say the same thing once. */
function merged(problems: readonly Raised[]): Raised[] {
    const done: Raised[] = [];
    for (const problem of problems) {
        const same = done.findIndex(other => other.at.start === problem.at.start && other.at.uri === problem.at.uri && other.figures?.['slip']?.value === problem.figures?.['slip']?.value);
        const first = done[same];
        if (first && problem.figures?.['slip']) {
            done[same] = { ...first, components: [...new Set([...first.components, ...problem.components])] };
        } else {
            done.push(problem);
        }
    }
    return done;
}
