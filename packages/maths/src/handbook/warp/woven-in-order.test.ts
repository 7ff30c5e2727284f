import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { inches } from "../../units/index.js";
import { wovenInOrder } from "./woven-in-order.js";

describe("length woven in all", () => {
  cited(
    "two of 3 1/2 inches and five of 20 1/4",
    byHand(commonPractice, "108.25"),
    wovenInOrder,
    [{ number: [2, 5], wovenLength: [inches("3.5"), inches("20.25")] }],
    inches,
  );

  it("is the same in whatever order the pieces are woven", () => {
    const row = fc.tuple(fc.nat(20), fc.integer({ min: 0, max: 90 }));
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), (rows) => {
        const woven = (order: typeof rows): number =>
          wovenInOrder({
            number: order.map(([number]) => number),
            wovenLength: order.map(([, length]) => inches(length)),
          }).in(inches);
        expect(woven(rows)).toBe(woven([...rows].reverse()));
        expect(woven(rows)).toBe(rows.reduce((total, [number, length]) => total + number * length, 0));
      }),
    );
  });
  it("is nothing for no piece, and refused where a length is missing", () => {
    expect(wovenInOrder({ number: [0], wovenLength: [inches(20)] }).in(inches)).toBe(0);
    expect(() => wovenInOrder({ number: [1, 6], wovenLength: [inches(20)] })).toThrow("a list of 2");
  });
});
