import { described } from "./described.js";
import { type Found, type Params, type Path, StripeError, type StripeErrorCode } from "./stripe-error.js";

/** Finds what is wrong with one value; an empty list passes it. */
export type Check = (value: unknown, path: Path) => readonly Found[];

export type Checks = Readonly<Record<string, Check>>;

export const PASSED: readonly Found[] = [];

/** Refuses an input object unless it has exactly these fields and each passes its check. */
export function check(refusedBy: string, input: unknown, checks: Checks): void {
  const faults = fieldFaults(input, [], checks);
  if (faults.length > 0) throw new StripeError(refusedBy, faults);
}

/** Refuses the input with one fault; a received text stands as it is, so quote what a user wrote. */
export function refuse(
  refusedBy: string,
  code: StripeErrorCode,
  path: Path,
  words: { expected: string; received: string | number; remedy: string; position?: number; params?: Params },
): never {
  throw new StripeError(refusedBy, [{ code, path, params: {}, ...words, received: String(words.received) }]);
}

export function fault(
  code: StripeErrorCode,
  path: Path,
  expected: string,
  value: unknown,
  remedy: string,
  params: Params = {},
): readonly Found[] {
  return [{ code, path, expected, received: described(value), remedy, params }];
}

/** A check that asks one question: what is wrong with the value, if anything is. */
export function judged(
  expected: string,
  remedy: string,
  wrong: (value: unknown) => StripeErrorCode | false,
  params: Params = {},
): Check {
  return (value, path) => {
    const code = wrong(value);
    return code === false ? PASSED : fault(code, path, expected, value, remedy, params);
  };
}

/** What is wrong with a value that must be there; null is missing too, unless it may stand there. */
export function checked(value: unknown, path: Path, passes: Check | undefined): readonly Found[] {
  const found = passes?.(value, path) ?? PASSED;
  if (value === undefined && found.length === 0) return fault("missing", path, "a value", value, "State it.");
  if (value !== undefined && value !== null) return found;
  return found.map((one) => (one.path.length > path.length ? one : { ...one, code: "missing" }));
}

/** Every fault of an object and of its fields; the path is empty for the input itself. */
export function fieldFaults(input: unknown, path: Path, checks: Checks): readonly Found[] {
  const names = Object.keys(checks);
  const [known, params] = [`Give ${names.join(", ")}.`, { kind: "object", candidates: names }];
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    const missing = input === undefined || input === null;
    return fault(missing ? "missing" : "wrong-kind", path, "an object", input, known, params);
  }
  const given = input as Readonly<Record<string, unknown>>;
  const faults: Found[] = [];
  for (const field of names) faults.push(...checked(given[field], [...path, field], checks[field]));
  for (const field of Object.keys(given)) {
    if (Object.hasOwn(checks, field)) continue;
    faults.push(...fault("unknown-field", [...path, field], "no such field", field, known, params));
  }
  return faults;
}
