/** A gasoline engine inside the boat whose intake has nothing to stop the flame of a backfire. */
import { flagOf, isKind, nameOf, ofKind, siOf, valueOf, wordOf, type Component, type DateFigure, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { vesselFuel } from '../fuel/fuel-system.js';
import { firstDay, lastDay } from '../hoses/age.js';
import { isSaidAbsent } from '../safety/gear.js';

const rule = '46 CFR 25.35-1';

export const flameControlMissing = defineCheck({
    id: 'flame-control-missing',
    group: 'ventilation',
    severity: 'error',
    title: 'Gasoline engine has no backfire flame control',
    why: 'A backfire through an open intake lights the vapor round the engine.',
    needs: ['engine: flame-arrester, flame-arrester-mark, fuel, fitted', 'or carburetor: flame-arrester', 'or an absent entry for the flame arrester', 'vessel: fuel, where the engine’s is not recorded'],
    computes: 'A fault where a gasoline engine other than an outboard, installed after 25 April 1940, has no flame arrester, or one that bears no mark.',
    sources: [{ text: 'backfire flame control on each gasoline engine but outboards, installed after 25 April 1940', standard: '46 CFR 25', clause: '25.35-1', provenance: 'published' }],
    limits: [
        'The rule holds in the United States; elsewhere it is a yardstick.',
        'An engine that carries no date is taken as installed after 1940, unless she was built before.',
        'What a mark says is not judged, only whether one is recorded as missing. Whether the arrester is clean and tight is the surveyor’s to see.',
        'Where nothing is recorded of it, it is asked for.',
    ],
    examples: [{
        name: 'inboard without a flame arrester',
        bad: `vessel "Marram" { length-overall: 27 ft  fuel: gasoline }
main-engine E1 { fuel: gasoline  flame-arrester: no }
`,
        fixed: `vessel "Marram" { length-overall: 27 ft  fuel: gasoline }
main-engine E1 { fuel: gasoline  flame-arrester: yes }
`,
        correction: 'Record a flame arrester on E1',
    }, {
        name: 'arrester without a mark',
        bad: `vessel "Marram" { fuel: gasoline }
main-engine E1 { flame-arrester: yes  flame-arrester-mark: "none" }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
main-engine E1 { flame-arrester: yes  flame-arrester-mark: "SAE J-1928" }
`,
    }, {
        name: 'bare carburetor',
        bad: `vessel "Marram" { fuel: gasoline }
main-engine E1
carburetor CB1 { flame-arrester: no }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
main-engine E1
carburetor CB1 { flame-arrester: yes }
`,
    }],
    silent: [
        { name: 'outboard', text: 'vessel "Marram" { length-overall: 27 ft  fuel: gasoline }\noutboard OB1 { fuel: gasoline  flame-arrester: no }\n' },
        { name: 'diesel', text: 'vessel "Marram" { fuel: diesel }\nmain-engine E1 { fuel: diesel  flame-arrester: no }\n' },
        { name: 'engine installed before the rule', text: 'vessel "Marram" { fuel: gasoline }\nmain-engine E1 { fuel: gasoline  flame-arrester: no  fitted: 1938 }\n' },
        { name: 'diesel engine of a boat with a gasoline outboard', text: 'vessel "Marram" { fuel: diesel }\nmain-engine E1 { fuel: diesel }\noutboard OB1 { fuel: gasoline }\n' },
    ],
    run(record, raise) {
        const engines = ofKind(record, 'engine').filter(engine => !isKind(record, engine, 'outboard'));
        const gasoline = engines.filter(engine => (wordOf(engine, 'fuel') ?? vesselFuel(record)) === 'gasoline');
        for (const engine of gasoline) {
            const problem = judge(record, engine, carburetorsOf(record, engine, gasoline.length === 1));
            if (problem) {
                raise(problem);
            }
        }
        if (ofKind(record, 'engine').length === 0 && vesselFuel(record) === 'gasoline') {
            for (const carburetor of ofKind(record, 'carburetor').filter(part => flagOf(part, 'flame-arrester') === false)) {
                raise(fault(carburetor, carburetor, 'none'));
            }
        }
    },
});

const ruleSince = Date.UTC(1940, 3, 25);

/** Words of an absent entry that mean flame control. */
const controlWords = /flame\s?-?\s?(arrest|control)|backfire/i;

/** Words for a mark that was looked for and not found. */
const noMark = /^\W*(none|no mark(ing)?s?|unmarked|not marked)\b/i;

/** Carburetors that serve an engine or lie in a run with it; all of them where she has one such engine. */
function carburetorsOf(record: SurveyRecord, engine: Component, isOnly: boolean): readonly Component[] {
    return ofKind(record, 'carburetor').filter(part => isOnly || valueOf(part, 'serves')?.id === engine.id
        || record.runs.some(run => run.components.includes(part) && run.components.includes(engine)));
}

/** Whether the engine was installed after the rule came in; undefined where that is not told. */
function isUnderRule(record: SurveyRecord, engine: Component<'engine'>): boolean | undefined {
    const within = (date: DateFigure) => (firstDay(date) > ruleSince ? true : lastDay(date) <= ruleSince ? false : undefined);
    const [fitted, made] = [valueOf(engine, 'fitted')?.figure, valueOf(engine, 'made')?.figure];
    if (fitted) {
        return within(fitted);
    }
    // An engine made before may have been installed after.
    const built = record.vessel && siOf(record.vessel, 'built');
    return made ? within(made) || undefined : built === undefined || built > 1940 ? true : undefined;
}

type Control = 'fitted' | 'none' | 'unmarked' | undefined;

function controlOf(record: SurveyRecord, engine: Component<'engine'>, carburetors: readonly Component[]): { readonly control: Control; readonly on: Component } {
    const [bare] = carburetors.filter(part => flagOf(part, 'flame-arrester') === false);
    const isFitted = flagOf(engine, 'flame-arrester');
    if (isFitted === false || bare) {
        return { control: 'none', on: isFitted === false ? engine : bare ?? engine };
    }
    if (noMark.test(valueOf(engine, 'flame-arrester-mark')?.prose.text ?? '')) {
        return { control: 'unmarked', on: engine };
    }
    const isSeen = isFitted === true || engine.facts.has('flame-arrester-mark') || (carburetors.length > 0 && carburetors.every(part => flagOf(part, 'flame-arrester') === true));
    return { control: isSeen ? 'fitted' : isSaidAbsent(record, controlWords) ? 'none' : undefined, on: engine };
}

function judge(record: SurveyRecord, engine: Component<'engine'>, carburetors: readonly Component[]): Raised | undefined {
    const isBound = isUnderRule(record, engine);
    const { control, on } = controlOf(record, engine, carburetors);
    if (control === 'fitted' || isBound === false) {
        return undefined;
    }
    const hint = (message: string): Raised => ({ components: [engine], at: on.facts.get('flame-arrester')?.span ?? engine.idSpan, severity: 'hint', message });
    if (control === undefined) {
        return hint(`${nameOf(engine)} burns gasoline; record whether backfire flame control is fitted to its intake (flame-arrester).`);
    }
    return isBound ? fault(engine, on, control) : hint(`${nameOf(engine)} has no marked backfire flame control; record when it was installed (fitted), for the rule binds engines installed after 25 April 1940.`);
}

function fault(engine: Component, on: Component, control: 'none' | 'unmarked'): Raised {
    const isUnmarked = control === 'unmarked';
    const property = isUnmarked ? 'flame-arrester-mark' : 'flame-arrester';
    const name = on === engine ? nameOf(engine) : `${nameOf(engine)}, at ${nameOf(on)},`;
    const why = 'A backfire through the intake lights the vapor round the engine';
    const fit = 'a flame arrester that is marked SAE J-1928, UL 1111 or with an approval number';
    return {
        components: on === engine ? [engine] : [engine, on],
        at: on.facts.get(property)?.span ?? engine.idSpan,
        message: `${name} ${isUnmarked ? 'has a flame arrester that bears no mark' : 'has no backfire flame control'}, which ${rule} asks of a gasoline engine inside the boat. ${why}; fit ${fit}.`,
        corrections: isUnmarked ? [] : [{ kind: 'set-fact', title: `Record a flame arrester on ${on.id}`, component: on, property: 'flame-arrester', value: 'yes' }],
        draft: {
            title: `${nameOf(engine)} has no ${isUnmarked ? 'marked ' : ''}backfire flame control`,
            urgency: 'before-use',
            seen: isUnmarked ? `The flame arrester on the intake of ${nameOf(engine)} bears no mark.` : `No flame arrester is fitted to the intake of ${name.replace(/,$/, '')}.`,
            because: `A gasoline engine other than an outboard, installed after 25 April 1940, is to have backfire flame control, by ${rule}. ${why}.`,
            recommend: `Do not start ${engine.id} until ${fit} is fitted to its intake.`,
            cites: [['46 CFR 25', '25.35-1']],
        },
    };
}
