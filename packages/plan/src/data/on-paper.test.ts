// Three of the nine jobs planned again by hand, line by line as on paper; nothing of ours is asked for a line of the sum.
import { inches, isQuantity, ounces, pounds, yards } from "@thrum/maths";
import type { Quantity } from "@thrum/maths";
import { expect, it } from "vitest";
import { examplePlan } from "#ci/example-plans.js";
import { planJson } from "./plan-json.js";

/** To the digits a pencil keeps. */
function near(value: number | undefined, byHand: number): void {
  expect(value).toBeCloseTo(byHand, 3);
}

it("hall napkins, by hand", () => {
  const plan = examplePlan("2-hall-napkins");
  const { loom, piece, warp, yarn, tying } = plan.figures;
  // Ends: 24 + 2 × (40 + 3 × (12 + 6) + 66) + 24 = 48 + 2 × 160 = 368.
  expect(loom.ends.value).toBe(368);
  // Dents: 368 ÷ 2 = 184. Width: 184 ÷ 10 = 18.4 in. Finished: 18.4 × 0.85 = 15.64 in.
  expect(loom.dents.value).toBe(184);
  near(loom.widthInReed.value?.in(inches), 18.4);
  near(loom.finishedWidth.value?.in(inches), 15.64);
  // One napkin: 16 + 2 × 3/4 = 17.5; ÷ 0.9 = 19.4444 in. Nine: 175 in.
  near(piece["1"]?.woven.value?.in(inches), 19.4444);
  near(warp.woven.value?.in(inches), 175);
  // Thread in them: 175 ÷ 0.92 = 190.2174; with 10 in of waste in front 200.2174 in.
  near(warp.inCloth.value?.in(inches), 190.2174);
  near(warp.needed.value?.in(inches), 200.2174);
  // Natural: 24 + 24 + 2 × (3 × 12 + 66) = 252, 2 beside: 254 × 200.2174 = 50855.22 in of warp.
  // Weft: 175 × 18 × 18.4 = 57960, with 5 % 60858 in. Together 111713.22 in = 3103.145 yd; ÷ 3360 = 0.923555 lb = 14.7769 oz.
  near(yarn["natural"]?.inAll.value?.in(yards), 3103.1449);
  near(yarn["natural"]?.mass.value?.in(ounces), 14.7769);
  // 6 oz there, 8.7769 oz missing: 2 packages of 8 oz; 16 − 8.7769 = 7.2231 oz over.
  expect(yarn["natural"]?.packages.value).toBe(2);
  near(yarn["natural"]?.spare.value?.in(ounces), 7.2231);
  // Madder: 80 × 200.2174 ÷ 36 = 444.9275 yd = 0.132419 lb = 2.1187 oz: 1.
  near(yarn["madder"]?.inAll.value?.in(yards), 444.9275);
  near(yarn["madder"]?.mass.value?.in(ounces), 2.1187);
  expect(yarn["madder"]?.packages.value).toBe(1);
  // Groups of 24: 1 | 24, 16 | six of 12 and 6 | 132 is 5 × 24 and 12 | six | 24, 16 | 1 = 1 + 2 + 6 + 6 + 6 + 2 + 1.
  expect(tying.groups.value?.length).toBe(24);
  expect(tying.knots.value).toBe(368);
});

it("9 × 17.5 ÷ 0.9 is 175 in in the JSON, not a little less", () => {
  const json = planJson(examplePlan("2-hall-napkins"));
  const read = JSON.parse(json) as { figures: { warp: { woven: { value: { value: string; unit: string } } } } };
  expect(read.figures.warp.woven.value).toMatchObject({ value: "175", unit: "inches" });
  expect(json).not.toMatch(/\d9{12}/u);
});

it("blended towels, by hand", () => {
  const { loom, piece, warp, yarn } = examplePlan("3-blended-towels").figures;
  // 440 places: 20 + 4 × (48 + 24 + 9 + 19) + 20. 220 dents, 22 in.
  expect([loom.ends.value, loom.dents.value]).toEqual([440, 220]);
  near(loom.widthInReed.value?.in(inches), 22);
  // A towel: 26 + 2 × 1 1/4 = 28.5; 29 in on the loom were 26 finished: 28.5 × 29 ÷ 26 = 31.7885 in.
  near(piece["2"]?.woven.value?.in(inches), 31.7885);
  // Fifteen yards: 540 − 9 = 531; × 0.94 = 499.14 in to weave; − 3 of the header = 496.14; a towel and its break of 4 picks,
  // 1/4 in: 32.0385; 496.14 ÷ 32.0385 = 15.486: 15 towels, 15 breaks with that after the header.
  expect(piece["2"]?.number.value).toBe(15);
  expect(piece["breaks"]?.number.value).toBe(15);
  // Woven: 3 + 15 × 31.78846 + 15 × 0.25 = 483.5769 in; ÷ 0.94 = 514.4435; + 9 = 523.4435; 540 − 523.4435 = 16.5565 over.
  near(warp.woven.value?.in(inches), 483.5769);
  near(warp.needed.value?.in(inches), 523.4435);
  near(warp.left.value?.in(inches), 16.5565);
  // 540 in are 5 turns of 3 yd.
  expect(warp.turns.value).toBe(5);
  // Plum: 4 × (24 + 6) = 120 ends of 15 yd = 1800 yd; pink 4 × (24 + 3) = 108 × 15 = 1620 yd.
  near(yarn["plum"]?.inAll.value?.in(yards), 1800);
  near(yarn["pink"]?.inAll.value?.in(yards), 1620);
  // Natural: 440 − 228 = 212 × 15 = 3180 yd; weft 483.5769 × 16 × 22 × 1.06 ÷ 36 = 5012.006 yd; 8192.006 yd in all.
  near(yarn["natural"]?.inAll.value?.in(yards), 8192.0062);
  // 8192.0062 ÷ 3360 = 2.43810 lb = 39.0096 oz; 1 lb and 3 oz there, 20.0096 missing: 2 packages of 1 lb.
  near(yarn["natural"]?.mass.value?.in(ounces), 39.0096);
  expect(yarn["natural"]?.packages.value).toBe(2);
  // Pink: 1620 ÷ 3360 = 0.482143 lb; 840 yd there are 0.25 lb; 0.232143 missing: 1 of 8 oz.
  near((yarn["pink"]?.missing.value as Quantity<"mass"> | null)?.in(pounds), 0.2321);
  expect(yarn["pink"]?.packages.value).toBe(1);
});

it("cushion covers from what is on the shelf, by hand", () => {
  const { loom, piece, warp, yarn, enough } = examplePlan("9-yarn-on-hand").figures;
  // 8 × (24 + 8) = 256 ends, 192 white and 64 blue; 128 dents of 8 to the inch: 16 in.
  expect(loom.ends.value).toBe(256);
  near(loom.widthInReed.value?.in(inches), 16);
  // A cover: (33 + 2) ÷ 0.9 = 38.8889 in woven, ÷ 0.94 = 41.3712 in of warp.
  near(piece["1"]?.woven.value?.in(inches), 38.8889);
  // Blue for n covers: 64 × (41.3712 n + 9) in; 430 yd = 15480 in: 15480 ÷ 64 = 241.875; (241.875 − 9) ÷ 41.3712 = 5.6289.
  near(yarn["blue"]?.allowed.value ?? undefined, 5.6289);
  // White: 193 ends with the one beside; 38.8889 × 14 × 16 × 1.05 = 9146.67 in of weft a cover;
  // a cover takes 193 × 41.3712 + 9146.67 = 17131.30 in; 20 oz × 210 yd = 4200 yd = 151200 in; less 193 × 9 = 1737:
  // 149463 ÷ 17131.30 = 8.7245.
  near(yarn["white"]?.allowed.value ?? undefined, 8.7245);
  expect(enough.runsOut.value?.yarn).toBe("blue");
  expect(piece["1"]?.number.value).toBe(5);
  // Warp: 5 × 41.37116 + 9 = 215.8558 in. Blue: 64 × 215.8558 ÷ 36 = 383.7437 yd.
  near(warp.needed.value?.in(inches), 215.8558);
  near(yarn["blue"]?.inAll.value?.in(yards), 383.7436);
  expect(isQuantity(warp.needed.value)).toBe(true);
});
