import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import { settArticle, sweetGeorgia } from "../../sources/index.js";
import { diametersPerInch } from "../sett/diameters-per-inch.js";
import { diametersPerCentimetre } from "./diameters-per-centimetre.js";

describe("diameters per centimetre", () => {
  cited(
    "the constant 0.85 in metric units",
    published(sweetGeorgia, "whole article", "0.236", "0.2356947835249939596385235378185408849"),
    diametersPerCentimetre,
    [{ constant: 0.85, metresPerKilogram: 1 }],
    null,
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
    diametersPerCentimetre,
    [{ constant: 0.91, metresPerKilogram: 1 }],
    null,
  );
  cited(
    "the constant of the 0.9 rule for cotton counts",
    published(settArticle, "whole article", "26.1", "26.08447814314098943269359548290558910"),
    diametersPerInch,
    [{ constant: 0.9, yardsPerPound: 840 }],
    null,
  );

  it("are those per inch, in centimetres", () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 90000 }), (yield_) => {
        const metresPerKilogram = (yield_ * 0.9144) / 0.45359237;
        const perInch = diametersPerInch({ constant: 0.9, yardsPerPound: yield_ });
        expect(2.54 * diametersPerCentimetre({ constant: 0.9, metresPerKilogram })).toBeCloseTo(perInch, 8);
      }),
    );
  });

  it("are refused without a constant: none is assumed", () => {
    expect(() => diametersPerCentimetre({ metresPerKilogram: 6773 } as never)).toThrow(QuantityError);
    expect(() => diametersPerCentimetre({ constant: 0.9, metresPerKilogram: 0 })).toThrow(QuantityError);
  });
});
