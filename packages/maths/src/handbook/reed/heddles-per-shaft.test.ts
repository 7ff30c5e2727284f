import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
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
  it("add up to the heddles of all the parts, in whatever order the parts stand", () => {
    const part = fc.record({
      threading: fc.array(fc.integer({ min: 1, max: 8 }), { minLength: 1, maxLength: 12 }),
      times: fc.integer({ min: 0, max: 90 }),
    });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const { onEach, heddles } = heddlesPerShaft({ shafts: 8, parts });
        expect(onEach.reduce((total, one) => total + one, 0)).toBe(heddles);
        expect(heddles).toBe(parts.reduce((total, { threading, times }) => total + threading.length * times, 0));
        expect(heddlesPerShaft({ shafts: 8, parts: [...parts].reverse() }).onEach).toEqual(onEach);
      }),
    );
  });
  it("are none of a part that stands no time, and a million at the most", () => {
    expect(heddlesPerShaft({ shafts: 1, parts: [{ threading: [1], times: 0 }] })).toEqual({ onEach: [0], heddles: 0 });
    // 2 × 499,999 + 2 is a million; a heddle more is past it.
    const full = [
      { threading: [1, 2], times: 499_999 },
      { threading: [2, 2], times: 1 },
    ];
    expect(heddlesPerShaft({ shafts: 2, parts: full }).onEach).toEqual([499_999, 500_001]);
    const over = [...full, { threading: [1], times: 1 }];
    expect(codesOf(heddlesPerShaft, { shafts: 2, parts: over })).toEqual(["out-of-range parts"]);
  });
  it.each([
    [
      "a shaft the loom has not",
      { parts: [{ threading: [1, 2, 3, 5], times: 1 }] },
      "out-of-range parts.0.threading.3",
    ],
    ["an empty threading", { parts: [{ threading: [], times: 1 }] }, "empty parts.0.threading"],
    ["a part of a time", { parts: [{ threading: [1], times: 0.5 }] }, "not-whole parts.0.times"],
    ["no parts", { parts: [] }, "empty parts"],
    ["a field too many", { more: 1 }, "unknown-field more"],
    ["more shafts than any loom has", { shafts: 1001 }, "out-of-range shafts"],
  ])("are refused for %s", (_, change, code) => {
    const sound = { shafts: 4, parts: [{ threading: [1, 2, 3, 4], times: 1 }] };
    expect(codesOf(heddlesPerShaft, { ...sound, ...change })).toEqual([code]);
  });
});
