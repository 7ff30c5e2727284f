import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { compare, times } from "../../engine/quantity/index.js";
import { dentsPerInch, endsPerInch, inches, percentOf } from "../../units/index.js";
import { substituteReeds } from "./substitute-reeds.js";

describe("substitute reeds", () => {
  const input = {
    sett: endsPerInch(16),
    ends: 320,
    reeds: [dentsPerInch(10), dentsPerInch(12)],
    within: percentOf(5),
    mostDents: 5,
  };
  // One end in each dent of 19 is an end less than 20, 5 in the hundred; 320 ÷ 19 − 320 ÷ 20 = 16/19 inch wider.
  cited(
    "width that 320 ends gain of 20 to the inch, one in each dent of a 19-dent reed",
    byHand(commonPractice, "16/19"),
    substituteReeds,
    [{ sett: endsPerInch(20), ends: 320, reeds: [dentsPerInch(19)], within: percentOf(5), mostDents: 1 }],
    ["0.widthChange", inches],
  );
  it("for 16 to the inch: 1-1-2 in twelve and 1-2-1-2-2 in ten are exact, the shorter first, then the near ones", () => {
    const found = substituteReeds(input).map(({ reed, order, change }) => [String(reed), order, Number(change.value)]);
    expect(found.slice(0, 2)).toEqual([
      ["12 dents/in", "1-1-2", 0],
      ["10 dents/in", "1-2-1-2-2", 0],
    ]);
    // 3 in 2 dents is 15, a sixteenth less than 16: outside 5 in the hundred. 5 in 3 is 16 2/3, 4.17 % more: inside.
    expect(found.map(([, order]) => order)).not.toContain("1-2");
    expect(found.map(([, order]) => order)).toContain("1-2-2");
    // 7 in 5 of twelve are 16.8, just 5 in the hundred more: the last.
    expect(found.at(-1)?.slice(0, 2)).toEqual(["12 dents/in", "1-1-2-1-2"]);
  });
  it("give the change of sett and of width: 5 in 3 dents of ten are 2/3 closer, 320 ends 0.8 in narrower", () => {
    const choice = substituteReeds(input).find(({ order }) => order === "1-2-2");
    expect(choice?.sett.in(endsPerInch)).toBeCloseTo(50 / 3, 12);
    expect(choice?.change.in(endsPerInch)).toBeCloseTo(2 / 3, 12);
    expect(choice?.widthInReed.in(inches)).toBeCloseTo(19.2, 12);
    expect(choice?.widthChange.in(inches)).toBeCloseTo(-0.8, 12);
    expect(choice?.step.calculation(choice.step.input)).toEqual(choice?.sett);
  });
  it("hold a sett that lies just on the limit", () => {
    const limit = { ...input, sett: endsPerInch(20), reeds: [dentsPerInch(19)], within: percentOf(5), mostDents: 1 };
    expect(substituteReeds(limit).map(({ order }) => order)).toEqual(["1"]);
    expect(substituteReeds({ ...limit, within: percentOf("4.99") })).toEqual([]);
  });
  it("are every order inside the limits, nearest first, none twice", () => {
    const any = fc.record({ sett: fc.integer({ min: 4, max: 48 }), within: fc.integer({ min: 1, max: 20 }) });
    fc.assert(
      fc.property(any, ({ sett, within }) => {
        const found = substituteReeds({ ...input, sett: endsPerInch(sett), within: percentOf(within), mostDents: 4 });
        const wanted: string[] = [];
        for (const reed of [10, 12])
          for (let dents = 1; dents <= 4; dents += 1)
            for (let ends = 1; ends <= 5 * sett; ends += 1)
              if (100 * Math.abs(reed * ends - sett * dents) <= within * sett * dents)
                wanted.push(`${String((reed * ends) / dents)} in ${String(reed)}`);
        const got = found.map((one) => `${String(one.sett.in(endsPerInch))} in ${String(one.reed.in(dentsPerInch))}`);
        expect(new Set(got)).toEqual(new Set(wanted));
        expect(new Set(got).size).toBe(got.length);
        const off = found.map(({ change }) => Math.abs(change.in(endsPerInch)));
        expect(off).toEqual([...off].sort((a, b) => a - b));
      }),
    );
  });
  it("are told of one end and of orders up to a hundred dents", () => {
    // 100 and 101 share no factor: the sett is met by no order of fewer than 100 dents.
    const long = { ...input, sett: endsPerInch(101), ends: 1, reeds: [dentsPerInch(100)], within: percentOf("1e-9") };
    expect(substituteReeds({ ...long, mostDents: 99 })).toEqual([]);
    expect(substituteReeds({ ...long, mostDents: 100 }).map(({ change }) => change.value)).toEqual(["0"]);
  });
  it.each([
    ["no reeds", { reeds: [] }, "empty reeds"],
    ["a sett among the reeds", { reeds: [dentsPerInch(10), endsPerInch(12)] }, "wrong-kind reeds.1"],
    ["no limit", { within: percentOf(0) }, "out-of-range within"],
    ["half an end", { ends: 320.5 }, "not-whole ends"],
    ["orders of no dent", { mostDents: 0 }, "out-of-range mostDents"],
    ["orders of more than a hundred dents", { mostDents: 101 }, "out-of-range mostDents"],
  ])("are refused for %s", (_, change, code) => {
    expect(codesOf(substituteReeds, { ...input, ...change })).toEqual([code]);
  });
  it("change the width the other way when the sett is more open", () => {
    const open = substituteReeds({
      ...input,
      sett: endsPerInch(17),
      reeds: [dentsPerInch(8)],
      mostDents: 1,
      within: percentOf(6),
    });
    expect(open.map(({ order, widthChange }) => [order, compare(widthChange, times(widthChange, 0))])).toEqual([
      ["2", 1],
    ]);
  });
});
