import { isQuantity, unitOf } from "@thrum/maths";
import type { Quantity, Unit } from "@thrum/maths";

export type Amount = Quantity<string> | number;

/** Whether it is a number, with or without a unit. */
export function isAmount(value: unknown): value is Amount {
  return typeof value === "number" || isQuantity(value);
}

/** The unit an amount is in; null for a plain number. */
export function unitOrNone(amount: Amount): Unit<string> | null {
  return typeof amount === "number" ? null : unitOf(amount);
}

/** The number of an amount in its own unit. */
export function numberOf(amount: Amount): number {
  return typeof amount === "number" ? amount : amount.in(unitOf(amount));
}

/** A name read in another unit, as a formula writes it. */
export function turned(name: string, from: Unit<string> | null, to: Unit<string> | null): string {
  if (from === null || to === null) return name;
  const [over, under] = [BigInt(from.scale[0]) * BigInt(to.scale[1]), BigInt(from.scale[1]) * BigInt(to.scale[0])];
  return over === under ? name : `${name}*${String(over)}/${String(under)}`;
}
