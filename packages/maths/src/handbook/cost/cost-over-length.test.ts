import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { wolfensberger1921 } from "#ci/sources.js";
import { currency, metres, yards } from "../../units/index.js";
import { costOverLength } from "./cost-over-length.js";

const dollars = currency("USD");

describe("work paid by the end", () => {
  const sheet = (page: string, disposition: number): string =>
    `p. ${page}, Disposition ${String(disposition)} cost sheet`;
  const joined: readonly (readonly [
    knots: number,
    rate: string,
    warp: number,
    page: string,
    n: number,
    prints: string,
    exact: string,
    differs?: string,
  ])[] = [
    [3978, "0.9945", 300, "104", 1, "0.33", "0.3315"],
    [
      5872,
      "2.0552",
      600,
      "104",
      2,
      "0.25",
      "0.34253333333333333",
      "misprint: 25 cents a thousand would give it, printed is 35",
    ],
    [12256, "3.064", 600, "105", 3, "0.51", "0.51066666666666667"],
    [6424, "1.606", 600, "105", 4, "0.27", "0.26766666666666667"],
    [1992, "0.5976", 300, "106", 5, "0.20", "0.1992"],
    [
      4260,
      "1.278",
      300,
      "108",
      7,
      "0.41",
      "0.426",
      "misprint: the same rule as in the others gives a cent and a half more",
    ],
    [5296, "1.5888", 600, "108", 8, "0.27", "0.2648", "put up to the next cent"],
    [4700, "2.35", 600, "109", 10, "0.40", "0.39166666666666667", "put up to the next cent"],
  ];
  for (const [knots, cost, warp, page, n, prints, exact, differs] of joined) {
    const input = { cost: dollars(cost), length: metres(100), warpLength: metres(warp) };
    cited(
      `joining of ${String(knots)} ends, borne by 100 m of ${String(warp)}`,
      published(wolfensberger1921, `${sheet(page, n)}; rule p. 101`, prints, exact, differs),
      costOverLength,
      [input],
      dollars,
    );
  }
});

describe("the limits of cost over length", () => {
  limits(
    costOverLength,
    [
      "is the whole cost over the whole warp",
      { cost: currency("USD")(30), length: yards(12), warpLength: yards(12) },
      30,
      currency("USD"),
    ],
    { cost: currency("USD")(0), length: yards(0), warpLength: yards(0) },
  );
});
