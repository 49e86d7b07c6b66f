/** Whether, when, to whom and how urgent matters were told before the report. */
import type { ReportContext } from './context.js';
import { html, joined, type Html } from './html.js';
import { dateText, inSentence } from './wording.js';

/** What is recorded of it in one line: "4 May 2027; to the owner; by word at 1510". Undefined where nothing is. */
export function toldLine(context: ReportContext): Html | undefined {
    const { survey } = context.record;
    const on = context.first(survey, 'told-on');
    const to = context.text(survey, 'told-to');
    const how = context.text(survey, 'told-how');
    const parts = [on?.type === 'date' ? dateText(on.figure) : undefined, to === undefined ? undefined : `to ${to}`, how === undefined ? undefined : inSentence(how)].filter(part => part !== undefined);
    return parts.length === 0 ? undefined : html`${joined(parts, '; ')}`;
}
