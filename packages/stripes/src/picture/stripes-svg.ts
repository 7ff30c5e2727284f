import { type Check, check } from "../refusal/check.js";
import { aMap, kind, oneOf, someEnds, whole } from "../refusal/kinds.js";
import { item } from "../sequence/item.js";
import type { Sequence } from "../sequence/sequence.js";
import { hatching } from "./hatching.js";
import { aFill, aLabel, escaped, type Paint, paintOf } from "./paint.js";

export interface StripesSvgInput<C> {
  readonly sequence: Sequence<C>;
  readonly paints: ReadonlyMap<C, Paint>;
  /** In colour; or for print in black and white, hatched in the order of the paints (white, black, lines) or lettered. */
  readonly drawnIn: "colours" | "hatching" | "letters";
  /** Height of the picture, in ends; its width is the ends of the sequence. */
  readonly height: number;
  /** Begins the names of its parts, so that several pictures can stand on one page. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
}

/**
 * A picture of the stripes to scale, one end one unit wide, as the text of an SVG file.
 *
 * @throws StripeError for a colour without a paint, or a paint that is more than a colour
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * const paints = new Map([["ash", { fill: "#ccc", letter: "A", name: "ash" }], ["coal", { fill: "#222", letter: "C", name: "coal" }]]);
 * const words = { id: "napkin", title: "Napkin", description: "Two stripes" };
 * stripesSvg({ sequence: half, paints, drawnIn: "colours", height: 40, ...words }).startsWith("<svg") // true
 */
export function stripesSvg<C>(input: StripesSvgInput<C>): string {
  check("stripesSvg", input, {
    sequence: someEnds,
    paints: aMap,
    drawnIn: oneOf("colours", "hatching", "letters"),
    height: whole(1, 1_000_000),
    id: anId,
    title: aLabel(200),
    description: aLabel(2000),
  });
  const { sequence, paints, drawnIn, height, id } = input;
  const width = sequence.ends;
  const checks = { fill: aFill, letter: aLabel(4), name: aLabel(100) };
  const { fills, patterns } = hatching(id, drawnIn === "hatching" ? paints.size : 0, width / 150);
  const places = new Map([...paints.keys()].map((colour, index) => [colour, index]));
  const rectangles: string[] = [];
  const letters: string[] = [];
  for (const [index, { colour, ends }] of sequence.runs.entries()) {
    const { fill, letter, name } = paintOf("stripesSvg", paints, colour, checks);
    const start = item(sequence.starts, index);
    const shown = { colours: fill, hatching: fills[places.get(colour) ?? 0], letters: "#fff" }[drawnIn];
    rectangles.push(
      `<rect x="${start - 1}" y="0" width="${ends}" height="${height}" fill="${shown}"><title>${escaped(name)}, ${ends} ends, ${start} to ${start + ends - 1}</title></rect>`,
    );
    // Each lower than the last, for in narrow stripes they would run into one another.
    const y = (height * (1 + (index % 4))) / 5;
    letters.push(`<text x="${start - 1 + ends / 2}" y="${y}">${escaped(letter)}</text>`);
  }
  const outline = drawnIn === "colours" ? "" : ` stroke="#000" stroke-width="${width / 1000}"`;
  const size = Math.min(width / 60, height / 6);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" overflow="visible" role="img" aria-labelledby="${id}-title ${id}-description">`,
    `<title id="${id}-title">${escaped(input.title)}</title><desc id="${id}-description">${escaped(input.description)}</desc>`,
    ...patterns,
    `<g${outline}>`,
    ...rectangles,
    "</g>",
    `<g font-size="${size}" font-family="sans-serif" text-anchor="middle" stroke="#fff" stroke-width="${size / 4}" paint-order="stroke">`,
    ...(drawnIn === "letters" ? letters : []),
    "</g>",
    "</svg>",
  ].join("\n");
}

const anId: Check = /* @__PURE__ */ kind(
  "unsafe-text",
  "a letter, then letters, figures and hyphens",
  "Choose a short plain name.",
  (value) => typeof value === "string" && /^[A-Za-z][\w-]{0,40}$/.test(value),
);
