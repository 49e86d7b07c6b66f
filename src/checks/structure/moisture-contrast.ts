/** Laminate that reads wet beside a dry reference, and moisture of laminate given in percent. */
import { contrastStep, isEarly, moistureRatio, type ContrastStep, type Sound } from '../../trade/moisture.js';
import { isKind, nameOf, ofKind, rowsOf, siOf, valuesOf, wordOf, yardstick, type Component, type Quantity, type Reading, type Row, type Span, type SurveyRecord, type Yardstick } from '../../record/model.js';
import { proseOf, spanIn } from '../../record/prose-entries.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { listed } from '../phrasing.js';
import { toTenth } from './figures.js';
import { areLaminate, isLaminate } from './laminate.js';
import { sentencesOf } from '../wording/sentences.js';
import { soundAt, soundOf } from './sounded.js';

const kinds = ['hull-shell', 'deck', 'transom'] as const;
/** What lies behind and makes a meter read wet where nothing is wrong. */
const misleads: ReadonlySet<string> = new Set(['tank', 'metal', 'wet-locker']);

export const moistureContrast = defineCheck({
    id: 'moisture-contrast',
    group: 'structure',
    severity: 'error',
    title: 'Moisture contrast in laminate',
    why: 'A wet core loses its bond; and a meter on laminate compares places, it gives no percent.',
    needs: [
        'hull-shell, deck, transom: moisture-reading, dry-reference, sounds, meter-behind',
        'reading that measures moisture: reference, its rows, behind, hours-since-lift, hours-since-wash; a percussion map with rows of the same labels',
        'hull-shell, deck, transom: moisture, for a percent sign',
    ],
    computes: 'ratio = highest reading ÷ dry reference by the same meter in the same mode. Over 2 and dull or hollow: a fault. Over 2 and clear: watched. Over 2 and not sounded: asked. Places before a tank, metal or a wet locker are left out; readings within 24 hours of lifting or washing are called early.',
    sources: [
        { text: 'readings on laminate are comparative, on a scale of the meter’s own', provenance: 'published' },
        { text: 'at least 24 hours ashore, surface clean', provenance: 'secondary' },
        { text: 'a ratio over 2', provenance: 'practice' },
    ],
    yardsticks: ['moisture-ratio'],
    limits: [
        'A ratio tells of no amount of water; paint, gelcoat, foil and carbon fool a meter too.',
        'Where it is not recorded what lies behind, the place is judged and the finding says to look there first.',
        'The dry reference must be of the same meter and mode, which is not verified.',
        'The rows of one table are reported together, by the highest reading of each. Of remarks and findings only moisture in percent is read, not readings and ratios.',
        'Wood is left to wood-too-wet; where it is not known what a part is built of, percent is asked about.',
    ],
    examples: [{
        name: 'wet and dull',
        bad: 'deck DK1 "Foredeck" { material: cored-grp  moisture-reading: 28  dry-reference: 12  sounds: dull  meter-behind: nothing }\n',
        fixed: 'deck DK1 "Foredeck" { material: cored-grp  moisture-reading: 14  dry-reference: 12  sounds: clear  meter-behind: nothing }\n',
    }, {
        name: 'a grid and the map of its sounding',
        bad: `hull-shell HULL1 "Hull shell" { material: cored-grp }
reading M1 "Moisture, bottom" on HULL1 {
    measures: moisture  reference: 12  mode: deep  hours-since-lift: 72 h
    row "Port bottom":      15, 18, 27, 26, 16
    row "Starboard bottom": 14, 16, 18, 17, 15
}
reading M2 "Sounding, bottom" on HULL1 {
    measures: percussion  panel-area: 9 m2
    row "Port bottom": dull, 0.2 m2
}
`,
        fixed: `hull-shell HULL1 "Hull shell" { material: cored-grp }
reading M1 "Moisture, bottom" on HULL1 {
    measures: moisture  reference: 12  mode: deep  hours-since-lift: 72 h
    row "Port bottom":      15, 18, 21, 20, 16
    row "Starboard bottom": 14, 16, 18, 17, 15
}
reading M2 "Sounding, bottom" on HULL1 {
    measures: percussion  panel-area: 9 m2
    row "Port bottom": dull, 0.2 m2
}
`,
    }, {
        name: 'percent of laminate',
        bad: 'hull-shell HULL1 { material: grp  moisture: "32 %" }\n',
        fixed: 'hull-shell HULL1 { material: grp  moisture: "32, on the scale of the meter" }\n',
        correction: 'Strike the percent sign',
    }],
    silent: [
        { name: 'equal to its dry reference, however high', text: 'deck DK1 { material: cored-grp  moisture-reading: 60  dry-reference: 60  sounds: dull  meter-behind: nothing }\n' },
        { name: 'the same reading against another reference', text: 'deck DK1 "Foredeck" { material: cored-grp  moisture-reading: 28  dry-reference: 14  sounds: dull  meter-behind: nothing }\n' },
        { name: 'a tank behind', text: 'hull-shell HULL1 { material: grp  moisture-reading: 40  dry-reference: 12  sounds: dull  meter-behind: tank }\n' },
        { name: 'a wet locker behind one row', text: 'hull-shell HULL1 { material: grp }\nreading M1 on HULL1 { measures: moisture  reference: 12  row "Port, frame 4": 30, 31, wet-locker  row "Port, frame 5": 12, 13 }\n' },
        { name: 'percent of a plank', text: 'plank PL1 { moisture: 18 % }\n' },
        { name: 'percent of a wooden hull', text: 'hull-shell HULL1 { material: mahogany  moisture: "18 %" }\n' },
        { name: 'a scale that says it is no percent', text: 'hull-shell HULL1 { material: grp }\nreading M1 on HULL1 { measures: moisture  reference: 12  scale: "0 to 100, not percent"  row "Port": 13, 14 }\n' },
    ],
    run(record, raise) {
        for (const kind of kinds) {
            for (const component of ofKind(record, kind)) {
                for (const problem of [inPercent(record, component), byFacts(record, component)]) {
                    if (problem) {
                        raise(problem);
                    }
                }
            }
        }
        for (const [reading, rows] of tablesOf(record)) {
            for (const problem of [tableInPercent(record, reading, rows), byTable(record, reading, rows)]) {
                if (problem) {
                    raise(problem);
                }
            }
        }
        proseInPercent(record, raise);
    },
});

interface Place {
    readonly label: string;
    readonly ratio: number;
    readonly sound: Sound | undefined;
    readonly step: ContrastStep;
    readonly at: Span;
}

function byFacts(record: SurveyRecord, component: Component): Raised | undefined {
    const reading = siOf(component, 'moisture-reading');
    const reference = siOf(component, 'dry-reference');
    const at = component.facts.get('moisture-reading')?.span ?? component.idSpan;
    if (reading === undefined || isLaminate(record, component) === false || misleads.has(wordOf(component, 'meter-behind') ?? '')) {
        return undefined;
    }
    if (reference === undefined) {
        return {
            components: [component], at, severity: 'hint',
            message: `${nameOf(component)} reads ${toTenth(reading)} on the scale of the meter; record its dry-reference, by the same meter in the same mode, to tell whether that is wet.`,
        };
    }
    const ratio = moistureRatio(reading, reference);
    const limit = yardstick(record, 'moisture-ratio');
    const sound = soundOf(wordOf(component, 'sounds'));
    if (ratio === undefined) {
        return undefined;
    }
    const place: Place = { label: nameOf(component), ratio, sound, step: contrastStep(ratio, sound, limit.si), at };
    return problem([component], [place], limit, {
        seen: `${component.title ?? nameOf(component)}${component.title ? ` (${component.id})` : ''} read {${component.id}.moisture-reading} on the scale of the meter, against {${component.id}.dry-reference} where it is known dry, and sounds {${component.id}.sounds}.`,
        isEarly: false, isBehindKnown: wordOf(component, 'meter-behind') === 'nothing', name: undefined,
    });
}

function tablesOf(record: SurveyRecord): ReadonlyMap<Reading, readonly Row<'moisture-row'>[]> {
    const tables = new Map<Reading, Row<'moisture-row'>[]>();
    for (const { reading, row } of rowsOf(record, 'moisture')) {
        tables.set(reading, [...tables.get(reading) ?? [], row]);
    }
    return tables;
}

const cellsOf = (row: Row<'moisture-row'>): Quantity[] => valuesOf(row, 'reading').flatMap(value => value.type === 'quantity' ? [value] : []);

const isShare = (cell: Quantity): boolean => cell.figure.dimension === 'fraction';

/** On the scale of the meter, percent signs left out. */
const highest = (row: Row<'moisture-row'>): number | undefined => {
    const scale = cellsOf(row).map(cell => isShare(cell) ? cell.si * 100 : cell.si);
    return scale.length === 0 ? undefined : Math.max(...scale);
};

function byTable(record: SurveyRecord, reading: Reading, rows: readonly Row<'moisture-row'>[]): Raised | undefined {
    if (areLaminate(record, reading.on) === false || misleads.has(wordOf(reading, 'behind') ?? '')) {
        return undefined;
    }
    const read = rows.filter(row => !misleads.has(wordOf(row, 'behind') ?? '')).flatMap(row => {
        const most = highest(row);
        return most === undefined ? [] : [{ row, most }];
    });
    const reference = siOf(reading, 'reference');
    if (reference === undefined) {
        return read.length === 0 || !isHullOrDeck(record, reading) ? undefined : lacksReference(reading, read);
    }
    const limit = yardstick(record, 'moisture-ratio');
    const places = read.flatMap(({ row, most }): Place[] => {
        const ratio = moistureRatio(most, reference);
        const sound = soundAt(record, reading.on, row.label) ?? reading.on.map(component => soundOf(wordOf(component, 'sounds'))).find(word => word !== undefined);
        return ratio === undefined ? [] : [{ label: row.label, ratio, sound, step: contrastStep(ratio, sound, limit.si), at: row.span }];
    });
    const early = isEarly(siOf(reading, 'hours-since-lift'), siOf(reading, 'hours-since-wash'));
    return problem(reading.on, places, limit, {
        isEarly: early, isBehindKnown: rows.every(row => (wordOf(row, 'behind') ?? wordOf(reading, 'behind')) === 'nothing'), name: `${reading.title ?? 'Moisture'} (${reading.id})`,
    });
}

/** Whether a table speaks of laminate, or of a part that mostly is of it. */
function isHullOrDeck(record: SurveyRecord, reading: Reading): boolean {
    return areLaminate(record, reading.on) === true || reading.on.some(component => kinds.some(kind => isKind(record, component, kind)));
}

function lacksReference(reading: Reading, read: readonly { readonly row: Row; readonly most: number }[]): Raised {
    const measures = reading.facts.get('measures');
    const dryest = [...read].sort((a, b) => a.most - b.most)[0];
    const topsides = read.filter(({ row }) => /topside/i.test(row.label));
    const choices = topsides.length > 0 ? topsides : dryest ? [dryest] : [];
    return {
        components: reading.on, at: measures?.span ?? reading.idSpan, severity: 'hint',
        message: `${reading.title ?? 'Moisture'} (${reading.id}) has no reference; record the reading of a place known dry, by the same meter in the same mode, for readings on laminate only compare.`,
        corrections: measures ? choices.map(({ row, most }): Correction => ({
            kind: 'replace-text', title: `Take ${row.label} as the dry reference (${toTenth(most)})`, span: { ...measures.span, start: measures.span.end }, text: `  reference: ${toTenth(most)}`,
        })) : [],
    };
}

interface About {
    /** How the readings are put in a drafted finding, where facts can be referred to. */
    readonly seen?: string;
    readonly isEarly: boolean;
    readonly isBehindKnown: boolean;
    /** The table, nothing for a component by its own facts. */
    readonly name: string | undefined;
}

const inWords = ({ label, ratio, sound }: Place): string => `${label} reads ${toTenth(ratio)} times its dry reference and sounds ${sound ?? 'as not tried'}`;

function problem(components: readonly Component[], places: readonly Place[], limit: Yardstick, about: About): Raised | undefined {
    const faults = places.filter(({ step }) => step === 'fault');
    const told = [...faults, ...places.filter(({ step }) => step === 'watch')];
    const [first] = told;
    if (!first) {
        return unsounded(components, places.filter(({ step }) => step === 'unsounded'), about);
    }
    const isFault = faults.length > 0;
    const early = about.isEarly ? ' The readings are early: she had been lifted or washed within 24 hours.' : '';
    const where = about.name ? ` at ${listed(told.slice(0, 3).map(({ label }) => label))}` : '';
    const look = about.isBehindKnown ? '' : 'Look first for a tank, metal or water behind. ';
    return {
        components, at: first.at,
        ...(isFault ? {} : { severity: 'warning' as const }),
        message: `${about.name ? `${about.name}: ` : ''}${told.map(inWords).join('; ')}, against ${limit.whose} of ${limit.written} times.${early} `
            + (isFault ? `A wet core loses its bond; ${about.isBehindKnown ? '' : 'make sure that nothing wet or of metal lies behind, then '}open a sample, dry it out and rebuild what has parted.` : 'It sounds clear, so that the bond still holds; measure again at the same points at the next haul-out.'),
        figures: { ratio: { value: Math.round(first.ratio * 100) / 100, unit: '' }, limit: { value: limit.si, unit: '' } },
        draft: {
            title: `${isFault ? 'Wet laminate that sounds dull' : 'Higher moisture readings'}${where || ` in ${components[0]?.title ?? components[0]?.id ?? 'the hull'}`}`,
            urgency: isFault ? 'next-haul-out' : 'keep-watch',
            seen: `${about.seen ?? `On the scale of the meter, ${told.map(inWords).join('; ')}.`}${early}`,
            because: isFault ? 'Readings compare places and prove no amount of water; with a dull sound they are consistent with a wet core that is losing its bond.' : 'Readings compare places and prove no amount of water; the place sounds clear, so that the bond still holds.',
            recommend: look + (isFault ? 'Open a sample to see the laminate and core, dry out what is wet, and rebuild what has parted.' : 'Measure again at the same points, with the same meter and mode, at the next haul-out.'),
            cites: [['Good practice']],
        },
    };
}

function unsounded(components: readonly Component[], places: readonly Place[], about: About): Raised | undefined {
    const [first] = places;
    return first && {
        components, at: first.at, severity: 'hint',
        message: `${about.name ? `${about.name}: ` : ''}${listed(places.map(({ label, ratio }) => `${label} reads ${toTenth(ratio)} times its dry reference`))}; record how it sounds there${about.name ? ' in a percussion map with rows of the same labels' : ''}, to tell a fault from a matter to watch.`,
    };
}

/** Says of moisture that it is a percentage: "32 %", "about 20 percent". */
const percentSign = /\d\s*(?:%|per ?cent\b)/i;

const percentMessage = (name: string) => `${name}: moisture of laminate is given in percent. The meter reads on a scale of its own there and proves no percentage by weight; strike the percent sign, and name the meter and its scale.`;

const percentDraft = (seen: string): Raised['draft'] => ({
    title: 'Moisture of laminate is given in percent', urgency: 'note-only', seen,
    because: 'On laminate a meter reads on a scale of its own; a percentage promises what was not measured.',
    recommend: 'Read the figures as comparative, on the scale of the meter named.', cites: [['Good practice']],
});

function inPercent(record: SurveyRecord, component: Component): Raised | undefined {
    const fact = component.facts.get('moisture');
    if (!fact || !percentSign.test(fact.written)) {
        return undefined;
    }
    const laminate = isLaminate(record, component);
    if (laminate !== true) {
        return laminate === false ? undefined : {
            components: [component], at: fact.span, severity: 'hint',
            message: `${nameOf(component)} gives moisture in percent, which is proper of wood only; record its material, or strike the percent sign.`,
        };
    }
    return {
        components: [component], at: fact.span, message: percentMessage(nameOf(component)),
        corrections: [{ kind: 'set-fact', title: 'Strike the percent sign', component, property: 'moisture', value: fact.written.replace(/\s*(?:%|\bper ?cent\b)/gi, '') }],
        draft: percentDraft(`Of ${component.title ?? component.id} the record gives moisture as {${component.id}.moisture}.`),
    };
}

/** A moisture in percent; and what else in its sentence may be what the percent is of. */
const moistureWord = /\bmoisture\b/iu;
const ofSomethingElse = /\b(?:wood(?:en)?|plywood|timber|plank\p{L}*|frames?|beams?|bulkheads?|teak|oak|mahogany|cedar|air|humidity|relative|scale|higher|lower|of the (?:readings|places|area|bottom|panel|points)|not (?:a )?per ?cent)\b/iu;

/** Prose on laminate that gives its moisture in percent: "moisture readings of 18 % to 32 % in the bottom". */
function proseInPercent(record: SurveyRecord, raise: (problem: Raised) => void): void {
    for (const entry of proseOf(record)) {
        const { owner, property } = entry;
        const on = owner.type === 'component' ? [owner.component] : owner.type === 'finding' ? owner.finding.on : [];
        const speaksOf = on.filter(part => kinds.some(kind => isKind(record, part, kind)));
        const isOfHull = owner.type === 'vessel' || owner.type === 'survey';
        if (property === 'moisture' || (!isOfHull && speaksOf.length === 0) || areLaminate(record, speaksOf) !== true) {
            continue;
        }
        for (const { said, raw, start } of sentencesOf(entry)) {
            const sign = /\d\s*(?:%|per ?cent\b)/iu.exec(raw);
            if (sign && moistureWord.test(said) && !ofSomethingElse.test(said)) {
                const name = speaksOf[0] ? nameOf(speaksOf[0]) : 'The vessel';
                raise({
                    components: speaksOf, ...(owner.type === 'finding' ? { finding: owner.finding } : {}), at: spanIn(entry, start + sign.index, sign[0].length),
                    message: percentMessage(name), draft: percentDraft(`In words the record gives moisture of ${speaksOf[0]?.title ?? speaksOf[0]?.id ?? 'the hull'} in percent.`),
                });
                break;
            }
        }
    }
}

function tableInPercent(record: SurveyRecord, reading: Reading, rows: readonly Row<'moisture-row'>[]): Raised | undefined {
    const signed = rows.filter(row => cellsOf(row).some(isShare));
    const scale = reading.facts.get('scale');
    const isScaleSigned = scale !== undefined && /%|\bper ?cent\b/i.test(scale.written) && !/\b(?:not?|never)\b/i.test(scale.written);
    const [first] = signed;
    const at = first?.span ?? scale?.span;
    if (areLaminate(record, reading.on) !== true || !at || (!first && !isScaleSigned)) {
        return undefined;
    }
    return {
        components: reading.on, at, message: percentMessage(`${reading.title ?? 'Moisture'} (${reading.id})`),
        corrections: signed.flatMap(strikeInRow),
        draft: percentDraft(`Table ${reading.id} gives moisture of laminate in percent.`),
    };
}

function strikeInRow(row: Row<'moisture-row'>): Correction[] {
    const fact = row.facts.get('reading');
    // Only where the readings stand side by side, so that one stretch of text holds them and nothing else.
    const isPlain = row.cells.every(({ column, value }) => column !== 'reading' || value !== undefined);
    return fact && isPlain ? [{
        kind: 'replace-text', title: `Strike the percent signs of ${row.label}`, span: fact.span, text: cellsOf(row).map(({ figure }) => figure.written.replace(/\s*%/, '')).join(', '),
    }] : [];
}
