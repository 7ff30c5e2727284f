import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import {
  bell1895,
  handwovenEightDent,
  handwovenSpecificSetts,
  houseOfWool,
  lisaKay2013,
  osterkampCharts,
  sweetGeorgiaReeds,
} from "#ci/sources.js";
import { compare } from "../../engine/quantity/index.js";
import { dentsPerInch, endsPerCentimetre, endsPerInch } from "../../units/index.js";
import { exactSley } from "./exact-sley.js";
import { settOfSley } from "./sett-of-sley.js";
import { sleyFrom } from "./sley-from.js";

/** The chart as printed: ends per inch of each sleying order in each of the reeds. */
const chart: readonly (readonly [order: string, readonly number[]])[] = [
  ["0-0-1", [2, 2, 3, 3, 4, 5, 5.5, 6, 7]],
  ["0-1", [2.5, 3, 4, 5, 6, 7.5, 8, 9, 10]],
  ["0-1-1", [3, 4, 5, 7, 8, 10, 11, 12, 13.5]],
  ["0-1-1-1", [4, 4.5, 6, 7.5, 9, 11, 12, 13.5, 15]],
  ["1", [5, 6, 8, 10, 12, 15, 16, 18, 20]],
  ["1-1-1-2", [6, 7.5, 10, 12.5, 15, 19, 20, 22.5, 25]],
  ["1-1-2", [7, 8, 11, 13.5, 16, 20, 21, 24, 27]],
  ["1-2", [7.5, 9, 12, 15, 18, 22.5, 24, 27, 30]],
  ["1-2-2", [8, 10, 13, 17, 20, 25, 27, 30, 33.5]],
  ["1-2-2-2", [9, 10.5, 14, 17.5, 21, 26, 28, 31.5, 35]],
  ["2", [10, 12, 16, 20, 24, 30, 32, 36, 40]],
  ["2-2-2-3", [11, 13.5, 18, 22.5, 27, 34, 36, 40.5, 45]],
  ["2-2-3", [12, 14, 19, 24.5, 28, 35, 38, 42, 47]],
  ["2-3", [12.5, 15, 20, 25, 30, 37.5, 40, 45, 50]],
  ["2-3-3", [13, 16, 21.5, 27, 32, 40, 43, 48, 54]],
  ["2-3-3-3", [14, 16.5, 22, 28, 33, 41, 44, 50, 55]],
  ["3", [15, 18, 24, 30, 36, 45, 48, 54, 60]],
  ["3-3-3-4", [16, 19.5, 26, 32.5, 39, 48, 52, 58.5, 65]],
  ["3-3-4", [17, 20, 27, 34, 40, 50, 54, 60, 67]],
  ["3-4", [17.5, 21, 28, 35, 42, 52.5, 56, 63, 70]],
  ["3-4-4", [18, 22, 30, 37, 44, 55, 59, 66, 74]],
  ["3-4-4-4", [19, 22.5, 30, 37.5, 45, 56, 60, 67.5, 75]],
  ["4", [20, 24, 32, 40, 48, 60, 64, 72, 80]],
  ["4-4-4-5", [21, 25.5, 34, 43, 51, 64, 68, 76.5, 85]],
  ["4-4-5", [22, 26, 35, 43, 52, 65, 69, 78, 87]],
  ["4-5", [22.5, 27, 36, 45, 54, 67.5, 72, 81, 90]],
  ["4-5-5", [23, 28, 37, 47, 56, 70, 75, 84, 93]],
  ["4-5-5-5", [24, 28.5, 38, 47.5, 57, 71, 76, 85.5, 95]],
  ["5", [25, 30, 40, 50, 60, 75, 80, 90, 100]],
];

/** Where the chart is off by more than half an end: the exact sett, as a fraction. */
const misprints: readonly (readonly [order: string, reed: number, printed: string, exact: string])[] = [
  ["2-2-3", 10, "24.5", "70/3"],
  ["2-2-3", 16, "38", "112/3"],
  ["2-3-3", 20, "54", "160/3"],
  ["3-3-3-4", 15, "48", "195/4"],
  ["3-3-4", 10, "34", "100/3"],
  ["3-3-4", 16, "54", "160/3"],
  ["3-4-4", 8, "30", "88/3"],
  ["3-4-4", 20, "74", "220/3"],
];

describe("a printed chart of sleying orders", () => {
  for (const [order, reed, printed, exact] of misprints) {
    cited(
      `${order} in a ${String(reed)}-dent reed, on a chart`,
      published(houseOfWool, "chart", printed, exact, "misprint: no rounding of the exact sett gives it"),
      settOfSley,
      [{ reed: dentsPerInch(reed), ...sleyFrom(order) }],
      endsPerInch,
    );
  }
  for (const [order, printed] of chart) {
    const ends = order.split("-").reduce((total, one) => total + Number(one), 0);
    cited(
      `${order} in a 12-dent reed, on a chart`,
      published(houseOfWool, "chart", String(printed[4]), `${String(12 * ends)}/${String(order.split("-").length)}`),
      settOfSley,
      [{ reed: dentsPerInch(12), ...sleyFrom(order) }],
      endsPerInch,
    );
  }
});

describe("the exact sley for a wanted sett", () => {
  it("gives the sett back, and no shorter order does", () => {
    const input = fc.record({ ends: fc.integer({ min: 1, max: 60 }), dents: fc.integer({ min: 1, max: 20 }) });
    fc.assert(
      fc.property(input, ({ ends, dents }) => {
        const reed = dentsPerInch(12);
        const sett = settOfSley({ reed, dents: [1, 2 * dents - 1], endsPerDent: [2 * ends, 0] });
        const sley = exactSley({ reed, sett, mostDents: 20 });
        const [step] = sley.steps;
        expect(step && compare(step.calculation(step.input) as typeof sett, sett)).toBe(0);
        expect(sley.ends * dents).toBe(ends * sley.dents);
        expect(sley.dents).toBeLessThanOrEqual(dents);
        expect(Math.max(...sley.endsInEachDent) - Math.min(...sley.endsInEachDent)).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe("sett of a sleying", () => {
  const rows: readonly (readonly [title: string, Citation, reed: number, order: string])[] = [
    ["2-1-1 in a 12-dent reed", published(handwovenSpecificSetts, "whole answer", "16", "16"), 12, "2-1-1"],
    [
      "2-1-2-1-2-1-2-1-2-2 in a 10-dent reed",
      published(handwovenSpecificSetts, "whole answer", "16", "16"),
      10,
      "2-1-2-1-2-1-2-1-2-2",
    ],
    ["3-2 in an 8-dent reed", published(handwovenEightDent, "whole answer", "20", "20"), 8, "3-2"],
    ["1-2-2 in a 6-dent reed", published(sweetGeorgiaReeds, "explanation", "10", "10"), 6, "1-2-2"],
    ["3-3-4 in a 6-dent reed", published(sweetGeorgiaReeds, "explanation", "20", "20"), 6, "3-3-4"],
    ["1-1-1-2 in a 10-dent reed", published(osterkampCharts, "Reed Substitution Chart", "12.5", "12.5"), 10, "1-1-1-2"],
    ["1-2-1-2 in a 12-dent reed", published(lisaKay2013, "whole post", "18", "18"), 12, "1-2-1-2"],
    ["four empty, one full, of 30", published(bell1895, "p. 290, ch. XI", "6", "6"), 30, "0-0-0-0-1"],
    ["four empty, one full, of 40", published(bell1895, "p. 290, ch. XI", "8", "8"), 40, "0-0-0-0-1"],
    ["four empty, one full, of 10", published(bell1895, "p. 290, ch. XI", "2", "2"), 10, "0-0-0-0-1"],
    ["four empty, one full, of 15", published(bell1895, "p. 290, ch. XI", "3", "3"), 15, "0-0-0-0-1"],
  ];
  for (const [title, citation, reed, order] of rows) {
    cited(title, citation, settOfSley, [{ reed: dentsPerInch(reed), ...sleyFrom(order) }], endsPerInch);
  }
  it("is the same however often the order is written out", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 8 }), (order) => {
        fc.pre(order.some((ends) => ends > 0));
        const once = settOfSley({ reed: dentsPerInch(12), ...sleyFrom(order.join("-")) });
        const twice = settOfSley({ reed: dentsPerInch(12), ...sleyFrom([...order, ...order].join("-")) });
        expect(twice.in(endsPerCentimetre)).toBeCloseTo(once.in(endsPerCentimetre), 12);
      }),
    );
  });
});

describe("the limits of sett of sley", () => {
  limits(
    settOfSley,
    [
      "is that of half the reed where every second dent is left empty",
      { reed: dentsPerInch(10), dents: [1, 1], endsPerDent: [0, 1] },
      5,
      endsPerInch,
    ],
    { reed: dentsPerInch(0), dents: [0], endsPerDent: [-1] },
  );
});
