/** A navigation light that is dead or hidden, or lights that give a wrong message together. */
import { greatestMaskedRad } from '../../trade/navigation-lights.js';
import { nameOf, ofKind, valueOf, valuesOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, lengthBoth, listed } from '../phrasing.js';
import { adding, lengthByTheRulesM } from './gear.js';

type Light = Component<'navigation-light'>;
type Mode = 'sail' | 'engine' | 'anchor';

/** Length under which an all-round light may stand for masthead and stern light (rule 23). */
const allRoundUnderM = 12;

export const lightOutOrContradictory = defineCheck({
    id: 'light-out-or-contradictory',
    group: 'safety',
    severity: 'error',
    title: 'Navigation light is out, hidden or contradicts another',
    why: 'The lights tell others what she is and how she heads; a wrong message is worse than none.',
    needs: ['navigation-light: light, works', 'all-round light: masked', 'navigation-light: shines (the modes it is switched on in)', 'vessel: length-overall or length-on-deck'],
    computes: 'A fault where a light does not work; where more than 6 degrees of an all-round light are hidden (the anchor light excepted); where a tricolor lantern is on together with side or stern lights, or under engine; where a masthead light is on under sail alone; and where lights are on under engine and no masthead light (under 12 m an all-round light will do).',
    sources: [
        { text: 'arc that masts and gear may hide', standard: 'Rules of the road', clause: 'Annex I', provenance: 'secondary' },
        { text: 'lights under engine', standard: 'Rules of the road', clause: 'Rule 23', provenance: 'memory' },
        { text: 'lights under sail, tricolor lantern', standard: 'Rules of the road', clause: 'Rule 25', provenance: 'memory' },
    ],
    limits: [
        'Which lights are on together is judged only where shines is recorded of them; that a motor craft has no masthead light, also where the survey says so (absent "Masthead light").',
        'A light that was not tried is not judged.',
        'Lights for towing, fishing and vessels hampered are not judged.',
    ],
    examples: [{
        name: 'dead stern light',
        bad: 'navigation-light NL1 "Stern light" { light: stern  works: no }\n',
        fixed: 'navigation-light NL1 "Stern light" { light: stern  works: yes }\n',
    }, {
        name: 'all-round light hidden over 20 degrees',
        bad: 'navigation-light NL1 { light: all-round  masked: 20 deg }\n',
        fixed: 'navigation-light NL1 { light: all-round  masked: 5 deg }\n',
    }, {
        name: 'tricolor lantern with the side lights',
        bad: `navigation-light NL1 { light: tricolor  shines: sail }
navigation-light NL2 { light: sides-combined  shines: sail, engine }
navigation-light NL3 { light: masthead  shines: engine }
`,
        fixed: `navigation-light NL1 { light: tricolor  shines: sail }
navigation-light NL2 { light: sides-combined  shines: engine }
navigation-light NL3 { light: masthead  shines: engine }
`,
        correction: 'Record NL2 as on under engine only',
    }, {
        name: 'under engine without a masthead light',
        bad: `vessel "Marram" { length-overall: 42 ft }
navigation-light NL1 { light: sides-combined  shines: engine }
navigation-light NL2 { light: stern  shines: engine }
`,
        fixed: `vessel "Marram" { length-overall: 42 ft }
navigation-light NL1 { light: sides-combined  shines: engine }
navigation-light NL2 { light: stern  shines: engine }
navigation-light NL3 { light: masthead  shines: engine }
`,
        correction: 'Add a masthead light',
    }],
    silent: [
        { name: 'anchor light hidden over 20 degrees', text: 'navigation-light NL1 { light: anchor  masked: 20 deg }\n' },
        { name: 'just 6 degrees hidden', text: 'navigation-light NL1 { light: all-round  masked: 6 deg }\n' },
        { name: 'not tried', text: 'navigation-light NL1 { light: stern  works: not-tried }\n' },
        { name: 'tricolor lantern and side lights, switched apart', text: 'navigation-light NL1 { light: tricolor  shines: sail }\nnavigation-light NL2 { light: sides-combined  shines: engine }\nnavigation-light NL3 { light: masthead  shines: engine }\n' },
        { name: 'all-round light under engine at 30 ft', text: 'vessel "Marram" { length-overall: 30 ft }\nnavigation-light NL1 { light: sides-combined  shines: engine }\nnavigation-light NL2 { light: all-round  shines: engine, anchor }\n' },
        { name: 'modes not recorded', text: 'navigation-light NL1 { light: tricolor }\nnavigation-light NL2 { light: sides-combined }\n' },
    ],
    run(record, raise) {
        const lights = ofKind(record, 'navigation-light');
        for (const light of lights) {
            const dead = deadOrHidden(light);
            if (dead) {
                raise(dead);
            }
        }
        judgeTricolor(lights, raise);
        judgeMastheadUnderSail(lights, raise);
        judgeEngine(record, lights, raise);
        judgeNoMasthead(record, lights, raise);
    },
});

/** Kinds of craft that go under engine alone. */
const motorTypes: ReadonlySet<string> = new Set(['motor-yacht', 'gasoline-cruiser', 'aluminum-workboat', 'houseboat', 'rigid-inflatable']);

/** A masthead light that the survey says she has not, on a craft that goes under engine alone. */
function judgeNoMasthead(record: SurveyRecord, lights: readonly Light[], raise: (problem: Raised) => void): void {
    const said = record.unseen.find(({ absent, what }) => absent && /\b(masthead|steaming)[ -]?lights?\b/i.test(what));
    const isMotor = record.vessel !== undefined && motorTypes.has(wordOf(record.vessel, 'type') ?? '') && wordOf(record.vessel, 'fuel') !== 'none';
    const length = lengthByTheRulesM(record);
    const hasAllRound = lights.some(light => kindOf(light) === 'all-round');
    if (!said || !isMotor || lights.some(light => kindOf(light) === 'masthead' || shinesIn(light, 'engine')) || (hasAllRound && (!length || length.m < allRoundUnderM - 1e-9))) {
        return;
    }
    raise({
        components: [...lights], at: said.span,
        message: 'She has no masthead light, and goes under engine. She is read as a vessel under sail; fit a masthead light that is on with the side and stern lights.',
        corrections: [adding(record, lights.at(-1), 'Add a masthead light', 'navigation-light', 'NL', [['light', 'masthead'], ['shines', 'engine']])],
        draft: {
            title: 'No masthead light', urgency: 'before-departure',
            seen: 'No masthead light is fitted.',
            because: 'Without one she is read as a vessel under sail when she goes under engine.',
            recommend: 'Fit a masthead light that is on with the side and stern lights before she is under way at night.',
            cites: [['Rules of the road', 'Rule 23']],
        },
    });
}

const kindOf = (light: Light) => wordOf(light, 'light');
const modesOf = (light: Light): Mode[] => valuesOf(light, 'shines').map(value => value.word);
const shinesIn = (light: Light, mode: Mode) => modesOf(light).includes(mode);

const modeText: Readonly<Record<Mode, string>> = { sail: 'under sail', engine: 'under engine', anchor: 'at anchor' };

function deadOrHidden(light: Light): Raised | undefined {
    const masked = valueOf(light, 'masked');
    const isHidden = kindOf(light) === 'all-round' && masked !== undefined && masked.si > greatestMaskedRad + 1e-9;
    if (wordOf(light, 'works') === 'no') {
        return {
            components: [light], at: light.facts.get('works')?.span ?? light.idSpan,
            message: `${nameOf(light)} does not work. Without it her lights tell another vessel a wrong story; renew the lamp or mend its circuit.`,
            draft: {
                title: `${light.title ?? `Navigation light ${light.id}`} does not work`, urgency: 'before-departure',
                seen: `${nameOf(light)} did not light.`,
                because: 'With a light missing she is not seen in time, or read as another vessel.',
                recommend: `Renew the lamp of ${light.id} or mend its circuit, and try it, before she is under way at night.`,
                cites: [['Rules of the road', 'Rule 20']],
            },
        };
    }
    return isHidden ? {
        components: [light], at: light.facts.get('masked')?.span ?? light.idSpan,
        message: `${both(masked)} of ${nameOf(light)} are hidden by spars or gear, where 6 degrees are allowed. From there she is not seen; move the light or clear its view.`,
        figures: { hidden: { value: masked.si * 180 / Math.PI, unit: 'deg' }, most: { value: 6, unit: 'deg' } },
        draft: {
            title: `${light.title ?? `All-round light ${light.id}`} is hidden over too wide an arc`, urgency: 'before-departure',
            seen: `{${light.id}.masked} of all-round light ${light.id} are hidden by spars or gear.`,
            because: 'No more than 6 degrees of an all-round light may be hidden; from there she is not seen.',
            recommend: `Move light ${light.id}, or clear what hides it, so that no more than 6 degrees are hidden.`,
            cites: [['Rules of the road', 'Annex I']],
        },
    } : undefined;
}

/** A set of lights that together give a wrong message. */
function contradiction(first: Light, others: readonly Light[], says: string, because: string, recommend: string, rule: string, corrections: readonly Correction[]): Raised {
    return {
        components: [first, ...others], at: first.facts.get('shines')?.span ?? first.idSpan,
        message: `${says}. ${because}; ${recommend.charAt(0).toLowerCase()}${recommend.slice(1)}.`,
        related: others.flatMap(other => {
            const fact = other.facts.get('shines');
            return fact ? [{ message: 'Switched on with it', span: fact.span }] : [];
        }),
        corrections,
        draft: { title: 'Navigation lights contradict each other', urgency: 'before-departure', seen: `${says}.`, because: `${because}.`, recommend: `${recommend} before she is under way at night.`, cites: [['Rules of the road', rule]] },
    };
}

/** Modes of a light without some, where any is left. */
function without(light: Light, dropped: readonly Mode[]): Correction[] {
    const left = modesOf(light).filter(mode => !dropped.includes(mode));
    return left.length === 0 ? [] : [{ kind: 'set-fact', title: `Record ${light.id} as on ${listed(left.map(mode => modeText[mode]))} only`, component: light, property: 'shines', value: left.join(', ') }];
}

function judgeTricolor(lights: readonly Light[], raise: (problem: Raised) => void): void {
    for (const tricolor of lights.filter(light => kindOf(light) === 'tricolor')) {
        const shared = modesOf(tricolor).filter(mode => mode !== 'anchor');
        const deck = lights.filter(light => ['side-port', 'side-starboard', 'sides-combined', 'stern'].includes(kindOf(light) ?? '') && shared.some(mode => shinesIn(light, mode)));
        if (deck.length > 0) {
            const modes = shared.filter(mode => deck.some(light => shinesIn(light, mode)));
            const says = `Tricolor lantern ${tricolor.id} is on together with ${listed(deck.map(light => light.id))} ${listed(modes.map(mode => modeText[mode]))}`;
            raise(contradiction(tricolor, deck, says, 'Side lights seen twice may be read as two vessels', 'Separate their switches so that one or the other is on', 'Rule 25', [...deck.flatMap(light => without(light, modes)), ...without(tricolor, modes)]));
        } else if (shinesIn(tricolor, 'engine')) {
            raise(contradiction(tricolor, [], `Tricolor lantern ${tricolor.id} is on under engine`, 'It tells of a vessel under sail alone, which others keep clear of', 'Use the side and stern lights on deck with the masthead light when the engine runs', 'Rule 25', without(tricolor, ['engine'])));
        }
    }
}

function judgeMastheadUnderSail(lights: readonly Light[], raise: (problem: Raised) => void): void {
    for (const light of lights.filter(one => kindOf(one) === 'masthead' && shinesIn(one, 'sail'))) {
        raise(contradiction(light, [], `Masthead light ${light.id} is on under sail alone`, 'It tells of a vessel under engine', 'Separate its switch so that it is on under engine only', 'Rule 25', without(light, ['sail'])));
    }
}

function judgeEngine(record: SurveyRecord, lights: readonly Light[], raise: (problem: Raised) => void): void {
    const on = lights.filter(light => shinesIn(light, 'engine') && kindOf(light) !== 'tricolor');
    const [first] = on;
    const at = first?.facts.get('shines')?.span;
    if (!first || !at || on.some(light => kindOf(light) === 'masthead')) {
        return;
    }
    const open = lights.find(light => kindOf(light) === 'masthead' && !light.facts.has('shines'));
    const length = lengthByTheRulesM(record);
    const allRound = on.some(light => kindOf(light) === 'all-round');
    if (open) {
        raise({ components: [open], at: open.idSpan, severity: 'hint', message: `Record in which modes ${nameOf(open)} is switched on (shines), to tell whether she shows a masthead light under engine.` });
    } else if (allRound && !length) {
        raise({ components: [first], at, severity: 'hint', message: 'Under engine an all-round light is on and no masthead light; record the length of the vessel, for that will do under 12 m only.' });
    } else if (!allRound || (length && length.m >= allRoundUnderM - 1e-9)) {
        const says = `Under engine ${listed(on.map(light => light.id))} ${on.length === 1 ? 'is' : 'are'} on, and no masthead light${allRound && length ? ` at ${lengthBoth(length.m)}` : ''}`;
        raise(contradiction(first, on.slice(1), says, 'She is read as a vessel under sail', 'Fit a masthead light that is on with them', 'Rule 23', [adding(record, on.at(-1), 'Add a masthead light', 'navigation-light', 'NL', [['light', 'masthead'], ['shines', 'engine']])]));
    }
}
