import { nearName } from "./near-name.js";
import type { PlacedFault, Place } from "./placed-fault.js";
import { shownText } from "../text/clean.js";

/** The parts of a schema that say which keys and items it knows. */
interface Knows {
  readonly entries?: Readonly<Record<string, Knows>>;
  readonly item?: Knows;
  readonly value?: Knows;
  readonly wrapped?: Knows;
  readonly getter?: (given: unknown) => Knows;
}

/** Names under which JavaScript keeps things of its own: a parser may drop them without a word. */
const RESERVED = ["__proto__", "constructor", "prototype"];

function unknown(path: Place, key: string, known: readonly string[]): PlacedFault {
  const near = nearName(key, known);
  const remedy = near === null ? "Leave it out, or correct its name." : `Was ${near} meant?`;
  return {
    code: "unknown-field",
    path,
    expected: `one of ${known.join(", ")}`,
    received: `the key "${shownText(key)}"`,
    remedy,
  };
}

function reserved(path: Place, key: string): PlacedFault {
  return {
    code: "out-of-range",
    path,
    expected: "a name for a yarn",
    received: `"${key}"`,
    remedy: "Choose another name.",
  };
}

/** Every key the form does not know, at any depth. */
export function unknownKeys(schema: object, value: unknown, path: Place = []): readonly PlacedFault[] {
  const { entries, item, value: each, wrapped, getter } = schema as Knows;
  if (wrapped !== undefined) return unknownKeys(wrapped, value, path);
  if (getter !== undefined) return unknownKeys(getter(value), value, path);
  if (Array.isArray(value)) {
    return item === undefined ? [] : value.flatMap((one, at) => unknownKeys(item, one, [...path, at]));
  }
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => {
    const at = [...path, key];
    if (each !== undefined) return RESERVED.includes(key) ? [reserved(at, key)] : unknownKeys(each, one, at);
    if (entries === undefined) return [];
    const known = Object.hasOwn(entries, key) ? entries[key] : undefined;
    return known === undefined ? [unknown(at, key, Object.keys(entries))] : unknownKeys(known, one, at);
  });
}
