/** A hull potential outside the range for her gear, or hardly shifted from the metal's own. */
import { nameOf, ofKind, siOf, wordOf, type Component } from '../../record/model.js';
import { hullRanges, judgeHullPotential, type HullGear } from '../../trade/hull-potential.js';
import { convertPotentialV, type ReferenceElectrode } from '../../trade/reference-electrode.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';

const cells: Readonly<Record<string, ReferenceElectrode>> = { 'silver-chloride': 'silver-chloride-sea-water', 'copper-sulfate': 'copper-sulfate', zinc: 'zinc-sea-water' };
const cellTitles: Readonly<Record<string, string>> = { 'silver-chloride': 'silver chloride', 'copper-sulfate': 'copper sulfate', zinc: 'zinc' };
const leastShiftV = 0.2;
const aluminumDangerV = -1.2;

export const hullPotentialOutsideRange = defineCheck({
    id: 'hull-potential-outside-range',
    group: 'metals',
    severity: 'error',
    title: 'Hull potential is outside its range',
    why: 'Too little protection eats metal; too much pulps wood, lifts paint and attacks aluminum.',
    needs: ['hull potential: potential, cell, gear', 'own-potential, for the shift', 'vessel: water'],
    computes: 'The reading against silver chloride in sea water (other cells converted: E + V(cell) − V(silver chloride)) set against −750..−1000 mV for fiberglass with bronze gear, −900..−1050 with an aluminum drive, −900..−1100 aluminum, −800..−1050 steel, −550..−600 wood. Also a fault where the shift from the metal’s own potential is under 200 mV.',
    sources: [{ text: 'ranges and the 200 mV shift', standard: 'ABYC E-2', provenance: 'secondary' }, { text: 'silver chloride in sea water +0.25 V, zinc −0.78 V against hydrogen', provenance: 'memory' }],
    limits: ['Ranges are for salt water; practice differs, fiberglass boats from −550 to −1100 mV are accepted by some.', 'In fresh or brackish water nothing is judged; where the water is not recorded and the reading is out of range, it is asked for.', 'Rows of a table of readings are not judged: record the reading as a hull-potential.'],
    examples: [{
        name: 'wood driven too far',
        bad: 'vessel "M" { water: salt }\nhull-potential HP1 { potential: -820 mV  cell: silver-chloride  gear: wood }\n',
        fixed: 'vessel "M" { water: salt }\nhull-potential HP1 { potential: -580 mV  cell: silver-chloride  gear: wood }\n',
    }, {
        name: 'read with another cell',
        bad: 'vessel "M" { water: salt }\nhull-potential HP1 { potential: -860 mV  cell: silver-chloride  gear: aluminum }\n',
        fixed: 'vessel "M" { water: salt }\nhull-potential HP1 { potential: -1000 mV  cell: copper-sulfate  gear: aluminum }\n',
    }],
    silent: [
        { name: 'steel at -820 mV', text: 'vessel "M" { water: salt }\nhull-potential HP1 { potential: -820 mV  cell: silver-chloride  gear: steel }\n' },
        { name: 'fresh water', text: 'vessel "M" { water: fresh }\nhull-potential HP1 { potential: -500 mV  cell: silver-chloride  gear: steel }\n' },
    ],
    run(record, raise) {
        const water = record.vessel && wordOf(record.vessel, 'water');
        for (const reading of ofKind(record, 'hull-potential')) {
            const potential = siOf(reading, 'potential');
            const cell = wordOf(reading, 'cell');
            const gear = wordOf(reading, 'gear') as HullGear | undefined; // The catalogue's words are those of HullGear.
            if (potential === undefined) {
                continue;
            }
            if (cell === undefined || gear === undefined) {
                raise({ components: [reading], at: reading.idSpan, severity: 'hint', message: `${nameOf(reading)} reads ${millivolts(potential)} mV; record its ${cell === undefined ? 'cell' : 'gear'} to tell whether that is in range.` });
                continue;
            }
            if (water !== undefined && water !== 'salt') {
                continue; // The ranges are for salt water.
            }
            const electrode = cells[cell];
            const silver = electrode ? convertPotentialV(potential, electrode, 'silver-chloride-sea-water') : potential;
            const verdict = judgeHullPotential(silver, gear);
            const own = siOf(reading, 'own-potential');
            const shift = own === undefined ? undefined : own - potential;
            if (water === undefined) {
                if (verdict !== 'in-range') {
                    raise({ components: [reading], at: reading.facts.get('potential')?.span ?? reading.idSpan, severity: 'hint', message: `${nameOf(reading)} reads ${millivolts(potential)} mV; record the water of the vessel to tell whether that is in range: the ranges are for salt water.` });
                }
            } else if (verdict !== 'in-range') {
                raise(problem(reading, silver, cell, gear, verdict));
            } else if (shift !== undefined && shift < leastShiftV - 1e-9) {
                raise({
                    components: [reading], at: reading.facts.get('own-potential')?.span ?? reading.idSpan,
                    message: `${nameOf(reading)} is shifted by ${millivolts(shift)} mV from the metal’s own potential, under ${millivolts(leastShiftV)} mV: it is hardly protected. Check the anodes and their contact.`,
                    figures: { shift: { value: millivolts(shift), unit: 'mV' }, least: { value: millivolts(leastShiftV), unit: 'mV' } },
                    draft: draft(reading, `It is shifted by ${millivolts(shift)} mV from the metal’s own potential, where at least 200 mV is asked.`, 'in-upkeep'),
                });
            }
        }
    },
});

const millivolts = (v: number): number => Math.round(v * 1000);

function problem(reading: Component, silverV: number, cell: string, gear: HullGear, verdict: 'under-protected' | 'over-protected'): Raised {
    const { fromV, toV } = hullRanges[gear];
    const beyond = verdict === 'over-protected';
    const urgency: Urgency = beyond && gear === 'wood' ? 'within-days' : beyond && silverV < aluminumDangerV && gear.includes('aluminum') ? 'within-days' : 'in-upkeep';
    const days = urgency === 'within-days' ? (gear === 'wood' ? 30 : 7) : undefined;
    const read = cell === 'silver-chloride' ? `${millivolts(silverV)} mV` : `${millivolts(silverV)} mV against silver chloride (converted from ${cellTitles[cell] ?? cell})`;
    const why = beyond ? (gear === 'wood' ? 'wood is pulped around fastenings' : gear.includes('aluminum') ? 'aluminum dissolves and paint lifts' : 'paint lifts') : 'metal is being eaten';
    const fact = reading.facts.get('potential');
    const others = Object.keys(cells).filter(other => other !== cell);
    return {
        components: [reading], at: fact?.span ?? reading.idSpan,
        message: `${nameOf(reading)} is ${read}, outside ${millivolts(fromV)} to ${millivolts(toV)} mV for ${gear.replaceAll('-', ' ')}: ${beyond ? 'over-protected' : 'under-protected'}, ${why}. Adjust the anodes and find the cause.`,
        figures: { potential: { value: millivolts(silverV), unit: 'mV' }, from: { value: millivolts(fromV), unit: 'mV' }, to: { value: millivolts(toV), unit: 'mV' } },
        corrections: others.filter(other => {
            const electrode = cells[other];
            const value = fact?.values[0];
            return electrode !== undefined && value?.type === 'quantity' && judgeHullPotential(convertPotentialV(value.si, electrode, 'silver-chloride-sea-water'), gear) === 'in-range';
        }).map(other => ({ kind: 'set-fact' as const, title: `Record it as read with a ${cellTitles[other] ?? other} cell`, component: reading, property: 'cell', value: other })),
        draft: draft(reading, `${beyond ? 'Over-protected' : 'Under-protected'}: ${why}. The range for ${gear.replaceAll('-', ' ')} is ${millivolts(fromV)} to ${millivolts(toV)} mV in salt water.`, urgency, days),
    };
}

function draft(reading: Component, because: string, urgency: Urgency, days?: number) {
    return {
        title: `${reading.title ?? reading.id}: hull potential outside its range`, urgency, ...(days === undefined ? {} : { days }),
        seen: `${reading.title ?? 'The potential'} (${reading.id}) read {${reading.id}.potential}${reading.facts.has('cell') ? ` against {${reading.id}.cell}` : ''}.`,
        because, recommend: 'Adjust the anodes, check bonding and shore earth, and read again after some days.', cites: [['ABYC E-2']] as const,
    };
}
