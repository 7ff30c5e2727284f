import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { wolfensberger1921 } from "#ci/sources.js";
import { currency, percentLost } from "../../units/index.js";
import { priceFloor } from "./price-floor.js";

const dollars = currency("USD");

describe("what a piece costs, and the least price", () => {
  // The text divides by 87.5 or by 89 hundredths: discount and commission together off the price.
  const floors: readonly (readonly [
    page: string,
    n: number,
    cost: string,
    off: string,
    prints: string,
    exact: string,
  ])[] = [
    ["104", 1, "0.4879", "12.5", "0.5576", "0.5576"],
    ["104", 2, "0.6201", "11", "0.6967", "6201/8900"],
    ["105", 3, "0.6788", "11", "0.7627", "6788/8900"],
    ["105", 4, "0.8782", "11", "0.9867", "4391/4450"],
    ["106", 5, "0.5501", "12.5", "0.6287", "5501/8750"],
    ["108", 7, "0.5198", "12.5", "0.5941", "2599/4375"],
    ["109", 10, "1.0746", "12.5", "1.2281", "10746/8750"],
  ];
  for (const [page, n, cost, off, prints, exact] of floors) {
    cited(
      `price of a yard of Disposition ${String(n)}`,
      published(wolfensberger1921, `p. ${page}, Disposition ${String(n)} cost sheet`, prints, exact),
      priceFloor,
      [{ cost: dollars(cost), commission: percentLost(off) }],
      dollars,
    );
  }
});

describe("the limits of price floor", () => {
  limits(
    priceFloor,
    [
      "is the cost where nobody takes a commission",
      { cost: currency("USD")(30), commission: percentLost(0) },
      30,
      currency("USD"),
    ],
    { cost: currency("USD")(0), commission: percentLost(100) },
  );
});
