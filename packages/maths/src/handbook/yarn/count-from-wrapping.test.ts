import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import { brooks1892, davis1920, taylor1909 } from "../../sources/index.js";
import { cottonCount, grains, inches, metricCount, pounds, tex, worstedCount, yards } from "../../units/index.js";
import { countFromWrapping } from "./count-from-wrapping.js";

describe("a count found by weighing", () => {
  cited(
    "20 yards weighing 10 grains, worsted",
    { source: davis1920, at: "Ex. 1, p. 39", status: "read", prints: "25", exact: "25" },
    countFromWrapping,
    [{ length: yards(20), mass: grains(10), system: worstedCount }],
    worstedCount,
  );
  cited(
    "20 yards weighing 35 grains, worsted",
    { source: davis1920, at: "Ex. 2, p. 39", status: "read", prints: "7 1/7", exact: "50/7" },
    countFromWrapping,
    [{ length: yards(20), mass: grains(35), system: worstedCount }],
    worstedCount,
  );
  cited(
    "20 yards weighing 14 grains, merino",
    { source: davis1920, at: "Ex. 4, p. 40", status: "read", prints: "11.9", exact: "250/21" },
    countFromWrapping,
    [{ length: yards(20), mass: grains(14), system: cottonCount }],
    cottonCount,
  );
  cited(
    "a lea weighing 20 grains",
    { source: taylor1909, at: "site page 429", status: "read", prints: "50", exact: "50" },
    countFromWrapping,
    [{ length: yards(120), mass: grains(20), system: cottonCount }],
    cottonCount,
  );
  cited(
    "a hank weighing 100 grains",
    { source: brooks1892, at: "Wrapping", status: "read", prints: "70", exact: "70" },
    countFromWrapping,
    [{ length: yards(840), mass: grains(100), system: cottonCount }],
    cottonCount,
  );

  it("finds the count a length was weighed out for", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 2000 }), (count, length) => {
        const mass = pounds((length / 840 / count).toFixed(20));
        const found = countFromWrapping({ length: yards(length), mass, system: cottonCount }).in(cottonCount);
        expect(Math.abs(found - count)).toBeLessThan(1e-9 * count);
      }),
    );
  });

  it("answers in the system asked for", () => {
    const { unit } = countFromWrapping({ length: yards(120), mass: grains(20), system: metricCount });
    expect(unit).toBe("metricCount");
  });

  it("refuses a mass of nothing, a length for a mass and a direct system", () => {
    const input = { length: yards(120), mass: grains(20), system: cottonCount };
    expect(() => countFromWrapping({ ...input, mass: grains(0) })).toThrow(QuantityError);
    expect(() => countFromWrapping({ ...input, mass: inches(3) as never })).toThrow(QuantityError);
    expect(() => countFromWrapping({ ...input, system: tex as never })).toThrow(QuantityError);
  });
});
