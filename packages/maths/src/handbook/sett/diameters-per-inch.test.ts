import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { settArticle, settPage, taylor1909 } from "../../sources/index.js";
import { diametersPerCentimetre } from "../yarn/diameters-per-centimetre.js";
import { diametersPerInch } from "./diameters-per-inch.js";

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
    diametersPerInch,
    [{ constant: 0.95, yardsPerPound: 12600 }],
    null,
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
    diametersPerInch,
    [{ constant: 0.95, yardsPerPound: 21840 }],
    null,
  );
  cited(
    "60s cotton in the table of diameters",
    { source: taylor1909, at: "site page 453", status: "read", prints: "213", exact: "213.2744710461146589782736777" },
    diametersPerInch,
    [{ constant: 0.95, yardsPerPound: 50400 }],
    null,
  );
  cited(
    "78s cotton in the table of diameters",
    { source: taylor1909, at: "site page 453", status: "read", prints: "243", exact: "243.1703106877975759601048633" },
    diametersPerInch,
    [{ constant: 0.95, yardsPerPound: 65520 }],
    null,
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
    diametersPerInch,
    [{ constant: 0.95, yardsPerPound: 168000 }],
    null,
  );
  cited(
    "32s cotton",
    { source: taylor1909, at: "site page 458", status: "read", prints: "156", exact: "155.7536516425858954249597879" },
    diametersPerInch,
    [{ constant: 0.95, yardsPerPound: 26880 }],
    null,
  );
  cited(
    "46s cotton by the 0.9 rule",
    { source: settArticle, at: "whole article", status: "read", prints: "177", exact: "176.9135382044008524611052985" },
    diametersPerInch,
    [{ constant: 0.9, yardsPerPound: 38640 }],
    null,
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
    diametersPerInch,
    [{ constant: 0.9, yardsPerPound: 16800 }],
    null,
  );
  cited(
    "8/2 cotton by the 0.9 rule",
    { source: settPage, at: "whole page", status: "read", prints: "52", exact: "52.1689562862819788653871910" },
    diametersPerInch,
    [{ constant: 0.9, yardsPerPound: 3360 }],
    null,
  );
  it("grow with the square root of the yards per pound", () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 100000 }), (yardsPerPound) => {
        const once = diametersPerInch({ constant: 0.9, yardsPerPound });
        expect(diametersPerInch({ constant: 0.9, yardsPerPound: 4 * yardsPerPound })).toBeCloseTo(2 * once, 9);
      }),
    );
  });
});

describe("diameters per centimetre", () => {
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
});
