import { QuantityError, quantityFrom } from "@thrum/maths";
import { isQuantity } from "../job/node.js";
import { printable } from "../text/printable.js";
import { unitNamed } from "./units.js";

const DEEPEST = 40;
const MOST = 5_000_000;

/** What a copy leaves of a quantity. */
interface CopiedQuantity {
  readonly dimension: string;
  readonly value: string;
  readonly unit: string;
}

function isCopied(value: object): value is CopiedQuantity {
  const keys = Object.keys(value);
  return (
    keys.length === 3 &&
    ["dimension", "value", "unit"].every(
      (key) => typeof Object.getOwnPropertyDescriptor(value, key)?.value === "string",
    )
  );
}

function refuse(expected: string, received: string): never {
  const remedy = "Give what planWarp made, or a copy of it as JSON or structuredClone leaves it.";
  throw new QuantityError({ code: "unreadable", function: "planFrom", path: ["copy"], expected, received, remedy });
}

function quantityOf(copied: CopiedQuantity): unknown {
  const expected = "an amount in a unit of a plan";
  const unit = unitNamed(copied.unit, copied.dimension);
  if (unit === null) return refuse(expected, `a unit called ${printable(copied.unit)}`);
  try {
    return quantityFrom(copied, [unit]);
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
    return refuse(expected, printable(`${copied.value} ${copied.unit}`));
  }
}

/** Plain data with its quantities made again; what a program hands over may be a trap, so it is read once, here. */
export function madeAgain(given: unknown): unknown {
  let parts = 0;
  const made = (value: unknown, depth: number): unknown => {
    parts += 1;
    if (parts > MOST) return refuse("a plan", "more parts than any plan has");
    if (value === null || typeof value === "string" || typeof value === "boolean" || typeof value === "number")
      return value;
    if (typeof value !== "object") return refuse("plain data", value === undefined ? "nothing" : `a ${typeof value}`);
    if (depth > DEEPEST)
      return refuse("plain data", `groups more than ${String(DEEPEST)} deep, or one that holds itself`);
    if (Array.isArray(value)) return Array.from(value, (one: unknown) => made(one, depth + 1));
    if (isQuantity(value)) return value;
    if (isCopied(value)) return quantityOf(value);
    const entries: readonly (readonly [string, unknown])[] = Object.entries(value);
    // Of what was left out a structuredClone keeps the key.
    return Object.fromEntries(
      entries.flatMap(([key, one]) => (one === undefined ? [] : [[key, made(one, depth + 1)]])),
    );
  };
  try {
    return made(given, 0);
  } catch (error) {
    if (error instanceof QuantityError) throw error;
    return refuse("plain data", "an object that cannot be read");
  }
}
