import { grams, inches, metres, QuantityError, yards } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import { readFileSync } from "node:fs";
import type { Job } from "../job/job.js";
import { readJob } from "../job/read-job.js";
import { planText } from "../text/plan-text.js";
import { planWarp } from "./plan-warp.js";

function napkins(): Job {
  const reading = readJob(readFileSync("examples/hall-napkins/job.yaml", "utf8"));
  if (!reading.ok) throw new Error("the example's job cannot be read");
  return reading.job;
}

function tied(loom: Omit<Job["loom"], "knot">): Job {
  return { ...napkins(), loom: { ...loom, knot: "square" } };
}

/** No heddle to spare on any shaft. */
function threaded(threading: readonly number[]): Job {
  const none = threading.map(() => 0);
  const job = napkins();
  return { ...job, oldWarp: { ...job.oldWarp, threading, spareHeddles: { beforeFirst: none, afterLast: none } } };
}

function faultsOf(job: unknown): readonly string[] {
  try {
    planWarp(job as Job);
  } catch (error) {
    if (error instanceof QuantityError) return error.faults.map(({ code, function: name, path }) => `${code} ${name}(${path.join(".")})`);
    throw error;
  }
  return [];
}

describe("a plan", () => {
  it("places every stripe edge on its dent, its place in the repeat and its shaft", () => {
    const { joining } = planWarp(threaded([1, 3, 2, 4, 5, 6]));
    // End 64: dent 32 at two to the dent; 64 = 10 × 6 + 4, the fourth place, which is on shaft 4.
    expect(joining[1]).toMatchObject({ lastEnd: 64, dent: 32, placeInRepeat: 4, shaft: 4 });
    expect(joining[1]).toMatchObject({ splitsDent: false, splitsRepeat: true });
  });

  it("spares the waste at the back when tied in front, and at the front when tied behind the heddles", () => {
    const front = planWarp(napkins());
    const behind = planWarp(
      tied({ knotsTied: "behind the heddles", weaverFaces: "front of the loom", endOneOn: "left" }),
    );
    expect(front.position).toMatchObject({ sparedAt: "back", knotsPass: ["reed", "heddles"], lease: null });
    expect(behind.position).toMatchObject({ sparedAt: "front", knotsPass: ["heddles", "reed"] });
    // 18 in spared in 368 ends: 6624 in = 184 yd; 10 in spared: 3680 in; the warp is 18 − 10 in longer.
    expect(front.position.sparedYarn.in(yards)).toBe(184);
    expect(behind.position.sparedYarn.in(inches)).toBe(3680);
    expect(behind.warpLength.in(inches) - front.warpLength.in(inches)).toBeCloseTo(8, 10);
    expect([front.endOneAt, behind.endOneAt]).toEqual(["left", "right"]);
    expect(behind.laid.map(({ number }) => number)).toEqual([3, 2, 1]);
  });

  it("has the new warp beamed before the knots only where they are tied behind the heddles", () => {
    const behind = planText(
      planWarp(tied({ knotsTied: "behind the heddles", weaverFaces: "front of the loom", endOneOn: "left" })),
    );
    expect(behind.indexOf("Beam the new warp now")).toBeGreaterThan(0);
    expect(behind.indexOf("Beam the new warp now")).toBeLessThan(behind.indexOf("\nJOINING"));
    const front = planText(planWarp(napkins()));
    expect(front.indexOf("beam the new warp")).toBeGreaterThan(front.indexOf("WHEN ALL IS TIED"));
  });

  it("lays the chains the other way round for a weaver who faces the other way", () => {
    const seat = { knotsTied: "behind the reed", endOneOn: "left" } as const;
    const back = planWarp(tied({ ...seat, weaverFaces: "back of the loom" }));
    const front = planWarp(tied({ ...seat, weaverFaces: "front of the loom" }));
    expect([back.endOneAt, front.endOneAt]).toEqual(["left", "right"]);
    expect(front.laid.map(({ number }) => number)).toEqual([3, 2, 1]);
  });

  it("says every caution before it says where to cut", () => {
    const text = planText(planWarp(napkins()));
    expect(text.indexOf("lock or tie the")).toBeGreaterThan(0);
    expect(text.indexOf("lock or tie the")).toBeLessThan(text.indexOf("Cut in front of the reed"));
    expect(text.match(/lock or tie/gu)).toHaveLength(1);
  });

  it("compares each new yarn with the old one, not only the heaviest", () => {
    const job = napkins();
    const indigo = { ...job.yarns["indigo"], count: 28 } as Job["yarns"][string];
    const { fit } = planWarp({ ...job, yarns: { ...job.yarns, indigo } });
    const grist = fit.findings.filter(({ about }) => about === "grist");
    expect(grist.map(({ yarns, agrees }) => [yarns, agrees])).toEqual([
      [["natural", "madder"], true],
      [["indigo"], false],
    ]);
    expect(fit.verdict).toBe("check");
  });

  it("that does not fit is printed all the same, the failing step first and no number hidden", () => {
    const job = napkins();
    const narrow = { ...threaded([1, 2, 3, 4]).oldWarp, ends: 360 };
    const plan = planWarp({ ...job, oldWarp: narrow });
    const text = planText(plan);
    expect(plan.fit.verdict).toBe("does not fit");
    expect(text.indexOf("DOES NOT FIT")).toBeLessThan(text.indexOf("BEFORE YOU CUT"));
    expect(text).toContain("MUST: Add 4 ends before end 1 and 4 ends after the last. Heddles short before");
    expect(text).toContain("Warp for 9 pieces: 200.217 in, by the tape rounded up to 200 1/4 in.");
  });

  it("in metric measures is told in centimetres and metres", () => {
    const job = napkins();
    const metric = { ...job, pieces: { ...job.pieces, finishedLength: metres("0.4") } };
    expect(planText(planWarp(metric))).toMatch(/Wind [\d.]+ m to each end/u);
    expect(planWarp(metric).yarns[0]?.length.unit).toBe("metres");
  });

  it("opens every number into a working that ends in it", () => {
    const plan = planWarp(napkins());
    const warp = plan.steps.find(({ calculation }) => calculation.declaration.name === "warpLength");
    expect(warp?.explain().result.value).toBe("200.217 in");
    expect(plan.position.steps[0]?.explain().result.value).toBe("6624 in");
    expect(plan.yarns.flatMap(({ steps }) => steps.map((one) => one.explain().name))).toHaveLength(11);
  });

  it("buys nothing where there is enough on hand", () => {
    const job = napkins();
    const natural = { ...job.yarns["natural"], onHand: grams(900) } as Job["yarns"][string];
    const plan = planWarp({ ...job, yarns: { ...job.yarns, natural } });
    expect(plan.yarns[0]?.packages).toBe(0);
    expect(plan.yarns[0]?.missing.in(grams)).toBe(0);
  });

  it("is frozen through and through", () => {
    const plan = planWarp(napkins());
    for (const part of [plan, plan.yarns, plan.yarns[0], plan.joining[0], plan.fit.findings[0], plan.steps[0]]) {
      expect(Object.isFrozen(part)).toBe(true);
    }
  });

  it("is refused for what is no job, with every fault", () => {
    const job = napkins();
    expect(faultsOf(undefined)).toEqual(["missing planWarp(job)"]);
    expect(faultsOf(JSON.parse(JSON.stringify(job)))).toContain("wrong-kind planWarp(job.pieces.finishedLength)");
    const pieces = { ...job.pieces, number: Number.NaN, hemEachEnd: inches(-1), finishedLength: grams(16) };
    expect(faultsOf({ ...job, pieces, colour: "red" })).toEqual([
      "not-a-number planWarp(job.pieces.number)",
      "wrong-kind planWarp(job.pieces.finishedLength)",
      "out-of-range planWarp(job.pieces.hemEachEnd)",
      "unknown-field planWarp(job.colour)",
    ]);
    expect(faultsOf({ ...job, stripes: [] })).toContain("empty planWarp(job.stripes)");
  });
});
