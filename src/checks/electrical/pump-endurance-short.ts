/** A bank that will not run the bilge pump for long once the shore power is gone. */
import { bankCapacityC } from '../../trade/battery.js';
import { dripsPerDayM3 } from '../../trade/drip-rate.js';
import { dutyOf, enduranceS, usableFlowM3s } from '../../trade/pump.js';
import { flagOf, isKind, nameOf, ofKind, siOf, valueOf, wordOf, yardstick, type Component, type Quantity, type SurveyRecord } from '../../record/model.js';
import { significant } from '../../quantities/index.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, computedBoth, listed } from '../phrasing.js';
import { bankWith, onlyBank, type Battery } from './banks.js';

type Pump = Component<'bilge-pump'>;

const daySeconds = 86_400;

export const pumpEnduranceShort = defineCheck({
    id: 'pump-endurance-short',
    group: 'electrical',
    severity: 'warning',
    title: 'Bank runs the bilge pump for too short a time',
    why: 'She sinks after the dock power trips and the battery is empty.',
    needs: ['battery: capacity or capacity-measured, chemistry, pump-duty; serves or bank, where there are several', 'bilge-pump: current, automatic', 'shaft-seal: drips-at-rest, and the flow of the pump, to propose a duty'],
    computes: 'hours = Ah × usable share (lead 0.5, lithium 0.8) / (A × duty). Under 24 h: advice.',
    sources: [
        { text: 'hours from capacity, current and duty', provenance: 'computed' },
        { text: 'usable share of lead and lithium; 24 h unattended', provenance: 'practice' },
    ],
    yardsticks: ['usable-lead', 'usable-lithium', 'pump-endurance'],
    limits: [
        'Each pump is judged as if it alone ran on the bank.',
        'The measured capacity goes before the rated one; a kind that is not recorded is taken as lead.',
        'What charges the bank meanwhile, as the sun, is not counted.',
        'Pumps without a float switch (automatic: no) are left out, for they run attended.',
        'The battery is the one that serves the pump, else all, where they are one bank.',
    ],
    examples: [{
        name: '100 Ah of lead at a quarter of the time',
        bad: `vessel "Marram" {}
battery B1 { chemistry: flooded  voltage: 12 V  capacity: 100 Ah  serves: P1  pump-duty: 25 % }
bilge-pump P1 { current: 10 A  automatic: yes }
`,
        fixed: `vessel "Marram" {}
battery B1 { chemistry: flooded  voltage: 12 V  capacity: 200 Ah  serves: P1  pump-duty: 20 % }
bilge-pump P1 { current: 10 A  automatic: yes }
`,
    }],
    silent: [
        { name: 'the same at 20 % of the time', text: 'battery B1 { chemistry: flooded  voltage: 12 V  capacity: 100 Ah  serves: P1  pump-duty: 20 % }\nbilge-pump P1 { current: 10 A  automatic: yes }\n' },
        { name: 'lithium of the same size', text: 'battery B1 { chemistry: lithium  cut-off: yes  voltage: 12 V  capacity: 100 Ah  serves: P1  pump-duty: 25 % }\nbilge-pump P1 { current: 10 A  automatic: yes }\n' },
        { name: 'pump switched by hand', text: 'battery B1 { chemistry: flooded  voltage: 12 V  capacity: 100 Ah  serves: P1  pump-duty: 25 % }\nbilge-pump P1 { current: 10 A  automatic: no }\n' },
        { name: 'current not recorded', text: 'battery B1 { chemistry: flooded  voltage: 12 V  capacity: 100 Ah  serves: P1  pump-duty: 25 % }\nbilge-pump P1 { automatic: yes }\n' },
    ],
    run(record, raise) {
        for (const pump of ofKind(record, 'bilge-pump')) {
            const current = valueOf(pump, 'current');
            const runsAlone = !isKind(record, pump, 'manual-bilge-pump') && flagOf(pump, 'automatic') !== false && wordOf(pump, 'works') !== 'no';
            const problem = current && current.si > 0 && runsAlone ? judge(record, pump, current) : undefined;
            if (problem) {
                raise(problem);
            }
        }
    },
});

/** The bank that feeds a pump; undefined where that is not known. */
function bankFor(record: SurveyRecord, pump: Pump): readonly Battery[] | undefined {
    const serving = ofKind(record, 'battery').find(battery => valueOf(battery, 'serves')?.id === pump.id);
    return serving ? bankWith(record, serving) : onlyBank(record);
}

interface Store {
    /** Charge that may be used, C, at the voltage of the bank. */
    readonly usableC: number;
    readonly capacityC: number;
    readonly share: number;
    readonly shareText: string;
}

/** What a bank holds; a battery without a capacity leaves it unknown. */
function storeOf(record: SurveyRecord, bank: readonly Battery[]): Store | undefined {
    const units = bank.map(battery => ({ capacityC: siOf(battery, 'capacity-measured') ?? siOf(battery, 'capacity'), nominalV: siOf(battery, 'voltage') ?? 12 }));
    const known = units.flatMap(({ capacityC, nominalV }) => capacityC === undefined ? [] : [{ capacityC, nominalV }]);
    if (known.length < units.length || known.length === 0) {
        return undefined;
    }
    const isLithium = bank.every(battery => wordOf(battery, 'chemistry') === 'lithium');
    const share = yardstick(record, isLithium ? 'usable-lithium' : 'usable-lead');
    const capacityC = bankCapacityC(known, Math.max(12, ...known.map(unit => unit.nominalV)));
    return { usableC: capacityC * share.si, capacityC, share: share.si, shareText: `${share.written} (${share.whose} for ${isLithium ? 'lithium' : 'lead'})` };
}

function judge(record: SurveyRecord, pump: Pump, current: Quantity): Raised | undefined {
    const least = yardstick(record, 'pump-endurance');
    const bank = bankFor(record, pump);
    const store = bank && storeOf(record, bank);
    if (!bank || !store) {
        return undefined;
    }
    const duties = bank.map(battery => valueOf(battery, 'pump-duty')).filter(duty => duty !== undefined);
    const [duty] = duties;
    const lastsS = (share: number) => share <= 0 ? Infinity : enduranceS({ bankC: store.capacityC, usableShare: store.share, currentA: current.si, duty: share });
    if (!duty) {
        return lastsS(1) < least.si - 1e-6 ? unknownDuty(record, pump, bank, lastsS(1)) : undefined;
    }
    const holder = bank.find(battery => battery.facts.has('pump-duty'));
    return holder && lastsS(duty.si) < least.si - 1e-6 ? short(record, { pump, current, duty, holder, bank, store, lastsS: lastsS(duty.si) }) : undefined;
}

/** Share of the time a pump runs to shed what the shaft seals let in at rest. */
function dripDuty(record: SurveyRecord, pump: Pump): number | undefined {
    const drips = ofKind(record, 'shaft-seal').reduce((sum, seal) => sum + (siOf(seal, 'drips-at-rest') ?? 0), 0);
    const rated = siOf(pump, 'rated-flow');
    const flow = siOf(pump, 'real-flow') ?? (rated === undefined ? undefined : usableFlowM3s(rated));
    return drips <= 0 || flow === undefined || flow <= 0 ? undefined : dutyOf({ leakM3s: dripsPerDayM3(drips) / daySeconds, pumpM3s: flow });
}

function unknownDuty(record: SurveyRecord, pump: Pump, bank: readonly Battery[], fullS: number): Raised {
    const [battery] = bank;
    const share = dripDuty(record, pump);
    const value = share === undefined ? undefined : `${significant(share * 100, 2)} %`;
    const corrections: Correction[] = battery && value ? [{ kind: 'set-fact', title: `Set the duty to ${value}, from the drip of the shaft seal`, component: battery, property: 'pump-duty', value }] : [];
    return {
        components: [pump, ...bank], at: pump.idSpan, severity: 'hint',
        message: `${nameOf(pump)} would empty its bank (${listed(bank.map(one => one.id))}) in ${computedBoth(fullS, 'time')} if it ran without a pause; record the share of the time that it runs (pump-duty of ${battery?.id ?? 'the battery'}).`,
        corrections,
    };
}

interface Short {
    readonly pump: Pump;
    readonly current: Quantity;
    readonly duty: Quantity;
    readonly holder: Battery;
    readonly bank: readonly Battery[];
    readonly store: Store;
    readonly lastsS: number;
}

function short(record: SurveyRecord, { pump, current, duty, holder, bank, store, lastsS }: Short): Raised {
    const least = yardstick(record, 'pump-endurance');
    const ids = listed(bank.map(battery => battery.id));
    const hours = computedBoth(lastsS, 'time');
    const charge = computedBoth(store.usableC, 'charge');
    return {
        components: [pump, ...bank],
        at: holder.facts.get('pump-duty')?.span ?? holder.idSpan,
        message: `The bank (${ids}) runs ${nameOf(pump)}, ${both(current)} for ${both(duty)} of the time, for ${hours}: ${charge} may be used, ${store.shareText}; ${least.written} is ${least.whose} for a boat left alone. She sinks after the dock power trips; fit more capacity, a solar panel, or an alarm that is heard.`,
        figures: { endurance: { value: lastsS / 3600, unit: 'h' }, least: { value: least.si / 3600, unit: 'h' } },
        draft: {
            title: `Bank runs the bilge pump ${pump.id} for too short a time`,
            urgency: 'in-upkeep',
            seen: `Bilge pump ${pump.id} takes {${pump.id}.current} and runs {${holder.id}.pump-duty} of the time. Of its bank (${ids}) ${charge} may be used, ${store.shareText}: that lasts ${hours}.`,
            because: `${least.written} is ${least.whose} for a boat left alone. When the dock power trips the bank is empty sooner, and she fills.`,
            recommend: `Put right what lets the water in. Enlarge the bank that feeds ${pump.id}, charge it by a solar panel, or fit an alarm for high water that is heard ashore.`,
        },
    };
}
