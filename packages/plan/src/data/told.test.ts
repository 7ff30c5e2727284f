import { expect, test } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import type { Told } from "../parts/told.js";
import { planText } from "../views/text.js";
import { canBeWoven } from "./can-be-woven.js";
import { planOf } from "./plan-data.js";
import type { PlanData } from "./plan-data.js";

/** One of the nine jobs with some of its text written otherwise; every piece of it must stand there. */
function planned(name: string, ...changes: readonly (readonly [from: string, to: string])[]): PlanData {
  const text = changes.reduce((so, [from, to]) => {
    expect(so).toContain(from);
    return so.replaceAll(from, to);
  }, exampleText(name));
  return planOf(jobIn(text));
}

function told({ figures }: PlanData): readonly Told[] {
  return Object.values(figures.told).flatMap(({ value, why }) => {
    expect(why).toBeNull();
    return value ?? [];
  });
}

const musts = (plan: PlanData): readonly string[] =>
  told(plan).flatMap(({ standing, says }) => (standing === "must" ? [says] : []));

test("nothing stands against the nine jobs", () => {
  const names = ["1-smallest", "2-hall-napkins", "3-blended-towels", "4-scarves", "5-crammed-stripe"];
  const others = ["6-wider-runner", "7-warp-with-faults", "8-blankets", "9-yarn-on-hand"];
  for (const name of [...names, ...others]) {
    const plan = planned(name);
    expect(musts(plan)).toEqual([]);
    expect(canBeWoven(plan)).toBe(true);
  }
});

test("knots of the hall napkins pass, or pass with easing", () => {
  // 25.4 ÷ (28 × √4) = 0.4536 mm; 1.6 ÷ 0.4536 = 3.53, of which 0.7 is 2.47 and 1.3 is 4.59; two threads 0.907 mm.
  const { figures } = planned("2-hall-napkins");
  const natural = figures.knots.ofYarns.value?.[0];
  expect(natural).toMatchObject({ yarn: "natural", needs: 3.8, reed: ["passes", "passes with easing"] });
  expect([natural?.clearance, natural?.from, natural?.to].map((q) => q?.toFixed(2))).toEqual(["3.53", "2.47", "4.59"]);
});

test("2-ply of 3 metric in a gap of a millimetre will not pass, and the plan says so first of all", () => {
  const plan = planned("2-hall-napkins", ["2-ply of 8 cotton", "2-ply of 3 metric"], ["1.6 mm", "1.0 mm"]);
  // The thick old yarn decides for the thin indigo too.
  expect(musts(plan)).toHaveLength(2);
  expect(musts(plan)[0]).toContain("The knots of natural and madder will not pass the reed. Tie behind the reed");
  // d = 0.9638 mm: 1 ÷ 0.9638 = 1.04; two threads 1.928 mm.
  expect(musts(plan)[0]).toContain("1.0 threads wide (0.7 to 1.3");
  expect(musts(plan)[0]).toContain("1.93 mm of 1 mm");
  expect(canBeWoven(plan)).toBe(false);
  const text = planText(plan);
  expect(text).toContain("MUST   The knots of natural and madder will not pass");
  expect(text.indexOf("MUST ")).toBeLessThan(text.indexOf("CHECK "));
});

test("a yarn eighty times heavier is no check but a must", () => {
  // 2-ply of 0.1 cotton is 0.05s: 25.4 ÷ (28 × √0.05) = 4.06 mm in a gap of 1.6 mm.
  const heavy = planned("2-hall-napkins", [
    "natural: { count: 2-ply of 8 cotton",
    "natural: { count: 2-ply of 0.1 cotton",
  ]);
  expect(musts(heavy).join()).toContain("natural will not pass the reed");
  // Behind the reed they meet the heddles alone.
  const behind = planned(
    "2-hall-napkins",
    ["natural: { count: 2-ply of 8 cotton", "natural: { count: 2-ply of 0.1 cotton"],
    ["knots: in front of the reed", "knots: behind the reed"],
  );
  expect(musts(behind)).toEqual([]);
});

test("fifteen yards give fifteen towels, and sixteen need 17.53 in more", () => {
  // 557.527 − 540 = 17.527 in, rounded up.
  const plan = planned("3-blended-towels", ["as many as the warp gives", "16"]);
  expect(musts(plan)).toEqual(["15 yd give 15 towels; 16 need 17.53 in more."]);
});

test("a threading written whole that does not come to the count is a must, and the joining list waits", () => {
  const whole = "threading: [{ repeat: 93, of: [1, 2, 3, 4] }]";
  const plan = planned("2-hall-napkins", ["threading: [1, 2, 3, 4]", whole]);
  expect(musts(plan)).toEqual([
    "The threading comes to 372 places, the count to 368 (368 threads + 0 broken − 0 too many). Count again; the joining list waits.",
  ]);
  expect(plan.figures.tying.joining).toMatchObject({ value: null, needs: [["oldWarp", "ends"]] });
});

test("ends added where there is no room are told with the side that has it", () => {
  const plan = planned("6-wider-runner", ["sides: after the last", "sides: both"]);
  // 12 before end 1 take 3 of each shaft; [1, 1, 0, 0] hang there.
  const [first] = musts(plan);
  expect(first).toContain("2 on shaft 1, 2 on shaft 2, 3 on shaft 3 and 3 on shaft 4");
  expect(first).toContain("All 24 ends fit with sides: after the last.");
});

test("a take-up of nine tenths is asked about", () => {
  // (200 − 19.4) ÷ 200 = 90.3 %.
  const plan = planned("2-hall-napkins", ["winding:", "found: { takeUp: 200 in to 19.4 in }\nwinding:"]);
  expect(told(plan).map(({ says }) => says)).toContain(
    "Take-up would be 90.3 %: was the whole warp measured, not the part between the two threads? Left out of the next job.",
  );
});

test("the loom wins over the sett that was wanted", () => {
  const plan = planned("2-hall-napkins", ["picks: 18 per inch", "sett: 24 per inch\n  picks: 18 per inch"]);
  expect(told(plan).map(({ says }) => says)).toContain(
    "Wanted 24 ends per inch; reed and sley give 20 ends per inch. Reckoned with 20 ends per inch.",
  );
});

test("a yarn whose weft alone is more than is on hand is enough for no ends, in words", () => {
  // Natural needs 3103 yd, its weft alone more than the 6 oz there, 630 yd.
  const plan = planned("2-hall-napkins");
  expect(plan.figures.yarn["natural"]?.endsEnough).toMatchObject({ value: 0, why: null });
  const text = planText(plan, { without: "workings" }).replace(/\s+/gu, " ");
  expect(text).toContain("natural: enough for none, for its weft alone takes all that is on hand.");
  expect(text).not.toContain("received −");
});

test("what waits is told sheet by sheet, with the keys it waits for and why they are asked", () => {
  const sides = "  sides: after the last # no heddles hang before end 1\n";
  const text = planText(planned("6-wider-runner", [sides, ""], ["threads: 1, ", ""]));
  expect(text).toContain("\nWAITS  Winding list: winding.threads.\n");
  expect(text).toContain("\nWAITS  Joining list: join.sides.\n");
  // 40 + 30 + 24 + 30 + 24 + 30 + 24 + 30 + 32 = 264
  expect(text).toContain("\nASK    264 ends on 240 places: 24 ends more. Say where, join.sides.");
});

test("the eye of a heddle, measured, lets the knots of both ends together pass or holds them back", () => {
  // 25.4 ÷ (28 × √4) = 0.4536 mm; × 3.8 = 1.724 wide and × 4.85 = 2.200 high in metal, × 5 = 2.268 high in cord.
  const heddles = (wide: string, high: string, of: string) => {
    const eye = `gapInDent: 1.6 mm\n  heddleEye: { wide: ${wide} mm, high: ${high} mm, of: ${of} }`;
    const { figures } = planned("2-hall-napkins", ["gapInDent: 1.6 mm", eye]);
    return figures.knots.ofYarns.value?.find(({ yarn }) => yarn === "natural")?.heddles;
  };
  expect(heddles("1.73", "2.21", "metal")).toBe("passes");
  expect(heddles("1.72", "2.21", "metal")).toBe("does not pass untouched");
  expect(heddles("1.73", "2.19", "metal")).toBe("does not pass untouched");
  expect(heddles("1", "2.27", "cord")).toBe("passes");
  expect(heddles("1", "2.26", "cord")).toBe("does not pass untouched");
});
