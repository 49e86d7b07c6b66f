/** A shaft coupling whose faces are not parallel. */
import { nameOf, ofKind, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { couplingGapLimitM } from '../../trade/coupling-alignment.js';
import { defineCheck, type Raised } from '../contract.js';
import { both } from '../phrasing.js';
import { significant } from '../../quantities/index.js';
import { lies } from '../lies.js';
import { measured, type Measured } from '../../record/trial-runs.js';

export const couplingOutOfLine = defineCheck({
    id: 'coupling-out-of-line',
    group: 'shaft',
    severity: 'error',
    title: 'Shaft coupling is out of line',
    why: 'A shaft out of line shakes, and wears bearing, seal and gearbox.',
    needs: ['coupling: gap, and diameter or makers-limit', 'coupling: measured (afloat or ashore), else the state of the survey', 'coupling: pattern'],
    computes: 'limit = the maker’s, else 0.001 in for each inch of the diameter of the faces (a thousandth of it). A fault where the gap differs by more round the faces, measured afloat; measured ashore, advice to measure it again afloat.',
    sources: [{ text: '0.001 in per inch of diameter, afloat, tanks full, after a day or two in the water', provenance: 'published' }, { text: 'a fixed 0.003 in at four points', provenance: 'published' }],
    limits: [
        'The offset of the two faces against each other is not recorded and not judged.',
        'A flexible coupling is judged only by its maker’s limit.',
        'Measured ashore the hull lies otherwise; such a figure is not held for a fault.',
        'Where the record does not tell how she lay, afloat is taken, and said.',
    ],
    examples: [{
        name: '0.006 in on a 4 in coupling',
        bad: `survey "1" condition-and-value { state: afloat }
vessel "Marram" {}
coupling CO1 { gap: 0.006 in  diameter: 4 in  pattern: rigid }
`,
        fixed: `survey "1" condition-and-value { state: afloat }
vessel "Marram" {}
coupling CO1 { gap: 0.003 in  diameter: 4 in  pattern: rigid }
`,
    }, {
        name: 'thousandths taken for hundredths of a millimeter',
        bad: `survey "1" condition-and-value { state: afloat }
coupling CO1 { gap: 3 mm  diameter: 100 mm  pattern: rigid }
`,
        fixed: `survey "1" condition-and-value { state: afloat }
coupling CO1 { gap: 3 mil  diameter: 100 mm  pattern: rigid }
`,
        correction: 'Read 3 mm as 3 mil (thousandths of an inch)',
    }],
    silent: [
        { name: 'exactly a thousandth', text: 'survey "1" condition-and-value { state: afloat }\ncoupling CO1 { gap: 0.004 in  diameter: 4 in  pattern: rigid }\n' },
        { name: 'a larger coupling', text: 'survey "1" condition-and-value { state: afloat }\ncoupling CO1 { gap: 0.006 in  diameter: 6 in  pattern: rigid }\n' },
        { name: 'within the limit of its maker', text: 'survey "1" condition-and-value { state: afloat }\ncoupling CO1 { gap: 0.006 in  diameter: 4 in  makers-limit: 0.008 in }\n' },
        { name: 'flexible', text: 'survey "1" condition-and-value { state: afloat }\ncoupling CO1 { gap: 0.006 in  diameter: 4 in  pattern: flexible }\n' },
        { name: 'nothing measured', text: 'coupling CO1 { diameter: 4 in  pattern: rigid }\n' },
    ],
    run(record, raise) {
        for (const coupling of ofKind(record, 'coupling')) {
            const gap = measured(coupling, 'gap');
            const makers = siOf(coupling, 'makers-limit');
            const diameter = siOf(coupling, 'diameter');
            if (!gap || (makers === undefined && wordOf(coupling, 'pattern') === 'flexible')) {
                continue;
            }
            const limitM = makers ?? (diameter === undefined ? undefined : couplingGapLimitM(diameter));
            if (limitM === undefined) {
                raise({
                    components: [coupling], at: gap.fact.span, severity: 'hint',
                    message: `The gap of ${nameOf(coupling)} differs by ${both(gap.quantity)} round its faces; record its diameter, or makers-limit, to tell whether it is in line.`,
                });
            } else if (gap.quantity.si > limitM + 1e-9) {
                raise(problem(record, coupling, gap, limitM, makers !== undefined));
            }
        }
    },
});

/** A gap in both systems, as feelers are marked: "0.102 mm (0.004 in)". */
const thin = (m: number) => `${significant(m * 1000, 3)} mm (${significant(m / 0.0254, 3)} in)`;

function problem(record: SurveyRecord, coupling: Component, gap: Measured, limitM: number, isMakers: boolean): Raised {
    const state = wordOf(coupling, 'measured') ?? lies(record);
    const isAshore = state === 'ashore';
    const limit = isMakers ? `the ${thin(limitM)} that its maker allows` : `${thin(limitM)}, a thousandth of its diameter`;
    const how = state === undefined ? ' (taken as measured afloat)' : '';
    const { unit, value } = gap.quantity.figure;
    const asMils = unit === 'mm' && value * 25.4e-6 <= limitM + 1e-9 && value >= 1;
    return {
        components: [coupling],
        at: gap.fact.span,
        ...(isAshore ? { severity: 'warning' as const } : {}),
        message: `The gap of ${nameOf(coupling)} differs by ${both(gap.quantity)} round its faces, over ${limit}${how}. ${isAshore
            ? 'Ashore the hull lies otherwise than afloat; measure it again afloat, tanks full, after a day in the water'
            : 'A shaft out of line shakes and wears bearing, seal and gearbox; align it afloat with tanks full'}.`,
        figures: { gap: { value: gap.quantity.si * 1000, unit: 'mm' }, limit: { value: limitM * 1000, unit: 'mm' } },
        corrections: asMils ? [{ kind: 'set-fact', title: `Read ${gap.fact.written} as ${value} mil (thousandths of an inch)`, component: coupling, property: 'gap', value: `${value} mil` }] : [],
        draft: {
            title: `Shaft coupling ${coupling.id} is out of line`,
            urgency: isAshore ? 'before-departure' : 'in-upkeep',
            seen: `The gap of shaft coupling ${coupling.id} differs by {${coupling.id}.gap} round its faces, over ${isMakers ? `the {${coupling.id}.makers-limit} that its maker allows` : `a thousandth of its diameter of {${coupling.id}.diameter}`}${isAshore ? '; it was measured ashore' : ''}.`,
            because: isAshore ? 'Ashore the hull lies otherwise than afloat, and the figure does not decide.' : 'A shaft out of line shakes and wears bearing, seal and gearbox.',
            recommend: isAshore ? `Measure the gap of ${coupling.id} again afloat, with tanks full, after a day or two in the water, and align it then.`
                : `Align engine and shaft at ${coupling.id} afloat, with tanks full, until the gap differs by no more than ${thin(limitM)} at four points, and measure again after one to three weeks.`,
        },
    };
}
