/**
 * The look of the report: type and rules, little color, nothing fetched. Made for paper first (A4 and Letter alike: no
 * size is forced), then for a screen and a phone. Every tint has a word or a shape beside it that says the same.
 */

export interface StyleStrings {
    /** CSS strings, already quoted and escaped: running head, report number, foot, and DRAFT where it is one. */
    readonly head: string;
    readonly number: string;
    readonly foot: string;
    readonly draft: string | undefined;
}

const serif = '"Iowan Old Style", "Palatino Linotype", "URW Palladio L", P052, "Book Antiqua", Charter, "Sitka Text", Cambria, "Liberation Serif", "Noto Serif", serif';
const sans = '"Gill Sans Nova", Seravek, Candara, "Source Sans 3", "Liberation Sans", "Noto Sans", "Helvetica Neue", Arial, sans-serif';

export function styleSheet({ head, number, foot, draft }: StyleStrings): string {
    const margin = `font: 8pt ${sans}; color: #45525c;`;
    return `
:root { color-scheme: light; --ink: #17212b; --quiet: #45525c; --sea: #0b4a63; --rust: #8a2b10; --rule: #b7c3ca; --tint: #eff4f5; --serif: ${serif}; --sans: ${sans}; }
*, *::before, *::after { box-sizing: border-box; }
html { background: #fff; scroll-padding-top: 3rem; -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body { margin: 0 auto; padding: 0 1.25rem 4rem; max-width: 52rem; background: #fff; color: var(--ink); font: 1.0625rem/1.5 var(--serif); font-variant-numeric: lining-nums; overflow-wrap: break-word; hyphens: manual; }
h1, h2, h3, h4 { font-weight: 600; line-height: 1.2; text-wrap: balance; break-after: avoid; break-inside: avoid; color: var(--ink); }
h2 { font-size: 1.6rem; margin: 3.25rem 0 1rem; padding-top: .6rem; border-top: 3px double var(--sea); display: flex; gap: .7em; }
h2 .n { color: var(--sea); font-weight: 400; font-variant-numeric: lining-nums tabular-nums; }
h3 { font-size: 1.17rem; margin: 1.9rem 0 .5rem; }
h4 { font-size: 1.1rem; margin: 0 0 .25rem; }
p { margin: 0 0 .7rem; orphans: 3; widows: 3; }
ul, ol { margin: 0 0 .7rem; padding-left: 1.3rem; }
a { color: var(--sea); text-decoration: underline; text-decoration-thickness: .06em; text-underline-offset: .15em; }
a:focus-visible, [tabindex]:focus-visible { outline: 3px solid var(--sea); outline-offset: 2px; }
img, svg { max-width: 100%; height: auto; max-height: none; }
.small { font-size: .9rem; }
.muted, .other { color: var(--quiet); }
.lead { font-size: 1.15rem; }
.absent { color: var(--rust); }
.fact { white-space: normal; }
.skip { position: absolute; left: -99rem; top: 0; background: #fff; padding: .5rem 1rem; z-index: 3; }
.skip:focus { left: 0; }
dl, dd { margin: 0; }
dt { font-family: var(--sans); font-size: .86rem; line-height: 1.35; color: var(--quiet); padding-top: .17em; }
dd > p:last-child, dd > ul:last-child, td > p:last-child { margin-bottom: 0; }
dl.facts { margin: 0 0 1rem; }
dl.facts > div { display: grid; grid-template-columns: 9.5rem 1fr; gap: .1rem 1rem; padding: .28rem 0; border-top: 1px solid var(--rule); }
dl.facts > div:last-child { border-bottom: 1px solid var(--rule); }
dl.run-in > div { display: inline; }
dl.run-in > div:not(:last-child)::after { content: "; "; }
dl.run-in dt, dl.run-in dd { display: inline; }
dl.run-in dt { padding: 0; }
dl.run-in dt::after { content: " "; }

.cover { padding: 3rem 0 0; }
.cover h1 { font-size: clamp(2.8rem, 9vw, 5rem); font-weight: 500; letter-spacing: -.015em; margin: 0 0 .3rem; color: var(--sea); overflow-wrap: anywhere; }
.cover .kind { font-family: var(--sans); font-size: 1.05rem; margin: 0 0 .4rem; }
.cover-photo { margin: 1.5rem 0; }
.cover-photo img { display: block; width: auto; max-height: 30rem; }
.cover-facts { margin-top: 1.5rem; }
.draft-note { border: 2px solid var(--rust); padding: .6rem .9rem; }
.preview .cover { padding-top: 1rem; }
.preview .cover h1 { font-size: 2.2rem; }
.preview .cover-photo { display: none; }
.preview [data-start] { cursor: pointer; }
.draft-band { position: fixed; right: 0; top: 0; z-index: 2; font: 700 .95rem/1 var(--sans); letter-spacing: .2em; color: #fff; background: var(--rust); padding: .55rem .6rem .55rem .8rem; }

.draft-mark { display: none; }
.draft-mark text { font: 700 34px var(--sans); letter-spacing: .12em; text-anchor: middle; fill: none; stroke: #d9b5aa; stroke-width: .4; }

.contents ol { list-style: none; padding: 0; columns: 2; column-gap: 2.5rem; }
.contents li { break-inside: avoid; padding: .18rem 0; }
.contents a { text-decoration: none; display: flex; gap: .7em; }
.contents .n { min-width: 1.5em; text-align: right; color: var(--quiet); font-variant-numeric: tabular-nums; }
.summary-grid { display: grid; grid-template-columns: minmax(0, 1.15fr) minmax(0, 1fr); gap: 2rem; align-items: start; }
.summary-grid h3, .summary-grid caption { margin-top: 0; }
ol.first { list-style: none; padding: 0; }
ol.first li { padding: .3rem 0; border-top: 1px solid var(--rule); }
ol.first .muted { display: block; font-size: .92rem; }
ol.first a { font-weight: 600; }
.due { display: flex; gap: .5em; align-items: center; }
.gauge { flex: none; color: var(--sea); }

.table { overflow-x: auto; margin: 0 0 1.3rem; }
table { border-collapse: collapse; width: 100%; font-size: .95rem; line-height: 1.4; }
caption { caption-side: top; text-align: left; font-weight: 600; padding: .4rem 0 .35rem; break-after: avoid; }
th, td { text-align: left; vertical-align: top; padding: .34rem .8rem .34rem 0; border-top: 1px solid var(--rule); font-weight: inherit; }
th:last-child, td:last-child { padding-right: 0; }
tbody tr:last-child > * { border-bottom: 1px solid var(--rule); }
thead th { font-family: var(--sans); font-size: .82rem; color: var(--quiet); border-top: 2px solid var(--ink); vertical-align: bottom; }
thead { break-after: avoid; }
tr { break-inside: avoid; }
th.number, td.number { text-align: right; font-variant-numeric: lining-nums tabular-nums; }
.readings .other { display: block; font-size: .87em; }
.readings th[scope=row] { white-space: nowrap; }
.parts th:first-child { width: 24%; }
.parts td:nth-child(3) { width: 11%; }
.parts td:nth-child(4) { width: 9%; }
.parts { font-size: .92rem; }
.part-id { font-family: var(--sans); font-size: .9em; font-weight: 700; }
.kind-name { display: block; font-size: .9em; }
.parts td p { margin: .3rem 0 0; }
.open-list th:first-child { width: 19%; }
.open-list td:nth-child(3) { width: 25%; }
.where { font-family: var(--sans); font-size: .9em; }
.cited th[scope=row] { white-space: nowrap; }
.cited td:nth-child(4) { width: 24%; }
.counts td.number { width: 5rem; }
.recommendations th:first-child { width: 3.2rem; }
.recommendations td:nth-child(3), .recommendations td:nth-child(4) { width: 17%; }
.recommendations td p { margin: .15rem 0 0; }
.sums { break-inside: avoid; }
.sums caption .muted { font-weight: 400; display: block; font-size: .93em; }
.sums .total th, .sums .total td { border-top: 1.5px solid var(--ink); }
.opinion { font-size: 1.15rem; }
.columns { columns: 2; column-gap: 2.5rem; }
.facts-group { break-inside: avoid-column; }
.columns .facts-group:first-child h3 { margin-top: 0; }
.columns dl.facts > div { grid-template-columns: 8rem 1fr; }

.group { margin-top: 2.2rem; }
.group > h3 { font-size: 1.3rem; margin-bottom: .2rem; color: var(--sea); }
.group > h3 .muted { font: 400 .9rem var(--sans); }
.group > .meaning { break-after: avoid; font-style: italic; }
.finding { margin: 1.2rem 0 2rem; padding: .9rem 0 0 1.1rem; border-left: 4px solid var(--sea); }
.finding .number { color: var(--sea); margin-right: .35em; font-variant-numeric: tabular-nums; }
.finding .on { font-size: .97rem; margin-bottom: .5rem; break-after: avoid; }
dl.card > div { grid-template-columns: 7.5rem 1fr; }
dl.card ul, dl.facts dd ul { list-style: none; padding: 0; }
dl.facts dd li + li { margin-top: .3rem; }
dl.facts.computed { margin-top: -1rem; font-size: .93rem; }
.body.beside + dl.facts.computed { margin-top: .4rem; }
.figures { color: var(--quiet); font-size: .93em; }
.figures::before { content: "["; } .figures::after { content: "]"; }
.finding .body.beside { display: grid; grid-template-columns: minmax(0, 1fr) 14rem; gap: 1.2rem; align-items: start; }
.photos { display: grid; gap: 1rem; align-content: start; }
figure { margin: 0; break-inside: avoid; }
.photos img { display: block; width: 100%; }
figcaption { font-size: .93rem; line-height: 1.4; padding-top: .35rem; }
.no-photo { border: 1px dashed var(--quiet); padding: 1.2rem; min-height: 7rem; display: flex; align-items: center; }
.annex { display: grid; gap: 2rem; }
.annex img { display: block; max-height: 82vh; width: auto; }
.run { margin: 1.2rem 0 1.8rem; padding-top: .6rem; border-top: 1px solid var(--rule); }
.drawing { overflow-x: auto; }
.drawing svg { display: block; color: var(--ink); min-width: 34rem; }
.drawing text { font: 10.5px var(--sans); text-anchor: middle; fill: var(--ink); }
.drawing text.id { font-weight: 700; font-size: 12px; }
.drawing text.end { text-anchor: start; font-size: 12px; font-weight: 700; }
.drawing .wall { fill: #dfe9ec; stroke: var(--ink); stroke-width: 1.3; }
.drawing .body { fill: #fff; stroke: var(--ink); stroke-width: 1.6; }
.drawing .hull { fill: none; stroke: var(--ink); stroke-width: 7; }
.drawing .line { fill: none; stroke: var(--ink); stroke-width: 2; }
.drawing .hair { fill: none; stroke: var(--quiet); stroke-width: .7; }
.drawing .mark path { fill: #fff; stroke: var(--rust); stroke-width: 2.6; }
.drawing .mark text { font-weight: 700; font-size: 11.5px; fill: var(--rust); }
ol.marks { margin: .5rem 0; }
.run figcaption { padding: 0 0 .5rem; font-size: 1rem; break-after: avoid; }
.drawing text.from { text-anchor: start; fill: var(--quiet); }
ol.marks li span { font-family: var(--sans); font-size: .92em; font-weight: 700; }
.method { break-inside: avoid; }
.method h3 { font-size: 1.05rem; margin-bottom: .15rem; }
.method p { margin: .2rem 0; }
.signatures { display: grid; grid-template-columns: repeat(auto-fit, minmax(15rem, 1fr)); gap: 2.5rem; margin: 1.5rem 0; break-inside: avoid; }
.line-for { border-bottom: 1px solid var(--ink); padding-top: 2.6rem; font: .82rem var(--sans); color: var(--quiet); }
address { font-style: normal; }
.end { margin-top: 3rem; border-top: 3px double var(--sea); padding-top: .6rem; color: var(--quiet); font-size: .93rem; }

@media screen and (max-width: 640px) {
  body { padding: 0 .9rem 3rem; font-size: 1rem; }
  .summary-grid { grid-template-columns: minmax(0, 1fr); gap: 1rem; }
  .contents ol, .columns { columns: 1; }
  dl.facts > div, dl.card > div, .columns dl.facts > div { grid-template-columns: minmax(0, 1fr); }
  .parts caption, .recommendations caption, .open-list caption { display: block; }
  .parts, .parts tbody, .parts tr, .parts th, .parts td, .recommendations, .recommendations tbody, .recommendations tr, .recommendations th, .recommendations td,
  .open-list, .open-list tbody, .open-list tr, .open-list th, .open-list td { display: block; width: auto !important; border: 0; padding: .1rem 0; }
  .parts thead, .recommendations thead, .open-list thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .parts tr, .recommendations tr, .open-list tr { border-top: 1px solid var(--rule); padding: .5rem 0; }
  .parts td:nth-child(n+3)::before, .recommendations td:nth-child(n+3)::before, .open-list td:nth-child(n+3)::before { content: attr(data-label) ": "; font-family: var(--sans); font-size: .86rem; color: var(--quiet); }
  .parts td:empty, .recommendations td:empty, .open-list td:empty { display: none; }
  .finding { padding-left: .8rem; }
  .finding .body.beside { grid-template-columns: minmax(0, 1fr); }
}

@page { margin: 21mm 18mm 19mm;
  @top-left { content: ${head}; ${margin} }
  @top-right { content: ${number}; ${margin} }
  ${draft === undefined ? '' : `@top-center { content: ${draft}; ${margin} color: #8a2b10; font-weight: 700; }`}
  @bottom-left { content: ${foot}; ${margin} }
  @bottom-right { content: "page " counter(page) " of " counter(pages); ${margin} }
}
@page :first { @top-left { content: none; } @top-right { content: none; } }
@media print {
  html { font-size: 10.2pt; }
  body { max-width: none; padding: 0; font-size: 1rem; line-height: 1.4; }
  a { color: inherit; text-decoration: none; }
  .skip, .end { display: none; }
  h2 { font-size: 16pt; margin-top: 9mm; }
  .finding h4 { font-size: 11.5pt; }
  .cover { min-height: 238mm; display: flex; flex-direction: column; padding-top: 18mm; break-after: page; }
  .cover h1 { font-size: 46pt; }
  .cover-photo img { max-height: 120mm; }
  .cover-facts { margin-top: auto; }
  .preview .cover { min-height: 0; break-after: auto; padding-top: 0; }
  .section-summary, .section-findings, .section-statement, .section-photographs, .section-open { break-before: page; }
  .section-summary > h2, .section-findings > h2, .section-statement > h2, .section-photographs > h2, .section-open > h2 { margin-top: 0; }
  .section-summary + .contents { break-before: page; }
  .contents h2 { margin-top: 0; }
  .table, .drawing { overflow: visible; }
  .drawing svg { min-width: 0; }
  thead { display: table-header-group; }
  dl.facts > div { break-inside: avoid; }
  dl.computed > div { break-inside: auto; }
  .section > h2 + p, .section > p.lead { break-after: avoid; }
  .finding .body.beside + dl.card > div { grid-template-columns: 22mm 1fr; }
  .finding { break-inside: auto; padding-top: 0; }
  .finding > h4, .finding > .on { break-after: avoid; }
  .finding .body.beside { grid-template-columns: minmax(0, 1fr) 54mm; gap: 5mm; }
  .finding .body.beside dl.card > div { grid-template-columns: 22mm 1fr; }
  .methods { columns: 2; column-gap: 8mm; font-size: 8.5pt; }
  .method { break-inside: auto; }
  .columns .facts-group { break-inside: auto; }
  .annex { display: block; }
  .annex figure { margin-bottom: 8mm; }
  .annex img { max-height: 98mm; max-width: 100%; }
  .draft-band { display: none; }
  .draft-mark { display: block; position: fixed; inset: 0; z-index: -1; width: 100%; height: 100%; }
  html, body { background: none; }
  .draft-note, tr, .gauge, .mark, .run { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
}
`;
}
