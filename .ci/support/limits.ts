// The limits of a formula, beside its cases: what it gives at the edge of what it takes, and that it takes nothing past it.
import { attempt } from "@thrum/maths";
import type { Unit } from "@thrum/maths";
import { expect, it } from "vitest";
import { leans } from "./leaning.mjs";

/**
 * The answer at an edge, worked by hand, in a unit where it is a quantity; and inputs just past an edge, each by its field.
 */
export function limits<I extends object, D extends string>(
  call: (input: I) => unknown,
  [title, input, wanted, unit]: readonly [title: string, input: I, wanted: number, unit?: Unit<D>],
  past: Readonly<Partial<Record<keyof I, unknown>>>,
): void {
  it(title, () => {
    expect(leans(title), "a title stands alone, as a row of a table").toBe(false);
    const answer = call(input);
    const value = unit === undefined ? answer : (answer as { in(unit: Unit<D>): number }).in(unit);
    expect(Math.abs((value as number) - wanted)).toBeLessThanOrEqual(1e-12 * Math.abs(wanted));
  });

  it.each(Object.entries(past))("is refused just past the edge of %s", (field, value) => {
    const read = attempt(call as (input: object) => unknown, { ...input, [field]: value });
    const code = Array.isArray(value) && value.length === 0 ? "empty" : "out-of-range";
    expect(read.ok ? [] : read.faults.map((fault) => [fault.code, fault.path[0]])).toEqual([[code, field]]);
  });
}
