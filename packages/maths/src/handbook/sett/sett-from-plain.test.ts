import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { hsluFadendichte } from "#ci/sources.js";
import { endsPerCentimetre } from "../../units/index.js";
import { settFromPlain } from "./sett-from-plain.js";

describe("a sett for a purpose", () => {
  cited(
    "rep, the low end of the range",
    published(hsluFadendichte, "whole page", "13", "13"),
    settFromPlain,
    [{ plainSett: endsPerCentimetre("6.5"), times: 2 }],
    endsPerCentimetre,
  );
});

describe("the limits of sett from plain", () => {
  limits(
    settFromPlain,
    ["is that of plain weave, once", { plainSett: endsPerCentimetre(8), times: 1 }, 8, endsPerCentimetre],
    { plainSett: endsPerCentimetre(0), times: 0 },
  );
});
