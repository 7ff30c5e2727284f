import {
  finishedWidth,
  piecesFromWarp,
  reedWidth,
  settInReed,
  warpLength,
  wovenLength,
  yarnForEnds,
} from "@thrum/maths";
import type { Calculation } from "@thrum/maths";
import type { PlanStep, WarpPlan } from "@thrum/plan";
import type { AnyCalculation } from "../calculation/given.js";
import type { Between, Group, Stated, Sum } from "./item.js";

/** What a plan gave a calculation; by name, for a plan may come from another copy of the handbook. */
function inputOf(steps: readonly PlanStep[], { declaration }: AnyCalculation): Sum["input"] | null {
  const step = steps.find(({ calculation }) => calculation.declaration.name === declaration.name);
  return step === undefined ? null : (step.input as Sum["input"]);
}

/** A calculation that a plan has among its steps, done again. */
export function sumOf<I>(
  steps: readonly PlanStep[],
  calculation: Calculation<I, Sum["answer"]>,
  { name, label, reads, answer }: Pick<Sum, "name" | "label" | "reads"> & { readonly answer: Sum["answer"] | null },
): readonly Sum[] {
  const any = calculation as unknown as AnyCalculation;
  const input = inputOf(steps, any);
  if (input === null) return [];
  return [{ what: "sum", name, label, calculation: any, input, reads, answer: answer ?? any(input) }];
}

const ENDS: Omit<Between, "answer"> = {
  ...{ what: "between", name: "ends", label: "ends of the new warp", noun: "ends" },
  ...{ words: "the ends of all stripes", formula: "=SUM(stripe_ends)" },
};

/** The ends the loom has against those of the stripes, so that a changed stripe shows where it would not fit. */
function oldEnds({ ends, fit }: WarpPlan): readonly (Between | Stated)[] {
  const old = fit.findings.find(({ about }) => about === "ends")?.old;
  if (typeof old !== "number") return [];
  const counted = yarnForEnds.declaration.inputs["ends"];
  if (counted === undefined) throw new RangeError("no ends to count");
  const input = { ...counted, meaning: "of the old warp, counted on the loom" };
  const answer = ends - old;
  const words = "ends of the new warp − ends of the old warp; 0 where each finds its thrum";
  return [
    { what: "stated", name: "old_ends", label: "ends of the old warp", input, value: old },
    {
      what: "between",
      name: "ends_more",
      label: "ends more than there are",
      words,
      formula: "=ends-old_ends",
      noun: "ends",
      answer,
    },
  ];
}

/** Width, length and pieces: what concerns the warp as a whole. */
export function commonGroups(plan: WarpPlan): readonly Group[] {
  const { steps, position } = plan;
  const [woven, reads] = [plan.pieceTape.wovenLength, {}];
  return [
    {
      heading: "Across the loom",
      items: [
        { ...ENDS, answer: plan.ends },
        ...oldEnds(plan),
        ...sumOf(steps, settInReed, { name: "sett", label: "sett in the reed", reads, answer: plan.sett }),
        ...sumOf(steps, reedWidth, {
          name: "width_in_reed",
          label: "width in the reed",
          reads,
          answer: plan.widthInReed,
        }),
        ...sumOf(steps, finishedWidth, {
          name: "finished_width",
          label: "finished width",
          reads,
          answer: plan.finishedWidth,
        }),
      ],
    },
    {
      heading: "Along the warp",
      items: [
        ...sumOf(steps, warpLength, { name: "warp_length", label: "warp to wind", reads, answer: plan.warpLength }),
        ...sumOf(steps, wovenLength, { name: "woven_length", label: "one piece on the loom", reads, answer: woven }),
        {
          ...{
            what: "between",
            name: "woven",
            label: "all pieces on the loom",
            noun: "",
            answer: plan.pieceTape.woven,
          },
          ...{ words: "pieces × one piece on the loom", formula: "=pieces*woven_length" },
        },
        ...sumOf(steps, piecesFromWarp, {
          ...{ name: "pieces_from_warp", label: "pieces the warp gives", answer: null },
          reads: { warpLeft: "warp_length" },
        }),
        ...sumOf(position.steps, yarnForEnds, {
          ...{ name: "spared_yarn", label: "yarn the old warp spares", answer: position.sparedYarn },
          reads: { warpLength: "warp_spared" },
        }),
      ],
    },
  ];
}
