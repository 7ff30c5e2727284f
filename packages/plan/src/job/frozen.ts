import { isQuantity } from "./node.js";

/** The value and all it holds, frozen. */
export function frozen<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value) || isQuantity(value)) return value;
  for (const one of Object.values(value)) frozen(one);
  return Object.freeze(value);
}
