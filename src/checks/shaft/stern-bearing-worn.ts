/** A stern bearing whose clearance has reached its limit, or nears it. */
import { bearingLimitM } from '../../trade/stern-bearing.js';
import { nameOf, ofKind, siOf, wordOf, yardstick, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, lengthBoth } from '../phrasing.js';
import { lies } from '../lies.js';
import { clearanceOf, clearanceSeen, type Clearance } from './clearance.js';
import { measured } from '../../record/trial-runs.js';

/** Share of the limit from which a bearing is watched (practice). */
const watchShare = 2 / 3;

export const sternBearingWorn = defineCheck({
    id: 'stern-bearing-worn',
    group: 'shaft',
    severity: 'error',
    title: 'Stern bearing is worn',
    why: 'A slack bearing lets the shaft whip, and seal and strut suffer.',
    needs: ['stern-bearing: clearance, or a table of play with radial', 'shaft-diameter, or diameter of the shaft that runs in it, or makers-limit'],
    computes: 'limit = the maker’s, else the smaller of 2 % of the shaft and 1/16 in (1.6 mm). A fault from the limit on; advice to watch from two thirds of it.',
    sources: [
        { text: '2 % of the shaft, at most 1/16 in; 1/32 to 1/8 in are quoted', provenance: 'practice' },
        { text: 'clearance of new bearings', standard: 'ABYC P-6', provenance: 'secondary' },
    ],
    yardsticks: ['bearing-wear', 'bearing-wear-most'],
    limits: ['The shaft that runs in it is the one it serves, the one of its side, or the only one recorded.', 'Where it is worn more on one side than the other is not known to it.', 'Makers’ limits differ; the limit used is printed.'],
    examples: [{
        name: 'clearance over the limit',
        bad: `vessel "Marram" {}
stern-bearing SB1 { clearance: 0.9 mm  shaft-diameter: 1-1/4 in }
`,
        fixed: `vessel "Marram" {}
stern-bearing SB1 { clearance: 0.2 mm  shaft-diameter: 1-1/4 in }
`,
    }, {
        name: 'clearance over two thirds of the limit',
        bad: `stern-bearing SB1 { clearance: 0.5 mm  shaft-diameter: 1-1/4 in }
`,
        fixed: `stern-bearing SB1 { clearance: 0.4 mm  shaft-diameter: 1-1/4 in }
`,
    }],
    silent: [
        { name: 'within the limit of its maker', text: 'stern-bearing SB1 { clearance: 0.9 mm  shaft-diameter: 1-1/4 in  makers-limit: 2 mm }\n' },
        { name: 'firm that allows 4 %', text: 'yardsticks { bearing-wear: 4 % }\nstern-bearing SB1 { clearance: 0.8 mm  shaft-diameter: 1-1/4 in }\n' },
        { name: 'clearance not measured', text: 'stern-bearing SB1 { shaft-diameter: 1-1/4 in }\n' },
    ],
    run(record, raise) {
        for (const bearing of ofKind(record, 'stern-bearing')) {
            const clearance = clearanceOf(record, bearing, 'clearance');
            if (!clearance) {
                continue;
            }
            const limit = limitOf(record, bearing, clearance);
            if (!limit) {
                raise({
                    components: [bearing], at: clearance.at, severity: 'hint',
                    message: `${nameOf(bearing)} has a clearance of ${both(clearance.quantity)}; record its shaft-diameter, or makers-limit, to tell whether it is worn.`,
                });
            } else if (clearance.quantity.si >= watchShare * limit.m - 1e-9) {
                raise(problem(bearing, clearance, limit, lies(record) === 'ashore'));
            }
        }
    },
});

interface Limit {
    readonly m: number;
    /** "the limit of its maker, 2 mm (0.079 in)". */
    readonly text: string;
    /** The same with references, for a finding. */
    readonly seen: string;
}

function limitOf(record: SurveyRecord, bearing: Component, clearance: Clearance): Limit | undefined {
    const makers = siOf(bearing, 'makers-limit');
    if (makers !== undefined) {
        return { m: makers, text: `the limit of its maker, ${lengthBoth(makers)}`, seen: `{${bearing.id}.makers-limit}, the limit of its maker` };
    }
    const own = clearance.shaft ?? measured(bearing, 'shaft-diameter');
    const carried = own ? undefined : shaftOf(record, bearing);
    const shaft = own ?? (carried && measured(carried, 'diameter'));
    if (!shaft) {
        return undefined;
    }
    const [share, most] = [yardstick(record, 'bearing-wear'), yardstick(record, 'bearing-wear-most')];
    const m = bearingLimitM(shaft.quantity.si, share.si, most.si);
    const isShare = share.si * shaft.quantity.si <= most.si;
    const whose = isShare ? `${share.whose} of ${share.written} of the shaft` : `${most.whose} whatever the shaft`;
    return {
        m, text: `${lengthBoth(m)}, ${whose}`,
        seen: isShare ? `${lengthBoth(m)}, ${share.whose} of ${share.written} of a shaft of ${clearance.shaft ? both(shaft.quantity) : carried ? `{${carried.id}.diameter}` : `{${bearing.id}.shaft-diameter}`}` : `${lengthBoth(m)}, ${most.whose} whatever the shaft`,
    };
}

/** The shaft that runs in a bearing, where its diameter is recorded of the shaft alone: the one it serves, or shares a side with, or the only one. */
function shaftOf(record: SurveyRecord, bearing: Component): Component | undefined {
    const served = bearing.facts.get('serves')?.values[0];
    const shafts = ofKind(record, 'shaft');
    const side = wordOf(bearing, 'side');
    const beside = shafts.filter(shaft => side !== undefined && wordOf(shaft, 'side') === side);
    return served?.type === 'component' ? shafts.find(shaft => shaft.id === served.id) : shafts.length === 1 ? shafts[0] : beside.length === 1 ? beside[0] : undefined;
}

function problem(bearing: Component, clearance: Clearance, limit: Limit, isAshore: boolean): Raised {
    const { quantity } = clearance;
    const isWorn = quantity.si >= limit.m - 1e-9;
    return {
        components: [bearing],
        at: clearance.at,
        severity: isWorn ? 'error' : 'warning',
        message: isWorn
            ? `${nameOf(bearing)} has a clearance of ${both(quantity)}, which is ${quantity.si > limit.m + 1e-9 ? 'past' : 'at'} ${limit.text}. The shaft whips, and seal and strut suffer; check alignment, then renew the bearing.`
            : `${nameOf(bearing)} has a clearance of ${both(quantity)}, over two thirds of ${limit.text}. It nears its end; measure it again at the next haul-out.`,
        figures: { clearance: { value: quantity.si * 1000, unit: 'mm' }, limit: { value: limit.m * 1000, unit: 'mm' } },
        draft: {
            title: isWorn ? `Stern bearing ${bearing.id} is worn` : `Stern bearing ${bearing.id} nears its limit`,
            urgency: !isWorn ? 'keep-watch' : isAshore ? 'before-launch' : 'next-haul-out',
            seen: `Stern bearing ${bearing.id} has a clearance ${clearanceSeen(bearing, 'clearance', clearance)}, against ${limit.seen}.`,
            because: isWorn ? 'In a slack bearing the shaft whips, and seal, strut and coupling suffer.' : 'The bearing still carries the shaft; its remaining life is short.',
            recommend: isWorn ? `Check the alignment of the shaft, then renew stern bearing ${bearing.id}.` : `Measure the clearance of ${bearing.id} again at the next haul-out, and renew it from ${lengthBoth(limit.m)} on.`,
        },
    };
}
