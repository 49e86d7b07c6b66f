/** A bilge pump that moves far less than the figure on its box, for its lift, hose or voltage. */
import { anyValue, nameOf, ofKind, siOf, wordOf, yardstick, type Component, type SurveyRecord, type Yardstick } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, computedBoth, lengthBoth, listed } from '../phrasing.js';
import { inAnotherUnit } from '../other-unit.js';
import { worstPath } from '../openings/flooding-beats-pumps.js';
import { powerPumps, pumpsAboard } from '../openings/paths.js';
import { hoseOf, pumpFlow, shareText } from './pump-flow.js';

/** Readings and estimates of flow are good to a tenth. */
const slack = 0.9;

export const pumpDeratedByLift = defineCheck({
    id: 'pump-derated-by-lift',
    group: 'bilge',
    severity: 'warning',
    title: 'Bilge pump moves far less than its box says',
    why: 'The rating is a free flow at full voltage; lift, hose and wire take their share, and the rest may not do.',
    needs: ['bilge-pump: rated-flow, with real-flow, or makers-head and lift', 'the run of the pump: bore and length of its hose', 'bilge-pump: voltage, nominal-voltage', 'for the comparison with a leak: hull openings, bilge-alarm'],
    computes: 'A fault where the lift reaches the maker’s head, at which the pump moves nothing. Advice where it moves less than nine tenths of the usual share (half) of its rating: measured, or estimated as Q = √((H₀s² − lift) ÷ (H₀/Q₀² + k)), s the share of the voltage, k the friction of the hose. Advice, too, where the ratings together would keep up with the largest hose and the flows, at their lift or at the usual share, do not.',
    sources: [
        { text: 'a pump moves about half the figure on its box', provenance: 'published' },
        { text: 'flow at a lift from the two ends of the maker’s curve, and friction of the hose', provenance: 'computed' },
        { text: 'a tenth left to reading and estimate', provenance: 'chosen' },
    ],
    yardsticks: ['pump-share', 'flow-coefficient'],
    limits: [
        'The estimate is for centrifugal pumps and smooth hose; bends, check valves and ribbed hose take more. Diaphragm and hand pumps are left out.',
        'Where neither a measured flow nor the maker’s head is recorded, the usual share stands in for them.',
        'Whether all pumps together reach the yardstick for her length is left to pumping-below-yardstick.',
        'Where no high-water alarm works, the comparison with the largest hose is left to flooding-beats-pumps.',
    ],
    examples: [{
        name: 'lift near the most the pump can do',
        bad: `vessel "Marram" {}
bilge-pump BP1 { rated-flow: 1000 gph  makers-head: 4 m  lift: 3.5 m }
`,
        fixed: `vessel "Marram" {}
bilge-pump BP1 { rated-flow: 1000 gph  makers-head: 4 m  lift: 1.5 m }
`,
    }, {
        name: 'lift past what the pump can do',
        bad: `bilge-pump BP1 { rated-flow: 500 gph  makers-head: 8 ft  lift: 9 ft }
`,
        fixed: `bilge-pump BP1 { rated-flow: 500 gph  makers-head: 8 ft  lift: 3 ft }
`,
    }, {
        name: 'ratings that keep up, flows that do not',
        bad: `through-hull TH1 { size: 1 in  metal: gunmetal  below-waterline: 3 ft }
seacock SC1 { metal: gunmetal  pattern: flanged-seacock }
hose H1 { bore: 25 mm }
sink S1
run R1: TH1 -> SC1 -> H1 -> S1
bilge-pump BP1 { rated-flow: 2000 gph  works: yes }
bilge-alarm BA1 { works: yes }
`,
        fixed: `through-hull TH1 { size: 1 in  metal: gunmetal  below-waterline: 3 ft }
seacock SC1 { metal: gunmetal  pattern: flanged-seacock }
hose H1 { bore: 25 mm }
sink S1
run R1: TH1 -> SC1 -> H1 -> S1
bilge-pump BP1 { rated-flow: 2000 gph  real-flow: 1300 gph  works: yes }
bilge-alarm BA1 { works: yes }
`,
    }],
    silent: [
        { name: 'measured at half its rating', text: 'bilge-pump BP1 { rated-flow: 1500 gph  real-flow: 720 gph }\n' },
        { name: 'hand pump', text: 'manual-bilge-pump BP1 { rated-flow: 10 gpm  makers-head: 4 m  lift: 3.9 m }\n' },
        { name: 'rating alone', text: 'bilge-pump BP1 { rated-flow: 1500 gph  lift: 2 m }\n' },
        { name: 'ratings that do not keep up either', text: 'through-hull TH1 { size: 1 in  below-waterline: 3 ft }\nseacock SC1 { pattern: flanged-seacock }\nhose H1 { bore: 25 mm }\nsink S1\nrun R1: TH1 -> SC1 -> H1 -> S1\nbilge-pump BP1 { rated-flow: 500 gph  works: yes }\nbilge-alarm BA1 { works: yes }\n' },
    ],
    run(record, raise) {
        const derated = powerPumps(record).map(pump => judgePump(record, pump)).filter(problem => problem !== undefined);
        derated.forEach(raise);
        const beaten = derated.length > 0 ? undefined : judgeAll(record);
        if (beaten) {
            raise(beaten);
        }
    },
});

function judgePump(record: SurveyRecord, pump: Component): Raised | undefined {
    const rated = siOf(pump, 'rated-flow');
    const moved = pumpFlow(record, pump);
    const count = siOf(pump, 'quantity') ?? 1;
    const share = yardstick(record, 'pump-share');
    const flowM3s = (moved?.flowM3s ?? 0) / Math.max(1, count);
    if (wordOf(pump, 'works') === 'no' || !moved || moved.by === 'share' || rated === undefined || flowM3s >= slack * share.si * rated) {
        return undefined;
    }
    return moved.by === 'real' ? measuredLow(pump, flowM3s, rated, share) : liftedLow(record, pump, flowM3s, rated, share);
}

function measuredLow(pump: Component, flowM3s: number, rated: number, share: Yardstick): Raised {
    const real = anyValue(pump, 'real-flow');
    const percent = Math.round(flowM3s / rated * 100);
    const against = `against {${pump.id}.rated-flow} on it`;
    return raised(pump, {
        property: 'real-flow', severity: 'warning', flowM3s, rated,
        what: `moves ${real?.type === 'quantity' ? both(real) : computedBoth(flowM3s, 'flow')}, ${percent} % of its rating, where ${share.written} is ${share.whose}`,
        seen: `moves {${pump.id}.real-flow}, ${against}: ${percent} %, where ${share.written} is ${share.whose}`,
        corrections: real?.type === 'quantity' ? inAnotherUnit(pump, 'real-flow', real, m3s => m3s >= slack * share.si * rated && m3s <= rated) : [],
    });
}

function liftedLow(record: SurveyRecord, pump: Component, flowM3s: number, rated: number, share: Yardstick): Raised {
    const percent = Math.round(flowM3s / rated * 100);
    const hose = hoseOf(record, pump);
    const hasVolts = pump.facts.has('voltage') && pump.facts.has('nominal-voltage');
    const with_ = [...(hose ? [`${lengthBoth(hose.lengthM)} of hose of ${lengthBoth(hose.boreM)} bore`] : []), ...(hasVolts ? [`{${pump.id}.voltage} at the pump`] : [])];
    const lift = `at a lift of {${pump.id}.lift}${with_.length > 0 ? `, with ${listed(with_)},` : ''} against a head of {${pump.id}.makers-head}`;
    const amount = flowM3s === 0 ? 'moves nothing' : `moves about ${computedBoth(flowM3s, 'flow')}, ${percent} % of its rating`;
    const limit = flowM3s === 0 ? '' : `; ${share.written} is ${share.whose}`;
    const seen = `${amount} ${lift}${limit}`;
    return raised(pump, {
        property: 'lift', severity: flowM3s === 0 ? 'error' : 'warning', flowM3s, rated,
        what: seen.replaceAll(/\{[^{}.]+\.([^{}]+)\}/g, (_, property: string) => writtenBoth(pump, property)), seen, corrections: [],
    });
}

function writtenBoth(pump: Component, property: string): string {
    const value = pump.facts.get(property)?.values[0];
    return value?.type === 'quantity' ? both(value) : '';
}

interface Low {
    readonly property: string;
    readonly severity: 'error' | 'warning';
    readonly flowM3s: number;
    readonly rated: number;
    readonly what: string;
    readonly seen: string;
    readonly corrections: readonly Correction[];
}

const litersAMinute = (m3s: number) => ({ value: Math.round(m3s * 60_000 * 10) / 10, unit: 'L/min' });

function raised(pump: Component, { property, severity, flowM3s, rated, what, seen, corrections }: Low): Raised {
    const remedy = 'fit a larger hose and a shorter run, see that full voltage reaches the pump, or fit a pump made for the lift';
    return {
        components: [pump],
        at: pump.facts.get(property)?.span ?? pump.idSpan,
        severity,
        message: `${nameOf(pump)} ${what}. What its box says is a free flow at full voltage; ${remedy}.`,
        figures: { flow: litersAMinute(flowM3s), rating: litersAMinute(rated) },
        corrections,
        draft: {
            title: flowM3s === 0 ? `Bilge pump ${pump.id} moves nothing at its lift` : `Bilge pump ${pump.id} moves far less than its rating`,
            urgency: 'in-upkeep',
            seen: `Bilge pump ${pump.id}, rated {${pump.id}.rated-flow}, ${seen}.`,
            because: 'The figure on a pump is a free flow at full voltage; what lift, hose and wire leave of it is what she can count on.',
            recommend: `At bilge pump ${pump.id}: ${remedy}. Measure the flow into a bucket afterwards.`,
            cites: [['Good practice']],
        },
    };
}

/** A pump and the figure recorded of it, by reference. */
function ratedText(pump: Component): string {
    return pump.facts.has('rated-flow') ? `pump ${pump.id} is rated {${pump.id}.rated-flow}` : `pump ${pump.id} moves {${pump.id}.real-flow}`;
}

/** The ratings would keep up with the largest hose, the flows do not, and an alarm works. */
function judgeAll(record: SurveyRecord): Raised | undefined {
    const worst = ofKind(record, 'bilge-alarm').some(alarm => wordOf(alarm, 'works') === 'yes') ? worstPath(record) : undefined;
    const { pumps, flowM3s, unknown } = pumpsAboard(record);
    const ratedM3s = pumps.reduce((sum, pump) => sum + (siOf(pump, 'rated-flow') ?? siOf(pump, 'real-flow') ?? 0) * (siOf(pump, 'quantity') ?? 1), 0);
    const [first] = pumps;
    if (!worst || !first || unknown.length > 0 || worst.inflow.flowM3s <= flowM3s || worst.inflow.flowM3s > ratedM3s) {
        return undefined;
    }
    const { opening } = worst.path;
    const share = pumps.some(pump => pumpFlow(record, pump)?.by === 'share') ? `, taken by rule of thumb at ${shareText(yardstick(record, 'pump-share'))}` : '';
    const names = listed(pumps.map(pump => pump.id));
    const figures = `${names} ${pumps.length > 1 ? 'are rated' : 'is rated'} ${computedBoth(ratedM3s, 'flow')}${pumps.length > 1 ? ' together and move' : ' and moves'} about ${computedBoth(flowM3s, 'flow')}${share}`;
    return {
        components: [...pumps, opening],
        at: first.facts.get('rated-flow')?.span ?? first.idSpan,
        message: `By their ratings the pumps would keep up with the hose of ${nameOf(opening)}, which admits ${worst.inflow.text} if it fails; as fitted they would not: ${figures}. Enter the maker’s curve as real-flow, or fit larger hose, shorter runs or larger pumps.`,
        figures: { inflow: litersAMinute(worst.inflow.flowM3s), rating: litersAMinute(ratedM3s), flow: litersAMinute(flowM3s) },
        related: [{ message: `The opening, ${opening.id}`, span: opening.idSpan }],
        draft: {
            title: 'Pumps keep up with a leak by their ratings only',
            urgency: 'in-upkeep',
            seen: `By its marking, ${listed(pumps.map(ratedText))}; the power pumps move about ${computedBoth(flowM3s, 'flow')}${share}. The hose of opening ${opening.id} would admit ${worst.inflow.text} if it failed.`,
            because: 'The figure on a pump is a free flow at full voltage; lift, hose and wire take their share, and what is left does not keep up with the largest hose.',
            recommend: 'Measure what each pump moves. Fit larger hose and shorter runs, or larger pumps, until together they keep up with the largest hose.',
            cites: [['Good practice']],
        },
    };
}
