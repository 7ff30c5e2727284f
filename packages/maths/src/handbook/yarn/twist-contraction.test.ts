import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { mallikerta, textileNotes } from "#ci/sources.js";
import { cottonCount, metresPerKilogram, percentLost, tex, yardsPerPound } from "../../units/index.js";
import { contractedCount } from "./contracted-count.js";
import { twistContraction } from "./twist-contraction.js";

describe("twist contraction of a yarn in an indirect count", () => {
  cited(
    "24s cotton, five-fold then three-fold, marked R 1.4",
    published(textileNotes, "Designation of yarns after the ASTM practice", "R 1.4", "12.5"),
    twistContraction,
    [{ nominal: cottonCount("1.6"), measured: cottonCount("1.4") }],
    percentLost,
  );
  cited(
    "30 tex twelve-fold, sold at 2560 metres to the kilogram",
    published(mallikerta, "Pohja-en-4", "2560 m/kg", "7.84"),
    twistContraction,
    [{ nominal: metresPerKilogram("2777.777777777777777777777777777777778"), measured: metresPerKilogram(2560) }],
    percentLost,
  );

  it("is what makes the count worked out into the count measured", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 90 }), (number, lost) => {
        const nominal = cottonCount(number);
        const measured = contractedCount({ count: nominal, plies: 1, contraction: percentLost(lost) });
        expect(twistContraction({ nominal, measured }).in(percentLost)).toBeCloseTo(lost, 9);
      }),
    );
  });

  it("of a yarn that came out as reckoned is nothing", () => {
    expect(twistContraction({ nominal: cottonCount(4), measured: yardsPerPound(3360) }).value).toBe("0");
  });

  it("is refused where the yarn came out finer than its singles folded", () => {
    expect(() => twistContraction({ nominal: cottonCount(4), measured: cottonCount(5) })).toThrow(
      "twistContraction(…)",
    );
    expect(() => twistContraction({ nominal: cottonCount(4), measured: tex(5) as never })).toThrow("measured");
  });
});
