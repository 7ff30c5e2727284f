import { inspect } from "node:util";
import { build } from "esbuild";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { asText } from "../working/index.js";
import {
  centimetres,
  cottonCount,
  feet,
  grams,
  inches,
  metres,
  millimetres,
  percentLost,
  pounds,
  yards,
} from "../../units/index.js";
import { quantityFrom, tex } from "../../units/index.js";
import { compare, difference, equal, inUnit, ratio, sum, times } from "./index.js";
import type { Quantity, Unit } from "./index.js";

const lengths = [yards, feet, inches, metres, centimetres, millimetres];

describe("a quantity", () => {
  it("is a frozen plain thing with dimension, value and unit of its own", () => {
    const length = yards("2.50");
    expect(Object.keys(length)).toEqual(["dimension", "value", "unit"]);
    expect(Object.isFrozen(length)).toBe(true);
    expect({ ...length }).toEqual({ dimension: "length", value: "2.5", unit: "yards" });
  });

  it("goes out as JSON and comes back the same", () => {
    const back = quantityFrom(JSON.parse(JSON.stringify(inches("12.125"))), [yards, inches]);
    expect(equal(back, inches("12.125"))).toBe(true);
    const length = { dimension: "length", value: "1", unit: "inches" };
    for (const data of [{ ...length, value: "1e999" }, { value: "1" }, 3, null, { ...length, extra: 1 }])
      expect(() => quantityFrom(data, [inches])).toThrow("expected data with dimension, value and unit");
    expect(() => quantityFrom("12 yd", [inches])).toThrow('the text "yd" is none of them');
    expect(() => quantityFrom({ dimension: "length", value: "1", unit: "yards" }, [inches])).toThrow("one of inches");
  });

  it("prints itself in text and on a console, and refuses operators with the remedy", () => {
    expect(String(inches("12.5"))).toBe("12.5 in");
    expect(inspect(inches("12.5"))).toBe("12.5 in");
    expect(inspect(inches)).toBe("inches (in)");
    const [a, b] = [inches(1), inches(2)] as unknown as [number, number];
    for (const use of [() => a + b, () => a < b, () => -a, () => a * 2]) expect(use).toThrow("use sum, difference");
  });

  it("is made of a fraction as it is written, exactly where it ends", () => {
    expect(inches("9 1/4").value).toBe("9.25");
    expect(cottonCount("17 1/3").value).toBe("17.33333333333333333333333333333333");
    expect(percentLost("6/7").in(percentLost)).toBeCloseTo(0.857142857142857, 14);
    expect(inches("-1/2").value).toBe("-0.5");
  });

  it("made of anything but a finite number, decimal text or a fraction is refused", () => {
    for (const amount of [
      "1/0",
      "1/",
      "/2",
      "1 1 1/2",
      "1.5/2",
      "1/2/3",
      Number.NaN,
      Number.POSITIVE_INFINITY,
      "1e999",
      "",
      " ",
      "1,5",
      "0x10",
      "12 in",
      inches(3),
      null,
      true,
      {},
      [],
    ]) {
      expect(() => inches(amount as never)).toThrow("inches({ amount }): expected a finite number, or text such as");
    }
  });

  it("keeps its unit's size from being changed", () => {
    expect(() => {
      (yards.scale as unknown as number[])[0] = 1;
    }).toThrow("read only property '0'");
    expect(() => Object.assign(yards, { symbol: "m" })).toThrow("read only property 'symbol'");
  });

  it("is not read in a unit of another kind", () => {
    expect(() => inches(3).in(grams as never)).toThrow("expected a unit of length, received grams, a unit of mass");
    expect(() => inches(3).in("yards" as never)).toThrow("Units are values you import");
    expect(() => tex(3).in(cottonCount as never)).toThrow("expected a unit of mass per length");
  });

  it("works beside another copy of the package and with a widened Object.prototype", async () => {
    const load = async (
      copy: string,
    ): Promise<{ inches: Unit<"length">; warpLength: (input: unknown) => Quantity<"length"> }> => {
      const { outputFiles } = await build({
        stdin: { contents: `export * from "./index.ts"; // ${copy}`, resolveDir: "packages/maths/src" },
        bundle: true,
        format: "esm",
        write: false,
        banner: { js: `// ${copy}` },
      });
      const text = Buffer.from(outputFiles[0]?.text ?? "").toString("base64");
      return (await import(/* @vite-ignore */ `data:text/javascript;base64,${text}`)) as never;
    };
    const [one, two] = [await load("one"), await load("two")];
    expect(one.inches).not.toBe(two.inches);
    const losses = { loomToFinished: percentLost(10), takeUp: percentLost(8) };
    const napkin = {
      pieces: 8,
      finishedLength: one.inches(21),
      hemEachEnd: two.inches(1),
      loomWaste: inches(30),
      ...losses,
    };
    Object.defineProperty(Object.prototype, "colour", {
      value: "red",
      enumerable: true,
      configurable: true,
      writable: true,
    });
    try {
      expect(two.warpLength(napkin).in(yards)).toBeCloseTo(7.00617283950617, 12);
    } finally {
      delete (Object.prototype as { colour?: string }).colour;
    }
  });
});

describe("exactness", () => {
  it("of yards in inches and back is whole for every yard to 2000", () => {
    for (let n = 1; n <= 2000; n++) {
      expect(yards(n).in(inches)).toBe(36 * n);
      expect(inches(yards(n).in(inches)).in(yards)).toBe(n);
    }
  });

  it("of 45,000 round trips between six units of length loses nothing", () => {
    let trips = 0;
    for (const from of lengths) {
      for (const to of lengths) {
        if (from === to) continue;
        for (let n = 1; n <= 500; n++) {
          for (const amount of [n, n / 8, n / 10]) {
            const there = from(amount);
            if (inUnit(inUnit(there, to), from).value !== there.value) expect.fail(`${String(there)} by ${to.name}`);
            trips += 1;
          }
        }
      }
    }
    expect(trips).toBe(45_000);
  });

  it("of any reading is that of whole-number fractions, rounded once", () => {
    const units = fc.constantFrom(...lengths);
    fc.assert(
      fc.property(
        units,
        units,
        fc.integer({ min: 1, max: 10 ** 9 }),
        fc.nat({ max: 6 }),
        (from, to, digits, places) => {
          const value = digits / 10 ** places;
          const over = BigInt(digits) * BigInt(from.scale[0]) * BigInt(to.scale[1]) * 10n ** 40n;
          const under = 10n ** BigInt(places) * BigInt(from.scale[1]) * BigInt(to.scale[0]);
          expect(from(value).in(to)).toBe(Number(`${String(over / under)}e-40`));
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe("arithmetic", () => {
  const any = fc
    .tuple(fc.constantFrom(...lengths), fc.integer({ min: -8000, max: 8000 }))
    .map(([unit, n]) => unit(n / 8));

  it("adds and takes away in any order, in the unit of the first", () => {
    fc.assert(
      fc.property(any, any, any, (a, b, c) => {
        expect(sum(a, b).unit).toBe(a.unit);
        expect(equal(sum(a, b), sum(b, a))).toBe(true);
        expect(equal(sum(sum(a, b), c), sum(a, sum(b, c)))).toBe(true);
        expect(difference(sum(a, b), b).in(inches)).toBeCloseTo(a.in(inches), 12);
        expect(compare(a, b)).toBe(compare(b, a) === 0 ? 0 : -compare(b, a));
      }),
    );
  });

  it("takes a length so many times, and says how often it goes into another", () => {
    expect(times(inches("10.5"), 6).value).toBe("63");
    expect(times(yards(50), "1/8").value).toBe("6.25");
    expect(times(yards(6), "-2 1/3").value).toBe("-14");
    expect(times(inches(3), "1/3").value).toBe("1");
    expect(() => times(inches(3), "1/0")).toThrow("over another that is not zero");
    expect(ratio(yards(1), inches(12))).toBe(3);
    expect([yards(1), feet(2), inches(30)].sort(compare).map(String)).toEqual(["2 ft", "30 in", "1 yd"]);
  });

  it("refuses two kinds together, a division by nothing and a factor that is none", () => {
    expect(() => sum(inches(1), grams(1) as never)).toThrow("received grams, a unit of mass");
    expect(() => compare(inches(1), pounds(1) as never)).toThrow("received pounds, a unit of mass");
    expect(() => ratio(inches(1), inches(0))).toThrow("divided by zero");
    expect(() => times(inches(1), inches(2) as never)).toThrow("Two quantities are not multiplied here");
    expect(() => sum({ ...inches(1) })).toThrow("A copy");
  });
});

describe("a quantity in trade fractions", () => {
  it.each([
    ["11.999", "1/8", "12 in"],
    ["5.19", "1/8", "5 1/4 in"],
    ["0.5", "1/2", "1/2 in"],
    ["-3.5", "1/8", "-3 1/2 in"],
    ["-0.01", "1/8", "0 in"],
    ["252.2222", "1/8", "252 1/4 in"],
    ["7.1", "0.25", "7 in"],
    ["7.125", "1", "7 in"],
    ["7.0625", "1/8", "7 1/8 in"],
  ])("%s to the nearest %s is %s", (value, step, text) => {
    expect(asText(inches(value), { step })).toBe(text);
  });

  it("rounds up or down where that is asked for", () => {
    expect(asText(inches("7.01"), { step: "1/8", rounding: "roundUp" })).toBe("7 1/8 in");
    expect(asText(inches("7.12"), { step: "1/8", rounding: "roundDown" })).toBe("7 in");
  });

  it("of less than nothing goes up towards nothing and down away from it, halves up, as a formula rounds", () => {
    expect(asText(inches("-7.01"), { step: "1/8", rounding: "roundUp" })).toBe("-7 in");
    expect(asText(inches("-7.01"), { step: "1/8", rounding: "roundDown" })).toBe("-7 1/8 in");
    expect(asText(inches("-7.0625"), { step: "1/8" })).toBe("-7 in");
    expect(asText(inches("-0.05"), { step: "1/8", rounding: "roundUp" })).toBe("0 in");
  });

  it("is not rounded in a direction that is none, nor by options that are none", () => {
    for (const rounding of ["up", "", null, 3, "floor"])
      expect(() => asText(inches("1.3"), { step: "1/8", rounding: rounding as never })).toThrow("roundUp or roundDown");
    for (const options of [null, 3, "1/8"])
      expect(() => asText(inches("1.3"), options as never)).toThrow("an object of options");
  });

  it.each(["0", "1/0", "x", "1/8/2", "-1/8", "1/2.5", ""])("is not written to a step of %j", (step) => {
    expect(() => asText(inches(1), { step })).toThrow("asText({ step }): expected a step");
  });
});
