/** A portable extinguisher past its years, or not in order. */
import { disposableExpiry, extinguishersNeeded } from '../../trade/extinguishers.js';
import { flagOf, nameOf, ofKind, valueOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { listed } from '../phrasing.js';
import { surveyedOn } from '../hoses/age.js';
import { bottlesOf, hasFixedSystem, lengthForCarriageM, satisfies } from './bottles.js';

export const extinguisherOutOfDate = defineCheck({
    id: 'extinguisher-out-of-date',
    group: 'safety',
    severity: 'error',
    title: 'Extinguisher is out of date or not in order',
    why: 'A disposable bottle counts for twelve years, whatever its gauge shows.',
    needs: ['extinguisher: disposable, made, and the date she was attended', 'extinguisher: gauge, pin'],
    computes: 'Out of date after 31 December of the year made + 12, for a disposable bottle. Not in order where the gauge is out of range or the pin loose or gone.',
    sources: [
        { text: 'disposable bottles expire 12 years after their date', standard: '33 CFR 175', clause: '175.320', provenance: 'published' },
        { text: 'gauge in range and pin in place', provenance: 'practice' },
    ],
    limits: ['The rule holds in the United States; elsewhere it is a yardstick.', 'A bottle with no date on it is left alone.', 'Weight and last service are not known to it.'],
    examples: [{
        name: 'disposable bottle of 2013, attended in 2026',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { length-on-deck: 34 ft }
extinguisher X1 { rating: b-5  disposable: yes  made: 2013  gauge: in-range }
extinguisher X2 { rating: b-5  disposable: yes  made: 2022 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { length-on-deck: 34 ft }
extinguisher X1 { rating: b-5  disposable: yes  made: 2024  gauge: in-range }
extinguisher X2 { rating: b-5  disposable: yes  made: 2022 }
`,
    }, {
        name: 'gauge out of range',
        bad: 'extinguisher X1 { rating: b-5  gauge: out-of-range }\n',
        fixed: 'extinguisher X1 { rating: b-5  gauge: in-range }\n',
    }],
    silent: [
        { name: 'last day of its twelfth year', text: 'survey "1" pre-purchase { attended 2025-12-31 afloat "Berth" }\nextinguisher X1 { rating: b-5  disposable: yes  made: 2013 }\n' },
        { name: 'undated B-I in good order on a boat of 2017', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\nvessel "Marram" { model-year: 2017 }\nextinguisher X1 { rating: b-i  gauge: in-range  pin: in-place }\n' },
        { name: 'rechargeable bottle of 2010', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\nextinguisher X1 { rating: b-5  disposable: no  made: 2010 }\n' },
    ],
    run(record, raise) {
        const today = surveyedOn(record);
        for (const bottle of ofKind(record, 'extinguisher')) {
            const made = valueOf(bottle, 'made')?.figure;
            const isDisposable = flagOf(bottle, 'disposable');
            const isPast = made !== undefined && today !== undefined && today.year > disposableExpiry(made.year);
            const faults: Fault[] = [];
            if (made && isPast && isDisposable) {
                faults.push({ property: 'made', what: `is a disposable bottle made in ${made.year} and counted until the end of ${disposableExpiry(made.year)}`, seen: `is a disposable bottle made {${bottle.id}.made}, which counted until the end of ${disposableExpiry(made.year)}` });
            }
            if (wordOf(bottle, 'gauge') === 'out-of-range') {
                faults.push({ property: 'gauge', what: 'has its gauge out of range', seen: 'has its gauge out of range' });
            }
            const pin = wordOf(bottle, 'pin');
            if (pin === 'loose' || pin === 'gone') {
                faults.push({ property: 'pin', what: `has its pin ${pin}`, seen: `has its pin {${bottle.id}.pin}` });
            }
            if (faults.length > 0) {
                raise(problem(record, bottle, faults));
            } else if (made && (isPast && isDisposable === undefined)) {
                raise({
                    components: [bottle], at: bottle.facts.get('made')?.span ?? bottle.idSpan, severity: 'hint',
                    message: `${nameOf(bottle)} was made in ${made.year}, over 12 years before the survey; record whether it is disposable, for only then is it out of date by that.`,
                });
            } else if (made && isDisposable && !today) {
                raise({
                    components: [bottle], at: bottle.facts.get('made')?.span ?? bottle.idSpan, severity: 'hint',
                    message: `${nameOf(bottle)} is a disposable bottle made in ${made.year}; record when she was attended to tell whether it is out of date.`,
                });
            }
        }
    },
});

interface Fault {
    readonly property: string;
    readonly what: string;
    readonly seen: string;
}

function problem(record: SurveyRecord, bottle: Component, faults: readonly Fault[]): Raised {
    const isSpare = isSurplus(record, bottle);
    return {
        components: [bottle],
        at: bottle.facts.get(faults[0]?.property ?? '')?.span ?? bottle.idSpan,
        message: `${nameOf(bottle)} ${listed(faults.map(fault => fault.what))}. It does not count as carried and may not work; replace it.`,
        draft: {
            title: `Fire extinguisher ${bottle.id} is out of date or not in order`,
            urgency: isSpare ? 'in-upkeep' : 'before-departure',
            seen: `Fire extinguisher ${bottle.id} ${listed(faults.map(fault => fault.seen))}.`,
            because: 'It does not count among those to be carried, and may not work when it is needed.',
            recommend: `Replace fire extinguisher ${bottle.id} by a new one of at least its rating.`,
            ...(faults.some(fault => fault.property === 'made') ? { cites: [['33 CFR 175', '175.320'] as const] } : {}),
        },
    };
}

/** Whether the bottles in order, without this one, are enough for her length. */
function isSurplus(record: SurveyRecord, bottle: Component): boolean {
    const lengthM = lengthForCarriageM(record);
    const needed = lengthM === undefined ? undefined : extinguishersNeeded(lengthM, hasFixedSystem(record));
    const others = bottlesOf(record).filter(other => other.component !== bottle);
    return needed !== undefined && satisfies(needed, others);
}
