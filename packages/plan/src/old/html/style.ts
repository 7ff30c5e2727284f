/** One stylesheet for screen and paper; no size of paper, so that the printer's own decides. Black on white throughout. */
export const STYLE = `
@page { margin: 25mm 12mm 12mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 9pt sans-serif; } }
* { box-sizing: border-box; }
body { margin: 0; color: #000; background: #fff; font: 12pt/1.35 Arial, Helvetica, sans-serif; }
main { max-width: 186mm; margin: 0 auto; }
h1 { margin: 0 0 2mm; font-size: 20pt; line-height: 1.15; overflow-wrap: anywhere; }
h2 { margin: 0; font-size: 16pt; line-height: 7mm; }
h3 { margin: 4mm 0 1mm; font-size: 13pt; break-after: avoid; }
p { margin: 0 0 2mm; overflow-wrap: anywhere; }
.sheet { break-before: page; }
.sheet:first-of-type { break-before: auto; }
.sheet > header { display: flex; gap: 6mm; justify-content: space-between; align-items: baseline; border-bottom: 0.3mm solid #000; margin-bottom: 2mm; }
.job { margin: 0; font-size: 9pt; white-space: nowrap; overflow: hidden; text-overflow: ellipsis; min-width: 0; }
.sheet h2 { white-space: nowrap; }
table { width: 100%; border-collapse: collapse; margin: 0 0 4mm; }
caption { text-align: left; font-weight: bold; padding: 1mm 0; }
thead { display: table-header-group; }
tr, .whole { break-inside: avoid; }
th { text-align: left; vertical-align: bottom; border-bottom: 0.5mm solid #000; padding: 0.5mm 1mm; font-weight: normal; }
td { border-bottom: 0.2mm solid #000; padding: 0.8mm 1mm; vertical-align: middle; overflow-wrap: anywhere; }
.number { text-align: right; padding-right: 4mm; font-variant-numeric: tabular-nums; }
.plain th.number, .plain td.number, .plain td:has(> .box) { width: 1%; white-space: nowrap; }
.colour { display: flex; gap: 1.5mm; align-items: center; }
.colour > b { flex: none; width: 5mm; text-align: center; }
.swatch { flex: none; width: 8mm; height: 6mm; }
.hatches { position: absolute; width: 0; height: 0; }
.box { display: inline-block; width: 6mm; height: 6mm; border: 0.4mm solid #000; vertical-align: middle; }
.blank { display: inline-block; width: 22mm; height: 1em; border-bottom: 0.3mm solid #000; }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.ruled { margin: 0; padding: 1mm 0; border-bottom: 0.2mm solid #000; break-inside: avoid; }
.line { display: block; min-height: 1.3em; }
pre { margin: 0 0 4mm; font: 9.5pt/1.3 "Liberation Mono", "Courier New", monospace; white-space: pre-wrap; break-inside: avoid; }
.knots table { table-layout: fixed; margin: 0; }
.knots h2, .knots p, .knots th, .knots td { font-size: 14pt; }
.knots .box { display: block; }
.knots p { line-height: 7mm; margin: 0; display: flex; justify-content: space-between; }
.knots td { height: 10mm; padding: 0 1mm; line-height: 4.4mm; }
.knots th { padding: 0 1mm 0.5mm; line-height: 5mm; }
.knots td.number { font-size: 18pt; line-height: 6.4mm; padding-right: 2mm; white-space: nowrap; }
.knots .over { border-left: 0.2mm solid #000; }
.knots .stripe-ends td { border-bottom: 1.2mm solid #000; }
.knots .rest td { text-align: center; font-style: italic; }
.tape text { stroke: none; fill: #000; }
.tape svg { display: block; overflow: visible; }
@media screen { .sheet { padding: 8mm 0; } }
`;
