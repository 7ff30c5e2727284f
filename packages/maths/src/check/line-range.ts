import { Decimal } from "../engine/numbers.js";
import { stepsOf } from "../engine/formula/index.js";
import type { Step, Value } from "../engine/formula/index.js";

export interface Range {
  readonly low: Decimal;
  readonly high: Decimal;
}

/** The least and the most a line can be, over the figures above it as they stand: corners suffice, each figure moves it one way. */
export function rangeOf(
  step: Step,
  known: ReadonlyMap<string, Value>,
  above: ReadonlyMap<string, Range>,
  nearness: string,
): Range | null {
  let corners: ReadonlyMap<string, Value>[] = [known];
  for (const [name, { low, high }] of above)
    corners = corners.flatMap((one) =>
      low.eq(high) ? [new Map(one).set(name, low)] : [new Map(one).set(name, low), new Map(one).set(name, high)],
    );
  const ends = corners
    .slice(0, 64)
    .map((one) => stepsOf([step], one, nearness).steps[0]?.value)
    .filter((one) => one instanceof Decimal);
  return ends.length === 0 ? null : { low: Decimal.min(...ends), high: Decimal.max(...ends) };
}
