import { readInputs, whole } from "../../engine/formula/index.js";
import { described } from "../../engine/quantity/index.js";
import { QuantityError } from "../../engine/refusal.js";

/** So many ends of one yarn side by side; the yarn by whatever name the weaver has for it. */
export interface YarnStripe {
  readonly yarn: string;
  readonly ends: number;
}

const MOST_ENDS = 100_000;

/** Reads stripes, or refuses the first that is none, and a warp too wide for any loom. */
export function readYarnStripes(where: string, stripes: unknown): readonly YarnStripe[] {
  const refuse = (code: "empty" | "wrong-kind" | "out-of-range", at: string, expected: string, got: string): never => {
    const remedy = 'Write [{ yarn: "madder", ends: 12 }].';
    throw new QuantityError({ code, where: `${where}({ ${at} })`, expected, received: got, remedy });
  };
  if (!Array.isArray(stripes) || stripes.length === 0)
    return refuse("empty", "stripes", "a list of stripes", described(stripes));
  const declared = { ends: whole("ends", "of one stripe", { atLeast: 1, atMost: MOST_ENDS }) };
  const read = stripes as readonly YarnStripe[];
  let total = 0;
  for (const [at, stripe] of read.entries()) {
    const { yarn, ...others } = stripe;
    const name: unknown = yarn;
    if (typeof name !== "string" || name === "" || name.length > 200)
      refuse("wrong-kind", `stripes[${String(at)}].yarn`, "the name of a yarn", described(name));
    readInputs(`${where}.stripes[${String(at)}]`, declared, others);
    total += stripe.ends;
  }
  if (total > MOST_ENDS)
    refuse("out-of-range", "stripes", `${String(MOST_ENDS)} ends or fewer in all`, `${String(total)} ends`);
  return read;
}
