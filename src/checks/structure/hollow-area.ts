/** Patches that sound dull or hollow, against the panel they lie in. */
import { hollowShare, hollowStep, shareHollow, wideHollowShare } from '../../trade/percussion.js';
import { nameOf, ofKind, rowsOf, siOf, valuesOf, wordOf, type Component, type Reading, type Row, type Span, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { computedBoth, percent } from '../phrasing.js';

import type { SoundedRow } from './sounded.js';

const kinds = ['hull-shell', 'deck', 'transom'] as const;

export const hollowArea = defineCheck({
    id: 'hollow-area',
    group: 'structure',
    severity: 'error',
    title: 'Hollow area in a panel',
    why: 'Skins that have come off their core, or plies off each other, work loose further.',
    needs: ['hull-shell, deck, transom: hollow-area (each patch), panel-area, load-point', 'reading that measures percussion: sound and area of each row, panel or panel-area, load-point'],
    computes: 'share = sum of the patches that sound dull or hollow ÷ area of the panel. A fault over 5 %; more urgent over 25 %, or where mast, chainplate or engine bears on it.',
    sources: [{ text: '5 % and 25 % of the panel', provenance: 'practice' }, { text: 'sum of the patches over the panel', provenance: 'computed' }],
    limits: [
        'In a table with panel-area at its head all rows lie in that panel. Rows that give a panel of their own are summed where that panel is equal and their labels are alike up to the first comma.',
        'A small patch under a mast is not told by itself: the share decides that it is a fault, the load how urgent it is.',
        'A wet place that sounds dull is told by moisture-contrast too, where it was read.',
    ],
    examples: [{
        name: 'two patches of a foredeck',
        bad: 'deck DK1 "Foredeck" { panel-area: 4 m2  hollow-area: 0.2 m2, 0.1 m2 }\n',
        fixed: 'deck DK1 "Foredeck" { panel-area: 4 m2  hollow-area: 0.1 m2, 0.05 m2 }\n',
    }, {
        name: 'a map, under the mast',
        bad: `deck DK1 "Deck" { material: cored-grp }
reading M1 "Sounding, coachroof" on DK1 {
    measures: percussion
    row "Coachroof, port of the mast":      dull,   0.12 m2, 3 m2, mast
    row "Coachroof, starboard of the mast": hollow, 0.08 m2, 3 m2, mast
    row "Coachroof, aft":                   clear,  1 m2,    3 m2
}
`,
        fixed: `deck DK1 "Deck" { material: cored-grp }
reading M1 "Sounding, coachroof" on DK1 {
    measures: percussion
    row "Coachroof, port of the mast":      dull,   0.06 m2, 3 m2, mast
    row "Coachroof, starboard of the mast": hollow, 0.08 m2, 3 m2, mast
    row "Coachroof, aft":                   clear,  1 m2,    3 m2
}
`,
    }],
    silent: [
        { name: 'exactly five percent', text: 'deck DK1 "Foredeck" { panel-area: 4 m2  hollow-area: 0.1 m2, 0.1 m2 }\n' },
        { name: 'the same patches in a larger panel', text: 'deck DK1 "Foredeck" { panel-area: 6 m2  hollow-area: 0.2 m2, 0.1 m2 }\n' },
        { name: 'a wide area that sounds clear', text: 'deck DK1\nreading M1 on DK1 { measures: percussion  panel-area: 3 m2  row "Aft": clear, 2 m2 }\n' },
        { name: 'equal panels that are not one', text: 'deck DK1\nreading M1 on DK1 { measures: percussion  row "Port side deck": dull, 0.08 m2, 2 m2  row "Starboard side deck": dull, 0.08 m2, 2 m2 }\n' },
    ],
    run(record, raise) {
        for (const panel of panelsOf(record)) {
            const problem = judge(panel);
            if (problem) {
                raise(problem);
            }
        }
    },
});

interface Panel {
    readonly components: readonly Component[];
    /** How the place is called in a sentence. */
    readonly name: string;
    readonly patchesM2: readonly number[];
    readonly panelM2: number | undefined;
    readonly load: string | undefined;
    readonly at: Span;
    readonly reading?: Reading;
}

const bears = (load: string | undefined): load is string => load !== undefined && load !== 'none';

function panelsOf(record: SurveyRecord): Panel[] {
    const own = kinds.flatMap(kind => ofKind(record, kind).flatMap((component): Panel[] => {
        const patchesM2 = valuesOf<typeof kind, 'hollow-area'>(component, 'hollow-area').flatMap(value => value.type === 'quantity' ? [value.si] : []);
        return patchesM2.length === 0 ? [] : [{
            components: [component], name: nameOf(component), patchesM2, panelM2: siOf(component, 'panel-area'), load: wordOf(component, 'load-point'),
            at: component.facts.get('hollow-area')?.span ?? component.idSpan,
        }];
    }));
    return [...own, ...mapped(record)];
}

const stem = (label: string): string => (label.split(',')[0] ?? label).trim();

/** Panels of percussion maps: one for a table whose head gives its panel, else by the panel and label of the rows. */
function mapped(record: SurveyRecord): Panel[] {
    const groups = new Map<string, SoundedRow[]>();
    for (const sounded of rowsOf(record, 'percussion')) {
        const own = siOf(sounded.row, 'panel');
        const key = `${sounded.reading.id} ${own === undefined ? '' : `${own} ${stem(sounded.row.label).toLowerCase()}`}`;
        groups.set(key, [...groups.get(key) ?? [], sounded]);
    }
    return [...groups.values()].flatMap((rows): Panel[] => {
        const dull = rows.filter(({ row }) => wordOf(row, 'sound') === 'dull' || wordOf(row, 'sound') === 'hollow');
        const [first] = dull;
        const patchesM2 = dull.flatMap(({ row }) => siOf(row, 'area') ?? []);
        const { reading } = first ?? {};
        return first && reading && patchesM2.length > 0 ? [{
            components: reading.on, patchesM2, panelM2: siOf(first.row, 'panel') ?? siOf(reading, 'panel-area'), reading, at: first.row.span,
            load: dull.map(({ row }) => wordOf(row, 'load-point')).find(bears), name: mapName(reading, dull.map(({ row }) => row)),
        }] : [];
    });
}

/** What a map speaks of: its only dull row, the part it is on, or the stem of its labels. */
function mapName(reading: Reading, dull: readonly Row<'percussion-row'>[]): string {
    const [first, ...more] = dull;
    const [on, ...others] = reading.on;
    if (!first) {
        return reading.id;
    }
    if (siOf(first, 'panel') !== undefined) {
        return more.length === 0 ? first.label : stem(first.label);
    }
    return on && others.length === 0 ? nameOf(on) : more.length === 0 ? first.label : reading.title ?? reading.id;
}

function judge({ components, name, patchesM2, panelM2, load, at, reading }: Panel): Raised | undefined {
    const sum = patchesM2.reduce((total, patch) => total + patch, 0);
    const [component] = components;
    if (panelM2 === undefined) {
        return { components, at, severity: 'hint', message: `${name} sounds dull or hollow over ${computedBoth(sum, 'area')}; record the area of the panel (${reading ? 'panel, or panel-area of the table' : 'panel-area'}) to tell what share that is.` };
    }
    const share = shareHollow(patchesM2, panelM2);
    const step = share === undefined ? 'none' : hollowStep(share, bears(load));
    if (share === undefined || step === 'none') {
        return undefined;
    }
    const under = bears(load) ? `, where the ${load} bears` : '';
    const count = patchesM2.length === 1 ? 'one patch' : `${patchesM2.length} patches`;
    const why = step === 'urgent' && !bears(load) ? `over ${percent(wideHollowShare)}` : `over ${percent(hollowShare)}`;
    return {
        components, at,
        message: `${name} sounds dull or hollow in ${count} of ${computedBoth(sum, 'area')}${patchesM2.length > 1 ? ' together' : ''}, ${percent(share)} of its panel, ${why}${under}. The skins work loose further; open a sample, then inject or rebuild it.`,
        figures: { hollow: { value: Math.round(sum * 1e4) / 1e4, unit: 'm2' }, share: { value: Math.round(share * 1000) / 10, unit: '%' } },
        corrections: component && !reading && patchesM2.length > 1 ? [sumPatches(component, sum)] : [],
        draft: {
            title: `${reading ? name : component?.title ?? component?.id ?? name} sounds hollow`,
            urgency: step === 'urgent' ? 'before-departure' : 'next-haul-out',
            seen: reading || !component
                ? `By the sounding (${reading?.id ?? 'see the table'}), ${name} sounds dull or hollow in ${count}, ${percent(share)} of its panel${under}.`
                : `${component.title ?? 'The panel'} (${component.id}) sounds dull or hollow over {${component.id}.hollow-area} of a panel of {${component.id}.panel-area}, ${percent(share)} of it${under}.`,
            because: bears(load) ? `Skins that have parted carry no load between them, and the ${load} loads them here.` : 'Skins that have parted carry no load between them, and work loose further.',
            recommend: 'Open a sample to see what has parted, then inject it where it is dry, or rebuild it.',
            cites: [['Good practice']],
        },
    };
}

function sumPatches(component: Component, sumM2: number): Correction {
    return { kind: 'set-fact', title: 'Record the patches as their sum', component, property: 'hollow-area', value: `${Math.round(sumM2 * 1e4) / 1e4} m2`, isStep: true };
}
