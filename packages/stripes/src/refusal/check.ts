import { described } from "./described.js";
import { StripeError, type StripeErrorCode, type StripeFault } from "./stripe-error.js";

/** Finds what is wrong with one value; an empty list passes it. */
export type Check = (value: unknown, where: string) => readonly StripeFault[];

export type Checks = Readonly<Record<string, Check>>;

export const PASSED: readonly StripeFault[] = [];

/** Refuses an input object unless it has exactly these fields and each passes its check. */
export function check(refusedBy: string, input: unknown, checks: Checks): void {
  const faults = fieldFaults(input, "", checks);
  if (faults.length > 0) throw new StripeError(refusedBy, faults);
}

/** Refuses the input with one fault; a received text stands as it is, so quote what a user wrote. */
export function refuse(
  refusedBy: string,
  code: StripeErrorCode,
  where: string,
  words: { expected: string; received: string | number; remedy: string; position?: number },
): never {
  throw new StripeError(refusedBy, [{ code, where, position: null, ...words, received: String(words.received) }]);
}

export function fault(
  code: StripeErrorCode,
  where: string,
  expected: string,
  value: unknown,
  remedy: string,
): readonly StripeFault[] {
  return [{ code, where, position: null, expected, received: described(value), remedy }];
}

/** A check that asks one question: what is wrong with the value, if anything is. */
export function judged(expected: string, remedy: string, wrong: (value: unknown) => StripeErrorCode | false): Check {
  return (value, where) => {
    const code = wrong(value);
    return code === false ? PASSED : fault(code, where, expected, value, remedy);
  };
}

/** What is wrong with a value that must be there. */
export function checked(value: unknown, where: string, passes: Check | undefined): readonly StripeFault[] {
  if (value === undefined) return fault("missing", where, "a value", value, "State it.");
  return passes?.(value, where) ?? PASSED;
}

/** Every fault of an object and of its fields; `where` is empty for the input itself. */
export function fieldFaults(input: unknown, where: string, checks: Checks): readonly StripeFault[] {
  const known = (): string => `Give ${Object.keys(checks).join(", ")}.`;
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    return fault("wrong-kind", where || "input", "an object", input, known());
  }
  const given = input as Readonly<Record<string, unknown>>;
  const path = where && `${where}.`;
  let faults = PASSED;
  for (const field in checks) {
    const found = checked(given[field], path + field, checks[field]);
    if (found.length > 0) faults = [...faults, ...found];
  }
  for (const field of Object.keys(given)) {
    if (Object.hasOwn(checks, field)) continue;
    faults = [...faults, ...fault("unknown-field", path + field, "no such field", field, known())];
  }
  return faults;
}
