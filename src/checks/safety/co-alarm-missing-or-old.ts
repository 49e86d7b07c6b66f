/** Enclosed berths aboard a vessel with something that burns, and no carbon-monoxide alarm that can be relied on. */
import { isKind, nameOf, ofKind, siOf, valueOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { hasPassed, isOlderThanMonths } from '../dates.js';
import { listed } from '../phrasing.js';
import { surveyedOn } from '../hoses/age.js';
import { adding, isSaidAbsent, totalOf } from './gear.js';

export const coAlarmMissingOrOld = defineCheck({
    id: 'co-alarm-missing-or-old',
    group: 'safety',
    severity: 'error',
    title: 'Carbon-monoxide alarm is missing or past its date',
    why: 'The gas has no smell, and sleepers do not wake.',
    needs: ['vessel: sleeping-cabins', 'vessel: fuel, or an engine, generator, stove or heater', 'co-alarm: replace-by, works, quantity', 'the day of the last attendance'],
    computes: 'A fault where there are enclosed spaces with berths and anything aboard that burns fuel, and no alarm is recorded; where an alarm is past the last day it is marked to be replaced by; and where it does not work. Advice where there are fewer alarms than enclosed spaces with berths.',
    sources: [
        { text: 'an alarm in every space with berths of a boat with an engine inboard', standard: 'ABYC A-24', provenance: 'secondary' },
        { text: 'makers give an alarm 5 to 7 years; the date on it holds', provenance: 'practice' },
    ],
    limits: [
        'Where no alarm is recorded and it is not recorded how many enclosed spaces have berths, nothing is said.',
        'An alarm without a date to be replaced by is not judged by its age; where it was made or fitted over 7 years ago, that date is asked for.',
        'An outboard engine counts like any other: exhaust is drawn in under way as well.',
        'Where an alarm sits, and whether it is of a marine kind, is not judged.',
    ],
    examples: [{
        name: 'two cabins, a diesel and no alarm',
        bad: `vessel "Marram" { fuel: diesel  sleeping-cabins: 2 }
smoke-alarm SA1
`,
        fixed: `vessel "Marram" { fuel: diesel  sleeping-cabins: 2 }
smoke-alarm SA1
co-alarm CO1 { quantity: 2 }
`,
        correction: 'Add 2 carbon-monoxide alarms',
    }, {
        name: 'past its date',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { fuel: diesel  sleeping-cabins: 1 }
co-alarm CO1 { replace-by: 2026-09 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { fuel: diesel  sleeping-cabins: 1 }
co-alarm CO1 { replace-by: 2033-09 }
`,
    }],
    silent: [
        { name: 'no enclosed berths', text: 'vessel "Marram" { fuel: diesel  sleeping-cabins: 0 }\nsmoke-alarm SA1\n' },
        { name: 'nothing that burns', text: 'vessel "Marram" { fuel: electric  sleeping-cabins: 2 }\nstove ST1 { fuel: electric }\n' },
        { name: 'last day of its month', text: 'survey "1" pre-purchase { attended 2026-09-30 afloat "Berth" }\nvessel "Marram" { fuel: diesel  sleeping-cabins: 1 }\nco-alarm CO1 { replace-by: 2026-09 }\n' },
        { name: 'berths not recorded', text: 'vessel "Marram" { fuel: diesel }\nsmoke-alarm SA1\n' },
    ],
    run(record, raise) {
        const alarms = ofKind(record, 'co-alarm');
        const faulty = alarms.filter(alarm => judgeAlarm(record, alarm, raise));
        const cabins = record.vessel && siOf(record.vessel, 'sleeping-cabins');
        const aboard = totalOf(alarms);
        const isNoneSaid = alarms.length > 0 || isSaidAbsent(record, /carbon[ -]monoxide|\bco[ -]alarm/i);
        if (cabins === undefined) {
            if (aboard === 0 && isNoneSaid && record.vessel && burnersOf(record).length > 0) {
                raise({ components: [], at: record.vessel.span, severity: 'hint', message: 'No carbon-monoxide alarm is aboard; record sleeping-cabins of the vessel to tell whether one is needed.' });
            }
            return;
        }
        if (cabins === 0 || faulty.length > 0 || aboard >= cabins) {
            return;
        }
        const burners = burnersOf(record);
        if (burners.length > 0) {
            raise(tooFew(record, cabins, aboard, burners, alarms));
        } else if (record.vessel && wordOf(record.vessel, 'fuel') === undefined) {
            raise({ components: [], at: record.vessel.facts.get('sleeping-cabins')?.span ?? record.vessel.span, severity: 'hint', message: 'Enclosed berths and no carbon-monoxide alarm for each are recorded; record the fuel of the vessel to tell whether they are needed.' });
        }
    },
});

/** Longest life that makers give an alarm, months. */
const longestLifeMonths = 84;

/** Raises what is wrong with one alarm; true where something is. */
function judgeAlarm(record: SurveyRecord, alarm: Component<'co-alarm'>, raise: (problem: Raised) => void): boolean {
    const replaceBy = valueOf(alarm, 'replace-by')?.figure;
    const today = surveyedOn(record);
    const isPast = replaceBy !== undefined && today !== undefined && hasPassed(replaceBy, today);
    const isDead = wordOf(alarm, 'works') === 'no';
    if (!isPast && !isDead) {
        const since = valueOf(alarm, 'made')?.figure ?? valueOf(alarm, 'fitted')?.figure;
        if (!replaceBy && since && today && isOlderThanMonths(since, longestLifeMonths, today)) {
            raise({ components: [alarm], at: alarm.idSpan, severity: 'hint', message: `${nameOf(alarm)} is of ${since.written}, and makers give such an alarm 5 to 7 years; record the date it is to be replaced by (replace-by).` });
        }
        if (replaceBy && !today) {
            raise({ components: [alarm], at: alarm.facts.get('replace-by')?.span ?? alarm.idSpan, severity: 'hint', message: `${nameOf(alarm)} is marked to be replaced by ${replaceBy.written}; record when she was attended to tell whether that has passed.` });
        }
        return false;
    }
    const what = listed([...(isPast ? [`was to be replaced by ${replaceBy.written}`] : []), ...(isDead ? ['does not work'] : [])]);
    const seen = listed([...(isPast ? [`was to be replaced by {${alarm.id}.replace-by}`] : []), ...(isDead ? ['does not work'] : [])]);
    raise({
        components: [alarm],
        at: alarm.facts.get(isPast ? 'replace-by' : 'works')?.span ?? alarm.idSpan,
        message: `${nameOf(alarm)} ${what}. Carbon monoxide has no smell, and its sensor cannot be relied on; replace it.`,
        draft: {
            title: `Carbon-monoxide alarm ${alarm.id} ${isPast ? 'is past its date' : 'does not work'}`,
            urgency: 'before-use',
            seen: `Carbon-monoxide alarm ${alarm.id} ${seen}.`,
            because: 'Carbon monoxide has no smell; an old or dead sensor may not tell of it.',
            recommend: `Replace carbon-monoxide alarm ${alarm.id} before anybody sleeps aboard or a generator or heater is run.`,
            cites: [['ABYC A-24']],
        },
    });
    return true;
}

/** What burns fuel aboard, in words. A stove or heater of no recorded fuel may be electric and is left out. */
function burnersOf(record: SurveyRecord): string[] {
    const main = record.vessel && wordOf(record.vessel, 'fuel');
    const engines = ofKind(record, 'engine').filter(engine => (wordOf(engine, 'fuel') ?? (isKind(record, engine, 'generator') ? 'diesel' : main ?? 'diesel')) !== 'electric');
    const flames = [...ofKind(record, 'heater'), ...ofKind(record, 'stove')].filter(one => (wordOf(one, 'fuel') ?? (isKind(record, one, 'fireplace') ? 'solid' : 'electric')) !== 'electric');
    const names = [...engines, ...flames].map(nameOf);
    return engines.length === 0 && (main === 'diesel' || main === 'gasoline') ? [`a ${main} engine`, ...names] : names;
}

function tooFew(record: SurveyRecord, cabins: number, aboard: number, burners: readonly string[], alarms: readonly Component[]): Raised {
    const missing = cabins - aboard;
    const are = `${cabins} enclosed ${cabins === 1 ? 'space' : 'spaces'} with berths`;
    const have = aboard === 0 ? 'no carbon-monoxide alarm' : `${aboard} carbon-monoxide ${aboard === 1 ? 'alarm' : 'alarms'}`;
    const isNone = aboard === 0;
    return {
        components: alarms,
        severity: isNone ? 'error' : 'warning',
        at: record.vessel?.facts.get('sleeping-cabins')?.span ?? alarms[0]?.idSpan ?? { uri: record.mainUri, start: 0, end: 0 },
        message: `She has ${are} and ${listed(burners)}, and ${have} is recorded. Carbon monoxide has no smell and sleepers do not wake; fit a marine alarm at each.`,
        figures: { 'spaces with berths': { value: cabins, unit: '' }, alarms: { value: aboard, unit: '' } },
        corrections: [adding(record, alarms.at(-1) ?? ofKind(record, 'smoke-alarm').at(-1), `Add ${missing} carbon-monoxide ${missing === 1 ? 'alarm' : 'alarms'}`, 'co-alarm', 'CO', [['quantity', String(missing)]])],
        draft: {
            title: isNone ? 'No carbon-monoxide alarm' : 'Fewer carbon-monoxide alarms than cabins',
            urgency: isNone ? 'before-use' : 'in-upkeep',
            seen: `She has {vessel.sleeping-cabins} enclosed ${cabins === 1 ? 'space' : 'spaces'} with berths. Seen: ${have}.`,
            because: 'Carbon monoxide from an engine, generator, stove or heater has no smell, and sleepers do not wake.',
            recommend: isNone ? 'Fit a marine carbon-monoxide alarm in each space with berths before anybody sleeps aboard or a generator or heater is run.' : 'Fit a marine carbon-monoxide alarm in each space with berths.',
            cites: [['ABYC A-24']],
        },
    };
}
