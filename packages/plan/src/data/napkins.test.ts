import * as m from "@thrum/maths";
import { expect, it } from "vitest";
import type { Job } from "../job/job.js";
import { planOf } from "./plan-data.js";

const { inches, percentLost, ounces } = m;
const cotton8 = { number: { count: m.cottonCount(8), plies: [2] } };
const job: Job = {
  stripes: [
    { ends: 24, yarns: ["natural"] },
    {
      mirror: [
        { ends: 40, yarns: ["madder"] },
        { repeat: 3, of: [{ ends: 12, yarns: ["natural"] }, { ends: 6, yarns: ["indigo"] }] },
        { ends: 66, yarns: ["natural"] },
      ],
      middle: "twice",
    },
    { ends: 24, yarns: ["natural"] },
  ],
  groups: 24,
  yarns: {
    natural: { count: cotton8, sold: [{ mass: ounces(8) }], onHand: [{ mass: ounces(6) }] },
    madder: { count: cotton8, sold: [{ mass: ounces(8) }], onHand: [] },
    indigo: { count: { number: { count: m.metricCount(14), plies: [2] } }, sold: [{ mass: m.grams(50) }], onHand: [{ mass: m.grams(20) }] },
  },
  loom: { reed: m.dentsPerInch(10), sley: { places: [2] }, threading: [1, 2, 3, 4] },
  oldWarp: { ends: 368, yarn: [cotton8] },
  join: { knots: "in front of the reed" },
  cloth: { picks: m.picksPerInch(18), takeUp: { lost: percentLost(8) }, lengthLoomToFinished: { lost: percentLost(10) }, widthReedToFinished: { lost: percentLost(15) } },
  warp: { wasteInFront: inches(10), wasteBehind: inches(18) },
  pieces: [{ number: 9, name: "napkin", finishedLength: inches(16), hemEachEnd: inches("0.75") }],
  weft: { stripes: [{ yarns: ["natural"] }], allowance: m.percentAdded(5) },
  winding: { threads: 2, extra: [{ ends: 2, yarn: "natural" }, { ends: 1, yarn: "indigo" }] },
};

it("plans", () => {
  const plan = planOf(job);
  const show = (x: unknown): string => JSON.stringify(x, (k, v) => (v && typeof v === "object" && "unit" in v ? `${v.value} ${v.unit}` : v));
  for (const [g, figs] of Object.entries(plan.figures)) for (const [n, f] of Object.entries(figs as object)) console.log(g, n, show(f).slice(0, 300));
  const t = performance.now(); for (let i = 0; i < 20; i++) planOf(job); console.log((performance.now() - t) / 20, "ms");
  expect(1).toBe(1);
});
