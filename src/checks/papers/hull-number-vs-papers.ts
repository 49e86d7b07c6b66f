/** Hull numbers read at several places or in papers that do not agree. */
import { bareHullNumber } from '../../trade/hull-number.js';
import { flagOf, nameOf, ofKind, valueOf, type Component, type Fact, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { listed } from '../phrasing.js';
import { beforeCompletion } from './urgency.js';

interface Reading {
    /** "her hull number", "HN1", "Title (C1)". */
    readonly where: string;
    readonly text: string;
    readonly bare: string;
    readonly reference: string;
    readonly fact: Fact;
    /** The component it stands at; undefined for the vessel itself. */
    readonly component?: Component;
    readonly property: 'hull-number' | 'text';
}

export const hullNumberVsPapers = defineCheck({
    id: 'hull-number-vs-papers',
    group: 'papers',
    severity: 'error',
    title: 'Hull numbers do not agree',
    why: 'A title that names another number does not pass with her.',
    needs: ['vessel: hull-number', 'hull-number: text, as read at each place; altered', 'certificate or insurance: hull-number'],
    computes: 'Every reading of the hull number, a country prefix, blanks and hyphens left out, against the first one: that of the vessel, else as first recorded. A fault where any two differ, or where a number shows signs of having been altered.',
    sources: [
        { text: 'all numbers of one boat are the same', provenance: 'practice' },
        { text: 'primary and duplicate number, none shared by two boats', standard: '33 CFR 181', clause: '181.23', provenance: 'published' },
    ],
    limits: [
        'Which of two readings is right is not known to it.',
        'The number of a tender is her own and is not compared.',
        'Readings in running text are not compared.',
        'A boat without a hull number, as of 1970, is left alone.',
    ],
    examples: [{
        name: 'the title has a letter for a figure',
        bad: `vessel "Marram" { hull-number: "ABC12045H495" }
certificate C1 "Title" { paper: title  hull-number: "ABC12O45H495" }
`,
        fixed: `vessel "Marram" { hull-number: "ABC12045H495" }
certificate C1 "Title" { paper: title  hull-number: "ABC12045H495" }
`,
        correction: 'Record the number in C1 as ABC12045H495',
    }, {
        name: 'primary and duplicate differ',
        bad: `hull-number HN1 { mark: primary  text: "ABC12345H495" }
hull-number HN2 { mark: duplicate  text: "ABC12346H495" }
`,
        fixed: `hull-number HN1 { mark: primary  text: "ABC12345H495" }
hull-number HN2 { mark: duplicate  text: "ABC12345H495" }
`,
        correction: 'Record the number in HN2 as ABC12345H495',
    }, {
        name: 'signs of alteration',
        bad: 'hull-number HN1 { mark: primary  text: "ABC12345H495"  altered: yes }\n',
        fixed: 'hull-number HN1 { mark: primary  text: "ABC12345H495"  altered: no }\n',
    }],
    silent: [
        { name: 'country prefix in one of them', text: 'vessel "Marram" { hull-number: "ABC12345H495" }\ncertificate C1 { paper: registration  hull-number: "US-ABC12345H495" }\n' },
        { name: 'written with blanks', text: 'vessel "Marram" { hull-number: "ABC12345H495" }\nhull-number HN1 { text: "ABC 12345 H495" }\n' },
        { name: 'boat of 1970 without one', text: 'vessel "Marram" { built: 1970 }\ncertificate C1 { paper: title }\n' },
        { name: 'tender with her own', text: 'vessel "Marram" { hull-number: "ABC12345H495" }\ntender T1 { hull-number: "XYZ54321A505" }\n' },
        { name: 'read once', text: 'vessel "Marram" { hull-number: "ABC12345H495" }\n' },
    ],
    run(record, raise) {
        const [first, ...others] = readingsOf(record);
        const different = first ? others.filter(reading => reading.bare !== first.bare) : [];
        if (first && different.length > 0) {
            raise(problem(record, first, others.filter(reading => reading.bare === first.bare), different));
        }
        for (const number of ofKind(record, 'hull-number').filter(one => flagOf(one, 'altered') === true)) {
            raise(altered(record, number));
        }
    },
});

function readingsOf(record: SurveyRecord): Reading[] {
    const { vessel } = record;
    const number = vessel && valueOf(vessel, 'hull-number');
    const fact = vessel?.facts.get('hull-number');
    return [
        ...(number && fact ? [reading('the hull', number.prose.text, '{vessel.hull-number}', fact, undefined, 'hull-number')] : []),
        ...ofKind(record, 'hull-number').flatMap(one => ofComponent(one, 'text', valueOf(one, 'text')?.prose.text)),
        ...ofKind(record, 'certificate').flatMap(one => ofComponent(one, 'hull-number', valueOf(one, 'hull-number')?.prose.text)),
    ].filter(one => one.bare !== '');
}

function ofComponent(component: Component, property: Reading['property'], text: string | undefined): Reading[] {
    const fact = component.facts.get(property);
    return fact && text !== undefined ? [reading(nameOf(component), text, `{${component.id}.${property}}`, fact, component, property)] : [];
}

function reading(where: string, text: string, reference: string, fact: Fact, component: Component | undefined, property: Reading['property']): Reading {
    return { where, text: text.trim(), bare: bareHullNumber(text), reference, fact, property, ...(component ? { component } : {}) };
}

const alike = (text: string) => text.replaceAll(/[OQ]/g, '0').replaceAll('I', '1');

/** Where two numbers part: "character 6, 0 against O". */
function parting(a: string, b: string): string {
    if (a.length !== b.length) {
        return `${a.length} against ${b.length} characters`;
    }
    const at = [...a].findIndex((sign, i) => sign !== b[i]);
    return `character ${at + 1}, ${a[at] ?? ''} against ${b[at] ?? ''}`;
}

function problem(record: SurveyRecord, first: Reading, same: readonly Reading[], different: readonly Reading[]): Raised {
    const [worst] = different;
    const isConfusable = different.every(one => alike(one.bare) === alike(first.bare));
    const hint = isConfusable ? ' They differ only where O and 0, or I and 1, are taken for each other.' : '';
    return {
        components: [...different, first, ...same].flatMap(one => one.component ? [one.component] : []),
        at: worst?.fact.span ?? first.fact.span,
        message: `The hull number is ${first.bare} on ${listed([first, ...same].map(one => one.where))}, and ${listed(different.map(one => `${one.bare} on ${one.where} (${parting(first.bare, one.bare)})`))}.${hint} A title that names another number does not pass with her; read and photograph them again.`,
        related: [first, ...different.slice(1)].map(one => ({ message: 'Read otherwise here', span: one.fact.span })),
        corrections: different.flatMap(one => choices(first, one)),
        draft: {
            title: 'Hull numbers do not agree',
            ...beforeCompletion(record),
            seen: `The hull number reads ${first.reference} on ${first.where}, and ${listed(different.map(one => `${one.reference} on ${one.where}`))}.${hint}`,
            because: 'A title or policy that names another number may not be hers, and she may not be the boat that is offered.',
            recommend: 'Stop until it is settled: read each number again, photograph it, and have the owner put the papers right with the office that issued them.',
            cites: [['33 CFR 181', '181.23']],
        },
    };
}

/** Take the one reading or the other. */
function choices(first: Reading, other: Reading): Correction[] {
    const take = (target: Reading, from: Reading): Correction => target.component
        ? { kind: 'set-fact', title: `Record the number in ${target.component.id} as ${from.bare}`, component: target.component, property: target.property, value: `"${from.bare}"` }
        : { kind: 'set-vessel-fact', title: `Record the hull number as ${from.bare}`, property: 'hull-number', value: `"${from.bare}"` };
    return [take(other, first), take(first, other)];
}

function altered(record: SurveyRecord, number: Component): Raised {
    return {
        components: [number], at: number.facts.get('altered')?.span ?? number.idSpan,
        message: `${nameOf(number)} shows signs of having been altered. She may not be the boat that is offered; stop, and have her identity settled by builder, registrar or police.`,
        draft: {
            title: `Hull number ${number.id} shows signs of alteration`,
            ...beforeCompletion(record),
            seen: `Hull number ${number.id} shows signs of having been altered.`,
            because: 'An altered number may hide another boat, and a title to her may be void.',
            recommend: 'Settle her identity with the builder and the registrar before anything else is agreed.',
            cites: [['33 CFR 181', '181.23']],
        },
    };
}
