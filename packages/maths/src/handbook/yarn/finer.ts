import { compare } from "../../engine/quantity/index.js";
import { tex } from "../../units/index.js";
import type { DirectCount, IndirectCount } from "../../units/index.js";
import { convertCount } from "./convert-count.js";

type Count = DirectCount | IndirectCount;

/**
 * Whether the first yarn is finer than the second, whatever their systems: a higher indirect or a lower direct number.
 *
 * @param a the count of one finished thread
 * @param b the count of another
 * @throws QuantityError "wrong-kind" for what is no count
 * @example finer(cottonCount(30), tex(30)) // true
 */
export function finer(a: Count, b: Count): boolean {
  return compare(convertCount(a, tex).count, convertCount(b, tex).count) < 0;
}

/**
 * Whether the first yarn is coarser than the second, whatever their systems.
 *
 * @param a the count of one finished thread
 * @param b the count of another
 * @throws QuantityError "wrong-kind" for what is no count
 * @example coarser(cottonCount(10), cottonCount(20)) // true
 */
export function coarser(a: Count, b: Count): boolean {
  return finer(b, a);
}
