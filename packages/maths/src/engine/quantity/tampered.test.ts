import { describe, expect, it } from "vitest";
import { yarnMass } from "../../handbook/index.js";
import { cottonCount, inches, kilometres, percentLost, quantityFrom, yards } from "../../units/index.js";
import { compare, difference, inUnit, ratio, sum, times } from "./index.js";
import type { Quantity, Unit } from "./index.js";

const UNIT = Symbol.for("thrum.unit.1");
const own = yards("2.5");
const behaviour = Object.getPrototypeOf(own) as Quantity<"length">;

/** Something that looks like a length, made by hand around a unit of ours. */
function forged(fields: Readonly<Record<string, unknown>>, unit: unknown, finish: (made: object) => object): object {
  const made = Object.assign(Object.create(behaviour) as object, fields);
  return finish(Object.defineProperty(made, UNIT, { value: unit }));
}

const fields = { dimension: "length", value: "2.5", unit: "yards" };
const lookalikes: readonly (readonly [what: string, thing: object])[] = [
  ["inheriting from a length, with another number", Object.create(own, { value: { value: "NaN" } }) as object],
  ["inheriting from a length unchanged", Object.freeze(Object.create(own) as object)],
  ["frozen, inheriting from a length", Object.freeze(Object.create(own, { value: { value: "99" } }) as object)],
  ["not frozen", forged(fields, yards, (made) => made)],
  ["with no number", forged({ ...fields, value: "" }, yards, Object.freeze)],
  ["whose number is NaN", forged({ ...fields, value: "NaN" }, yards, Object.freeze)],
  ["whose number is hexadecimal", forged({ ...fields, value: "0x10" }, yards, Object.freeze)],
  ["whose number is not text", forged({ ...fields, value: 2.5 }, yards, Object.freeze)],
  ["whose unit has another name", forged({ ...fields, unit: "inches" }, yards, Object.freeze)],
  ["whose kind is another", forged({ ...fields, dimension: "mass" }, yards, Object.freeze)],
  ["whose unit is text", forged(fields, "yards", Object.freeze)],
  ["whose unit is a function of one's own", forged(fields, () => own, Object.freeze)],
  ["spread out and frozen", Object.freeze({ ...own })],
  ["cloned", structuredClone({ ...own })],
];

describe("something like a length", () => {
  it.each(lookalikes)("%s is refused wherever a length may stand, with the remedy", (_what, thing) => {
    const length = thing as Quantity<"length">;
    const uses: readonly (() => unknown)[] = [
      () => behaviour.in.call(length, inches),
      () => behaviour.toString.call(length),
      () => sum(own, length),
      () => difference(length, own),
      () => compare(own, length),
      () => ratio(own, length),
      () => times(length, 2),
      () => inUnit(length, inches),
      () => yarnMass({ length, count: cottonCount(20) }),
    ];
    for (const use of uses) expect(use).toThrow("quantityFrom(data, [units])");
  });
});

it("leaves no way to make another by way of one at hand", () => {
  expect(own.constructor).toBe(Object);
  expect(Reflect.ownKeys(own)).toEqual(["dimension", "value", "unit"]);
});

describe("a number too large or too fine to be written out", () => {
  it.each([1e40, 1e59, -1e45, 1e-61, 5e-324, "1e-61", "1e99"])("makes no length: %s", (amount) => {
    expect(() => inches(amount)).toThrow("at most 40 digits before the point and 60 after it");
  });

  it("is refused where arithmetic comes to it, not handed on as a length nothing takes", () => {
    const huge = inches("9e39");
    for (const use of [
      () => times(huge, 10),
      () => sum(huge, huge),
      () => inUnit(kilometres("9e39"), inches),
      () => inUnit(inches("1e-59"), kilometres),
    ]) {
      expect(use).toThrow("at most 40 digits before the point and 60 after it");
    }
  });

  it.each([9e39, 1e-60, 0, -0, 1e21, 1e-7])("is not %s, which can be written, added and read back", (amount) => {
    const length = inches(amount);
    expect(length.value).not.toMatch(/e/iu);
    expect(sum(length, inches(0)).in(inches)).toBe(amount + 0);
    expect(quantityFrom(JSON.parse(JSON.stringify(length)), [inches]).value).toBe(length.value);
  });
});

describe("data read back", () => {
  const data = { dimension: "length", value: "3", unit: "inches" };
  it("needs a list of units of its kind", () => {
    for (const units of [undefined, null, [], "inches", [undefined], [null], [() => inches(1)], [[inches]]])
      expect(() => quantityFrom(data, units as unknown as readonly Unit<"length">[])).toThrow("and a list of units");
    expect(() => quantityFrom(data, [percentLost])).toThrow("expected one of percentLost");
  });

  it.each([
    { ...data, value: 3 },
    { ...data, value: "3 in" },
    { ...data, value: "9".repeat(41) },
    JSON.parse('{"__proto__":{"x":1},"dimension":"length","value":"3","unit":"inches"}') as unknown,
    Object.create(data) as unknown,
    [data],
  ])("as %o is refused", (given) => {
    expect(() => quantityFrom(given, [inches])).toThrow("expected data with dimension, value and unit");
  });

  it("as a mass is refused in a unit of length", () => {
    expect(() => quantityFrom({ ...data, dimension: "mass" }, [inches])).toThrow("expected one of inches");
  });
});
