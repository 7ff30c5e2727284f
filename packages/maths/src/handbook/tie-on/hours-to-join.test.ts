import { describe } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice } from "#ci/sources.js";
import { hoursToJoin } from "./hours-to-join.js";

describe("joining or threading afresh", () => {
  // AVL's goal of 200 to 250 ends an hour prints no hours.
  for (const [knotsPerHour, hours] of [
    [250, "1.8"],
    [200, "2.25"],
  ] as const)
    cited(`450 knots at ${String(knotsPerHour)} an hour`, byHand(commonPractice, hours), hoursToJoin, [
      { knots: 450, knotsPerHour },
    ]);
});

describe("the limits of hours to join", () => {
  limits(hoursToJoin, ["are one for the knots of an hour", { knots: 200, knotsPerHour: 200 }, 1], {
    knots: 0,
    knotsPerHour: 0,
  });
});
