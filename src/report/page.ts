/**
 * The shell that every paper of a survey shares: head, policy against anything fetched, fonts, style sheet, running
 * heads of the printed pages, and the DRAFT mark where the record is one.
 */
import type { ReportContext } from './context.js';
import { fontFaces } from './fonts.js';
import { cssString, html, nothing, trusted, type Html } from './html.js';
import { styleSheet } from './style.js';

/** What the margins of printed pages say; the foot also counts the pages. */
export interface Running {
    readonly left: string;
    readonly right: string;
    readonly foot: string;
}

export interface PageParts {
    /** Title of the document, without DRAFT, which is set before it where the record is a draft. */
    readonly title: string;
    readonly running: Running;
    /** Language of the text, `en` where left out. */
    readonly lang?: string;
    /** Further class of the body, to set a paper apart in the style sheet. */
    readonly className?: string;
    /** Further rules of our own for this paper; never text of a survey. */
    readonly style?: string;
    readonly body: Html;
}

/** One self-contained page of HTML. */
export function page(context: ReportContext, { title, running, lang = 'en', className, style = '', body }: PageParts): string {
    const css = styleSheet({
        palette: context.palette, ...context.paper === undefined ? {} : { paper: context.paper }, head: cssString(running.left), number: cssString(running.right), foot: cssString(running.foot),
        draft: context.isDraft ? cssString('DRAFT, not issued') : undefined,
    });
    return html`<!DOCTYPE html>
<html lang="${lang}"${context.isPreview ? html` class="preview"` : nothing}>
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${context.isDraft ? 'DRAFT. ' : ''}${title}</title>
<style>${trusted(fontFaces(`${title}\n${running.left}\n${running.right}\n${running.foot}`, body.toString()))}</style>
<style>${trusted(css + style)}</style>
</head>
<body class="${context.isDraft ? 'draft' : 'final'}${className === undefined ? '' : ` ${className}`}">
${context.isDraft ? html`<div class="draft-band" role="note" aria-label="State of this paper">DRAFT</div>
<svg class="draft-mark" viewBox="0 0 180 260" preserveAspectRatio="xMidYMid meet" aria-hidden="true" focusable="false"><text x="90" y="140">DRAFT</text></svg>` : nothing}
${body}
</body>
</html>
`.toString();
}
