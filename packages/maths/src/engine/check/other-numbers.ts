import { decimalText } from "../numbers.js";
import type { Decimal } from "../numbers.js";
import { namesIn, withNames } from "../formula/index.js";
import type { Line, Run } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { named } from "./scene.js";
import { roughAnswer, roughly } from "./roughly.js";

const STEPS = 12;
/** A number one step off must miss the claim by so many of its last digit, or any claim would find some number. */
const CLEARLY = 6;
const OTHER = "another number";

/** The lines with another number in one place of them, or in all of them. */
function places(lines: readonly Line[], name: string): readonly (readonly Line[])[] {
  const replaced = ({ name: own, tree }: Line): Line => ({
    name: own,
    tree: withNames(tree, (used) => (used === name ? named(OTHER) : null)),
  });
  const using = lines.filter(({ tree }) => namesIn(tree).includes(name));
  const single =
    using.length > 1 ? using.map((one) => lines.map((line) => (line === one ? replaced(line) : line))) : [];
  return [lines.map(replaced), ...single];
}

/** A sum with another number in the place of one input, such as the sett of an older draft. */
export function otherNumbers(
  { declared, inputs, values }: Run,
  isClaim: (answer: number) => number,
): readonly string[] {
  const known = roughly(values);
  return [...inputs].flatMap(([name, read]) => {
    const inFrame = known.get(name);
    if (!("value" in read) || typeof inFrame !== "number" || read.value.isZero()) return [];
    const given: Decimal = read.value;
    const step = 10 ** -given.decimalPlaces();
    const share = step / given.toNumber();
    const replaced = new Map(known);
    const found = new Set<string>();
    for (const lines of places(declared.lines, name)) {
      const missed = (by: number): number => {
        replaced.set(OTHER, inFrame * (1 + by * share));
        return isClaim(roughAnswer(lines, replaced));
      };
      const misses = Array.from({ length: 2 * STEPS + 3 }, (_, at) => missed(at - STEPS - 1));
      for (let by = -STEPS; by <= STEPS; by += 1) {
        const number = given.plus(by * step);
        const [below = 0, here = 1, above = 0] = misses.slice(by + STEPS, by + STEPS + 3);
        if (by === 0 || number.lte(0) || !(here <= 0.501 && below >= CLEARLY && above >= CLEARLY)) continue;
        found.add(`takes ${decimalText(number)} for the ${decimalText(given)} of ${inWords(name)}`);
      }
    }
    return [...found];
  });
}
