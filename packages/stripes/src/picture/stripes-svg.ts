import type { Sequence } from "../sequence/sequence.js";
import { checkDrawing, picture, rectangles } from "./drawing.js";
import type { Paint } from "./paint.js";

export interface StripesSvgInput<C> {
  readonly sequence: Sequence<C>;
  readonly paints: ReadonlyMap<C, Paint>;
  /** Height of the picture, in ends; its width is the ends of the sequence. */
  readonly height: number;
  /** Begins the names of its parts, so that several pictures can stand on one page. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
}

/**
 * A picture of the stripes in colour and to scale, one end one unit wide, as the text of an SVG file.
 *
 * @throws StripeError for a colour without a paint, or a paint that is more than a colour
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * const paints = new Map([["ash", { fill: "#ccc", letter: "A", name: "ash" }], ["coal", { fill: "#222", letter: "C", name: "coal" }]]);
 * const words = { id: "napkin", title: "Napkin", description: "Two stripes" };
 * stripesSvg({ sequence: half, paints, height: 40, ...words }).startsWith("<svg") // true
 */
export function stripesSvg<C>(input: StripesSvgInput<C>): string {
  checkDrawing("stripesSvg", input);
  const drawn = rectangles("stripesSvg", input, ({ fill }) => fill);
  return picture(input, drawn);
}
