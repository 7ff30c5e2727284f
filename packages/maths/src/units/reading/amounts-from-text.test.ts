import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { attempt } from "../../engine/refusal.js";
import * as units from "../index.js";
import {
  countFrom,
  decimalTextFrom,
  dentsPerTenCentimetres,
  endsPerCentimetre,
  endsPerInch,
  inches,
  lengthFrom,
  massFrom,
  moneyFrom,
  numberFrom,
  ounces,
  percentAdded,
  percentFrom,
  percentLost,
  percentOf,
  picksFrom,
  picksPerInch,
  reedFrom,
  settFrom,
} from "../index.js";
import { isUnit } from "../../engine/quantity/index.js";
import type { Unit } from "../../engine/quantity/index.js";

function codeOf(f: (...input: never[]) => unknown, ...given: readonly unknown[]): unknown {
  const read = attempt(f, ...given);
  return read.ok ? String(read.value) : [read.faults[0].code, read.faults[0].params.candidates];
}

describe("a number", () => {
  it.each([
    ["12", "12"],
    [".5", "0.5"],
    ["17 1/4", "17.25"],
    ["½", "0.5"],
    ["3½", "3.5"],
    ["-2", "-2"],
    ["1\u202f000", "1000"],
  ])("%s is read", (text, read) => {
    expect(decimalTextFrom(text)).toBe(read);
  });

  it("takes the marks of the locale named, and a plain space between thousands too", () => {
    expect(numberFrom("27,5", { locale: "de" })).toBe(27.5);
    expect(numberFrom("1 000,5", { locale: "de" })).toBe(1000.5);
    expect(lengthFrom("1 000,5 in", [inches], { locale: "de" }).value).toBe("1000.5");
    expect(codeOf(numberFrom, "27,5")).toEqual(["ambiguous", ["27.5", "275"]]);
  });
});

describe("an option that is none", () => {
  it("is refused by every reader, and never passed over", () => {
    const misspelt = { local: "de" };
    for (const read of [
      attempt(lengthFrom, "1 in", [inches], misspelt),
      attempt(settFrom, "20 epi", misspelt),
      attempt(numberFrom, "20", misspelt),
      attempt(countFrom, "20 cotton", misspelt),
      attempt(percentFrom, "8 % lost", [percentLost], misspelt),
    ])
      expect(read).toMatchObject({ ok: false, faults: [{ code: "unknown-field", path: ["local"] }] });
  });
});

describe("so many to a length", () => {
  it.each<[() => number, number]>([
    [() => settFrom("20 epi").in(endsPerInch), 20],
    [() => settFrom("20 ends per inch").in(endsPerInch), 20],
    [() => settFrom("17 1/2 per inch").in(endsPerInch), 17.5],
    [() => settFrom("8/cm").in(endsPerCentimetre), 8],
    [() => settFrom("45 per 10 cm").in(endsPerCentimetre), 4.5],
    [() => reedFrom("45 per 10 cm").in(dentsPerTenCentimetres), 45],
    [() => reedFrom("4 dents/cm").in(dentsPerTenCentimetres), 40],
    [() => picksFrom("18 ppi").in(picksPerInch), 18],
    [() => picksFrom("18 picks to the inch").in(picksPerInch), 18],
  ])("is read, %#", (read, value) => {
    expect(read()).toBe(value);
  });

  it("is refused without its length, with both, and with another noun", () => {
    expect(codeOf(settFrom, "20")).toEqual(["ambiguous", ["20 per inch", "20 per cm"]]);
    expect(codeOf(settFrom, "18 ppi")).toEqual(["wrong-kind", undefined]);
    expect(codeOf(settFrom, "18 per pound")).toEqual(["unknown-unit", undefined]);
    expect(codeOf(settFrom, undefined)).toEqual(["missing", undefined]);
  });
});

describe("a percentage", () => {
  const all = [percentLost, percentAdded, percentOf];
  it("is read with what it is of, and without it where only one may stand there", () => {
    expect(percentFrom("8 % lost", all).in(percentLost)).toBe(8);
    expect(percentFrom("6.5% added", all).unit).toBe("percentAdded");
    expect(percentFrom("80 per cent of the whole", all).unit).toBe("percentOf");
    expect(percentFrom("17 1/2%", [percentLost]).in(percentLost)).toBe(17.5);
  });

  it("is refused with the readings it has where nothing says of what", () => {
    expect(codeOf(percentFrom, "10%", all)).toEqual(["ambiguous", ["10 % lost", "10 % added", "10 % of a whole"]]);
    expect(codeOf(percentFrom, "10 % added", [percentLost])).toEqual(["wrong-kind", ["10 % lost"]]);
    expect(codeOf(percentFrom, "10", all)).toEqual(["unreadable", undefined]);
  });
});

describe("money", () => {
  it("has its currency before or behind", () => {
    expect(moneyFrom("14.50 EUR").value).toBe("14.5");
    expect(moneyFrom("EUR 14.50").unit).toBe("EUR");
    expect(moneyFrom("€3").unit).toBe("EUR");
    expect(codeOf(moneyFrom, "$3")).toEqual(["ambiguous", ["3 USD", "3 CAD", "3 AUD", "3 NZD"]]);
    expect(codeOf(moneyFrom, "14.50")).toEqual(["unknown-unit", undefined]);
  });
});

describe("lengths and masses as people type them", () => {
  it.each([".5 in", "0.5 in.", "1/2 in", "½in"])("%s is half an inch", (text) => {
    expect(lengthFrom(text, [inches]).in(inches)).toBe(0.5);
  });
  it("ounces are ozs too", () => {
    expect(massFrom("8 ozs", [ounces]).in(ounces)).toBe(8);
  });
});

describe("what a unit prints is read back", () => {
  const all = Object.values<unknown>({ ...units }).filter((one): one is Unit<string> => isUnit(one));
  it.each(all.map((one) => [one.name, one] as const))("%s", (_, unit) => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e9, noNaN: true }), (amount) => {
        const made = unit(amount.toFixed(6));
        expect(units.quantityFrom(String(made), [unit]).value).toBe(made.value);
      }),
      { numRuns: 20 },
    );
  });
  it("a count of a label's own numbers among them", () => {
    expect(String(countFrom("225 m / 50 g"))).toBe("225 m/50 g");
    expect(String(countFrom("225 m/50 g"))).toBe("225 m/50 g");
  });
});

describe("a text of a megabyte", () => {
  it.each([settFrom, reedFrom, picksFrom, moneyFrom, countFrom, numberFrom])("is refused unread, %o", (read) => {
    expect(codeOf(read, "1 ".repeat(500_000))).toEqual(["too-long", undefined]);
  });
});
