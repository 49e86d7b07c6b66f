/** A hose past its years, or one that shows its age. */
import { flagOf, nameOf, ofKind, runsThrough, valueOf, wordOf, yardstick, type Component, type DateFigure, type SurveyRecord, type Yardstick } from '../../record/model.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';
import { isGasHose } from '../gas/gas-system.js';
import { floodCritical } from '../lies.js';
import { surveyedOn, yearsBetween } from './age.js';
import { isFuelHose, placesOf, serviceOf } from './service.js';
import { isBelowWaterline } from './waterline.js';

const yearS = 365.2425 * 86_400;

/** What the condition of a hose shows, in a sentence. */
const worn: Readonly<Record<string, string>> = { perished: 'perished', cracked: 'cracked', soft: 'soft', swollen: 'swollen' };

export const hoseOld = defineCheck({
    id: 'hose-old',
    group: 'hoses',
    severity: 'error',
    title: 'Hose is old, or shows its age',
    why: 'Hose ages from the inside; by the time it shows, little is left to hold.',
    needs: ['hose: condition, cracked-to-cord', 'hose: made or else fitted, and the date she was attended', 'run: service, for exhaust hose'],
    computes: 'A fault where the condition is perished, cracked or swollen, or cracks reach the cord. Advice where it is soft, and where the years from when it was made, or else fitted, to the attendance exceed the yardstick hose-life (exhaust-hose-life on exhaust).',
    sources: [{ text: '10 years, 8 on exhaust; makers name 5 to 10', provenance: 'practice' }],
    yardsticks: ['hose-life', 'exhaust-hose-life'],
    limits: ['The years of a gas hose that shows nothing are left to gas-part-out-of-date.', 'Age alone does not tell the condition of a hose.', 'A hose whose year is not recorded and that shows nothing is left alone.', 'A hose may be older than the date it was fitted.', 'Chafe is a condition, not an age, and is left to fault-without-finding.'],
    examples: [{
        name: 'perished hose',
        bad: `vessel "Marram" {}
through-hull TH1 { below-waterline: 10 in }
seacock SV1
hose H1 { condition: perished }
run R1: TH1 -> SV1 -> H1
`,
        fixed: `vessel "Marram" {}
through-hull TH1 { below-waterline: 10 in }
seacock SV1
hose H1 { condition: sound }
run R1: TH1 -> SV1 -> H1
`,
    }, {
        name: 'hose of twelve years',
        bad: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
vessel "Marram" {}
hose H1 { made: 2014-05 }
valve SV1
run R1: SV1 -> H1
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
vessel "Marram" {}
hose H1 { made: 2024-05 }
valve SV1
run R1: SV1 -> H1
`,
    }],
    silent: [
        { name: 'hose of nine years', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nhose H1 { made: 2017-10 }\nvalve SV1\nrun R1: SV1 -> H1\n' },
        { name: 'year not recorded, nothing to see', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nhose H1 { condition: sound }\nvalve SV1\nrun R1: SV1 -> H1\n' },
    ],
    run(record, raise) {
        const today = surveyedOn(record);
        for (const hose of ofKind(record, 'hose')) {
            const condition = wordOf(hose, 'condition');
            const shows = flagOf(hose, 'cracked-to-cord') ? 'cracked to its cord' : condition === undefined ? undefined : worn[condition];
            const age = ageOf(hose);
            const years = age && today ? yearsBetween(age.date, today) : undefined;
            const limit = yardstick(record, placesOf(runsThrough(record, hose)).some(run => serviceOf(run, hose) === 'exhaust') ? 'exhaust-hose-life' : 'hose-life');
            if (shows !== undefined) {
                raise(shownAge(record, hose, shows, age, years));
            } else if (isGasHose(record, hose)) {
                continue; // Its years are judged by gas-part-out-of-date.
            } else if (age && years !== undefined && years > limit.si / yearS + 1e-6) {
                raise(oldByDate(hose, age, years, limit));
            } else if (age && !today) {
                raise({
                    components: [hose], at: hose.facts.get(age.property)?.span ?? hose.idSpan, severity: 'hint',
                    message: `${nameOf(hose)} was ${age.property} in ${age.date.written}; record when she was attended to tell its age.`,
                });
            }
        }
    },
});

interface Age {
    readonly property: 'made' | 'fitted';
    readonly date: DateFigure;
}

/** From when its years count: when it was made, else when it was fitted, which is no earlier. */
function ageOf(hose: Component<'hose'>): Age | undefined {
    for (const property of ['made', 'fitted'] as const) {
        const date = valueOf(hose, property)?.figure;
        if (date) {
            return { property, date };
        }
    }
    return undefined;
}

function shownAge(record: SurveyRecord, hose: Component, shows: string, since: Age | undefined, years: number | undefined): Raised {
    const runs = placesOf(runsThrough(record, hose));
    const isFuel = runs.some(run => isFuelHose(run, hose));
    const isGas = wordOf(hose, 'class') === 'gas' || runs.some(run => serviceOf(run, hose) === 'gas');
    const isGone = flagOf(hose, 'cracked-to-cord') ?? (shows === 'perished' || shows === 'cracked');
    const urgency: Urgency = isFuel || isGas ? 'before-use' : isBelowWaterline(record, hose) && isGone ? floodCritical(record)
        : runs.some(run => serviceOf(run, hose) === 'exhaust') ? 'before-departure' : isBelowWaterline(record, hose) ? 'next-haul-out' : 'in-upkeep';
    const isSoftOnly = shows === 'soft';
    const shown = flagOf(hose, 'cracked-to-cord') ? 'cracked-to-cord' : 'condition';
    const age = since && years !== undefined ? ` (${since.property} ${since.date.written}, ${Math.floor(years)} years ${since.property === 'made' ? 'old' : 'ago'})` : '';
    return {
        components: [hose],
        ...(isSoftOnly ? { severity: 'warning' as const } : {}),
        at: (hose.facts.get(shown) ?? hose.facts.get('condition'))?.span ?? hose.idSpan,
        message: `${nameOf(hose)} is ${shows}${age}. Hose ages from the inside and fails without further warning; renew it.`,
        figures: years === undefined ? {} : { age: { value: years, unit: 'year' } },
        draft: {
            title: `Hose ${hose.id} is ${shows}`,
            urgency,
            seen: `Hose ${hose.id} is ${shown === 'condition' ? `{${hose.id}.condition}` : shows}${since ? since.property === 'made' ? `; it is marked as made {${hose.id}.made}` : `; it was fitted {${hose.id}.fitted}` : ''}.`,
            because: isFuel ? 'A fuel hose in this state may leak fuel into the hull.' : isGas ? 'A gas hose in this state may leak gas, which gathers in the bilge.' : 'A hose in this state has lost its strength and may fail without further warning.',
            recommend: `Renew hose ${hose.id} with hose marked for its service.`,
        },
    };
}

function oldByDate(hose: Component, { property, date }: Age, years: number, limit: Yardstick): Raised {
    return {
        components: [hose],
        at: hose.facts.get(property)?.span ?? hose.idSpan,
        severity: 'warning',
        message: `${nameOf(hose)} was ${property} in ${date.written}, more than ${Math.floor(years)} years before the survey; ${limit.whose} is ${limit.written}. Hose ages from the inside; plan its renewal.`,
        figures: { age: { value: years, unit: 'year' }, limit: { value: Math.round(limit.si / yearS * 100) / 100, unit: 'year' } },
        draft: {
            title: `Hose ${hose.id} is old`,
            urgency: 'in-upkeep',
            seen: `Hose ${hose.id} was ${property} {${hose.id}.${property}}, more than ${Math.floor(years)} years before the survey; no fault was seen in it.`,
            because: `Hose ages from the inside; ${limit.whose} for renewal is ${limit.written}.`,
            recommend: `Renew hose ${hose.id} with hose marked for its service.`,
        },
    };
}
