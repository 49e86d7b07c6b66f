/** One thing recorded in two places with two values, or words that a recorded fact belies. */
import { flagOf, isKind, nameOf, ofKind, siOf, valueOf, wordOf, type Component, type Span, type SurveyRecord } from '../../record/model.js';
import { proseOf, spanIn } from '../../record/prose-entries.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, listed } from '../phrasing.js';
import { isDenied, sentencesOf, spaced } from '../wording/sentences.js';

/** What two diameters of one tail may differ by before one of them is wrong. */
const sameM = 0.0005;

/** A claim on all of a group, and the components of the group that belie it. */
interface Universal {
    /** Names of the group in a sentence. */
    readonly group: RegExp;
    readonly belied: (record: SurveyRecord) => readonly Component[];
}

const failing: ReadonlySet<string> = new Set(['failed', 'defective']);
/** A stiff valve works, but not freely. */
const worksHardly: ReadonlySet<string> = new Set(['stiff', 'slow']);
const doesNotWork = (component: Component) => ['no', 'stiff', 'seized', 'stuck', 'slow'].includes(wordOf(component, 'works') ?? '') || failing.has(wordOf(component, 'condition') ?? '')
    || flagOf(component, 'spins') === true;

const universals: readonly Universal[] = [
    { group: /(?:sea ?(?:cocks?|valves?)|(?:skin )?valves?)/iu, belied: record => ofKind(record, 'valve').filter(doesNotWork) },
    { group: /(?:navigation |running )?lights?/iu, belied: record => ofKind(record, 'navigation-light').filter(doesNotWork) },
    { group: /(?:bilge )?pumps?/iu, belied: record => ofKind(record, 'bilge-pump').filter(doesNotWork) },
    { group: /(?:smoke |gas |bilge |carbon-monoxide )?alarms?/iu, belied: record => [...ofKind(record, 'bilge-alarm'), ...ofKind(record, 'smoke-alarm'), ...ofKind(record, 'co-alarm'), ...ofKind(record, 'gas-alarm')].filter(doesNotWork) },
    { group: /(?:(?:electronic )?instruments?|electronics)/iu, belied: record => ofKind(record, 'instrument').filter(doesNotWork) },
];
const worked = /(?:work(?:ed|s|ing)?|operat(?:ed|es|ional|e|ing)|turn(?:ed|s)?(?! out)|mov(?:ed|es|e)|ran|run|opened|lit|function(?:ed|s|al)?|free(?! (?:of|from))|freely)/iu;

export const contradictingValues = defineCheck({
    id: 'contradicting-values',
    group: 'record',
    severity: 'error',
    isOfReport: true,
    title: 'Two values that cannot both be true',
    why: 'A reader who finds one contradiction believes none of the figures.',
    needs: ['vessel: fuel, engines', 'engines: fuel', 'joint: spigot', 'fitting: spigot', 'prose'],
    computes: 'Fuel of the vessel against that of her main engines; the number of engines against those recorded; the tail measured at a joint against that of its fitting (0.5 mm apart or more); and "all … worked" in prose against a component of that group that did not.',
    sources: [{ text: 'both cannot be true', provenance: 'computed' }],
    limits: ['Of claims in words it reads only those on all valves, lights, pumps, alarms or instruments.', 'Running hours, dimensions and hull numbers have checks of their own.', 'English only.'],
    examples: [{
        name: 'all alarms worked, and one did not',
        bad: 'vessel "Marram" {\n    note "All smoke alarms worked."\n}\nsmoke-alarm SA1 { works: no }\n',
        fixed: 'vessel "Marram" {\n    note "All smoke alarms worked, but for the one forward."\n}\nsmoke-alarm SA1 { works: no }\n',
    }, {
        name: 'fuel of the vessel and of her engine',
        bad: 'vessel "Marram" { fuel: gasoline }\nmain-engine ENG1 { fuel: diesel }\n',
        fixed: 'vessel "Marram" { fuel: diesel }\nmain-engine ENG1 { fuel: diesel }\n',
        correction: 'Record the fuel of the vessel as diesel',
    }, {
        name: 'two engines, and one recorded',
        bad: 'vessel "Marram" { engines: 1 }\nmain-engine ENG1\nmain-engine ENG2\n',
        fixed: 'vessel "Marram" { engines: 2 }\nmain-engine ENG1\nmain-engine ENG2\n',
        correction: 'Record 2 engines',
    }],
    silent: [
        { name: 'all valves worked', text: 'vessel "Marram" {\n    note "All seacocks worked freely."\n}\nvalve SV1 { works: free }\n' },
        { name: 'not all', text: 'vessel "Marram" {\n    note "Not all seacocks worked."\n}\nvalve SV1 { works: seized }\n' },
        { name: 'a dinghy’s outboard', text: 'vessel "Marram" { fuel: diesel  engines: 1 }\nmain-engine ENG1 { fuel: diesel }\noutboard OB1 { fuel: gasoline }\n' },
        { name: 'the engine of a further side not recorded yet', text: 'vessel "Marram" { engines: 2 }\nmain-engine ENG1\n' },
        { name: 'the same tail in both units', text: 'seacock SV1 { spigot: 1-1/2 in }\nhose H1 { bore: 38 mm }\nrun R1: SV1 -> { spigot: 38.1 mm } H1\n' },
    ],
    run(record, raise) {
        fuelAndEngines(record, raise);
        tails(record, raise);
        claims(record, raise);
    },
});

function fuelAndEngines(record: SurveyRecord, raise: (problem: Raised) => void): void {
    const { vessel } = record;
    const engines = ofKind(record, 'main-engine');
    if (!vessel) {
        return;
    }
    const fuel = wordOf(vessel, 'fuel');
    const fuelFact = vessel.facts.get('fuel');
    for (const engine of engines) {
        const own = wordOf(engine, 'fuel');
        const fact = engine.facts.get('fuel');
        if (fuel !== undefined && own !== undefined && own !== fuel && fact && fuelFact && !engines.some(other => wordOf(other, 'fuel') === fuel)) {
            raise({
                components: [engine], at: fuelFact.span,
                message: `The fuel of the vessel is ${fuel}, that of ${nameOf(engine)} is ${own}. Rules of fire and ventilation hang on it; keep the one that is true.`,
                related: [{ message: `${engine.id} runs on ${own}`, span: fact.span }],
                corrections: [{ kind: 'set-vessel-fact', title: `Record the fuel of the vessel as ${own}`, property: 'fuel', value: own }, { kind: 'set-fact', title: `Record the fuel of ${engine.id} as ${fuel}`, component: engine, property: 'fuel', value: fuel }],
            });
            break;
        }
    }
    const stated = valueOf(vessel, 'engines');
    const statedFact = vessel.facts.get('engines');
    const propelling = engines.reduce((sum, engine) => sum + (siOf(engine, 'quantity') ?? 1), 0);
    if (stated && statedFact && propelling > stated.si) {
        raise({
            components: [], at: statedFact.span,
            message: `The vessel has ${stated.si} ${stated.si === 1 ? 'engine' : 'engines'}, and ${propelling} main engines are recorded: ${listed(engines.map(engine => engine.id))}. Count again and correct one of the two.`,
            corrections: [{ kind: 'set-vessel-fact', title: `Record ${propelling} engines`, property: 'engines', value: String(propelling) }],
        });
    }
}

function tails(record: SurveyRecord, raise: (problem: Raised) => void): void {
    for (const run of record.runs) {
        for (const joint of run.joints) {
            const measured = valueOf(joint, 'spigot');
            const at = joint.facts.get('spigot')?.span;
            const fitting = [joint.from, joint.to].find(part => !isKind(record, part, 'hose') && part.facts.has('spigot'));
            const own = fitting?.facts.get('spigot');
            const ownValue = own?.values[0];
            if (measured && at && fitting && own && ownValue?.type === 'quantity' && Math.abs(measured.si - ownValue.si) >= sameM) {
                raise({
                    components: [fitting], at,
                    message: `The tail of ${nameOf(fitting)} measures ${both(measured)} at this joint and ${both(ownValue)} where it is recorded. It has one diameter; measure again and keep one.`,
                    related: [{ message: `${fitting.id}: ${own.written}`, span: own.span }],
                });
            }
        }
    }
}

/** "All … worked" against those that did not. */
function claims(record: SurveyRecord, raise: (problem: Raised) => void): void {
    // Only a group with a part that did not work can be belied.
    const groups = claimable.map(({ patterns, belied }) => ({ patterns, belying: belied(record) })).filter(({ belying }) => belying.length > 0);
    for (const entry of groups.length > 0 ? proseOf(record) : []) {
        for (const sentence of ofAll.test(entry.said) ? sentencesOf(entry) : []) {
            for (const { patterns, belying } of groups) {
                const match = patterns.map(pattern => pattern.exec(sentence.said)).find(found => found !== null && !isDenied(sentence.said, found.index));
                if (!match || exception.test(sentence.said) || bounded.test(match[0]) || /\b(?:should|must|to be|ought|if)\b/iu.test(match[0]) || entry.property === 'recommend') {
                    continue;
                }
                const isFree = /\b(?:free|freely|easily|smoothly|stiff)\b/iu.test(sentence.said.slice(match.index));
                const against = belying.filter(component => isFree || !worksHardly.has(wordOf(component, 'works') ?? ''));
                if (against.length > 0) {
                    const finding = entry.owner.type === 'finding' ? { finding: entry.owner.finding } : {};
                    raise({
                        components: [], ...finding, at: spanIn(entry, sentence.start + match.index, match[0].length),
                        message: `“${match[0].trim().replace(/\s+/g, ' ')}” is said here, and ${listed(against.map(nameOf))} did not. Both cannot be true; name the exception, or correct the fact.`,
                        related: against.map(component => ({ message: `${component.id}: ${worksText(component)}`, span: worksSpan(component) })),
                    });
                }
            }
        }
    }
}

/** Words that leave some of them out. */
const exception = /\b(?:but|except(?:ing|ion|ions)?|apart from|aside from|other than|save|bar|excluding)\b/iu;
/** Words in the claim itself that say of which it speaks. */
const bounded = /\b(?:that|which|those)\b/iu;

/** All seacocks worked; the seacocks all worked; none of the seacocks was seized. */
function claimsOn(group: RegExp): RegExp[] {
    return [
        String.raw`\b(?:all|every|each)\b(?: (?:of|the|her|other|[\p{L}-]+)){0,3}? ${group.source}\b[^.;,]*?\b${worked.source}\b`,
        String.raw`\b${group.source}\b(?: (?:were|was|are))? all\b[^.;,]*?\b${worked.source}\b`,
        String.raw`\b(?:none of(?: the| her)?|no)(?: [\p{L}-]+){0,2}? ${group.source}\b[^.;,]*?\b(?:seized|stuck|stiff|failed|frozen|defective|inoperative)\b`,
    ].map(source => spaced(new RegExp(source, 'iu')));
}

/** Words that speak for a whole group. */
const ofAll = /\b(?:all|every|each|none|no)\b/iu;

/** The groups with the claims that may be made of them. */
const claimable = universals.map(({ group, belied }) => ({ patterns: claimsOn(group), belied }));

const worksFact = (component: Component) => component.facts.get('works') ?? component.facts.get('condition') ?? component.facts.get('spins');
const worksText = (component: Component): string => worksFact(component)?.written ?? '';
const worksSpan = (component: Component): Span => worksFact(component)?.span ?? component.idSpan;
