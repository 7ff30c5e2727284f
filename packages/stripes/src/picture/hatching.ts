import { refuse } from "../refusal/check.js";

/** No upright lines, which would look like stripes. */
const ANGLES = [45, 135, 90];
const GAPS = [2, 4, 1];
const MOST = 2 + ANGLES.length * GAPS.length;

/** Fills told apart without colour: white, black, then lines of three directions and three densities. */
export function hatching(
  id: string,
  count: number,
  unit: number,
): { readonly fills: readonly string[]; readonly patterns: readonly string[] } {
  if (count > MOST) {
    refuse("stripesSvg", "does-not-fit", "paints", {
      expected: `at most ${MOST} to be hatched`,
      received: count,
      remedy: 'Draw it in "letters".',
    });
  }
  const fills = ["#fff", "#000"];
  const patterns = [];
  for (let index = 2; index < count; index++) {
    const gap = (GAPS[Math.floor((index - 2) / ANGLES.length)] ?? 1) * unit;
    const name = `${id}-hatch-${index}`;
    fills.push(`url(#${name})`);
    patterns.push(
      `<pattern id="${name}" patternUnits="userSpaceOnUse" width="${gap}" height="${gap}" patternTransform="rotate(${ANGLES[(index - 2) % ANGLES.length]})"><path fill="#fff" d="M0 0h${gap}v${gap}h-${gap}"/><path d="M0 0h${unit / 2}v${gap}h-${unit / 2}"/></pattern>`,
    );
  }
  return { fills, patterns };
}
