/** Lifelines and rails that are low, whose posts stand too far apart, or whose bases move. */
import { leastHeightIn, leastLifelineM, smallBoatM, widestSpacingM } from '../../trade/lifelines.js';
import { units } from '../../quantities/index.js';
import { anyValue, flagOf, nameOf, ofKind, siOf, wordOf, type Component, type Quantity, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, lengthBoth, listed } from '../phrasing.js';
import { converted, inAnotherUnit } from '../other-unit.js';

const standard = 'ABYC H-41';

export const lifelineLowOrLoose = defineCheck({
    id: 'lifeline-low-or-loose',
    group: 'deck',
    severity: 'error',
    title: 'Lifelines are low or loose',
    why: 'A line at the knee, or a post that gives, sends a man over instead of holding him.',
    needs: ['lifeline, stanchion, guardrail: height, spacing', 'stanchion, guardrail: base-moves, backing', 'vessel: length-on-deck or length-overall, for boats under 8.5 m'],
    computes: 'Where fitted: a fault where a base moves under a push. Advice where the top is under 24 in (600 mm where written in metric; 450 mm on boats under 8.5 m), or posts stand over 2.2 m apart.',
    sources: [
        { text: '24 in', standard, provenance: 'memory' },
        { text: 'offshore racing rules: 600 mm (24 in), 2.2 m, and 450 mm under 8.5 m', provenance: 'secondary' },
        { text: 'a base that moves', provenance: 'practice' },
    ],
    limits: ['Both sources are voluntary on a pleasure boat; commercial craft are held to more (1 m), which is not judged.', 'Where lifelines give their height, that of the stanchions is not judged besides.', 'A boat with no lifelines is not told to have any.', 'How far a wire gives under a push is recorded, but nothing tells how far it may.'],
    examples: [{
        name: 'low',
        bad: 'lifeline LL1 "Lifelines" { height: 20 in }\n',
        fixed: 'lifeline LL1 "Lifelines" { height: 25 in }\n',
    }, {
        name: 'a base that moves',
        bad: 'stanchion STN1 "Stanchions, port" { height: 26 in  base-moves: yes  backing: none }\n',
        fixed: 'stanchion STN1 "Stanchions, port" { height: 26 in  base-moves: no  backing: none }\n',
    }, {
        name: 'posts too far apart',
        bad: 'stanchion STN1 { height: 620 mm  spacing: 2.6 m }\n',
        fixed: 'stanchion STN1 { height: 620 mm  spacing: 2.1 m }\n',
    }],
    silent: [
        { name: 'exactly 24 in', text: 'lifeline LL1 "Lifelines" { height: 24 in }\n' },
        { name: '600 mm, as racing rules read 24 in', text: 'lifeline LL1 { height: 600 mm }\n' },
        { name: 'low on a small boat', text: 'vessel "Marram" { length-on-deck: 7.9 m }\nlifeline LL1 "Lifelines" { height: 20 in }\n' },
        { name: 'posts at 2.2 m', text: 'stanchion STN1 { height: 620 mm  spacing: 2.2 m }\n' },
        { name: 'nothing measured', text: 'stanchion STN1\nlifeline LL1\n' },
    ],
    run(record, raise) {
        const lines = ofKind(record, 'lifeline');
        const haveHeight = lines.some(line => line.facts.has('height'));
        const haveSpacing = lines.some(line => line.facts.has('spacing'));
        for (const part of [...lines, ...ofKind(record, 'stanchion'), ...ofKind(record, 'guardrail')]) {
            const faults = faultsOf(record, part, part.kind === 'stanchion' && haveHeight, part.kind === 'stanchion' && haveSpacing);
            if (faults.length > 0) {
                raise(problem(part, faults));
            }
        }
    },
});

interface Fault {
    readonly kind: 'low' | 'wide' | 'moves';
    readonly fact: string;
    readonly says: string;
    readonly seen: string;
    readonly corrections: readonly Correction[];
    /** Least height that it was held against. */
    readonly leastM?: number;
}

function faultsOf(record: SurveyRecord, part: Component, skipsHeight: boolean, skipsSpacing: boolean): Fault[] {
    const height = skipsHeight ? undefined : anyValue(part, 'height');
    const spacing = skipsSpacing ? undefined : anyValue(part, 'spacing');
    return [...(flagOf(part, 'base-moves') === true ? [moves(part)] : []), ...(height?.type === 'quantity' ? low(record, part, height) : []), ...(spacing?.type === 'quantity' ? wide(part, spacing) : [])];
}

function moves(part: Component): Fault {
    const backing = wordOf(part, 'backing');
    const behind = backing === 'none' ? ', with nothing behind it' : backing === 'washers' ? ', backed by washers only' : '';
    return { kind: 'moves', fact: 'base-moves', says: `a base moves under a push${behind}`, seen: `a base moves under a push${behind}`, corrections: [] };
}

function low(record: SurveyRecord, part: Component, height: Quantity): Fault[] {
    const length = record.vessel && (siOf(record.vessel, 'length-on-deck') ?? siOf(record.vessel, 'length-overall'));
    const least = leastLifelineM(units.get(height.figure.unit)?.system === 'metric', length);
    return height.si >= least - 1e-6 ? [] : [{
        kind: 'low', fact: 'height', leastM: least, seen: `{${part.id}.height} above the deck`,
        says: `${both(height)} above the deck, under ${lengthBoth(least)}${length !== undefined && length < smallBoatM ? ', the least for a boat as short as she is' : ''}`,
        corrections: [...inAnotherUnit(part, 'height', height, m => m >= least - 1e-6 && m <= 1.2), ...converted(part, 'height', height)],
    }];
}

function wide(part: Component, spacing: Quantity): Fault[] {
    return spacing.si <= widestSpacingM + 1e-6 ? [] : [{
        kind: 'wide', fact: 'spacing', says: `posts ${both(spacing)} apart, over ${lengthBoth(widestSpacingM)}`, seen: `posts {${part.id}.spacing} apart`, corrections: [],
    }];
}

const recommendations: Readonly<Record<Fault['kind'], string>> = {
    moves: 'Back the base with a plate, bed it anew, and push it again.', low: 'Fit higher stanchions or rails.', wide: 'Add posts between.',
};

function problem(part: Component, faults: readonly Fault[]): Raised {
    const isLoose = faults.some(({ kind }) => kind === 'moves');
    const name = nameOf(part);
    return {
        components: [part], at: part.facts.get(faults[0]?.fact ?? '')?.span ?? part.idSpan,
        ...(isLoose ? {} : { severity: 'warning' as const }),
        message: `${name}: ${listed(faults.map(({ says }) => says))}. Who leans on it goes over; ${listed(faults.map(({ kind }) => kind === 'moves' ? 'back and bed the base anew' : kind === 'low' ? 'raise it' : 'add posts'))}.`,
        corrections: faults.flatMap(({ corrections }) => corrections),
        draft: {
            title: `${part.title ?? part.id}: ${isLoose ? 'a loose base' : faults.some(({ kind }) => kind === 'low') ? 'low' : 'posts too far apart'}`,
            urgency: isLoose ? 'before-departure' : 'in-upkeep',
            seen: `${part.title ? `${part.title} (${part.id})` : part.id}: ${listed(faults.map(({ seen }) => seen))}.`,
            because: isLoose ? 'A post that gives under a push will not hold a man thrown against it.' : `Good practice is a top wire at ${lengthBoth(faults.find(({ leastM }) => leastM !== undefined)?.leastM ?? leastHeightIn * 0.0254)} or higher, with posts no more than ${lengthBoth(widestSpacingM)} apart; who leans on less goes over.`,
            recommend: faults.map(({ kind }) => recommendations[kind]).join(' '),
            cites: [isLoose ? ['Good practice'] : [standard]],
        },
    };
}
