import { compare } from "../../engine/quantity/index.js";
import { tex } from "../../units/index.js";
import type { DirectCount, IndirectCount } from "../../units/index.js";
import { convertedCount } from "./convert-count.js";

type Count = DirectCount | IndirectCount;

/** −1, 0 or 1 as the first yarn is finer than the second, alike or coarser: a higher tex is a coarser yarn. */
function compared(by: string, a: Count, b: Count): number {
  return compare(convertedCount(by, "a", a, tex).count, convertedCount(by, "b", b, tex).count);
}

/**
 * Whether the first yarn is finer than the second, whatever their systems: a higher indirect or a lower direct number.
 *
 * @param a the count of one finished thread
 * @param b the count of another
 * @throws QuantityError "wrong-kind" for what is no count, "out-of-range" for a count of zero or less
 * @example finer(cottonCount(30), tex(30)) // true
 */
export function finer(a: Count, b: Count): boolean {
  return compared("finer", a, b) < 0;
}

/**
 * Whether the first yarn is coarser than the second, whatever their systems.
 *
 * @param a the count of one finished thread
 * @param b the count of another
 * @throws QuantityError "wrong-kind" for what is no count, "out-of-range" for a count of zero or less
 * @example coarser(cottonCount(10), cottonCount(20)) // true
 */
export function coarser(a: Count, b: Count): boolean {
  return compared("coarser", a, b) > 0;
}
