import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { grams, percentAdded, percentLost, percentOf } from "../../units/index.js";
import { blendRegain } from "./blend-regain.js";
import { waterInYarn } from "./water-in-yarn.js";

describe("averages, contraction and regain", () => {
  cited(
    "water in 100 g of wool, silk and viscose",
    published(gateTextile, "2007, Q70", "12.28", "700/57"),
    waterInYarn,
    [{ mass: grams(100), regain: percentAdded(14) }],
    grams,
  );
  it("a loss is refused where a regain is wanted, and a share of nothing", () => {
    expect(() => waterInYarn({ mass: grams(1), regain: percentLost(3) as never })).toThrow("regain");
    const input = { shares: [percentOf(0)], regains: [percentAdded(3)] };
    expect(() => blendRegain(input)).toThrow("{ shares[0] }): expected a share");
  });
});
