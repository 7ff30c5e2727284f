import { decimalFrom } from "../numbers.js";
import type { Decimal } from "../numbers.js";
import { decimalOf, described, genuineUnit, isUnit } from "../quantity/index.js";
import type { Quantity, Unit } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import type { Fault } from "../refusal.js";
import { mixedCurrencies, unevenLists } from "./agreement.js";
import type { Input } from "./input.js";
import { outside } from "./outside.js";

/** An input as read: quantities keep their unit. */
export type Read =
  | { readonly what: "quantity"; readonly value: Decimal; readonly unit: Unit<string> }
  | { readonly what: "number"; readonly value: Decimal }
  | { readonly what: "unit"; readonly unit: Unit<string> }
  | { readonly what: "word"; readonly word: string }
  | { readonly what: "list"; readonly members: readonly Read[] };

const REMEDIES: Readonly<Record<string, string>> = {
  loss: "Write percentLost(10): a percentage lost, of what was there before.",
  share: "Write percentOf(80): a percentage of a whole.",
  addition: "Write percentAdded(6): a percentage of what it is added to.",
};

/** What an input wants, in words; a range stands before the meaning. */
function wanted({ what, noun, meaning, member, mayBeEmpty }: Input<unknown>, range = ""): string {
  if (member !== null) return `a list${mayBeEmpty ? "" : " of at least one"}, each ${wanted(member)}`;
  if (what === "number") return `a number (${noun}, ${meaning})${range}`;
  return `${what === "whole" ? "a whole number of " : ""}${noun}${range} (${meaning})`;
}

function readQuantity(where: string, input: Input<unknown>, given: unknown, faults: Fault[]): Read | null {
  const unit = genuineUnit(given);
  const fault = (code: Fault["code"], remedy: string, range = ""): null => {
    faults.push({ code, where, expected: wanted(input, range), received: described(given), remedy });
    return null;
  };
  if (unit === null) {
    const copied = typeof given === "object" && given !== null && "dimension" in given && "value" in given;
    if (copied) return fault("copied-quantity", "A copy is only data: read it back with quantityFrom(data, [units]).");
    const remedy = REMEDIES[input.dimension] ?? "Make it with a unit you import, for example inches(21).";
    return fault(given === undefined ? "missing" : "wrong-kind", remedy);
  }
  if (unit.dimension !== input.dimension && unit.dimension !== input.orDimension)
    return fault("wrong-kind", REMEDIES[input.dimension] ?? "");
  const value = decimalOf(given as Quantity<string>);
  const wrong = outside(value, unit, input.range, unit.symbol === "%");
  return wrong === null ? { what: "quantity", value, unit } : fault("out-of-range", "", ` of ${wrong}`);
}

function readNumber(where: string, input: Input<unknown>, given: unknown, faults: Fault[]): Read | null {
  const value = typeof given === "number" ? decimalFrom(given) : null;
  const fault = (code: Fault["code"], range = ""): null => {
    faults.push({ code, where, expected: wanted(input, range), received: described(given), remedy: "" });
    return null;
  };
  if (given === undefined) return fault("missing");
  if (value === null) return fault("not-a-number");
  if (input.what === "whole" && !Number.isSafeInteger(given)) return fault("not-whole");
  const wrong = outside(value, null, input.range, false);
  return wrong === null ? { what: "number", value } : fault("out-of-range", `, ${wrong}`);
}

function readOne(where: string, input: Input<unknown>, given: unknown, faults: Fault[]): Read | null {
  if (input.what === "quantity") return readQuantity(where, input, given, faults);
  if (input.what === "whole" || input.what === "number") return readNumber(where, input, given, faults);
  if (input.what === "word") {
    if (typeof given === "string" && input.words?.includes(given) === true) return { what: "word", word: given };
    const code = given === undefined ? "missing" : "wrong-kind";
    faults.push({ code, where, expected: wanted(input), received: described(given), remedy: "" });
    return null;
  }
  if (input.what === "unit") {
    if (isUnit(given) && given.dimension === input.dimension) return { what: "unit", unit: given };
    const code = given === undefined ? "missing" : isUnit(given) ? "wrong-kind" : "unknown-unit";
    const remedy = "Units are values you import, not text.";
    faults.push({ code, where, expected: wanted(input), received: described(given), remedy });
    return null;
  }
  const { member, mayBeEmpty = false } = input;
  if (member === null || !Array.isArray(given) || (given.length === 0 && !mayBeEmpty)) {
    const code = given === undefined ? "missing" : Array.isArray(given) ? "empty" : "wrong-kind";
    faults.push({ code, where, expected: wanted(input), received: described(given), remedy: "" });
    return null;
  }
  const members = Array.from(given, (one: unknown, at) => readOne(`${where}[${String(at)}]`, member, one, faults));
  const fitting = members.filter((one) => one !== null);
  return fitting.length === members.length ? { what: "list", members: fitting } : null;
}

/** The inputs of a formula as each call goes through them. */
interface Fields {
  readonly each: readonly (readonly [field: string, input: Input<unknown>, where: string])[];
  /** Whether there are lists to go together, and money to be of one currency. */
  readonly hasLists: boolean;
  readonly hasMoney: boolean;
  /** Whether a plain number stands among them, with a residue of doubles in it. */
  readonly hasPlain: boolean;
}

const known = /* @__PURE__ */ new WeakMap<object, Fields>();

/** What is so of the inputs whatever is given for them, worked out once. */
export function fieldsOf(name: string, inputs: Readonly<Record<string, Input<unknown>>>): Fields {
  let fields = known.get(inputs);
  if (fields === undefined) {
    const each = Object.entries(inputs).map(([field, input]) => [field, input, `${name}({ ${field} })`] as const);
    const hasLists = each.some(([, { what }]) => what === "list");
    const hasMoney = each.some(([, input]) => input.dimension === "money" || input.orDimension === "money");
    const hasPlain = each.some(([, { what }]) => what === "number");
    known.set(inputs, (fields = { each, hasLists, hasMoney, hasPlain }));
  }
  return fields;
}

/** Reads every input or refuses all that is wrong in one error. */
export function readInputs(
  name: string,
  inputs: Readonly<Record<string, Input<unknown>>>,
  given: unknown,
  lists: "apart" | "together" = "apart",
): ReadonlyMap<string, Read> {
  const faults: Fault[] = [];
  const read = new Map<string, Read>();
  const isRecord = typeof given === "object" && given !== null && !Array.isArray(given);
  const record = (isRecord ? given : {}) as Readonly<Record<string, unknown>>;
  const { each, hasLists, hasMoney } = fieldsOf(name, inputs);
  for (const [field, input, where] of each) {
    const own = Object.hasOwn(record, field) ? record[field] : undefined;
    const one = readOne(where, input, own, faults);
    if (one !== null) read.set(field, one);
  }
  for (const field of Object.keys(record)) {
    if (read.has(field) || Object.hasOwn(inputs, field)) continue;
    const expected = `only ${Object.keys(inputs).join(", ")}`;
    faults.push({
      code: "unknown-field",
      where: `${name}({ ${described(field).slice(10, -1)} })`,
      expected,
      received: described(record[field]),
      remedy: "Leave the field out, or correct its name.",
    });
  }
  if (hasLists && lists === "together") faults.push(...unevenLists(name, read));
  if (hasMoney) faults.push(...mixedCurrencies(name, read));
  const [first, ...others] = faults;
  if (first !== undefined) throw new QuantityError(first, ...others);
  return read;
}
