/** A battery charged with too much or too little, or a lithium battery that nothing cuts off. */
import { chargeRangeAt, hotK, isChargingVoltage, type ChargeRange } from '../../trade/battery.js';
import { flagOf, isKind, nameOf, ofKind, rowsOf, siOf, valueOf, wordOf, yardstick, type Component, type Quantity, type Span, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, computedBoth } from '../phrasing.js';
import type { Battery } from './banks.js';

type Source = Component<'charger'> | Component<'alternator'> | Component<'solar-panel'>;

/** Error of a meter and of a regulator, V at 12 V, allowed on a maker's figure that is no range (chosen). */
const makersMarginV = 0.1;
/** A bank of less is of units in series, whose voltage together is not known (chosen). */
const leastBankV = 12;

export const chargeVoltageWrong = defineCheck({
    id: 'charge-voltage-wrong',
    group: 'electrical',
    severity: 'error',
    title: 'Charging voltage is wrong, or lithium has no cut-off',
    why: 'Too much makes gas and heat, too little never fills it, and lithium out of bounds can burn.',
    needs: [
        'charger, alternator or solar-panel: voltage, charges, stage, bank-voltage; or a table of charging', 'battery: chemistry, voltage, charging-voltage of its maker, temperature, swollen', 'lithium battery: cut-off', 'charger: set-for',
    ],
    computes: 'At 12 V: flooded outside 14.1 to 14.8 V in absorption; gel over 14.4 V; its maker’s figure (± 0.1 V where it is no range) goes before both. 24 V doubles them. Away from 25 C the range is widened by 5 mV a cell and degree, in the direction of compensation. Lithium without a cut-off is a fault; so is a charger set for another kind than it charges.',
    sources: [
        { text: 'charging voltages by kind; 50 C as hot; compensation by temperature', provenance: 'practice' },
        { text: 'a device that parts a lithium battery from charge and load', standard: 'ABYC E-13', provenance: 'memory' },
        { text: 'margin on a maker’s single figure', provenance: 'chosen' },
    ],
    yardsticks: ['charge-flooded', 'charge-gel-most'],
    limits: [
        'AGM and lithium differ by maker, and are judged only by their maker’s figure.',
        'Too low a voltage is judged in absorption alone; where the stage is not recorded it is asked for. While equalizing, nothing is judged.',
        'Where a source does not say which battery it charges, all batteries must be of one kind and voltage, else it is asked.',
        'Batteries under 12 V are units in series: the voltage of their bank is to be recorded on the source (bank-voltage).',
    ],
    examples: [{
        name: 'flooded at 15.1 V',
        bad: `vessel "Marram" {}
battery B1 { chemistry: flooded  voltage: 12 V }
charger CH1 "Battery charger" { voltage: 15.1 V  charges: B1  stage: absorption }
`,
        fixed: `vessel "Marram" {}
battery B1 { chemistry: flooded  voltage: 12 V }
charger CH1 "Battery charger" { voltage: 14.4 V  charges: B1  stage: absorption }
`,
    }, {
        name: 'gel at 14.7 V',
        bad: `battery B1 { chemistry: gel  voltage: 12 V }
alternator ALT1 { voltage: 14.7 V  charges: B1 }
`,
        fixed: `battery B1 { chemistry: gel  voltage: 12 V  charging-voltage: 14.7 V }
alternator ALT1 { voltage: 14.7 V  charges: B1 }
`,
        correction: 'Record 14.7 V as the charging voltage its maker gives',
    }, {
        name: 'flooded at 27.4 V on 24 V, in absorption',
        bad: `battery B1 { chemistry: flooded  voltage: 12 V }
charger CH1 { voltage: 27.4 V  charges: B1  bank-voltage: 24 V  stage: absorption }
`,
        fixed: `battery B1 { chemistry: flooded  voltage: 12 V }
charger CH1 { voltage: 28.8 V  charges: B1  bank-voltage: 24 V  stage: absorption }
`,
    }, {
        name: 'lithium without a cut-off',
        bad: `battery B1 { chemistry: lithium  voltage: 12 V  cut-off: no }
`,
        fixed: `battery B1 { chemistry: lithium  voltage: 12 V  cut-off: yes }
`,
        correction: 'Record a cut-off on B1',
    }],
    silent: [
        { name: 'flooded at its limits', text: 'battery B1 { chemistry: flooded  voltage: 12 V }\ncharger CH1 { voltage: 14.1 V  charges: B1  stage: absorption }\nalternator ALT1 { voltage: 14.8 V  charges: B1 }\n' },
        { name: 'flooded in float', text: 'battery B1 { chemistry: flooded  voltage: 12 V }\ncharger CH1 { voltage: 13.4 V  charges: B1  stage: float }\n' },
        { name: 'flooded being equalized', text: 'battery B1 { chemistry: flooded  voltage: 12 V }\ncharger CH1 { voltage: 15.5 V  charges: B1  stage: equalizing }\n' },
        { name: 'as its maker gives it', text: 'battery B1 { chemistry: gel  voltage: 12 V  charging-voltage: 14.2 V..14.8 V }\ncharger CH1 { voltage: 14.7 V  charges: B1 }\n' },
        { name: '28.8 V on 24 V', text: 'battery B1 { chemistry: flooded  voltage: 24 V }\ncharger CH1 { voltage: 28.8 V  charges: B1  stage: absorption }\n' },
        { name: 'kind not recorded', text: 'battery B1 { voltage: 12 V }\ncharger CH1 { voltage: 15.1 V  charges: B1 }\n' },
    ],
    run(record, raise) {
        const misread = new Set<Source>();
        for (const reading of readings(record)) {
            const problem = judge(record, reading);
            if (problem) {
                raise(problem);
                misread.add(reading.source);
            }
        }
        for (const charger of ofKind(record, 'charger').filter(source => !misread.has(source))) {
            const problem = setForAnother(record, charger);
            if (problem) {
                raise(problem);
            }
        }
        for (const battery of ofKind(record, 'battery')) {
            const problem = lithium(battery);
            if (problem) {
                raise(problem);
            }
        }
    },
});

interface ChargeReading {
    readonly source: Source;
    readonly voltage: Quantity;
    readonly at: Span;
    readonly isInTable: boolean;
}

function sourcesOf(record: SurveyRecord): readonly Source[] {
    return [...ofKind(record, 'charger'), ...ofKind(record, 'alternator'), ...ofKind(record, 'solar-panel')];
}

/** The voltage on each source; where none is there, the highest of its rows in a table. */
function readings(record: SurveyRecord): readonly ChargeReading[] {
    return sourcesOf(record).flatMap((source): ChargeReading[] => {
        const voltage = valueOf(source, 'voltage');
        if (voltage) {
            return [{ source, voltage, at: source.facts.get('voltage')?.span ?? source.idSpan, isInTable: false }];
        }
        return rowsOf(record, 'charging').flatMap(({ reading, row }): ChargeReading[] => {
            const id = valueOf(row, 'source')?.id ?? (reading.on.length === 1 ? reading.on[0]?.id : undefined);
            const read = valueOf(row, 'voltage');
            return id === source.id && read ? [{ source, voltage: read, at: row.facts.get('voltage')?.span ?? row.span, isInTable: true }] : [];
        }).sort((x, y) => y.voltage.si - x.voltage.si).slice(0, 1);
    });
}

/** The battery charged: as recorded, else any where all are alike. */
function chargedBattery(record: SurveyRecord, source: Source): Battery | 'several' | undefined {
    const named = record.components.get(valueOf(source, 'charges')?.id ?? '');
    if (named) {
        return isKind(record, named, 'battery') ? named : undefined;
    }
    const [first, ...others] = ofKind(record, 'battery');
    const written = (battery: Battery, property: string) => battery.facts.get(property)?.written;
    return !first ? undefined : others.every(other => ['chemistry', 'voltage', 'charging-voltage'].every(property => written(other, property) === written(first, property))) ? first : 'several';
}

interface Limits extends ChargeRange {
    /** Whose they are, to follow "is the most by". */
    readonly by: string;
    readonly hasLow: boolean;
}

function limitsOf(record: SurveyRecord, battery: Battery, nominalV: number): Limits | undefined {
    const makers = valueOf(battery, 'charging-voltage');
    if (makers) {
        const margin = makers.low === undefined ? makersMarginV * nominalV / 12 : 0;
        return { lowV: (makers.low ?? makers.si) - margin, highV: (makers.high ?? makers.si) + margin, hasLow: true, by: `its maker’s figure of ${makers.figure.written}` };
    }
    const caseK = siOf(battery, 'temperature');
    const at = { nominalV, ...(caseK === undefined ? {} : { caseK }) };
    const chemistry = wordOf(battery, 'chemistry');
    if (chemistry === 'flooded') {
        const range = yardstick(record, 'charge-flooded');
        return { ...chargeRangeAt({ lowV: range.low, highV: range.high }, at), hasLow: true, by: `${range.whose} for a flooded battery (${range.written} at 12 V)` };
    }
    if (chemistry === 'gel') {
        const most = yardstick(record, 'charge-gel-most');
        return { ...chargeRangeAt({ lowV: 0, highV: most.si }, at), hasLow: false, by: `${most.whose} for a gel battery (${most.written} at 12 V)` };
    }
    return undefined;
}

function ask(source: Source, at: Span, what: string, corrections: Raised['corrections'] = []): Raised {
    return { components: [source], at, severity: 'hint', message: `${nameOf(source)}: ${what}`, corrections };
}

function judge(record: SurveyRecord, { source, voltage, at, isInTable }: ChargeReading): Raised | undefined {
    const battery = chargedBattery(record, source);
    const stage = wordOf(source, 'stage');
    if (!battery || stage === 'equalizing') {
        return undefined;
    }
    if (battery === 'several') {
        return ask(source, at, 'record which battery it charges (charges), for the batteries aboard are not alike, to tell whether its voltage suits.');
    }
    if (wordOf(battery, 'chemistry') === undefined && !battery.facts.has('charging-voltage')) {
        return undefined;
    }
    const nominalV = siOf(source, 'bank-voltage') ?? siOf(battery, 'voltage');
    if (nominalV === undefined || nominalV < leastBankV - 1e-9) {
        return ask(source, at, `record the voltage of the bank it charges (bank-voltage), to tell whether ${both(voltage)} suits.`);
    }
    if (!isChargingVoltage(voltage.si, nominalV)) {
        const isOf24 = isChargingVoltage(voltage.si, 2 * nominalV);
        const doubled = `${2 * nominalV} V`;
        return ask(source, at, `${both(voltage)} is no charging voltage of a bank of ${computedBoth(nominalV, 'voltage')}; record the voltage of the bank it charges (bank-voltage).`,
            isOf24 ? [{ kind: 'set-fact', title: `Record the bank as of ${doubled}`, component: source, property: 'bank-voltage', value: doubled }] : []);
    }
    const limits = limitsOf(record, battery, nominalV);
    const isOver = limits !== undefined && voltage.si > limits.highV + 1e-6;
    const isUnder = limits !== undefined && limits.hasLow && voltage.si < limits.lowV - 1e-6;
    if (!limits || (!isOver && !isUnder) || (isUnder && (stage === 'bulk' || stage === 'float'))) {
        return undefined;
    }
    if (isUnder && stage === undefined) {
        return ask(source, at, `${both(voltage)} is under ${computedBoth(limits.lowV, 'voltage')}, the least in absorption by ${limits.by}; record the stage it was read in (stage).`);
    }
    return problem({ source, voltage, at, isInTable }, battery, limits, isOver);
}

function problem({ source, voltage, at, isInTable }: ChargeReading, battery: Battery, limits: Limits, isOver: boolean): Raised {
    const isSwollen = flagOf(battery, 'swollen') === true;
    const isHot = (siOf(battery, 'temperature') ?? 0) > hotK + 1e-6;
    const state = isSwollen ? ' The battery is swollen.' : isHot ? ' The battery is hot.' : '';
    const limit = isOver ? `${computedBoth(limits.highV, 'voltage')} is the most` : `${computedBoth(limits.lowV, 'voltage')} is the least in absorption`;
    const why = isOver ? 'It gasses, heats and dries out' : 'It is never filled, and sulfates';
    return {
        components: [source, battery],
        at,
        message: `${nameOf(source)} charges ${nameOf(battery)} with ${both(voltage)}, where ${limit} by ${limits.by}.${state} ${why}; set the charge for its kind.`,
        figures: { voltage: { value: voltage.si, unit: 'V' }, limit: { value: isOver ? limits.highV : limits.lowV, unit: 'V' } },
        related: [{ message: `${nameOf(battery)} is charged by it`, span: battery.facts.get('chemistry')?.span ?? battery.idSpan }],
        corrections: battery.facts.has('charging-voltage') ? [] : [
            { kind: 'set-fact', title: `Record ${voltage.figure.written} as the charging voltage its maker gives`, component: battery, property: 'charging-voltage', value: voltage.figure.written },
        ],
        draft: {
            title: `${source.kind === 'alternator' ? 'Alternator' : source.kind === 'charger' ? 'Charger' : 'Solar panel'} ${source.id} charges with ${isOver ? 'too much' : 'too little'} voltage`,
            ...(isSwollen || isHot ? { urgency: 'at-once' } : { urgency: 'within-days', days: 14 }),
            seen: `Battery ${battery.id} was charged by ${source.id} with ${isInTable ? both(voltage) : `{${source.id}.voltage}`}.${state}`,
            because: `${limit} by ${limits.by}. ${why}.`,
            recommend: `${isSwollen || isHot ? `Switch ${source.id} off and leave ${battery.id} to cool, away from flame. ` : ''}Set ${source.id} for the kind of battery ${battery.id} is, or renew its regulator, and measure again at the battery.`,
        },
    };
}

/** A charger set for another kind of battery than the one it charges. */
function setForAnother(record: SurveyRecord, charger: Component<'charger'>): Raised | undefined {
    const battery = chargedBattery(record, charger);
    const setFor = wordOf(charger, 'set-for');
    const chemistry = battery && battery !== 'several' ? wordOf(battery, 'chemistry') : undefined;
    if (!battery || battery === 'several' || setFor === undefined || chemistry === undefined || setFor === chemistry) {
        return undefined;
    }
    const why = 'What fills one kind overcharges or never fills another';
    return {
        components: [charger, battery],
        at: charger.facts.get('set-for')?.span ?? charger.idSpan,
        message: `${nameOf(charger)} is set for a battery of kind ${setFor}, and ${nameOf(battery)}, which it charges, is ${chemistry}. ${why}; set it for ${chemistry}.`,
        related: [{ message: `${nameOf(battery)} is charged by it`, span: battery.facts.get('chemistry')?.span ?? battery.idSpan }],
        corrections: [{ kind: 'set-fact', title: `Record ${charger.id} as set for ${chemistry}`, component: charger, property: 'set-for', value: chemistry }],
        draft: {
            title: `Charger ${charger.id} is set for another kind of battery`,
            ...(flagOf(battery, 'swollen') === true ? { urgency: 'at-once' } : { urgency: 'within-days', days: 14 }),
            seen: `Charger ${charger.id} is set for a battery of kind {${charger.id}.set-for}; battery ${battery.id}, which it charges, is {${battery.id}.chemistry}.`,
            because: `${why}.`,
            recommend: `Set ${charger.id} for the kind of battery ${battery.id} is, by its maker’s figures, and measure the charging voltage at the battery.`,
        },
    };
}

function lithium(battery: Battery): Raised | undefined {
    const cutOff = flagOf(battery, 'cut-off');
    if (wordOf(battery, 'chemistry') !== 'lithium' || cutOff === true) {
        return undefined;
    }
    if (cutOff === undefined) {
        return { components: [battery], at: battery.idSpan, severity: 'hint', message: `${nameOf(battery)} is of lithium; record whether a device parts it from charge and load when a cell is out of bounds (cut-off).` };
    }
    const isUrgent = flagOf(battery, 'swollen') === true || (siOf(battery, 'temperature') ?? 0) > hotK + 1e-6;
    return {
        components: [battery],
        at: battery.facts.get('cut-off')?.span ?? battery.idSpan,
        message: `${nameOf(battery)} is of lithium, and nothing parts it from charge and load when a cell is out of bounds, as ABYC E-13 asks. A cell that is charged too far can burn; fit such a device.`,
        corrections: [{ kind: 'set-fact', title: `Record a cut-off on ${battery.id}`, component: battery, property: 'cut-off', value: 'yes' }],
        draft: {
            title: `Lithium battery ${battery.id} has no cut-off`,
            ...(isUrgent ? { urgency: 'at-once' } : { urgency: 'within-days', days: 14 }),
            seen: `Battery ${battery.id} is of {${battery.id}.chemistry}; no device parts it from charge and load.`,
            because: 'ABYC E-13 asks for one: a cell that is charged or discharged too far, or is too hot, can burn.',
            recommend: `Leave ${battery.id} off charge until a management device is fitted that parts it from charge and load, and is tried.`,
            cites: [['ABYC E-13']],
        },
    };
}
