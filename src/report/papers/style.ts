/** Layout of the shorter papers, beyond what they share with the report. */
export const paperStyle = `
.paper main > h1 { font-size: 1.7rem; margin: 1.6rem 0 .8rem; color: var(--accent-text); }
.paper h2 { font-size: 1.2rem; margin: 1.8rem 0 .3rem; padding: 0; background: none; display: block; }
.paper section > h2 + p, .paper section > h2 + .table { break-before: avoid; }
.paper section > h2 + p { break-after: avoid; }
.paper h3 { font-size: 1.05rem; margin: 1.2rem 0 .3rem; }
.letterhead { display: flex; gap: 1.2rem; align-items: flex-start; justify-content: space-between; padding: 2rem 0 1.1rem; border-bottom: 3px double var(--accent); }
.letterhead address { font-family: var(--sans); font-size: .92rem; line-height: 1.4; }
.letterhead .firm-mark { width: auto; height: 3.6rem; max-width: 12rem; order: 2; }
.addressee { display: flex; justify-content: space-between; gap: 2rem; margin: 1.4rem 0 .6rem; }
.addressee p { margin: 0; }
.addressee .to { max-width: 26rem; white-space: pre-line; }
.addressee .of { text-align: right; white-space: nowrap; }
.gap { font-weight: 600; border-bottom: 1px solid currentColor; }
.matter { margin: 0 0 1.1rem; padding-left: .9rem; border-left: 4px solid var(--accent); }
.matter h3 { margin-top: 0; }
.matter dl.facts.card > div { padding: .15rem 0; break-inside: avoid; }
.matter .number, .work .number { color: var(--accent-text); }
.limits-of-paper { margin-top: 1.8rem; padding-top: .6rem; border-top: 1px solid var(--rule); font-size: .95rem; }
.paper .signature { break-inside: avoid; }
.tick { display: inline-block; width: 1.15rem; height: 1.15rem; border: 1.5px solid var(--ink); }
table.work td:last-child, table.work th:last-child { width: 3.4rem; text-align: center; padding-right: 0; }
table.work th:first-child { width: 3.2rem; white-space: nowrap; }
table.work td:nth-child(2) { width: 38%; }
table.work td:nth-child(4) { width: 15%; }
table.work ul { list-style: none; padding: 0; margin: 0; }
table.work li + li { margin-top: .35rem; }
table.work .part-name { font-weight: 600; }
.answered th:first-child { width: 3.6rem; white-space: nowrap; }
.answered td:nth-child(2) { width: 27%; }
.answered td:nth-child(3):not(:last-child) { width: 32%; }
.paper .work caption, .paper .answered caption { font-weight: 400; padding-top: 0; }
@media screen and (max-width: 640px) {
  .table > table.work, .table > table.answered { min-width: 0 !important; }
  .addressee { display: block; }
  .addressee .of { text-align: left; margin-top: .4rem; }
  .work caption, .answered caption { display: block; }
  .work, .work tbody, .work tr, .work th, .work td, .answered, .answered tbody, .answered tr, .answered th, .answered td { display: block; width: auto !important; border: 0; padding: .1rem 0; text-align: left !important; }
  .work thead, .answered thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .work tr, .answered tr { border-top: 1px solid var(--rule); padding: .5rem 0; }
  .work td:nth-child(n+4)::before, .answered td:nth-child(n+3)::before { content: attr(data-label) ": "; font-family: var(--sans); font-size: .86rem; color: var(--quiet); }
}
@media print {
  .letterhead { padding-top: 0; }
  .paper main > h1 { font-size: 16pt; }
  .paper h2 { font-size: 12.5pt; margin-top: 6mm; }
  .tick { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
}
`;
