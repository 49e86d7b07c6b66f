/** A fuel tank that leaks, moves, stands wet or is old with its bottom unseen. */
import { movesTooMuch, tankMovementLimitM } from '../../trade/fuel-line.js';
import { flagOf, materialOf, nameOf, ofKind, siOf, valueOf, wordOf, yardstick, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised, type Severity, type Urgency } from '../contract.js';
import { isOlderThanMonths } from '../dates.js';
import { both, capital, lengthBoth, listed } from '../phrasing.js';
import { surveyedOn, yearsBetween } from '../hoses/age.js';
import { beforeCompletion, fuelOfTank } from './fuel-system.js';

export const tankDoubtful = defineCheck({
    id: 'tank-doubtful',
    group: 'fuel',
    severity: 'error',
    title: 'Fuel tank is doubtful',
    why: 'Tanks corrode from beneath, where nobody sees it, and are found out by the leak.',
    needs: ['fuel-tank: leaks, moves, foamed-in, wet-pad, water-on-top, bottom-seen, made or fitted, tested, held, label-pressure', 'fuel-tank: material', 'the date she was attended, for age'],
    computes: 'A fault where it leaks or did not hold its test; moves more than 1/4 in (6.4 mm); and, of metal, where foam alone holds it, where what it rests on holds water, or where water stands on it. Advice where it is of aluminum or steel, older than the limit (usually 20 years), its bottom was not seen and no pressure test is recorded that reached its label.',
    sources: [
        { text: 'movement, foam, drainage of the top, supports that hold no water', standard: '33 CFR 183', clause: '183.550', provenance: 'published' },
        { text: 'test at the pressure on the label', standard: '33 CFR 183', clause: '183.510', provenance: 'published' },
        { text: 'age from which a metal tank is tested', provenance: 'practice' },
    ],
    yardsticks: ['metal-tank-life'],
    limits: [
        'The rule binds builders of boats with gasoline engines; on a boat in service, and on diesel, it is good practice.',
        'Age is taken from made or fitted of the tank itself, never from that of the vessel.',
        'Foam, wet supports and water on top are judged of metal tanks alone; where the material is not recorded it is asked for.',
        'A test without a label pressure counts if the tank held it.',
        'Water and holding tanks are not judged; nor is the movement of a portable tank.',
    ],
    examples: [{
        name: 'tank that moves',
        bad: `vessel "Marram" { fuel: gasoline }
fuel-tank T1 { material: aluminum  moves: 3/8 in }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
fuel-tank T1 { material: aluminum  moves: 1/4 in }
`,
    }, {
        name: 'old aluminum tank, bottom not seen',
        bad: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
vessel "Marram" { fuel: diesel }
fuel-tank T1 { material: aluminum  made: 1998  bottom-seen: no }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
vessel "Marram" { fuel: diesel }
fuel-tank T1 { material: aluminum  made: 1998  bottom-seen: no  held: yes }
`,
        correction: 'Record that T1 held a pressure test',
    }, {
        name: 'steel tank on a wet pad with water on its top',
        bad: `vessel "Marram" { fuel: diesel }
fuel-tank T1 { material: mild-steel  wet-pad: yes  water-on-top: yes }
`,
        fixed: `vessel "Marram" { fuel: diesel }
fuel-tank T1 { material: mild-steel  wet-pad: no  water-on-top: no }
`,
    }],
    silent: [
        { name: 'old tank whose bottom was seen', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nfuel-tank T1 { fuel: diesel  material: aluminum  made: 1998  bottom-seen: yes }\n' },
        { name: 'the same tank of plastic', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nfuel-tank T1 { fuel: diesel  material: polyethylene  made: 1998  bottom-seen: no }\n' },
        { name: 'aluminum tank of nineteen years', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nfuel-tank T1 { fuel: diesel  material: aluminum  made: 2007-01  bottom-seen: no }\n' },
        { name: 'tank of plastic in foam, with water on it', text: 'fuel-tank T1 { fuel: gasoline  material: polyethylene  foamed-in: yes  water-on-top: yes }\n' },
        { name: 'tested at the pressure on its label', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nfuel-tank T1 { material: aluminum  made: 1998  bottom-seen: no  tested: 3 psi  label-pressure: 3 psi  held: yes }\n' },
    ],
    run(record, raise) {
        for (const tank of ofKind(record, 'fuel-tank')) {
            const faults = faultsOf(tank);
            const age = ageOf(record, tank);
            if (faults.length > 0 || age) {
                raise(problem(record, tank, [...faults, ...(age ? [age] : [])]));
            } else {
                askFor(record, tank, raise);
            }
        }
    },
});

interface Doubt {
    readonly property: string;
    /** In a message, with figures. */
    readonly what: string;
    /** In a draft, with references. */
    readonly seen: string;
    readonly kind: 'leak' | 'fault' | 'age';
    readonly why: string;
    readonly remedy: string;
}

const rechock = 'chock it anew so that it cannot move and drains all round';

function faultsOf(tank: Component<'fuel-tank'>): readonly Doubt[] {
    const isMetal = materialOf(tank)?.isMetal === true;
    // A tank that is carried ashore to be filled is no part of the boat; whether it is lashed is another matter.
    const moves = wordOf(tank, 'build') === 'portable' ? undefined : valueOf(tank, 'moves');
    const tested = valueOf(tank, 'tested');
    const limit = lengthBoth(tankMovementLimitM);
    const doubts: readonly (Doubt | undefined)[] = [
        flagOf(tank, 'leaks') ? { property: 'leaks', what: 'leaks', seen: 'leaks', kind: 'leak', why: 'fuel runs into the boat', remedy: 'empty it, and repair or renew it' } : undefined,
        flagOf(tank, 'held') === false ? {
            property: 'held', what: `did not hold its test${tested ? ` at ${both(tested)}` : ''}`, seen: `did not hold its test${tested ? ` at {${tank.id}.tested}` : ''}`, kind: 'leak',
            why: 'it leaks somewhere', remedy: 'empty it, and repair or renew it',
        } : undefined,
        moves && movesTooMuch(moves.si) ? {
            property: 'moves', what: `moves ${both(moves)}, where ${limit} is allowed`, seen: `moves {${tank.id}.moves}, where ${limit} is allowed`, kind: 'fault', why: 'a tank that works chafes through and strains its fittings', remedy: rechock,
        } : undefined,
        isMetal && flagOf(tank, 'foamed-in') ? { property: 'foamed-in', what: 'is held by foam alone', seen: 'is held by foam alone', kind: 'fault', why: 'foam holds water against the metal', remedy: rechock } : undefined,
        isMetal && flagOf(tank, 'wet-pad') ? { property: 'wet-pad', what: 'rests on something that holds water', seen: 'rests on something that holds water', kind: 'fault', why: 'water against the metal eats it from beneath', remedy: rechock } : undefined,
        isMetal && flagOf(tank, 'water-on-top') ? { property: 'water-on-top', what: 'has water standing on it', seen: 'has water standing on it', kind: 'fault', why: 'standing water eats the metal', remedy: 'drain its top' } : undefined,
    ];
    return doubts.filter(doubt => doubt !== undefined);
}

const agingClasses: ReadonlySet<string> = new Set(['aluminum', 'iron-or-steel', 'stainless']);

/** Of metal that corrodes, bottom not seen, no test that counts. */
function isUnseen(tank: Component<'fuel-tank'>): boolean {
    return agingClasses.has(materialOf(tank)?.class ?? '') && flagOf(tank, 'bottom-seen') === false && !isProved(tank);
}

function isProved(tank: Component<'fuel-tank'>): boolean {
    const tested = siOf(tank, 'tested');
    const label = siOf(tank, 'label-pressure');
    return flagOf(tank, 'held') === true && (tested === undefined || label === undefined || tested >= label - 1);
}

function ageOf(record: SurveyRecord, tank: Component<'fuel-tank'>): Doubt | undefined {
    const dated = tank.facts.has('made') ? 'made' : 'fitted';
    const date = valueOf(tank, dated)?.figure;
    const today = surveyedOn(record);
    const limit = yardstick(record, 'metal-tank-life');
    const years = date && today ? yearsBetween(date, today) : undefined;
    if (!date || !today || years === undefined || !isOlderThanMonths(date, Math.round(limit.si / secondsAMonth), today) || !isUnseen(tank)) {
        return undefined;
    }
    const old = `at least ${Math.floor(years)} years before the survey, past ${limit.whose} of ${limit.written} for a metal tank whose bottom was not seen`;
    return {
        property: dated, what: `was ${dated} in ${date.written}, ${old}`, seen: `was ${dated} {${tank.id}.${dated}}, ${old}`, kind: 'age', why: 'such tanks are commonly thinned from beneath, and nothing shows from above',
        remedy: 'have it tested with air at the pressure on its label, or else allow for its renewal',
    };
}

const secondsAMonth = 365.25 / 12 * 86_400;

/** Names the one fact that would decide. */
function askFor(record: SurveyRecord, tank: Component<'fuel-tank'>, raise: (problem: Raised) => void): void {
    const hint = (property: string, message: string) => raise({ components: [tank], at: tank.facts.get(property)?.span ?? tank.idSpan, severity: 'hint', message });
    const wet = (['foamed-in', 'wet-pad', 'water-on-top'] as const).find(property => flagOf(tank, property) === true);
    const isDated = tank.facts.has('made') || tank.facts.has('fitted');
    if (wet && !materialOf(tank)) {
        hint(wet, `Record the material of ${nameOf(tank)}: of metal it must stand dry and not in foam alone.`);
    } else if (isUnseen(tank) && !isDated) {
        hint('bottom-seen', `The bottom of ${nameOf(tank)} was not seen; record when it was made or fitted, to tell whether ${yardstick(record, 'metal-tank-life').written} call for a pressure test.`);
    } else if (isUnseen(tank) && !surveyedOn(record)) {
        hint('bottom-seen', `The bottom of ${nameOf(tank)} was not seen; record when she was attended, to tell its age.`);
    }
}

interface Weight {
    readonly severity: Severity;
    readonly urgency: Urgency;
    readonly days?: number;
}

function weightOf(record: SurveyRecord, tank: Component, doubts: readonly Doubt[]): Weight {
    const isGasoline = fuelOfTank(record, tank) === 'gasoline';
    if (doubts.some(doubt => doubt.kind === 'leak')) {
        return { severity: 'error', urgency: isGasoline ? 'at-once' : 'before-use' };
    }
    const isAgeAlone = doubts.every(doubt => doubt.kind === 'age');
    return { severity: isAgeAlone ? 'warning' : 'error', ...beforeCompletion(record, isGasoline && !isAgeAlone ? { urgency: 'within-days', days: 30 } : { urgency: 'in-upkeep' }) };
}

function problem(record: SurveyRecord, tank: Component<'fuel-tank'>, doubts: readonly Doubt[]): Raised {
    const { severity, urgency, days } = weightOf(record, tank, doubts);
    const once = (pick: (doubt: Doubt) => string) => listed([...new Set(doubts.map(pick))]);
    const moves = siOf(tank, 'moves');
    const at = tank.facts.get(doubts[0]?.property ?? '')?.span ?? tank.idSpan;
    const isRule = doubts.some(doubt => doubt.kind === 'fault');
    return {
        components: [tank],
        at, severity,
        message: `${nameOf(tank)} ${once(doubt => doubt.what)}${isRule ? ' (good practice per 33 CFR 183.550)' : ''}. ${capital(once(doubt => doubt.why))}; ${once(doubt => doubt.remedy)}.`,
        ...(moves !== undefined && doubts.some(doubt => doubt.property === 'moves') ? { figures: { movement: { value: moves * 1000, unit: 'mm' }, limit: { value: tankMovementLimitM * 1000, unit: 'mm' } } } : {}),
        corrections: doubts.every(doubt => doubt.kind === 'age') ? [{ kind: 'set-fact', title: `Record that ${tank.id} held a pressure test`, component: tank, property: 'held', value: 'yes' }] : [],
        draft: {
            title: `Fuel tank ${tank.id} ${doubts.some(doubt => doubt.kind === 'leak') ? 'leaks' : 'is doubtful'}`,
            urgency, ...(days === undefined ? {} : { days }),
            seen: `Fuel tank ${tank.id} ${once(doubt => doubt.seen)}.`,
            because: `${capital(once(doubt => doubt.why))}.`,
            recommend: `Fuel tank ${tank.id}: ${once(doubt => doubt.remedy)}.`,
            ...(isRule ? { cites: [['33 CFR 183', '183.550'] as const] } : {}),
        },
    };
}
