import { HtmlValidate } from 'html-validate';
import { describe, expect, test } from 'vitest';
import { analyseText } from '../../src/checks/survey.js';
import { photoAddresses } from '../../src/report/assemble.js';
import { inputOf, sampleInput, sampleReport, sampleText, textOf } from './sample.js';
import { renderReport } from '../../src/report/report.js';

const unanswered = sampleText.replace('answers:   hose-and-spigot-differ', '');

describe('prose and figures', () => {
    const text = textOf(sampleReport());
    test('prints recorded facts in both systems, words and materials as such', () => {
        expect(text).toContain('The hose of 38 mm (1-1/2 in) sits on a tail of 32 mm (1.26 in) , of bronze');
        expect(text).toContain('Sink drain (TH1) admits about');
        expect(text).toMatch(/admits about [\d.]+ gpm \([\d.]+ L\/min\)/);
        expect(text).toContain('5 ft 9 in (1.753 m)');
        expect(text).toContain('24,000 lb');
    });
    test('what is not recorded shows as such', () => {
        expect(text).toContain('[H1.nonsense: not recorded]');
    });
    test('dates read the same on both sides of an ocean; days are counted from the date of issue', () => {
        expect(text).toContain('20 January 2026');
        expect(text).toContain('By 1 March 2026, 30 days after issue');
    });
});

describe('sections', () => {
    const whole = sampleInput();
    const html = renderReport({ ...whole, gaps: [], problems: whole.problems.filter(p => p.answeredBy !== undefined) });
    const text = textOf(html);
    test('every section of the record has its place, numbered as in the contents', () => {
        const titles = [...html.matchAll(/<h2 id="[^"]*-title"><span class="n">(\d+)<\/span> ([^<]*)<\/h2>/g)].map(m => m[2]);
        expect(titles).toEqual([
            'Summary', 'Scope and attendances', 'Limits, and what was not seen', 'Words used', 'Particulars', 'Through-hulls and sea valves', 'Hull', 'Measurements and registers', 'Trial', 'Findings',
            'Recommendations in one list', 'Opinion of value', 'Standards and rules cited', 'How figures were computed', 'Statement and signature', 'Photographs',
        ]);
    });
    test('findings stand in the order of urgency', () => {
        expect(html.indexOf('id="finding-F1"')).toBeLessThan(html.indexOf('id="finding-F2"'));
    });
    test('authority tells its standing, and what is only recalled', () => {
        expect(text).toContain('ISO 9093, 4.1, Small craft: seacocks and through-hull fittings. A voluntary standard.');
        expect(text).toMatch(/ABYC E-10, 10\.7, Storage batteries\. A voluntary standard\. Clause to be confirmed\./);
    });
    test('the sums of the valuation are shown', () => {
        expect(text).toContain('21,000 USD (Twenty-one thousand US dollars)');
        // 22,000 - 500 = 21,500; 20,000 + 250 = 20,250; 21,500 x 0.6 = 12,900; 20,250 x 0.4 = 8,100; together 21,000, by hand.
        expect(text).toContain('A 22,000 USD −500 21,500 USD × 0.6 12,900');
        expect(text).toContain('B 20,000 USD +250 20,250 USD × 0.4 8,100');
        expect(text).toContain('Weighted figure 1 21,000 USD');
    });
    test('photographs are linked both ways', () => {
        expect(html).toMatch(/<a href="#photo-\d+">Photo \d+<\/a>/);
        expect(html).toMatch(/<figure id="photo-2">[\s\S]*?href="#finding-F1"/);
    });
    test('every link within the report leads somewhere, and every id is there once', () => {
        const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(m => m[1]);
        expect(new Set(ids).size).toBe(ids.length);
        for (const [, target] of html.matchAll(/ href="#([^"]*)"/g)) {
            expect(ids).toContain(target);
        }
    });
    test('a run with a problem is drawn, its joint marked by shape, number and words', () => {
        expect(html).toMatch(/<svg[^>]*role="img"[^>]*>\s*<title[^>]*>Sink drain<\/title>\s*<desc[^>]*>Parts in order: .*at the joint of SV1 and H1/);
        expect(text).toContain('SV1 to H1:');
    });
    test('limits stand in it: our own, the survey\'s, each thing not seen with its reason', () => {
        for (const words of ['The engine could not be run.', 'Inside of the keel', 'It is encapsulated', 'Not proved: No water aboard', 'carried out by people qualified for the work', 'follow those that hold where she is kept']) {
            expect(text).toContain(words);
        }
    });
    test('the report never promises', () => {
        expect(text).not.toMatch(/\bsafe(ly|ty)?\b/i);
    });
    test('the same record gives the same page', () => {
        expect(sampleReport()).toBe(sampleReport());
    });
});

describe('draft', () => {
    test('with open problems it is a draft on screen and on every page, and lists them first', () => {
        const input = sampleInput({}, unanswered);
        const html = renderReport(input);
        expect(html).toContain('<body class="draft">');
        expect(html).toContain('class="draft-band"');
        expect(html).toContain('class="draft-mark"');
        expect(html).toMatch(/@top-center \{ content: "DRAFT, not issued"/);
        expect(html.indexOf('id="open"')).toBeLessThan(html.indexOf('id="summary"'));
        const open = input.problems.filter(p => p.answeredBy === undefined);
        expect(open.length).toBeGreaterThan(0);
        for (const problem of open) {
            expect(textOf(html).replace(/[°−]/g, '')).toContain(problem.message.replace(/[°−]/g, ''));
        }
    });
    test('a photograph that is missing makes it one, says so in its place and stands in the list', () => {
        const input = sampleInput({}, sampleText.replace('tail.jpg', 'gone.jpg'));
        const html = renderReport({ ...input, gaps: [], problems: [] });
        expect(html).toContain('<body class="draft">');
        expect(textOf(html)).toContain('Photo not shown. photos/gone.jpg: there is no such file');
        expect(textOf(html)).toMatch(/survey\.survey, line 1 Photo \d+ is not shown\. photos\/gone\.jpg/);
    });
    test('gaps of error severity make it one too', () => {
        const html = sampleReport({}, sampleText.replace('metal: bronze', 'metal: bronse'));
        expect(html).toContain('<body class="draft">');
        expect(textOf(html)).toContain('bronse');
    });
    test('without any it is none', () => {
        const html = sampleReport({ gaps: [], problems: sampleInput().problems.filter(p => p.answeredBy !== undefined) });
        expect(html).toContain('<body class="final">');
        expect(html).not.toContain('class="draft-band"');
        expect(html).not.toContain('id="open"');
    });
});

test('the preview carries positions, the report does not', () => {
    expect(sampleReport({ mode: 'preview' })).toMatch(/<article class="finding" id="finding-F1" aria-labelledby="finding-F1-title" data-uri="memory:[^"]*" data-start="\d+">/);
    expect(sampleReport()).not.toMatch(/ data-(?:start|uri)="/);
});

test('an empty survey still gives a report', () => {
    for (const text of ['', 'survey', 'vessel', 'survey "X" {', 'finding', 'system a { run R: ', 'valuation { comparable }', 'reading M "t" { row }']) {
        expect(renderReport(inputOf(analyseText(text)))).toContain('</html>');
    }
});

test('every beginning of the sample gives a report', () => {
    for (let end = 0; end < sampleText.length; end += 97) {
        expect(sampleReport({}, sampleText.slice(0, end))).toContain('</html>');
    }
});

test.each(['file', 'preview'] as const)('the page is valid HTML (%s)', async mode => {
    const validator = new HtmlValidate({ extends: ['html-validate:standard', 'html-validate:a11y', 'html-validate:document'], rules: { 'require-sri': 'off', 'no-inline-style': 'error', 'long-title': 'off' } });
    for (const text of [sampleText, unanswered]) {
        const { results } = await validator.validateString(sampleReport({ mode }, text));
        expect(results.flatMap(result => result.messages.map(m => `${m.ruleId}: ${m.message} at ${m.line}:${m.column} ${m.selector ?? ''}`))).toEqual([]);
    }
});

describe('hostile text', () => {
    const payloads = [
        '<script>alert(1)</script>', '\\"><img src=x onerror=alert(1)>', '\' onmouseover=\'alert(1)', '</style><script>alert(1)</script>', '</title></svg><iframe src=//evil.example>', '`${alert(1)}`',
        'javascript:alert(1)', '\u202E\u2066txt\u0000', '-->]]><!--', '&lt;script&gt;', '\\\\\\"/*',
    ];
    const allowed = new Set('html head meta title style body a div svg text header p h1 h2 h3 h4 figure img dl dt dd main section span table caption thead tbody tr th td ol ul li nav strong br article desc g path rect figcaption footer address br'.split(' '));

    /** The page must be made of our own tags, quoted attributes and escaped text only: a grammar, not a search. */
    function check(html: string): void {
        const body = html.replace(/<!DOCTYPE html>/, '').replace(/<style>([^<]*)<\/style>/g, '<style></style>');
        const rest = body.replace(/<(\/?)([a-z][a-z0-9]*)((?:\s[a-zA-Z][a-zA-Z-]*(?:="[^"<>]*")?)*)\s*\/?>/g, (_, _close, name: string, attributes: string) => {
            expect(allowed).toContain(name);
            for (const [, attribute, value] of attributes.matchAll(/\s([a-zA-Z-]+)(?:="([^"]*)")?/g)) {
                expect(attribute).not.toMatch(/^on|^style$|^srcset$|^formaction$/i);
                if (attribute === 'href') {
                    expect(value).toMatch(/^#[A-Za-z0-9_-]+$/);
                }
                if (attribute === 'src') {
                    expect(value).toMatch(/^data:image\/jpeg;base64,[A-Za-z0-9+/=]+$/);
                }
            }
            return '';
        });
        expect(rest).not.toMatch(/[<>"]/);
        expect(rest).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u0000-\u0008]/);
    }

    test.each(payloads)('%j in every text of the survey', payload => {
        const poisoned = sampleText.replace(/"([^"\n]*)"/g, (_, inside: string) => `"${inside} ${payload}"`);
        for (const mode of ['file', 'preview'] as const) {
            check(sampleReport({ mode }, poisoned));
        }
        const input = sampleInput({}, poisoned);
        check(renderReport({ ...input, photos: new Map([...input.photos.keys()].map(file => [file, { dataUri: payload, width: 1, height: 1, alt: payload }])) }));
    });
});

test('photographs are sought beside the survey only', () => {
    const { record } = analyseText('survey "1" { photos: "pics" }', 'file:///a/b/c.survey');
    expect(photoAddresses('x y.jpg', record)).toEqual(['file:///a/b/x%20y.jpg', 'file:///a/b/pics/x%20y.jpg']);
    for (const file of ['/etc/passwd', 'https://example.org/a.jpg', 'file:///etc/passwd', '\\\\host\\share\\a.jpg', 'C:\\a.jpg', '']) {
        expect(photoAddresses(file, record)).toEqual([]);
    }
});
