/** The largest hose below the waterline admits more than the pumps move, and nothing tells of it. */
import { flagOf, isKind, nameOf, ofKind, siOf, wordOf, yardstick, type Component, type SurveyRecord, type Yardstick } from '../../record/model.js';
import { timeToFillS } from '../../trade/orifice-inflow.js';
import { shareText } from '../bilge/pump-flow.js';
import { computedBoth, listed } from '../phrasing.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { depthM, inflowInProse, inflowOf, pathsFrom, plumbedOpenings, powerPumps, pumpsAboard, weaknessOf, type Inflow, type Path, type Pumps } from './paths.js';

export const floodingBeatsPumps = defineCheck({
    id: 'flooding-beats-pumps',
    group: 'openings',
    severity: 'error',
    title: 'The largest hose admits more than the pumps move',
    why: 'It tells how long there is: without an alarm nobody knows before the sole is afloat.',
    needs: ['hull openings: below-waterline, size or bore, their runs', 'bilge pumps: rated-flow or real-flow, works', 'bilge alarm: works', 'vessel: floodable-volume, for the time to the cabin sole'],
    computes: 'Q = C (π/4) d² √(2 g h), C usually 0.6, for the narrowest bore of each run that holds a hose or ends open; the largest Q against the sum of the power pumps (real flow, else as estimated at its lift from makers-head, else a share of the rating, usually half). A fault where Q is greater and no high-water alarm works. Minutes = volume ÷ (Q − pumps).',
    sources: [
        { text: 'inflow through a sharp-edged opening; tables in circulation use a coefficient of 1', provenance: 'computed' },
        { text: 'a pump moves about half the figure on its box', provenance: 'published' },
    ],
    yardsticks: ['flow-coefficient', 'pump-share'],
    limits: [
        'An opening in use whose run is not recorded is taken to carry plumbing that may fail.',
        'One hose at a time, and no water yet inside. The narrowest bore of the whole run is taken: a hose that parts at the valve may admit more.',
        'A share of the rating is a rule of thumb: record real-flow from the maker’s curve at this lift.',
        'A pump counts unless it is recorded as not working, or its float switch is.',
        'Without a recorded power pump nothing is compared. Hand pumps are left out: they need a hand.',
        'No alarm recorded is taken as no alarm.',
    ],
    examples: [{
        name: 'one small pump and no alarm',
        bad: `through-hull TH1 { size: 1 in  metal: gunmetal  below-waterline: 3 ft }
seacock SC1 { metal: gunmetal  pattern: flanged-seacock }
hose H1 { bore: 25 mm }
sink S1
run R1: TH1 -> SC1 -> H1 -> S1
bilge-pump BP1 { rated-flow: 1000 gph  works: yes }
`,
        fixed: `through-hull TH1 { size: 1 in  metal: gunmetal  below-waterline: 3 ft }
seacock SC1 { metal: gunmetal  pattern: flanged-seacock }
hose H1 { bore: 25 mm }
sink S1
run R1: TH1 -> SC1 -> H1 -> S1
bilge-pump BP1 { rated-flow: 1000 gph  works: yes }
bilge-alarm BA1 { works: yes }
`,
        correction: 'Record a high-water alarm that works',
    }],
    silent: [
        { name: 'pumps that keep up', text: 'through-hull TH1 { size: 1 in  below-waterline: 3 ft }\nseacock SC1 { pattern: flanged-seacock }\nhose H1 { bore: 25 mm }\nsink S1\nrun R1: TH1 -> SC1 -> H1 -> S1\nbilge-pump BP1 { rated-flow: 2500 gph  works: yes }\n' },
        { name: 'capped', text: 'through-hull TH1 { size: 1 in  below-waterline: 3 ft }\nseacock SC1 { pattern: flanged-seacock }\nhose H1 { bore: 25 mm }\nrun R1: TH1 -> SC1 -> H1 -> capped\nbilge-pump BP1 { rated-flow: 500 gph  works: yes }\n' },
        { name: 'an alarm that works', text: 'through-hull TH1 { size: 1 in  below-waterline: 3 ft }\nseacock SC1 { pattern: flanged-seacock }\nhose H1 { bore: 25 mm }\nsink S1\nrun R1: TH1 -> SC1 -> H1 -> S1\nbilge-pump BP1 { rated-flow: 500 gph  works: yes }\nbilge-alarm BA1 { works: yes }\n' },
        { name: 'above the waterline', text: 'through-hull TH1 { size: 1 in  above-waterline: 3 ft }\nhose H1 { bore: 25 mm }\nsink S1\nrun R1: TH1 -> H1 -> S1\nbilge-pump BP1 { rated-flow: 500 gph  works: yes }\n' },
        { name: 'no pump recorded', text: 'through-hull TH1 { size: 1 in  below-waterline: 3 ft }\nseacock SC1 { pattern: flanged-seacock }\nhose H1 { bore: 25 mm }\nsink S1\nrun R1: TH1 -> SC1 -> H1 -> S1\n' },
    ],
    run(record, raise) {
        if (powerPumps(record).length === 0) {
            return;
        }
        const alarms = ofKind(record, 'bilge-alarm');
        if (alarms.some(alarm => wordOf(alarm, 'works') === 'yes')) {
            return;
        }
        const worst = worstPath(record);
        if (!worst) {
            return;
        }
        const pumps = pumpsAboard(record);
        if (worst.inflow.flowM3s <= pumps.flowM3s) {
            return;
        }
        const [unknown] = pumps.unknown;
        const untried = alarms.find(alarm => wordOf(alarm, 'works') !== 'no');
        if (unknown) {
            raise({ components: [unknown], at: unknown.idSpan, severity: 'hint', message: `Record rated-flow or real-flow of ${nameOf(unknown)} to tell whether the pumps keep up with ${worst.inflow.text} through ${nameOf(worst.path.opening)}.` });
        } else if (untried) {
            raise({ components: [untried], at: untried.idSpan, severity: 'hint', message: `Record whether ${nameOf(untried)} works: the pumps do not keep up with ${worst.inflow.text} through ${nameOf(worst.path.opening)}.` });
        } else {
            raise(problem(record, worst, pumps, alarms[0]));
        }
    },
});

export interface Worst {
    readonly path: Path;
    readonly inflow: Inflow;
}

/** The way in that would admit most if its hose failed or it stands open. */
export function worstPath(record: SurveyRecord): Worst | undefined {
    let worst: Worst | undefined;
    for (const opening of plumbedOpenings(record)) {
        for (const path of depthM(opening) === undefined ? [] : pathsFrom(record, opening)) {
            const canFail = path.run === undefined ? flagOf(opening, 'in-use') === true : path.endsOpen || path.parts.some(c => isKind(record, c, 'hose'));
            const inflow = path.isClosed || !canFail ? undefined : inflowOf(record, path);
            if (inflow && inflow.flowM3s > (worst?.inflow.flowM3s ?? 0)) {
                worst = { path, inflow };
            }
        }
    }
    return worst;
}

function problem(record: SurveyRecord, { path, inflow }: Worst, pumps: Pumps, alarm: Component | undefined): Raised {
    const { opening } = path;
    const volumeM3 = record.vessel ? siOf(record.vessel, 'floodable-volume') : undefined;
    const seconds = volumeM3 === undefined ? undefined : timeToFillS(volumeM3, inflow.flowM3s, pumps.flowM3s);
    const time = seconds === undefined ? '' : ` The water reaches the cabin sole in about ${Math.max(1, Math.round(seconds / 60))} minutes.`;
    const moved = pumpsText(pumps, yardstick(record, 'pump-share'));
    const alarmText = alarm ? `the high-water alarm ${alarm.id} does not work` : 'no high-water alarm is recorded';
    const weakness = weaknessOf(path);
    const hose = path.parts.find(c => isKind(record, c, 'hose'));
    const power = [...pumps.pumps, ...pumps.unstarted, ...pumps.idle];
    const first = power[0] ?? opening;
    const corrections: Correction[] = alarm
        ? [{ kind: 'set-fact', title: `Record that ${alarm.id} works`, component: alarm, property: 'works', value: 'yes' }]
        : [{ kind: 'declare', title: 'Record a high-water alarm that works', beside: first, componentKind: 'bilge-alarm', idStem: 'BA', facts: [['works', 'yes']] }];
    return {
        components: [opening, ...pumps.pumps], at: opening.idSpan,
        message: `If ${hose ? `the hose of ${nameOf(opening)} fails, it` : path.run ? `${nameOf(opening)} stands open, it` : `what is fitted to ${nameOf(opening)} fails, it`} admits ${inflow.text}${weakness ? `, and ${weakness}` : ''}; ${moved}, and ${alarmText}.${time} Fit an alarm and pumps that keep up, and tie a plug at each opening.`,
        figures: { ...inflow.figures, pumps: { value: Math.round(pumps.flowM3s * 60_000 * 10) / 10, unit: 'L/min' }, ...(seconds === undefined ? {} : { minutes: { value: Math.round(seconds / 6) / 10, unit: 'min' } }) },
        corrections,
        draft: {
            title: 'Pumps do not keep up with the largest hose, and no alarm tells of it',
            urgency: 'within-days', days: 30,
            seen: `The opening that would admit most is ${opening.title ? `${opening.title} (${opening.id})` : opening.id}, {${opening.id}.below-waterline} below the waterline; ${weakness ? `${weakness}; ` : ''}${moved}, and ${alarmText}.`,
            because: `If ${hose ? 'its hose fails' : path.run ? 'it stands open' : 'what is fitted to it fails'} it admits ${inflowInProse(record, path, inflow)}, more than the pumps move.${time}`,
            recommend: 'Fit a high-water alarm that can be heard ashore, pumps that keep up, and a tapered plug tied at each opening.',
            cites: [['Good practice']],
        },
    };
}

function pumpsText({ flowM3s, isDerated, idle, unstarted }: Pumps, share: Yardstick): string {
    const failing = [
        ...(idle.length > 0 ? [`${listed(idle.map(pump => pump.id))} not working`] : []),
        ...(unstarted.length > 0 ? [`${listed(unstarted.map(pump => pump.id))} not started by its float switch`] : []),
    ];
    const counted = flowM3s === 0 ? 'no power pump starts and runs by itself'
        : `the power pumps move about ${computedBoth(flowM3s, 'flow')}${isDerated ? `, taken by rule of thumb at ${shareText(share)}` : ''}`;
    return failing.length === 0 ? counted : `${counted} (${failing.join(', ')})`;
}
