/** A bonding lead that does not carry: the anode cannot reach the fitting. */
import { flagOf, isKind, nameOf, ofKind, rowsOf, siOf, type Component } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';

const limitOhm = 1;

export const bondingResistanceHigh = defineCheck({
    id: 'bonding-resistance-high',
    group: 'metals',
    severity: 'error',
    title: 'Bonding resistance is high',
    why: 'The anode cannot reach that fitting.',
    needs: ['bonding: resistance, broken, isolated', 'or a table that measures bonding'],
    computes: 'A fault over 1 ohm, or where a lead is broken, unless the fitting is isolated on purpose.',
    sources: [{ text: '1 ohm', standard: 'ABYC E-2', provenance: 'memory' }],
    limits: ['Leads of the meter are taken to be zeroed.'],
    examples: [{
        name: 'corroded terminal',
        bad: 'bonding B1 { resistance: 4.5 ohm }\n',
        fixed: 'bonding B1 { resistance: 4.5 ohm  isolated: yes }\n',
        correction: 'Record B1 as isolated on purpose',
    }],
    silent: [
        { name: 'low', text: 'bonding B1 { resistance: 0.4 ohm }\n' },
        { name: 'a row of a table, low', text: 'reading M1 "Bonding" {\n    measures: bonding\n    row "Rudder": 0.4 ohm\n}\n' },
        { name: 'exactly one ohm', text: 'bonding B1 { resistance: 1 ohm }\n' },
    ],
    run(record, raise) {
        for (const bond of ofKind(record, 'bonding')) {
            const ohm = siOf(bond, 'resistance');
            const isBroken = flagOf(bond, 'broken') === true;
            if (flagOf(bond, 'isolated') === true || (!isBroken && (ohm === undefined || ohm <= limitOhm + 1e-9))) {
                continue;
            }
            const what = isBroken ? 'is broken' : `measures ${Math.round((ohm ?? 0) * 100) / 100} ohm, over ${limitOhm} ohm`;
            raise({
                components: [bond], at: (isBroken ? bond.facts.get('broken') : bond.facts.get('resistance'))?.span ?? bond.idSpan,
                message: `${nameOf(bond)} ${what}: the anode cannot reach the fitting. Clean or renew the lead and its terminals.`,
                figures: ohm === undefined ? {} : { resistance: { value: ohm, unit: 'ohm' }, limit: { value: limitOhm, unit: 'ohm' } },
                corrections: [{ kind: 'set-fact', title: `Record ${bond.id} as isolated on purpose`, component: bond, property: 'isolated', value: 'yes' }],
                draft: {
                    title: `${bond.title ?? bond.id}: bonding does not carry`, urgency: 'in-upkeep',
                    seen: `${bond.title ?? 'The bonding'} (${bond.id}) ${isBroken ? 'is broken' : `measured {${bond.id}.resistance} to the bus`}.`,
                    because: 'The anode cannot protect a fitting it is not joined to.',
                    recommend: 'Clean or renew the lead and its terminals, and measure again.', cites: [['ABYC E-2']],
                },
            });
        }
        for (const anode of ofKind(record, 'anode')) {
            const ohm = siOf(anode, 'resistance');
            if (ohm !== undefined && ohm > limitOhm + 1e-9) {
                raise(ofAnode(anode, ohm));
            }
        }
        for (const { reading, row } of rowsOf(record, 'bonding')) {
            const ohm = siOf(row, 'resistance');
            const part = row.facts.get('part')?.values[0];
            const component = part?.type === 'component' ? record.components.get(part.id) : undefined;
            // Fuel fills and tanks are grounded against static electricity, which fuel-bond-high judges; no anode reaches for them.
            if (component && (isKind(record, component, 'fuel-fill') || isKind(record, component, 'fuel-tank'))) {
                continue;
            }
            // A part that is isolated on purpose is recorded so at its own bonding.
            if (ohm !== undefined && ohm > limitOhm + 1e-9 && !(component && flagOf(component, 'isolated') === true)) {
                raise(ofRow(component ?? reading.on[0], row.label, ohm, row.facts.get('resistance')?.span ?? row.span));
            }
        }
    },
});

function ofAnode(anode: Component, ohm: number): Raised {
    return {
        components: [anode], at: anode.facts.get('resistance')?.span ?? anode.idSpan,
        message: `${nameOf(anode)} measures ${Math.round(ohm * 100) / 100} ohm to the part it protects, over ${limitOhm} ohm: it hardly protects it. Clean its contact to bright metal, or renew its lead.`,
        figures: { resistance: { value: ohm, unit: 'ohm' }, limit: { value: limitOhm, unit: 'ohm' } },
        draft: {
            title: `${anode.title ?? anode.id}: its contact is poor`, urgency: 'in-upkeep',
            seen: `${anode.title ?? 'The anode'} (${anode.id}) measured {${anode.id}.resistance} to the part it protects.`,
            because: 'An anode protects only what it is joined to.',
            recommend: 'Clean its contact to bright metal, or renew its lead, and measure again.', cites: [['ABYC E-2']],
        },
    };
}

function ofRow(component: Component | undefined, label: string, ohm: number, at: Raised['at']): Raised {
    const figure = `${Math.round(ohm * 100) / 100} ohm`;
    return {
        components: component ? [component] : [], at,
        message: `${label} measures ${figure} to the bus, over ${limitOhm} ohm: the anode cannot reach the fitting. Clean or renew the lead and its terminals.`,
        figures: { resistance: { value: ohm, unit: 'ohm' }, limit: { value: limitOhm, unit: 'ohm' } },
        draft: {
            title: `${label}: bonding does not carry`, urgency: 'in-upkeep', seen: `${label} measured ${figure} to the bus.`,
            because: 'The anode cannot protect a fitting it is not joined to.',
            recommend: 'Clean or renew the lead and its terminals, and measure again.', cites: [['ABYC E-2']],
        },
    };
}
