import { asText, isQuantity } from "@thrum/maths";
import type { Money, Quantity } from "@thrum/maths";
import type { Line } from "./block.js";
import type { Units } from "./units.js";

/** Which way an amount is rounded. */
export type Way = "nearest" | "roundUp" | "roundDown";

/** So many to a length, six figures at most. */
export function perLength(amount: Quantity<string>): string {
  return asText(amount, { step: "0.01" }).replace("/", " per ").replace(/ in$/u, " inch");
}

/** A percentage to the tenth; of what, and whether lost or added, is said by the sentence. */
export function percent(amount: Quantity<string>): string {
  return asText(amount, { step: "0.1" }).replace(/ (?:lost|added)$/u, "");
}

function hundredths(rounding: Way): (amount: Money) => string {
  return (amount) => {
    const [number = "", name = ""] = asText(amount, { step: "0.01", rounding }).split(" ");
    const [whole = "", part = ""] = number.split(".");
    return `${whole}.${part.padEnd(2, "0")} ${name}`;
  };
}

/** Money; what is asked at least is rounded up. */
export const money: (amount: Money) => string = hundredths("nearest");
export const moneyUp: (amount: Money) => string = hundredths("roundUp");

/** A count, or pieces and the part of one: what there is, to the hundredth below. */
export function numberDown(number: number): string {
  return String(Math.floor(number * 100) / 100);
}

/** A count, or a key of the job, as it stands. */
export function plainly(value: unknown, units: Units): string | Line {
  if (typeof value === "number") return [value];
  if (typeof value === "string") return value;
  if (isQuantity(value)) return value.dimension.includes("per") ? perLength(value) : asText(value);
  throw new TypeError(`nothing says how ${units} show this`);
}
