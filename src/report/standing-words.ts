/** The standing words of a report: the firm's where its house file sets them, else the catalogue's. */
import type { FactsOf } from '../record/generated/kinds.js';
import type { ReportContext } from './context.js';
import { html, joined, nothing, type Html } from './html.js';
import { proseHtml, proseInline } from './prose.js';

export type StandingWords = keyof FactsOf<'wording'> & string;

function prosesOf({ record }: ReportContext, name: StandingWords) {
    return (record.vocabulary.wording.get(name)?.fact.values ?? []).flatMap(value => value.type === 'text' && value.prose.text.trim() !== '' ? [value.prose] : []);
}

/** The words as paragraphs; nothing where they are set empty. */
export function standing(context: ReportContext, name: StandingWords): Html {
    return html`${prosesOf(context, name).map(prose => proseHtml(context, prose))}`;
}

/** The words within a line, as in the second column of a list. */
export function standingInline(context: ReportContext, name: StandingWords): Html {
    return joined(prosesOf(context, name).map(prose => proseInline(context, prose)), ' ');
}

/** What must stand first in a report of its kind: that it is of a part only, or without prejudice; nothing for other kinds. */
export function noticeOf(context: ReportContext): Html {
    switch (context.record.survey?.surveyKind) {
        case 'damage': return standing(context, 'without-prejudice');
        case 'part-survey': return standing(context, 'part-only');
        default: return nothing;
    }
}
