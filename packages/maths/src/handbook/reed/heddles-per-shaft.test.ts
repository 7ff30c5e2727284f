import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { brooks1892, handwovenHeddles2022, lynneRides2017 } from "#ci/sources.js";
import { heddlesPerShaft } from "./heddles-per-shaft.js";

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
    expect(() => heddlesPerShaft({ shafts: 4, parts: [{ threading: [], times: 1 }] })).toThrow("threading");
    expect(() => heddlesPerShaft({ shafts: 4, parts: [{ threading: [1], times: 0.5 }] })).toThrow("times");
    expect(() => heddlesPerShaft({ shafts: 4, parts: [] })).toThrow("parts");
    expect(() => heddlesPerShaft({ shafts: 4, parts, more: 1 } as never)).toThrow(/more/u);
  });
});
