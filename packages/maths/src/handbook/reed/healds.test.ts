import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import { brooks1892, handwovenHeddles2022, lynneRides2017, wolfensberger1921 } from "../../sources/index.js";
import { endsPerInch, heddlesPerCentimetre, heddlesPerInch, inches, stockportHeald } from "../../units/index.js";
import { healdClosenessOfShaft } from "./heald-closeness-of-shaft.js";
import { healdCloseness } from "./heald-closeness.js";
import { heddlesPerShaft } from "./heddles-per-shaft.js";

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

  it("is refused for no shafts", () => {
    expect(() => healdCloseness({ heddles: 400, shafts: 0, width: inches(20) })).toThrow(QuantityError);
  });
});

describe("closeness of the heddles on one shaft of an uneven draft", () => {
  const brooksDraft = [1, 2, 3, 4, 2];
  for (const [at, heddlesInRepeat] of brooksDraft.entries()) {
    const shaft = `shaft ${String(at + 1)} of Brooks's draft`;
    const input = { sett: endsPerInch(60), heddlesInRepeat, endsInRepeat: 12 };
    const perInch = String(5 * heddlesInRepeat);
    cited(
      shaft,
      published(brooks1892, "p. 93 of the copy", perInch, perInch),
      healdClosenessOfShaft,
      [input],
      heddlesPerInch,
    );
    const number = String(20 * heddlesInRepeat);
    cited(
      `${shaft} as a Stockport number`,
      published(brooks1892, "p. 93 of the copy", number, number),
      healdClosenessOfShaft,
      [input],
      stockportHeald,
    );
  }
});

describe("heddles on each shaft", () => {
  const straight = (shafts: number): readonly number[] => Array.from({ length: shafts }, (_, at) => at + 1);
  cited(
    "400 ends drawn straight on eight shafts",
    published(handwovenHeddles2022, "example", "50", "50"),
    heddlesPerShaft,
    [{ shafts: 8, parts: [{ threading: straight(8), times: 50 }] }],
    "onEach.0",
  );
  cited(
    "2000 ends drawn straight on four healds",
    published(brooks1892, "p. 51, ch. III", "500", "500"),
    heddlesPerShaft,
    [{ shafts: 4, parts: [{ threading: straight(4), times: 500 }] }],
    "onEach.3",
  );
  const block = (
    pattern: number,
    times: number,
  ): { readonly threading: readonly number[]; readonly times: number } => ({
    threading: [1, pattern, 2, pattern],
    times,
  });
  cited(
    "six blocks on eight shafts",
    published(lynneRides2017, "whole post", "109 109 12 42 24 36 32 72", "109,109,12,42,24,36,32,72"),
    heddlesPerShaft,
    [{ shafts: 8, parts: [block(3, 6), block(4, 21), block(5, 12), block(6, 18), block(7, 16), block(8, 36)] }],
    "onEach",
  );

  it("counts the border once and the repeat as often as it stands", () => {
    const point = { threading: [1, 2, 3, 4, 3, 2], times: 60 };
    expect(heddlesPerShaft({ shafts: 4, parts: [point, { threading: [1], times: 1 }] })).toEqual({
      onEach: [61, 120, 120, 60],
      heddles: 361,
    });
  });

  it("leaves unused shafts at none", () => {
    expect(heddlesPerShaft({ shafts: 4, parts: [{ threading: [1, 3], times: 2 }] }).onEach).toEqual([2, 0, 2, 0]);
  });

  it("refuses a shaft the loom has not, an empty threading, a part of a time and no parts", () => {
    const parts = [{ threading: [1, 2, 3, 5], times: 1 }];
    expect(() => heddlesPerShaft({ shafts: 4, parts })).toThrow(/threading.*3/u);
    expect(() => heddlesPerShaft({ shafts: 4, parts: [{ threading: [], times: 1 }] })).toThrow(QuantityError);
    expect(() => heddlesPerShaft({ shafts: 4, parts: [{ threading: [1], times: 0.5 }] })).toThrow(QuantityError);
    expect(() => heddlesPerShaft({ shafts: 4, parts: [] })).toThrow(QuantityError);
    expect(() => heddlesPerShaft({ shafts: 4, parts, more: 1 } as never)).toThrow(/more/u);
  });
});
