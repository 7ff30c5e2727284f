import { Unreadable } from "./fault.js";
import { isQuantity } from "./node.js";

const DEEPEST = 40;
const MOST = 300_000;

/**
 * A copy of plain data: groups, lists, texts, numbers, truth values and quantities; a key that is undefined is left out.
 * What a program hands over may be a trap, so it is read once, here.
 *
 * @throws Unreadable for anything that is no plain data, and for what holds itself
 */
export function plainData(given: unknown): unknown {
  let parts = 0;
  const refuse = (what: string): never => {
    throw new Unreadable("Give plain groups and lists.", "wrong-kind", "plain data", what);
  };
  const copied = (value: unknown, depth: number): unknown => {
    parts += 1;
    if (parts > MOST) return refuse("more parts than any job has");
    if (value === undefined || typeof value === "string" || typeof value === "boolean" || typeof value === "number")
      return value;
    if (typeof value !== "object" || value === null) return refuse(value === null ? "null" : `a ${typeof value}`);
    if (isQuantity(value)) return value;
    if (depth > DEEPEST) return refuse(`groups more than ${String(DEEPEST)} deep, or one that holds itself`);
    if (Array.isArray(value)) {
      const items: readonly unknown[] = value;
      return items.length > MOST
        ? refuse("more parts than any job has")
        : Array.from(items, (one) => copied(one, depth + 1));
    }
    const prototype: unknown = Object.getPrototypeOf(value);
    if (prototype !== null && prototype !== Object.prototype) return refuse("an object of a class");
    const entries: readonly (readonly [string, unknown])[] = Object.entries(value);
    return Object.fromEntries(
      entries.flatMap(([key, one]) => (one === undefined ? [] : [[key, copied(one, depth + 1)]])),
    );
  };
  try {
    return copied(given, 0);
  } catch (error) {
    if (error instanceof Unreadable) throw error;
    return refuse("an object that cannot be read");
  }
}
