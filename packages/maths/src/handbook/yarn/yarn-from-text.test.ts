import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { attempt } from "../../engine/refusal.js";
import { cottonCount, metresPerKilogram, tex, worstedCount, yardsPerPound } from "../../units/index.js";
import { convertCount, yarnFromText } from "./index.js";

/** Plies, what is counted, and the count as it prints. */
function said(text: string): string {
  const { count, plies, counted } = yarnFromText(text);
  return `${String(plies)} × ${String(count)}, ${counted}`;
}

describe("a whole yarn", () => {
  cited(
    "the plies of two threads of two plies of 8 cotton",
    byHand(commonPractice, "4"),
    yarnFromText,
    ["2-ply of 2-ply of 8 cotton"],
    "plies",
  );
  // 225 m of 50 g: 225 × 1000 ÷ 50 = 4500 m to the kilogram.
  cited(
    "a label of 225 metres and 50 grams",
    byHand(commonPractice, "4500"),
    yarnFromText,
    ["225 m / 50 g"],
    ["count", metresPerKilogram],
  );

  it("comes back from its words as it was, in every order of them", () => {
    const system = fc.constantFrom(
      ["cotton", cottonCount] as const,
      ["worsted", worstedCount] as const,
      ["tex", tex] as const,
    );
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 1600 }),
        system,
        (plies, n, [word, unit]) => {
          const count = n / 4;
          const yarn = yarnFromText(`${String(plies)}-ply of ${String(count)} ${word}`);
          expect([yarn.plies, yarn.counted, yarn.count.unit, yarn.count.value]).toEqual([
            plies,
            "single",
            unit.name,
            String(count),
          ]);
          expect(yarnFromText(`${String(count)} ${word} in all`)).toMatchObject({
            plies: 1,
            counted: "finished thread",
          });
        },
      ),
    );
  });

  it("has a thousand plies and a hundred letters at most", () => {
    expect(yarnFromText("10-ply of 100-ply of 8 cotton").plies).toBe(1000);
    expect(codesOf(yarnFromText, "7-ply of 143-ply of 8 cotton")).toEqual(["out-of-range text"]);
    expect(yarnFromText(`8 cotton${" ".repeat(92)}`).plies).toBe(1);
    expect(codesOf(yarnFromText, `8 cotton${" ".repeat(93)}`)).toEqual(["too-long text"]);
  });

  it.each([
    ["2-ply of 8 cotton", "2 × 8 Ne, single"],
    ["1-ply of 16 linen", "1 × 16 lea, single"],
    ["3-ply of 2-ply of 8 cotton", "6 × 8 Ne, single"],
    ["2 ply of 40 tex", "2 × 40 tex, single"],
    ["80 tex in all", "1 × 80 tex, finished thread"],
    ["R 60 tex", "1 × 60 tex, finished thread"],
    ["60 spun silk in all", "1 × 60 spun silk count, finished thread"],
    ["3360 yd per lb", "1 × 3360 yd/lb, finished thread"],
    ["1680 yd/lb", "1 × 1680 yd/lb, finished thread"],
    ["300 m per 100 g", "1 × 300 m/100 g, finished thread"],
    ["225 m / 50 g", "1 × 225 m/50 g, finished thread"],
    ["2/20s cotton", "2 × 20 Ne, single"],
    ["2/10000s cotton", "2 × 10000 Ne, single"],
    ["40s/2 cotton", "2 × 40 Ne, single"],
    ["30 tex × 2", "2 × 30 tex, single"],
    ["20s cotton", "1 × 20 Ne, single"],
    ["20 cotton", "1 × 20 Ne, single"],
    ["17 1/2 worsted", "1 × 17.5 worsted count, single"],
    ["Nm 28", "1 × 28 Nm, single"],
  ])("%s is read whole", (text, read) => {
    expect(said(text)).toBe(read);
  });

  it("of the numbers of a label is a count of its own", () => {
    // 225 m of 50 g are 4500 m of 1000 g; 3360 yd of a pound are four hanks of 840 yd.
    expect(convertCount(yarnFromText("225 m / 50 g").count, metresPerKilogram).count.in(metresPerKilogram)).toBe(4500);
    const inPounds = (text: string): number =>
      convertCount(yarnFromText(text).count, yardsPerPound).count.in(yardsPerPound);
    expect(inPounds("87 yd per 1 3/4 oz")).toBeCloseTo((87 / 1.75) * 16, 9);
  });

  it.each<[string, readonly string[], RegExp]>([
    ["8/2 cotton", ["2-ply of 8 cotton", "8-ply of 2 cotton"], /3360 yd\/lb.*210 yd\/lb/u],
    ["2/8 cotton", ["8-ply of 2 cotton", "2-ply of 8 cotton"], /3360 yd\/lb/u],
    ["16/16 cotton", ["16-ply of 16 cotton", "2-ply of 16 cotton"], /840 yd\/lb.*6720 yd\/lb/u],
    ["Nm 28/2", ["2-ply of 28 Nm", "28-ply of 2 Nm"], /./u],
  ])("%s has two readings, told with their yards and given as texts that are read", (text, candidates, told) => {
    const read = attempt(yarnFromText, text);
    const fault = read.ok ? null : read.faults[0];
    expect(fault).toMatchObject({
      code: "ambiguous",
      params: { candidates },
      remedy: expect.stringMatching(told) as string,
    });
    for (const candidate of candidates) expect(attempt(yarnFromText, candidate).ok).toBe(true);
  });

  it("without its system, or with one of several meanings, is refused with what it may mean", () => {
    const bare = attempt(yarnFromText, "8/2");
    expect(bare.ok ? [] : bare.faults[0].params.candidates).toContain("2-ply of 8 worsted");
    const cut = attempt(yarnFromText, "2-ply of 8 cut");
    expect(cut.ok ? [] : cut.faults[0].params.candidates).toContain("8 woollen cut");
    const denier = attempt(yarnFromText, "40 denier in all");
    expect(denier.ok ? [] : denier.faults[0].params.candidates?.[0]).toBe("40 den");
  });

  it.each<[unknown, string]>([
    [undefined, "missing"],
    [null, "missing"],
    [8, "wrong-kind"],
    ["", "empty"],
    [" ", "empty"],
    ["8".repeat(1_000_000), "too-long"],
    ["No. 60", "unreadable"],
    ["cotton", "unreadable"],
    ["0 cotton", "out-of-range"],
    ["0-ply of 8 cotton", "out-of-range"],
    ["8 hemp", "unknown-unit"],
    ["8,5 cotton", "ambiguous"],
    ["300 m per 0 g", "out-of-range"],
  ])("%j is refused", (text, code) => {
    const read = attempt(yarnFromText, text);
    expect(read.ok ? "read" : read.faults[0]).toMatchObject({ code, function: "yarnFromText" });
  });
});
