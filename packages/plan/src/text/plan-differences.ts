import { asText } from "@thrum/maths";
import { refuseUnlessPlan } from "../plan/brand.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { massText, yarnText } from "./amounts.js";
import { plainText } from "./clean.js";
import { table } from "./layout.js";

/** A figure that two plans do not share; null where one of them has none. */
export interface PlanDifference {
  readonly what: string;
  readonly before: string | null;
  readonly after: string | null;
}

/** The figures a weaver asks for, by name. */
function figures(plan: WarpPlan): ReadonlyMap<string, string> {
  const { fit, position, pieceTape, costs, fibres } = plan;
  return new Map<string, string>([
    ["does it fit", fit.verdict],
    ["knots tied", position.knotsTied],
    ["ends", String(plan.ends)],
    ["sett", String(plan.sett)],
    ["picks", String(plan.picks)],
    ["width in the reed", asText(plan.widthInReed)],
    ["finished width", asText(plan.finishedWidth)],
    ["pieces", String(plan.pieces)],
    ["a piece on the loom", asText(pieceTape.wovenLength)],
    ["warp", asText(plan.warpLength)],
    ["waste the new warp brings", asText(position.waste)],
    ...plan.yarns.flatMap(({ name, ends, length, mass, packageMass, packages }): [string, string][] => [
      [`${name}: ends`, String(ends)],
      [`${name}: yarn`, yarnText(length, "roundUp")],
      [`${name}: weight`, massText(mass, packageMass, "roundUp")],
      [`${name}: to buy`, `${String(packages)} of ${String(packageMass)}`],
    ]),
    ["chains", String(plan.winding.length)],
    ["groups of knots", String(plan.groups.length)],
    ...(costs === null
      ? []
      : ([
          ["cost of a piece", asText(costs.piece)],
          ["least price", asText(costs.floor)],
        ] as const)),
    ...(fibres ?? []).map(({ fibre, byDryMass }): [string, string] => [`${fibre}: by dry mass`, asText(byDryMass)]),
  ]);
}

/**
 * What a change to a job changes: the figures of two plans that differ, in the order of the work.
 *
 * @param before what `planWarp` gives
 * @param after the plan of the job with something changed
 * @throws QuantityError for anything but plans
 */
export function planDifferences(before: WarpPlan, after: WarpPlan): readonly PlanDifference[] {
  refuseUnlessPlan("planDifferences(before)", before);
  refuseUnlessPlan("planDifferences(after)", after);
  const [was, is] = [figures(before), figures(after)];
  const names = new Set([...was.keys(), ...is.keys()]);
  return [...names].flatMap((what) => {
    const [one = null, other = null] = [was.get(what), is.get(what)];
    return one === other ? [] : [{ what, before: one, after: other }];
  });
}

/**
 * The differences of two plans, side by side in 80 columns.
 *
 * @throws QuantityError for anything but plans
 */
export function planDifferencesText(before: WarpPlan, after: WarpPlan): string {
  const found = planDifferences(before, after);
  if (found.length === 0) return "The two plans have the same figures.";
  const rows = found.map((one) => [plainText(one.what), one.before ?? "none", one.after ?? "none"]);
  return table(["what", "first plan", "second plan"], rows).join("\n");
}
