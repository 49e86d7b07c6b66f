/** A stern bearing whose clearance has reached its limit, or nears it. */
import { bearingLimitM } from '../../trade/stern-bearing.js';
import { nameOf, ofKind, siOf, valueOf, type Component, type Quantity } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, lengthBoth } from '../fit/wording.js';
import { lies } from '../lies.js';

/** Share of the limit from which a bearing is watched (practice). */
const watchShare = 2 / 3;

export const sternBearingWorn = defineCheck({
    id: 'stern-bearing-worn',
    group: 'shaft',
    severity: 'error',
    title: 'Stern bearing is worn',
    why: 'A slack bearing lets the shaft whip, and seal and strut suffer.',
    needs: ['stern-bearing: clearance', 'shaft-diameter, or makers-limit'],
    computes: 'limit = the maker’s, else the smaller of 2 % of the shaft and 1/16 in (1.6 mm). A fault from the limit on; advice to watch from two thirds of it.',
    sources: [
        { text: '2 % of the shaft, at most 1/16 in; 1/32 to 1/8 in are quoted', provenance: 'practice' },
        { text: 'clearance of new bearings', standard: 'ABYC P-6', provenance: 'secondary' },
    ],
    limits: ['Where it is worn more on one side than the other is not known to it.', 'Makers’ limits differ; the limit used is printed.'],
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
        { name: 'clearance not measured', text: 'stern-bearing SB1 { shaft-diameter: 1-1/4 in }\n' },
    ],
    run(record, raise) {
        for (const bearing of ofKind(record, 'stern-bearing')) {
            const clearance = valueOf(bearing, 'clearance');
            const makers = siOf(bearing, 'makers-limit');
            const shaft = siOf(bearing, 'shaft-diameter');
            const limitM = makers ?? (shaft === undefined ? undefined : bearingLimitM(shaft));
            const at = bearing.facts.get('clearance')?.span ?? bearing.idSpan;
            if (clearance && limitM === undefined) {
                raise({
                    components: [bearing], at, severity: 'hint',
                    message: `${nameOf(bearing)} has a clearance of ${both(clearance)}; record its shaft-diameter, or makers-limit, to tell whether it is worn.`,
                });
            } else if (clearance && limitM !== undefined && clearance.si >= watchShare * limitM - 1e-9) {
                raise(problem(bearing, clearance, limitM, makers !== undefined, clearance.si >= limitM - 1e-9, lies(record) === 'ashore'));
            }
        }
    },
});

function problem(bearing: Component, clearance: Quantity, limitM: number, isMakers: boolean, isWorn: boolean, isAshore: boolean): Raised {
    const limit = `${isMakers ? 'the limit of its maker' : 'the limit taken for its shaft'}, ${lengthBoth(limitM)}`;
    const limitSeen = isMakers ? `{${bearing.id}.makers-limit}, the limit of its maker` : `${lengthBoth(limitM)}, taken as the limit for a shaft of {${bearing.id}.shaft-diameter}`;
    return {
        components: [bearing],
        at: bearing.facts.get('clearance')?.span ?? bearing.idSpan,
        severity: isWorn ? 'error' : 'warning',
        message: isWorn
            ? `${nameOf(bearing)} has a clearance of ${both(clearance)}, which is ${clearance.si > limitM + 1e-9 ? 'past' : 'at'} ${limit}. The shaft whips, and seal and strut suffer; check alignment, then renew the bearing.`
            : `${nameOf(bearing)} has a clearance of ${both(clearance)}, over two thirds of ${limit}. It nears its end; measure it again at the next haul-out.`,
        figures: { clearance: { value: clearance.si * 1000, unit: 'mm' }, limit: { value: limitM * 1000, unit: 'mm' } },
        draft: {
            title: isWorn ? `Stern bearing ${bearing.id} is worn` : `Stern bearing ${bearing.id} nears its limit`,
            urgency: !isWorn ? 'keep-watch' : isAshore ? 'before-launch' : 'next-haul-out',
            seen: `Stern bearing ${bearing.id} has a clearance of {${bearing.id}.clearance}, against ${limitSeen}.`,
            because: isWorn ? 'In a slack bearing the shaft whips, and seal, strut and coupling suffer.' : 'The bearing still carries the shaft; its remaining life is short.',
            recommend: isWorn ? `Check the alignment of the shaft, then renew stern bearing ${bearing.id}.` : `Measure the clearance of ${bearing.id} again at the next haul-out, and renew it from ${lengthBoth(limitM)} on.`,
        },
    };
}
