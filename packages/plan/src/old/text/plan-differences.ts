import { asText } from "@thrum/maths";
import type { Length } from "@thrum/maths";
import { refuseUnlessPlan } from "../plan/brand.js";
import type { WarpPlan } from "../plan/warp-plan.js";
import { fineText, massText, moneyText, percentText, yarnText } from "./amounts.js";
import { plainText } from "./clean.js";
import { table } from "./layout.js";

/** A figure that two plans do not share; null where one of them has none. */
export interface PlanDifference {
  readonly what: string;
  readonly before: string | null;
  readonly after: string | null;
}

/** A figure as it is shown, and as it is compared. */
type Figure = readonly [what: string, shown: string, exact: string];

function same(what: string, shown: string | number): Figure {
  return [what, String(shown), String(shown)];
}

function measured(what: string, length: Length): Figure {
  return [what, fineText(length), asText(length)];
}

function ofYarn({ name, ends, length, mass, packageMass, packages }: WarpPlan["yarns"][number]): readonly Figure[] {
  return [
    same(`${name}: ends`, ends),
    [`${name}: yarn`, yarnText(length, "roundUp"), asText(length)],
    [`${name}: weight`, massText(mass, packageMass, "roundUp"), asText(mass)],
    same(`${name}: to buy`, `${String(packages)} of ${String(packageMass)}`),
  ];
}

/** The figures a weaver asks for, by name. */
function figures(plan: WarpPlan): readonly Figure[] {
  const { fit, position, pieceTape, costs, fibres } = plan;
  return [
    same("does it fit", fit.verdict),
    same("knots tied", position.knotsTied),
    same("ends", plan.ends),
    same("sett", String(plan.sett)),
    same("picks", String(plan.picks)),
    measured("width in the reed", plan.widthInReed),
    measured("finished width", plan.finishedWidth),
    same("pieces", plan.pieces),
    measured("a piece on the loom", pieceTape.wovenLength),
    measured("warp", plan.warpLength),
    measured("waste the new warp brings", position.waste),
    ...plan.yarns.flatMap(ofYarn),
    same("chains", plan.winding.length),
    same("groups of knots", plan.groups.length),
    ...(costs === null
      ? []
      : [
          ["cost of a piece", moneyText(costs.piece, "roundUp"), asText(costs.piece)] as const,
          ["least price", moneyText(costs.floor, "roundUp"), asText(costs.floor)] as const,
        ]),
    ...(fibres ?? []).map(
      ({ fibre, byDryMass }) => [`${fibre}: by dry mass`, percentText(byDryMass), asText(byDryMass)] as const,
    ),
  ];
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
  const [was, is] = [before, after].map((plan) => new Map(figures(plan).map((one) => [one[0], one])));
  const names = new Set([...(was?.keys() ?? []), ...(is?.keys() ?? [])]);
  return [...names].flatMap((what) => {
    const [one, other] = [was?.get(what), is?.get(what)];
    return one?.[2] === other?.[2] ? [] : [{ what, before: one?.[1] ?? null, after: other?.[1] ?? null }];
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
