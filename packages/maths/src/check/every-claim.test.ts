import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calculations, unitOf, validInput } from "#ci/inputs.js";
import { linesInFractions, NoValue } from "#ci/rational.js";
import type { Fraction } from "#ci/rational.js";
import type { Quantity } from "../engine/quantity/index.js";
import { QuantityError } from "../engine/refusal.js";
import { check } from "./index.js";

/** A fraction rounded half up to so many decimals, in whole numbers. */
function rounded([over, under]: Fraction, decimals: number): string {
  const scale = 10n ** BigInt(decimals);
  const twice = 2n * over * scale + under;
  const steps = twice / (2n * under) - BigInt(twice < 0n && twice % (2n * under) !== 0n);
  const text = String(steps < 0n ? -steps : steps).padStart(decimals + 1, "0");
  const point = decimals === 0 ? text : `${text.slice(0, -decimals)}.${text.slice(-decimals)}`;
  return steps < 0n ? `-${point}` : point;
}

// A root is no fraction, and a count of hanks comes in the unit of the input, not in metres: those are left to their own tests.
const exactly = calculations.filter(([, { declaration }]) => {
  const own = typeof declaration.resultIn === "string" ? declaration.inputs[declaration.resultIn] : undefined;
  return !declaration.formula.includes("√") && own?.what !== "unit";
});

describe.each(exactly)("%s", (_name, calculation) => {
  it("accuses no answer that fractions give, rounded to any number of digits", () => {
    fc.assert(
      fc.property(validInput(calculation), fc.nat({ max: 4 }), (input, decimals) => {
        let answer: unknown;
        let last: unknown;
        try {
          answer = calculation(input);
          const { lines } = calculation.declaration;
          last = linesInFractions(calculation.declaration, input).get(lines.at(-1)?.name ?? "");
        } catch (error) {
          expect(error instanceof QuantityError || error instanceof NoValue).toBe(true);
          return;
        }
        const [over, under] = last as Fraction;
        const unit = typeof answer === "number" ? null : unitOf(answer as Quantity<string>);
        const [n, d] = unit === null ? [1n, 1n] : [BigInt(unit.scale[0]), BigInt(unit.scale[1])];
        const fraction: Fraction = [over * d, under * n];
        if (Number(fraction[0] / fraction[1]) > 1e12) return;
        const verdict = check(calculation as never, input as never, { written: rounded(fraction, decimals), unit });
        expect(verdict).toMatchObject({ right: true, value: "right", slips: [], tellApart: null, cost: null });
      }),
      { numRuns: 4, seed: 6 },
    );
  });
});
