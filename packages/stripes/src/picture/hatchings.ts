import { refuse } from "../refusal/check.js";

const ANGLES = [45, 135, 0, 90];
const GAPS = [2, 4, 1];

/** Fills told apart without colour: white, black, then lines of four directions and three densities. */
export function hatchings<C>(
  id: string,
  colours: readonly C[],
  unit: number,
): { readonly defs: string; readonly fills: ReadonlyMap<C, string> } {
  const lines = GAPS.flatMap((gap) => ANGLES.map((angle) => ({ gap: gap * unit, angle })));
  if (colours.length > lines.length + 2) {
    refuse("stripesSvg", "does-not-fit", "drawnIn", {
      expected: `at most ${lines.length + 2} colours to be hatched`,
      received: colours.length,
      remedy: 'Draw it in "letters".',
    });
  }
  const fills = new Map<C, string>();
  const patterns: string[] = [];
  for (const [index, colour] of colours.entries()) {
    const line = lines[index - 2];
    fills.set(colour, line === undefined ? (["#fff", "#000"][index] ?? "#fff") : `url(#${id}-hatch-${index})`);
    if (line === undefined) continue;
    const { gap, angle } = line;
    patterns.push(
      `<pattern id="${id}-hatch-${index}" patternUnits="userSpaceOnUse" width="${gap}" height="${gap}" patternTransform="rotate(${angle})">` +
        `<rect width="${gap}" height="${gap}" fill="#fff"/><rect width="${unit / 2}" height="${gap}" fill="#000"/></pattern>`,
    );
  }
  return { defs: patterns.length === 0 ? "" : `<defs>${patterns.join("")}</defs>`, fills };
}
