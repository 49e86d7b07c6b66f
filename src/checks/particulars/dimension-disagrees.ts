/** Dimensions that contradict each other: as recorded, as mentioned in prose, and in the conversion behind a figure. */
import { formatQuantity, units, type QuantityFigure } from '../../quantities/index.js';
import { beamShareBounds, dimensionsDiffer, draftShareMost, exceeds, waterlineShareLeast } from '../../trade/plausible-particulars.js';
import { siOf, valueOf, type Quantity, type Span, type SurveyRecord, type Vessel } from '../../record/model.js';
import { componentsOf, proseOf, spanIn, type ProseEntry } from '../../record/prose-entries.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, capital, computedBoth } from '../phrasing.js';
import { conversionsIn, isConversionRight, type Conversion } from './conversions.js';
import { inOtherUnits, isMultihull, isPower } from './craft.js';
import { mentionsIn, type Dimensions, type Mention } from './mentions.js';

export const dimensionDisagrees = defineCheck({
    id: 'dimension-disagrees',
    group: 'particulars',
    severity: 'error',
    isOfReport: true,
    title: 'Dimensions contradict each other',
    why: 'A contradiction on the first page costs the report its reader’s trust.',
    needs: ['vessel: length-overall, length-on-deck, length-waterline, beam, draft', 'hull-beam and hull-draft', 'prose that mentions them', 'any figure in prose with a conversion in parentheses'],
    computes: 'Waterline ≤ length of the hull ≤ length over all; the draft of a power vessel ≤ her beam; what the hull has ≤ what the vessel has. Two mentions of one dimension differ where they are more than the larger of 0.5 % and 20 mm apart. A conversion agrees within 0.6 of the last digit written (at most a quarter), half a percent, or what the zeros of a round figure hide. Advice where the beam is under 0.09 or over 0.7 of the length (multihull 1.05), the draft over 0.4, the waterline under half.',
    sources: [
        { text: 'one length cannot exceed another that contains it; conversions', provenance: 'computed' },
        { text: 'draft over beam on a power vessel; beam 0.2 to 0.6 of the length, of a multihull 0.8', provenance: 'practice' },
        { text: '0.5 % and 20 mm; the wider bounds of proportion; how far a rounded conversion may be off', provenance: 'chosen' },
        { text: 'terms of length', standard: 'ISO 8666', provenance: 'memory' },
    ],
    limits: [
        'In prose only mentions that name her are read, in sentences of plain statement: what papers or listings state, another state of loading, board or drive, and sizes of berths are left alone.',
        'A length that is not named may be any of those recorded; where it is none, or where those recorded differ, it is asked to be named.',
        'Nominal sizes of hose pair as equal, such as 2 in (50 mm). A figure in parentheses with other words beside it is no conversion.',
        'English only.',
    ],
    examples: [{
        name: 'waterline longer than the hull',
        bad: 'vessel "Marram" { length-on-deck: 38 ft 4 in  length-waterline: 39 ft }\n',
        fixed: 'vessel "Marram" { length-on-deck: 38 ft 4 in  length-waterline: 33 ft }\n',
    }, {
        name: 'length in meters that was measured in feet',
        bad: 'vessel "Marram" { length-overall: 12.2 m  length-on-deck: 28 m }\n',
        fixed: 'vessel "Marram" { length-overall: 12.2 m  length-on-deck: 28 ft }\n',
        correction: 'Write the length-on-deck as 28 ft',
    }, {
        name: 'power vessel deeper than wide',
        bad: 'vessel "Marram" { type: motor-yacht  beam: 1.2 m  draft: 3.85 m }\n',
        fixed: 'vessel "Marram" { type: motor-yacht  beam: 3.85 m  draft: 1.2 m }\n',
    }, {
        name: 'conversion in a note',
        bad: 'vessel "Marram" {\n    note "The plating of her keel was gauged at 5/32 in (5.0 mm)."\n}\n',
        fixed: 'vessel "Marram" {\n    note "The plating of her keel was gauged at 5/32 in (3.97 mm)."\n}\n',
        correction: 'Write 3.97 mm',
    }, {
        name: 'beam in a note',
        bad: 'vessel "Marram" { beam: 3.85 m\n    note "Her beam is 13 ft 8 in."\n}\n',
        fixed: 'vessel "Marram" { beam: 3.85 m\n    note "Her beam is 12 ft 8 in."\n}\n',
        correction: 'Refer to the recorded beam',
    }, {
        name: 'a length not named',
        bad: 'vessel "Marram" { length-overall: 40 ft  length-on-deck: 38 ft 4 in\n    note "Her length is 40 ft."\n}\n',
        fixed: 'vessel "Marram" { length-overall: 40 ft  length-on-deck: 38 ft 4 in\n    note "Her length overall is 40 ft."\n}\n',
        correction: 'Name it: length overall',
    }],
    silent: [
        { name: 'lengths in order', text: 'vessel "Marram" { type: sailing-yacht  length-overall: 40 ft  length-on-deck: 38 ft 4 in  length-waterline: 33 ft 6 in  beam: 3.85 m  draft: 5 ft 9 in }\n' },
        { name: 'the same hull length within 20 mm', text: 'vessel "Marram" { length-overall: 11.68 m  length-on-deck: 38 ft 4 in }\n' },
        { name: 'sailing yacht deeper than half her beam', text: 'vessel "Marram" { type: sailing-yacht  length-overall: 12 m  beam: 1.9 m  draft: 2 m }\n' },
        { name: 'catamaran', text: 'vessel "Marram" { type: catamaran  length-overall: 12 m  beam: 6.9 m  hull-beam: 1.6 m  draft: 1.1 m }\n' },
        { name: 'conversion that converts', text: 'vessel "Marram" {\n    note "The plating of her keel was gauged at 5/32 in (3.97 mm)."\n}\n' },
        { name: 'nominal sizes and rounded figures', text: 'vessel "Marram" {\n    note "A hose of 2 in (50 mm) and 24,000 lb (10,900 kg) and 60 F (15 C)."\n}\n' },
        { name: 'another figure in parentheses', text: 'vessel "Marram" {\n    note "The hose measured 1-1/2 in (32 mm at the pump)."\n}\n' },
        { name: 'beam in the other unit', text: 'vessel "Marram" { beam: 3.85 m\n    note "Her beam is 12 ft 8 in."\n}\n' },
        { name: 'what the listing states', text: 'vessel "Marram" { beam: 3.85 m\n    note "The listing gives her beam as 13 ft 8 in."\n}\n' },
        { name: 'a beam of the deck', text: 'vessel "Marram" { beam: 3.85 m\n    note "The beam of 60 mm under the mast is sound."\n}\n' },
        { name: 'draft with the board down', text: 'vessel "Marram" { draft: 0.9 m\n    note "Her draft is 1.8 m with the board down."\n}\n' },
    ],
    run(record, raise) {
        const { vessel } = record;
        if (vessel) {
            judgeOrder(vessel, raise);
            judgePower(record, vessel, raise);
            judgeProportions(vessel, raise);
        }
        for (const entry of proseOf(record)) {
            conversionsIn(entry.said).filter(conversion => !isConversionRight(conversion)).forEach(conversion => raise(conversionProblem(entry, conversion)));
            if (vessel) {
                mentionsIn(entry).forEach(mention => judgeMention(vessel, entry, mention, raise));
            }
        }
    },
});

type Raise = (problem: Raised) => void;
type Recorded = Dimensions | 'hull-beam' | 'hull-draft';

/** What is part of what: the smaller first. */
const orders: readonly (readonly [part: Recorded, whole: Recorded])[] = [
    ['length-waterline', 'length-on-deck'], ['length-on-deck', 'length-overall'], ['length-waterline', 'length-overall'], ['hull-beam', 'beam'], ['hull-draft', 'draft'],
];

const facts = (vessel: Vessel, ...properties: readonly Recorded[]) => properties.flatMap(property => { const span = vessel.facts.get(property)?.span; return span ? [{ message: property, span }] : []; });

/** Readings of a dimension in another unit that a condition holds for. */
function readOtherwise(property: Recorded, quantity: Quantity, holds: (m: number) => boolean): Correction[] {
    return inOtherUnits(quantity, ['ft', 'm', 'in', 'cm']).filter(({ si }) => holds(si)).slice(0, 1)
        .map(({ text }) => ({ kind: 'set-vessel-fact', title: `Write the ${property} as ${text}`, property, value: text }));
}

function judgeOrder(vessel: Vessel, raise: Raise): void {
    for (const [part, whole] of orders) {
        const [a, b] = [valueOf(vessel, part), valueOf(vessel, whole)];
        const at = vessel.facts.get(part)?.span;
        // Where the length of the hull is recorded, it stands between the other two.
        if (!a || !b || !at || !exceeds(a.si, b.si) || (part === 'length-waterline' && whole === 'length-overall' && vessel.facts.has('length-on-deck'))) {
            continue;
        }
        const half = (m: number, of: number) => m > waterlineShareLeast * of && m <= of;
        raise({
            components: [], at, related: facts(vessel, whole),
            message: `${capital(part)} is ${both(a)}, more than ${whole}, ${both(b)}, of which it is a part. One of the two, its name or its unit is wrong; keep the one measured.`,
            figures: { [part]: { value: a.si, unit: 'm' }, [whole]: { value: b.si, unit: 'm' } },
            corrections: [...readOtherwise(part, a, m => half(m, b.si)), ...readOtherwise(whole, b, m => half(a.si, m))],
        });
    }
}

function judgePower(record: SurveyRecord, vessel: Vessel, raise: Raise): void {
    const [draft, beam] = [valueOf(vessel, 'draft'), valueOf(vessel, 'beam')];
    const at = vessel.facts.get('draft')?.span;
    if (!draft || !beam || !at || isMultihull(vessel) || !isPower(record, vessel) || !exceeds(draft.si, beam.si)) {
        return;
    }
    raise({
        components: [], at, related: facts(vessel, 'beam'),
        message: `Her draft is ${both(draft)} and her beam ${both(beam)}; no power vessel is deeper than she is wide. The two may be interchanged, or a unit is wrong; keep what was measured.`,
        figures: { draft: { value: draft.si, unit: 'm' }, beam: { value: beam.si, unit: 'm' } },
        corrections: [...readOtherwise('draft', draft, m => m < beam.si && m > 0.1 * beam.si), ...readOtherwise('beam', beam, m => m > draft.si && m < 5 * draft.si)],
    });
}

/** Proportions that no ordinary craft has: advice, for a figure may be right and odd. */
function judgeProportions(vessel: Vessel, raise: Raise): void {
    const lengthName = vessel.facts.has('length-on-deck') ? 'length-on-deck' : 'length-overall';
    const length = valueOf(vessel, lengthName);
    if (!length) {
        return;
    }
    const most = isMultihull(vessel) ? beamShareBounds.mostMultihull : beamShareBounds.most;
    const judge = (property: Recorded, least: number, greatest: number) => {
        const quantity = valueOf(vessel, property);
        const at = vessel.facts.get(property)?.span;
        const share = quantity ? quantity.si / length.si : undefined;
        if (quantity && at && share !== undefined && (share < least || share > greatest)) {
            raise({
                components: [], at, severity: 'warning', related: facts(vessel, lengthName),
                message: `${capital(property)} is ${both(quantity)}, ${Math.round(share * 100) / 100} of a length of ${both(length)}; ${share < least ? `${least} or more` : `at most ${greatest}`} is usual. A digit or a unit may be wrong; measure it again, or accept it and say why.`,
                figures: { share: { value: share, unit: 'of the length' } },
                corrections: readOtherwise(property, quantity, m => m / length.si >= least && m / length.si <= greatest),
            });
        }
    };
    judge('beam', beamShareBounds.least, most);
    judge('draft', 0, draftShareMost);
    judge('length-waterline', waterlineShareLeast, Number.POSITIVE_INFINITY);
}

const finding = (entry: ProseEntry) => entry.owner.type === 'finding' ? { finding: entry.owner.finding } : {};

function conversionProblem(entry: ProseEntry, { figure, conversion, index, length }: Conversion): Raised {
    const unit = units.get(conversion.unit);
    const right = convertedText(figure, conversion);
    return {
        components: componentsOf(entry), ...finding(entry), at: spanIn(entry, index, length),
        message: `${figure.written} is ${right}, not ${conversion.written}. A reader cannot tell which was measured; keep that one and convert it again.`,
        figures: { figure: { value: (figure.si - (unit?.offset ?? 0)) / (unit?.factor ?? 1), unit: conversion.unit }, conversion: { value: conversion.value, unit: conversion.unit } },
        corrections: entry.isWritten ? [{ kind: 'replace-text', title: `Write ${right}`, span: spanIn(entry, index, length), text: right }] : [],
    };
}

/** The figure in the unit of its conversion, to three digits, or as a length is written in that system. */
function convertedText({ si, low, high }: QuantityFigure, { unit, dimension }: QuantityFigure): string {
    const known = units.get(unit);
    if (!known || Number.isNaN(known.factor)) {
        return formatQuantity(si, dimension, 'metric');
    }
    const one = (value: number) => String(Number(((value - (known.offset ?? 0)) / known.factor).toPrecision(3)));
    return low !== undefined && high !== undefined ? `${one(low)} ${unit}..${one(high)} ${unit}` : `${one(si)} ${unit}`;
}

const lengths = ['length-overall', 'length-on-deck', 'length-waterline'] as const;
/** A boat is called by a round length, which may be so far off. */
const nominalShare = 0.06;
const spoken: Readonly<Record<(typeof lengths)[number], string>> = { 'length-overall': 'length overall', 'length-on-deck': 'length on deck', 'length-waterline': 'length at the waterline' };

function judgeMention(vessel: Vessel, entry: ProseEntry, mention: Mention, raise: Raise): void {
    const { property, figure, index, length } = mention;
    const at = spanIn(entry, index, length);
    if (property === undefined) {
        judgeUnnamed(vessel, entry, mention, at, raise);
        return;
    }
    const recorded = valueOf(vessel, property);
    if (recorded && dimensionsDiffer(recorded.si, figure.si)) {
        raise({
            components: componentsOf(entry), ...finding(entry), at, related: facts(vessel, property),
            message: `${figure.written} is given here, and ${property} is recorded as ${both(recorded)}, ${computedBoth(Math.abs(recorded.si - figure.si), 'length')} apart. Keep the one measured; a reference in braces cannot disagree.`,
            figures: { here: { value: figure.si, unit: 'm' }, recorded: { value: recorded.si, unit: 'm' } },
            corrections: entry.isWritten ? [{ kind: 'replace-text', title: `Refer to the recorded ${property}`, span: at, text: `{vessel.${property}}` }] : [],
        });
    }
}

/** A length that is not named: an error where it is none of hers, advice where hers differ. */
function judgeUnnamed(vessel: Vessel, entry: ProseEntry, { figure, wordAt, isNominal = false }: Mention, at: Span, raise: Raise): void {
    const known = lengths.filter(name => vessel.facts.has(name));
    const isLike = (m: number) => isNominal ? Math.abs(m - figure.si) <= nominalShare * m : !dimensionsDiffer(m, figure.si);
    const same = known.filter(name => isLike(siOf(vessel, name) ?? 0));
    const others = known.filter(name => !same.includes(name));
    if (known.length === 0 || (same.length > 0 && (others.length === 0 || !wordAt))) {
        return;
    }
    const [only] = same;
    raise({
        components: componentsOf(entry), ...finding(entry), at, related: facts(vessel, ...known), severity: only ? 'warning' : 'error',
        message: only
            ? `"Length" is not named here: ${figure.written} is her ${spoken[only]}, and ${others.map(name => spoken[name]).join(' and ')} differs. Fees and rules ask for one or the other; name it.`
            : `${figure.written} is given here as her length, and none of those recorded is so long. Keep the one measured, and name it.`,
        figures: { here: { value: figure.si, unit: 'm' } },
        corrections: only && wordAt && entry.isWritten ? [{ kind: 'replace-text', title: `Name it: ${spoken[only]}`, span: spanIn(entry, wordAt.index, wordAt.length), text: spoken[only] }] : [],
    });
}
