import { describe, expect, it } from "vitest";
import { cottonCount, endsPerInch, yardsPerPound } from "../../units/index.js";
import type { ComparedSettsInput } from "../sett/compared-setts.js";
import { comparedSetts } from "../sett/compared-setts.js";
import { plainWeave } from "./plain-weave.js";

const eightTwo: ComparedSettsInput = {
  weave: ["xx..", ".xx.", "..xx", "x..x"],
  count: yardsPerPound(3360),
  material: "cotton",
  wrapsPerInch: 36,
};

function perInch(input: ComparedSettsInput): Readonly<Record<string, number>> {
  return Object.fromEntries(comparedSetts(input).setts.map(({ rule, sett }) => [rule, sett.in(endsPerInch)]));
}

describe("rules side by side", () => {
  it("in plain weave run from 13.05 to 16.17 times the root of the cotton count", () => {
    const setts = perInch({ ...eightTwo, weave: plainWeave, count: cottonCount(1), wrapsPerInch: "not wrapped" });
    expect(setts["ends and intersections, constant 0.9 by faena"]).toBeCloseTo(13.042239, 6);
    expect(setts["Brierley"]).toBeCloseTo(14.142136, 6);
    expect(setts["jam of Peirce"]).toBeCloseTo(16.165808, 6);
  });
});
