import { describe } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { taylor1909 } from "#ci/sources.js";
import { endsPerInch, ounces, pounds } from "../../units/index.js";
import { settForWeight } from "./sett-for-weight.js";

describe("another weight", () => {
  cited(
    "93 to the inch for 15 lb in place of 10",
    published(taylor1909, "pp. 343 and 344, ch. XII", "62", "62"),
    settForWeight,
    [{ sett: endsPerInch(93), mass: pounds(10), newMass: pounds(15) }],
    endsPerInch,
  );
});

describe("the limits of sett for weight", () => {
  limits(
    settForWeight,
    ["stays where the weight stays", { sett: endsPerInch(40), mass: ounces(8), newMass: ounces(8) }, 40, endsPerInch],
    { sett: endsPerInch(0), mass: ounces(0), newMass: ounces(0) },
  );
});
