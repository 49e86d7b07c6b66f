import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it } from 'vitest';
import { analyseText } from '../../src/checks/survey.js';
import { assembleReport } from '../../src/report/assemble.js';
import { nodePhotoSource } from '../../src/host/node-photos.js';
import { PNG } from 'pngjs';

async function survey(photos: string) {
    const folder = await mkdtemp(join(tmpdir(), 'garboard-photos-'));
    await writeFile(join(folder, 'a.png'), PNG.sync.write(new PNG({ width: 8, height: 6 })));
    const text = `survey "N-1" condition-and-value { client: "X"  issued: 2026-01-30  attended 2026-01-20 ashore "yard" }
vessel "Tern" { type: sailing-yacht
${photos} }`;
    const analysis = analyseText(text, pathToFileURL(join(folder, 'a.survey')).href);
    return assembleReport({ ...analysis, problems: [], gaps: [] }, { photos: nodePhotoSource(), mode: 'file', lineOf: () => 3 });
}

it('shows a photograph from the disk', async () => {
    const { html, openErrors, photoFaults } = await survey('photo "a.png" "Afloat"');
    expect(photoFaults).toEqual([]);
    expect(openErrors).toBe(0);
    expect(html).toContain('data:image/jpeg;base64,');
});

it('makes a draft of a report whose photograph is missing, and lists it', async () => {
    const { html, openErrors, photoFaults } = await survey('photo "gone.jpg" "Afloat"');
    expect(photoFaults).toEqual(['gone.jpg: there is no such file']);
    expect(openErrors).toBe(1);
    expect(html).toContain('class="draft"');
    expect(html).toMatch(/line 3<\/span>[^]*gone\.jpg: there is no such file/);
});
