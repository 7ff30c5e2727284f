import { check, fault, PASSED } from "../refusal/check.js";
import { oneOf, someEnds, whole } from "../refusal/kinds.js";
import { endsPerColour } from "../sequence/ends-per-colour.js";
import { item } from "../sequence/item.js";
import type { Sequence } from "../sequence/sequence.js";
import { hatchings } from "./hatchings.js";
import { aFill, aLabel, aMapOfPaints, paintOf, escaped, type Paint } from "./paint.js";

export interface StripesSvgInput<C> {
  readonly sequence: Sequence<C>;
  readonly paints: ReadonlyMap<C, Paint>;
  /** In colour; or for print in black and white, hatched or lettered. */
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
    paints: aMapOfPaints,
    drawnIn: oneOf("colours", "hatching", "letters"),
    height: whole(1, 1_000_000),
    id: anId,
    title: aLabel(200),
    description: aLabel(2000),
  });
  const { sequence, paints, drawnIn, height, id } = input;
  const colours = [...endsPerColour(sequence).keys()];
  const checks = { fill: aFill, letter: aLabel(4), name: aLabel(100) };
  const painted = new Map(colours.map((colour) => [colour, paintOf("stripesSvg", paints, colour, checks)]));
  const { defs, fills } =
    drawnIn === "hatching" ? hatchings(id, colours, sequence.ends / 150) : { defs: "", fills: new Map<C, string>() };
  const rectangles = sequence.runs.map(({ colour, ends }, index) => {
    const { fill, letter, name } = painted.get(colour) ?? paintOf("stripesSvg", paints, colour, checks);
    const start = item(sequence.starts, index);
    const drawn =
      drawnIn === "colours"
        ? `fill="${fill}"`
        : `fill="${fills.get(colour) ?? "#fff"}" stroke="#000" vector-effect="non-scaling-stroke"`;
    const label = `<title>${escaped(name)}, ${ends} ends, ${start} to ${start + ends - 1}</title>`;
    const rectangle = `<rect x="${start - 1}" y="0" width="${ends}" height="${height}" ${drawn}>${label}</rect>`;
    const room = Math.min(ends, height);
    return drawnIn === "letters" ? rectangle + lettered(letter, start - 1 + ends / 2, height / 2, room) : rectangle;
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${sequence.ends} ${height}" role="img" aria-labelledby="${id}-title ${id}-description">`,
    `<title id="${id}-title">${escaped(input.title)}</title><desc id="${id}-description">${escaped(input.description)}</desc>`,
    ...(defs === "" ? [] : [defs]),
    ...rectangles,
    "</svg>",
  ].join("\n");
}

function lettered(letter: string, x: number, y: number, room: number): string {
  return `<text x="${x}" y="${y}" font-size="${room * 0.8}" font-family="sans-serif" text-anchor="middle" dominant-baseline="central" aria-hidden="true">${escaped(letter)}</text>`;
}

function anId(value: unknown, where: string): ReturnType<typeof fault> {
  return typeof value === "string" && /^[A-Za-z][\w-]{0,40}$/.test(value)
    ? PASSED
    : fault("unsafe-text", where, "a letter, then letters, figures and hyphens", value, "Choose a short plain name.");
}
