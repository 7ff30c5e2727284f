import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { leigh2023 } from "#ci/sources.js";
import { currency, yards } from "../../units/index.js";
import { yarnCostByLength } from "./yarn-cost-by-length.js";

const dollars = currency("USD");

describe("what the yarn costs", () => {
  const at = "November 2023";
  const balls = { yarn: yards(1854), price: dollars(4), packageLength: yards(400) };
  cited("1,854 yd in balls of 400", published(leigh2023, at, "18.54", "18.54"), yarnCostByLength, [balls], dollars);
});

describe("the limits of yarn cost by length", () => {
  limits(
    yarnCostByLength,
    [
      "of a package is the price of a package",
      { yarn: yards(1600), price: currency("USD")(24), packageLength: yards(1600) },
      24,
      currency("USD"),
    ],
    { yarn: yards(0), price: currency("USD")(0), packageLength: yards(0) },
  );
});
