import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { settSinglePage, textileNotes } from "#ci/sources.js";
import { diametersPerInch, endsPerInch, yardsPerPound } from "../../units/index.js";
import { diametersByConstant } from "./diameters-by-constant.js";
import { settByDiameter } from "./sett-by-diameter.js";

describe("threads laid touching", () => {
  cited(
    "8/2 cotton in plain weave",
    { source: settSinglePage, at: "whole page", status: "read", prints: "26", exact: "26.0844781431409894326935955" },
    settByDiameter,
    [{ constant: 0.9, count: yardsPerPound(3360), ends: 2, intersections: 2 }],
    endsPerInch,
  );
  cited(
    "8/2 cotton in 2/2 twill",
    {
      source: settSinglePage,
      at: "whole page",
      status: "read",
      prints: "34",
      exact: "34.7793041908546525769247940",
      differs: "cut off, not rounded, from 52 diameters",
    },
    settByDiameter,
    [{ constant: 0.9, count: yardsPerPound(3360), ends: 4, intersections: 2 }],
    endsPerInch,
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
    [{ constant: 0.9, count: yardsPerPound(42000), ends: 2, intersections: 2 }],
    endsPerInch,
  );

  it("lie closer in a weave with fewer intersections", () => {
    const yarn = { constant: 0.9, count: yardsPerPound(3360) };
    const plain = settByDiameter({ ...yarn, ends: 2, intersections: 2 }).in(endsPerInch);
    expect(settByDiameter({ ...yarn, ends: 4, intersections: 2 }).in(endsPerInch)).toBeGreaterThan(plain);
    expect(plain).toBeCloseTo(diametersByConstant(yarn).in(diametersPerInch) / 2, 12);
  });

  it("are refused for a weave without intersections, a yarn of no length and a number that is none", () => {
    const input = { constant: 0.9, count: yardsPerPound(3360), ends: 2, intersections: 2 };
    expect(() => settByDiameter({ ...input, intersections: 0 })).toThrow("intersections");
    expect(() => settByDiameter({ ...input, count: yardsPerPound(0) })).toThrow("count");
    expect(() => settByDiameter({ ...input, constant: Number.NaN })).toThrow("constant");
  });
});
