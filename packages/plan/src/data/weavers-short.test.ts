import { expect, test } from "vitest";
import { jobIn } from "#ci/example-jobs.js";
import { planText } from "../views/text.js";
import { planOf } from "./plan-data.js";

const text = (job: string): string => {
  return planText(planOf(jobIn(job)), { without: "workings" }).replace(/\s+/gu, " ");
};

const CLOTH = "cloth: { takeUp: 8 % lost, lengthLoomToFinished: 10 % lost, picks: 16 per inch }";
const LOOM = "loom: { reed: 10 per inch, sley: 2, threading: [1, 2, 3, 4] }";

function napkins(by: string, warp: string, more = ""): string {
  return text(`stripes: [24 natural]
oldWarp: none
${LOOM}
${CLOTH}
warp: { ${warp}wasteInFront: 15 in, wasteBehind: 18 in }
pieces: [{ number: ${by}, name: napkin, finishedLength: 16 in, hemEachEnd: 1 in }]
${more}`);
}

test("a fixed warp shorter than its waste gives no napkin, in a sentence, and the lengths wait for a longer one", () => {
  // 15 + 18 = 33 in of waste; one napkin (16 + 2) ÷ 0.9 ÷ 0.92 = 21.739 in, rounded up.
  const plan = napkins("as many as the warp gives", "length: 20 in, ");
  expect(plan).toContain("MUST 20 in give no napkin: the waste alone is 33 in, and one takes 21.74 in.");
  expect(plan).toMatch(/WAITS Width and length: [^.]*\S* ?warp\.length/u);
  expect(plan).not.toContain("received");
});

test("a fixed warp that reaches past its waste and not to one napkin says both", () => {
  const plan = napkins("as many as the warp gives", "length: 54 in, ");
  expect(plan).toContain("MUST 54 in give no napkin: 33 in are waste, and one takes 21.74 in.");
  // 33 + 21.739 = 54.739 in.
  expect(napkins("as many as the warp gives", "length: 55 in, ")).toContain("55 in give 1 napkin;");
});

test("as many as the yarn gives with none on hand, or with too little for one, is told", () => {
  const yarn = (there: string) =>
    napkins(
      "as many as the yarn gives",
      "",
      `weft: natural\nyarns: { natural: { count: 2-ply of 8 cotton, onHand: ${there} } }`,
    );
  expect(yarn("none")).toContain("MUST The yarn on hand gives no napkin: of natural there is none.");
  // 24 × 54.739 + 320 × 1.2 = 1697.7 in = 47.2 yd; 840 × 4 ÷ 16 = 210 yd to the ounce: 21 yd are too little.
  expect(yarn("0.1 oz")).toContain("MUST The yarn on hand gives no napkin.");
  for (const there of ["none", "0.1 oz"]) expect(yarn(there)).not.toContain("received");
  // 63 yd are more than 47.2 and less than 47.2 + (24 × 21.739 + 384) ÷ 36 = 72.3.
  expect(yarn("0.3 oz")).not.toContain("gives no napkin");
});

test("without stripes the plan says that these are the places of the old warp", () => {
  const plan = text(`${LOOM}\noldWarp: { ends: 24 }`);
  expect(plan).toContain("There are no stripes: reckoned with the 24 places of the old warp.");
  expect(text(`${LOOM}\nstripes: [24 natural]\noldWarp: { ends: 24 }`)).not.toContain("There are no stripes");
  // Told first of all, and again where the number is read: with the stripes, with the width.
  expect(plan.split("There are no stripes:")).toHaveLength(4);
});

test("first inches wider than the reed are asked about in words", () => {
  // 24 ends in 12 dents of 10 to the inch: 1.2 in.
  const job = (width: string) =>
    text(`${LOOM}\nstripes: [24 natural]\n${CLOTH}\nfound: { firstInches: { width: ${width} } }`);
  expect(job("30 in")).toContain("ASK Found at the fell: 30 in, wider than the 1.2 in in the reed.");
  expect(job("30 in")).not.toContain("received");
  expect(job("1.08 in")).toContain("drawn in by 10 %");
});

test("heddles and dents left are named where the ends are as many as the places", () => {
  const room = "room: { before: { dents: 4, heddles: 3 }, after: { dents: 5, heddles: [3, 4, 5, 6] } }";
  const job = (ends: number) =>
    text(`${LOOM.replace(" }", `, ${room} }`)}\nstripes: [${String(ends)} natural]\noldWarp: { ends: 24 }`);
  expect(job(24)).toContain(
    "Left empty: before end 1 4 dents and 3 heddles on each shaft; after the last 5 dents and 3 on shaft 1, 4 on shaft 2, 5 on shaft 3 and 6 on shaft 4 of the heddles.",
  );
  expect(job(28)).not.toContain("Left empty:");
});

test("several sizes are laid side by side, with the largest alone and the cheapest mixture", () => {
  // 24 × (4 × 500/23 + 33) ÷ 36 + 4 × 320 × 1.2 ÷ 36 yd = 122.6 of 3360 to the pound: 0.58 oz.
  const sold = (sizes: string) =>
    napkins("4", "", `weft: natural\nyarns: { natural: { count: 2-ply of 8 cotton, onHand: none, sold: ${sizes} } }`);
  const two = sold("[0.2 oz at 1 EUR, 0.5 oz at 2 EUR]");
  expect(two).toContain("natural: of the largest size alone 2 packages for 4.00 EUR, 0.4 oz left over;");
  expect(two).toContain("the cheapest mixture costs 3.00 EUR, 0.1 oz left over.");
  expect(sold("[0.2 oz, 0.5 oz]")).not.toContain("cheapest mixture");
  expect(sold("0.5 oz at 2 EUR")).not.toContain("several sizes");
});
