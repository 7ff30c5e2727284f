import { decimalFrom } from "../numbers.js";
import type { Decimal } from "../numbers.js";
import { decimalOf, described, genuineUnit, isUnit } from "../quantity/index.js";
import type { Quantity, Unit } from "../quantity/index.js";
import { inPlace, QuantityError } from "../refusal.js";
import type { Place, Refusal } from "../refusal.js";
import { mixedUnits, unevenLists } from "./agreement.js";
import type { Input } from "./input.js";
import { outside } from "./outside.js";
import { reckon } from "./reckoned.js";
import { limitsOf, remedyFor, wanted } from "./wanted.js";

/** An input as read: quantities keep their unit. */
export type Read =
  | {
      readonly what: "quantity";
      readonly value: Decimal;
      readonly unit: Unit<string>;
      /** The unit the formula reckons it in; null where that is the unit of work. */
      readonly reckonedIn: Unit<string> | null;
    }
  | { readonly what: "number"; readonly value: Decimal }
  | { readonly what: "unit"; readonly unit: Unit<string> }
  | { readonly what: "word"; readonly word: string }
  | { readonly what: "list"; readonly members: readonly Read[] };

/** Refuses one input: the code, the range in words where that is what is wrong, and another remedy where there is one. */
type Refuse = (code: Refusal["code"], range?: string, remedy?: string) => null;

function readQuantity(input: Input<unknown>, given: unknown, refuse: Refuse): Read | null {
  const unit = genuineUnit(given);
  if (unit === null) {
    const copied = typeof given === "object" && given !== null && "dimension" in given && "value" in given;
    if (!copied) return refuse("wrong-kind");
    return refuse("copied-quantity", "", "A copy is only data: read it back with quantityFrom(data, [units]).");
  }
  if (unit.dimension !== input.dimension && unit.dimension !== input.orDimension) return refuse("wrong-kind");
  const value = decimalOf(given as Quantity<string>);
  const wrong = outside(value, unit, input.range);
  return wrong === null
    ? { what: "quantity", value, unit, reckonedIn: null }
    : refuse("out-of-range", ` of ${wrong}`, `For example ${input.example}.`);
}

function readNumber({ what, range, example }: Input<unknown>, given: unknown, refuse: Refuse): Read | null {
  if (typeof given !== "number") return refuse("wrong-kind");
  if (!Number.isFinite(given)) return refuse("not-a-number");
  if (what === "whole" && !Number.isInteger(given)) return refuse("not-whole");
  const value = decimalFrom(given);
  const remedy = `For example ${example}.`;
  const most = what === "whole" ? Number.MAX_SAFE_INTEGER : 1e60;
  if (value === null || Math.abs(given) > most) return refuse("out-of-range", `, no more than ${String(most)}`, remedy);
  const wrong = outside(value, null, range);
  return wrong === null ? { what: "number", value } : refuse("out-of-range", `, ${wrong}`, remedy);
}

function readUnit({ dimension, example }: Input<unknown>, given: unknown, refuse: Refuse): Read | null {
  if (isUnit(given) && given.dimension === dimension) return { what: "unit", unit: given };
  return isUnit(given)
    ? refuse("wrong-kind", "", `It is a unit of ${given.dimension}: take one of ${dimension}, for example ${example}.`)
    : refuse("unknown-unit");
}

function readOne(place: Place, input: Input<unknown>, given: unknown, faults: Refusal[]): Read | null {
  const refuse: Refuse = (code, range = "", remedy = remedyFor(input)) => {
    const [expected, received] = [wanted(input, range), described(given)];
    faults.push({ code, ...inPlace(place), expected, received, remedy, params: limitsOf(input) });
    return null;
  };
  if (given === undefined || given === null) return refuse("missing");
  if (input.what === "quantity") return readQuantity(input, given, refuse);
  if (input.what === "whole" || input.what === "number") return readNumber(input, given, refuse);
  if (input.what === "unit") return readUnit(input, given, refuse);
  if (input.what === "word") {
    if (typeof given === "string" && input.words?.includes(given) === true) return { what: "word", word: given };
    return refuse(typeof given === "string" ? "unknown-word" : "wrong-kind");
  }
  const { member, mayBeEmpty = false } = input;
  if (member === null || !Array.isArray(given)) return refuse("wrong-kind");
  if (given.length === 0 && !mayBeEmpty) return refuse("empty");
  const members = Array.from(given, (one: unknown, at) => readOne([...place, at], member, one, faults));
  const fitting = members.filter((one) => one !== null);
  return fitting.length === members.length ? { what: "list", members: fitting } : null;
}

/** What is so of the inputs of a formula whatever is given for them. */
interface Fields {
  readonly each: readonly (readonly [field: string, input: Input<unknown>])[];
  /** Whether there are lists to go together. */
  readonly hasLists: boolean;
  /** Whether a plain number stands among them, with a residue of doubles in it. */
  readonly hasPlain: boolean;
  /** Those that a rule of thumb reckons in units of its own. */
  readonly reckoned: readonly (readonly [field: string, input: Input<unknown>])[];
}

const known = /* @__PURE__ */ new WeakMap<object, Fields>();

/** Worked out once. */
export function fieldsOf(inputs: Readonly<Record<string, Input<unknown>>>): Fields {
  let fields = known.get(inputs);
  if (fields === undefined) {
    const each = Object.entries(inputs);
    const hasLists = each.some(([, { what }]) => what === "list");
    const hasPlain = each.some(([, { what }]) => what === "number");
    const reckoned = each.filter(([, input]) => input.reckonedIn !== undefined);
    known.set(inputs, (fields = { each, hasLists, hasPlain, reckoned }));
  }
  return fields;
}

/** Reads every input or refuses all that is wrong in one error; the place is the function's, or that of a part of its input. */
export function readInputs(
  of: string | Place,
  inputs: Readonly<Record<string, Input<unknown>>>,
  given: unknown,
  lists: "apart" | "together" = "apart",
): ReadonlyMap<string, Read> {
  const place: Place = typeof of === "string" ? [of] : of;
  const faults: Refusal[] = [];
  const read = new Map<string, Read>();
  const isRecord = typeof given === "object" && given !== null && !Array.isArray(given);
  const record = (isRecord ? given : {}) as Readonly<Record<string, unknown>>;
  const { each, hasLists, reckoned } = fieldsOf(inputs);
  for (const [field, input] of each) {
    const one = readOne([...place, field], input, Object.hasOwn(record, field) ? record[field] : undefined, faults);
    if (one !== null) read.set(field, one);
  }
  for (const field of Object.keys(record)) {
    if (read.has(field) || Object.hasOwn(inputs, field)) continue;
    const candidates = Object.keys(inputs);
    faults.push({
      code: "unknown-field",
      ...inPlace([...place, field]),
      expected: `only ${candidates.join(", ")}`,
      received: described(record[field]),
      remedy: "Leave the field out, or correct its name.",
      params: { candidates },
    });
  }
  if (hasLists && lists === "together") faults.push(...unevenLists(place, read));
  faults.push(...mixedUnits(place, read));
  const [first, ...others] = faults;
  if (first !== undefined) throw new QuantityError(first, ...others);
  reckon(read, reckoned);
  return read;
}
