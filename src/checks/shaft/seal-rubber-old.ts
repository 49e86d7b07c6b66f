/** Rubber that keeps the sea out of a shaft seal or drive leg: cracked, or past its term. */
import { flagOf, isKind, nameOf, ofKind, valueOf, yardstick, type Component, type DateFigure, type SurveyRecord } from '../../record/model.js';
import type { FactsOf } from '../../record/generated/kinds.js';
import { defineCheck, type Raised } from '../contract.js';
import { isOlderThanMonths } from '../dates.js';
import { surveyedOn, yearsBetween } from '../hoses/age.js';
import { floodCritical, lies } from '../lies.js';

/** Which rubber of which part, and where its facts stand. */
interface Rubber {
    readonly part: Component;
    /** "shaft seal", "saildrive". */
    readonly kind: string;
    /** "the bellows", "the diaphragm". */
    readonly what: string;
    readonly dated: readonly ('rubber-fitted' | 'fitted' | 'bellows-fitted' | 'seal-fitted')[];
    readonly cracked: 'cracked' | 'bellows-cracked' | 'seal-cracked';
    /** Usual term; none where practice names none, so that only the maker's counts. */
    readonly usual?: keyof FactsOf<'yardsticks'> & string;
}

const secondsAYear = 365.25 * 86_400;

export const sealRubberOld = defineCheck({
    id: 'seal-rubber-old',
    group: 'shaft',
    severity: 'error',
    title: 'Rubber that holds the sea out is past its term, or cracked',
    why: 'Bellows, lips and diaphragms below the waterline are all that holds the sea out.',
    needs: [
        'face-seal or lip-seal: rubber-fitted, else fitted; cracked', 'outdrive: bellows-fitted, bellows-cracked', 'saildrive or pod: seal-fitted, seal-cracked',
        'makers-term, where the maker sets one', 'the date she was attended',
    ],
    computes: 'A fault where the rubber is cracked, or where more than its term has passed from its fitting to the attendance: the maker’s term, else 6 years for a shaft seal, 5 for the bellows of an outdrive, 7 for the diaphragm of a saildrive.',
    sources: [{ text: '6, 5 and 7 years; makers differ', provenance: 'practice' }],
    yardsticks: ['shaft-bellows-life', 'outdrive-bellows-life', 'saildrive-seal-life'],
    limits: [
        'Age alone does not tell the state of rubber.',
        'A date known to the year or month counts from its last day, so that no age is overstated.',
        'Packing is not rubber: a packed gland is judged only where its hose is recorded as cracked.',
        'For the hull seal of a pod no usual term is known; it is judged by its maker’s.',
        'Where the day of fitting is not recorded it asks, and cannot tell a new seal from an old one.',
    ],
    examples: [{
        name: 'bellows of a face seal after eight years',
        bad: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
vessel "Marram" {}
face-seal FS1 { fitted: 2018-05 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
vessel "Marram" {}
face-seal FS1 { fitted: 2024-05 }
`,
    }, {
        name: 'cracked bellows of an outdrive',
        bad: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
outdrive OD1 { bellows-fitted: 2024-05  bellows-cracked: yes }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
outdrive OD1 { bellows-fitted: 2024-05  bellows-cracked: no }
`,
        correction: 'Record the bellows of OD1 as renewed and sound',
    }, {
        name: 'diaphragm past the term of its maker',
        bad: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
saildrive SD1 { seal-fitted: 2020-03  makers-term: 5 years }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
saildrive SD1 { seal-fitted: 2025-03  makers-term: 5 years }
`,
    }],
    silent: [
        { name: 'five years old', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nface-seal FS1 { fitted: 2021-05 }\n' },
        { name: 'eight years old, bellows renewed since', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nface-seal FS1 { fitted: 2018-05  rubber-fitted: 2024-05 }\n' },
        { name: 'eight years old, within the term of its maker', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nface-seal FS1 { fitted: 2018-05  makers-term: 10 years }\n' },
        { name: 'year that may still be within the term', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nface-seal FS1 { fitted: 2020 }\n' },
        { name: 'packed gland of any age', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\npacked-gland PG1 { fitted: 2001 }\n' },
        { name: 'diaphragm of six years', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nsaildrive SD1 { seal-fitted: 2020-03 }\n' },
        { name: 'firm that allows ten years', text: 'yardsticks { shaft-bellows-life: 10 years }\nsurvey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nface-seal FS1 { fitted: 2018-05 }\n' },
    ],
    run(record, raise) {
        const today = surveyedOn(record);
        for (const rubber of rubbersOf(record)) {
            const problem = flagOf(rubber.part, rubber.cracked) === true ? crackedRubber(record, rubber) : judgeAge(record, rubber, today);
            if (problem) {
                raise(problem);
            }
        }
    },
});

function rubbersOf(record: SurveyRecord): Rubber[] {
    return [
        ...ofKind(record, 'shaft-seal').map((part): Rubber => isKind(record, part, 'packed-gland') ? { part, kind: 'packed gland', what: 'the hose', dated: [], cracked: 'cracked' }
            : { part, kind: 'shaft seal', what: isKind(record, part, 'lip-seal') ? 'the lips' : isKind(record, part, 'face-seal') ? 'the bellows' : 'the rubber', dated: ['rubber-fitted', 'fitted'], cracked: 'cracked', ...(isDryKind(record, part) ? { usual: 'shaft-bellows-life' as const } : {}) }),
        ...ofKind(record, 'outdrive').map((part): Rubber => ({ part, kind: 'outdrive', what: 'the bellows', dated: ['bellows-fitted'], cracked: 'bellows-cracked', usual: 'outdrive-bellows-life' })),
        ...ofKind(record, 'saildrive').map((part): Rubber => ({ part, kind: 'saildrive', what: 'the diaphragm', dated: ['seal-fitted'], cracked: 'seal-cracked', usual: 'saildrive-seal-life' })),
        ...ofKind(record, 'pod').map((part): Rubber => ({ part, kind: 'pod', what: 'the hull seal', dated: ['seal-fitted'], cracked: 'seal-cracked' })),
    ];
}

const isDryKind = (record: SurveyRecord, seal: Component) => isKind(record, seal, 'face-seal') || isKind(record, seal, 'lip-seal');

interface Term {
    readonly months: number;
    readonly years: number;
    readonly written: string;
    /** "the usual limit" or "the term of its maker". */
    readonly whose: string;
    readonly isMakers: boolean;
}

function termOf(record: SurveyRecord, { part, usual }: Rubber): Term | undefined {
    const makers = valueOf(part as Component<'shaft-seal'>, 'makers-term'); // Every part here declares the same property.
    if (makers) {
        return { months: Math.round(makers.si / secondsAYear * 12), years: makers.si / secondsAYear, written: makers.figure.written, whose: 'the term of its maker', isMakers: true };
    }
    const limit = usual && yardstick(record, usual);
    return limit && { months: Math.round(limit.si / secondsAYear * 12), years: limit.si / secondsAYear, written: limit.written, whose: limit.whose, isMakers: false };
}

function judgeAge(record: SurveyRecord, rubber: Rubber, today: DateFigure | undefined): Raised | undefined {
    const { part, what, dated } = rubber;
    const property = dated.find(name => part.facts.has(name));
    const value = property && part.facts.get(property)?.values[0];
    const term = termOf(record, rubber);
    if (!property || value?.type !== 'date') {
        return term && dated.length > 0 ? asked(rubber, `when ${what} of ${nameOf(part)} ${what.endsWith('s') ? 'were' : 'was'} fitted is not recorded; record ${dated.join(' or ')} to tell whether ${term.written}, ${term.whose}, have passed`) : undefined;
    }
    if (!today) {
        return term && asked(rubber, `${what} of ${nameOf(part)} date from ${value.figure.written}; record when she was attended to tell the age`, property);
    }
    const years = yearsBetween(value.figure, today);
    if (!term) {
        return years > yardstick(record, 'shaft-bellows-life').si / secondsAYear && isKind(record, part, 'shaft-seal')
            ? asked(rubber, `${nameOf(part)} was fitted in ${value.figure.written}; declare it as packed-gland, face-seal or lip-seal to tell whether its rubber is past its term`, property) : undefined;
    }
    return isOlderThanMonths(value.figure, term.months, today) ? oldRubber(record, rubber, property, value.figure, years, term) : undefined;
}

function asked({ part }: Rubber, text: string, property?: string): Raised {
    return { components: [part], at: (property === undefined ? undefined : part.facts.get(property)?.span) ?? part.idSpan, severity: 'hint', message: `${text.charAt(0).toUpperCase()}${text.slice(1)}.` };
}

function oldRubber(record: SurveyRecord, rubber: Rubber, property: string, fitted: DateFigure, years: number, term: Term): Raised {
    const { part, what } = rubber;
    const were = what.endsWith('s') ? 'were' : 'was';
    const age = Math.max(Math.floor(years + 1e-9), Math.floor(term.years));
    const limit = `${term.written} ${term.isMakers ? 'that its maker sets' : `taken as ${term.whose}`}`;
    return {
        components: [part],
        at: part.facts.get(property)?.span ?? part.idSpan,
        message: `${upper(what)} of ${nameOf(part)} ${were} fitted in ${fitted.written}, more than ${age} years before the survey, past the ${limit}. This rubber is all that holds the sea out there; renew it.`,
        figures: { age: { value: years, unit: 'year' }, limit: { value: term.years, unit: 'year' } },
        draft: {
            title: `${upper(what.slice(4))} of ${part.id} past ${what.endsWith('s') ? 'their' : 'its'} term`,
            urgency: 'next-haul-out',
            seen: `${upper(what)} of ${seenName(rubber)} ${were} fitted {${part.id}.${property}}, past the ${term.isMakers ? `{${part.id}.makers-term} that its maker sets` : limit}${lies(record) === 'afloat' ? '; what of it lies outside could not be seen afloat' : ''}.`,
            because: 'Rubber ages out of sight, and here it is all that holds the sea out.',
            recommend: `Renew ${what} of ${part.id} to the instructions of its maker, and mark the date.`,
        },
    };
}

function crackedRubber(record: SurveyRecord, rubber: Rubber): Raised {
    const { part, what, cracked } = rubber;
    const are = what.endsWith('s') ? 'are' : 'is';
    return {
        components: [part],
        at: part.facts.get(cracked)?.span ?? part.idSpan,
        message: `${upper(what)} of ${nameOf(part)} ${are} cracked. This rubber is all that holds the sea out there, and it parts without further warning; renew it.`,
        corrections: [{ kind: 'set-fact', title: `Record ${what} of ${part.id} as renewed and sound`, component: part, property: cracked, value: 'no' }],
        draft: {
            title: `Cracked ${what.slice(4)} of ${part.id}`,
            urgency: floodCritical(record),
            seen: `${upper(what)} of ${seenName(rubber)} ${are} cracked.`,
            because: 'Cracked rubber parts without further warning, and here it is all that holds the sea out.',
            recommend: `Renew ${what} of ${part.id} to the instructions of its maker, and mark the date.`,
        },
    };
}

const seenName = ({ part, kind }: Rubber) => part.title ? nameOf(part) : `${kind} ${part.id}`;

const upper = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
