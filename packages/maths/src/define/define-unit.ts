import { described, isPercent, isUnit, unit } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { inPlace, missingOr, QuantityError } from "../engine/refusal.js";
import type { FaultPath, Refusal, RefusalCode } from "../engine/refusal.js";

/** A unit of one's own: so many of another of its kind. A check holds it against the units of that kind that readers mix up. */
export interface OwnUnit<D extends string> {
  /** As one calls it: "ells". It is what copied data names, so no two units of a program may share it. */
  readonly name: string;
  /** As it is printed behind a number: "ell". */
  readonly symbol: string;
  /** Its size as a fraction of a unit of the same kind: `[5, 4, yards]`. */
  readonly size: readonly [numerator: number, denominator: number, of: Unit<D>];
}

const FIELDS: readonly string[] = ["name", "symbol", "size"];

function asGroup(value: unknown): Readonly<Record<string, unknown>> | null {
  return typeof value === "object" && value !== null && !Array.isArray(value)
    ? (value as Readonly<Record<string, unknown>>)
    : null;
}

const isSize = (value: unknown): value is number => Number.isSafeInteger(value) && Number(value) > 0;

/** Everything that is wrong with a definition. */
function faultsOf(definition: unknown): readonly Refusal[] {
  const given = asGroup(definition);
  const faults: Refusal[] = [];
  const tell = (path: FaultPath, code: RefusalCode, expected: string, value: unknown, remedy: string): void => {
    const place = { code: missingOr(value, code), ...inPlace(["defineUnit", ...path]) };
    faults.push({ ...place, expected, received: described(value), remedy });
  };
  if (given === null) {
    tell([], "wrong-kind", "a definition of a unit", definition, "Give its name, symbol and size.");
    return faults;
  }
  const { name, symbol } = given;
  if (typeof name !== "string" || !/^[a-z][A-Za-z0-9]{0,39}$/u.test(name))
    tell(["name"], "unreadable", "a name as of a variable", name, "Write it such as ells or ellsOfBrabant.");
  if (typeof symbol !== "string" || !/^[\p{L}%"'′″][^\p{C}\p{Zl}\p{Zp}]{0,19}$/u.test(symbol) || symbol.endsWith(" "))
    tell(["symbol"], "unreadable", "a symbol that begins with a letter", symbol, "Write it such as ell.");
  const size: readonly unknown[] = Array.isArray(given["size"]) ? given["size"] : [];
  const [numerator, denominator, of] = size;
  if (size.length !== 3)
    tell(["size"], "wrong-kind", "a fraction of another unit", given["size"], "Write it such as [5, 4, yards].");
  else {
    for (const [at, part] of [numerator, denominator].entries())
      if (!isSize(part))
        tell(["size", at], "not-whole", "a whole number of 1 or more", part, "Write 1.25 as the fraction 5, 4.");
    // A percentage has its base, and a currency no size.
    if (!isUnit(of) || isPercent(of) || of.alone !== null)
      tell(["size", 2], "wrong-kind", "a unit with a size of its own", of, "Name a unit you import, such as yards.");
  }
  for (const field of Object.keys(given))
    if (!FIELDS.includes(field))
      tell([field], "unknown-field", "no such field", field, "Give its name, symbol and size.");
  return faults;
}

/**
 * A unit of one's own, with all that ours have: it makes amounts, reads them, and stands in every formula of its kind.
 *
 * @param definition its name, its symbol and its exact size
 * @throws QuantityError with every fault of the definition
 * @example defineUnit({ name: "ells", symbol: "ell", size: [5, 4, yards] })(2).in(inches) // 90
 */
export function defineUnit<D extends string>(definition: OwnUnit<D>): Unit<D> {
  const [first, ...others] = faultsOf(definition);
  if (first !== undefined) throw new QuantityError(first, ...others);
  const { name, symbol, size } = definition;
  return unit({ dimension: size[2].dimension, name, symbol, size });
}
