import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { cottonCount, endsPerInch } from "../../units/index.js";
import { floatFactor } from "./float-factor.js";
import { settByBrierley } from "./sett-by-brierley.js";

describe("the closest sett", () => {
  cited(
    "float factor of a 2/2 twill",
    {
      source: gateTextile,
      at: "2006, Q66, working",
      status: "read",
      prints: "",
      exact: "1.310393403858363267777739304055351282207",
    },
    floatFactor,
    [{ averageFloat: 2, exponent: 0.39 }],
    null,
  );
  it("by Brierley is 14.14 for ones in plain weave, whatever the exponent", () => {
    const factor = floatFactor({ averageFloat: 1, exponent: 0.39 });
    expect(factor).toBe(1);
    expect(
      settByBrierley({ floatFactor: factor, constant: 200, system: cottonCount, count: cottonCount(1) }).in(
        endsPerInch,
      ),
    ).toBeCloseTo(Math.SQRT2 * 10, 12);
  });
});
