import { isQuantity } from "@thrum/maths";
import { expect, it } from "vitest";
import { examplePlans } from "#ci/example-plans.js";
import { LISTED, isFigure } from "./listed.js";
import type { PlanData } from "./plan-data.js";

type Amount = readonly [place: string, amount: string];

/** Every amount with a unit within a value, by its place; places in lists are told without their number. */
function amountsIn(value: unknown, place: string): readonly Amount[] {
  if (isQuantity(value)) return [[place, JSON.stringify(value)]];
  if (Array.isArray(value)) return value.flatMap((one) => amountsIn(one, `${place}[]`));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => amountsIn(one, `${place}.${name}`));
}

function listedAmounts(plan: PlanData, which: (one: (typeof LISTED)[number]) => boolean): readonly Amount[] {
  const groups = plan.figures as Readonly<Record<string, object>>;
  return LISTED.filter(which).flatMap(({ group, name, scope }) => {
    const at = groups[group] ?? {};
    const rows: readonly object[] = scope === "plan" ? [at] : Object.values(at);
    return rows.flatMap((row) =>
      amountsIn((row as Record<string, { value: unknown } | undefined>)[name]?.value, `${group}.${name}`),
    );
  });
}

/** Amounts of lists that are added up or converted along the way from figures beside them. */
const ALONG_THE_WAY: readonly string[] = [
  ...["from", "to", "wovenFrom", "wovenTo"].map((one) => `tape.marks.marks[].${one}`),
  ...["from", "to", "wovenFrom", "wovenTo"].map((one) => `order.tape.marks[].${one}`),
  "fibre.holding.shares[]",
  "knots.ofYarns[].sideBySide",
  ...["knots.oldCount", "yarn.lengthToMass"],
  "winding.raddle[].to",
];

it("has in its lists no amount that is neither a figure nor a key of the job", () => {
  const places = examplePlans.flatMap(([, plan]) => {
    const amounts = [...listedAmounts(plan, isFigure), ...amountsIn(plan.job, "job")].map(([, amount]) => amount);
    const known = new Set(amounts);
    const inParts = listedAmounts(plan, (one) => !isFigure(one));
    return inParts.flatMap(([place, amount]) => (known.has(amount) ? [] : [place]));
  });
  expect(new Set(places)).toEqual(new Set(ALONG_THE_WAY));
});
