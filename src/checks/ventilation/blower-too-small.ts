/** Blowers of a gasoline engine's space that are rated, or move, less than its volume calls for. */
import { blowerOutputM3s, blowerRatingM3s } from '../../trade/ventilation.js';
import { isKind, nameOf, ofKind, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { listed } from '../phrasing.js';
import { vesselFuel } from '../fuel/fuel-system.js';
import { inAnotherUnit } from '../other-unit.js';
import { isSaidAbsent } from '../safety/gear.js';
import { airBoth, gasolineSpaces, recordOpen, spaceBoth, ventilatedSpaces, type VentilatedSpace } from './spaces.js';

const cfmM3s = 0.3048 ** 3 / 60;
const slack = 1 - 1e-6;

export const blowerTooSmall = defineCheck({
    id: 'blower-too-small',
    group: 'ventilation',
    severity: 'error',
    title: 'Blower is too small for its space',
    why: 'Gasoline vapor that is not cleared before starting explodes.',
    needs: ['blower: rated-flow, measured-flow, works', 'machinery-space: volume, or blower: space-volume', 'vessel or engine: fuel, or machinery-space: gasoline'],
    computes: 'Rated, by net volume V: 50 cfm under 34 ft3, 1.5 V to 100 ft3, V/2 + 100 above. Measured at the outlet: 20 cfm, 0.6 V, 0.2 V + 40. Blowers of one space add up; one that does not work counts nothing.',
    sources: [
        { text: 'a blower for each space of a gasoline engine that is cranked by a motor and not open to the air', standard: '33 CFR 183', clause: '183.610', provenance: 'published' },
        { text: 'the figures of its table', standard: '33 CFR 183', clause: '183.610', provenance: 'secondary' },
    ],
    limits: [
        'The rule binds builders of boats with gasoline engines; on a boat in service it is good practice.',
        'Where no blower is recorded nothing is said, unless the survey says that none is fitted (absent "Blower"). Diesel, outboards and spaces open to the air are left alone.',
        'Volume is net: less the engine and what else fills the space.',
        'Where the volume is not recorded, less than 50 cfm rated or 20 cfm measured is too little for any space.',
        'Where she has engines of gasoline and of diesel, the space must say which it holds.',
    ],
    examples: [{
        name: 'blower of 70 cfm for 60 cubic feet',
        bad: `vessel "Marram" { fuel: gasoline }
blower B1 { rated-flow: 70 cfm  space-volume: 60 ft3 }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
blower B1 { rated-flow: 100 cfm  space-volume: 60 ft3 }
`,
    }, {
        name: 'volume in the wrong unit',
        bad: `vessel "Marram" { fuel: gasoline }
blower B1 { rated-flow: 240 cfm  space-volume: 60 m3 }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
blower B1 { rated-flow: 240 cfm  space-volume: 60 ft3 }
`,
        correction: 'Read 60 m3 as 60 ft3',
    }, {
        name: 'rated enough, moves too little',
        bad: `vessel "Marram" { fuel: gasoline }
machinery-space S1 { volume: 60 ft3 }
blower B1 { rated-flow: 100 cfm  measured-flow: 30 cfm  serves: S1 }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
machinery-space S1 { volume: 60 ft3  space-open: yes }
blower B1 { rated-flow: 100 cfm  measured-flow: 30 cfm  serves: S1 }
`,
        correction: 'Record the space as open to the air',
    }],
    silent: [
        { name: 'diesel boat with the same blower', text: 'vessel "Marram" { fuel: diesel }\nblower B1 { rated-flow: 70 cfm  space-volume: 60 ft3 }\n' },
        { name: 'diesel boat with no blower', text: 'vessel "Marram" { fuel: diesel }\nmachinery-space S1 { volume: 60 ft3 }\n' },
        { name: 'two blowers that add up', text: 'vessel "Marram" { fuel: gasoline }\nmachinery-space S1 { volume: 60 ft3 }\nblower B1 { rated-flow: 50 cfm  serves: S1 }\nblower B2 { rated-flow: 50 cfm  serves: S1 }\n' },
        { name: 'space open to the air', text: 'vessel "Marram" { fuel: gasoline }\nmachinery-space S1 { volume: 10 ft3  open-area: 150 in2 }\nblower B1 { rated-flow: 20 cfm  serves: S1 }\n' },
    ],
    run(record, raise) {
        for (const space of ventilatedSpaces(record)) {
            const problem = space.blowers.length > 0 && !space.isOpen && space.isGasoline !== false ? judge(space) : undefined;
            if (problem) {
                raise(problem);
            }
        }
        if (ofKind(record, 'blower').length === 0 && isSaidAbsent(record, /\bblowers?\b|powered ventilation/i)) {
            for (const problem of withoutBlower(record)) {
                raise(problem);
            }
        }
    },
});

/** Spaces of gasoline engines where none is fitted; where no space is recorded, the engine stands for its own. */
function withoutBlower(record: SurveyRecord): readonly Raised[] {
    const spaces = gasolineSpaces(record);
    if (ofKind(record, 'machinery-space').length > 0) {
        return spaces.flatMap(({ served, title, volume }) => (served ? [none(served, title, volume)] : []));
    }
    const engine = ofKind(record, 'engine').find(part => !isKind(record, part, 'outboard') && (wordOf(part, 'fuel') ?? vesselFuel(record)) === 'gasoline');
    return engine ? [none(engine, `the space of ${nameOf(engine)}`, undefined)] : [];
}

function none(on: Component, title: string, volume: VentilatedSpace['volume']): Raised {
    const least = blowerRatingM3s(volume?.quantity.si ?? 0);
    const fit = `a blower rated at least ${airBoth(least)}, with a short, straight duct`;
    const of = volume ? `, ${spaceBoth(volume.quantity.si)}` : '';
    return {
        components: [on],
        at: on.idSpan,
        message: `No blower is fitted in ${title}${of}, with a gasoline engine (good practice per 33 CFR 183.610). Vapor is not cleared before starting; fit ${fit}.`,
        figures: { 'rating asked for': { value: least / cfmM3s, unit: 'cfm' } },
        draft: {
            title: `No blower in ${title}`,
            urgency: 'before-use',
            seen: `No blower is fitted in ${title}${volume ? `, of {${volume.on.id}.${volume.property}} net,` : ''} with a gasoline engine.`,
            because: 'Gasoline vapor is heavier than air and gathers low; what is not cleared before starting may explode.',
            recommend: `Fit ${fit}, and do not start the engine before.`,
            cites: [['33 CFR 183', '183.610']],
        },
    };
}

interface Flow {
    /** Sum over the blowers that work, undefined where none is recorded. */
    readonly totalM3s: number | undefined;
    readonly isWhole: boolean;
    readonly neededM3s: number;
}

function flowOf(blowers: readonly Component[], property: 'rated-flow' | 'measured-flow', neededM3s: number): Flow {
    const known = blowers.map(blower => {
        const flow = wordOf(blower, 'works') === 'no' ? 0 : siOf(blower, property);
        return flow === undefined ? undefined : flow * (siOf(blower, 'quantity') ?? 1);
    });
    const isKnown = known.some(flow => flow !== undefined);
    return { totalM3s: isKnown ? known.reduce((sum: number, flow) => sum + (flow ?? 0), 0) : undefined, isWhole: known.every(flow => flow !== undefined), neededM3s };
}

const fallsShort = ({ totalM3s, neededM3s, isWhole }: Flow) => isWhole && totalM3s !== undefined && totalM3s < neededM3s * slack;

function judge(space: VentilatedSpace): Raised | undefined {
    const volumeM3 = space.volume?.quantity.si;
    const rated = flowOf(space.blowers, 'rated-flow', blowerRatingM3s(volumeM3 ?? 0));
    const measured = flowOf(space.blowers, 'measured-flow', blowerOutputM3s(volumeM3 ?? 0));
    const [first] = space.blowers;
    const short = fallsShort(rated) || fallsShort(measured);
    if (!first || (!short && space.isGasoline === undefined)) {
        return undefined;
    }
    const hint = (message: string): Raised => ({ components: [first], at: first.idSpan, severity: 'hint', message });
    if (short) {
        return space.isGasoline ? problem(space, first, rated, measured)
            : hint(`Record whether a gasoline engine is in ${space.title} (the fuel of its engine, or gasoline of the space), to tell whether ${listed(space.blowers.map(b => b.id))} will do.`);
    }
    if (volumeM3 === undefined) {
        return rated.totalM3s === undefined && measured.totalM3s === undefined ? undefined : hint(`Record the net volume of ${space.title}, to tell whether ${listed(space.blowers.map(b => b.id))} will do.`);
    }
    const unrated = space.blowers.find(blower => wordOf(blower, 'works') !== 'no' && siOf(blower, 'rated-flow') === undefined);
    return unrated && (rated.totalM3s ?? 0) < rated.neededM3s * slack && measured.totalM3s === undefined
        ? hint(`Record the rated-flow of ${nameOf(unrated)}, to tell whether it will do for ${spaceBoth(volumeM3)}.`) : undefined;
}

function problem(space: VentilatedSpace, first: Component, rated: Flow, measured: Flow): Raised {
    const { volume, blowers } = space;
    const names = listed(blowers.map(blower => blower.id));
    const idle = blowers.filter(blower => wordOf(blower, 'works') === 'no');
    const size = volume ? spaceBoth(volume.quantity.si) : undefined;
    const isOne = blowers.length === 1;
    const short = [
        ...(fallsShort(rated) ? [`${isOne ? 'is' : 'are'} rated ${airBoth(rated.totalM3s ?? 0)}, where ${airBoth(rated.neededM3s)} is asked for`] : []),
        ...(fallsShort(measured) ? [`${isOne ? 'moves' : 'move'} ${idle.length === blowers.length ? 'nothing' : `${airBoth(measured.totalM3s ?? 0)} as measured`}, where ${airBoth(measured.neededM3s)} is asked for`] : []),
    ].join(', and ');
    const idleText = idle.length > 0 ? ` (${listed(idle.map(blower => blower.id))} not working)` : '';
    const suits = (m3: number) => m3 >= 0.1 && (rated.totalM3s === undefined || rated.totalM3s >= blowerRatingM3s(m3) * slack) && (measured.totalM3s === undefined || measured.totalM3s >= blowerOutputM3s(m3) * slack);
    const of = size ? `in ${size}` : 'in a space of any size';
    return {
        components: [...blowers],
        at: first.facts.get(fallsShort(rated) ? 'rated-flow' : 'measured-flow')?.span ?? first.idSpan,
        message: `${isOne ? 'Blower' : 'Blowers'} ${names} of ${space.title}${idleText} ${short} ${of} with a gasoline engine (good practice per 33 CFR 183.610). Vapor is not cleared before starting; fit a larger blower with a short, straight duct.`,
        figures: {
            ...(rated.totalM3s === undefined ? {} : { rated: { value: rated.totalM3s / cfmM3s, unit: 'cfm' }, 'rating asked for': { value: rated.neededM3s / cfmM3s, unit: 'cfm' } }),
            ...(measured.totalM3s === undefined ? {} : { measured: { value: measured.totalM3s / cfmM3s, unit: 'cfm' }, 'flow asked for': { value: measured.neededM3s / cfmM3s, unit: 'cfm' } }),
        },
        corrections: [...(volume ? inAnotherUnit(volume.on, volume.property, volume.quantity, suits) : []), ...recordOpen(space)],
        draft: {
            title: `Blower of ${space.title} is too small`,
            urgency: 'before-use',
            seen: `${isOne ? 'Blower' : 'Blowers'} ${names} of ${space.title}${idleText} ${short} ${volume ? `in a net volume of {${volume.on.id}.${volume.property}}` : 'in a space of any size'} with a gasoline engine.`,
            because: 'Gasoline vapor is heavier than air and gathers low; what the blower does not clear before starting may explode.',
            recommend: `Fit a blower rated at least ${airBoth(rated.neededM3s)} with a short, straight duct, and measure at least ${airBoth(measured.neededM3s)} at its outlet.`,
            cites: [['33 CFR 183', '183.610']],
        },
    };
}
