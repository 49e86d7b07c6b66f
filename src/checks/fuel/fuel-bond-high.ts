/** Fill or tank of a gasoline system with no good way to ground for static electricity. */
import { isStaticallyGrounded, staticGroundLimitOhm } from '../../trade/fuel-line.js';
import { flagOf, isKind, materialOf, nameOf, ofKind, rowsOf, runsThrough, valueOf, type Component, type Quantity, type Span, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both } from '../phrasing.js';
import { fuelOf, fuelOfTank } from './fuel-system.js';
import { inAnotherUnit } from '../other-unit.js';

export const fuelBondHigh = defineCheck({
    id: 'fuel-bond-high',
    group: 'fuel',
    severity: 'error',
    title: 'Fuel fill or tank is not grounded',
    why: 'Fuel that runs in carries static electricity; where it cannot drain away it may spark at the fill.',
    needs: ['fuel-tank: bond-resistance, fill-bond, material', 'fuel-fill: bond-resistance, material', 'or a table of bonding with the fill or tank in it', 'fuel-tank: fuel, or vessel: fuel'],
    computes: 'Gasoline, metal parts: a fault from 100 ohm to ground on, or where no wire joins fill, tank and ground.',
    sources: [
        { text: 'metal parts of fill and tank grounded through less than 100 ohm', standard: '33 CFR 183', clause: '183.572', provenance: 'memory' },
        { text: 'fills of plastic with a metal cap or chain are left off the bonding', provenance: 'secondary' },
    ],
    limits: [
        'The rule binds builders of boats with gasoline engines; on a boat in service it is good practice.',
        'Just 100 ohm counts as too much: the rule asks for less.',
        'A fill of plastic is left alone: joining its metal cap to the bonding may draw a spark while she is ashore.',
        'Diesel is left alone.',
    ],
    examples: [{
        name: 'fill that is not joined to ground',
        bad: `vessel "Marram" { fuel: gasoline }
fuel-tank T1 { material: aluminum  bond-resistance: 4.7 kohm }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
fuel-tank T1 { material: aluminum  bond-resistance: 4.7 ohm }
`,
        correction: 'Read 4.7 kohm as 4.7 ohm',
    }, {
        name: 'no wire between fill and tank',
        bad: `vessel "Marram" { fuel: gasoline }
fuel-tank T1 { material: aluminum  fill-bond: no }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
fuel-tank T1 { material: aluminum  fill-bond: yes }
`,
        correction: 'Record that a wire joins fill, T1 and ground',
    }],
    silent: [
        { name: 'grounded', text: 'vessel "Marram" { fuel: gasoline }\nfuel-tank T1 { material: aluminum  bond-resistance: 0.4 ohm }\n' },
        { name: 'the same reading on diesel', text: 'vessel "Marram" { fuel: diesel }\nfuel-tank T1 { material: aluminum  bond-resistance: 4.7 kohm }\n' },
        { name: 'fill of plastic', text: 'vessel "Marram" { fuel: gasoline }\nfuel-fill FF1 { material: nylon  bond-resistance: 4.7 megohm }\n' },
        { name: 'tank of plastic without a wire', text: 'vessel "Marram" { fuel: gasoline }\nfuel-tank T1 { material: polyethylene  fill-bond: no }\n' },
    ],
    run(record, raise) {
        for (const part of [...ofKind(record, 'fuel-tank'), ...ofKind(record, 'fuel-fill')]) {
            const problem = judge(record, part);
            if (problem) {
                raise(problem);
            }
        }
    },
});

function judge(record: SurveyRecord, part: Component<'fuel-tank' | 'fuel-fill'>): Raised | undefined {
    const measured = measuredOf(record, part);
    const resistance = measured?.resistance;
    const isParted = resistance === undefined ? flagOf(part, 'fill-bond') === false : !isStaticallyGrounded(resistance.si);
    const isMetal = materialOf(part)?.isMetal ?? (isKind(record, part, 'fuel-tank') && fillsOf(record, part).some(fill => materialOf(fill)?.isMetal === true) ? true : undefined);
    const [run] = runsThrough(record, part);
    const fuel = isKind(record, part, 'fuel-tank') ? fuelOfTank(record, part) : fuelOf(record, run);
    if (isMetal === true && fuel === 'gasoline' && resistance === undefined && !part.facts.has('fill-bond') && flagOf(part, 'bonded') === false) {
        return { components: [part], at: part.facts.get('bonded')?.span ?? part.idSpan, severity: 'hint', message: `${nameOf(part)} is not bonded; record its resistance to ground (bond-resistance), to tell whether static electricity of the fuel can drain away.` };
    }
    if (!isParted || isMetal === false || fuel === 'diesel') {
        return undefined;
    }
    const missing = fuel === undefined ? 'the fuel of the vessel or of the tank' : isMetal === undefined ? `the material of ${part.id}` : undefined;
    if (missing !== undefined) {
        return fuel === undefined && isMetal === undefined ? undefined : { components: [part], at: part.idSpan, severity: 'hint', message: `${nameOf(part)} has no good way to ground for static electricity; record ${missing}, to tell whether it needs one.` };
    }
    return problem(record, part, measured);
}

interface MeasuredBond {
    readonly resistance: Quantity;
    readonly at: Span;
    readonly isInTable: boolean;
}

/** Resistance to ground as recorded of the part, else in a table of bonding. */
function measuredOf(record: SurveyRecord, part: Component<'fuel-tank' | 'fuel-fill'>): MeasuredBond | undefined {
    const own = valueOf(part, 'bond-resistance');
    if (own) {
        return { resistance: own, at: part.facts.get('bond-resistance')?.span ?? part.idSpan, isInTable: false };
    }
    return rowsOf(record, 'bonding').flatMap(({ row }): MeasuredBond[] => {
        const resistance = valueOf(row, 'resistance');
        return resistance && valueOf(row, 'part')?.id === part.id ? [{ resistance, at: row.facts.get('resistance')?.span ?? row.span, isInTable: true }] : [];
    })[0];
}

/** Fills in the runs of a tank. */
function fillsOf(record: SurveyRecord, tank: Component): readonly Component[] {
    return runsThrough(record, tank).flatMap(run => run.components.filter(part => isKind(record, part, 'fuel-fill')));
}

function problem(record: SurveyRecord, part: Component, measured: MeasuredBond | undefined): Raised {
    const isTank = isKind(record, part, 'fuel-tank');
    const resistance = measured?.resistance;
    const figure = measured?.isInTable ? both(measured.resistance) : `{${part.id}.bond-resistance}`;
    const what = resistance ? `has ${both(resistance)} to ground, where less than ${staticGroundLimitOhm} ohm is good practice per 33 CFR 183.572` : 'has no wire that joins fill, tank and ground';
    const why = 'Static electricity of the fuel that runs in cannot drain away and may spark at the fill';
    return {
        components: [part],
        at: measured?.at ?? part.facts.get('fill-bond')?.span ?? part.idSpan,
        message: `${nameOf(part)} ${what}. ${why}; join fill, tank and ground by a wire.`,
        ...(resistance ? { figures: { resistance: { value: resistance.si, unit: 'ohm' }, limit: { value: staticGroundLimitOhm, unit: 'ohm' } } } : {}),
        corrections: resistance ? (measured.isInTable ? [] : inAnotherUnit(part, 'bond-resistance', resistance, isStaticallyGrounded))
            : [{ kind: 'set-fact', title: `Record that a wire joins fill, ${part.id} and ground`, component: part, property: 'fill-bond', value: 'yes' }],
        draft: {
            title: `${isTank ? 'Fuel tank' : 'Fuel fill'} ${part.id} is not grounded`,
            urgency: 'before-use',
            seen: resistance ? `From ${isTank ? `fill to tank ${part.id}` : `fuel fill ${part.id}`} to ground ${figure} was measured, where less than ${staticGroundLimitOhm} ohm is good practice.` : `No wire joins the fuel fill, tank ${part.id} and ground.`,
            because: `${why}. The fuel is gasoline.`,
            recommend: `Before she is fueled again, join the fill, the tank and the ground by a wire, and measure less than ${staticGroundLimitOhm} ohm from each to ground.`,
            cites: [['33 CFR 183', '183.572']],
        },
    };
}
