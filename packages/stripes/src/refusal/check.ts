import { described } from "./described.js";
import { StripeError, type StripeErrorCode, type StripeFault } from "./stripe-error.js";

/** Finds what is wrong with one value; an empty list passes it. */
export type Check = (value: unknown, where: string) => readonly StripeFault[];

/** Refuses an input object unless it has exactly these fields and each passes its check. */
export function check(refusedBy: string, input: unknown, checks: Readonly<Record<string, Check>>): void {
  const faults = fieldFaults(input, "", checks);
  if (faults === PASSED) return;
  const [first, ...others] = faults;
  if (first !== undefined) throw new StripeError(refusedBy, [first, ...others]);
}

/** Refuses the input with one fault; a received text stands as it is, so quote what a user wrote. */
export function refuse(
  refusedBy: string,
  code: StripeErrorCode,
  where: string,
  words: { expected: string; received: string | number; remedy: string; position?: number },
): never {
  const { expected, received, remedy, position = null } = words;
  throw new StripeError(refusedBy, [{ code, where, position, expected, received: String(received), remedy }]);
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

export const PASSED: readonly StripeFault[] = [];

export function fieldFaults(
  input: unknown,
  where: string,
  checks: Readonly<Record<string, Check>>,
): readonly StripeFault[] {
  const known = (): string => `The fields are ${Object.keys(checks).join(", ")}.`;
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    return fault("wrong-kind", where || "input", "an object", input, known());
  }
  let faults = PASSED;
  const path = where === "" ? "" : `${where}.`;
  let wanted = 0;
  for (const field in checks) {
    wanted++;
    const value = (input as Record<string, unknown>)[field];
    const found =
      value === undefined
        ? fault("missing", path + field, "a value", value, "Nothing is assumed: state it.")
        : checks[field]?.(value, path + field);
    if (found !== undefined && found !== PASSED) faults = [...faults, ...found];
  }
  const given = Object.keys(input);
  if (faults === PASSED && given.length === wanted) return PASSED;
  for (const field of given) {
    if (Object.hasOwn(checks, field)) continue;
    faults = [...faults, ...fault("unknown-field", path + field, "no such field", field, known())];
  }
  return faults;
}
