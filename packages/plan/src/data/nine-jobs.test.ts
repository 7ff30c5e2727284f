import { grams } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { planOf } from "./plan-data.js";
import type { PlanData } from "./plan-data.js";

function planned(name: string): PlanData {
  return planOf(jobIn(exampleText(name)));
}

/** The value as far as its digits go, beside a fraction worked out apart from it. */
function apart(value: { readonly value: string } | number | null, numerator: bigint, denominator: bigint): number {
  if (value === null) return Number.NaN;
  const text = typeof value === "number" ? String(value) : value.value;
  const [whole = "", part = ""] = text.split(".");
  const scale = 10n ** BigInt(part.length);
  const difference = BigInt(whole + part) * denominator - numerator * scale;
  return Math.abs(Number((difference * 10n ** 40n) / (denominator * scale))) / 1e40;
}
const fraction = (value: { readonly value: string } | number | null, n: number, d = 1): void => {
  expect(apart(value, BigInt(n), BigInt(d))).toBeLessThan(typeof value === "number" ? 1e-9 : 1e-28);
};

describe("the nine jobs, reckoned in fractions by programs of their own", () => {
  it("1: the smallest, stripes and sett", () => {
    const { figures } = planned("1-smallest");
    expect(figures.loom.ends.value).toBe(156);
    fraction(figures.loom.widthInReed.value, 39, 4);
    expect(Object.fromEntries(Object.entries(figures.yarn).map(([name, { ends }]) => [name, ends.value]))).toEqual({
      oat: 64,
      rose: 80,
      slate: 12,
    });
  });
  it("2: hall napkins", () => {
    const { figures } = planned("2-hall-napkins");
    expect(figures.loom.ends.value).toBe(368);
    fraction(figures.loom.widthInReed.value, 92, 5);
    fraction(figures.loom.finishedWidth.value, 391, 25);
    fraction(figures.warp.length.value, 4605, 23);
    const yards = (name: string) => figures.yarn[name]?.inAll.value ?? null;
    // In inches: 36 to the yard.
    fraction(yards("natural"), 214117 * 36, 69);
    fraction(yards("madder"), 30700 * 36, 69);
    fraction(yards("indigo"), 56795 * 36, 276);
    const toBuy = (name: string) => figures.yarn[name]?.packages.value;
    expect([toBuy("natural"), toBuy("madder"), toBuy("indigo")]).toEqual([2, 1, 1]);
    expect(figures.yarn["indigo"]?.endsEnough.value).toBe(27);
  });
  it("3: blended towels, as many as fifteen yards give", () => {
    const { figures } = planned("3-blended-towels");
    expect(figures.loom.ends.value).toBe(440);
    expect(figures.loom.dents.value).toBe(220);
    fraction(figures.loom.widthInReed.value, 22);
    expect(figures.piece["2"]?.number.value).toBe(15);
    expect(figures.piece["breaks"]?.number.value).toBe(15);
    expect(figures.warp.turns.value).toBe(5);
    // 15 yd = 540 in.
    fraction(figures.warp.left.value, 10116, 611 * 36);
    const yards = (name: string) => figures.yarn[name]?.inAll.value ?? null;
    fraction(yards("plum"), 1800);
    fraction(yards("pink"), 1620);
    fraction(yards("natural"), 2662402, 325);
  });
  it("4: scarves, in centimetres and tex", () => {
    const { figures } = planned("4-scarves");
    expect(figures.loom.ends.value).toBe(236);
    // 59/150 m; 59/150 × 35/40 m finished; 3 × 180 ÷ 0.91 ÷ 0.93 + 72 + 45 cm; moss short to its printed digits.
    fraction(figures.loom.widthInReed.value, 5900, 150);
    fraction(figures.loom.finishedWidth.value, 5900 * 35, 150 * 40);
    fraction(figures.warp.length.value, 540 * 10000 + 117 * 91 * 93, 91 * 93);
    expect(figures.yarn["moss"]?.missing.value?.in(grams)).toBeCloseTo(17.989, 3);
    // 12 × 10 ÷ 12 cm of fringe at each end: 180 + 2 × 10.
    fraction(figures.piece["1"]?.withFringe.value ?? null, 200);
  });
  it("5: a crammed stripe", () => {
    const { figures } = planned("5-crammed-stripe");
    expect(figures.loom.ends.value).toBe(304);
    expect(figures.loom.dents.value).toBe(128);
    fraction(figures.loom.widthInReed.value, 32, 3);
    fraction(figures.warp.length.value, 61933, 437);
  });
  it("6: a wider runner", () => {
    const { figures } = planned("6-wider-runner");
    expect(figures.loom.ends.value).toBe(264);
    expect(figures.loom.places.value).toBe(240);
    expect(figures.loom.dents.value).toBe(132);
    fraction(figures.loom.widthInReed.value, 11);
    fraction(figures.warp.length.value, 83627, 403);
    expect(figures.yarn["cream"]?.missing.value?.in(grams)).toBeCloseTo(18.004, 3);
  });
  it("7: a warp with faults", () => {
    const { figures } = planned("7-warp-with-faults");
    expect(figures.loom.places.value).toBe(370);
    expect(figures.loom.dents.value).toBe(184);
  });
  it("8: blankets", () => {
    const { figures } = planned("8-blankets");
    expect(figures.loom.ends.value).toBe(360);
    fraction(figures.loom.widthInReed.value, 45);
    fraction(figures.warp.length.value, 165126, 517);
    fraction(figures.yarn["slate"]?.inAll.value ?? null, 2939956 * 36, 2585);
    const { slate, oat, cream } = figures.yarn;
    expect([slate, oat, cream].map((yarn) => yarn?.packages.value)).toEqual([3, 4, 1]);
  });
  it("9: yarn on hand", () => {
    const { figures } = planned("9-yarn-on-hand");
    expect(figures.piece["1"]?.number.value).toBe(5);
    expect(figures.enough.runsOut.value?.yarn).toBe("blue");
    fraction(figures.yarn["blue"]?.allowed.value ?? null, 788049, 140000);
    fraction(figures.warp.length.value, 91307, 423);
  });
});
