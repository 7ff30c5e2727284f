import { refuse } from "../refusal/check.js";
import { sameColour } from "../sequence/same-colour.js";
import { checkDrawing, outlined, picture, rectangles } from "./drawing.js";
import type { StripesSvgInput } from "./stripes-svg.js";

/** More could not be told apart. */
const MOST_HATCHED = 11;
const SOLID = ["#fff", "#000"];

/**
 * The same picture for print in black and white: white, black, then lines of three directions and three densities, in the
 * order of the paints.
 *
 * @throws StripeError for a colour without a paint, or more paints than hatches can tell apart
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * const paints = new Map([["ash", { fill: "#ccc", letter: "A", name: "ash" }], ["coal", { fill: "#222", letter: "C", name: "coal" }]]);
 * const words = { id: "napkin", title: "Napkin", description: "Two stripes" };
 * hatchedSvg({ sequence: half, paints, height: 40, ...words }).includes("#ccc") // false
 */
export function hatchedSvg<C>(input: StripesSvgInput<C>): string {
  checkDrawing("hatchedSvg", input);
  const colours = [...input.paints.keys()];
  if (colours.length < 1 || colours.length > MOST_HATCHED) {
    refuse("hatchedSvg", colours.length < 1 ? "empty" : "out-of-range", ["paints"], {
      expected: `1 to ${MOST_HATCHED} paints`,
      received: colours.length,
      remedy: "More hatches could not be told apart: use letters.",
      params: { atLeast: 1, atMost: MOST_HATCHED },
    });
  }
  const drawn = rectangles("hatchedSvg", input, (_, colour) => {
    const place = colours.findIndex((other) => sameColour(other, colour));
    return SOLID[place] ?? `url(#${input.id}-hatch-${place})`;
  });
  const width = input.sequence.ends;
  const patterns = colours.slice(SOLID.length).map((_, index) => {
    const gap = (width / 100) * 2 ** Math.floor(index / 3);
    const hatch = `<pattern id="${input.id}-hatch-${index + SOLID.length}" patternUnits="userSpaceOnUse" width="${gap}" height="${gap}"`;
    // No upright lines, which would look like stripes.
    const turned = `patternTransform="rotate(${30 + 60 * (index % 3)})"`;
    return `${hatch} ${turned}><path fill="#fff" d="M0 0h${gap}v${gap}H0"/><path d="M0 0h${width / 300}v${gap}H0"/></pattern>`;
  });
  return picture(input, patterns.join("") + outlined(drawn, width));
}
