import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { wovenFabricCalculation } from "#ci/sources.js";
import { cottonCount, endsPerCentimetre, endsPerInch, picksPerInch, tex } from "../../units/index.js";
import { convertCount } from "../yarn/index.js";
import { coverFactorByPeirce } from "./cover-factor-by-peirce.js";
import { coverFactorFromTexCover } from "./cover-factor-from-tex-cover.js";
import { texCoverFactor } from "./tex-cover-factor.js";

describe("cover factors", () => {
  cited(
    "20 tex, 28 to the centimetre, on the scale of Peirce",
    published(
      wovenFabricCalculation,
      "page 1, cover factor",
      "12.9",
      "13.08825136605118900969595079502020216516",
      "misprint: the 71 ÷ √29.5 printed beside it is 13.07",
    ),
    coverFactorByPeirce,
    [{ threads: endsPerCentimetre(28), count: cottonCount(32399455 / 54864 / 20) }],
    null,
  );
  cited(
    "plain cloth that jams",
    published(
      wovenFabricCalculation,
      "page 1, cover factor",
      "16",
      "16.16580753730952140625616585405480875813",
      "misprint: 28 ÷ √3 is 16.17; the page gives 16 as where a cloth jams and does not name the scale",
    ),
    coverFactorByPeirce,
    [{ threads: endsPerInch(28), count: cottonCount(3) }],
    null,
  );
  it("on the two scales keep one ratio, whatever the yarn", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 60 }), (thickness, ends) => {
        const threads = endsPerCentimetre(ends);
        const peirce = coverFactorByPeirce({ threads, count: convertCount(tex(thickness), cottonCount).count });
        const texCover = texCoverFactor({ threads, count: tex(thickness) });
        expect(coverFactorFromTexCover({ texCover }) / peirce).toBeCloseTo(1, 12);
      }),
    );
  });

  it("take ends and picks alike, and refuse a number and the other kind of count", () => {
    const count = cottonCount(25);
    expect(coverFactorByPeirce({ threads: picksPerInch(60), count })).toBe(12);
    // @ts-expect-error [ts2322] a number is no sett
    expect(() => coverFactorByPeirce({ threads: 60, count })).toThrow("expected ends or picks in a length");
    // @ts-expect-error [ts2322] tex is a direct count
    expect(() => coverFactorByPeirce({ threads: picksPerInch(60), count: tex(30) })).toThrow("an indirect count");
  });
});
