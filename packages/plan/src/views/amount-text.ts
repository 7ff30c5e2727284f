import { asText, unitOf } from "@thrum/maths";
import type { Length, Mass, Quantity } from "@thrum/maths";
import { perLength } from "./formats.js";
import { tape, yard } from "./length-formats.js";
import { scale } from "./mass-formats.js";
import type { Way } from "./formats.js";
import type { Units } from "./units.js";

export interface AmountTextOptions {
  /** Lengths by the tape, in eighths of an inch or in millimetres, or in yards or metres. Default: by the tape. */
  readonly by?: "tape" | "yard";
  /** Up what is needed, down what there is. Default: to the nearest. */
  readonly rounding?: Way;
  /** Another mass of the same yarn, whose unit this one is told in. Default: its own. */
  readonly like?: Mass;
}

const isLength = (amount: Quantity<string>): amount is Length => amount.dimension === "length";
const isMass = (amount: Quantity<string>): amount is Mass => amount.dimension === "mass";

/**
 * An amount as the sheets print it, for a screen beside them.
 *
 * @param amount a count, or an amount of any kind
 * @param units of the weaver's tape, as `unitsOf` finds them
 */
export function amountText(
  amount: number | Quantity<string>,
  units: Units,
  { by = "tape", rounding = "nearest", like }: AmountTextOptions = {},
): string {
  if (typeof amount === "number") return String(amount);
  if (isLength(amount)) return (by === "tape" ? tape : yard)(rounding)(amount, units);
  if (isMass(amount)) return scale(rounding)(amount, units, unitOf(like ?? amount));
  return amount.dimension.includes("per") ? perLength(amount) : asText(amount, { step: "0.01" });
}
