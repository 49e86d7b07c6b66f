/** Distress signals of which too few count on the day of the survey, or soon will. */
import { pyrotechnicsNeeded, signalShortage, signalsFromM, signalUse, type SignalKind, type SignalLot, type SignalShortage } from '../../trade/signals.js';
import { flagOf, ofKind, valueOf, wordOf, type Component, type DateFigure, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { daysLeft } from '../dates.js';
import { lengthBoth, listed } from '../phrasing.js';
import { surveyedOn } from '../hoses/age.js';
import { lengthForCarriageM } from './bottles.js';
import { adding, countOf } from './gear.js';

/** A lot that runs out within so many days is spoken of. */
const noticeDays = 60;

export const flaresOutOfDate = defineCheck({
    id: 'flares-out-of-date',
    group: 'safety',
    severity: 'error',
    title: 'Too few distress signals in date',
    why: 'An old flare may not burn, and only those in date count as carried.',
    needs: ['distress-signal: signal (or day and night), expires, quantity, approved', 'the day of the last attendance', 'vessel: length-on-deck or length-overall, used-on (or water)'],
    computes: 'Counted are those whose marked month has not ended on the day of the survey. From 16 ft (4.88 m) on, on coastal waters and offshore: three pyrotechnics for the day and three for the night, those for both counting for both; a flag serves the day, an electric light the night. A note where the number falls short within 60 days.',
    sources: [
        { text: 'signals for day and night', standard: '33 CFR 175', clause: '175.110', provenance: 'published' },
        { text: 'in order and not past the date marked', standard: '33 CFR 175', clause: '175.125', provenance: 'published' },
        { text: 'three of them, or three combined', standard: '33 CFR 175', clause: '175.130', provenance: 'published' },
        { text: 'marked life of 42 months', standard: '46 CFR 160.036-5', provenance: 'published' },
        { text: 'notice of 60 days', provenance: 'chosen' },
    ],
    limits: [
        'The rule holds on coastal waters of the United States, the Great Lakes and the high seas; elsewhere it is a yardstick.',
        'Signals past their date beside enough good ones are left alone, as are all below 16 ft and on inland waters.',
        'Where no distress signal is recorded, nothing is said, unless the survey says that there are none (absent "Distress signals"): they may not have been looked for.',
        'A vessel kept in salt water is taken as used on coastal waters, where used-on is not recorded.',
        'On the last day of its month a signal counts, and nothing is said of it.',
        'A signal whose approval is not recorded counts as approved.',
        'Boats that need signals for the night only (open sailing boats under 26 ft, boats that are rowed) are not told apart.',
    ],
    examples: [{
        name: 'three hand flares past their month',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { length-on-deck: 34 ft  used-on: coastal }
distress-signal DS1 { signal: red-hand  quantity: 3  expires: 2026-09 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { length-on-deck: 34 ft  used-on: coastal }
distress-signal DS1 { signal: red-hand  quantity: 3  expires: 2029-09 }
`,
    }, {
        name: 'smoke by day, nothing by night',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { length-on-deck: 34 ft  used-on: coastal }
distress-signal DS1 { signal: orange-smoke  quantity: 3  expires: 2029-09 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { length-on-deck: 34 ft  used-on: coastal }
distress-signal DS1 { signal: orange-smoke  quantity: 3  expires: 2029-09 }
distress-signal DS2 { signal: electric-light }
`,
        correction: 'Add an electric light for the night',
    }, {
        name: 'three that run out next month',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { length-on-deck: 34 ft  used-on: coastal }
distress-signal DS1 { signal: red-hand  quantity: 3  expires: 2026-11 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { length-on-deck: 34 ft  used-on: coastal }
distress-signal DS1 { signal: red-hand  quantity: 3  expires: 2027-11 }
`,
    }],
    silent: [
        { name: 'last day of its month', text: 'survey "1" pre-purchase { attended 2026-09-30 afloat "Berth" }\nvessel "Marram" { length-on-deck: 34 ft  used-on: coastal }\ndistress-signal DS1 { signal: red-hand  quantity: 3  expires: 2026-09 }\n' },
        { name: 'past their date beside enough good ones', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\nvessel "Marram" { length-on-deck: 34 ft  used-on: coastal }\ndistress-signal DS1 { signal: red-hand  quantity: 6  expires: 2020-03 }\ndistress-signal DS2 { signal: red-hand  quantity: 3  expires: 2029-09 }\n' },
        { name: 'electric light and flag', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\nvessel "Marram" { length-on-deck: 34 ft  used-on: coastal }\ndistress-signal DS1 { signal: electric-light }\ndistress-signal DS2 { signal: flag }\n' },
        { name: 'under 16 ft', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\nvessel "Marram" { length-on-deck: 15 ft  used-on: coastal }\ndistress-signal DS1 { signal: red-hand  quantity: 3  expires: 2026-09 }\n' },
        { name: 'on inland waters', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\nvessel "Marram" { length-on-deck: 34 ft  used-on: inland }\ndistress-signal DS1 { signal: red-hand  quantity: 3  expires: 2026-09 }\n' },
    ],
    run(record, raise) {
        const signals = ofKind(record, 'distress-signal');
        const lengthM = lengthForCarriageM(record);
        const waters = watersOf(record);
        const [first] = signals;
        const said = first ? undefined : record.unseen.find(({ absent, what }) => absent && signalWords.test(what));
        if (said && waters !== undefined && waters !== 'inland' && lengthM !== undefined && lengthM >= signalsFromM - 1e-9) {
            raise({ ...problem(record, signalShortage([]), [], lengthM), at: said.span });
        }
        if (!first || waters === 'inland' || (lengthM !== undefined && lengthM < signalsFromM - 1e-9)) {
            return;
        }
        const today = surveyedOn(record);
        const lots = signals.map(signal => lotOf(signal, today));
        const now = signalShortage(lots.filter(lot => lot.counts === 'yes'));
        if (isShort(now)) {
            const missing = missingFact(record, lots, lengthM, waters, today);
            raise(missing ? { components: [missing.on], at: missing.on.idSpan, severity: 'hint', message: `${shortText(now)}; record ${missing.fact} to tell whether that is enough.` } : problem(record, now, lots, lengthM));
            return;
        }
        const soon = today && signalShortage(lots.filter(lot => lot.counts === 'yes' && !isEndingSoon(lot, today)));
        if (soon && isShort(soon) && lengthM !== undefined && waters !== undefined) {
            raise(notice(soon, lots.filter(lot => lot.counts === 'yes' && isEndingSoon(lot, today))));
        }
    },
});

/** Words of an absent entry that mean every distress signal. */
const signalWords = /^\W*((visual|pyrotechnic|distress|hand|red) )*(distress signals?|flares?|pyrotechnics?)\b(?!.*\b(spare|extra|box|locker|gun)\b)/i;

/** Waters she is used on; one kept in salt water is taken as used on coastal waters. */
function watersOf(record: SurveyRecord): string | undefined {
    const { vessel } = record;
    return vessel && (wordOf(vessel, 'used-on') ?? (wordOf(vessel, 'water') === 'salt' ? 'coastal' : undefined));
}

interface Lot extends SignalLot {
    readonly component: Component;
    readonly expires: DateFigure | undefined;
    /** `ask` where a pyrotechnic carries no recorded date, or no day of survey tells. */
    readonly counts: 'yes' | 'no' | 'ask';
}

function lotOf(component: Component<'distress-signal'>, today: DateFigure | undefined): Lot {
    const kind = valueOf(component, 'signal');
    // A word of the catalogue's list, which names the kinds of signal of the rule.
    const use = kind ? signalUse(kind.word satisfies SignalKind) : { day: false, night: false, isPyrotechnic: true };
    const expires = valueOf(component, 'expires')?.figure;
    const isVoid = flagOf(component, 'approved') === false || wordOf(component, 'works') === 'no' || ['defective', 'failed'].includes(wordOf(component, 'condition') ?? '');
    const hasEnded = expires !== undefined && today !== undefined && daysLeft(expires, today) < 0;
    const isOpen = expires === undefined ? use.isPyrotechnic : today === undefined;
    return {
        component, expires, count: countOf(component), isPyrotechnic: use.isPyrotechnic,
        day: flagOf(component, 'day') ?? use.day, night: flagOf(component, 'night') ?? use.night,
        counts: isVoid || hasEnded ? 'no' : isOpen ? 'ask' : 'yes',
    };
}

const isShort = ({ dayMissing, nightMissing }: SignalShortage) => dayMissing > 0 || nightMissing > 0;
/** Within the notice, its last day excepted, on which it counts and nothing is said. */
const isEndingSoon = ({ expires }: Lot, today: DateFigure) => expires !== undefined && daysLeft(expires, today) > 0 && daysLeft(expires, today) <= noticeDays;

/** The fact without which the shortage is not certain. */
function missingFact(record: SurveyRecord, lots: readonly Lot[], lengthM: number | undefined, waters: string | undefined, today: DateFigure | undefined): { on: Component; fact: string } | undefined {
    const [first] = lots;
    const open = lots.find(lot => lot.counts === 'ask');
    const unnamed = lots.find(({ component }) => !component.facts.has('signal') && !(component.facts.has('day') && component.facts.has('night')));
    if (unnamed) {
        return { on: unnamed.component, fact: `signal of ${unnamed.component.id}` };
    }
    if (open && !isShort(signalShortage(lots.filter(lot => lot.counts !== 'no')))) {
        return { on: open.component, fact: open.expires && !today ? 'when she was attended' : `expires of ${open.component.id}` };
    }
    if (first && record.vessel && (lengthM === undefined || waters === undefined)) {
        return { on: first.component, fact: lengthM === undefined ? 'the length of the vessel' : 'the waters she is used on (used-on)' };
    }
    return first && !record.vessel ? { on: first.component, fact: 'the vessel, with her length and used-on' } : undefined;
}

function shortText({ dayHave, nightHave, dayMissing, nightMissing }: SignalShortage): string {
    return `Of pyrotechnic signals in date, ${listed([...(dayMissing > 0 ? [`${dayHave} of ${pyrotechnicsNeeded} for the day`] : []), ...(nightMissing > 0 ? [`${nightHave} of ${pyrotechnicsNeeded} for the night`] : [])])} are recorded`;
}

function problem(record: SurveyRecord, short: SignalShortage, lots: readonly Lot[], lengthM: number | undefined): Raised {
    const ended = lots.filter(lot => lot.counts === 'no' && lot.expires !== undefined);
    const [first] = ended.length > 0 ? ended : lots;
    const endedText = ended.length === 0 ? '' : `; past their date are ${listed(ended.map(({ component, count, expires }) => `${count} of ${component.id} (${expires?.written ?? ''})`))}`;
    const endedSeen = ended.length === 0 ? '' : ` Past their date are ${listed(ended.map(({ component, count }) => `${count} of ${component.id} ({${component.id}.expires})`))}.`;
    const lengthFact = record.vessel?.facts.has('length-on-deck') ? 'length-on-deck' : 'length-overall';
    return {
        components: [...new Set([...ended, ...lots].map(lot => lot.component))],
        at: first?.component.facts.get('expires')?.span ?? first?.component.idSpan ?? { uri: record.mainUri, start: 0, end: 0 },
        message: `${shortText(short)}${endedText}. At ${lengthM === undefined ? 'her length' : lengthBoth(lengthM)} she is to carry signals for day and night; renew what is missing.`,
        figures: { 'for the day': { value: short.dayHave, unit: '' }, 'for the night': { value: short.nightHave, unit: '' } },
        corrections: serving(record, short, lots),
        draft: {
            title: 'Too few distress signals in date',
            urgency: 'before-departure',
            seen: `She measures {vessel.${lengthFact}}. ${shortText(short)}.${endedSeen}`,
            because: 'She is to carry visual distress signals for day and night, and only those in date count; old ones may not burn.',
            recommend: `Carry at least ${pyrotechnicsNeeded} pyrotechnic signals in date for the day and ${pyrotechnicsNeeded} for the night, or a distress flag and an electric distress light.`,
            cites: [['33 CFR 175', '175.125']],
        },
    };
}

/** An electric light for the night and a flag for the day serve without a date. */
function serving(record: SurveyRecord, { dayMissing, nightMissing }: SignalShortage, lots: readonly Lot[]): Correction[] {
    const beside = lots.at(-1)?.component;
    const isStep = nightMissing > 0 && dayMissing > 0;
    const corrections = [
        ...(nightMissing > 0 ? [adding(record, beside, 'Add an electric light for the night', 'distress-signal', 'DS', [['signal', 'electric-light']])] : []),
        ...(dayMissing > 0 ? [adding(record, beside, 'Add a flag for the day', 'distress-signal', 'DS', [['signal', 'flag']])] : []),
    ];
    return corrections.map(correction => (isStep ? { ...correction, isStep } : correction));
}

function notice(short: SignalShortage, ending: readonly Lot[]): Raised {
    const [first] = ending;
    const which = listed(ending.map(({ component, expires }) => `${component.id} (${expires?.written ?? ''})`));
    return {
        components: ending.map(lot => lot.component),
        severity: 'info',
        at: first?.component.facts.get('expires')?.span ?? first?.component.idSpan ?? { uri: '', start: 0, end: 0 },
        message: `The distress signals are enough today, and within ${noticeDays} days of the survey no longer: ${which} run out. Only those in date count; renew them in time.`,
        figures: { 'for the day then': { value: short.dayHave, unit: '' }, 'for the night then': { value: short.nightHave, unit: '' } },
        draft: {
            title: 'Distress signals soon run out',
            urgency: 'note-only',
            seen: `Of the distress signals, ${listed(ending.map(({ component }) => `${component.id} ({${component.id}.expires})`))} run out within ${noticeDays} days.`,
            because: 'Then too few in date are left for day and night.',
            recommend: 'Renew them by the end of the month marked on them.',
            cites: [['33 CFR 175', '175.125']],
        },
    };
}
