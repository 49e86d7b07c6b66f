import { describe, expect, test } from 'vitest';
import { PNG } from 'pngjs';
import { markOf, readFirmMark } from '../../src/report/firm-mark.js';
import { renderReport } from '../../src/report/report.js';
import { sampleInput, sampleText, textOf } from './sample.js';

const bytes = (text: string) => new TextEncoder().encode(text);
const drawn = '<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 120 96"><script>alert(1)</script></svg>';
const house = (properties: string) => `firm "Alder and Reed" {\n${properties}\n}\n${sampleText.replace(/^firm [\s\S]*?^\}$/m, '')}`;

describe('what a mark may be', () => {
    test('an SVG of the size its root tells', () => {
        expect(markOf(bytes(drawn), 'mark.svg')).toMatchObject({ width: 120, height: 96, dataUri: expect.stringMatching(/^data:image\/svg\+xml;base64,[A-Za-z0-9+/]+=*$/) as string });
        expect(markOf(bytes('<svg width="30mm" height="10mm">'), 'mark.svg')).toMatchObject({ width: 30, height: 10 });
        expect(markOf(bytes('<svg>'), 'mark.svg')).toMatchObject({ width: 100, height: 100 });
    });
    test('a PNG of its own size', () => {
        expect(markOf(PNG.sync.write(new PNG({ width: 7, height: 5 })), 'mark.png')).toMatchObject({ width: 7, height: 5, dataUri: expect.stringMatching(/^data:image\/png;base64,/) as string });
    });
    test.each([['words.svg', bytes('no drawing')], ['mark.jpg', Uint8Array.of(0xff, 0xd8, 0xff, 0xe0)], ['cut.png', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)], ['large.svg', new Uint8Array(512 * 1024 + 1)]])('%s is none, and the reason names it', (file, content) => {
        expect(markOf(content, file)).toMatchObject({ error: expect.stringContaining(file) as string });
    });
});

describe('where a mark lies', () => {
    const asked = async (written: string) => {
        const read: string[] = [];
        const mark = await readFirmMark(sampleInput({}, house(`mark: "${written}"`)).record, { read: uri => { read.push(uri); return Promise.resolve(bytes(drawn)); } });
        return { mark, read };
    };
    test('beside the house file, by its path', async () => {
        const { mark, read } = await asked('marks/my mark.svg');
        expect(read).toEqual([expect.stringMatching(/\/marks\/my%20mark\.svg$/)]);
        expect(mark).toMatchObject({ width: 120 });
    });
    test.each(['/etc/mark.svg', 'https://evil.example/mark.svg', 'file:///mark.svg'])('%s is not even asked for', async written => {
        const { mark, read } = await asked(written);
        expect(read).toEqual([]);
        expect(mark).toHaveProperty('error');
    });
    test('a house file that names none has none', async () => {
        expect(await readFirmMark(sampleInput({}, house('')).record, { read: () => Promise.resolve(bytes(drawn)) })).toBeUndefined();
    });
});

describe('in the report', () => {
    const render = (properties: string, firmMark?: ReturnType<typeof markOf>) => renderReport({ ...sampleInput({}, house(properties)), gaps: [], problems: [], ...(firmMark ? { firmMark } : {}) });
    test('the mark stands in an img alone; its markup never reaches the page', () => {
        const page = render('mark: "mark.svg"', markOf(bytes(drawn), 'mark.svg'));
        expect(page).toMatch(/<div class="firm-head"><img src="data:image\/svg\+xml;base64,[A-Za-z0-9+/=]+" width="120" height="96" alt="">/);
        expect(page).not.toContain('<script');
        expect(page).toContain('<body class="final">');
    });
    test('a mark that cannot be shown makes it a draft that says why', () => {
        const page = render('mark: "gone.svg"', { error: 'gone.svg: there is no such file' });
        expect(page).toContain('<body class="draft">');
        expect(textOf(page)).toContain('The firm’s mark is not shown. gone.svg: there is no such file.');
    });
    test('its color and paper are used', () => {
        const page = render('color: "#7a1f4b"\n paper: letter');
        expect(page).toContain('--accent: #7a1f4b;');
        expect(page).toContain('@page { size: letter;');
        expect(render('paper: a4')).toContain('@page { size: A4;');
        expect(render('')).not.toMatch(/@page \{ size/);
    });
    test('what is no color leaves the usual one and is told', () => {
        const page = render('color: "red; } body { display: none"');
        expect(page).toContain('--accent: #0b4a63;');
        expect(page).not.toContain('--accent: red');
        expect(textOf(page)).toContain('The firm’s color is not used:');
    });
});
