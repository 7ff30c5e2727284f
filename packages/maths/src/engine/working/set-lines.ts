import { amountsAt, inMembers } from "./amounts.js";
import { setAmounts, setTree } from "./set-tree.js";
import type { Notation } from "./set-tree.js";
import { inWords } from "./words.js";
import { linesOf, resultApart } from "./working.js";
import type { Working } from "./working.js";

/** A printed line in a notation: the name it belongs to, where it is the first, its sign, and what stands behind that. */
interface SetLine {
  readonly name: string;
  readonly sign: string;
  readonly line: string;
}

/** The lines of a working in a notation, the result in another unit among them. */
export function setLines(working: Working, notation: Notation): readonly SetLine[] {
  const { steps, amounts } = working;
  const amount = (name: string): string => setAmounts(amountsAt(amounts, name), notation);
  const lines = steps.flatMap((step) =>
    linesOf(step).map(({ name, sign, text }) => {
      const line =
        text === step.formula
          ? setTree(step.tree, notation, (own) => notation.words(inWords(own)))
          : text === step.value
            ? amount(step.key)
            : setTree(inMembers(step.tree, amounts), notation, amount);
      return { name: name && notation.words(name), sign: notation.sign(sign), line };
    }),
  );
  const apart = resultApart(working);
  if (apart === null) return lines;
  return [...lines, { name: "", sign: notation.sign(apart.sign), line: setAmounts([apart.value], notation) }];
}
