/** An electrical part that may spark where gasoline vapor gathers, or a battery in line with a fuel fitting. */
import { anyValue, flagOf, isKind, nameOf, ofKind, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { vesselFuel } from '../fuel/fuel-system.js';

export const sparkInGasolineSpace = defineCheck({
    id: 'spark-in-gasoline-space',
    group: 'ventilation',
    severity: 'error',
    title: 'Electrical part may spark in a gasoline space',
    why: 'One spark in gasoline vapor is an explosion.',
    needs: [
        'electrical part: ignition-space, ignition-protected, isolated-by', 'or machinery-space: unmarked-parts, gasoline',
        'fuel-tank, fuel-filter or fuel-valve: in-line-with-battery', 'vessel, engine or fuel-tank: fuel, for the last two',
    ],
    computes: 'A fault where a part in a space with a gasoline engine, tank or fuel fitting bears no mark of ignition protection and no bulkhead, deck or enclosure, or 2 ft of open air parts it from the gasoline; or where a battery stands straight above or below a gasoline tank, filter or fitting.',
    sources: [
        { text: 'ignition protection, and what isolates', standard: '33 CFR 183', clause: '183.410', provenance: 'published' },
        { text: 'batteries not above or below fuel tank, filter or fitting', standard: '33 CFR 183', clause: '183.420', provenance: 'published' },
    ],
    limits: [
        'The rule binds builders of boats with gasoline engines other than outboards; on a boat in service it is good practice.',
        'The rule asks that a part does not ignite vapor; the mark is how that is told. A part without a mark may still pass a test.',
        'A part that stands in a space with gasoline is taken as not parted from it, unless isolated-by says so.',
        'Where a part bears no mark and its space is not recorded, the space is asked for, on a boat with gasoline inboard; a blower is taken as drawing the vapor, for that is what it is for.',
        'Whether a bulkhead is tight as the rule asks is the surveyor’s judgement.',
        'Parts whose kind takes no mark are named under unmarked-parts of their space.',
    ],
    examples: [{
        name: 'bilge pump without the mark',
        bad: `vessel "Marram" { fuel: gasoline }
bilge-pump BP1 { ignition-space: yes  ignition-protected: no }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
bilge-pump BP1 { ignition-space: yes  ignition-protected: yes }
`,
        correction: 'Record that BP1 bears the mark',
    }, {
        name: 'charger in the engine space',
        bad: `vessel "Marram" { fuel: gasoline }
charger CH1
machinery-space S1 { gasoline: yes  unmarked-parts: CH1 }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
charger CH1
machinery-space S1 { gasoline: yes }
`,
    }, {
        name: 'battery under the fuel filter',
        bad: `vessel "Marram" { fuel: gasoline }
battery B1
fuel-filter FF1 { in-line-with-battery: B1 }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
battery B1
fuel-filter FF1
`,
    }],
    silent: [
        { name: 'parted by a bulkhead', text: 'vessel "Marram" { fuel: gasoline }\nelectrical-part P1 { ignition-space: yes  ignition-protected: no  isolated-by: bulkhead }\n' },
        { name: 'not in a space with gasoline', text: 'vessel "Marram" { fuel: gasoline }\nbilge-pump BP1 { ignition-space: no  ignition-protected: no }\n' },
        { name: 'charger in the engine space of a diesel boat', text: 'vessel "Marram" { fuel: diesel }\ncharger CH1\nmachinery-space S1 { unmarked-parts: CH1 }\n' },
        { name: 'battery under the filter of a diesel boat', text: 'vessel "Marram" { fuel: diesel }\nbattery B1\nfuel-filter FF1 { in-line-with-battery: B1 }\n' },
    ],
    run(record, raise) {
        for (const problem of [...partsInSpaces(record), ...partsUnplaced(record), ...partsListed(record), ...batteriesInLine(record)]) {
            raise(problem);
        }
    },
});

/** Parts that themselves say that they stand in a space with gasoline. */
function partsInSpaces(record: SurveyRecord): readonly Raised[] {
    return [...record.components.values()].flatMap(part => {
        const isMarked = flagOf(part, 'ignition-protected');
        const isolated = wordOf(part, 'isolated-by');
        // Of a battery no mark is looked for: it is judged by how it stands and is held.
        if (flagOf(part, 'ignition-space') !== true || isMarked === true || (isolated !== undefined && isolated !== 'none') || part.kind === 'battery') {
            return [];
        }
        return [isMarked === undefined ? hint(part, `${nameOf(part)} stands in a space with gasoline; record whether it bears a mark of ignition protection (ignition-protected).`)
            : unmarked(part, part, 'ignition-protected', true)];
    });
}

/** Parts without the mark whose space is not recorded, where gasoline is inside the boat. */
function partsUnplaced(record: SurveyRecord): readonly Raised[] {
    const engines = ofKind(record, 'engine');
    const isOutside = engines.length > 0 && engines.every(engine => isKind(record, engine, 'outboard'));
    if (vesselFuel(record) !== 'gasoline' || isOutside) {
        return [];
    }
    return [...record.components.values()].filter(part => flagOf(part, 'ignition-protected') === false && !part.facts.has('ignition-space') && !part.facts.has('isolated-by') && !isListed(record, part))
        .map(part => (isKind(record, part, 'blower') ? unmarked(part, part, 'ignition-protected', true)
            : { ...hint(part, `${nameOf(part)} bears no mark of ignition protection; record whether it stands in a space with gasoline (ignition-space).`), at: part.facts.get('ignition-protected')?.span ?? part.idSpan }));
}

function isListed(record: SurveyRecord, part: Component): boolean {
    return ofKind(record, 'machinery-space').some(space => space.facts.get('unmarked-parts')?.values.some(value => value.type === 'component' && value.id === part.id) ?? false);
}

/** Parts that a space with gasoline names as unmarked. */
function partsListed(record: SurveyRecord): readonly Raised[] {
    return ofKind(record, 'machinery-space').flatMap(space => {
        const fuel = vesselFuel(record);
        const isGasoline = flagOf(space, 'gasoline') ?? (fuel === undefined ? undefined : fuel === 'gasoline');
        const parts = (space.facts.get('unmarked-parts')?.values ?? []).flatMap(value => (value.type === 'component' ? record.components.get(value.id) ?? [] : []));
        const [first] = parts;
        if (isGasoline === undefined && first) {
            return [hint(space, `Record whether gasoline is in ${nameOf(space)}, for ${nameOf(first)} in it bears no mark of ignition protection.`)];
        }
        return isGasoline ? parts.filter(part => flagOf(part, 'ignition-protected') !== true).map(part => unmarked(part, space, 'unmarked-parts', false)) : [];
    });
}

function hint(part: Component, message: string): Raised {
    return { components: [part], at: part.facts.get('ignition-space')?.span ?? part.idSpan, severity: 'hint', message };
}

function unmarked(part: Component, on: Component, property: string, takesMark: boolean): Raised {
    const isBlower = part.kind === 'blower' && !part.facts.has('ignition-space');
    const stands = on !== part ? `stands in ${on.title ?? on.id}, with gasoline,` : isBlower ? 'draws the air of a space with gasoline' : 'stands in a space with gasoline';
    return {
        components: on === part ? [part] : [part, on],
        at: on.facts.get(property)?.span ?? on.idSpan,
        message: `${nameOf(part)} ${stands} and bears no mark of ignition protection${isBlower ? '' : ', nor does anything part it from the gasoline'} (good practice per 33 CFR 183.410). A spark in vapor is an explosion; renew it with a protected part, or move it.`,
        corrections: takesMark ? [{ kind: 'set-fact', title: `Record that ${part.id} bears the mark`, component: part, property: 'ignition-protected', value: 'yes' }] : [],
        draft: {
            title: `${nameOf(part)} may spark in a gasoline space`,
            urgency: 'at-once',
            seen: `${nameOf(part)} ${stands} and bears no mark of ignition protection${isBlower ? '' : '; no bulkhead, deck or 2 ft of open air parts it from the gasoline'}.`,
            because: 'Gasoline vapor that gathers there may be lit by a spark of it, and explodes.',
            recommend: `Leave the current of ${part.id} off until it is renewed with a part marked as ignition-protected, or moved out of the space.`,
            cites: [['33 CFR 183', '183.410']],
        },
    };
}

/** Batteries straight above or below a gasoline tank, filter or valve. */
function batteriesInLine(record: SurveyRecord): readonly Raised[] {
    return [...ofKind(record, 'fuel-tank'), ...ofKind(record, 'fuel-filter'), ...ofKind(record, 'fuel-valve')].flatMap(part => {
        const named = anyValue(part, 'in-line-with-battery');
        const battery = named?.type === 'component' ? record.components.get(named.id) : undefined;
        const fuel = wordOf(part, 'fuel') ?? vesselFuel(record);
        if (!battery || (fuel !== undefined && fuel !== 'gasoline')) {
            return [];
        }
        return [fuel === undefined ? hint(part, `Battery ${battery.id} stands straight above or below ${nameOf(part)}; record the fuel of the vessel, for with gasoline it must not.`) : inLine(part, battery)];
    });
}

function inLine(part: Component, battery: Component): Raised {
    return {
        components: [battery, part],
        at: part.facts.get('in-line-with-battery')?.span ?? part.idSpan,
        message: `${nameOf(battery)} stands straight above or below ${nameOf(part)}, which holds gasoline (good practice per 33 CFR 183.420). Fuel or a tool that drops on its posts lights what leaks; move the battery.`,
        related: [{ message: `The battery, ${battery.id}`, span: battery.idSpan }],
        draft: {
            title: `${nameOf(battery)} stands in line with ${nameOf(part)}`,
            urgency: 'at-once',
            seen: `${nameOf(battery)} stands straight above or below ${nameOf(part)}, which holds gasoline.`,
            because: 'A spark at the battery, or fuel or a tool that drops on its posts, may light fuel that leaks.',
            recommend: `Move ${battery.id} so that it stands neither above nor below ${part.id}.`,
            cites: [['33 CFR 183', '183.420']],
        },
    };
}
