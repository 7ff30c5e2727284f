import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import { settArticle, settPage, taylor1909, textileNotes } from "../../sources/index.js";
import { diametersPerInch } from "./diameters-per-inch.js";
import { settByDiameter } from "./sett-by-diameter.js";

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
  cited(
    "8/2 cotton in plain weave",
    { source: settPage, at: "whole page", status: "read", prints: "26", exact: "26.0844781431409894326935955" },
    settByDiameter,
    [{ constant: 0.9, yardsPerPound: 3360, ends: 2, intersections: 2 }],
    null,
  );
  cited(
    "8/2 cotton in 2/2 twill",
    {
      source: settPage,
      at: "whole page",
      status: "read",
      prints: "34",
      exact: "34.7793041908546525769247940",
      differs: "cut off, not rounded, from 52 diameters",
    },
    settByDiameter,
    [{ constant: 0.9, yardsPerPound: 3360, ends: 4, intersections: 2 }],
    null,
  );
  cited(
    "50s cotton in plain weave",
    {
      source: textileNotes,
      at: "whole article",
      status: "read",
      prints: "184",
      exact: "92.2225568936363854489893481",
      differs: "misprint: the number of diameters is printed as the sett",
    },
    settByDiameter,
    [{ constant: 0.9, yardsPerPound: 42000, ends: 2, intersections: 2 }],
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

  it("lie closer in a weave with fewer intersections", () => {
    const yarn = { constant: 0.9, yardsPerPound: 3360 };
    const plain = settByDiameter({ ...yarn, ends: 2, intersections: 2 });
    expect(settByDiameter({ ...yarn, ends: 4, intersections: 2 })).toBeGreaterThan(plain);
    expect(plain).toBeCloseTo(diametersPerInch(yarn) / 2, 12);
  });

  it("are refused for a weave without intersections, a yarn of no length and a number that is none", () => {
    const input = { constant: 0.9, yardsPerPound: 3360, ends: 2, intersections: 2 };
    expect(() => settByDiameter({ ...input, intersections: 0 })).toThrow(QuantityError);
    expect(() => settByDiameter({ ...input, yardsPerPound: 0 })).toThrow(QuantityError);
    expect(() => settByDiameter({ ...input, constant: Number.NaN })).toThrow(QuantityError);
  });
});
