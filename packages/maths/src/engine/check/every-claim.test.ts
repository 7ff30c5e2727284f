import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculations, unitOf, validInput } from "#ci/inputs.js";
import type { Quantity } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import { check } from "./index.js";

describe.each(calculations)("%s", (_name, calculation) => {
  it("accuses no claim that is right, at any number of digits", () => {
    fc.assert(
      fc.property(validInput(calculation), fc.nat({ max: 4 }), (input, digits) => {
        let answer: unknown;
        try {
          answer = calculation(input);
        } catch (error) {
          expect(error).toBeInstanceOf(QuantityError);
          return;
        }
        const unit = typeof answer === "number" ? null : unitOf(answer as Quantity<string>);
        const size = typeof answer === "number" ? answer : Number((answer as Quantity<string>).value);
        if (Math.abs(size) > 1e12) return;
        const claim = { written: (0).toFixed(digits), unit } as never;
        const { rounded } = check(calculation as never, input as never, claim);
        const verdict = check(calculation as never, input as never, { written: rounded, unit });
        expect(verdict).toMatchObject({ right: true, value: "right", slips: [], tellApart: null, cost: null });
      }),
      { numRuns: 4, seed: 6 },
    );
  });
});
