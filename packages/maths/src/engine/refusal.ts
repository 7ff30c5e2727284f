import { faultsText, inPlace } from "./fault.js";
import { lookedAt } from "./looked-at.js";
import type { Fault, FaultParams, FaultPath, Faults, Place, Refusal, RefusalCode } from "./fault.js";

export { faultsText, faultText, inPlace, missingOr, pathText } from "./fault.js";
export type { Fault, FaultParams, FaultPath, Faults, Place, Refusal, RefusalCode } from "./fault.js";

function whole({ params = {}, path, ...rest }: Refusal): Fault {
  return Object.freeze({ ...rest, path: Object.freeze([...path]), params: Object.freeze(params) });
}

/** Marks an error of ours, whichever copy of whichever package threw it. */
const BRAND = Symbol.for("thrum.error.1");

/** The one error this library throws. It lists every fault it found; its own fields are those of the first. */
export class QuantityError extends Error {
  override readonly name = "QuantityError";
  readonly faults: Faults;
  readonly code: RefusalCode;
  readonly function: string;
  readonly path: FaultPath;
  readonly expected: string;
  readonly received: string;
  readonly remedy: string;
  readonly params: FaultParams;

  constructor(first: Refusal, ...others: readonly Refusal[]) {
    const faults: Faults = [whole(first), ...others.map(whole)];
    super(faultsText(faults));
    this.faults = Object.freeze(faults);
    ({
      code: this.code,
      function: this.function,
      path: this.path,
      expected: this.expected,
      received: this.received,
      remedy: this.remedy,
      params: this.params,
    } = faults[0]);
    Object.defineProperty(this, BRAND, { value: true });
  }
}

/** Refuses what stands at a place: what belongs there, what was received, and what to do. */
export function refuse(
  code: RefusalCode,
  where: Place,
  expected: string,
  received: string,
  remedy = "",
  params: FaultParams = {},
): never {
  throw new QuantityError({ code, ...inPlace(where), expected, received, remedy, params });
}

/** An error of any of the packages, as `isThrumError` tells it. */
export interface ThrumError extends Error {
  readonly faults: Faults<string>;
}

/**
 * Whether something caught is a refusal of ours, of any package and of any copy of it, and no slip in the program.
 *
 * @param error anything caught
 * @example isThrumError(new TypeError("no")) // false
 */
export function isThrumError(error: unknown): error is ThrumError {
  return error instanceof Error && Object.hasOwn(error, BRAND);
}

/** Reads the parts of an input one by one, and refuses all that is wrong in them in one error. */
export function allTogether(...reads: readonly (() => unknown)[]): void {
  const [first, ...others] = reads.flatMap((read) => {
    const found = reading(read);
    return found.ok ? [] : found.faults;
  });
  if (first !== undefined) throw new QuantityError(first, ...others);
}

/** What a call that does not throw gives back: the value, or every fault. */
export type Reading<T, Code extends string = string> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly faults: Faults<Code> };

/** The non-throwing twin of a reader: our refusals become data, any other error stays an error. */
export function reading<T>(read: () => T): Reading<T, RefusalCode> {
  try {
    return { ok: true, value: read() };
  } catch (error) {
    if (error instanceof QuantityError) return { ok: false, faults: error.faults };
    throw error;
  }
}

/** A call whose refusals are data; any other error comes back as such. */
function called<R>(f: (...input: never[]) => R, given: readonly unknown[]): Reading<R> | { readonly error: unknown } {
  try {
    return { ok: true, value: (f as (...input: readonly unknown[]) => R)(...given) };
  } catch (error) {
    return isThrumError(error) ? { ok: false, faults: error.faults } : { error };
  }
}

/**
 * Calls a function of any of the packages without throwing what it refuses: the value, or every fault as data. The input
 * may be anything, as it comes from a form or a file; what throws when it is looked at is a fault too.
 *
 * @param f a calculation, a report function, a reader, or any function that throws refusals of ours
 * @param given what it is called with
 * @example attempt(yards, "120").ok // true
 */
export function attempt<R>(f: (...input: never[]) => R, ...given: readonly unknown[]): Reading<R> {
  const first = called(f, given);
  if ("ok" in first) return first;
  const faults: Fault[] = [];
  const words = { expected: "what can be looked at", received: "what throws", remedy: "Give plain data.", params: {} };
  const seen = given.map((one, at) =>
    lookedAt(one, (path) => {
      faults.push({ code: "unreadable", function: "attempt", path: at === 0 ? path : [at, ...path], ...words });
    }),
  );
  const [fault, ...others] = faults;
  if (fault === undefined) throw first.error;
  const again = called(f, seen);
  return "ok" in again && !again.ok ? again : { ok: false, faults: [fault, ...others] };
}
