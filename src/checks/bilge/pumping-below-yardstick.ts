/** Bilge pumps that together move less than the yardstick for her length. */
import { nameOf, ofKind, siOf, wordOf, yardstick, type Component, type Span } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { computedBoth, lengthBoth, listed } from '../phrasing.js';
import { pumpFlow, shareText } from './pump-flow.js';

const literPerMinute = 0.001 / 60;
/** ISO 15083 as quoted second-hand: 10 L/min to 6 m, 15 below 12 m, 30 from 12 m on. */
const yardstickM3s = (lengthM: number) => (lengthM <= 6 ? 10 : lengthM < 12 ? 15 : 30) * literPerMinute;

export const pumpingBelowYardstick = defineCheck({
    id: 'pumping-below-yardstick',
    group: 'bilge',
    severity: 'warning',
    title: 'Bilge pumping is below the yardstick',
    why: 'Pumps that move too little cannot shed the water of ordinary use.',
    needs: ['bilge-pump: real-flow or rated-flow, makers-head and lift, works, condition', 'vessel: length-on-deck or length-overall'],
    computes: 'Sum of real-flow, else of the flow estimated at the lift from makers-head, else of a share of rated-flow (usually half), over the pumps that work, against 10 L/min to 6 m of length, 15 below 12 m, 30 from 12 m on.',
    sources: [
        { text: '10, 15 and 30 L/min by length', standard: 'ISO 15083', provenance: 'secondary' },
        { text: 'a pump moves about half its rating', provenance: 'published' },
    ],
    yardsticks: ['pump-share'],
    limits: ['A yardstick for private boats; inspected vessels have rules of their own.', 'It speaks of ordinary bilge water, not of a leak: that is for flooding-beats-pumps.', 'Where no bilge pump is recorded, nothing is said, unless the survey says that she has none (absent "Bilge pump").'],
    examples: [{
        name: 'one small pump at 40 ft',
        bad: `vessel "Marram" { length-on-deck: 40 ft }
bilge-pump BP1 { rated-flow: 500 gph }
`,
        fixed: `vessel "Marram" { length-on-deck: 40 ft }
bilge-pump BP1 { rated-flow: 2000 gph }
`,
    }],
    silent: [
        { name: 'the same pump at 19 ft', text: 'vessel "Marram" { length-on-deck: 19 ft }\nbilge-pump BP1 { rated-flow: 500 gph }\n' },
        { name: 'two pumps that together suffice', text: 'vessel "Marram" { length-on-deck: 12.2 m }\nbilge-pump BP1 { real-flow: 15 L/min }\nmanual-bilge-pump BP2 { real-flow: 15 L/min }\n' },
        { name: 'length not recorded', text: 'bilge-pump BP1 { rated-flow: 500 gph }\n' },
        { name: 'no pump recorded', text: 'vessel "Marram" { length-on-deck: 40 ft }\n' },
    ],
    run(record, raise) {
        const lengthM = record.vessel ? siOf(record.vessel, 'length-on-deck') ?? siOf(record.vessel, 'length-overall') : undefined;
        const pumps = ofKind(record, 'bilge-pump');
        const said = pumps.length === 0 ? record.unseen.find(({ absent, what }) => absent && pumpWords.test(what)) : undefined;
        if (said) {
            raise(noPump(said.span, lengthM));
        }
        if (lengthM === undefined || pumps.length === 0) {
            return;
        }
        const working = pumps.filter(isWorking);
        const flows = working.map(pump => pumpFlow(record, pump));
        const unknown = working[flows.indexOf(undefined)];
        const total = flows.reduce((sum, flow) => sum + (flow?.flowM3s ?? 0), 0);
        const wanted = yardstickM3s(lengthM);
        const [first] = pumps;
        if (total >= wanted - 1e-12 || !first) {
            return;
        }
        if (unknown) {
            raise({
                components: [unknown], at: unknown.idSpan, severity: 'hint',
                message: `${nameOf(unknown)} has no flow recorded; record its rated-flow to tell whether the pumps reach ${computedBoth(wanted, 'flow')}, the yardstick at ${lengthBoth(lengthM)}.`,
            });
            return;
        }
        const none = working.length === 0;
        const measure = record.vessel?.facts.has('length-on-deck') ? 'length-on-deck' : 'length-overall';
        const share = flows.some(flow => flow?.by === 'share') ? `, taken at ${shareText(yardstick(record, 'pump-share'))}` : '';
        const moves = none ? 'no bilge pump works' : `the bilge pumps that work (${listed(working.map(p => p.id))}) move about ${computedBoth(total, 'flow')} together${share}`;
        raise({
            components: pumps,
            at: first.idSpan,
            severity: none ? 'error' : 'warning',
            message: `At ${lengthBoth(lengthM)} the yardstick is ${computedBoth(wanted, 'flow')}, and ${moves}. Ordinary bilge water may outrun them; fit a larger or a second pump.`,
            figures: { flow: { value: total / literPerMinute, unit: 'L/min' }, yardstick: { value: wanted / literPerMinute, unit: 'L/min' } },
            draft: {
                title: none ? 'No bilge pump works' : 'Bilge pumping is below the yardstick',
                urgency: none ? 'before-departure' : 'in-upkeep',
                seen: `She measures {vessel.${measure}}, and ${moves}.`,
                because: `${computedBoth(wanted, 'flow')} is the yardstick for her length; what is less may not shed the water of ordinary use.`,
                recommend: none ? 'Repair the bilge pumps and try them.' : 'Fit a larger bilge pump, or a second one.',
                cites: [['ISO 15083']],
            },
        });
    },
});

/** An absent entry that means every bilge pump, not a second or an electric one. */
const pumpWords = /^\W*bilge[ -]pump(s|ing)?\W*$/i;

function noPump(at: Span, lengthM: number | undefined): Raised {
    const wanted = lengthM === undefined ? undefined : `At ${lengthBoth(lengthM)} the yardstick is ${computedBoth(yardstickM3s(lengthM), 'flow')}. `;
    return {
        components: [],
        at,
        severity: 'error',
        message: `She has no bilge pump. ${wanted ?? ''}Without one she cannot shed the water of ordinary use; fit one${wanted ? ' that reaches it' : ''}.`,
        draft: {
            title: 'No bilge pump',
            urgency: 'before-departure',
            seen: 'No bilge pump is fitted.',
            because: `${wanted ?? ''}Without a pump she cannot shed the water of ordinary use.`,
            recommend: 'Fit a bilge pump, and try it with water in the bilge.',
            cites: [['ISO 15083']],
        },
    };
}

function isWorking(pump: Component): boolean {
    return wordOf(pump, 'works') !== 'no' && wordOf(pump, 'condition') !== 'failed';
}

