import { Unreadable } from "./fault.js";
import { isQuantity } from "./node.js";

const DEEPEST = 40;
const MOST = 300_000;
const UNSEEN = Symbol("what throws");

/**
 * A copy of plain data: groups, lists, texts, numbers, truth values and quantities; a key that is undefined is left out. For
 * what is no such thing stands a symbol that says what it was: no form takes it, so it is refused at its own place.
 * What a program hands over may be a trap, so it is read once, here.
 *
 * @throws Unreadable for what holds itself, and for more than any job holds
 */
export function plainData(given: unknown): unknown {
  let parts = 0;
  const odd = (what: string): symbol => Symbol(what);
  const refuse = (what: string): never => {
    throw new Unreadable("Give plain groups and lists.", "wrong-kind", "plain data", what);
  };
  const copied = (value: unknown, depth: number): unknown => {
    parts += 1;
    if (parts > MOST) return refuse("more parts than any job has");
    if (value === undefined || value === null) return value;
    if (typeof value === "string" || typeof value === "boolean" || typeof value === "number") return value;
    if (typeof value !== "object") return value === UNSEEN ? value : odd(`a ${typeof value}`);
    try {
      return inside(value, depth);
    } catch (error) {
      if (error instanceof Unreadable) throw error;
      return odd("an object that cannot be read");
    }
  };
  const inside = (value: object, depth: number): unknown => {
    if (isQuantity(value)) return value;
    if (depth > DEEPEST) return refuse(`groups more than ${String(DEEPEST)} deep, or one that holds itself`);
    if (Array.isArray(value)) {
      const items: readonly unknown[] = value;
      return items.length > MOST
        ? refuse("more parts than any job has")
        : Array.from(items, (one) => copied(one, depth + 1));
    }
    const prototype: unknown = Object.getPrototypeOf(value);
    if (prototype !== null && prototype !== Object.prototype) return odd("an object of a class");
    return Object.fromEntries(
      Object.keys(value).flatMap((key) => {
        const one = partOf(value, key);
        return one === undefined ? [] : [[key, copied(one, depth + 1)]];
      }),
    );
  };
  const partOf = (value: object, key: string): unknown => {
    try {
      const part: unknown = Reflect.get(value, key);
      return part;
    } catch {
      return UNSEEN;
    }
  };
  return copied(given, 0);
}
