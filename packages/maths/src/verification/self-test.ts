import * as maths from "../index.js";
import collected from "./cases.json" with { type: "json" };

/** A published case as collected from the tests: what is called with what, what the source prints, what is exact. */
export interface VerificationCase {
  readonly title: string;
  /** The exported function that is called. */
  readonly call: string;
  readonly args: readonly unknown[];
  /** How the result is read: "inches", "total.ends", "count in tex"; null where it is a plain number or text. */
  readonly read: string | null;
  /** The key of the source, in `sources`. */
  readonly source: string;
  readonly at: string;
  readonly status: string;
  readonly prints: string;
  readonly exact: string;
  readonly differs?: string;
}

/** What a run of all the cases found. */
export interface SelfTest {
  readonly cases: number;
  /** How many agree with the exact answer to 12 digits or more. */
  readonly agreeing: number;
  readonly worst: { readonly title: string; readonly digits: number; readonly ours: string; readonly exact: string };
}

/** The cases that come with this package. */
export const cases: readonly VerificationCase[] = collected.cases;

type Function = (...args: readonly unknown[]) => unknown;

const exported: Readonly<Record<string, unknown>> = maths;

/** Arguments made again from data: quantities from their fields, units from their names. */
function revived(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(revived);
  if (typeof value !== "object" || value === null) return value;
  const { dimension, value: amount, unit, ...others } = value as Readonly<Record<string, unknown>>;
  const named = typeof unit === "string" ? (dimension === "money" ? maths.currency(unit) : exported[unit]) : undefined;
  if (typeof named === "function" && Object.keys(others).length === 0) {
    return dimension === undefined ? named : (named as Function)(amount);
  }
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, revived(one)]));
}

/** The arguments of a case, as its function takes them. */
export function argumentsOf({ args }: VerificationCase): readonly unknown[] {
  return args.map(revived);
}

/** A result read out as the case has it. @internal */
export function readOut(result: unknown, { read }: VerificationCase): unknown {
  if (read === null) return result;
  const steps = read.split(/\.| in /u);
  return steps.reduce<unknown>((at, step) => {
    const unit = exported[step];
    if (typeof unit === "function" && "scale" in unit) return (at as { in(unit: unknown): number }).in(unit);
    const { dimension, [step]: field } = at as Readonly<Record<string, unknown>>;
    return dimension === "money" ? (at as maths.Money).in(maths.currency(step)) : field;
  }, result);
}

/** In how many digits two answers agree, at most 15; text agrees wholly or not at all. @internal */
export function digitsAgreeing(ours: unknown, exact: string): number {
  const found = /^(-?\d+(?:\.\d+)?)(?:\/(\d+))?$/u.exec(exact);
  if (found === null || typeof ours !== "number") return String(ours) === exact ? 15 : 0;
  const wanted = Number(found[1]) / Number(found[2] ?? 1);
  const off = Math.abs(ours - wanted) / Math.max(Math.abs(wanted), Number.MIN_VALUE);
  return off === 0 ? 15 : Math.min(15, Math.max(0, Math.floor(-Math.log10(off))));
}

/**
 * Runs every published case where you are, and says how well the answers agree.
 *
 * @example selfTest().agreeing === selfTest().cases // true
 */
export function selfTest(): SelfTest {
  let agreeing = 0;
  let worst = { title: "", digits: 16, ours: "", exact: "" };
  for (const one of cases) {
    const ours = readOut((exported[one.call] as Function)(...argumentsOf(one)), one);
    const digits = digitsAgreeing(ours, one.exact);
    if (digits >= 12) agreeing += 1;
    if (digits < worst.digits) worst = { title: one.title, digits, ours: String(ours), exact: one.exact };
  }
  return { cases: cases.length, agreeing, worst };
}
