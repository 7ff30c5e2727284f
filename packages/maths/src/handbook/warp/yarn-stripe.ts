import { readInputs, whole } from "../../engine/formula/index.js";
import { described } from "../../engine/quantity/index.js";
import { allTogether, QuantityError } from "../../engine/refusal.js";
import type { FaultPath, RefusalCode } from "../../engine/refusal.js";

/** So many ends of one yarn side by side; the yarn by whatever name the weaver has for it. */
export interface YarnStripe {
  readonly yarn: string;
  readonly ends: number;
}

const LONGEST_NAME = 200;
const MOST_ENDS = 100_000;

/** Refuses what is no name of a yarn or colour. */
export function checkName(name: unknown, refuse: (code: RefusalCode, expected: string) => never): void {
  const expected = `a name of 1 to ${String(LONGEST_NAME)} letters`;
  if (name === undefined || name === null) refuse("missing", expected);
  else if (typeof name !== "string") refuse("wrong-kind", expected);
  else if (name === "") refuse("empty", expected);
  else if (name.length > LONGEST_NAME) refuse("too-long", expected);
}

/** Reads stripes, or refuses all that are none, and a warp too wide for any loom. */
export function readYarnStripes(name: string, stripes: unknown): readonly YarnStripe[] {
  const refuse = (code: RefusalCode, path: FaultPath, expected: string, received: string): never => {
    const remedy = 'Write [{ yarn: "madder", ends: 12 }].';
    throw new QuantityError({ code, function: name, path: ["stripes", ...path], expected, received, remedy });
  };
  if (stripes === undefined || stripes === null) return refuse("missing", [], "a list of stripes", described(stripes));
  if (!Array.isArray(stripes)) return refuse("wrong-kind", [], "a list of stripes", described(stripes));
  if (stripes.length === 0) return refuse("empty", [], "a list of stripes", described(stripes));
  const declared = { ends: whole("ends", "of one stripe", { atLeast: 1, atMost: MOST_ENDS }) };
  const read = stripes as readonly YarnStripe[];
  const parts = Array.from(read, (stripe, at) => {
    const { yarn, ...others } = Object(stripe) as YarnStripe;
    return [
      (): void => {
        checkName(yarn, (code, expected) => refuse(code, [at, "yarn"], expected, described(yarn)));
      },
      (): unknown => readInputs([name, "stripes", at], declared, others),
    ];
  });
  allTogether(...parts.flat());
  const total = read.reduce((ends, stripe) => ends + stripe.ends, 0);
  if (total > MOST_ENDS)
    refuse("out-of-range", [], `${String(MOST_ENDS)} ends or fewer in all`, `${String(total)} ends`);
  return read;
}
