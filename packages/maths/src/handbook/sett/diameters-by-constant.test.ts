import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { settArticle, settSinglePage, taylor1909 } from "#ci/sources.js";
import { diametersPerCentimetre, diametersPerInch, metresPerKilogram, yardsPerPound } from "../../units/index.js";
import { diametersByConstant } from "./diameters-by-constant.js";

describe("threads laid touching", () => {
  cited(
    "15s cotton in the table of diameters",
    {
      source: taylor1909,
      at: "site page 453",
      status: "read",
      prints: "106.5",
      exact: "106.6372355230573294891368389",
      differs: "printed to the half thread",
    },
    diametersByConstant,
    [{ constant: 0.95, count: yardsPerPound(12600) }],
    diametersPerInch,
  );
  cited(
    "26s cotton in the table of diameters",
    {
      source: taylor1909,
      at: "site page 453",
      status: "read",
      prints: "140.5",
      exact: "140.3944443345248615682153241",
      differs: "printed to the half thread",
    },
    diametersByConstant,
    [{ constant: 0.95, count: yardsPerPound(21840) }],
    diametersPerInch,
  );
  cited(
    "60s cotton in the table of diameters",
    { source: taylor1909, at: "site page 453", status: "read", prints: "213", exact: "213.2744710461146589782736777" },
    diametersByConstant,
    [{ constant: 0.95, count: yardsPerPound(50400) }],
    diametersPerInch,
  );
  cited(
    "78s cotton in the table of diameters",
    { source: taylor1909, at: "site page 453", status: "read", prints: "243", exact: "243.1703106877975759601048633" },
    diametersByConstant,
    [{ constant: 0.95, count: yardsPerPound(65520) }],
    diametersPerInch,
  );
  cited(
    "200s cotton in the table of diameters",
    {
      source: taylor1909,
      at: "site page 453",
      status: "read",
      prints: "390",
      exact: "389.3841291064647385623994699",
      differs: "the table is scaled from 156 for 32s, not from the rule",
    },
    diametersByConstant,
    [{ constant: 0.95, count: yardsPerPound(168000) }],
    diametersPerInch,
  );
  cited(
    "32s cotton",
    { source: taylor1909, at: "site page 458", status: "read", prints: "156", exact: "155.7536516425858954249597879" },
    diametersByConstant,
    [{ constant: 0.95, count: yardsPerPound(26880) }],
    diametersPerInch,
  );
  cited(
    "46s cotton by the 0.9 rule",
    { source: settArticle, at: "whole article", status: "read", prints: "177", exact: "176.9135382044008524611052985" },
    diametersByConstant,
    [{ constant: 0.9, count: yardsPerPound(38640) }],
    diametersPerInch,
  );
  cited(
    "20s cotton by the 0.9 rule",
    {
      source: settArticle,
      at: "whole article",
      status: "read",
      prints: "118",
      exact: "116.6533325713414841573874138",
      differs: "misprint: 0.9 × √16800 is 116.65",
    },
    diametersByConstant,
    [{ constant: 0.9, count: yardsPerPound(16800) }],
    diametersPerInch,
  );
  cited(
    "8/2 cotton by the 0.9 rule",
    { source: settSinglePage, at: "whole page", status: "read", prints: "52", exact: "52.1689562862819788653871910" },
    diametersByConstant,
    [{ constant: 0.9, count: yardsPerPound(3360) }],
    diametersPerInch,
  );
  it("grow with the square root of the yards per pound", () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 100000 }), (yield_) => {
        const diameters = (by: number): number =>
          diametersByConstant({ constant: 0.9, count: yardsPerPound(by * yield_) }).in(diametersPerInch);
        expect(diameters(4)).toBeCloseTo(2 * diameters(1), 9);
      }),
    );
  });
});

describe("diameters per centimetre", () => {
  cited(
    "the constant of the 0.9 rule for cotton counts",
    published(settArticle, "whole article", "26.1", "26.08447814314098943269359548290558910"),
    diametersByConstant,
    [{ constant: 0.9, count: yardsPerPound(840) }],
    diametersPerInch,
  );
  it("are those per inch, in centimetres, of a count in any system", () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 90000 }), (yield_) => {
        const count = metresPerKilogram((yield_ * 0.9144) / 0.45359237);
        const perInch = diametersByConstant({ constant: 0.9, count: yardsPerPound(yield_) }).in(diametersPerInch);
        expect(2.54 * diametersByConstant({ constant: 0.9, count }).in(diametersPerCentimetre)).toBeCloseTo(perInch, 8);
      }),
    );
  });
});

describe("the limits of diameters by constant", () => {
  limits(
    diametersByConstant,
    [
      "are the constant itself for a yard to the pound",
      { constant: 0.9, count: yardsPerPound(1) },
      0.9,
      diametersPerInch,
    ],
    { constant: 0, count: yardsPerPound(0) },
  );
});
