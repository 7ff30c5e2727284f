import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import { fabricGeometry, gateTextile, textileSchoolWeaving, wovenCalculation } from "../../sources/index.js";
import { millimetres, percentOf } from "../../units/index.js";
import { clothCoverFactor } from "./cloth-cover-factor.js";
import { coverByPeirce } from "./cover-by-peirce.js";
import { diameterByCoefficient } from "./diameter-by-coefficient.js";
import { peirceCoverFactor } from "./peirce-cover-factor.js";
import { peirceFromTexCover } from "./peirce-from-tex-cover.js";
import { texCoverFactor } from "./tex-cover-factor.js";
import { texFromDiameter } from "./tex-from-diameter.js";
import { threadCover } from "./thread-cover.js";
import { totalCover } from "./total-cover.js";

describe("cover factors", () => {
  cited(
    "20 tex, 28 to the centimetre, on the tex scale",
    published(wovenCalculation, "page 1, cover factor", "12.5", "12.52198067399882229989137254489514691847"),
    texCoverFactor,
    [{ threadsPerCentimetre: 28, tex: 20 }],
    null,
  );
  cited(
    "20 tex, 28 to the centimetre, on the scale of Peirce",
    published(
      wovenCalculation,
      "page 1, cover factor",
      "12.9",
      "13.08825136605118900969595079502020216516",
      "misprint: the 71 ÷ √29.5 printed beside it is 13.07",
    ),
    peirceCoverFactor,
    [{ threadsPerInch: 71.12, cottonCount: 32399455 / 54864 / 20 }],
    null,
  );
  cited(
    "the scale of Peirce over the tex scale",
    published(wovenCalculation, "page 1, cover factor", "less than 5 %", "1.045222134324819352290040513701112439293"),
    peirceFromTexCover,
    [{ texCover: 1 }],
    null,
  );
  cited(
    "warp of 14 and weft of 12",
    published(
      textileSchoolWeaving,
      "items 1 to 7, the formula",
      "K1 + K2 − (K1 − K2)/28",
      "20",
      "misprint: a minus sign for the product; as printed 14 and 12 would come to 25.93",
    ),
    clothCoverFactor,
    [{ warpCover: 14, weftCover: 12 }],
    null,
  );
  cited(
    "plain cloth that jams",
    published(
      wovenCalculation,
      "page 1, cover factor",
      "16",
      "16.16580753730952140625616585405480875813",
      "misprint: 28 ÷ √3 is 16.17; the page gives 16 as where a cloth jams and does not name the scale",
    ),
    peirceCoverFactor,
    [{ threadsPerInch: 28, cottonCount: 3 }],
    null,
  );

  it("are 28 in all where one set lies touching, whatever the other does", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 28 }), (weftCover) => {
        expect(clothCoverFactor({ warpCover: 28, weftCover })).toBeCloseTo(28, 9);
      }),
    );
  });

  it("on the two scales keep one ratio, whatever the yarn", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 60 }), (tex, threadsPerCentimetre) => {
        const cottonCount = 32399455 / 54864 / tex;
        const peirce = peirceCoverFactor({ threadsPerInch: 2.54 * threadsPerCentimetre, cottonCount });
        const texCover = texCoverFactor({ threadsPerCentimetre, tex });
        expect(peirceFromTexCover({ texCover }) / peirce).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe("the cover of a cloth", () => {
  cited(
    "35 ends of 30s to the centimetre",
    published(gateTextile, "2003, Q75, working", "0.58 of the cloth", "57.96730400263008034086263534641822584333"),
    coverByPeirce,
    [{ threadsPerInch: 88.9, cottonCount: 30 }],
    percentOf,
  );
  cited(
    "30 picks of 35s to the centimetre",
    published(
      gateTextile,
      "2003, Q75, working",
      "0.54 of the cloth",
      "46.00053872165211657588065467520359378462",
      "misprint: it multiplies by 35 where 30 picks are given",
    ),
    coverByPeirce,
    [{ threadsPerInch: 76.2, cottonCount: 35 }],
    percentOf,
  );
  cited(
    "those ends and picks together",
    published(
      gateTextile,
      "2003, Q75",
      "80.6",
      "77.30257060065454955315908370104444766567",
      "misprint: it carries on with 35 picks where 30 are given",
    ),
    totalCover,
    [
      {
        warpCover: percentOf("57.96730400263008034086263534641822584333"),
        weftCover: percentOf("46.00053872165211657588065467520359378462"),
      },
    ],
    percentOf,
  );
  cited(
    "warp and weft of 42 % each",
    published(gateTextile, "2007, Q85, working", "66.4", "66.36"),
    totalCover,
    [{ warpCover: percentOf(42), weftCover: percentOf(42) }],
    percentOf,
  );
  cited(
    "a flattened warp of 0.4 mm, 0.8 mm apart",
    published(gateTextile, "2011, Q45, working", "0.625 of the cloth", "62.5"),
    threadCover,
    [{ diameter: millimetres("0.4"), spacing: millimetres("0.8"), flattening: percentOf(80) }],
    percentOf,
  );
  cited(
    "a flattened weft of 0.6 mm, 1.2 mm apart",
    published(gateTextile, "2011, Q45, working", "0.625 of the cloth", "62.5"),
    threadCover,
    [{ diameter: millimetres("0.6"), spacing: millimetres("1.2"), flattening: percentOf(80) }],
    percentOf,
  );
  cited(
    "that warp and weft together",
    published(gateTextile, "2011, Q45", "0.86 of the cloth", "85.9375"),
    totalCover,
    [{ warpCover: percentOf("62.5"), weftCover: percentOf("62.5") }],
    percentOf,
  );
  cited(
    "one thread of one tex cotton to the centimetre",
    published(
      fabricGeometry,
      "section 11.2",
      "n × √tex ÷ 266",
      "0.3740540515585688920257902093582481436",
      "the density of 0.91 stated beside it makes the constant 267.3, where 266 is printed",
    ),
    threadCover,
    [
      {
        diameter: millimetres("0.03740540515585688920257902093582481436"),
        spacing: millimetres(10),
        flattening: percentOf(100),
      },
    ],
    percentOf,
  );

  it("of warp and weft is at least that of either, and never more than all", () => {
    const shares = fc.integer({ min: 1, max: 100 });
    fc.assert(
      fc.property(shares, shares, (warp, weft) => {
        const both = totalCover({ warpCover: percentOf(warp), weftCover: percentOf(weft) }).in(percentOf);
        expect(both).toBeGreaterThanOrEqual(Math.max(warp, weft));
        expect(both).toBeLessThanOrEqual(100);
      }),
    );
  });

  it("is refused for a warp that hides more than all of it", () => {
    expect(() => totalCover({ warpCover: percentOf(101), weftCover: percentOf(40) })).toThrow(QuantityError);
    expect(() => coverByPeirce({ threadsPerInch: 0, cottonCount: 30 })).toThrow(QuantityError);
  });
});

describe("diameters by a coefficient", () => {
  cited(
    "15 tex of cotton",
    published(
      gateTextile,
      "2008, Q71, working",
      "0.01394",
      "0.0138569688032983756004969969627711974885",
      "misprint: 0.00444 × √(15 ÷ 1.54) is 0.01386",
    ),
    diameterByCoefficient,
    [{ coefficient: 0.00444, tex: 15, gramsPerCubicCentimetre: 1.54 }],
    null,
  );
  cited(
    "tex of a cotton yarn 0.01627 cm across",
    published(
      gateTextile,
      "2010, Q50, working",
      "20.47",
      "20.67901682087492898303709114519925330736",
      "misprint: 3.6644 is cut to 3.66 and its square printed as 13.29",
    ),
    texFromDiameter,
    [{ diameter: 0.01627, coefficient: 0.00444, gramsPerCubicCentimetre: 1.54 }],
    null,
  );

  it("come back from the tex they give", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (tex) => {
        const yarn = { coefficient: 0.00444, gramsPerCubicCentimetre: 1.54 };
        expect(texFromDiameter({ ...yarn, diameter: diameterByCoefficient({ ...yarn, tex }) })).toBeCloseTo(tex, 9);
      }),
    );
  });
});
