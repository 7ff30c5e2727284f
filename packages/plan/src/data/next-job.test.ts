import { expect, it } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { jobTextWith } from "../job/job-text-with.js";
import { jobText } from "../job/job-text.js";
import { nextJob } from "./next-job.js";
import type { NextJob } from "./next-job.js";
import { planOf } from "./plan-data.js";

const nextOf = (text: string): NextJob => nextJob(planOf(jobIn(text)));

it("napkins: the next job has this warp as its old one, and what was found for what was reckoned with", () => {
  const text = `${exampleText("2-hall-napkins")}
found:
  firstInches: { picks: 17 per inch }
  takeUp: 21 in to 19 1/2 in
  length: { onLoom: 19 1/2 in, offLoom: 19 in, finished: 17 3/8 in }
  width: { inReed: 18.4 in, atFell: 17 1/2 in, finished: 15 5/8 in }
  waste: { inFront: 9 in, behind: 17 in }
  knotsPerHour: 190
`;
  const next = nextOf(text);
  expect(next.asked).toEqual([]);
  expect(next.job.found).toBeUndefined();
  const made = jobTextWith(text, next.job, next.remarks);
  expect(jobIn(made)).toEqual(next.job);
  for (const line of [
    "  takeUp: 21 in to 19 1/2 in # was 8 % lost; of the thread, wound to weaving tension",
    "  lengthLoomToFinished: 19 1/2 in to 17 3/8 in # was 10 % lost",
    "  widthReedToFinished: 18.4 in to 15 5/8 in # was 15 % lost",
    "  picks: 17 per inch # was 18 per inch; at weaving tension",
    "  ends: 368 # was 368: count again",
    "  yarn: [2-ply of 8 cotton, 2-ply of 14 metric]",
    "    before: { dents: 28, heddles: 8 }",
  ])
    expect(made).toContain(`${line}\n`);
  expect(made).toContain("warp: { wasteInFront: 9 in, wasteBehind: 17 in } # ");
  expect(jobText(next.job)).toContain("perHour: 190");
  // Used since, or to be measured before the next cut.
  expect(made).not.toContain("onHand");
  expect(made).not.toContain("pastReed");
});

it("a wider runner: 24 ends more, 6 heddles of each shaft and 12 dents less after the last", () => {
  const { job } = nextOf(exampleText("6-wider-runner"));
  expect(job.oldWarp?.ends).toBe(264);
  expect(job.loom?.room).toEqual({
    before: { dents: 30, heddles: [1, 1, 0, 0] },
    after: { dents: 18, heddles: [6, 6, 6, 6] },
  });
  expect(job.join).toEqual({ knots: "behind the reed", faces: "back of the loom", knot: "weaver's" });
});

it("a warp with faults: what was mended or cut back is gone, what stays is numbered anew", () => {
  // Old 240 meets new 241, behind the broken end after 199; the end too many at 306 is cut back.
  expect(nextOf(exampleText("7-warp-with-faults")).job.oldWarp?.faults).toEqual([
    { after: 88, is: "empty heddle", shaft: 2 },
    { end: 241, is: "on another shaft", shaft: 1 },
  ]);
});

it("ends added before end 1 begin the repeat and the first dent where they stand now", () => {
  const { job } = nextOf(
    "stripes: [11 a]\nloom: { reed: 10 per inch, sley: 2, threading: [1, 2, 3, 4] }\noldWarp: { ends: 8 }\njoin: { sides: { before: 3 more } }",
  );
  // Outward from end 1 on shaft 1: 4, 3, 2; in pairs from the old end 1: 1 | 2 and 3 | 4 and 5 …
  expect(job.loom?.threading).toEqual([2, 3, 4, 1]);
  expect(job.loom?.sley).toEqual({
    places: [
      { dents: 1, at: 1 },
      { dents: 5, at: 2 },
    ],
  });
});

it("an end left out of the new warp stays broken, and the room where ends were dropped is counted again", () => {
  const next = nextOf(
    "stripes: [6 a]\nloom: { threading: [1, 2, 3, 4], room: { after: { heddles: 2 } } }\noldWarp: { ends: 8, faults: [{ after: 2, is: broken, mend: no }] }\njoin: { sides: { after: 2 fewer } }",
  );
  expect(next.job.oldWarp).toEqual({ ends: 6, faults: [{ after: 2, is: "broken", mend: false }] });
  expect(next.job.loom).toEqual({ threading: [1, 2, 3, 4] });
  expect(next.remarks).toContainEqual({
    path: ["loom"],
    says: "was changed at the sides: write room as it stands now",
  });
});

it.each([
  // 21 in of thread to 2 in of cloth would be 19 ÷ 21 = 90.5 % lost.
  ["the whole warp measured for the take-up", "takeUp: 21 in to 2 in", "takeUp", /Take-up would be 90\.5 %/u],
  ["two measures changed round", "takeUp: 19 in to 21 in", "takeUp", /21 in once woven is more than 19 in before/u],
  ["a piece longer finished", "length: { onLoom: 19 in, finished: 20 in }", "lengthLoomToFinished", /20 in finished/u],
  ["a dent miscounted", "width: { inReed: 19 in, finished: 16 in }", "widthReedToFinished", /the dents give 18\.4 in/u],
] as const)("%s is asked about and not carried", (_, found, key, asks) => {
  const text = `${exampleText("2-hall-napkins")}found: { ${found} }\n`;
  const { job, asked, remarks } = nextOf(text);
  expect(asked.map(({ says }) => says).join("\n")).toMatch(asks);
  expect(job.cloth?.[key]).toEqual(jobIn(exampleText("2-hall-napkins")).cloth?.[key]);
  expect(remarks).toContainEqual({ path: ["cloth", key], says: "was not changed: what was found is asked about" });
});

it("a take-up that is asked about is not reckoned with for the warp still to come", () => {
  const left = (found: string): unknown =>
    planOf(jobIn(`${exampleText("2-hall-napkins")}found: { warpLeft: 43 in, ${found} }\n`)).figures.possible.entries
      .value;
  // 43 × 0.92 ÷ (175 ÷ 9) = 2.03 with the planned 8 %; with 19 ÷ 21 lost it would be 0.21.
  expect(left("takeUp: 21 in to 2 in")).toBe(2);
  expect(left("takeUp: 19 in to 21 in")).toBe(2);
  // 43 × (1 − 5 ÷ 21) ÷ (175 ÷ 9) = 1.68: found, and under a quarter.
  expect(left("takeUp: 21 in to 16 in")).toBe(1);
});

it("yarn that was on hand is left out, and said behind its yarn as it was written", () => {
  const text = "stripes: [24 plum, 12 pink]\nyarns: { plum: { onHand: 6 oz }, pink: { onHand: none } }\n";
  const next = nextOf(text);
  expect(next.job.yarns).toEqual({ plum: {}, pink: {} });
  expect(next.remarks).toEqual([
    { path: ["yarns", "plum"], says: "was 6 oz on hand: weigh what is left" },
    { path: ["yarns", "pink"], says: "was none on hand: weigh what is left" },
  ]);
});
