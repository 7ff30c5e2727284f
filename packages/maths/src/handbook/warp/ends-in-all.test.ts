import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { endsInAll } from "./ends-in-all.js";

describe("ends to wind", () => {
  cited("368 of the cloth and three beside", byHand(commonPractice, "371"), endsInAll, [{ ends: 368, beside: 3 }]);

  it("are those of the cloth where none is wound beside them", () => {
    fc.assert(
      fc.property(fc.nat(5000), (ends) => {
        expect(endsInAll({ ends, beside: 0 })).toBe(ends);
      }),
    );
  });
  it("are refused where half an end is wound beside", () => {
    expect(() => endsInAll({ ends: 368, beside: 0.5 })).toThrow("a whole number of ends");
  });
});
