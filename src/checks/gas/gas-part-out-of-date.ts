/** Gas hose, regulator or cylinder past its years. */
import { anyValue, flagOf, nameOf, ofKind, wordOf, yardstick, type Component, type DateFigure, type FactSet, type SurveyRecord } from '../../record/model.js';
import { hasPassed, isOlderThanMonths } from '../dates.js';
import { defineCheck, type Raised } from '../contract.js';
import { surveyedOn, yearsBetween } from '../hoses/age.js';
import { isGasHose } from './gas-system.js';

const monthS = 365.25 / 12 * 86_400;

export const gasPartOutOfDate = defineCheck({
    id: 'gas-part-out-of-date',
    group: 'gas',
    severity: 'error',
    title: 'Gas hose, regulator or cylinder is out of date',
    why: 'Rubber in hose and regulator perishes from inside, and a cylinder past its date is not filled again.',
    needs: ['gas hose: made or fitted, makers-term', 'regulator: made or fitted, makers-term', 'gas-cylinder: requalify-by, or requalified or made', 'the date she was attended'],
    computes: 'A fault where a term of the maker or a marked date has passed, or a cylinder is past its requalification (usually 12 years from the last stamp). Advice where hose or regulator is past its usual years (10).',
    sources: [
        { text: 'years of hose and regulator; makers differ', provenance: 'practice' },
        { text: 'requalification of cylinders, commonly 12 years in the United States', provenance: 'memory' },
    ],
    yardsticks: ['gas-hose-life', 'gas-regulator-life', 'gas-cylinder-term'],
    limits: [
        'Composite and foreign cylinders have terms of their own: record requalify-by as marked.',
        'Hose that is cracked, perished, soft or swollen is left to hose-old, whatever its years.',
        'A part whose year is not recorded is left alone.',
        'Dates known to the month or year count from their last day.',
    ],
    examples: [{
        name: 'gas hose of fourteen years',
        bad: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
gas-hose GH1 { class: gas  made: 2012-06 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
gas-hose GH1 { class: gas  made: 2020-06 }
`,
    }, {
        name: 'regulator past the term of its maker',
        bad: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
regulator RG1 { made: 2019-05  makers-term: 5 years }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
regulator RG1 { made: 2024-05  makers-term: 5 years }
`,
    }, {
        name: 'cylinder past its requalification',
        bad: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
gas-cylinder GC1 { made: 2010-03 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
gas-cylinder GC1 { made: 2010-03  requalified: 2021-04 }
`,
    }],
    silent: [
        { name: 'hose of nine years', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\ngas-hose GH1 { class: gas  made: 2017-06 }\n' },
        { name: 'cracked hose, which hose-old reports', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\ngas-hose GH1 { class: gas  made: 2012-06  condition: cracked }\n' },
        { name: 'cylinder of eleven years', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\ngas-cylinder GC1 { made: 2015-03 }\n' },
        { name: 'last day of the marked date', text: 'survey "1" pre-purchase { attended 2026-10-31 ashore "Yard" }\ngas-cylinder GC1 { made: 2010-03  requalify-by: 2026-10 }\n' },
        { name: 'old water hose', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nhose H1 { class: water  made: 2012-06 }\n' },
    ],
    run(record, raise) {
        const today = surveyedOn(record);
        const hoses = ofKind(record, 'hose').filter(hose => isGasHose(record, hose) && !showsAge(hose));
        const parts: readonly Component[] = [...hoses, ...ofKind(record, 'regulator'), ...ofKind(record, 'gas-cylinder')];
        for (const part of parts) {
            const term = termOf(record, part);
            if (term && !today) {
                raise({ components: [part], at: part.facts.get(term.property)?.span ?? part.idSpan, severity: 'hint', message: `${nameOf(part)} is dated ${term.date.written}; record when she was attended, to tell whether it is out of date.` });
            } else if (term && today && hasRunOut(term, today)) {
                raise(problem(part, term, today));
            }
        }
    },
});

/** What hose-old reports of a hose. */
const shownByHose: ReadonlySet<string> = new Set(['perished', 'cracked', 'soft', 'swollen']);

function showsAge(hose: FactSet): boolean {
    return flagOf(hose, 'cracked-to-cord') === true || shownByHose.has(wordOf(hose, 'condition') ?? '');
}

interface Term {
    readonly property: string;
    readonly date: DateFigure;
    /** Months it may serve from the date; none where the date is itself the end. */
    readonly months?: number;
    /** Whose term it is, with its figure. */
    readonly whose: string;
    readonly isFirm: boolean;
    readonly what: 'hose' | 'regulator' | 'cylinder';
}

function termOf(record: SurveyRecord, part: Component): Term | undefined {
    if (part.kind === 'gas-cylinder') {
        return cylinderTerm(record, part);
    }
    const what = part.kind === 'regulator' ? 'regulator' : 'hose';
    const property = part.facts.has('made') ? 'made' : 'fitted';
    const date = dateOf(part, property);
    const own = anyValue(part, 'makers-term');
    const usual = yardstick(record, what === 'hose' ? 'gas-hose-life' : 'gas-regulator-life');
    if (!date) {
        return undefined;
    }
    return own?.type === 'quantity' ? { property, date, months: Math.round(own.si / monthS), whose: `the term of its maker, ${own.figure.written}`, isFirm: true, what }
        : { property, date, months: Math.round(usual.si / monthS), whose: `${usual.whose} of ${usual.written}`, isFirm: false, what };
}

function cylinderTerm(record: SurveyRecord, part: Component): Term | undefined {
    const marked = dateOf(part, 'requalify-by');
    const property = part.facts.has('requalified') ? 'requalified' : 'made';
    const date = dateOf(part, property);
    const usual = yardstick(record, 'gas-cylinder-term');
    if (marked) {
        return { property: 'requalify-by', date: marked, whose: 'the date marked on it', isFirm: true, what: 'cylinder' };
    }
    return date ? { property, date, months: Math.round(usual.si / monthS), whose: `${usual.whose} of ${usual.written}`, isFirm: true, what: 'cylinder' } : undefined;
}

function dateOf(part: Component, property: 'requalify-by' | 'requalified' | 'made' | 'fitted'): DateFigure | undefined {
    const value = anyValue(part, property);
    return value?.type === 'date' ? value.figure : undefined;
}

function hasRunOut({ date, months }: Term, today: DateFigure): boolean {
    return months === undefined ? hasPassed(date, today) : isOlderThanMonths(date, months, today);
}

const remedies: Readonly<Record<Term['what'], readonly [because: string, recommend: string]>> = {
    hose: ['Rubber perishes from inside, and gas then comes through its wall or at its ends', 'renew it by hose marked for gas with made-up ends, and prove the system tight'],
    regulator: ['Its diaphragm perishes, and gas then leaks or comes at too high a pressure', 'renew it, and prove the system tight'],
    cylinder: ['A cylinder past its date is not to be filled again, and nobody has looked at its inside', 'have it requalified or exchange it'],
};

const verbs: Readonly<Record<string, string>> = { made: 'was made', fitted: 'was fitted', requalified: 'was last requalified', 'requalify-by': 'was to be requalified by' };

function problem(part: Component, term: Term, today: DateFigure): Raised {
    const { property, date, whose, what, isFirm, months } = term;
    const [because, recommend] = remedies[what];
    const years = yearsBetween(date, today);
    const verb = verbs[property] ?? 'is dated';
    const past = months === undefined ? '' : `, at least ${Math.floor(years)} years before the survey, past ${whose}`;
    const when = (text: string) => (property === 'requalify-by' ? `${verb} ${text}, which has passed` : `${verb} ${date.precision === 'day' ? 'on' : 'in'} ${text}${past}`);
    return {
        components: [part],
        at: part.facts.get(property)?.span ?? part.idSpan,
        severity: isFirm ? 'error' : 'warning',
        message: `${nameOf(part)} ${when(date.written)}. ${because}; ${recommend}.`,
        figures: { age: { value: Math.round(years * 10) / 10, unit: 'year' }, ...(months === undefined ? {} : { term: { value: Math.round(months / 12 * 10) / 10, unit: 'year' } }) },
        draft: {
            title: `Gas ${what} ${part.id} is out of date`,
            urgency: 'before-use',
            seen: `Gas ${what} ${part.id} ${when(`{${part.id}.${property}}`)}.`,
            because: `${because}.`,
            recommend: `Gas ${what} ${part.id}: ${recommend}.`,
            cites: [['Good practice']],
        },
    };
}
