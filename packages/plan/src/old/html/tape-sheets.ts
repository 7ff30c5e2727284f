import { millimetres } from "@thrum/maths";
import type { WarpPlan } from "../plan/warp-plan.js";
import { measuredText } from "../text/amounts.js";
import { hemSentence, leftSentences } from "../text/cloth-lines.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { blank, columns, ruled, sheet, tickBox } from "./sheet.js";
import { EIGHTHS_OF_AN_INCH, MILLIMETRES, tapeStrips } from "./tape-strips.js";
import type { Strip } from "./tape-strips.js";

const STRIPS_TO_A_PAGE = 5;
/** Width of a strip and of the space to its neighbour; room above it for its number and below it for what comes next. */
const [WIDTH, PITCH, ABOVE, BELOW] = [28, 36, 6, 6];
/** More paper than this is no longer a tape: a measuring tape serves better. */
const MOST_STRIPS = 20;
const REACH = { short: 4, half: 7, long: 11 };

const CHECK_LINE: Markup = html`<svg
  width="110mm"
  height="12mm"
  viewBox="0 0 110 12"
  role="img"
  aria-label="A line of 100 mm"
>
  <path d="M5 2v8M105 2v8M5 6h100" fill="none" stroke="#000" stroke-width="0.4" />
</svg>`;

function tickMarks({ from, ticks }: Strip): readonly Markup[] {
  return ticks.map(({ at, reach, figure }) => {
    const y = (at - from + ABOVE).toFixed(3);
    const mark = html`<path d="M0 ${y}h${REACH[reach]}" />`;
    return figure === ""
      ? mark
      : html`${mark}<text x="${REACH.long + 1}" y="${y}" dy="${at === from ? 3.4 : 1.4}">${figure}</text>`;
  });
}

/** Where a hem is folded, its name on the side of the hem. */
interface HemMark {
  readonly at: number;
  readonly hemLies: "above" | "below";
}

function hemLines({ from, to }: Strip, hems: readonly HemMark[]): readonly Markup[] {
  return hems
    .filter(({ at }) => at >= from && at <= to)
    .map(({ at, hemLies }) => {
      const y = (at - from + ABOVE).toFixed(3);
      return html`<path d="M0 ${y}h${WIDTH}" stroke-width="0.6" stroke-dasharray="2 1" />
        <text x="${REACH.long + 6}" y="${y}" dy="${hemLies === "above" ? -1.2 : 4}">hem</text>`;
    });
}

function stripDrawing(
  strip: Strip,
  at: number,
  { isLast, hems }: { isLast: boolean; hems: readonly HemMark[] },
): Markup {
  const height = (strip.to - strip.from).toFixed(3);
  const below = (strip.to - strip.from + ABOVE + 4).toFixed(3);
  const foot = isLast ? "PIECE ENDS" : `join strip ${String(strip.number + 1)} here`;
  return html`<g transform="translate(${at * PITCH} 0)">
    <text x="0" y="4">strip ${strip.number}</text>
    <rect x="0" y="${ABOVE}" width="${WIDTH}" height="${height}" fill="none" />
    ${tickMarks(strip)} ${hemLines(strip, hems)}
    <text x="0" y="${below}">${foot}</text>
  </g>`;
}

function drawing(strips: readonly Strip[], last: number, hems: readonly HemMark[]): Markup {
  const width = STRIPS_TO_A_PAGE * PITCH;
  const tallest = Math.max(...strips.map(({ from, to }) => to - from));
  const height = (tallest + ABOVE + BELOW).toFixed(3);
  return html`<svg
    width="${width}mm"
    height="${height}mm"
    viewBox="0 0 ${width} ${height}"
    role="img"
    aria-label="Strips of the piece tape, full size"
  >
    <g stroke="#000" stroke-width="0.25" font-size="3.6" font-family="Arial, Helvetica, sans-serif">
      ${strips.map((strip, at) => stripDrawing(strip, at, { isLast: strip.number === last, hems }))}
    </g>
  </svg>`;
}

function marksTable({ pieceTape }: WarpPlan): Markup {
  const rows = pieceTape.marks.map(({ piece, at }) => [tickBox, piece, measuredText(at, "nearest"), blank]);
  return columns("Where each piece ends, from the first pick", ["woven", "piece", "ends at", "woven to"], rows);
}

/** The tape of one piece, full size, to cut out and pin along the cloth. */
export function tapeSheets(plan: WarpPlan): readonly Markup[] {
  const { wovenLength, hem } = plan.pieceTape;
  const isMetric = wovenLength.unit.endsWith("metres");
  const [length, turned] = [wovenLength.in(millimetres), hem.in(millimetres)];
  const strips = tapeStrips(length, isMetric ? MILLIMETRES : EIGHTHS_OF_AN_INCH);
  const asPaper = strips.length <= MOST_STRIPS;
  const hems: readonly HemMark[] =
    turned === 0
      ? []
      : [
          { at: turned, hemLies: "above" },
          { at: length - turned, hemLies: "below" },
        ];
  const marks = html`<p>
      One piece with its hems is <b>${measuredText(wovenLength, "nearest")}</b> long on the loom. Measure on the cloth
      at weaving tension, from the first pick, never on the warp. ${hemSentence(plan.pieceTape)}
    </p>
    ${asPaper ? [] : html`<p>A piece as long as this wants a measuring tape, not one of paper.</p>`} ${marksTable(plan)}
    ${ruled(leftSentences(plan.pieceTape))}`;
  const pages = asPaper ? Math.ceil(strips.length / STRIPS_TO_A_PAGE) : 0;
  const tapes = Array.from({ length: pages }, (_, at) => {
    const own = strips.slice(at * STRIPS_TO_A_PAGE, (at + 1) * STRIPS_TO_A_PAGE);
    const body = html`<p>
        This line must measure 100 mm. If it does not, print at 100 %, "actual size".
        ${isMetric ? "Figures are centimetres." : "Figures are inches, ticks eighths."}
      </p>
      ${CHECK_LINE} ${drawing(own, strips.length, hems)}`;
    const heading = `Piece tape, sheet ${String(at + 1)} of ${String(pages)}`;
    return sheet(plan, { name: `tape-${String(at + 1)}`, kind: "tape", heading, body });
  });
  return [sheet(plan, { name: "pieces", kind: "plain", heading: "Piece tape", body: marks }), ...tapes];
}
