/** Collects what the text does not say properly, with texts that would mend it. */
import { nearest } from '../quantities/index.js';
import type { Gap, Span } from './model.js';

export type Mend = Gap['mends'][number];

export class Gaps {
    readonly list: Gap[] = [];

    add(severity: Gap['severity'], code: string, span: Span, message: string, mends: readonly Mend[] = [], related?: Gap['related']): void {
        this.list.push(related ? { code, severity, message, span, mends, related } : { code, severity, message, span, mends });
    }

    /** An unknown name, with the nearest known one offered. */
    unknown(code: string, span: Span, written: string, what: string, known: Iterable<string>, severity: Gap['severity'] = 'error', hint = ''): void {
        const close = nearest(written, known);
        const mends = close === undefined ? [] : [{ title: `Change to ${close}`, span, text: close }];
        const offer = close === undefined ? hint : `Did you mean ${close}?`;
        this.add(severity, code, span, `${what} ${offer}`.trim(), mends);
    }
}
