import * as told from "../figures/told.js";
import type { Source } from "../core/source.js";
import type { Told } from "../parts/told.js";
import type { Manner, Says } from "./block.js";
import { NOTHING } from "./view.js";
import type { Template } from "./view.js";

const MANNERS: Readonly<Record<Told["standing"], Manner>> = { must: "MUST", check: "CHECK", ask: "ASK", free: "fact" };
const ORDER: readonly Told["standing"][] = ["must", "check", "ask", "free"];

/** One finding as it is printed. */
export function toldLine({ standing, says }: Told): Says {
  return { is: "says", as: MANNERS[standing], says: [says] };
}

/** Told where the scissors are at hand: on the first page only what does not agree of it. */
const BEFORE_THE_CUT: readonly Source<readonly Told[], string>[] = [told.knots, told.left];

function linesOf(
  parts: readonly Source<readonly Told[], string>[],
  elsewhere: readonly Source<readonly Told[], string>[] = [],
): Template {
  return {
    reads: parts,
    build: (at) => {
      const all = parts.flatMap((part) => {
        const seen = at.see(part);
        if (seen.is !== "there") return [];
        return elsewhere.includes(part) ? seen.value.filter(({ standing }) => standing !== "free") : seen.value;
      });
      const inOrder = ORDER.flatMap((standing) => all.filter((one) => one.standing === standing));
      const blocks = inOrder.map(toldLine);
      return { ...NOTHING, blocks, isOfJob: blocks.length > 0 };
    },
  };
}

/** All that does not agree, what must be put right first of all. */
export const toldLines: Template = linesOf(
  // A namespace has no order of its own that every bundler keeps.
  Object.entries(told)
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([, part]) => part),
  BEFORE_THE_CUT,
);

/** Of some parts alone; what is yet unknown is not asked for. */
export function toldOf(...parts: readonly Source<readonly Told[], string>[]): Template {
  return linesOf(parts);
}
