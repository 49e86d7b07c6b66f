/** The drawings in a real browser: true widths of lettering, nothing outside a drawing, nothing over one another, well-formed alone. */
import { readFile } from 'node:fs/promises';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { findChromium, launchOptions } from '../../../.scripts/ensure-chromium.mjs';
import { textWidth, drawingCss, standAlone } from '../../../src/report/drawings/drawing.js';
import { drawReading } from '../../../src/report/drawings/of-reading.js';
import { openingsPlan } from '../../../src/report/drawings/openings-plan.js';
import { drawRun } from '../../../src/report/drawings/schematic.js';
import { html } from '../../../src/report/html.js';
import { contextOf } from './drawn.js';

let browser: Browser;
let page: Page;
let markup: string;

beforeAll(async () => {
    browser = await chromium.launch(launchOptions(await findChromium()));
    const context = contextOf((await readFile(new URL('all-tables.survey', import.meta.url), 'utf8')));
    markup = String(html`${context.record.readings.map(reading => drawReading(context, reading))}${openingsPlan(context)}${context.record.runs.map(run => drawRun(context, run, `run-${run.id}`))}`);
    page = await browser.newPage({ viewport: { width: 1000, height: 900 } });
    await page.setContent(`<!DOCTYPE html><html lang="en"><title>Drawings</title><style>${drawingCss}</style><body>${markup}</body></html>`);
}, 300_000);

afterAll(async () => {
    await browser?.close();
});

test('all lettering and every mark lies inside its drawing', async () => {
    const outside = await page.evaluate(() => Array.from(document.querySelectorAll('svg')).flatMap(svg => {
        const view = svg.viewBox.baseVal;
        return Array.from(svg.querySelectorAll<SVGGraphicsElement>('text, rect, path, circle')).filter(mark => {
            const box = mark.getBBox();
            return box.x < view.x - 1 || box.y < view.y - 1 || box.x + box.width > view.x + view.width + 1 || box.y + box.height > view.y + view.height + 1;
        }).map(mark => mark.outerHTML);
    }));
    expect(outside).toEqual([]);
    expect(await page.locator('svg').count()).toBeGreaterThan(9);
});

test('no lettering lies on other lettering', async () => {
    const overlapping = await page.evaluate(() => Array.from(document.querySelectorAll('svg')).flatMap(svg => {
        const texts = Array.from(svg.querySelectorAll('text')).map(text => ({ text: text.textContent ?? '', box: text.getBBox() }));
        return texts.flatMap((a, i) => texts.slice(i + 1).filter(b => {
            const across = Math.min(a.box.x + a.box.width, b.box.x + b.box.width) - Math.max(a.box.x, b.box.x);
            // Boxes are of the font's full height, of which lettering without descenders fills less.
            const down = Math.min(a.box.y + a.box.height, b.box.y + b.box.height) - Math.max(a.box.y, b.box.y);
            return across > 1.5 && down > 4.5;
        }).map(b => `${svg.querySelector('title')?.textContent ?? ''}: ${a.text} / ${b.text}`));
    }));
    expect(overlapping).toEqual([]);
});

test('lettering is no wider than it was estimated, in the fonts that readers have', async () => {
    const samples = ['Frame 12, strake B, port', 'WWW MMM', '1-1/2 in (38.1 mm), 2 ft below', 'mean 5.07 mm of 6 mm: 15.6 % lost', 'Süßwasser-Einlaß ñ', 'iiiiiiiiiiii lllll', 'TH10 Galley foot-pump intake', '海水取入口'];
    const widths = await page.evaluate(texts => {
        const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
        document.body.append(svg);
        return ['Liberation Sans', 'Arial', 'sans-serif', '\'Source Sans 3\', sans-serif'].flatMap(family => texts.map(text => {
            const element = document.createElementNS('http://www.w3.org/2000/svg', 'text');
            element.setAttribute('font-family', family);
            element.setAttribute('font-size', '11');
            element.textContent = text;
            svg.append(element);
            return { family, text, width: element.getComputedTextLength() };
        }));
    }, samples);
    expect(widths.filter(({ text, width }) => width > textWidth(text) * 1.02)).toEqual([]);
});

test('taken out of the page, each drawing is a document of its own that parses and shows as a picture', async () => {
    const alone = [...markup.matchAll(/<svg\b[\s\S]*?<\/svg>/g)].map(([svg]) => svg).filter(svg => svg.includes('role="img"')).map(standAlone);
    const faults = await page.evaluate(async svgs => (await Promise.all(svgs.map(async svg => {
        const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml');
        const image = new Image();
        image.src = `data:image/svg+xml,${encodeURIComponent(svg)}`;
        const isShown = await image.decode().then(() => image.naturalWidth > 0, () => false);
        return parsed.querySelector('parsererror') ?? !isShown ? svg.slice(0, 300) : '';
    }))).filter(fault => fault !== ''), alone);
    expect(faults).toEqual([]);
    expect(alone.length).toBeGreaterThan(9);
});

test('on a phone nothing but the frame of a drawing scrolls', async () => {
    const phone = await browser.newPage({ viewport: { width: 360, height: 800 } });
    await phone.setContent(`<!DOCTYPE html><html lang="en"><meta name="viewport" content="width=device-width"><title>Drawings</title><style>body { margin: 0 14px } figure { margin: 0 } ${drawingCss}</style><body>${markup}</body></html>`);
    expect(await phone.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    // Lettering must not be made smaller than can be read.
    const least = await phone.evaluate(() => Math.min(...Array.from(document.querySelectorAll<SVGSVGElement>('svg[role=img]')).map(svg => svg.getBoundingClientRect().width / svg.viewBox.baseVal.width)));
    expect(least * 10).toBeGreaterThan(7);
    await phone.close();
});
