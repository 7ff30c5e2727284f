import { lookedAt } from "./looked-at.js";

/** Why an input was refused; the list is closed, and one mistake has one code in every package. */
export type StripeErrorCode =
  | "missing"
  | "unknown-field"
  | "unknown-word"
  | "wrong-kind"
  | "not-a-number"
  | "not-whole"
  | "out-of-range"
  | "empty"
  | "too-long"
  | "unreadable"
  | "unknown-letter"
  | "does-not-fit"
  | "not-symmetrical"
  | "odd-pivot"
  | "unsafe-text";

/** A place in an input: names of fields, numbers of members counted from 0. */
export type Path = readonly (string | number)[];

/** What a sentence about a fault is made of, for a program that says it in another language. */
export type Params = Readonly<Record<string, string | number | readonly (string | number)[] | undefined>>;

/** One thing wrong with an input; the shape is that of a fault of any of the packages. */
export interface StripeFault {
  readonly code: StripeErrorCode;
  /** The function that refuses. */
  readonly function: string;
  /** The place in its input; empty where the whole of it is meant. */
  readonly path: Path;
  readonly expected: string;
  readonly received: string;
  readonly remedy: string;
  /** Limits (`atLeast`, `atMost`), `candidates`, the `kind`, an `example`. */
  readonly params: Params;
  /** The character of a text, counted from 1. */
  readonly position?: number;
}

/** A fault before it is known which function refuses. */
export type Found = Omit<StripeFault, "function">;

const MOST_TOLD = 50;

/** As the maths write a place; a test holds the two to one sentence. */
function pathText(path: Path): string {
  const steps = path.map((step) => {
    if (typeof step === "number") return `[${step}]`;
    return /^[\p{L}\p{N}_-]+$/u.test(step) ? `.${printable(step)}` : `[${JSON.stringify(printable(step))}]`;
  });
  return steps.join("").replace(/^\./u, "");
}

const LONGEST = 60;

function printable(name: string): string {
  const clean = name.slice(0, LONGEST).replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, "�");
  return name.length > LONGEST ? `${clean}…` : clean;
}

function sentence({ function: name, path, expected, received, remedy }: StripeFault): string {
  const place = typeof path[0] === "string" ? `${name}({ ${pathText(path)} })` : `${name}(…)${pathText(path)}`;
  return `${place}: expected ${expected}, received ${received}. ${remedy}`.trimEnd();
}

/** Marks an error of ours, whichever copy of whichever package threw it. */
const BRAND = Symbol.for("thrum.error.1");

/** A refused input: the first fault in its own fields, every fault in `faults`, the first fifty in the message. */
export class StripeError extends Error implements StripeFault {
  override readonly name = "StripeError";
  declare readonly code: StripeErrorCode;
  declare readonly function: string;
  declare readonly path: Path;
  declare readonly expected: string;
  declare readonly received: string;
  declare readonly remedy: string;
  declare readonly params: Params;
  declare readonly position?: number;
  declare readonly faults: readonly [StripeFault, ...StripeFault[]];

  constructor(refusedBy: string, found: readonly Found[]) {
    const faults = found.map((one) => Object.freeze({ function: refusedBy, ...one }));
    const more = faults.length > MOST_TOLD ? [`… and ${faults.length - MOST_TOLD} more.`] : [];
    super([...faults.slice(0, MOST_TOLD).map(sentence), ...more].join("\n"));
    Object.assign(this, faults[0], { faults: Object.freeze(faults) });
    Object.defineProperty(this, BRAND, { value: true });
  }
}

/** Whether some copy of this package, or another of ours, threw this. */
function isOurs(error: unknown): error is Pick<StripeError, "faults"> {
  return error instanceof Error && Object.hasOwn(error, BRAND);
}

/** What a call that does not throw gives back: the value, or every fault. */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly [StripeFault, ...StripeFault[]] };

/** A call whose refusals are data; any other error comes back as such. */
function called<R>(f: (...input: never[]) => R, given: readonly unknown[]): Reading<R> | { readonly error: unknown } {
  try {
    return { ok: true, value: (f as (...input: readonly unknown[]) => R)(...given) };
  } catch (error) {
    return isOurs(error) ? { ok: false, faults: error.faults } : { error };
  }
}

/**
 * Calls a function of this package without throwing what it refuses: the value, or every fault as data. The input may be
 * anything, as it comes from a form or a file; what throws when it is looked at is a fault too.
 *
 * @example attempt(mirror, "no sequence").ok // false
 */
export function attempt<R>(f: (...input: never[]) => R, ...given: readonly unknown[]): Reading<R> {
  const first = called(f, given);
  if ("ok" in first) return first;
  const faults: StripeFault[] = [];
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
