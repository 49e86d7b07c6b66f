/** What sounding told, panel by panel: a bar as long as the panel, hatched where it sounds dull or hollow, and every place by its letter. */
import { siOf, wordOf, type Reading, type Row } from '../../record/model.js';
import { shareHollow } from '../../trade/percussion.js';
import { computedBoth, percent } from '../../checks/phrasing.js';
import type { ReportContext } from '../context.js';
import { html, nothing, type Html } from '../html.js';
import { computedText, counted, figureText, wordText } from '../wording.js';
import { box, called, drawing, figure, hatched, legend, letter, pageHeight, plated, shortened, swatchHeight, swatchWidth, textWidth, type Hatch } from './drawing.js';

const width = 400;
const margin = 8;
const barHeight = 24;
const rowHeight = 17;

/** Sounds as they are drawn: hatching and letter. A word of the firm's own gets no hatching. */
const signs: Readonly<Record<string, { readonly hatch: Hatch; readonly sign: string }>> = {
    hollow: { hatch: 'crossed', sign: 'H' }, dull: { hatch: 'dense', sign: 'D' }, clear: { hatch: 'none', sign: 'C' },
};
const order = ['hollow', 'dull', 'clear'];

export interface SoundedPanel {
    readonly name: string;
    readonly panelM2: number | undefined;
    readonly rows: readonly Row[];
}

/** Rows by the panel they lie in: that of the table, or their own where it is equal and their labels are alike up to the first comma. */
export function panelsOf(reading: Reading): readonly SoundedPanel[] {
    const whole = siOf(reading, 'panel-area');
    const panels = new Map<string, { name: string; panelM2: number | undefined; rows: Row[] }>();
    for (const row of reading.rows) {
        const own = siOf(row, 'panel');
        const name = (row.label.split(',')[0] ?? '').trim() || row.label;
        const key = own === undefined && whole !== undefined ? 'whole' : `${name}\n${own ?? ''}`;
        const panel = panels.get(key) ?? { name: key === 'whole' ? called(reading) : name, panelM2: own ?? whole, rows: [] };
        panel.rows.push(row);
        panels.set(key, panel);
    }
    return [...panels.values()];
}

const areaOf = (row: Row) => siOf(row, 'area');

/** Share of a panel that sounds dull or hollow; undefined where panel or areas are not recorded. */
export function shareOf({ panelM2, rows }: SoundedPanel): number | undefined {
    const patches = rows.filter(row => ['dull', 'hollow'].includes(wordOf(row, 'sound') ?? ''));
    const areas = patches.flatMap(row => areaOf(row) ?? []);
    return panelM2 === undefined || areas.length < patches.length ? undefined : shareHollow(areas, panelM2);
}

export function percussionMap(_: ReportContext, reading: Reading, id: string): Html {
    const sounded = reading.rows.filter(row => wordOf(row, 'sound') !== undefined);
    if (sounded.length === 0) {
        return nothing;
    }
    const panels = panelsOf(reading);
    const title = `${called(reading)}, as a map`;
    const worst = panels.reduce<{ panel: SoundedPanel; share: number } | undefined>((most, panel) => {
        const share = shareOf(panel);
        return share === undefined || most && most.share >= share ? most : { panel, share };
    }, undefined);
    const count = (sound: string) => sounded.filter(row => wordOf(row, 'sound') === sound).length;
    const description = `${counted(sounded.length, 'place')} sounded: ${[...order, ...new Set(sounded.flatMap(row => wordOf(row, 'sound') ?? []).filter(sound => !order.includes(sound)))].filter(sound => count(sound) > 0).map(sound => `${count(sound)} ${wordText(sound)}`).join(', ')}.${worst === undefined ? ''
        : worst.share === 0 ? ' No part of a panel sounds dull or hollow.' : ` The largest share that sounds dull or hollow is ${percent(worst.share)}, of ${worst.panel.name}.`}`;
    const drawings: SoundedPanel[][] = [[]];
    let filled = 0;
    for (const panel of panels.flatMap(split)) {
        const height = heightOf(panel);
        if (filled > 0 && filled + height > pageHeight - 60) {
            drawings.push([]);
            filled = 0;
        }
        drawings.at(-1)?.push(panel);
        filled += height;
    }
    return figure(`${title}. Each bar is as long as its panel.`, drawings.map((some, index) => draw(
        `${id}-map-${index + 1}`, drawings.length === 1 ? title : `${title}, part ${index + 1} of ${drawings.length}`, index === 0 ? description : `Continued: ${some[0]?.name ?? ''} to ${some.at(-1)?.name ?? ''}.`, some)));
}

const mostRows = 40;
/** A panel of very many rows over several drawings; its later parts carry no bar, since their share is told with the first. */
function split(panel: SoundedPanel): (SoundedPanel & { readonly listed?: readonly Row[] })[] {
    return panel.rows.length <= mostRows ? [panel] : Array.from({ length: Math.ceil(panel.rows.length / mostRows) }, (_, i) => {
        const listed = panel.rows.slice(i * mostRows, (i + 1) * mostRows);
        return i === 0 ? { ...panel, listed } : { name: `${panel.name}, continued`, panelM2: undefined, rows: listed };
    });
}

const listedOf = (panel: SoundedPanel & { readonly listed?: readonly Row[] }) => panel.listed ?? panel.rows;
const heightOf = (panel: SoundedPanel) => 20 + (panel.panelM2 === undefined ? 0 : barHeight + 6) + listedOf(panel).length * rowHeight + 12;

function draw(id: string, title: string, description: string, panels: readonly SoundedPanel[]): Html {
    let y = 4;
    const parts: Html[] = [];
    let hasRest = false;
    for (const panel of panels) {
        const share = shareOf(panel);
        const says = panel.panelM2 === undefined ? '' : `${share === undefined ? '' : `${percent(share)} dull or hollow of `}${computedText(computedBoth(panel.panelM2, 'area'))}`;
        parts.push(letter(margin, y + 13, shortened(panel.name, width - 2 * margin - (says === '' ? 0 : textWidth(says) + 10), 12, true), { size: 12, isBold: true }), says === '' ? nothing : letter(width - margin, y + 13, shortened(says, width - 100), { anchor: 'end' }));
        y += 20;
        if (panel.panelM2 !== undefined && panel.panelM2 > 0) {
            const bar = drawBar(panel, panel.panelM2, y);
            parts.push(bar.body);
            hasRest ||= bar.hasRest;
            y += barHeight + 6;
        }
        for (const row of listedOf(panel)) {
            const sound = wordOf(row, 'sound');
            const area = row.facts.get('area')?.values[0];
            const says = [sound === undefined ? 'not sounded' : wordText(sound), ...area?.type === 'quantity' ? [figureText(area.figure)] : sound === undefined || sound === 'clear' ? [] : ['extent not recorded']].join(', ');
            parts.push(swatch(margin, y + 1, sound), letter(margin + swatchWidth + 6, y + 11.5, shortened(row.label, 170)), letter(width - margin, y + 11.5, shortened(says, width - 2 * margin - swatchWidth - 184), { anchor: 'end' }));
            y += rowHeight;
        }
        y += 12;
    }
    const items = legend([
        ...order.map(sound => ({ text: `${signs[sound]?.sign ?? ''}: ${sound}`, swatch: (x: number, top: number) => hatched(x, top, swatchWidth, swatchHeight, signs[sound]?.hatch ?? 'none') })),
        ...hasRest ? [{ text: 'no sound recorded', swatch: (x: number, top: number) => box(x, top, swatchWidth, swatchHeight, { dash: '3 2' }) }] : [],
    ], margin, y, width - 2 * margin);
    parts.push(items.body);
    return drawing({ id, title, description, width, height: y + items.height + 4, body: html`${parts}` });
}

function swatch(x: number, y: number, sound: string | undefined): Html {
    const sign = signs[sound ?? ''];
    return html`${sign ? hatched(x, y, swatchWidth, swatchHeight, sign.hatch) : box(x, y, swatchWidth, swatchHeight, { dash: '3 2' })}${plated(x + swatchWidth / 2, y + 10.5, sign?.sign ?? '?', 10, true)}`;
}

/** The panel with its patches side by side, the gravest first; what is over is told in words. */
function drawBar({ rows }: SoundedPanel, panelM2: number, y: number): { readonly body: Html; readonly hasRest: boolean } {
    const full = width - 2 * margin;
    const told = order.map(sound => ({ sound, areaM2: rows.filter(row => wordOf(row, 'sound') === sound).reduce((sum, row) => sum + Math.max(0, areaOf(row) ?? 0), 0) })).filter(({ areaM2 }) => areaM2 > 0);
    const sum = told.reduce((total, { areaM2 }) => total + areaM2, 0);
    const scale = full / Math.max(panelM2, sum);
    let x = margin;
    const body = told.map(({ sound, areaM2 }) => {
        const wide = areaM2 * scale;
        const part = html`${hatched(x, y, wide, barHeight, signs[sound]?.hatch ?? 'none')}${wide > 16 ? plated(x + wide / 2, y + 16, signs[sound]?.sign ?? '', 11, true) : nothing}`;
        x += wide;
        return part;
    });
    const rest = full + margin - x;
    return {
        hasRest: rest > 1,
        body: html`${rest > 1 ? box(x, y, rest, barHeight, { dash: '3 2' }) : nothing}${body}${sum > panelM2 * 1.001 ? plated(margin + full / 2, y + barHeight - 2, 'the areas recorded come to more than the panel', 10) : nothing}`,
    };
}
