/** Words that do harm where they are taken for anything but text, put into every place of the language. */
import * as fc from 'fast-check';
import { printable } from '../../src/report/html.js';
import { wholeSurvey, type WholeSurvey } from './whole-language.js';

/** Fragments that do harm where they are taken for anything but text. */
const fragments = [
    '<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '\' onmouseover=\'alert(1)', '</style><script>alert(1)</script>', '</title></svg></table></body><iframe src=//evil.example>',
    '<marquee onstart=alert(1)>', 'javascript:alert(1)', 'data:text/html,<script>alert(1)</script>', 'file:///etc/passwd', '\u202Egnp.exe\u202C', '\u2066\u2069\u200F', '\u0000\u0008\u001B', ']]><!-- -->', '&lt;b&gt;&amp;&#60;',
    '=cmd|\'/C calc\'!A0', '+1+1', '-2+3', '@SUM(A1)', '\t=1', '${alert(1)}', '{{7*7}}', '\\', 'url(https://evil.example/x)', '}</style>', '<svg/onload=alert(1)>', '<base href=//evil.example>', '😀é½ °C Ωמ',
    'W'.repeat(400), '\ud800', '%00%0d%0aSet-Cookie:a=b', '<a href="https://evil.example">here</a>', '<link rel=stylesheet href=//evil.example>', '<?xml version="1.0"?><!DOCTYPE x [<!ENTITY e SYSTEM "file:///etc/passwd">]>&e;',
] as const;

/** Texts for all places, drawn anew for each. */
const hostileTexts = (seed: number): (() => string) => {
    const texts = fc.sample(fc.array(fc.constantFrom(...fragments), { minLength: 1, maxLength: 3 }).map(parts => parts.join('')), { seed, numRuns: 4000 });
    let next = 0;
    return () => texts[next++ % texts.length] ?? '';
};

export interface HostileSurvey extends WholeSurvey {
    /** What was put into a place, without its mark. */
    readonly written: (place: string) => string;
}

export function hostileSurvey(seed: number): HostileSurvey {
    const next = hostileTexts(seed);
    const payloads = new Map<string, string>();
    const survey = wholeSurvey(place => {
        const payload = next();
        payloads.set(place, payload);
        return payload;
    });
    return { ...survey, written: place => payloads.get(place) ?? '' };
}

/** A text of a place as a reader should see it: printable signs, blanks as one; a path with slashes. */
export function asShown(text: string, place: string): string {
    const words = printable(text).replace(/\s+/g, ' ').trim();
    return / photo file$/.test(place) ? words.replaceAll('\\', '/') : words;
}
