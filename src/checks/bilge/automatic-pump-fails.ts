/** A pump that is to start by itself and does not, starts too often, or tells nobody of water. */
import { convertTo } from '../../quantities/index.js';
import { flagOf, isKind, nameOf, ofKind, siOf, wordOf, yardstick, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';
import { listed } from '../phrasing.js';
import { lies } from '../lies.js';
import { floodingBeatsPumps } from '../openings/flooding-beats-pumps.js';
import { powerPumps } from '../openings/paths.js';

export const automaticPumpFails = defineCheck({
    id: 'automatic-pump-fails',
    group: 'bilge',
    severity: 'error',
    title: 'Automatic bilge pump fails, or nothing tells of water',
    why: 'She sinks in silence, at her berth, with nobody aboard.',
    needs: ['float-switch: works, serves', 'bilge-pump: automatic, starts, bypasses-main-switch, water-rising', 'bilge-alarm: works, or that none is aboard', 'how she lies'],
    computes: 'A fault where a float switch does not work when lifted, or an automatic pump is dead with the main switch off. Advice where it starts more often a day than the limit (usually 20) as she lies, and where she was surveyed afloat and no high-water alarm works.',
    sources: [{ text: 'float switch, feed past the main switch, 20 starts a day, alarm', provenance: 'practice' }],
    yardsticks: ['pump-starts'],
    limits: [
        'The alarm is judged where she was afloat at any attendance, starts wherever they are recorded.',
        'An alarm is taken as missing only where the survey says so, under absent; where nothing is said it is asked for.',
        'Where the pumps do not keep up with the largest hose, the alarm is left to flooding-beats-pumps.',
        'Whether the feed is fused is judged with the circuits.',
    ],
    examples: [{
        name: 'float switch that does not start the pump',
        bad: `vessel "Marram" {}
bilge-pump BP1 { rated-flow: 1500 gph  works: yes  automatic: yes }
float-switch FS1 { serves: BP1  works: no }
`,
        fixed: `vessel "Marram" {}
bilge-pump BP1 { rated-flow: 1500 gph  works: yes  automatic: yes }
float-switch FS1 { serves: BP1  works: yes }
`,
        correction: 'Record that FS1 works',
    }, {
        name: 'dead with the main switch off',
        bad: `bilge-pump BP1 { automatic: yes  bypasses-main-switch: no }
`,
        fixed: `bilge-pump BP1 { automatic: yes  bypasses-main-switch: yes }
`,
        correction: 'Record that BP1 runs with the main switch off',
    }, {
        name: 'starts too often as she lies',
        bad: `survey "1" condition-and-value { attended 2026-10-06 afloat "Harbor" }
bilge-pump BP1 { automatic: yes  starts: 36 per-day }
bilge-alarm BA1 { works: yes }
`,
        fixed: `survey "1" condition-and-value { attended 2026-10-06 afloat "Harbor" }
bilge-pump BP1 { automatic: yes  starts: 6 per-day }
bilge-alarm BA1 { works: yes }
`,
    }, {
        name: 'no alarm afloat',
        bad: `survey "1" condition-and-value { attended 2026-10-06 afloat "Harbor"  absent "High-water alarm": "none is fitted" }
bilge-pump BP1 { automatic: yes }
`,
        fixed: `survey "1" condition-and-value { attended 2026-10-06 afloat "Harbor" }
bilge-pump BP1 { automatic: yes }
bilge-alarm BA1 { works: yes }
`,
    }],
    silent: [
        { name: 'switch not tried', text: 'bilge-pump BP1 { automatic: yes }\nfloat-switch FS1 { serves: BP1  works: not-tried }\n' },
        { name: 'pump that is not automatic', text: 'bilge-pump BP1 { automatic: no  bypasses-main-switch: no }\n' },
        { name: 'twenty starts a day', text: 'survey "1" condition-and-value { attended 2026-10-06 afloat "Harbor" }\nbilge-pump BP1 { automatic: yes  starts: 20 per-day }\nbilge-alarm BA1 { works: yes }\n' },
        { name: 'no alarm on a boat ashore', text: 'survey "1" condition-and-value { attended 2026-10-06 ashore "Yard"  absent "High-water alarm": "none is fitted" }\nbilge-pump BP1 { automatic: yes }\n' },
    ],
    run(record, raise) {
        const pumps = powerPumps(record);
        for (const float of ofKind(record, 'float-switch')) {
            if (wordOf(float, 'works') === 'no') {
                raise(deadFloat(record, float, pumpsOf(record, float)));
            }
        }
        for (const pump of pumps) {
            if (flagOf(pump, 'bypasses-main-switch') === false && isAutomatic(record, pump)) {
                raise(deadWithSwitch(record, pump));
            }
            if (isDead(pump) && isAutomatic(record, pump) && !isPumpingReported(record)) {
                raise(deadPump(record, pump));
            }
            const often = tooOften(record, pump);
            if (often) {
                raise(often);
            }
        }
        const silent = pumps.length > 0 ? noAlarm(record, pumps) : undefined;
        if (silent) {
            raise(silent);
        }
    },
});

/** The pumps a float switch starts: those it serves, else the only automatic one. */
function pumpsOf(record: SurveyRecord, float: Component): readonly Component[] {
    const served = (float.facts.get('serves')?.values ?? []).flatMap(value => (value.type === 'component' ? record.components.get(value.id) ?? [] : []));
    const automatic = powerPumps(record).filter(pump => flagOf(pump, 'automatic') === true);
    return served.length > 0 ? served.filter(part => isKind(record, part, 'bilge-pump')) : automatic.length === 1 ? automatic : [];
}

function isAutomatic(record: SurveyRecord, pump: Component): boolean {
    return flagOf(pump, 'automatic') ?? ofKind(record, 'float-switch').some(float => pumpsOf(record, float).includes(pump));
}

/** Water that rises while she is surveyed leaves no time. */
function urgencyOf(record: SurveyRecord): { readonly urgency: Urgency; readonly days?: number } {
    return powerPumps(record).some(pump => flagOf(pump, 'water-rising') === true) ? { urgency: 'at-once' } : { urgency: 'within-days', days: 7 };
}

const risingText = (record: SurveyRecord) => (urgencyOf(record).urgency === 'at-once' ? ' Water was rising in the bilge at the survey.' : '');

function deadFloat(record: SurveyRecord, float: Component, pumps: readonly Component[]): Raised {
    const names = pumps.length > 0 ? listed(pumps.map(pump => pump.id)) : 'its pump';
    return {
        components: [float, ...pumps],
        at: float.facts.get('works')?.span ?? float.idSpan,
        message: `${nameOf(float)} does not start ${names} when it is lifted.${risingText(record)} Unattended, no water is pumped; renew the switch and its splices, on a fused feed of its own.`,
        corrections: [{ kind: 'set-fact', title: `Record that ${float.id} works`, component: float, property: 'works', value: 'yes' }],
        draft: {
            title: `Float switch ${float.id} does not start the bilge pump`,
            ...urgencyOf(record),
            seen: `Float switch ${float.id}, lifted by hand, does not start ${names}.${risingText(record)}`,
            because: 'Lying unattended, she pumps nothing, and sinks in silence if water comes in.',
            recommend: `Renew float switch ${float.id} with splices above the bilge, on a fused feed that does not pass the main switch, and try it with water.`,
            cites: [['Good practice']],
        },
    };
}

const isDead = (pump: Component) => wordOf(pump, 'works') === 'no';

/** Where no pump at all works, and her length is known, pumping-below-yardstick says so. */
function isPumpingReported(record: SurveyRecord): boolean {
    const { vessel } = record;
    return vessel !== undefined && (vessel.facts.has('length-on-deck') || vessel.facts.has('length-overall')) && ofKind(record, 'bilge-pump').every(isDead);
}

function deadPump(record: SurveyRecord, pump: Component): Raised {
    return {
        components: [pump],
        at: pump.facts.get('works')?.span ?? pump.idSpan,
        message: `${nameOf(pump)}, which is to start by itself, does not work.${risingText(record)} Unattended, it pumps nothing; repair or renew it, and try it with water.`,
        corrections: [{ kind: 'set-fact', title: `Record that ${pump.id} works`, component: pump, property: 'works', value: 'yes' }],
        draft: {
            title: `Automatic bilge pump ${pump.id} does not work`,
            ...urgencyOf(record),
            seen: `Automatic bilge pump ${pump.id} does not run when it is tried.${risingText(record)}`,
            because: 'Lying unattended, she counts on it, and sinks in silence if water comes in.',
            recommend: `Repair or renew bilge pump ${pump.id}, and try it by its switch with water in the bilge.`,
            cites: [['Good practice']],
        },
    };
}

function deadWithSwitch(record: SurveyRecord, pump: Component): Raised {
    return {
        components: [pump],
        at: pump.facts.get('bypasses-main-switch')?.span ?? pump.idSpan,
        message: `${nameOf(pump)}, which is to start by itself, is dead with the main switch off.${risingText(record)} Left as boats are left, it pumps nothing; feed it from the battery through a fuse of its own.`,
        corrections: [{ kind: 'set-fact', title: `Record that ${pump.id} runs with the main switch off`, component: pump, property: 'bypasses-main-switch', value: 'yes' }],
        draft: {
            title: `Bilge pump ${pump.id} is dead with the main switch off`,
            ...urgencyOf(record),
            seen: `With the main switch off, automatic bilge pump ${pump.id} does not run.${risingText(record)}`,
            because: 'Left with the main switch off, she pumps nothing, and sinks in silence if water comes in.',
            recommend: `Feed bilge pump ${pump.id} straight from the battery through a fuse at the battery.`,
            cites: [['Good practice']],
        },
    };
}

function tooOften(record: SurveyRecord, pump: Component): Raised | undefined {
    const starts = siOf(pump, 'starts');
    const limit = yardstick(record, 'pump-starts');
    if (starts === undefined || starts <= limit.si * (1 + 1e-9)) {
        return undefined;
    }
    const [times, most] = [starts, limit.si].map(si => Math.round(convertTo(si, 'per-day') * 10) / 10);
    return {
        components: [pump],
        at: pump.facts.get('starts')?.span ?? pump.idSpan,
        severity: 'warning',
        message: `${nameOf(pump)} starts ${times} times a day as she lies, over ${limit.whose} of ${most}.${risingText(record)} She leaks more than a pump and a battery should be asked to keep up with; find where the water comes from.`,
        figures: { starts: { value: times ?? 0, unit: 'per-day' }, limit: { value: most ?? 0, unit: 'per-day' } },
        draft: {
            title: `Bilge pump ${pump.id} starts ${times} times a day`,
            ...urgencyOf(record),
            seen: `As she lies, bilge pump ${pump.id} starts {${pump.id}.starts}, where ${most} a day is ${limit.whose}.${risingText(record)}`,
            because: 'Water comes in steadily; when the pump, its switch or the battery fails, nothing holds it back.',
            recommend: `Find where the water comes from and stop it; then count the starts of ${pump.id} again over a day.`,
            cites: [['Good practice']],
        },
    };
}

/** Afloat at any attendance: a boat hauled for her survey is launched again. */
function wasAfloat(record: SurveyRecord): boolean {
    return lies(record) === 'afloat' || (record.survey?.attendances.some(attendance => attendance.state === 'afloat') ?? false);
}

/** Words of an absent entry that mean a high-water alarm. */
const alarmWords = /\b(high[- ]water|bilge)[- ](level )?alarm/i;

function noAlarm(record: SurveyRecord, pumps: readonly Component[]): Raised | undefined {
    const alarms = ofKind(record, 'bilge-alarm');
    const [pump] = pumps;
    if (!pump || !wasAfloat(record) || alarms.some(alarm => wordOf(alarm, 'works') !== 'no') || isReportedElsewhere(record)) {
        return undefined;
    }
    const isAbsent = record.unseen.some(({ absent, what }) => absent && alarmWords.test(what));
    const [dead] = alarms;
    if (!dead && !isAbsent) {
        return isAutomatic(record, pump) ? { components: [pump], at: pump.idSpan, severity: 'hint', message: `She was surveyed afloat with an automatic pump, ${nameOf(pump)}; record her high-water alarm, or that none is aboard (absent "High-water alarm").` } : undefined;
    }
    const what = dead ? `the high-water alarm ${dead.id} does not work` : 'she has no high-water alarm';
    return {
        components: dead ? [dead] : [pump],
        at: dead?.facts.get('works')?.span ?? pump.idSpan,
        severity: 'warning',
        message: `She lies afloat when she is not hauled out, and ${what}. Nobody is told when water rises past what the pump moves; fit one that is heard from the dock.`,
        corrections: dead ? [{ kind: 'set-fact', title: `Record that ${dead.id} works`, component: dead, property: 'works', value: 'yes' }]
            : [{ kind: 'declare', title: 'Record a high-water alarm that works', beside: pump, componentKind: 'bilge-alarm', idStem: 'BA', facts: [['works', 'yes']] }],
        draft: {
            title: 'No high-water alarm tells of water in the bilge',
            urgency: 'in-upkeep',
            seen: `She was surveyed afloat, and ${what}.`,
            because: 'When a pump fails, or water rises past what it moves, nobody is told until the sole is afloat.',
            recommend: dead ? `Repair or renew the high-water alarm ${dead.id}, and try it with water.` : 'Fit a high-water alarm above the float switch, heard from the dock, and try it with water.',
            cites: [['Good practice']],
        },
    };
}

function isReportedElsewhere(record: SurveyRecord): boolean {
    let isReported = false;
    floodingBeatsPumps.run(record, problem => {
        isReported ||= problem.severity !== 'hint';
    });
    return isReported;
}
