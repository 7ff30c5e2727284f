import { describe, expect, it } from "vitest";
import { faultsText } from "./fault.js";
import { jobText } from "./job-text.js";
import { readJob } from "./read-job.js";

/** How a value is written back that was read as this one. */
function again(key: string, written: string): string {
  const [outer = "", inner = ""] = key.split(".");
  const reading = readJob(`${outer}: { ${inner}: ${JSON.stringify(written)} }`);
  if (!reading.ok) return faultsText(reading.faults);
  return /: \{ \w+: (.*) \}\n$/u.exec(jobText(reading.value))?.[1] ?? jobText(reading.value);
}

describe("an amount", () => {
  // What the law reads in each row, and how the same amount is written back; worked out by hand.
  it.each([
    ["warp.length", "16 in", "16 in"],
    ["warp.length", "2 yd 6 in", "78 in"],
    ["warp.length", "1 1/2 in", "1 1/2 in"],
    ["warp.length", "1½ in", "1 1/2 in"],
    ["warp.length", "1.5 in.", "1 1/2 in"],
    ["warp.length", "68.5 cm", "68.5 cm"],
    ["warp.length", "1/3 yd", "1/3 yd"],
    ["warp.length", "17 3/8 in", "17 3/8 in"],
    ["warp.length", "5/32 in", "5/32 in"],
    ["warp.length", "1.1 in", "1.1 in"],
    ["warp.length", "1.25 cm", "1.25 cm"],
    ["warp.wasteBehind", "0 in", "0 in"],
    ["cloth.sett", "20 per inch", "20 per inch"],
    ["cloth.sett", "4.5 per cm", "4.5 per cm"],
    ["cloth.sett", "45 per 10 cm", "4.5 per cm"],
    ["cloth.sett", "20 ends per inch", "20 per inch"],
    ["cloth.sett", "20 epi", "20 per inch"],
    ["cloth.sett", "1 per 3 in", "1/3 per inch"],
    ["cloth.picks", "18 picks per inch", "18 per inch"],
    ["cloth.picks", "18ppi", "18 per inch"],
    ["loom.reed", "12 dents per inch", "12 per inch"],
    ["loom.reed", "12 dpi", "12 per inch"],
    ["loom.reed", "6 per cm", "60 per 10 cm"],
    ["winding.raddle", "1 per 2 cm", "5 per 10 cm"],
    ["cloth.takeUp", "8 % lost", "8 % lost"],
    ["cloth.takeUp", "8% lost", "8 % lost"],
    ["cloth.takeUp", "40 cm to 35 cm", "40 cm to 35 cm"],
    ["cloth.takeUp", "0 % lost", "0 % lost"],
    ["found.takeUp", "19 in to 21 in", "19 in to 21 in"],
    ["weft.allowance", "5 % added", "5 % added"],
    ["costs.others", "14.50 EUR", "14.50 EUR"],
    ["costs.others", "9 EUR", "9 EUR"],
    ["winding.most", "80 g", "80 g"],
    ["winding.most", "140 ends", "140 ends"],
    ["winding.chains", "every 40 ends", "every 40 ends"],
    ["winding.extra", "2 natural", "2 natural"],
    ["loom.threading", "1 ends on 2", "1 end on 2"],
    ["loom.threading", "2", "2"],
    ["loom.sley", "1 dents at 2", "1 dent at 2"],
    ["loom.sley", "36 ends at 3", "36 ends at 3"],
    ["loom.sley", "4 dents empty", "4 dents empty"],
  ])("of %s written %j is written back as %j", (key, written, back) => {
    expect(again(key, written)).toBe(back);
  });

  it.each([
    ["count", "3360 yd per lb", "3360 yd per lb"],
    ["count", "420 yd per 2 oz", "420 yd per 2 oz"],
    ["count", "300 m per 100 g", "300 m per 100 g"],
    ["count", "2-ply of 8 cotton", "2-ply of 8 cotton"],
    ["count", "3-ply of 2-ply of 8 cotton", "3-ply of 2-ply of 8 cotton"],
    ["count", "1-ply of 16 linen", "1-ply of 16 linen"],
    ["count", "80 tex in all", "80 tex in all"],
    ["count", "60 spun silk in all", "60 spun silk in all"],
    ["count", "2-ply of 14 Nm", "2-ply of 14 metric"],
    ["count", "20 den in all", "20 den in all"],
    ["sold", "8 oz at 14.50 EUR", "8 oz at 14.50 EUR"],
    ["sold", "300 m at 6 EUR", "300 m at 6 EUR"],
    ["onHand", "none", "none"],
    ["onHand", "1 lb 4 oz", "20 oz"],
    ["fibre", "70 % silk + 30 % wool", "70 % silk + 30 % wool"],
  ])("of a yarn's %s written %j is written back as %j", (key, written, back) => {
    const reading = readJob(`yarns: { a: { ${key}: ${written} } }`);
    expect(reading.ok && jobText(reading.value)).toBe(`yarns: { a: { ${key}: ${back} } }\n`);
  });

  it("keeps apart what is one thing in a dent and two in a list", () => {
    const job = (text: string): unknown => {
      const reading = readJob(text);
      return reading.ok && reading.value.loom;
    };
    expect(job("loom: { sley: 2 }")).toEqual({ sley: { places: [2] } });
    expect(job("loom: { sley: [1 dent at 2] }")).toEqual({ sley: { places: [{ dents: 1, at: 2 }] } });
    expect(job("loom: { threading: [2] }")).toEqual({ threading: [2] });
    expect(job("loom: { threading: [1 ends on 2] }")).toEqual({ threading: [{ ends: 1, shaft: 2 }] });
  });
});
