import { readInputs, whole } from "../../engine/formula/index.js";
import { described, requireList } from "../../engine/quantity/index.js";
import { allTogether, missingOr, refuse } from "../../engine/refusal.js";
import type { Place } from "../../engine/refusal.js";

/** So many ends of one yarn side by side; the yarn by whatever name the weaver has for it. */
export interface YarnStripe {
  readonly yarn: string;
  readonly ends: number;
}

const LONGEST_NAME = 200;
const MOST_ENDS = 100_000;

/** Refuses what is no name of a yarn or colour. */
export function checkName(where: Place, name: unknown, remedy: string): void {
  if (typeof name === "string" && name !== "" && name.length <= LONGEST_NAME) return;
  const code = typeof name !== "string" ? missingOr(name, "wrong-kind") : name === "" ? "empty" : "too-long";
  refuse(code, where, `a name of 1 to ${String(LONGEST_NAME)} letters`, described(name), remedy);
}

const REMEDY = 'Write [{ yarn: "madder", ends: 12 }].';

/** Reads stripes, or refuses all that are none, and a warp too wide for any loom. */
export function readYarnStripes(name: string, stripes: unknown): readonly YarnStripe[] {
  const where: Place = [name, "stripes"];
  requireList(where, stripes, "a list of stripes", REMEDY);
  const declared = { ends: whole("ends", "of one stripe", { atLeast: 1, atMost: MOST_ENDS }) };
  const read = stripes as readonly YarnStripe[];
  const parts = Array.from(read, (stripe, at) => {
    const { yarn, ...others } = Object(stripe) as YarnStripe;
    return [
      (): void => {
        checkName([...where, at, "yarn"], yarn, REMEDY);
      },
      (): unknown => readInputs([...where, at], declared, others),
    ];
  });
  allTogether(...parts.flat());
  const total = read.reduce((ends, stripe) => ends + stripe.ends, 0);
  if (total > MOST_ENDS)
    refuse("out-of-range", where, `${String(MOST_ENDS)} ends or fewer in all`, `${String(total)} ends`, REMEDY);
  return read;
}
