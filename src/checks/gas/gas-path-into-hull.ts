/** A way by which cooking gas may come into the hull: locker, joints, ends of hose, or nothing to shut it off with. */
import { flagOf, isKind, nameOf, ofKind, runsThrough, siOf, wordOf, type Component, type Joint, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { listed } from '../phrasing.js';
import { isSaidAbsent } from '../safety/gear.js';
import { isGasHose } from './gas-system.js';

export const gasPathIntoHull = defineCheck({
    id: 'gas-path-into-hull',
    group: 'gas',
    severity: 'error',
    title: 'Cooking gas may come into the hull',
    why: 'Gas that comes into the hull stays there, low, until something lights it.',
    needs: [
        'gas-locker: open-to-hull, vapor-tight, lid', 'gas-hose or gas-line: joints-inboard, joint-for-gimbal', 'gas-hose: end-fittings; any gas hose or its joints: clamp-type',
        'gas-valve: at-galley, works', 'stove: fuel', 'gas-cylinder or regulator: in-locker',
    ],
    computes: 'A fault where the locker is open to the hull or not tight to it, or opens at its side; where a cylinder or regulator stands in the hull; where a joint lies between locker and appliance, other than the one by which a swinging stove hangs on its hose; where a worm clip holds a gas hose; where a stove has no shut-off that works and is reached from the galley.',
    sources: [{ text: 'tight locker opening at its top, one whole run for each appliance, made-up ends, shut-off at the galley', standard: 'ABYC A-1', provenance: 'secondary' }],
    limits: [
        'A joint within the locker is none inboard; joints-inboard counts those outside it.',
        'A tee in a gas run may be in the locker: where joints-inboard is not recorded of the run’s lines, it is asked for.',
        'Where no gas-valve is recorded beside a gas stove, it is asked for, unless the survey says that there is none (absent "Gas shut-off").',
        'Whether hose is made for gas is left to hose-wrong-for-service.',
    ],
    examples: [{
        name: 'locker open to the hull, with a lid at its side',
        bad: `vessel "Marram" {}
gas-locker GL1 { open-to-hull: yes  lid: side }
`,
        fixed: `vessel "Marram" {}
gas-locker GL1 { open-to-hull: no  lid: top }
`,
    }, {
        name: 'joint under the stove',
        bad: `stove ST1 { fuel: gas  gimbaled: yes }
gas-hose GH1 { class: gas  joints-inboard: 1 }
gas-valve GV1 { at-galley: yes  works: yes }
`,
        fixed: `stove ST1 { fuel: gas  gimbaled: yes }
gas-hose GH1 { class: gas  joints-inboard: 1  joint-for-gimbal: yes }
gas-valve GV1 { at-galley: yes  works: yes }
`,
        correction: 'Record the joint of GH1 as that of a swinging stove',
    }, {
        name: 'worm clips on the gas hose',
        bad: `gas-hose GH1 { class: gas  end-fittings: worm-clip }
`,
        fixed: `gas-hose GH1 { class: gas  end-fittings: crimped }
`,
    }, {
        name: 'no shut-off at the galley',
        bad: `stove ST1 { fuel: gas }
gas-valve GV1 { at-galley: no }
`,
        fixed: `stove ST1 { fuel: gas }
gas-valve GV1 { at-galley: no }
gas-valve GV2 { at-galley: yes  works: yes }
`,
    }],
    silent: [
        { name: 'tight locker, whole run, shut-off at hand', text: 'gas-locker GL1 { open-to-hull: no  vapor-tight: yes  lid: top }\ngas-hose GH1 { class: gas  joints-inboard: 0  end-fittings: crimped }\nstove ST1 { fuel: gas }\ngas-valve GV1 { at-galley: yes  works: yes }\n' },
        { name: 'one joint for a swinging stove', text: 'stove ST1 { fuel: gas  gimbaled: yes }\ngas-line GP1 { joints-inboard: 1  joint-for-gimbal: yes }\ngas-valve GV1 { at-galley: yes }\n' },
        { name: 'stove for alcohol', text: 'stove ST1 { fuel: alcohol }\ngas-valve GV1 { at-galley: no }\n' },
        { name: 'worm clips on a water hose', text: 'hose H1 { class: water  clamp-type: worm }\n' },
    ],
    run(record, raise) {
        const faults = [...lockerFaults(record), ...housed(record), ...lineFaults(record), ...tees(record), ...shutOff(record)];
        faults.forEach(raise);
    },
});

interface Way {
    readonly property: string;
    readonly what: string;
    readonly remedy: string;
    readonly corrections?: readonly Correction[];
    /** The joint it is recorded at, where it is not on the component. */
    readonly joint?: Joint;
}

/** The problem of one component, with all that is wrong with it. */
function raised(part: Component, ways: readonly Way[]): readonly Raised[] {
    const [first] = ways;
    if (!first) {
        return [];
    }
    const what = listed([...new Set(ways.map(way => way.what))]);
    const remedy = listed([...new Set(ways.map(way => way.remedy))]);
    return [{
        components: [part],
        at: (first.joint ?? part).facts.get(first.property)?.span ?? part.idSpan,
        message: `${nameOf(part)} ${what} (good practice per ABYC A-1). Gas that comes into the hull stays there until something lights it; ${remedy}.`,
        corrections: ways.flatMap(way => way.corrections ?? []),
        draft: {
            title: `Gas may come into the hull at ${part.id}`,
            urgency: 'before-use',
            seen: `${nameOf(part)} ${what}.`,
            because: 'Gas is heavier than air. What comes into the hull gathers low, stays there and may explode.',
            recommend: `At ${part.id}: ${remedy}. Prove the system tight before gas is used.`,
            cites: [['ABYC A-1']],
        },
    }];
}

function lockerFaults(record: SurveyRecord): readonly Raised[] {
    return ofKind(record, 'gas-locker').flatMap(locker => raised(locker, [
        ...(flagOf(locker, 'open-to-hull') === true ? [{ property: 'open-to-hull', what: 'is open to the hull', remedy: 'seal it to the inside of the boat' }] : []),
        ...(flagOf(locker, 'vapor-tight') === false ? [{ property: 'vapor-tight', what: 'is not tight to the inside of the boat', remedy: 'seal it to the inside of the boat' }] : []),
        ...(wordOf(locker, 'lid') === 'side' ? [{ property: 'lid', what: 'opens at its side, where gas runs out', remedy: 'close the side and give it a lid at its top with a gasket' }] : []),
    ]));
}

/** Cylinders and regulators that stand in the hull. */
function housed(record: SurveyRecord): readonly Raised[] {
    return [...ofKind(record, 'gas-cylinder'), ...ofKind(record, 'regulator')].flatMap(part => raised(part, flagOf(part, 'in-locker') === false
        ? [{ property: 'in-locker', what: 'stands in the hull, outside a gas locker', remedy: 'put it into a gas locker, or on deck in the open' }] : []));
}

function lineFaults(record: SurveyRecord): readonly Raised[] {
    const hoses = ofKind(record, 'hose').filter(hose => isGasHose(record, hose));
    return [...hoses, ...ofKind(record, 'gas-line')].flatMap(line => raised(line, [...jointFault(line), ...(isKind(record, line, 'hose') ? clipFault(record, line) : [])]));
}

function jointFault(line: Component): readonly Way[] {
    const joints = siOf(line, 'joints-inboard') ?? 0;
    const allowed = flagOf(line, 'joint-for-gimbal') === true ? 1 : 0;
    if (joints <= allowed) {
        return [];
    }
    const corrections: readonly Correction[] = joints === 1 ? [{ kind: 'set-fact', title: `Record the joint of ${line.id} as that of a swinging stove`, component: line, property: 'joint-for-gimbal', value: 'yes' }] : [];
    return [{
        property: 'joints-inboard', what: `has ${joints === 1 ? 'a joint' : `${joints} joints`} between the locker and the appliance`, remedy: 'lead one whole run from the locker to each appliance', corrections,
    }];
}

/** Worm clips, recorded of its ends, of its clamps or at its joints. */
function clipFault(record: SurveyRecord, hose: Component): readonly Way[] {
    const way = (property: string, joint?: Joint): Way => ({ property, what: 'is held by worm clips', remedy: 'renew it by hose with made-up ends', ...(joint ? { joint } : {}) });
    if (wordOf(hose, 'end-fittings') === 'worm-clip') {
        return [way('end-fittings')];
    }
    const joint = runsThrough(record, hose).flatMap(run => run.joints).find(at => (at.from === hose || at.to === hose) && wordOf(at, 'clamp-type') === 'worm');
    return wordOf(hose, 'clamp-type') === 'worm' ? [way('clamp-type')] : joint ? [way('clamp-type', joint)] : [];
}

/** A tee in a gas run is a joint inboard unless it stands in the locker. */
function tees(record: SurveyRecord): readonly Raised[] {
    return record.runs.filter(run => wordOf(run, 'service') === 'gas').flatMap((run): Raised[] => {
        const tee = run.components.find(part => isKind(record, part, 'tee'));
        const lines = run.components.filter(part => isKind(record, part, 'gas-hose') || isKind(record, part, 'gas-line'));
        const after = tee && lines.find(line => run.components.indexOf(line) > run.components.indexOf(tee));
        return tee && after && lines.every(line => !line.facts.has('joints-inboard'))
            ? [{ components: [after], at: tee.idSpan, severity: 'hint', message: `${nameOf(tee)} lies in a gas run; record how many joints of ${nameOf(after)} lie between locker and appliance (joints-inboard; 0 where the tee stands in the locker).` }] : [];
    });
}

/** Words of an absent entry that mean the shut-off of the galley. */
const shutOffWords = /solenoid|\bgas (shut-?\s?off|valve)|shut-?\s?off\b.*\b(gas|galley|stove)\b/i;

/** A gas stove, and no shut-off that works at the hand of the cook. */
function shutOff(record: SurveyRecord): readonly Raised[] {
    const stove = ofKind(record, 'stove').find(candidate => wordOf(candidate, 'fuel') === 'gas');
    const valves = ofKind(record, 'gas-valve');
    const isGood = (valve: Component) => flagOf(valve, 'at-galley') !== false && wordOf(valve, 'works') !== 'no';
    const [valve] = valves;
    if (!stove) {
        return valves.length > 0 && valves.every(candidate => wordOf(candidate, 'works') === 'no') && valve
            ? raised(valve, [{ property: 'works', what: 'does not shut the gas off', remedy: 'repair or renew it' }]) : [];
    }
    if (valves.some(isGood)) {
        return [];
    }
    if (!valve && isSaidAbsent(record, shutOffWords)) {
        return raised(stove, [{ property: 'fuel', what: 'burns gas and has no shut-off at the hand of the cook', remedy: 'fit a shut-off that is worked from the galley without reaching over the flame' }]);
    }
    if (!valve) {
        return [{ components: [stove], at: stove.idSpan, severity: 'hint', message: `${nameOf(stove)} burns gas; record its shut-off (gas-valve) and whether it is at the hand of the cook (at-galley).` }];
    }
    const dead = valves.find(candidate => flagOf(candidate, 'at-galley') !== false);
    return raised(dead ?? valve, [dead ? { property: 'works', what: `does not shut off the gas of ${stove.id}`, remedy: 'repair or renew it' }
        : { property: 'at-galley', what: `is not at the hand of the cook, nor is another shut-off for ${stove.id}`, remedy: 'fit one that is worked from the galley without reaching over the flame' }]);
}
