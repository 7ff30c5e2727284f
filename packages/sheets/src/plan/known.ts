import type { Cell, Quantity, Unit } from "@thrum/maths";
import { unitOf } from "../calculation/bounds.js";

export type Amount = Quantity<string> | number;

/** The cells there are so far, by name, with what stands in each. */
export type Known = Map<string, Amount>;

const NEAR = 1e-12;

/** The number of an amount in a unit. */
export function numberIn(amount: Amount, unit: Unit<string> | null): number {
  return typeof amount === "number" || unit === null ? Number(amount) : amount.in(unit);
}

/** The unit an amount is in; null for a plain number. */
export function unitOrNone(amount: Amount): Unit<string> | null {
  return typeof amount === "number" ? null : unitOf(amount);
}

/** Names a cell, once. */
export function put(known: Known, name: string, amount: Amount): void {
  if (known.has(name)) throw new RangeError(`two cells are called ${name}`);
  known.set(name, amount);
}

/** The cell, or null where there is none yet; one that holds another amount than the plan read there is refused. */
export function find(known: Known, name: string, amount: Amount): Cell | null {
  const held = known.get(name);
  if (held === undefined) return null;
  const unit = unitOrNone(held);
  const [has, wanted] = [numberIn(held, unit), numberIn(amount, unit)];
  if (Math.abs(has - wanted) > NEAR * Math.max(1, Math.abs(has)))
    throw new RangeError(`${name} is ${String(held)}, but the plan has ${String(amount)} there`);
  return unit === null ? name : [name, unit];
}
