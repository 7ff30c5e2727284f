import { reading } from "../engine/refusal.js";
import { readInputs } from "../engine/formula/index.js";
import { inWords } from "../engine/working/index.js";
import { ASKED_BUDGET, BUDGET, cellsOf, told, valueOf, weighed } from "./evidence.js";
import type { Cell, Weighed } from "./evidence.js";
import { cellOf } from "./plain-slip.js";
import { amountsOf } from "./hand-of.js";
import type { Scene } from "./reason.js";
import { reasonsOf } from "./reasons.js";
import { saying } from "./sentences.js";
import type { FoundSlip } from "./verdict.js";

const MOST = 3;
const SURE = 0.95;
const ALONE = 0.8;

/** What evidence allows to be said of a wrong number. */
export interface Found {
  readonly slips: readonly FoundSlip[];
  readonly wouldFit: readonly FoundSlip[];
  /** The wrong sums behind the slips, to tell them apart by. */
  readonly behind: readonly Weighed[];
}

/** A wrong sum as a verdict tells it. */
export function slipOf(scene: Scene, { reason, value }: Weighed, certainty: FoundSlip["certainty"]): FoundSlip {
  const { declared, inputs } = scene.run;
  return {
    key: reason.key,
    says: saying(reason.says()),
    line: inWords(reason.line),
    value: String(Number(value.toPrecision(12))),
    certainty,
    at: (input) => {
      const read = reading(() => readInputs(declared.name, declared.inputs, input));
      if (!read.ok) return null;
      const other = valueOf(reason, amountsOf(read.value, inputs));
      return Number.isFinite(other) ? other : null;
    },
  };
}

/** Every wrong sum of a question with its weight; it does not depend on the claim. */
export function allOf(scene: Scene, exact: number): readonly Weighed[] {
  return weighed(scene, reasonsOf(scene), exact);
}

function judgedCell(scene: Scene, cell: Cell): Found {
  const sums = told(scene, cell.found);
  const [first] = sums;
  const isNamed = cell.spent <= BUDGET;
  const sure = cell.weight / (cell.weight + cell.chance) >= SURE && (first?.weight ?? 0) >= ALONE * cell.weight;
  const certainty = isNamed ? (sure ? "certain" : "likely") : "would fit";
  const most = sums.slice(0, sure ? 1 : MOST).map((one) => slipOf(scene, one, certainty));
  return isNamed
    ? { slips: most, wouldFit: [], behind: sums.slice(0, MOST) }
    : { slips: [], wouldFit: most, behind: [] };
}

const NOTHING: Found = { slips: [], wouldFit: [], behind: [] };

/** What may be said of a wrong number by the evidence rule. */
export function foundFor(
  scene: Scene,
  all: readonly Weighed[],
  { exact, step, near, claimed }: Readonly<Record<"exact" | "step" | "near" | "claimed", number>>,
): Found {
  const cell = cellsOf(all, exact, step, near).get(cellOf(claimed, step));
  return cell === undefined || cell.spent > ASKED_BUDGET ? NOTHING : judgedCell(scene, cell);
}

/** The wrong sums that are written like the right answer: nobody can see them there. */
export function hidden(scene: Scene, all: readonly Weighed[], exact: number, step: number): readonly FoundSlip[] {
  const right = cellOf(exact, step);
  const found = all.filter(({ value }) => cellOf(value, step) === right);
  return told(scene, found).map((one) => slipOf(scene, one, "would fit"));
}

/** The line where most wrong sums lie that miss to the same side. */
export function lineToLookAt({ run }: Scene, all: readonly Weighed[], exact: number, claimed: number): string | null {
  if (run.declared.lines.length < 2) return null;
  const weights = new Map<string, number>();
  const off = Math.log(claimed / exact);
  for (const { reason, value, weight } of all) {
    const own = Math.log(value / exact);
    if (reason.line === "" || !(own * off > 0)) continue;
    const near = Math.exp(-Math.abs(own - off) / Math.max(0.05, Math.abs(off)));
    weights.set(reason.line, (weights.get(reason.line) ?? 0) + weight * near);
  }
  const [best] = [...weights].sort((a, b) => b[1] - a[1]);
  return best === undefined ? null : inWords(best[0]);
}
