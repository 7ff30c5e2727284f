import type { Tape } from "./block.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { EIGHTHS_OF_AN_INCH, MILLIMETRES, stripsFor, tapeStrips } from "./tape-strips.js";
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

/** The tape of one piece, full size, to cut out and pin along the cloth; of a long piece nothing is drawn. */
export function tapeMarkup({ piece, millimetres, hem, divided }: Tape): Markup {
  if (stripsFor(millimetres) > MOST_STRIPS)
    return html`<p>${piece}: a piece as long as this wants a measuring tape, not one of paper.</p>`;
  const strips = tapeStrips(millimetres, divided === "inches" ? EIGHTHS_OF_AN_INCH : MILLIMETRES);
  const hems: readonly HemMark[] =
    hem === 0
      ? []
      : [
          { at: hem, hemLies: "above" },
          { at: millimetres - hem, hemLies: "below" },
        ];
  const pages = Math.ceil(strips.length / STRIPS_TO_A_PAGE);
  const sheets = Array.from({ length: pages }, (_, at) => {
    const own = strips.slice(at * STRIPS_TO_A_PAGE, (at + 1) * STRIPS_TO_A_PAGE);
    return html`<div class="tape">
      <h3>Tape: ${piece}, sheet ${at + 1} of ${pages}</h3>
      <p>
        This line must measure 100 mm. If it does not, print at 100 %, "actual size".
        ${divided === "inches" ? "Figures are inches, ticks eighths." : "Figures are centimetres."}
      </p>
      ${CHECK_LINE} ${drawing(own, strips.length, hems)}
    </div>`;
  });
  return html`${sheets}`;
}
