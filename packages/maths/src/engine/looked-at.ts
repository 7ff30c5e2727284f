import type { FaultPath } from "./fault.js";

/** Stands where something cannot be looked at: whoever refuses a symbol refuses it at its own place. */
const UNSEEN = Symbol("what cannot be looked at");
const DEEPEST = 200;

/** The unit behind a quantity, shared by every copy of this package; the number is that of the layout. */
export const UNIT: unique symbol = Symbol.for("thrum.unit.1");

/** Whether everything a function may ask of an object or function is answered without an error. */
function answers(value: object): boolean {
  try {
    Object.isFrozen(value);
    Object.keys(value);
    Object.hasOwn(value, "value");
    Reflect.has(value, "value");
    Object.getPrototypeOf(value);
    Reflect.get(value, UNIT);
    return typeof Array.isArray(value) === "boolean";
  } catch {
    return false;
  }
}

/** What a class answers with by itself. */
function gettersOf(value: object): readonly string[] {
  const names: string[] = [];
  if (typeof value === "function") return names;
  for (let proto = prototypeOf(value); proto !== null && proto !== Object.prototype; proto = prototypeOf(proto)) {
    for (const [name, descriptor] of Object.entries(Object.getOwnPropertyDescriptors(proto)))
      if (descriptor.get !== undefined) names.push(name);
  }
  return names;
}

function prototypeOf(value: object): object | null {
  const found: unknown = Object.getPrototypeOf(value);
  return typeof found === "object" ? found : null;
}

function partOf(value: object, key: string): unknown {
  try {
    return Reflect.get(value, key);
  } catch {
    return UNSEEN;
  }
}

/**
 * The same value with a symbol for every part that throws when it is looked at, as a revoked proxy does, a getter that throws,
 * or lists without end; all that can be looked at stays what it is.
 *
 * @param value anything
 * @param unseen is told the place of each such part
 */
export function lookedAt(value: unknown, unseen: (path: FaultPath) => void): unknown {
  const above = new Set<object>();
  const look = (one: unknown, path: FaultPath): unknown => {
    const isThing = (typeof one === "object" && one !== null) || typeof one === "function";
    if (one !== UNSEEN && (!isThing || above.has(one))) return one;
    if (one === UNSEEN || !isThing || path.length > DEEPEST || !answers(one)) {
      unseen(path);
      return UNSEEN;
    }
    above.add(one);
    const isList = Array.isArray(one);
    const parts = [...Object.keys(one), ...gettersOf(one)].map((key): readonly [string, unknown, unknown] => {
      const part = partOf(one, key);
      return [key, part, look(part, [...path, isList ? Number(key) : key])];
    });
    above.delete(one);
    if (parts.every(([, was, is]) => was === is && was !== UNSEEN)) return one;
    return isList ? parts.map(([, , is]) => is) : Object.fromEntries(parts.map(([key, , is]) => [key, is]));
  };
  return look(value, []);
}
