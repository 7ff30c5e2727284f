import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { davis1920, fabricProduction2015, interlacementsLinen, textileSchoolWeaving } from "#ci/sources.js";
import { cottonCount, kilograms, linenCount, metres, ounces, pounds, worstedCount, yards } from "../../units/index.js";
import { yarnLength } from "./yarn-length.js";

describe("constants of the mill for warp and weft", () => {
  cited(
    "metres in a kilogram of ones cotton",
    published(
      fabricProduction2015,
      "formula list",
      "1693.6",
      "10972800000/6479891",
      "misprint: 1693.36; the weft constant of the same list fits that",
    ),
    yarnLength,
    [{ mass: kilograms(1), count: cottonCount(1) }],
    metres,
  );
  cited(
    "yards in a kilogram of ones cotton",
    published(textileSchoolWeaving, "formula list", "1848", "12000000000/6479891", "2.2 lb to the kilogram: 2.2 × 840"),
    yarnLength,
    [{ mass: kilograms(1), count: cottonCount(1) }],
    yards,
  );
});

describe("the mass of a length of yarn", () => {
  cited(
    "yards in 3 pounds of 2/48s worsted",
    { source: davis1920, at: "Ex. 10, p. 41", status: "read", prints: "40320", exact: "40320" },
    yarnLength,
    [{ mass: pounds(3), count: worstedCount(24) }],
    yards,
  );
  cited(
    "yards in a quarter ounce of 60/2 spun silk",
    published(
      davis1920,
      "Ex. 10, p. 41",
      "787.5",
      "787.5",
      "misprint: the working has 860 for 840; the answer is right",
    ),
    yarnLength,
    [{ mass: ounces("0.25"), count: cottonCount(60) }],
    yards,
  );
  cited(
    "yards on a tube of 40/2 linen",
    { source: interlacementsLinen, at: "whole page", status: "read", prints: "3300", exact: "3300" },
    yarnLength,
    [{ mass: ounces("8.8"), count: linenCount(20) }],
    yards,
  );
});

describe("the limits of yarn length", () => {
  limits(yarnLength, ["of nothing is nothing", { mass: pounds(0), count: cottonCount(20) }, 0, yards], {
    mass: pounds(-1),
    count: cottonCount(0),
  });
});
