/** A hull potential outside the range for her gear, or hardly shifted from the metal's own. */
import { yardstick, type SurveyRecord } from '../../record/model.js';
import { judgeHullPotential, type HullGear, type PotentialRange } from '../../trade/hull-potential.js';
import { cellElectrodes, convertPotentialV } from '../../trade/reference-electrode.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';
import { potentialReadings, type PotentialReading } from './potential-readings.js';
import { millivolts } from '../phrasing.js';

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
    computes: 'The reading against silver chloride in sea water (other cellElectrodes converted: E + V(cell) − V(silver chloride)) set against the yardstick for her gear: −750..−1000 mV for fiberglass with bronze gear, −900..−1050 with an aluminum drive, −900..−1100 aluminum, −800..−1050 steel, −550..−600 wood, where the firm sets no other. Also a fault where the shift from the metal’s own potential is under 200 mV.',
    sources: [{ text: 'ranges and the 200 mV shift', standard: 'ABYC E-2', provenance: 'secondary' }, { text: 'silver chloride in sea water +0.25 V, zinc −0.78 V against hydrogen', provenance: 'memory' }],
    yardsticks: ['potential-fiberglass-bronze', 'potential-fiberglass-aluminum-drive', 'potential-aluminum', 'potential-steel', 'potential-wood'],
    limits: ['Ranges are for salt water; practice differs, fiberglass boats from −550 to −1100 mV are accepted by some.', 'Where the cell is not recorded, a reading is judged only if neither a silver-chloride nor a copper-sulfate cell would bring it into range.', 'In fresh or brackish water nothing is judged; where the water is not recorded and the reading is out of range, it is asked for.'],
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
        for (const reading of potentialReadings(record)) {
            const { water } = reading;
            const potential = reading.volts('potential');
            const gear = reading.gear as HullGear | undefined; // The catalogue's words are those of HullGear.
            if (potential === undefined) {
                continue;
            }
            const cell = reading.cell ?? (gear && isOutWithAnyCell(potential, rangeFor(record, gear)) ? 'silver-chloride' : undefined);
            const own = reading.volts('own-potential');
            const shift = own === undefined ? undefined : own - potential;
            const isHardlyShifted = shift !== undefined && shift < leastShiftV - 1e-9 && (water === undefined || water === 'salt');
            if ((cell === undefined || gear === undefined) && isHardlyShifted) {
                raise(hardlyShifted(reading, shift)); // A shift is the same with any cell.
                continue;
            }
            if (cell === undefined || gear === undefined) {
                raise({ components: reading.components, at: reading.span('potential'), severity: 'hint', message: `${reading.name} reads ${millivolts(potential)} mV; record its ${cell === undefined ? 'cell' : 'gear'} to tell whether that is in range.` });
                continue;
            }
            if (water !== undefined && water !== 'salt') {
                continue; // The ranges are for salt water.
            }
            const electrode = cellElectrodes[cell];
            const silver = electrode ? convertPotentialV(potential, electrode, 'silver-chloride-sea-water') : potential;
            const range = rangeFor(record, gear);
            const verdict = judgeHullPotential(silver, range);
            if (water === undefined && !(verdict === 'in-range' && isHardlyShifted)) {
                if (verdict !== 'in-range') {
                    raise({ components: reading.components, at: reading.span('potential'), severity: 'hint', message: `${reading.name} reads ${millivolts(potential)} mV; record the water of the vessel to tell whether that is in range: the ranges are for salt water.` });
                }
            } else if (verdict !== 'in-range') {
                raise(problem(reading, silver, cell, gear, range, verdict));
            } else if (isHardlyShifted) {
                raise(hardlyShifted(reading, shift));
            }
        }
    },
});

function hardlyShifted(reading: PotentialReading, shift: number): Raised {
    return {
        components: reading.components, at: reading.span('own-potential'),
        message: `${reading.name} is shifted by ${millivolts(shift)} mV from the metal’s own potential, under ${millivolts(leastShiftV)} mV: it is hardly protected. Check the anodes and their contact.`,
        figures: { shift: { value: millivolts(shift), unit: 'mV' }, least: { value: millivolts(leastShiftV), unit: 'mV' } },
        draft: draft(reading, `It is shifted by ${millivolts(shift)} mV from the metal’s own potential, where at least 200 mV is asked.`, 'in-upkeep'),
    };
}

/** Whether a reading is on the same side outside the range, whichever of the two usual cellElectrodes it was read with. */
function isOutWithAnyCell(potentialV: number, range: PotentialRange): boolean {
    const verdict = judgeHullPotential(potentialV, range);
    return verdict !== 'in-range' && verdict === judgeHullPotential(convertPotentialV(potentialV, 'copper-sulfate', 'silver-chloride-sea-water'), range);
}

const gearTitles: Readonly<Record<HullGear, string>> = {
    'fiberglass-bronze': 'a fiberglass hull with bronze gear', 'fiberglass-aluminum-drive': 'a fiberglass hull with an aluminum drive',
    aluminum: 'an aluminum hull', steel: 'a steel hull', wood: 'a wooden hull',
};

/** The range she is judged by, as the firm or the catalogue gives it. */
function rangeFor(record: SurveyRecord, gear: HullGear): PotentialRange & { readonly whose: string } {
    const { low, high, isFirms } = yardstick(record, `potential-${gear}`);
    return { fromV: high, toV: low, whose: isFirms ? 'the firm’s range' : 'the usual range' };
}

function problem(reading: PotentialReading, silverV: number, cell: string, gear: HullGear, range: ReturnType<typeof rangeFor>, verdict: 'under-protected' | 'over-protected'): Raised {
    const { fromV, toV, whose } = range;
    const beyond = verdict === 'over-protected';
    const urgency: Urgency = beyond && gear === 'wood' ? 'within-days' : beyond && silverV < aluminumDangerV && gear.includes('aluminum') ? 'within-days' : 'in-upkeep';
    const days = urgency === 'within-days' ? (gear === 'wood' ? 30 : 7) : undefined;
    const read = reading.cell === undefined ? `${millivolts(silverV)} mV (its cell is not recorded, and none of the usual ones would bring it into range)` : cell === 'silver-chloride' ? `${millivolts(silverV)} mV` : `${millivolts(silverV)} mV against silver chloride (converted from ${cellTitles[cell] ?? cell})`;
    const why = beyond ? (gear === 'wood' ? 'wood is pulped around fastenings' : gear.includes('aluminum') ? 'aluminum dissolves and paint lifts' : 'paint lifts') : 'metal is being eaten';
    const value = reading.volts('potential');
    const { component } = reading;
    const others = Object.keys(cellElectrodes).filter(other => other !== cell);
    return {
        components: reading.components, at: reading.span('potential'),
        message: `${reading.name} reads ${read}, outside ${whose} of ${millivolts(fromV)} to ${millivolts(toV)} mV for ${gearTitles[gear]}: ${beyond ? 'over-protected' : 'under-protected'}, ${why}. Adjust the anodes and find the cause.`,
        figures: { potential: { value: millivolts(silverV), unit: 'mV' }, from: { value: millivolts(fromV), unit: 'mV' }, to: { value: millivolts(toV), unit: 'mV' } },
        corrections: component === undefined ? [] : others.filter(other => {
            const electrode = cellElectrodes[other];
            return electrode !== undefined && value !== undefined && judgeHullPotential(convertPotentialV(value, electrode, 'silver-chloride-sea-water'), range) === 'in-range';
        }).map(other => ({ kind: 'set-fact' as const, title: `Record it as read with a ${cellTitles[other] ?? other} cell`, component, property: 'cell', value: other })),
        draft: draft(reading, `${beyond ? 'Over-protected' : 'Under-protected'}: ${why}. Judged by ${whose} for ${gearTitles[gear]}, ${millivolts(fromV)} to ${millivolts(toV)} mV in salt water.`, urgency, days),
    };
}

function draft(reading: PotentialReading, because: string, urgency: Urgency, days?: number) {
    return {
        title: `${reading.name}: hull potential outside its range`, urgency, ...(days === undefined ? {} : { days }),
        seen: `${reading.name} read ${reading.quoted('potential')}${reading.cell === undefined ? '' : ` against ${reading.component ? `{${reading.component.id}.cell}` : cellTitles[reading.cell] ?? reading.cell}`}.`,
        because, recommend: 'Adjust the anodes, check bonding and shore earth, and read again after some days.', cites: [['ABYC E-2']] as const,
    };
}
