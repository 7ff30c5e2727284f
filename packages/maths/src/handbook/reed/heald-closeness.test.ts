import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { wolfensberger1921 } from "#ci/sources.js";
import { heddlesPerCentimetre, heddlesPerInch, inches } from "../../units/index.js";
import { healdCloseness } from "./heald-closeness.js";

describe("closeness of the heddles", () => {
  const rows: readonly (readonly [title: string, Citation, heddles: number, shafts: number, width: string])[] = [
    ["taffeta on six shafts", published(wolfensberger1921, "p. 76, disposition 1", "35", "663/19"), 3978, 6, "19"],
    ["surah on four shafts", published(wolfensberger1921, "p. 80, disposition 2", "40", "479/12"), 3832, 4, "24"],
    [
      "satin duchesse on eight shafts",
      published(wolfensberger1921, "p. 85, disposition 3", "33", "1546/47"),
      12368,
      8,
      "47",
    ],
    ["armure on six shafts", published(wolfensberger1921, "p. 88, disposition 4", "40", "4688/117"), 4688, 6, "19.5"],
    [
      "double ends on twelve shafts",
      published(wolfensberger1921, "p. 92, disposition 5", "8 2/3", "968/111", "called 8 2/3, exactly 8.72"),
      1936,
      12,
      "18.5",
    ],
    [
      "pekin stripe on eight shafts, the binders left out",
      published(wolfensberger1921, "p. 98, disposition 6", "40", "1659/41"),
      6636,
      8,
      "20.5",
    ],
    ["an inch of 100 threads on four shafts", published(wolfensberger1921, "pp. 70 and 71", "25", "25"), 100, 4, "1"],
  ];
  for (const [title, citation, heddles, shafts, width] of rows) {
    cited(title, citation, healdCloseness, [{ heddles, shafts, width: inches(width) }], heddlesPerInch);
  }
  it("reads to the centimetre as well", () => {
    expect(healdCloseness({ heddles: 254, shafts: 2, width: inches(10) }).in(heddlesPerCentimetre)).toBe(5);
  });
});

describe("the limits of heald closeness", () => {
  limits(
    healdCloseness,
    ["is one for one heddle on one shaft an inch wide", { heddles: 1, shafts: 1, width: inches(1) }, 1, heddlesPerInch],
    { heddles: 0, shafts: 0, width: inches(0) },
  );
});
