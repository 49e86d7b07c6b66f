/** Blisters, by their count, size and depth. */
import { blisterFaults, densityPerM2, fewPerM2, type BlisterFault } from '../../trade/blister.js';
import { flagOf, nameOf, ofKind, siOf, valueOf, type Component } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, computedBoth, listed } from '../phrasing.js';
import { toTenth } from './figures.js';

export const blistersMany = defineCheck({
    id: 'blisters-many',
    group: 'structure',
    severity: 'error',
    title: 'Blisters in the hull',
    why: 'Blisters let water into the laminate, and it opens.',
    needs: ['blister: density, or count and counted-on', 'diameter', 'depth or into-laminate'],
    computes: 'Count ÷ area. A fault over 20 on a square meter, over 50 mm across, or into the laminate (where it is not recorded, deeper than 1.5 mm). Fewer and smaller ones are watched.',
    sources: [{ text: 'watched under 5 on a square meter and shallow; treated over 20, over 50 mm, or into the laminate', provenance: 'practice' }, { text: 'a depth of 1.5 mm reaches the laminate', provenance: 'chosen' }],
    limits: ['From 5 to 20 on a square meter is watched too, for nothing says that it is a fault.', 'A count on one square meter speaks for that one.', 'Where she was dry long before, blisters flatten and are missed.'],
    examples: [{
        name: 'many',
        bad: 'blister BL1 "Blisters, bottom" { density: 30 per-m2  diameter: 12 mm  into-laminate: no }\n',
        fixed: 'blister BL1 "Blisters, bottom" { density: 0 per-m2 }\n',
    }, {
        name: 'few, to be watched',
        bad: 'blister BL1 { count: 6  counted-on: 3 m2  diameter: 10 mm  depth: 0.5 mm }\n',
        fixed: 'blister BL1 { count: 0  counted-on: 3 m2 }\n',
    }],
    silent: [
        { name: 'counted, and none found', text: 'blister BL1 "Blisters, bottom" { density: 0 per-m2  diameter: 12 mm  into-laminate: no }\n' },
        { name: 'nothing recorded of them', text: 'blister BL1\n' },
    ],
    run(record, raise) {
        for (const blister of ofKind(record, 'blister')) {
            const problem = judge(blister);
            if (problem) {
                raise(problem);
            }
        }
    },
});

function densityOf(blister: Component): number | undefined {
    const recorded = siOf(blister, 'density');
    const count = siOf(blister, 'count');
    const area = siOf(blister, 'counted-on');
    return recorded ?? (count !== undefined && area !== undefined ? densityPerM2(count, area) : undefined);
}

function judge(blister: Component<'blister'>): Raised | undefined {
    const density = densityOf(blister);
    const intoLaminate = flagOf(blister, 'into-laminate');
    const diameterM = siOf(blister, 'diameter');
    const depthM = siOf(blister, 'depth');
    if (density === 0) {
        return undefined;
    }
    const faults = blisterFaults({
        ...(density === undefined ? {} : { densityPerM2: density }), ...(diameterM === undefined ? {} : { diameterM }), ...(depthM === undefined ? {} : { depthM }),
        ...(intoLaminate === undefined ? {} : { isIntoLaminate: intoLaminate }),
    });
    if (faults.length === 0 && density === undefined) {
        return diameterM === undefined && depthM === undefined && intoLaminate === undefined ? undefined : {
            components: [blister], at: blister.idSpan, severity: 'hint',
            message: `${nameOf(blister)}: record how many were counted on a square meter (density) to tell whether they are many.`,
        };
    }
    return faults.length > 0 ? fault(blister, faults, density) : watched(blister, density ?? 0);
}

const perM2 = (density: number): string => `${toTenth(density)} on a square meter (${toTenth(density * 0.09290304)} on a square foot)`;

const saysOf: Readonly<Record<BlisterFault, (blister: Component<'blister'>, density: number | undefined) => string>> = {
    many: (_, density) => `${perM2(density ?? 0)}, over 20 on a square meter`,
    large: blister => {
        const diameter = valueOf(blister, 'diameter');
        return `${diameter ? both(diameter) : 'large'} across, over ${computedBoth(0.05, 'length')}`;
    },
    'into-laminate': blister => {
        const depth = valueOf(blister, 'depth');
        return `into the laminate${depth ? ` (${both(depth)} deep)` : ''}`;
    },
};

function fault(blister: Component<'blister'>, faults: readonly BlisterFault[], density: number | undefined): Raised {
    const said = listed(faults.map(kind => saysOf[kind](blister, density)));
    const first = faults[0] === 'many' ? 'density' : faults[0] === 'large' ? 'diameter' : 'depth';
    return {
        components: [blister], at: (blister.facts.get(first) ?? blister.facts.get('into-laminate') ?? blister.facts.get('count'))?.span ?? blister.idSpan,
        message: `${nameOf(blister)} are ${said}. Through them the laminate opens; peel a trial patch, let it dry, and coat it anew.`,
        figures: density === undefined ? {} : { density: { value: Math.round(density * 10) / 10, unit: '/m2' } },
        corrections: corrections(blister, density),
        draft: {
            title: `Blisters ${faults.includes('into-laminate') ? 'reach the laminate' : faults.includes('many') ? 'are many' : 'are large'}`,
            urgency: 'next-haul-out', seen: seen(blister, density),
            because: `Blisters of this ${faults.includes('many') ? 'number' : faults.includes('into-laminate') ? 'depth' : 'size'} let water into the laminate, which opens and loses strength.`,
            recommend: 'Peel a trial patch to see how far they reach, let the hull dry with readings to prove it, and build up the coating anew.',
            cites: [['Good practice']],
        },
    };
}

function watched(blister: Component, density: number): Raised {
    return {
        components: [blister], severity: 'warning', at: (blister.facts.get('density') ?? blister.facts.get('count'))?.span ?? blister.idSpan,
        message: `${nameOf(blister)} are ${density < fewPerM2 ? 'few' : 'some'}, ${perM2(density)}${['diameter', 'depth'].some(name => blister.facts.has(name)) ? ', and small' : ''}. They do no harm yet; count them at the same places at the next haul-out.`,
        figures: { density: { value: Math.round(density * 10) / 10, unit: '/m2' } },
        corrections: corrections(blister, density),
        draft: {
            title: 'Blisters to be watched', urgency: 'keep-watch', seen: seen(blister, density),
            because: 'Blisters as few and as shallow as these cost no strength; more of them, or deeper ones, would.',
            recommend: 'Count and measure them at the same places at the next haul-out.',
            cites: [['Good practice']],
        },
    };
}

function seen(blister: Component, density: number | undefined): string {
    const fact = (name: string) => `{${blister.id}.${name}}`;
    const counted = blister.facts.has('density') ? `, ${fact('density')}` : density !== undefined ? `, ${fact('count')} on ${fact('counted-on')}` : '';
    const facts = [
        ...(blister.facts.has('diameter') ? [`up to ${fact('diameter')} across`] : []), ...(blister.facts.has('depth') ? [`${fact('depth')} deep`] : []),
        ...(flagOf(blister, 'into-laminate') === true ? ['into the laminate'] : []),
    ];
    const fluid = flagOf(blister, 'acid');
    return `${blister.title ?? 'Blisters'} (${blister.id}) were found${counted}${facts.length > 0 ? `, ${listed(facts)}` : ''}.${fluid === undefined ? '' : ` The fluid in them is ${fluid ? '' : 'not '}acid.`}`;
}

function corrections(blister: Component, density: number | undefined): Correction[] {
    return density !== undefined && !blister.facts.has('density')
        ? [{ kind: 'set-fact', title: 'Record the count on a square meter', component: blister, property: 'density', value: `${Math.round(density * 10) / 10} per-m2`, isStep: true }] : [];
}
