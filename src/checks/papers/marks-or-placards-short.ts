/** Marks too small or wrongly made, placards too small or missing, and papers that have run out. */
import { hasNumberPrefix, isPlacardLargeEnough, leastLetterM, leastPlacard, placardsFromM, wastePlanFromM } from '../../trade/marks.js';
import { flagOf, nameOf, ofKind, siOf, valueOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';
import { hasPassed } from '../dates.js';
import { both, lengthBoth, listed } from '../phrasing.js';
import { surveyedOn } from '../hoses/age.js';
import { lengthForCarriageM } from '../safety/bottles.js';
import { adding, countOf } from '../safety/gear.js';

export const marksOrPlacardsShort = defineCheck({
    id: 'marks-or-placards-short',
    group: 'papers',
    severity: 'error',
    title: 'Mark, placard or paper falls short',
    why: 'They are asked for by law, and an officer who comes aboard looks for them first.',
    needs: [
        'official-number, or marking: marked, letter-height, text, permanent, side', 'vessel: official-number, for name and port', 'placard: placard-for, width, height, posted', 'certificate, radio-license, insurance, placard: expires',
        'vessel: length-on-deck or length-overall, fuel, used-on (or water); a stove', 'the day of the last attendance',
    ],
    computes: 'A fault where the official number inside is lower than 3 in (76 mm), lacks the letters NO. or can be taken off without a trace; where name or port of a documented vessel is lower than 4 in (102 mm); where a state number is lower than 3 in or on one bow only; where from 26 ft (7.92 m) on the oil placard is under 5 by 8 in or the garbage placard under 9 by 4 in, or either is not posted or missing; and where a paper has run out. Advice where from 40 ft on, with a galley, there is no waste plan.',
    sources: [
        { text: 'name and hailing port', standard: '46 CFR 67', clause: '67.123', provenance: 'published' },
        { text: 'official number', standard: '46 CFR 67', clause: '67.121', provenance: 'secondary' },
        { text: 'state number', standard: '33 CFR 173', clause: '173.27', provenance: 'published' },
        { text: 'garbage placard', standard: '33 CFR 151', clause: '151.59', provenance: 'published' },
        { text: 'oil placard', standard: '33 CFR 155', clause: '155.450', provenance: 'secondary' },
        { text: 'waste plan', standard: '33 CFR 151', clause: '151.57', provenance: 'memory' },
    ],
    limits: [
        'The rules hold in the United States; elsewhere they are yardsticks.',
        'Whether she is documented is known by her official number.',
        'A placard counts as missing only where another placard is recorded: where none is, they may not have been looked for.',
        'The waste plan is asked of vessels that go to sea: nothing is said of inland waters, and where the waters are not recorded they are asked for.',
        'A galley is known by a stove that is recorded.',
    ],
    examples: [{
        name: 'official number too small',
        bad: `vessel "Marram" { official-number: "1234567" }
official-number ON1 { text: "NO. 1234567"  letter-height: 2 in  permanent: yes }
`,
        fixed: `vessel "Marram" { official-number: "1234567" }
official-number ON1 { text: "NO. 1234567"  letter-height: 3 in  permanent: yes }
`,
    }, {
        name: 'name and port too small on a documented vessel',
        bad: `vessel "Marram" { official-number: "1234567" }
marking MK1 { marked: name-and-port  letter-height: 3 in }
`,
        fixed: `vessel "Marram" { official-number: "1234567" }
marking MK1 { marked: name-and-port  letter-height: 4 in }
`,
    }, {
        name: 'state number on one bow only',
        bad: `marking MK1 { marked: state-number  letter-height: 3 in  side: port }
`,
        fixed: `marking MK1 { marked: state-number  letter-height: 3 in  side: both }
`,
        correction: 'Record MK1 as on both bows',
    }, {
        name: 'no oil placard at 34 ft',
        bad: `vessel "Marram" { length-on-deck: 34 ft  fuel: diesel }
placard P1 { placard-for: garbage }
`,
        fixed: `vessel "Marram" { length-on-deck: 34 ft  fuel: diesel }
placard P1 { placard-for: garbage }
placard P2 { placard-for: oil }
`,
        correction: 'Add an oil placard',
    }, {
        name: 'oil placard in a drawer',
        bad: `vessel "Marram" { length-on-deck: 34 ft  fuel: diesel }
placard P1 { placard-for: garbage  posted: yes }
placard P2 { placard-for: oil  posted: no }
`,
        fixed: `vessel "Marram" { length-on-deck: 34 ft  fuel: diesel }
placard P1 { placard-for: garbage  posted: yes }
placard P2 { placard-for: oil  posted: yes }
`,
        correction: 'Record P2 as posted',
    }, {
        name: 'insurance run out',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
insurance IN1 { expires: 2026-09-30 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
insurance IN1 { expires: 2027-09-30 }
`,
    }, {
        name: 'no waste plan at 44 ft with a galley',
        bad: `vessel "Marram" { length-on-deck: 44 ft  fuel: diesel  used-on: offshore }
stove ST1 { fuel: electric }
placard P1 { placard-for: garbage }
placard P2 { placard-for: oil }
`,
        fixed: `vessel "Marram" { length-on-deck: 44 ft  fuel: diesel  used-on: offshore }
stove ST1 { fuel: electric }
placard P1 { placard-for: garbage }
placard P2 { placard-for: oil }
placard P3 { placard-for: waste-plan }
`,
        correction: 'Add a waste plan',
    }],
    silent: [
        { name: 'name of 3 in on a boat that is not documented', text: 'vessel "Marram" { registration: "XX 1234 YZ" }\nmarking MK1 { marked: name  letter-height: 3 in }\n' },
        { name: 'placards under 26 ft', text: 'vessel "Marram" { length-on-deck: 25 ft  fuel: diesel }\nplacard P1 { placard-for: other }\n' },
        { name: 'oil placard hung upright', text: 'vessel "Marram" { length-on-deck: 34 ft  fuel: diesel }\nplacard P1 { placard-for: oil  width: 5 in  height: 8 in }\nplacard P2 { placard-for: garbage  width: 9 in  height: 4 in }\n' },
        { name: 'last day of a policy', text: 'survey "1" pre-purchase { attended 2026-09-30 afloat "Berth" }\ninsurance IN1 { expires: 2026-09-30 }\n' },
        { name: 'no placard recorded', text: 'vessel "Marram" { length-on-deck: 44 ft  fuel: diesel }\n' },
        { name: 'waste plan on inland waters', text: 'vessel "Marram" { length-on-deck: 44 ft  fuel: diesel  used-on: inland }\nstove ST1 { fuel: electric }\nplacard P1 { placard-for: garbage }\nplacard P2 { placard-for: oil }\n' },
    ],
    run(record, raise) {
        judgeOfficialNumber(record, raise);
        judgeNameAndPort(record, raise);
        judgeStateNumber(record, raise);
        judgePlacards(record, raise);
        judgePapers(record, raise);
    },
});

type Raise = (problem: Raised) => void;

interface Shortfall {
    readonly on: Component;
    readonly property: string;
    readonly title: string;
    /** What is wrong with its figures, and for the finding with references. */
    readonly what: string;
    readonly seen: string;
    readonly because: string;
    readonly remedy: string;
    readonly cites: readonly [standard: string, clause?: string];
    readonly urgency?: { readonly urgency: Urgency; readonly days?: number };
    readonly corrections?: Raised['corrections'];
}

function shortfall({ on, property, title, what, seen, because, remedy, cites, urgency, corrections }: Shortfall): Raised {
    return {
        components: [on],
        at: on.facts.get(property)?.span ?? on.idSpan,
        message: `${nameOf(on)} ${what}. ${because}; ${remedy}.`,
        ...(corrections ? { corrections } : {}),
        draft: { title, ...(urgency ?? { urgency: 'in-upkeep' as const }), seen: `${nameOf(on)} ${seen}.`, because: `${because}.`, recommend: `${remedy.charAt(0).toUpperCase()}${remedy.slice(1)}.`, cites: [cites] },
    };
}

function markings(record: SurveyRecord, ...marked: readonly string[]): Component[] {
    return ofKind(record, 'marking').filter(one => marked.includes(wordOf(one, 'marked') ?? '') && countOf(one) > 0);
}

/** Letters lower than the least height. */
function tooLow(on: Component, leastM: number): Pick<Shortfall, 'what' | 'seen' | 'property'> | undefined {
    const height = on.facts.get('letter-height')?.values[0];
    return height?.type === 'quantity' && height.si < leastM - 1e-6
        ? { property: 'letter-height', what: `is ${both(height)} high, where ${lengthBoth(leastM)} are asked for`, seen: `is {${on.id}.letter-height} high` } : undefined;
}

function judgeOfficialNumber(record: SurveyRecord, raise: Raise): void {
    for (const number of [...ofKind(record, 'official-number'), ...markings(record, 'official-number')]) {
        const base = { on: number, title: `Official number ${number.id} falls short`, because: 'The official number is to be marked inside so that it cannot be lost or changed', cites: ['46 CFR 67', '67.121'] as const };
        const text = number.facts.get('text')?.values[0];
        const low = tooLow(number, leastLetterM['official-number']);
        if (low) {
            raise(shortfall({ ...base, ...low, remedy: 'mark it anew in figures at least 3 in (76 mm) high' }));
        } else if (text?.type === 'text' && !hasNumberPrefix(text.prose.text)) {
            raise(shortfall({ ...base, property: 'text', what: `reads ${text.prose.text}, without the letters NO. before it`, seen: `reads {${number.id}.text}, without the letters NO. before it`, remedy: 'mark it anew with NO. before the number' }));
        } else if (flagOf(number, 'permanent') === false) {
            raise(shortfall({ ...base, property: 'permanent', what: 'can be taken off without a trace', seen: 'can be taken off without a trace', remedy: 'mark it so that taking it off would leave a trace' }));
        }
    }
}

function judgeNameAndPort(record: SurveyRecord, raise: Raise): void {
    if (!record.vessel?.facts.has('official-number')) {
        return;
    }
    for (const mark of markings(record, 'name', 'hailing-port', 'name-and-port')) {
        const low = tooLow(mark, leastLetterM['name-and-port']);
        if (low) {
            raise(shortfall({
                ...low, on: mark, title: `Name or hailing port ${mark.id} is marked too small`, because: 'Name and hailing port of a documented vessel are to be read from outside',
                remedy: 'mark them anew in letters at least 4 in (102 mm) high', cites: ['46 CFR 67', '67.123'],
            }));
        }
    }
}

function judgeStateNumber(record: SurveyRecord, raise: Raise): void {
    const marks = markings(record, 'state-number');
    const base = { because: 'The number is to be read from either side', cites: ['33 CFR 173', '173.27'] as const };
    for (const mark of marks) {
        const low = tooLow(mark, leastLetterM['state-number']);
        if (low) {
            raise(shortfall({ ...base, ...low, on: mark, title: `State number ${mark.id} is marked too small`, remedy: 'mark it anew in characters at least 3 in (76 mm) high' }));
        }
    }
    const sides = new Set(marks.map(mark => wordOf(mark, 'side')));
    const [first] = marks;
    const [only] = sides;
    if (first && sides.size === 1 && (only === 'port' || only === 'starboard')) {
        raise(shortfall({
            ...base, on: first, property: 'side', title: 'State number is on one bow only', what: `is a state number on the ${only} bow only`, seen: `is a state number, seen on the {${first.id}.side} bow only`,
            remedy: `mark it on the ${only === 'port' ? 'starboard' : 'port'} bow as well`,
            corrections: [{ kind: 'set-fact', title: `Record ${first.id} as on both bows`, component: first, property: 'side', value: 'both' }],
        }));
    }
}

const placardRules = {
    oil: { cites: ['33 CFR 155', '155.450'], because: 'An oil placard is to hang in the machinery space or where the bilge pump is worked' },
    garbage: { cites: ['33 CFR 151', '151.59'], because: 'A garbage placard is to hang where crew and guests read it' },
} as const;

function judgePlacards(record: SurveyRecord, raise: Raise): void {
    const placards = ofKind(record, 'placard');
    const lengthM = lengthForCarriageM(record);
    const [first] = placards;
    if (!first) {
        return;
    }
    if (lengthM === undefined) {
        if (record.vessel) {
            raise({ components: [first], at: first.idSpan, severity: 'hint', message: 'Record the length of the vessel to tell which placards she is to have.' });
        }
        return;
    }
    if (lengthM >= placardsFromM - 1e-6) {
        const fuel = record.vessel && wordOf(record.vessel, 'fuel');
        const kinds = fuel === 'none' || fuel === 'electric' ? ['garbage'] as const : ['oil', 'garbage'] as const;
        const unnamed = placards.find(placard => !placard.facts.has('placard-for') && !placard.facts.has('expires'));
        const missing = kinds.filter(kind => !judgePlacardsOf(kind, placards, raise));
        if (missing.length > 0 && unnamed) {
            raise({ components: [unnamed], at: unnamed.idSpan, severity: 'hint', message: `Record what placard ${unnamed.id} is for (placard-for) to tell whether the ${listed(missing)} placard is there.` });
        } else if (missing.length > 0) {
            raise(missingPlacard(record, missing, placards, lengthM));
        }
        judgeWastePlan(record, placards, lengthM, raise);
    }
}

/** Raises one that hangs nowhere, and those that are too small; true where one is there at all. */
function judgePlacardsOf(kind: 'oil' | 'garbage', placards: readonly Component[], raise: Raise): boolean {
    const there = placards.filter(placard => wordOf(placard, 'placard-for') === kind && countOf(placard) > 0);
    const [first] = there;
    if (first && there.every(placard => flagOf(placard, 'posted') === false)) {
        raise(shortfall({
            ...placardRules[kind], on: first, property: 'posted', title: `The ${kind} placard is not posted`, what: 'is aboard and not posted', seen: 'is aboard and not posted', remedy: 'post it there',
            corrections: [{ kind: 'set-fact', title: `Record ${first.id} as posted`, component: first, property: 'posted', value: 'yes' }],
        }));
        return true;
    }
    for (const placard of there.filter(one => !isPlacardLargeEnough(kind, siOf(one, 'width'), siOf(one, 'height')))) {
        raise(tooSmall(kind, placard));
    }
    return there.length > 0;
}

function tooSmall(kind: 'oil' | 'garbage', placard: Component): Raised {
    const sides = (['width', 'height'] as const).filter(side => placard.facts.has(side));
    const measured = sides.map(side => {
        const value = placard.facts.get(side)?.values[0];
        return value?.type === 'quantity' ? both(value) : '';
    });
    return shortfall({
        ...placardRules[kind], on: placard, property: sides[0] ?? 'placard-for', title: `The ${kind} placard is too small`,
        what: `is ${placardNames[kind]} of ${measured.join(' by ')}, where at least ${leastPlacard[kind].text} is asked for`,
        seen: `is ${placardNames[kind]} of ${sides.map(side => `{${placard.id}.${side}}`).join(' by ')}`, remedy: `post one of at least ${leastPlacard[kind].text}`,
    });
}

const placardNames = { oil: 'an oil placard', garbage: 'a garbage placard', 'waste-plan': 'a waste plan' } as const;

function missingPlacard(record: SurveyRecord, missing: readonly ('oil' | 'garbage' | 'waste-plan')[], placards: readonly Component[], lengthM: number): Raised {
    const wanted = listed(missing.map(kind => placardNames[kind]));
    const lengthFact = record.vessel?.facts.has('length-on-deck') ? 'length-on-deck' : 'length-overall';
    const last = placards.at(-1);
    const isPlan = missing.includes('waste-plan');
    return {
        components: placards, severity: isPlan ? 'warning' : 'error',
        at: last?.idSpan ?? { uri: record.mainUri, start: 0, end: 0 },
        message: `At ${lengthBoth(lengthM)} she is to have ${wanted}, and none is recorded. The law asks for ${missing.length === 1 ? 'it' : 'them'}; ${isPlan ? 'write one and keep it aboard' : 'post what is missing'}.`,
        figures: { length: { value: lengthM / 0.3048, unit: 'ft' } },
        corrections: missing.map(kind => adding(record, last, `Add ${placardNames[kind]}`, 'placard', 'P', [['placard-for', kind]])),
        draft: {
            title: isPlan ? 'No waste plan' : 'Placards are missing',
            urgency: 'in-upkeep',
            seen: `She measures {vessel.${lengthFact}}; ${wanted} ${missing.length === 1 ? 'was' : 'were'} not seen.`,
            because: isPlan ? 'A vessel of her length with a galley that goes to sea is to have a written plan for its waste.' : `From ${lengthBoth(placardsFromM)} on ${wanted} ${missing.length === 1 ? 'is' : 'are'} to be posted.`,
            recommend: isPlan ? 'Write a waste plan and keep it aboard.' : `Post ${wanted}, each of the size asked for.`,
            cites: isPlan ? [['33 CFR 151', '151.57']] : missing.flatMap(kind => kind === 'waste-plan' ? [] : [placardRules[kind].cites]),
        },
    };
}

function judgeWastePlan(record: SurveyRecord, placards: readonly Component[], lengthM: number, raise: Raise): void {
    const { vessel } = record;
    const waters = vessel && (wordOf(vessel, 'used-on') ?? (wordOf(vessel, 'water') === 'salt' ? 'coastal' : undefined));
    const hasPlan = placards.some(placard => wordOf(placard, 'placard-for') === 'waste-plan' && countOf(placard) > 0);
    const hasGalley = ofKind(record, 'stove').length > 0;
    if (!vessel || hasPlan || !hasGalley || lengthM < wastePlanFromM - 1e-6 || waters === 'inland') {
        return;
    }
    const at = placards.at(-1)?.idSpan ?? vessel.span;
    raise(waters === undefined
        ? { components: placards, at, severity: 'hint', message: 'Placards and no waste plan are recorded; record the waters she is used on (used-on), for vessels that go to sea are to have one.' }
        : missingPlacard(record, ['waste-plan'], placards, lengthM));
}

function judgePapers(record: SurveyRecord, raise: Raise): void {
    const today = surveyedOn(record);
    for (const paper of [...ofKind(record, 'certificate'), ...ofKind(record, 'placard')]) {
        const expires = valueOf(paper, 'expires')?.figure;
        if (expires && !today) {
            raise({ components: [paper], at: paper.facts.get('expires')?.span ?? paper.idSpan, severity: 'hint', message: `${nameOf(paper)} runs to ${expires.written}; record when she was attended to tell whether that has passed.` });
        } else if (expires && today && hasPassed(expires, today)) {
            raise(shortfall({
                on: paper, property: 'expires', title: `${paper.title ?? `Paper ${paper.id}`} has run out`, what: `ran to ${expires.written}, before the survey`, seen: `ran to {${paper.id}.expires}, before the survey`,
                because: 'A paper that has run out does not cover her', remedy: 'renew it', cites: ['Good practice'], urgency: { urgency: 'within-days', days: 14 },
            }));
        }
    }
}
