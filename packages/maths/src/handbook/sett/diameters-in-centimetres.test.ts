import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { sweetGeorgia } from "#ci/sources.js";
import { diametersPerCentimetre, metresPerKilogram } from "../../units/index.js";
import { diametersByConstant } from "./diameters-by-constant.js";

describe("diameters per centimetre", () => {
  cited(
    "the constant 0.85 in metric units",
    published(sweetGeorgia, "whole article", "0.236", "0.2356947835249939596385235378185408849"),
    diametersByConstant,
    [{ constant: 0.85, count: metresPerKilogram(1) }],
    diametersPerCentimetre,
  );
  cited(
    "the constant 0.91 in metric units",
    published(
      sweetGeorgia,
      "whole article",
      "0.255",
      "0.2523320623620523567894781404880849474",
      "misprint: 0.91 comes to 0.2523; 0.255 belongs to 0.92",
    ),
    diametersByConstant,
    [{ constant: 0.91, count: metresPerKilogram(1) }],
    diametersPerCentimetre,
  );

  it("are refused without a constant: none is assumed", () => {
    expect(() => diametersByConstant({ count: metresPerKilogram(6773) } as never)).toThrow("{ constant })");
    expect(() => diametersByConstant({ constant: 0.9, count: metresPerKilogram(0) })).toThrow("count");
  });
});
