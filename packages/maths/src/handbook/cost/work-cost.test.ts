import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { fry2024 } from "#ci/sources.js";
import { currency } from "../../units/index.js";
import { workCost } from "./work-cost.js";

const dollars = currency("USD");

describe("what a piece costs, and the least price", () => {
  const hours = (n: number): Parameters<typeof workCost>[0] => ({ hours: n, hourlyRate: dollars(15) });
  cited("ten hours at a batch", published(fry2024, "whole post", "150", "150"), workCost, [hours(10)], dollars);
  cited("eleven hours at a batch", published(fry2024, "whole post", "165", "165"), workCost, [hours(11)], dollars);
});

describe("the limits of work cost", () => {
  limits(workCost, ["of one hour is the rate", { hours: 1, hourlyRate: currency("USD")(15) }, 15, currency("USD")], {
    hours: 0,
    hourlyRate: currency("USD")(0),
  });
});
