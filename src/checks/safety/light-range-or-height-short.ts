/** A navigation light of too short a range for her length, or a masthead light that stands too low. */
import { leastHeight, leastRangeNmi, type LightKind } from '../../trade/navigation-lights.js';
import { isKind, nameOf, ofKind, siOf, valueOf, wordOf, type Component, type Quantity, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, lengthBoth } from '../phrasing.js';
import { lengthByTheRulesM } from './gear.js';

const nauticalMileM = 1852;

type Light = Component<'navigation-light'>;
interface Length {
    readonly m: number;
    readonly property: string;
}

const kinds: Readonly<Record<string, LightKind>> = {
    masthead: 'masthead', 'side-port': 'side', 'side-starboard': 'side', 'sides-combined': 'side', stern: 'stern', towing: 'towing', 'all-round': 'all-round', anchor: 'all-round', tricolor: 'side',
};

export const lightRangeOrHeightShort = defineCheck({
    id: 'light-range-or-height-short',
    group: 'safety',
    severity: 'error',
    title: 'Navigation light is too weak or too low for her length',
    why: 'She is not seen in time, or read as another vessel.',
    needs: ['navigation-light: light, range', 'navigation-light: height, or above-sidelights', 'vessel: length-overall or length-on-deck', 'vessel: fuel, engines or an engine, for the height'],
    computes: 'Least range in nautical miles for masthead, side, stern and all-round: under 12 m 2, 1, 2, 2; to under 20 m 3, 2, 2, 2; to under 50 m 5, 2, 2, 2. Least height under engine: from 12 m to under 20 m the masthead light 2.5 m above the gunwale; under 12 m the masthead or all-round light 1 m above the side lights.',
    sources: [
        { text: 'ranges by length', standard: '33 CFR 83', clause: '83.22', provenance: 'published' },
        { text: 'ranges by length', standard: 'Rules of the road', clause: 'Rule 22', provenance: 'published' },
        { text: 'heights', standard: '33 CFR 84', clause: 'Annex I', provenance: 'memory' },
    ],
    limits: [
        'Length is the length overall, as the rules count it, or that of the hull where only this is recorded.',
        'A tricolor lantern is judged by its side sectors; its stern sector is to reach 2 miles in any vessel.',
        'Heights from 20 m on, and lights of vessels without an engine, are not judged for height.',
        'The height of a light counts from the gunwale; above-sidelights goes before the difference of two such heights.',
    ],
    examples: [{
        name: 'side light of 1 mile at 40 ft',
        bad: `vessel "Marram" { length-overall: 40 ft }
navigation-light NL1 { light: side-port  range: 1 nmi }
`,
        fixed: `vessel "Marram" { length-overall: 40 ft }
navigation-light NL1 { light: side-port  range: 2 nmi }
`,
    }, {
        name: 'masthead light 6 ft above the gunwale at 45 ft',
        bad: `vessel "Marram" { length-overall: 45 ft  fuel: diesel }
navigation-light NL1 { light: masthead  range: 3 nmi  height: 6 ft }
`,
        fixed: `vessel "Marram" { length-overall: 45 ft  fuel: diesel }
navigation-light NL1 { light: masthead  range: 3 nmi  height: 8.5 ft }
`,
    }, {
        name: 'masthead light level with the side lights at 30 ft',
        bad: `vessel "Marram" { length-overall: 30 ft  fuel: gasoline }
navigation-light NL1 { light: masthead  height: 1.5 m }
navigation-light NL2 { light: side-port  height: 1.2 m }
`,
        fixed: `vessel "Marram" { length-overall: 30 ft  fuel: gasoline }
navigation-light NL1 { light: masthead  height: 2.2 m }
navigation-light NL2 { light: side-port  height: 1.2 m }
`,
    }],
    silent: [
        { name: 'side light of 1 mile just under 12 m', text: 'vessel "Marram" { length-overall: 11.9 m }\nnavigation-light NL1 { light: side-port  range: 1 nmi }\n' },
        { name: 'masthead light 2.5 m above the gunwale at 12 m', text: 'vessel "Marram" { length-overall: 12 m  fuel: diesel }\nnavigation-light NL1 { light: masthead  range: 3 nmi  height: 2.5 m }\n' },
        { name: 'just 1 m above the side lights under 12 m', text: 'vessel "Marram" { length-overall: 30 ft  fuel: diesel }\nnavigation-light NL1 { light: masthead  above-sidelights: 1 m }\n' },
        { name: 'range not recorded', text: 'vessel "Marram" { length-overall: 45 ft }\nnavigation-light NL1 { light: masthead }\n' },
        { name: 'no engine', text: 'vessel "Marram" { length-overall: 30 ft  fuel: none }\nnavigation-light NL1 { light: all-round  above-sidelights: 0.5 m }\n' },
    ],
    run(record, raise) {
        const lights = ofKind(record, 'navigation-light');
        const length = lengthByTheRulesM(record);
        const ranged = lights.filter(light => light.facts.has('range') && light.facts.has('light'));
        if (!length) {
            const [first] = ranged;
            if (first && record.vessel) {
                raise({ components: ranged, at: first.facts.get('range')?.span ?? first.idSpan, severity: 'hint', message: 'Ranges of navigation lights are recorded; record the length of the vessel to tell whether they are enough.' });
            }
            return;
        }
        for (const light of ranged) {
            const range = valueOf(light, 'range');
            const kind = kinds[wordOf(light, 'light') ?? ''];
            const least = kind && leastRangeNmi(kind, length.m);
            if (range && least !== undefined && range.si / nauticalMileM < least - 1e-6) {
                raise(tooWeak(light, range, least, length));
            }
        }
        if (isUnderEngine(record, lights)) {
            judgeHeights(lights, length, raise);
        }
    },
});

/** Whether she has an engine to be driven by; a vessel recorded without one shows other lights. */
function isUnderEngine(record: SurveyRecord, lights: readonly Light[]): boolean {
    const { vessel } = record;
    const fuel = vessel && wordOf(vessel, 'fuel');
    // A masthead light is shown under engine alone.
    return fuel === 'none' ? false : fuel !== undefined || lights.some(light => wordOf(light, 'light') === 'masthead') || (vessel !== undefined && (siOf(vessel, 'engines') ?? 0) > 0) || ofKind(record, 'engine').some(engine => !isKind(record, engine, 'generator'));
}

const titles: Readonly<Record<string, string>> = {
    masthead: 'masthead light', 'side-port': 'port side light', 'side-starboard': 'starboard side light', 'sides-combined': 'combined side lights', stern: 'stern light', towing: 'towing light', 'all-round': 'all-round light', anchor: 'anchor light', tricolor: 'tricolor lantern',
};

const titleOf = (light: Light) => titles[wordOf(light, 'light') ?? ''] ?? 'navigation light';

function tooWeak(light: Light, range: Quantity, leastNmi: number, length: Length): Raised {
    return {
        components: [light],
        at: light.facts.get('range')?.span ?? light.idSpan,
        message: `${nameOf(light)}, a ${titleOf(light)}, has a range of ${both(range)}; at ${lengthBoth(length.m)} it is to be at least ${leastNmi} nmi. She is not seen in time; fit an approved lamp of that range.`,
        figures: { range: { value: range.si / nauticalMileM, unit: 'nmi' }, least: { value: leastNmi, unit: 'nmi' } },
        draft: {
            title: `Range of ${titleOf(light)} ${light.id} is too short`,
            urgency: 'before-departure',
            seen: `The ${titleOf(light)} ${light.id} has a range of {${light.id}.range}; she measures {vessel.${length.property}}.`,
            because: `At her length it is to be seen at ${leastNmi} nautical miles; with less she is not seen in time.`,
            recommend: `Fit an approved lamp of at least ${leastNmi} nautical miles at ${light.id} before she is under way at night.`,
            cites: [['33 CFR 83', '83.22'], ['Rules of the road', 'Rule 22']],
        },
    };
}

function judgeHeights(lights: readonly Light[], length: Length, raise: (problem: Raised) => void): void {
    const rule = leastHeight(length.m);
    if (!rule) {
        return;
    }
    // Under 12 m an all-round light may stand in for the masthead light; with a masthead light it has other uses.
    const mastheads = lights.filter(light => wordOf(light, 'light') === 'masthead');
    const judged = mastheads.length > 0 || rule.above === 'gunwale' ? mastheads : lights.filter(light => wordOf(light, 'light') === 'all-round');
    for (const light of judged) {
        const known = rule.above === 'gunwale' ? aboveGunwale(light) : aboveSides(light, lights);
        if (known && known.m < rule.leastM - 1e-6) {
            raise(tooLow(light, known, rule.above === 'gunwale' ? 'the gunwale' : 'the side lights', rule.leastM, length));
        }
    }
}

interface KnownHeight {
    readonly m: number;
    readonly property: 'height' | 'above-sidelights';
    readonly side?: Light;
}

function aboveGunwale(light: Light): KnownHeight | undefined {
    const m = siOf(light, 'height');
    return m === undefined ? undefined : { m, property: 'height' };
}

function aboveSides(light: Light, lights: readonly Light[]): KnownHeight | undefined {
    const stated = siOf(light, 'above-sidelights');
    if (stated !== undefined) {
        return { m: stated, property: 'above-sidelights' };
    }
    const own = siOf(light, 'height');
    const [highest] = lights.filter(other => kinds[wordOf(other, 'light') ?? ''] === 'side' && wordOf(other, 'light') !== 'tricolor' && other.facts.has('height')).sort((a, b) => (siOf(b, 'height') ?? 0) - (siOf(a, 'height') ?? 0));
    return own === undefined || !highest ? undefined : { m: own - (siOf(highest, 'height') ?? 0), property: 'height', side: highest };
}

function tooLow(light: Light, known: KnownHeight, above: string, leastM: number, length: Length): Raised {
    const where = known.m < 0 ? `${lengthBoth(-known.m)} below ${above}` : `${lengthBoth(known.m)} above ${above}`;
    const seen = known.side ? `stands {${light.id}.height} above the gunwale, and side light ${known.side.id} {${known.side.id}.height}` : `stands {${light.id}.${known.property}} above ${above}`;
    return {
        components: [light, ...(known.side ? [known.side] : [])],
        at: light.facts.get(known.property)?.span ?? light.idSpan,
        message: `${nameOf(light)}, a ${titleOf(light)}, stands ${where}; at ${lengthBoth(length.m)} it is to stand at least ${lengthBoth(leastM)} above. She may be read as another vessel; raise it.`,
        figures: { height: { value: known.m, unit: 'm' }, least: { value: leastM, unit: 'm' } },
        draft: {
            title: `The ${titleOf(light)} ${light.id} stands too low`,
            urgency: 'in-upkeep',
            seen: `The ${titleOf(light)} ${light.id} ${seen}; she measures {vessel.${length.property}}.`,
            because: `Under engine it is to stand at least ${lengthBoth(leastM)} above ${above}; lower, she may be read as another vessel.`,
            recommend: `Raise the ${titleOf(light)} ${light.id} to at least ${lengthBoth(leastM)} above ${above}.`,
            cites: [['33 CFR 84', 'Annex I']],
        },
    };
}
