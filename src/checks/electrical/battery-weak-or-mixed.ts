/** A battery that has lost much of its rating, or a bank whose batteries do not match. */
import { areAgesApart, mostRestDifferenceV, restBeforeReadingS, restDifferenceV, shareLeft } from '../../trade/battery.js';
import { formatQuantity } from '../../quantities/index.js';
import { nameOf, wordOf, yardstick, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, computedBoth, listed } from '../phrasing.js';
import { firstDay, lastDay } from '../hoses/age.js';
import { banksOf, unitsOf, type Bank, type Measured, type Unit } from './banks.js';

export const batteryWeakOrMixed = defineCheck({
    id: 'battery-weak-or-mixed',
    group: 'electrical',
    severity: 'error',
    title: 'Battery is weak, or its bank is mixed',
    why: 'It will not start or pump when it must, and the weakest of a bank rules it.',
    needs: [
        'battery: capacity and capacity-measured, or cranking and cranking-measured; or a table of battery', 'bank, for what the batteries of a bank have in common',
        'rest-voltage with hours-since-charge, made or fitted, chemistry',
    ],
    computes: 'Measured over rated < 80 %. Within a bank: voltages at rest more than 0.2 V apart; made more than 12 months apart; kinds mixed. Readings within an hour of charging are void.',
    sources: [{ text: '80 %, 0.2 V, 12 months, an hour at rest; a bank is renewed as a set', provenance: 'practice' }],
    yardsticks: ['battery-left'],
    limits: [
        'Which batteries are one bank is known only from bank.',
        'Voltages at rest are compared only where the time since charging is recorded.',
        'Dates known to the month or year are taken so that no difference is overstated. Where made is not recorded, fitted is taken.',
        'A low voltage at rest by itself is not judged: it may only be discharged.',
    ],
    examples: [{
        name: 'two thirds of its rating',
        bad: `vessel "Marram" {}
battery B1 "House battery" { capacity: 105 Ah  capacity-measured: 71 Ah }
`,
        fixed: `vessel "Marram" {}
battery B1 "House battery" { capacity: 105 Ah  capacity-measured: 90 Ah }
`,
    }, {
        name: 'start battery in a table',
        bad: `battery B1 { purpose: start }
reading M1 "Batteries" {
    measures: battery
    row "Start": B1, 12.6 V, 650 A, 480 A
}
`,
        fixed: `battery B1 { purpose: start }
reading M1 "Batteries" {
    measures: battery
    row "Start": B1, 12.6 V, 650 A, 600 A
}
`,
    }, {
        name: 'kinds mixed in a bank',
        bad: `battery B1 { bank: "house"  chemistry: flooded }
battery B2 { bank: "house"  chemistry: agm }
`,
        fixed: `battery B1 { bank: "house"  chemistry: flooded }
battery B2 { bank: "house"  chemistry: flooded }
`,
    }, {
        name: 'voltages at rest apart',
        bad: `battery B1 { bank: "house"  rest-voltage: 12.7 V  hours-since-charge: 12 h }
battery B2 { bank: "house"  rest-voltage: 12.4 V  hours-since-charge: 12 h }
`,
        fixed: `battery B1 { bank: "house"  rest-voltage: 12.7 V  hours-since-charge: 12 h }
battery B2 { bank: "house"  rest-voltage: 12.6 V  hours-since-charge: 12 h }
`,
    }],
    silent: [
        { name: '80 % of its rating', text: 'battery B1 { cranking: 600 A  cranking-measured: 480 A }\n' },
        { name: 'different kinds in different banks', text: 'battery B1 { bank: "house"  chemistry: flooded }\nbattery B2 { bank: "start"  chemistry: agm }\n' },
        { name: 'voltages 0.2 V apart', text: 'battery B1 { bank: "house"  rest-voltage: 12.7 V  hours-since-charge: 12 h }\nbattery B2 { bank: "house"  rest-voltage: 12.5 V  hours-since-charge: 12 h }\n' },
        { name: 'made within 12 months', text: 'battery B1 { bank: "house"  made: 2023-05 }\nbattery B2 { bank: "house"  made: 2024-05 }\n' },
        { name: 'not measured', text: 'battery B1 { capacity: 105 Ah }\n' },
    ],
    run(record, raise) {
        for (const unit of unitsOf(record)) {
            const problem = weak(record, unit);
            if (problem) {
                raise(problem);
            }
        }
        for (const bank of banksOf(record)) {
            const problem = mixed(bank);
            if (problem) {
                raise(problem);
            }
        }
        const unlike = unbanked(record);
        const [first] = unlike?.components ?? [];
        if (unlike && first && unlike.severity !== 'hint') {
            raise({ components: unlike.components, at: unlike.at, severity: 'hint', message: `${listed(unlike.components.map(nameOf))} are all house batteries and do not match in kind or age; record the bank each is joined in (bank), to tell whether that matters.` });
        }
    },
});

/** House batteries of no bank, taken as one: what would be wrong of them. */
function unbanked(record: SurveyRecord): Raised | undefined {
    const units = unitsOf(record).flatMap(unit => (unit.battery && wordOf(unit.battery, 'purpose') === 'house' && !unit.battery.facts.has('bank') ? [{ ...unit, battery: unit.battery }] : []));
    return units.length > 1 ? mixed({ name: 'house', units }) : undefined;
}

const isVoid = ({ sinceChargeS }: Unit): boolean => sinceChargeS !== undefined && sinceChargeS < restBeforeReadingS - 1e-6;

function weak(record: SurveyRecord, unit: Unit): Raised | undefined {
    const left = yardstick(record, 'battery-left');
    const share = ({ measured, rated }: Measured) => shareLeft({ measured: measured.si, rated: rated.si });
    const [worst] = [...unit.measured].sort((x, y) => share(x) - share(y));
    const components = unit.battery ? [unit.battery] : [];
    const name = unit.battery ? nameOf(unit.battery) : unit.label;
    if (!worst || share(worst) >= left.si - 1e-9) {
        return undefined;
    }
    if (isVoid(unit)) {
        return { components, at: worst.at, severity: 'hint', message: `${name} was measured within an hour of charging, which tells nothing; let it rest an hour and measure it again.` };
    }
    const isStart = unit.battery !== undefined && wordOf(unit.battery, 'purpose') === 'start';
    const percent = formatQuantity(share(worst), 'fraction', 'us');
    const what = worst.what === 'capacity' ? 'capacity' : 'cold-cranking current';
    const measuredIn = worst.what === 'capacity' ? 'capacity-measured' : 'cranking-measured';
    const seen = unit.battery && worst.isOnBattery ? `measured {${unit.battery.id}.${measuredIn}} of {${unit.battery.id}.${worst.what}} rated` : `measured ${both(worst.measured)} of ${both(worst.rated)} rated`;
    const why = isStart ? 'It may not start the engine when it must' : 'It does not last as long as what hangs on it counts on';
    return {
        components,
        at: worst.at,
        message: `The ${what} of ${name} measures ${both(worst.measured)} of ${both(worst.rated)} rated, ${percent}, where ${left.written} is ${left.whose}. ${why}; renew it with all of its bank.`,
        figures: { left: { value: share(worst) * 100, unit: '%' }, least: { value: left.si * 100, unit: '%' } },
        draft: {
            title: `Battery ${unit.label} is weak`,
            urgency: isStart ? 'before-departure' : 'in-upkeep',
            seen: `The ${what} of battery ${unit.label} ${seen}, ${percent}.`,
            because: `${left.written} is ${left.whose} under which a battery is renewed. ${why}.`,
            recommend: `Renew battery ${unit.label}, with all batteries of its bank as a set.`,
        },
    };
}

/** First and last made of a bank, where they are too far apart. */
function ageApart(units: Bank['units']): readonly [Unit, Unit] | undefined {
    const dated = units.filter(unit => unit.made !== undefined);
    return dated.flatMap(older => dated.map(newer => [older, newer] as const))
        .find(([older, newer]) => older.made && newer.made && areAgesApart({ olderMs: lastDay(older.made), newerMs: firstDay(newer.made) }));
}

function mixed({ name, units }: Bank): Raised | undefined {
    const kinds = [...new Set(units.map(unit => unit.chemistry).filter(kind => kind !== undefined))];
    const ages = ageApart(units);
    const rests = units.filter(unit => unit.rest !== undefined && !isVoid(unit));
    const apartV = restDifferenceV(rests.map(unit => unit.rest?.si ?? 0));
    const isApart = apartV > mostRestDifferenceV + 1e-9;
    const untimed = rests.find(unit => unit.sinceChargeS === undefined);
    const batteries = units.map(unit => unit.battery);
    const troubles = [
        ...(isApart && !untimed ? [{ property: 'rest-voltage', says: `their voltages at rest are ${computedBoth(apartV, 'voltage')} apart, where ${computedBoth(mostRestDifferenceV, 'voltage')} is the most` }] : []),
        ...(ages ? [{ property: 'made', says: `${ages[0].label} was made ${ages[0].made?.written ?? ''} and ${ages[1].label} ${ages[1].made?.written ?? ''}, more than 12 months apart` }] : []),
        ...(kinds.length > 1 ? [{ property: 'chemistry', says: `their kinds are ${listed(kinds)}` }] : []),
    ];
    const [first] = troubles;
    const at = (property: string) => batteries.map(battery => battery.facts.get(property)?.span).findLast(span => span !== undefined) ?? batteries.at(-1)?.idSpan ?? { uri: '', start: 0, end: 0 };
    if (!first) {
        return isApart && untimed?.battery ? {
            components: batteries, at: untimed.battery.facts.get('rest-voltage')?.span ?? untimed.battery.idSpan, severity: 'hint',
            message: `The voltages at rest of the bank ${name} are ${computedBoth(apartV, 'voltage')} apart; record how long since ${untimed.battery.id} was charged (hours-since-charge), for within an hour that tells nothing.`,
        } : undefined;
    }
    const says = listed(troubles.map(trouble => trouble.says));
    const ids = listed(batteries.map(battery => battery.id));
    return {
        components: batteries,
        at: at(first.property),
        message: `The batteries of the bank ${name} (${ids}) do not match: ${says}. The weakest rules the bank and the charger suits only one kind; renew the bank as a set.`,
        ...(isApart && !untimed ? { figures: { apart: { value: apartV, unit: 'V' }, most: { value: mostRestDifferenceV, unit: 'V' } } } : {}),
        draft: {
            title: `Batteries of the bank ${name} do not match`,
            urgency: batteries.some(battery => wordOf(battery, 'purpose') === 'start') ? 'before-departure' : 'in-upkeep',
            seen: `Of the bank ${name} (${ids}), ${says}.`,
            because: 'The weakest battery rules a bank, and what charges one kind or age rightly is wrong for another.',
            recommend: `Renew ${ids} as a set, of one kind, size and date.`,
        },
    };
}
