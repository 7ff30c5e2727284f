import { check } from "../refusal/check.js";
import { aMap, fields, someEnds, whole } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import { aFill, aLabel, escapedForSvg, type Paint, shownFor, spelt } from "./paint.js";
import type { StripesSvgInput } from "./stripes-svg.js";

/** Refuses what cannot be drawn; each paint is looked at where it is used. */
export function checkDrawing(refusedBy: string, input: unknown): void {
  check(refusedBy, input, {
    sequence: someEnds,
    paints: aMap,
    height: whole(1, 1_000_000),
    id: spelt(/^[A-Za-z][\w-]{0,40}$/, "a letter, then letters, figures and hyphens"),
    title: aLabel(200),
    description: aLabel(2000),
  });
}

/** One rectangle for every stripe one sees. */
export function rectangles<C>(
  refusedBy: string,
  { sequence, paints, height }: StripesSvgInput<C>,
  fillOf: (paint: Paint, colour: C, middle: number) => string,
): string {
  const aPaint = fields({ fill: aFill, letter: aLabel(4), name: aLabel(100) });
  const drawn = sequence.runs.map(({ colour, ends }, index) => {
    const paint = shownFor(refusedBy, "paints", paints, colour, aPaint);
    const start = item(sequence.starts, index);
    const seen = `${escapedForSvg(paint.name)}, ${ends} ends, ${start} to ${start + ends - 1}`;
    return `<rect x="${start - 1}" width="${ends}" height="${height}" fill="${fillOf(paint, colour, start - 1 + ends / 2)}"><title>${seen}</title></rect>`;
  });
  return drawn.join("\n");
}

/** The rectangles in thin black lines, for print in black and white. */
export function outlined(drawn: string, width: number): string {
  return `<g stroke="#000" stroke-width="${width / 1000}">${drawn}</g>`;
}

/** The picture around what is drawn in it, its texts named for those who do not see it. */
export function picture<C>({ sequence, height, id, title, description }: StripesSvgInput<C>, drawn: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${sequence.ends} ${height}" overflow="visible" role="img" aria-labelledby="${id}-title ${id}-description">
<title id="${id}-title">${escapedForSvg(title)}</title><desc id="${id}-description">${escapedForSvg(description)}</desc>
${drawn}
</svg>`;
}
