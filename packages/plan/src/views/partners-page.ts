import * as tying from "../figures/tying.js";
import { job } from "../figures/keys.js";
import * as join from "../figures/join.js";
import type { PartnersToMake } from "../parts/partners.js";
import type { Block } from "./block.js";
import { fromTo, inStretches } from "./hands.js";
import { tiedOrAfresh } from "./seat.js";
import { listOf } from "./table.js";
import { says, step } from "./view.js";
import type { At, View } from "./view.js";
import { all, byWord, fromPart, NONE, where } from "./ways.js";

const WHY = { added: "added at the side", broken: "the old end is broken", mended: "an end was left out" } as const;

/** Each value in turn, its repeats told once; nothing where it is not known. */
function inTurn(values: readonly (number | string | null)[]): string | null {
  if (values.some((one) => one === null || one === "not known")) return null;
  const most = 12;
  const first = values.slice(0, most).map(String).join(" ");
  return values.length > most ? `${first} … ${String(values.at(-1) ?? "")}` : first;
}

function rowsOf(rows: readonly PartnersToMake[], at: At): readonly Block[] {
  return listOf<PartnersToMake>(
    { caption: "New ends without an old one", ticked: true },
    rows,
    [
      ["new ends", ({ firstEnd, lastEnd }) => fromTo(firstEnd, lastEnd)],
      ["how many", ({ ends }) => ends],
      ["why", ({ is }) => WHY[is]],
      ["heddle", ({ heddle }) => heddle],
      ["on shafts", ({ shafts }) => inTurn(shafts)],
      ["in dents", ({ dents }) => inStretches(dents)],
    ],
    at,
  );
}

const thrum = all(
  byWord(join.knots, {
    "in front of the reed": step`Hang a thrum for each: a thread as long as an old end, through its heddle and its dent, fastened with the old ends at the back rod.`,
    "behind the reed": step`Hang a thrum for each: a thread as long as an old end, through its heddle, fastened with the old ends at the back rod.`,
    "behind the heddles": step`Hang a thrum for each: a thread as long as an old end, through its heddle and its dent, fastened with the old ends at the front rod.`,
    nowhere: NONE,
  }),
  step`Tie it in with the others when its turn comes.`,
);
const itself = all(
  step`Wind these ends longer by the waste that the knots spare: put them in a small chain of their own.`,
  step`Draw each through its own heddle and dent, and lay it over the beam with a weight on it. It has no knot.`,
);
const either = all(thrum, says`Or, without a thrum:`, itself);

/** What is made before the first knot, so that the numbers hold. */
export const partnersPage: View = {
  name: "partners",
  heading: "Partners to make first",
  blocks: [
    tiedOrAfresh(
      where(
        tying.partners,
        (rows) => rows.length > 0,
        step`Make a partner for each of these before the first knot, so that all the numbers hold:`,
        fromPart(tying.partners, rowsOf),
        byWord(job.join.partner, { "hang a thrum": thrum, "thread it itself": itself }, either),
      ),
      NONE,
    ),
  ],
};
