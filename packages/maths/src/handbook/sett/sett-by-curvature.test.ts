import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { cdquestionsJam2025 } from "#ci/sources.js";
import { cottonCount, diametersPerInch, endsPerInch } from "../../units/index.js";
import { floatFactor } from "./float-factor.js";
import { settByBrierley } from "./sett-by-brierley.js";
import { settByCurvature } from "./sett-by-curvature.js";

describe("the closest sett", () => {
  cited(
    "10s cotton in plain weave, jammed",
    published(cdquestionsJam2025, "whole question", "51", "51.01684620070283459169120513182115362853"),
    settByCurvature,
    [{ diameters: diametersPerInch(88.36376966154455), ends: 2, intersections: 2 }],
    endsPerInch,
  );
  it("is refused for a weave without intersections and a count of nothing", () => {
    expect(() => settByCurvature({ diameters: diametersPerInch(52), ends: 2, intersections: 0 })).toThrow(
      "intersections",
    );
    expect(() => settByBrierley({ floatFactor: 1, constant: 200, system: cottonCount, count: cottonCount(0) })).toThrow(
      "count",
    );
    expect(() => floatFactor({ averageFloat: 0, exponent: 0.39 })).toThrow("averageFloat");
  });
});
