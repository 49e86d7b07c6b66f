/**
 * An audit of every paper against WCAG 2.2 AA by a second, independent engine (accessibility-checker-engine, Apache-2.0),
 * on a desktop's and a phone's window. Only what the engine calls a violation counts; what it asks a person to look at does not.
 */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { findChromium, launchOptions } from '../../.scripts/ensure-chromium.mjs';
import { documentKinds, renderDocument } from '../../src/report/documents.js';
import { sampleInput, sampleText } from './sample.js';

let browser: Browser;
let engine: string;
beforeAll(async () => {
    browser = await chromium.launch(launchOptions(await findChromium()));
    engine = await readFile(createRequire(import.meta.url).resolve('accessibility-checker-engine/ace-window.js'), 'utf8');
}, 120_000);
afterAll(() => browser.close());

interface Result {
    readonly ruleId: string;
    readonly value: readonly [string, string];
    readonly message: string;
    readonly snippet?: string;
}

async function violations(html: string, width: number): Promise<string[]> {
    const page = await browser.newPage({ viewport: { width, height: 900 } });
    // The paper itself forbids scripts; the audit runs on a copy that allows this one.
    await page.setContent(html.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, ''));
    await page.addScriptTag({ content: engine });
    const results = await page.evaluate(async () => {
        const { Checker } = Reflect.get(window, 'ace') as { Checker: new () => { check(document: Document, rules: readonly string[]): Promise<{ results: Result[] }> } };
        return (await new Checker().check(document, ['WCAG_2_2'])).results;
    });
    await page.close();
    return results.filter(({ value: [level, state] }) => level === 'VIOLATION' && state === 'FAIL').map(({ ruleId, message, snippet }) => `${ruleId}: ${message} ${snippet?.slice(0, 160) ?? ''}`);
}

test('the audit finds what is wrong', async () => {
    expect((await violations('<!DOCTYPE html><html><head><title>t</title></head><body><img src="data:image/gif;base64,R0lGODlhAQABAAAAACw="><p style="color:#aaa">pale words</p></body></html>', 1000)).map(text => text.split(':')[0]))
        .toEqual(expect.arrayContaining(['html_lang_exists', 'img_alt_valid', 'text_contrast_sufficient']));
});

test.each(documentKinds.flatMap(kind => [[kind, 1000], [kind, 360]] as const))('%s in a window of %i px', async (kind, width) => {
    expect(await violations(renderDocument(kind, sampleInput({}, sampleText)), width)).toEqual([]);
}, 120_000);

test('a report that is no draft', async () => {
    expect(await violations(renderDocument('report', sampleInput({ problems: [], gaps: [] })), 1000)).toEqual([]);
}, 120_000);
