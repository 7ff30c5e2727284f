import { amountText, unitsOf } from "@thrum/plan";
import type { PlanData } from "@thrum/plan";
import type { Yarn } from "../parts/yarn.js";
import type { Loom } from "../work/loom.js";

type Known = Omit<Loom, "yarns" | "bands" | "marks" | "steps" | "doIn" | "foundIn" | "waits">;

/** The yarn of every end; of a blend in the order of its hand, which the lease decides. */
function yarnOfEach(plan: PlanData, yarns: readonly Yarn[]): readonly number[] {
  const places = new Map(yarns.map(({ name }, at) => [name, at]));
  return (plan.figures.loom.stripes.value?.runs ?? []).flatMap(({ ends, yarns: hand }) =>
    Array.from({ length: ends }, (_, at) => places.get(hand[at % hand.length] ?? "") ?? 0),
  );
}

/** The old end of every new one; none where a partner is made, or where two share a knot. */
function oldOfEach(plan: PlanData): readonly (number | null)[] {
  const old: (number | null)[] = [];
  for (const { standing, places, newEnd, oldEnd } of plan.figures.loom.table.value?.stretches ?? []) {
    if (newEnd === null) continue;
    for (let at = 0; at < places; at += 1)
      old.push(oldEnd === null || standing === "second on one knot" ? null : oldEnd + at);
  }
  return old;
}

/** End 1 as she sits: facing the front of the loom it lies on the other side. */
function sideOf(plan: PlanData): Loom["side"] {
  const { endOneOn } = plan.job.loom ?? {};
  const faces = plan.figures.winding.faces.value;
  if (endOneOn === undefined || faces === null) return null;
  return (endOneOn === "left") === (faces === "back of the loom") ? "left" : "right";
}

export function loomFigures(plan: PlanData, yarns: readonly Yarn[]): Known {
  const { loom, tying, winding, join } = plan.figures;
  const { picks } = plan.job.cloth ?? {};
  const shafts = loom.shafts.value;
  return {
    title: plan.job.title ?? "",
    units: unitsOf(plan.job),
    ends: loom.ends.value ?? 0,
    yarnOf: yarnOfEach(plan, yarns),
    shaftOf: shafts?.shafts ?? [],
    dentOf: loom.dentOf.value?.dents ?? [],
    oldOf: oldOfEach(plan),
    repeat: shafts?.repeat ?? 0,
    repeatPlaceOf: shafts?.placeInRepeat ?? [],
    order: plan.job.join?.order ?? "from end 1",
    side: sideOf(plan),
    isAfresh: join.standing.value === "afresh",
    knotsAre: join.knots.value,
    groups: tying.onLoom.value,
    rows: tying.joining.value,
    knots: tying.knots.value ?? 0,
    chains: winding.wound.value,
    laid: winding.laying.value,
    shafts: tying.check.value?.rows ?? null,
    picks: picks === undefined ? null : amountText(picks, unitsOf(plan.job)),
  };
}
