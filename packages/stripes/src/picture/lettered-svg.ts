import { checkDrawing, outlined, picture, rectangles } from "./drawing.js";
import { escapedForSvg } from "./paint.js";
import type { StripesSvgInput } from "./stripes-svg.js";

/**
 * The same picture for print in black and white: white, with the letter of its colour in every stripe.
 *
 * @throws StripeError for a colour without a paint
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * const paints = new Map([["ash", { fill: "#ccc", letter: "A", name: "ash" }], ["coal", { fill: "#222", letter: "C", name: "coal" }]]);
 * const words = { id: "napkin", title: "Napkin", description: "Two stripes" };
 * letteredSvg({ sequence: half, paints, height: 40, ...words }).includes(">A</text>") // true
 */
export function letteredSvg<C>(input: StripesSvgInput<C>): string {
  checkDrawing("letteredSvg", input);
  const { sequence, height } = input;
  const texts: string[] = [];
  const drawn = rectangles("letteredSvg", input, ({ letter }, _, middle) => {
    // Each lower than the last, for in narrow stripes they would run into one another.
    const y = (height * (1 + (texts.length % 4))) / 5;
    texts.push(`<text x="${middle}" y="${y}">${escapedForSvg(letter)}</text>`);
    return "#fff";
  });
  const size = Math.min(sequence.ends / 40, height / 6);
  const lettering = `<g font-size="${size}" font-family="sans-serif" text-anchor="middle" stroke="#fff" stroke-width="${size / 4}" paint-order="stroke">${texts.join("")}</g>`;
  return picture(input, outlined(drawn, sequence.ends) + lettering);
}
