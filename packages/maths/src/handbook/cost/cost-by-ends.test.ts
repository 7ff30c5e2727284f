import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { wolfensberger1921 } from "#ci/sources.js";
import { currency } from "../../units/index.js";
import { costByEnds } from "./cost-by-ends.js";

const dollars = currency("USD");

const cents = currency("cents");

describe("work paid by the end", () => {
  const sheet = (page: string, disposition: number): string =>
    `p. ${page}, Disposition ${String(disposition)} cost sheet`;
  const warped: readonly (readonly [
    ends: number,
    cents: string,
    page: string,
    n: number,
    prints: string,
    exact: string,
  ])[] = [
    [4032, "3", "104", 1, "1.21", "120.96"],
    [5904, "2.75", "104", 2, "1.62", "162.36"],
    [12624, "2.75", "105", 3, "3.47", "347.16"],
    [6520, "2.75", "105", 4, "1.79", "179.3"],
    [3984, "3", "106", 5, "1.20", "119.52"],
    [8316, "4", "107", 6, "3.32", "332.64"],
    [4320, "3", "108", 7, "1.30", "129.6"],
    [10680, "2.5", "109", 9, "2.67", "267"],
    [4760, "4", "109", 10, "1.90", "190.4"],
  ];
  for (const [ends, rate, page, n, prints, exact] of warped) {
    const input = { ends, charge: cents(rate), endsCharged: 100 };
    const differs = n === 6 ? "cut off, not rounded; printed in dollars" : "printed in dollars, to the cent";
    cited(
      `warping of ${String(ends)} ends for 100 yd`,
      published(wolfensberger1921, sheet(page, n), prints, exact, differs),
      costByEnds,
      [input],
      cents,
    );
  }
  it("by the thousand is what is borne by the length", () => {
    expect(costByEnds({ ends: 3978, charge: dollars("0.25"), endsCharged: 1000 }).in(dollars)).toBe(0.9945);
  });
});

describe("the limits of cost by ends", () => {
  limits(
    costByEnds,
    [
      "is the charge itself for as many ends as are charged at once",
      { ends: 1000, charge: currency("GBP")("0.75"), endsCharged: 1000 },
      0.75,
      currency("GBP"),
    ],
    { ends: 0, charge: currency("GBP")(0), endsCharged: 0 },
  );
});
