import { inches } from "@thrum/maths";
import { expect, test } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { faultsText } from "../job/fault.js";
import { newJob } from "../job/new-job.js";
import { readJob } from "../job/read-job.js";
import { planText } from "../views/text.js";
import type { PlanData } from "./plan-data.js";
import { planOf } from "./plan-data.js";

function plan(text: string): PlanData {
  return planOf(jobIn(text));
}

/** The hall napkins with some of their text written otherwise; every piece of it must stand there. */
function napkins(...changes: readonly (readonly [from: string, to: string])[]): PlanData {
  const text = exampleText("2-hall-napkins");
  return plan(
    changes.reduce((so, [from, to]) => {
      expect(so).toContain(from);
      return so.replace(from, to);
    }, text),
  );
}

const printed = (of: PlanData): string => planText(of, { without: "workings" }).replace(/\s+/gu, " ");

/** 24 ends, 1.2 in wide; a napkin is 20 in on the loom: 320 picks, 384 in of weft, 500/23 in of warp. */
const small = (pieces: string, more: string): PlanData =>
  plan(`stripes: [24 natural]
loom: { reed: 10 per inch, sley: 2, threading: [1, 2, 3, 4] }
oldWarp: none
cloth: { takeUp: 8 % lost, lengthLoomToFinished: 10 % lost, picks: 16 per inch }
warp: { wasteInFront: 15 in, wasteBehind: 18 in }
pieces: [{ number: ${pieces}, name: napkin, finishedLength: 16 in, hemEachEnd: 1 in }]
${more}`);

test("an end broken in the middle of the old warp keeps its place, and nothing is added after the last", () => {
  const { figures } = napkins(["ends: 368", "ends: 367\n  faults: [{ is: broken, after: 199 }]"]);
  // 367 threads + 1 broken = 368 places for 368 ends.
  expect([figures.loom.places.value, figures.loom.ends.value, figures.tying.knots.value]).toEqual([368, 368, 368]);
  const uncounted = printed(napkins(["ends: 368", "ends: 367"]));
  expect(uncounted).toContain("368 ends on 367 places: 1 end more. Say where, join.sides.");
  expect(uncounted).not.toContain("367 or 371");
});

test("ends added at both sides are joined, and the old ends are numbered on behind them", () => {
  const wider = napkins(["  - 24 natural", "  - 32 natural"], ["join: {", "join: { sides: both,"]);
  // 376 − 368 = 8: one repeat of 4 at each side.
  expect(wider.figures.loom.sides.value).toEqual({ before: 4, after: 4 });
  expect(printed(wider)).toContain("376 ends on 368 places: 4 ends more before end 1, 4 ends more after the last.");
  expect(wider.figures.tying.knots.value).toBe(376);
});

test("a stripe of two colours wound together buys half of each and is one stripe", () => {
  const { figures } = plan("stripes: [48 plum + pink]\ncloth: { sett: 20 per inch }");
  expect([figures.yarn["plum"]?.ends.value, figures.yarn["pink"]?.ends.value]).toEqual([24, 24]);
  expect(figures.loom.stripes.value?.runs).toHaveLength(1);
});

test("a crammed stripe, one and two to the dent, and a reed by ten centimetres", () => {
  const crammed = (sley: string, reed: string) =>
    plan(`stripes: [80 white, 108 blue, 80 white]\nloom: { reed: ${reed}, sley: ${sley} }`).figures.loom;
  // 80 ÷ 2 + 108 ÷ 3 + 80 ÷ 2 = 116 dents of 12 to the inch: 29/3 in.
  const byYarn = crammed("{ blue: 3, others: 2 }", "12 per inch");
  expect(byYarn.dents.value).toBe(116);
  expect(byYarn.widthInReed.value?.in(inches)).toBeCloseTo(29 / 3, 9);
  // 268 ends, three in two dents: 178 dents for 267 and one more.
  expect(crammed("[1, 2]", "12 per inch").dents.value).toBe(179);
  // 134 dents of 4.5 to the centimetre: 29.778 cm, 11.7235 in.
  expect(crammed("2", "45 per 10 cm").widthInReed.value?.in(inches)).toBeCloseTo(134 / 4.5 / 2.54, 9);
});

test("how many pieces the yarn on hand gives does not depend on how many were planned", () => {
  const yarn = "weft: natural\nyarns: { natural: { count: 2-ply of 8 cotton, onHand: 0.3 oz } }";
  // 0.3 oz × 210 = 63 yd; (63 × 36 − 24 × 33) ÷ (24 × 500/23 + 384) = 33948/20832.
  for (const planned of ["1", "3", "5"])
    expect(small(planned, yarn).figures.yarn["natural"]?.allowed.value).toBeCloseTo(33948 / 20832, 9);
  expect(small("as many as the yarn gives", yarn).figures.order.growing.value).toBe(1);
});

test("tied in front of the reed, all that is left of the warp can be woven", () => {
  const left = (length: string, knots = "in front of the reed") =>
    napkins(
      ["knots: in front of the reed", `knots: ${knots}`],
      ["winding:", `found: { warpLeft: ${length} }\nwinding:`],
    ).figures.possible.entries.value;
  // A napkin takes 175/9 ÷ 0.92 = 21.135 in: two 42.271; behind the heddles 18 in more.
  expect([left("43 in"), left("42 in")]).toEqual([2, 1]);
  expect([left("59 in", "behind the heddles"), left("61 in", "behind the heddles")]).toEqual([1, 2]);
});

test("a first plan takes two lines, and the job to fill in is read as it is", () => {
  // 156 ends ÷ 16.
  const first = plan("stripes: [24 oat, 108 rose, 24 oat]\ncloth: { sett: 16 per inch }");
  expect(first.figures.loom.widthInReed.value?.in(inches)).toBe(9.75);
  expect(readJob(newJob()).ok).toBe(true);
  const reading = readJob("loom: { reed: 11 }");
  expect(reading.ok ? "" : faultsText(reading.faults)).toContain("per inch");
});

test("yarn is entered as its label says it, and on hand by length", () => {
  const labelled = (count: string, there: string) =>
    small("1", `weft: natural\nyarns: { natural: { count: ${count}, onHand: ${there} } }`).figures.yarn["natural"];
  // 840 ÷ 3360 of a pound is 4 oz; 600 m at 300 m per 100 g are 200 g, as a length 656.168 yd.
  expect(labelled("3360 yd per lb", "840 yd")?.lengthThere.value?.in(inches)).toBeCloseTo(840 * 36, 6);
  expect(labelled("3360 yd per lb", "4 oz")?.lengthThere.value?.in(inches)).toBeCloseTo(840 * 36, 6);
  expect(labelled("300 m per 100 g", "200 g")?.lengthThere.value?.in(inches)).toBeCloseTo(600 / 0.0254, 6);
});

test("a fringe is neither woven nor taken up", () => {
  const { figures } = plan(`stripes: [24 natural]
oldWarp: none
cloth: { takeUp: 7 % lost, lengthLoomToFinished: 9 % lost }
warp: { wasteInFront: 20 cm, wasteBehind: 25 cm }
pieces: [{ number: 3, name: scarf, finishedLength: 180 cm, fringeEachEnd: 12 cm }]`);
  // 180 ÷ 0.91 = 197.80 cm each; 3 × 180 ÷ 0.91 ÷ 0.93 + 3 × 24 + 45 = 755.07 cm.
  expect(figures.piece["1"]?.woven.value?.in(inches)).toBeCloseTo(180 / 0.91 / 2.54, 9);
  expect(figures.warp.needed.value?.in(inches)).toBeCloseTo((540 / 0.91 / 0.93 + 72 + 45) / 2.54, 9);
});

test("weft has the allowance that is written, and none is said", () => {
  // 384 in are 10.667 yd, with 5 % 11.2 yd.
  expect(printed(small("1", "weft: { stripes: natural, allowance: 5 % added }"))).toContain("natural 11.2 yd 11.2 yd");
  expect(printed(small("1", "weft: natural"))).toContain("The weft has no allowance");
});

test("an end found broken or doubled is partnered or cut back where it is, and no count of ends is told to close it", () => {
  const found = (ends: number, fault: string) =>
    napkins(
      ["ends: 368", `ends: ${String(ends)}\n  faults: [${fault}]`],
      ["join: {", "join: { partner: hang a thrum,"],
    );
  const broken = found(367, "{ is: broken, after: 199 }");
  // Place 200 is on shaft 4 of 1, 2, 3, 4, in dent 100 of two ends each.
  expect(broken.figures.tying.partners.value).toMatchObject([
    { is: "broken", firstEnd: 200, shafts: [4], dents: [100] },
  ]);
  const doubled = found(369, "{ is: one too many, end: 306 }");
  // Old 307 meets new 306.
  const meets = doubled.figures.loom.table.value?.stretches.find(({ oldEnd }) => oldEnd === 307);
  expect([doubled.figures.loom.places.value, meets?.newEnd]).toEqual([368, 306]);
  for (const plan of [broken, doubled]) expect(printed(plan)).not.toMatch(/would close|more after the last/u);
});

test("the partners of eight ends added at both sides are listed, and old end 1 meets new end 5", () => {
  const { tying, loom } = napkins(
    ["  - 24 natural", "  - 32 natural"],
    ["join: {", "join: { sides: both, partner: hang a thrum,"],
  ).figures;
  const listed = tying.partners.value?.map(({ is, firstEnd, lastEnd }) => [is, firstEnd, lastEnd]);
  expect(listed).toEqual([
    ["added", 1, 4],
    ["added", 373, 376],
  ]);
  expect(tying.partners.value?.[0]?.shafts).toEqual([1, 2, 3, 4]);
  expect(loom.table.value?.stretches.find(({ oldEnd }) => oldEnd === 1)?.newEnd).toBe(5);
});

test("blended towels are one winding row and one joining row a stripe, bought by each colour", () => {
  const towels = plan(exampleText("3-blended-towels"));
  const { winding, yarn } = towels.figures;
  const parts = winding.wound.value?.flatMap((chain) => chain.parts) ?? [];
  // Of plum + pink 4 × 48 ends, of plum + plum + pink 4 × 9: no row of one end, no thread laid aside in a pass of both.
  expect(parts.length).toBeLessThan(60);
  expect([yarn["plum"]?.ends.value, yarn["pink"]?.ends.value]).toEqual([120, 108]);
  expect(printed(towels)).toContain("plum + pink");
  expect(printed(towels)).not.toContain("two ends are crossed");
});

test("on hand is entered as cones, part ones too, where one size is sold", () => {
  const labelled = (there: string) =>
    small("1", `weft: natural\nyarns: { natural: { count: 3360 yd per lb, sold: 1 lb, onHand: ${there} } }`).figures
      .yarn["natural"];
  // 3360 yd to the pound: a cone, a cone and a half, a cone and 3 oz of 210 yd each.
  for (const [there, yards] of [
    ["1 cone", 3360],
    ["1 1/2 cones", 5040],
    ["1 cone + 3 oz", 3990],
  ] as const)
    expect(labelled(there)?.lengthThere.value?.in(inches)).toBeCloseTo(yards * 36, 6);
});
