/** One stylesheet for screen, telephone and paper; no size of paper, so that the printer's own decides. Black on white. */
export const STYLE = `
@page { margin: 16mm 12mm 14mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 9pt sans-serif; } }
* { box-sizing: border-box; }
body { margin: 0; color: #000; background: #fff; font: 12pt/1.35 Arial, Helvetica, sans-serif; }
main { max-width: 186mm; margin: 0 auto; }
h1 { margin: 0 0 2mm; font-size: 20pt; line-height: 1.15; overflow-wrap: anywhere; }
h2 { margin: 7mm 0 2mm; font-size: 16pt; line-height: 1.2; border-bottom: 0.3mm solid #000; break-after: avoid; }
h2 + p, h2 + p + p { break-after: avoid; }
h3 { margin: 4mm 0 1mm; font-size: 13pt; break-after: avoid; }
p { margin: 0 0 1.5mm; overflow-wrap: break-word; break-inside: avoid; }
table { width: 100%; border-collapse: collapse; margin: 0 0 4mm; }
caption { text-align: left; font-weight: bold; padding: 1mm 0; break-after: avoid; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
thead { break-after: avoid; }
tbody tr:nth-child(-n + 3):not(:last-child), tbody tr:nth-last-child(-n + 4):not(:last-child) { break-after: avoid; }
th { text-align: left; vertical-align: bottom; border-bottom: 0.5mm solid #000; padding: 0.5mm 1mm; font-weight: normal; }
td { border-bottom: 0.2mm solid #000; padding: 0.8mm 1mm; vertical-align: middle; overflow-wrap: break-word; }
.short { white-space: nowrap; }
.whole { break-inside: avoid; }
.number { text-align: right; padding-right: 4mm; font-variant-numeric: tabular-nums; white-space: nowrap; }
.colour { display: inline-flex; gap: 1.5mm; align-items: center; vertical-align: middle; }
.colour > b { min-width: 5mm; text-align: center; }
.swatch { flex: none; width: 8mm; height: 6mm; }
.hatches { position: absolute; width: 0; height: 0; }
.picture { display: block; width: 100%; height: 24mm; }
.key { display: flex; flex-wrap: wrap; gap: 1mm 6mm; }
input[type="checkbox"] { appearance: none; flex: none; width: 6mm; height: 6mm; margin: 0; border: 0.4mm solid #000; border-radius: 0; background: #fff; vertical-align: middle; }
input[type="checkbox"]:checked { background: linear-gradient(45deg, transparent 44%, #000 44% 56%, transparent 56%), linear-gradient(-45deg, #fff 44%, #000 44% 56%, #fff 56%); }
input[type="text"] { width: 22mm; border: 0; border-bottom: 0.3mm solid #000; border-radius: 0; padding: 0; font: inherit; background: #fff; color: #000; }
.step { display: flex; gap: 3mm; align-items: flex-start; padding: 0.7mm 0; }
.step:has(+ .said), .step:has(+ table) { break-after: avoid; }
.mark { font-weight: bold; }
.caution { border-left: 1.2mm solid #000; padding-left: 3mm; }
dl { margin: 0 0 3mm; break-inside: avoid; }
dl > div { display: flex; gap: 3mm; justify-content: space-between; border-bottom: 0.2mm solid #000; padding: 1mm 0; break-inside: avoid; }
dd { margin: 0; }
.line { display: block; min-height: 1.3em; }
pre { margin: 0 0 3mm; font: 9.5pt/1.3 "Liberation Mono", "Courier New", monospace; white-space: pre-wrap; break-inside: avoid; }
.bench td { height: 10mm; padding: 0 1mm; font-size: 14pt; line-height: 1.15; }
.bench td.number { font-size: 18pt; }
.bench th { padding: 0.5mm 1mm; line-height: 1.15; }
.bench input[type="text"] { width: 11mm; }
.edge:not(.noted) > td { border-bottom-width: 1.2mm; }
.noted > td { border-bottom: 0; }
.note > td { text-align: center; font-weight: bold; }
.bench .note > td { height: auto; }
tr.noted { break-after: avoid; }
.tape { break-before: page; break-inside: avoid; }
.tape svg { display: block; overflow: visible; }
.tape text { stroke: none; fill: #000; }
@media screen { main { padding: 6mm 4mm; } .tape { overflow-x: auto; } }
@media screen and (max-width: 600px) {
  .tape { display: none; }
  thead { display: none; }
  table, caption, tbody { display: block; }
  tbody tr { display: grid; grid-template-columns: repeat(auto-fill, minmax(6rem, 1fr)); gap: 1mm 3mm; align-items: start; border: 0.4mm solid #000; margin: 0 0 3mm; padding: 2mm; }
  tbody tr.edge:not(.noted) { border-bottom-width: 1.4mm; }
  tbody tr.noted { border-bottom: 0; margin-bottom: 0; }
  tbody tr.note { display: block; border-top: 0; }
  td, .bench td { border: 0; padding: 0; height: auto; min-width: 0; overflow-wrap: anywhere; }
  td.number, .bench td.number { text-align: left; padding: 0; }
  td.words, td.colour-cell { grid-column: 1 / -1; }
  .bench td.short { font-size: 16pt; white-space: nowrap; }
  .bench td.number { font-size: 26pt; }
  .bench td.colour-cell { font-size: 20pt; }
  .colour { max-width: 100%; }
  .colour > span { min-width: 0; }
  td::before { content: attr(data-head); display: block; white-space: normal; font-size: 10.5pt; line-height: 1.2; }
  td.tick-cell::before { content: none; }
  input[type="checkbox"] { width: 12mm; height: 12mm; }
}
`;
