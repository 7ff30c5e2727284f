import { describe, expect, it } from "vitest";
import { jobIn } from "#ci/example-jobs.js";
import { leastTime } from "#ci/processor-time.js";
import { planHtml } from "../views/html.js";
import { planText } from "../views/text.js";
import { planOf } from "./plan-data.js";

/** So many ends in 300 stripes, with all that can be worked of them. */
function job(ends: number): string {
  const [stripes, each] = [300, Math.floor(ends / 300)];
  const runs = Array.from({ length: stripes }, (_, at) => `${String(each)} ${at % 2 === 0 ? "oat" : "rose"}`);
  return `stripes: [${runs.join(", ")}]
groups: 20
loom: { reed: 10 per inch, sley: 2, threading: [1, 2, 3, 4] }
oldWarp: { ends: ${String(stripes * each)} }
join: { knots: in front of the reed }
cloth: { picks: 16 per inch, takeUp: 8 % lost, lengthLoomToFinished: 10 % lost }
warp: { wasteInFront: 10 in, wasteBehind: 18 in }
pieces: [{ number: 4, finishedLength: 18 in }]
weft: oat
winding: { threads: 2, chains: by group, most: 140 ends }
`;
}

describe("a warp of any size", () => {
  it("300 stripes: the time grows no faster than the ends", () => {
    const [small, large] = [jobIn(job(4800)), jobIn(job(19_800))];
    planOf(small);
    // Four times the ends: four times the time at most, and as much again for a machine that is busy; squares would be 17.
    expect(leastTime(() => planOf(large))).toBeLessThan(9 * leastTime(() => planOf(small)));
  });

  const cloth = (takeUp: string, loss: string) =>
    `cloth: { picks: 16 per inch, takeUp: ${takeUp} % lost, lengthLoomToFinished: ${loss} % lost }`;
  it.each([
    // 80 ÷ 0.00000001 + 10 in.
    ["nearly all the thread taken up", cloth("99.999999", "10"), "18 in", 4, 8_000_000_010],
    // 72 ÷ 0.00000001 ÷ 0.92 + 10 in.
    ["nearly all the length lost", cloth("8", "99.999999"), "18 in", 4, 7_826_086_966.521739],
    // 100 km ÷ 0.9 ÷ 0.92 × 4, and 10 in; 39,370.0787 in to the kilometre.
    ["a piece of 100 km", cloth("8", "10"), "100 km", 4, 400 / 0.9 / 0.92 / 0.0000254 + 10],
    ["ten thousand pieces", cloth("8", "10"), "18 in", 10_000, 200_000 / 0.92 + 10],
  ])("%s: answered, in sheets of a few pages", (_, losses, finishedLength, number, warp) => {
    const plan = planOf(
      jobIn(`stripes: [160 oat]
loom: { reed: 10 per inch, sley: 2, threading: [1, 2, 3, 4] }
oldWarp: { ends: 160 }
join: { knots: in front of the reed }
warp: { wasteInFront: 10 in, wasteBehind: 18 in }
${losses}
pieces: [{ number: ${String(number)}, finishedLength: ${finishedLength} }]
betweenPieces: 1/2 in
weft: oat
yarns: { oat: { count: 2-ply of 8 cotton, sold: 8 oz, onHand: none } }
winding: { threads: 2, chains: by group, most: 140 ends, turn: 3 yd }
`),
    );
    const breaks = ((number - 1) * 0.5) / (losses.includes("99.999999 % lost, length") ? 1e-8 : 0.92);
    const needed = plan.figures.warp.needed.value;
    const inInches = needed === null ? 0 : Number(needed.value) * (needed.unit === "kilometres" ? 1 / 0.0000254 : 1);
    expect(inInches / (warp + breaks)).toBeCloseTo(1, 9);
    // Some pages of sheets and workings, however long the cloth.
    expect(planText(plan).length).toBeLessThan(100_000);
    expect(planHtml(plan).length).toBeLessThan(500_000);
  });
});
