/** Paper: sizes, margins with running heads and the count of pages, and where pages may break. */
import type { Paper } from './context.js';

export interface PrintStrings {
    /** CSS strings, already quoted and escaped: running head, report number, foot, and DRAFT where it is one. */
    readonly head: string;
    readonly number: string;
    readonly foot: string;
    readonly draft: string | undefined;
    /** The size that pages are set for; whatever the reader's printer holds where left out. */
    readonly paper?: Paper;
}

/** Heights of the cover: what the margins leave of a page, less a little; of the lower page where the paper is not known. */
const coverHeights = { a4: '252mm', letter: '234mm', any: '234mm' };
/**
 * Heights of the photographs at the end, so that two of full size fill a page with their captions, the first two below the section's head, or
 * three rows of pairs. A landscape picture of 4:3 that fills its half of an A4 page is 63 mm high.
 */
const annexHeights = {
    a4: { first: '88mm', full: '105mm', pair: '63mm' }, letter: { first: '79mm', full: '96mm', pair: '57mm' }, any: { first: '79mm', full: '96mm', pair: '57mm' },
};
const sizes: Readonly<Record<Paper, string>> = { a4: 'A4', letter: 'letter' };

export function printStyle({ head, number, foot, draft, paper, sans }: PrintStrings & { readonly sans: string }): string {
    const margin = `font: 8pt ${sans}; color: #4a5660;`;
    const annex = annexHeights[paper ?? 'any'];
    const top = 'vertical-align: bottom; padding-bottom: 1.6mm; margin-bottom: 6mm; border-bottom: .5pt solid #c3ccd1;';
    return `
@page { ${paper === undefined ? '' : `size: ${sizes[paper]}; `}margin: 24mm 18mm 19mm;
  @top-left { content: ${head}; ${margin} font-weight: 600; ${top} }
  @top-center { content: ${draft ?? '""'}; ${margin} color: #8a2b10; font-weight: 600; ${top} }
  @top-right { content: ${number}; ${margin} ${top} }
  @bottom-left { content: ${foot}; ${margin} }
  @bottom-right { content: "page " counter(page) " of " counter(pages); ${margin} }
}
@page :first { @top-left { content: none; } @top-right { content: none; } @top-center { ${draft === undefined ? 'content: none;' : 'border: 0;'} } }
@media print {
  :root { --label: 25mm; }
  html { font-size: 10pt; }
  body { max-width: none; padding: 0; font-size: 1rem; line-height: 1.42; }
  a { color: inherit; text-decoration: none; }
  .skip, .end { display: none; }
  h2 { font-size: 18pt; margin: 11mm 0 4mm; padding-top: 4mm; background-size: 20mm 1.4mm, 100% .2mm; background-position: 0 0, 0 .6mm; }
  h3 { font-size: 12.5pt; margin-top: 6mm; }
  .section > p { max-width: 140mm; }
  .cover { height: ${coverHeights[paper ?? 'any']}; display: flex; flex-direction: column; padding: 0; break-after: page; }
  .firm-head { min-height: 15mm; margin-bottom: 5mm; }
  .firm-head img { height: 15mm; }
  .title-block { padding: 6.5mm 8mm 7.5mm; }
  .cover.bare .title-block { flex: 0 0 105mm; }
  .title-block h1 { font-size: 44pt; }
  .title-block .kind { font-size: 11.5pt; }
  .cover-photo { flex: 0 1 auto; min-height: 0; max-height: none; }
  dl.cover-facts { margin: auto 0 0; padding-top: 6mm; gap: 4mm 7mm; flex: none; }
  .draft-note { flex: none; margin: 5mm 0 0; }
  .preview .cover { height: auto; break-after: auto; }
  .section-summary, .section-findings, .section-statement, .section-photographs, .section-open { break-before: page; }
  .section-summary > h2, .section-findings > h2, .section-statement > h2, .section-photographs > h2, .section-open > h2 { margin-top: 0; }
  .section-summary + .contents { break-before: page; }
  .contents h2 { margin-top: 0; }
  .contents .page { display: inline-block; flex: none; width: 2.4em; margin-left: auto; text-align: right; font-family: ${sans}; font-variant-numeric: tabular-nums; }
  .section-summary { font-size: .97rem; line-height: 1.38; }
  .key { margin-bottom: 5mm; }
  .table { overflow: visible; }
  table { font-size: 8.8pt; line-height: 1.36; }
  caption { font-size: 9.4pt; }
  th, td { overflow-wrap: anywhere; padding-top: .9mm; padding-bottom: .9mm; }
  thead th { overflow-wrap: normal; }
  .readings th[scope=row] { white-space: normal; }
  table:has(thead th:nth-child(7)) { font-size: 8pt; }
  table:has(thead th:nth-child(10)) { font-size: 7.2pt; }
  table:has(thead th:nth-child(10)) thead th { overflow-wrap: anywhere; }
  thead { display: table-header-group; }
  dl.facts > div { break-inside: avoid; }
  dl.computed > div { break-inside: auto; }
  .finding > dl.card:not(.computed) > div:nth-child(2) { break-before: avoid; }
  .section > h2 + p, .section > p.lead { break-after: avoid; }
  .finding { margin: 4mm 0 7mm; padding-top: 4mm; break-inside: auto; }
  .finding h4 { font-size: 12.5pt; }
  .finding h4, .finding .on { break-after: avoid; }
  .finding h4 .number { font-size: 13.5pt; }
  .finding.brief, .opening { break-inside: avoid; }
  .opening.beside { grid-template-columns: minmax(0, 1fr) 56mm; gap: 6mm; }
  .pair { gap: 4mm; }
  .photos { display: block; }
  .photos > .pair { margin-top: 3mm; }
  .methods { columns: 2; column-gap: 8mm; font-size: 8.5pt; }
  .method { break-inside: auto; }
  .columns .facts-group { break-inside: auto; }
  .columns { --label: 27mm; }
  .annex { display: block; }
  .annex figure { margin-bottom: 8mm; }
  .annex img { max-height: ${annex.full}; max-width: 100%; }
  .annex > :nth-child(-n+2) img { max-height: ${annex.first}; }
  .annex.many { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: 6mm; align-items: start; }
  .annex.many figure { margin: 0; }
  .annex.many > figure img { max-height: ${annex.pair}; }
  .draft-band { display: none; }
  .draft-mark { display: block; position: fixed; inset: 0; z-index: -1; width: 100%; height: 100%; }
  html, body { background: none; }
  .draft-note, .title-block, h2, .group > h3, .end, tr, .gauge, .marked { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
}
`;
}
