/**
 * The look of every paper: a serif to read, a sans to label, one color of the firm's, rules instead of boxes. Made for
 * paper first, A4 and Letter alike, then for a screen and a phone. Nothing is fetched, and every tint has a word or a
 * shape beside it that says the same.
 */
import { drawingCss } from './drawings/drawing.js';
import type { Palette } from './palette.js';
import { printStyle, type PrintStrings } from './style-print.js';

export interface StyleParts extends PrintStrings {
    readonly palette: Palette;
}

export const serif = '"Source Serif 4", Charter, Cambria, "Liberation Serif", "Noto Serif", serif';
export const sans = '"Source Sans 3", "Helvetica Neue", "Liberation Sans", "Noto Sans", Arial, sans-serif';

export function styleSheet({ palette, ...print }: StyleParts): string {
    return `:root { color-scheme: light; --ink: #17212b; --quiet: #4a5660; --rust: #8a2b10; --rule: #c3ccd1; --accent: ${palette.accent}; --accent-text: ${palette.accentText}; --on-accent: ${palette.onAccent}; --tint: ${palette.tint}; --serif: ${serif}; --sans: ${sans}; --label: 8.5rem; }
${base}${cover}${front}${tables}${findings}${photographs}${drawingCss}${closing}${phone}${printStyle({ ...print, sans })}`;
}

const base = `
*, *::before, *::after { box-sizing: border-box; }
html { background: #fff; scroll-padding-top: 3rem; -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body { margin: 0 auto; padding: 0 1.5rem 4rem; max-width: 54rem; background: #fff; color: var(--ink); font: 1.0625rem/1.5 var(--serif); font-variant-numeric: lining-nums; overflow-wrap: break-word; hyphens: manual; }
h1, h2, h3, h4 { font-weight: 600; line-height: 1.2; text-wrap: balance; break-after: avoid; break-inside: avoid; color: var(--ink); }
h2 { font-size: 1.75rem; letter-spacing: -.008em; margin: 4rem 0 1.1rem; padding-top: 1rem; background: linear-gradient(var(--accent), var(--accent)) 0 0 / 4.5rem 5px no-repeat, linear-gradient(var(--rule), var(--rule)) 0 2px / 100% 1px no-repeat; display: flex; gap: .6em; }
h2 .n { color: var(--accent-text); font-family: var(--sans); font-weight: 400; font-variant-numeric: lining-nums tabular-nums; }
h3 { font-size: 1.22rem; margin: 2.1rem 0 .5rem; }
h4 { font-size: 1.14rem; margin: 0 0 .2rem; }
p { margin: 0 0 .7rem; orphans: 3; widows: 3; }
.section > p { max-width: 41rem; }
ul, ol { margin: 0 0 .7rem; padding-left: 1.3rem; }
a { color: var(--accent-text); text-decoration: underline; text-decoration-thickness: .06em; text-underline-offset: .15em; }
a:focus-visible, [tabindex]:focus-visible { outline: 3px solid var(--accent-text); outline-offset: 2px; }
img, svg { max-width: 100%; height: auto; max-height: none; }
strong { font-weight: 600; }
.small { font-size: .92rem; }
.muted, .other { color: var(--quiet); }
.lead { font-size: 1.18rem; line-height: 1.45; }
.absent { color: var(--rust); }
.fact { white-space: normal; }
.skip { position: absolute; left: -99rem; top: 0; background: #fff; padding: .5rem 1rem; z-index: 3; }
.skip:focus { left: 0; }
dl, dd { margin: 0; }
dt { font: .88rem/1.35 var(--sans); color: var(--quiet); padding-top: .2em; }
dd > p:last-child, dd > ul:last-child, td > p:last-child { margin-bottom: 0; }
dl.facts { margin: 0 0 1.1rem; }
dl.facts > div { display: grid; grid-template-columns: var(--label) minmax(0, 1fr); gap: .1rem 1.1rem; padding: .32rem 0; border-top: 1px solid var(--rule); }
dl.facts > div:last-child { border-bottom: 1px solid var(--rule); }
dl.facts dd ul { list-style: none; padding: 0; }
dl.facts dd li + li { margin-top: .3rem; }
dl.run-in > div { display: inline; }
dl.run-in > div:not(:last-child)::after { content: "; "; }
dl.run-in dt, dl.run-in dd { display: inline; }
dl.run-in dt { padding: 0; }
dl.run-in dt::after { content: " "; }
`;

const cover = `
.cover { padding: 2rem 0 0; }
.firm-head { display: flex; align-items: center; gap: .9rem; margin: 0 0 1.5rem; min-height: 3.4rem; }
.firm-head img { display: block; height: 3.4rem; width: auto; max-width: 12rem; object-fit: contain; object-position: left; }
.firm-head p { margin: 0; font: 600 1.05rem/1.3 var(--sans); }
.firm-head .motto { display: block; font-weight: 400; color: var(--quiet); }
.title-block { background: var(--accent); color: var(--on-accent); padding: 1.7rem 2rem 1.9rem; }
.title-block h1 { font-size: clamp(2.6rem, 9vw, 4.6rem); font-weight: 400; line-height: 1.04; letter-spacing: -.018em; margin: 0; color: inherit; overflow-wrap: anywhere; }
.title-block .kind { font: 600 1.02rem/1.3 var(--sans); margin: 0 0 .55rem; }
.title-block .lead { margin: .7rem 0 0; }
.cover-photo { margin: 0; background: var(--tint); max-height: 34rem; display: flex; flex-direction: column; overflow: hidden; }
.cover-photo img { display: block; flex: 0 1 auto; min-height: 0; width: 100%; object-fit: cover; }
.cover-photo.tall img { object-fit: contain; }
.cover.bare .title-block { min-height: 18rem; display: flex; flex-direction: column; justify-content: flex-end; }
dl.cover-facts { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); gap: 1.2rem 1.6rem; margin: 1.7rem 0 1.2rem; }
dl.cover-facts > div { border-top: 1px solid var(--rule); padding-top: .35rem; }
dl.cover-facts dt { padding: 0 0 .1rem; }
dl.cover-facts dd { line-height: 1.35; }
.draft-note { border: 2px solid var(--rust); padding: .6rem .9rem; }
.draft-band { position: fixed; right: 0; top: 0; z-index: 2; font: 700 .95rem/1 var(--sans); letter-spacing: .2em; color: #fff; background: var(--rust); padding: .55rem .6rem .55rem .8rem; }
.draft-mark { display: none; }
.draft-mark text { font: 600 34px var(--sans); letter-spacing: .12em; text-anchor: middle; fill: none; stroke: #d9b5aa; stroke-width: .4; }
.preview .cover { padding-top: 1rem; }
.preview .title-block, .preview .cover.bare .title-block { min-height: 0; padding: 1rem 1.2rem; }
.preview .title-block h1 { font-size: 2.2rem; }
.preview .cover-photo, .preview .firm-head { display: none; }
.preview [data-start] { cursor: pointer; }
`;

const front = `
.key { display: grid; grid-template-columns: repeat(auto-fit, minmax(10rem, 1fr)); gap: 1rem 1.6rem; margin: 0 0 1.6rem; }
.key > div { border-top: 3px solid var(--accent); padding-top: .4rem; }
.key dt { padding: 0; }
.key .figure { font-size: 1.7rem; line-height: 1.15; letter-spacing: -.01em; padding: .1rem 0 .15rem; }
.key .note { font: .88rem/1.35 var(--sans); color: var(--quiet); }
.summary-grid { display: grid; grid-template-columns: minmax(0, 1.15fr) minmax(0, 1fr); gap: 2rem; align-items: start; }
.summary-grid h3, .summary-grid caption { margin-top: 0; padding-top: 0; font: 600 1rem/1.35 var(--sans); color: var(--ink); }
.summary-grid .table { margin-bottom: 0; }
ol.first { list-style: none; padding: 0; border-bottom: 1px solid var(--rule); }
ol.first li { position: relative; padding: .34rem 0 .34rem 2.6rem; border-top: 1px solid var(--rule); line-height: 1.35; }
ol.first li > a:first-child { position: absolute; left: 0; font: 600 1em/1.35 var(--sans); }
ol.first .muted { display: block; font: .88rem/1.35 var(--sans); }
.due { display: flex; gap: .5em; align-items: center; }
.gauge { flex: none; color: var(--accent-text); }
.contents ol { list-style: none; padding: 0; columns: 2; column-gap: 2.5rem; }
.contents li { break-inside: avoid; padding: .24rem 0; border-bottom: 1px solid var(--rule); }
.contents a { text-decoration: none; color: inherit; display: flex; gap: .7em; }
.contents a:hover { color: var(--accent-text); text-decoration: underline; }
.contents .n { flex: none; width: 1.5em; color: var(--accent-text); font-family: var(--sans); font-variant-numeric: tabular-nums; }
.contents .page { display: none; }
.columns { columns: 2; column-gap: 2.5rem; }
.facts-group { break-inside: avoid-column; }
.columns .facts-group:first-child h3 { margin-top: 0; }
`;

const tables = `
.table { overflow-x: auto; margin: 0 0 1.5rem; }
table { border-collapse: collapse; width: 100%; font: .95rem/1.4 var(--sans); }
caption { caption-side: top; text-align: left; font: 600 1rem/1.35 var(--sans); padding: .5rem 0 .45rem; break-after: avoid; }
th, td { text-align: left; vertical-align: top; padding: .38rem .9rem .38rem 0; border-top: 1px solid var(--rule); font-weight: inherit; }
th:last-child, td:last-child { padding-right: 0; }
tbody tr:last-child > * { border-bottom: 1px solid var(--rule); }
thead th { font-size: .86rem; line-height: 1.3; color: var(--quiet); border-top: 2px solid var(--accent); vertical-align: bottom; }
thead { break-after: avoid; }
.section > h2 + p { break-inside: avoid; }
.reading > h3 + p { break-after: avoid; }
tr { break-inside: avoid; }
tbody th[scope=row] a, td > a { font-weight: 600; }
th.number, td.number { text-align: right; font-variant-numeric: lining-nums tabular-nums; }
.readings .other { display: block; font-size: .87em; }
.readings th[scope=row] { white-space: nowrap; }
table:has(thead th:nth-child(7)) { font-size: .88rem; }
table:has(thead th:nth-child(7)) :is(th, td):not(:last-child) { padding-right: .6rem; }
table:has(thead th:nth-child(10)) { font-size: .82rem; }
table:has(thead th:nth-child(10)) :is(th, td):not(:last-child) { padding-right: .45rem; }
table:has(thead th:nth-child(10)) thead th { font-size: .9em; }
dl.conditions { font: .95rem/1.45 var(--sans); margin: 0 0 .6rem; }
.parts { font-size: .92rem; }
.parts th:first-child { width: 24%; }
.parts td:nth-child(3) { width: 11%; }
.parts td:nth-child(4) { width: 9%; }
.part-id { font-weight: 600; }
.kind-name { display: block; font-size: .92em; }
.parts td p { margin: .3rem 0 0; }
.open-list th:first-child { width: 19%; }
.open-list td:nth-child(3) { width: 25%; }
.where { font-size: .95em; }
.cited th[scope=row] { white-space: nowrap; }
.cited td:nth-child(4) { width: 24%; }
.counts td.number { width: 5rem; }
.recommendations th:first-child { width: 3.2rem; }
.recommendations td:nth-child(3), .recommendations td:nth-child(4) { width: 17%; }
.recommendations td p { margin: .15rem 0 0; }
.followed td:nth-child(3) { width: 11%; }
.followed td:nth-child(4) { width: 26%; }
.followed td:nth-child(5) { width: 21%; }
.sums { break-inside: avoid; }
.sums caption .muted { font-weight: 400; display: block; font-size: .93em; }
.sums .total th, .sums .total td { border-top: 1.5px solid var(--ink); }
.opinion { font-size: 1.3rem; }
`;

const findings = `
.group { margin-top: 2.4rem; }
.group > h3 { font-size: 1.3rem; margin: 0 0 .5rem; padding: .5rem .8rem; background: var(--tint); color: var(--accent-text); }
.group > h3 .muted { margin-left: auto; font: 400 .95rem var(--sans); color: var(--quiet); }
.group > .meaning { break-after: avoid; font-style: italic; color: var(--quiet); }
.finding { margin: 1.1rem 0 2.4rem; padding: 1rem 0 0; border-top: 1px solid var(--rule); }
.group > .meaning + .finding, .group > h3 + .finding { border-top: 0; padding-top: .3rem; }
.opening.beside { display: grid; grid-template-columns: minmax(0, 1fr) 16rem; gap: 1.6rem; align-items: start; }
.finding h4, .finding .on, .finding > p, .finding > ul, .finding > .photos { margin-left: calc(var(--label) + 1.1rem); }
.finding h4 { position: relative; font-size: 1.25rem; }
.finding h4 .number { position: absolute; right: calc(100% + 1.1rem); width: var(--label); color: var(--accent-text); font: 600 1.35rem/1.15 var(--sans); font-variant-numeric: lining-nums tabular-nums; }
.finding .on { font: .95rem/1.4 var(--sans); color: var(--quiet); margin-bottom: .6rem; break-after: avoid; }
dl.card { margin: 0; }
dl.facts.card > div { border: 0; padding: .28rem 0; }
dl.card dd > p:not(:last-child) { margin-bottom: .45rem; }
dl.facts.computed { font: .93rem/1.4 var(--sans); color: var(--quiet); margin-top: .4rem; }
`;

const photographs = `
figure { margin: 0; break-inside: avoid; }
figcaption { font: .9rem/1.4 var(--sans); padding-top: .4rem; }
.marked { display: block; position: relative; }
.marked > img { display: block; width: 100%; }
.marked > svg { position: absolute; inset: 0; width: 100%; height: 100%; }
.photos { display: grid; gap: 1rem; align-content: start; }
.photos img { display: block; width: 100%; }
.pair { display: flex; gap: 1rem; break-inside: avoid; }
.pair > figure { min-width: 0; flex: 1.3333 1 0; }
.pair > .aspect-9-16 { flex-grow: .5625; } .pair > .aspect-2-3 { flex-grow: .6667; } .pair > .aspect-3-4 { flex-grow: .75; } .pair > .aspect-1-1 { flex-grow: 1; } .pair > .aspect-3-2 { flex-grow: 1.5; } .pair > .aspect-16-9 { flex-grow: 1.7778; }
.pair.middling { max-width: 32rem; } .pair.narrow { max-width: 21rem; }
.no-photo { border: 1px dashed var(--quiet); padding: 1.2rem; min-height: 7rem; display: flex; align-items: center; }
.annex { display: grid; gap: 2rem; }
.annex img { display: block; max-height: 82vh; width: auto; }
.annex .marked { width: fit-content; }
.annex .marked > img { max-width: 100%; }
`;

const closing = `
.method { break-inside: avoid; }
.methods { font-size: .95rem; }
.method h3 { font-size: 1.05rem; margin: 1.3rem 0 .15rem; }
.method p { margin: .2rem 0; }
.signatures { display: grid; grid-template-columns: repeat(auto-fit, minmax(15rem, 1fr)); gap: 2.5rem; margin: 1.5rem 0; break-inside: avoid; }
.line-for { border-bottom: 1px solid var(--ink); padding-top: 2.6rem; font: .88rem var(--sans); color: var(--quiet); }
address { font-style: normal; }
.end { margin-top: 3.5rem; border-top: 3px solid var(--accent); padding-top: .6rem; color: var(--quiet); font: .93rem/1.4 var(--sans); }
`;

const phone = `
@media screen and (max-width: 700px) {
  :root { --label: 6.5rem; }
  body { padding: 0 1rem 3rem; font-size: 1rem; }
  h2 { font-size: 1.5rem; margin-top: 3rem; }
  .cover { padding-top: 1rem; }
  .draft .firm-head { padding-right: 5.5rem; }
  .title-block { padding: 1.2rem 1.1rem 1.3rem; }
  dl.cover-facts { grid-template-columns: repeat(2, minmax(0, 1fr)); }
  .summary-grid { grid-template-columns: minmax(0, 1fr); gap: 1.5rem; }
  .key { grid-template-columns: repeat(2, minmax(0, 1fr)); }
  .key .figure { font-size: 1.4rem; }
  .contents ol, .columns { columns: 1; }
  dl.facts > div { grid-template-columns: minmax(0, 1fr); gap: 0; }
  .parts caption, .recommendations caption, .open-list caption { display: block; }
  .parts, .parts tbody, .parts tr, .parts th, .parts td, .recommendations, .recommendations tbody, .recommendations tr, .recommendations th, .recommendations td,
  .open-list, .open-list tbody, .open-list tr, .open-list th, .open-list td { display: block; width: auto !important; border: 0; padding: .1rem 0; }
  .parts thead, .recommendations thead, .open-list thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .parts tr, .recommendations tr, .open-list tr { border-top: 1px solid var(--rule); padding: .5rem 0; }
  .parts td:nth-child(n+3)::before, .recommendations td:nth-child(n+3)::before, .open-list td:nth-child(n+3)::before { content: attr(data-label) ": "; font-size: .88rem; color: var(--quiet); }
  .parts td:empty, .recommendations td:empty, .open-list td:empty { display: none; }
  .table > table:has(thead th:nth-child(4)):not(.parts, .recommendations, .open-list, .counts) { min-width: 34rem; }
  .table > table:has(thead th:nth-child(7)) { min-width: 46rem; }
  .table > table:has(thead th:nth-child(10)) { min-width: 60rem; }
  .opening.beside { grid-template-columns: minmax(0, 1fr); gap: .6rem; }
  .finding h4, .finding .on, .finding > p, .finding > ul, .finding > .photos { margin-left: 0; }
  .finding h4 .number { position: static; width: auto; margin-right: .35em; font-size: 1.2rem; }
}
`;
