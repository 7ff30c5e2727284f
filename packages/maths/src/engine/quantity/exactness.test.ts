import { Decimal as HostDecimal } from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allUnits } from "#ci/inputs.js";
import { endsForWidth, reedWidth } from "../../handbook/index.js";
import { centimetres, endsPerInch, feet, inches, metres, millimetres, yards } from "../../units/index.js";
import { compare, equal, inUnit } from "./index.js";
import type { Quantity, Unit } from "./index.js";

/** The double nearest to a fraction of whole numbers, by way of fifty of its digits. */
function nearest(over: bigint, under: bigint): number {
  const places = 50 + Math.max(0, String(under).length - String(over).length);
  return Number(`${String((over * 10n ** BigInt(places)) / under)}e-${String(places)}`);
}

const amounts = fc.record({ digits: fc.integer({ min: 1, max: 10 ** 12 }), places: fc.nat({ max: 9 }) });
const lengths = [yards, feet, inches, metres, centimetres, millimetres];

describe("every unit of a kind", () => {
  it("is read in every other as whole-number fractions have it, rounded once", () => {
    let pairs = 0;
    for (const from of allUnits) {
      for (const to of allUnits.filter(({ dimension }) => dimension === from.dimension)) {
        pairs += 1;
        for (const { digits, places } of fc.sample(amounts, { numRuns: 8, seed: pairs })) {
          const value = new HostDecimal(digits).div(10 ** places).toFixed();
          const over = BigInt(digits) * BigInt(from.scale[0]) * BigInt(to.scale[1]);
          const under = 10n ** BigInt(places) * BigInt(from.scale[1]) * BigInt(to.scale[0]);
          expect(from(value).in(to), `${value} ${from.name} in ${to.name}`).toBe(nearest(over, under));
        }
      }
    }
    expect(pairs).toBeGreaterThan(300);
  });

  it("comes back the same from every other", () => {
    for (const from of allUnits) {
      for (const to of allUnits.filter(({ dimension }) => dimension === from.dimension)) {
        for (const amount of ["1", "7", "0.1", "12.375", "999.999"]) {
          const there = from(amount);
          expect(inUnit(inUnit(there, to), from).value, `${amount} ${from.name} by ${to.name}`).toBe(amount);
          expect(equal(inUnit(there, to), there)).toBe(true);
        }
      }
    }
  });

  it("has a size in lowest terms that a double holds exactly", () => {
    for (const { name, scale } of allUnits) {
      for (const part of scale) expect(Number.isSafeInteger(part) && part > 0, name).toBe(true);
    }
  });
});

describe("the order of lengths", () => {
  it("is that of whole-number fractions, whatever their units", () => {
    const length = fc.record({ unit: fc.constantFrom(...lengths), n: fc.integer({ min: -5000, max: 5000 }) });
    const size = ({ unit, n }: { unit: Unit<"length">; n: number }, other: Unit<"length">): bigint =>
      BigInt(n) * BigInt(unit.scale[0]) * BigInt(other.scale[1]);
    fc.assert(
      fc.property(length, length, (a, b) => {
        const [x, y] = [size(a, b.unit), size(b, a.unit)];
        expect(compare(a.unit(a.n / 8), b.unit(b.n / 8))).toBe(x < y ? -1 : x > y ? 1 : 0);
      }),
      { numRuns: 1000 },
    );
  });

  it("sorts a mixed list, equal lengths among them, and never calls unlike ones equal", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.constantFrom(...lengths), fc.nat({ max: 400 })), { maxLength: 30 }), (list) => {
        const sorted: Quantity<"length">[] = list.map(([unit, n]) => unit(n / 10)).sort(compare);
        for (const [at, one] of sorted.entries()) {
          const next = sorted[at + 1];
          if (next === undefined) continue;
          expect(one.in(millimetres)).toBeLessThanOrEqual(next.in(millimetres));
          expect(equal(one, next)).toBe(one.in(millimetres) === next.in(millimetres));
        }
      }),
    );
  });
});

describe("ends spread over a width and counted back", () => {
  it("are as many again, 22,500 times out of 22,500, where forty bare digits fail a thousand times", () => {
    const Forty = HostDecimal.clone({ defaults: true, precision: 40 });
    let wrong = 0;
    let wrongBare = 0;
    for (let ends = 1; ends <= 150; ends++) {
      for (let perInch = 1; perInch <= 150; perInch++) {
        const sett = endsPerInch(perInch);
        const widthInReed = reedWidth({ ends, sett });
        if (endsForWidth({ sett, widthInReed, threadingRepeat: 1, balanceEnds: 0 }) !== ends) wrong += 1;
        const bare = new Forty(ends).div(perInch).times(perInch);
        if (!bare.floor().eq(ends) || !bare.ceil().eq(ends)) wrongBare += 1;
      }
    }
    expect(wrong).toBe(0);
    expect(wrongBare).toBeGreaterThan(1000);
  });
});
