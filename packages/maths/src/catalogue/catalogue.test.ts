import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { isCalculation } from "../engine/formula/index.js";
import { isUnit } from "../engine/quantity/index.js";
import { attempt } from "../engine/refusal.js";
import * as maths from "../index.js";
import { countSystems, formulaEntries, inputEntries, kindEntries, loadFormula, unitEntries, unitsOf } from "./index.js";

const exported = Object.entries<unknown>({ ...maths });

describe("the catalogue", () => {
  it("lists every calculation, and nothing that is none", () => {
    const names = exported.flatMap(([name, value]) => (isCalculation(value) ? [name] : []));
    const listed = formulaEntries.filter(({ what }) => what === "calculation").map(({ name }) => name);
    expect(new Set(listed)).toEqual(new Set(names));
    expect(listed).toHaveLength(names.length);
    for (const { name, says, group, title } of formulaEntries) {
      expect(exported.map(([one]) => one)).toContain(name);
      for (const text of [says, group, title]) expect(text, name).not.toBe("");
    }
  });

  it("lists the units of every kind but money, whose units are of any name", () => {
    for (const { kind, units } of kindEntries()) expect(unitsOf(kind).length > 0, kind).toBe(units === "listed");
    expect(kindEntries().filter(({ units }) => units === "of any name")).toMatchObject([{ kind: "money" }]);
  });

  it("lists every unit with its kind, those in use first", () => {
    const names = exported.flatMap(([name, value]) => (isUnit(value) ? [name] : []));
    expect(new Set(unitEntries().map(({ name }) => name))).toEqual(new Set(names));
    expect(
      unitsOf("length")
        .map(({ name }) => name)
        .slice(0, 4),
    ).toEqual(["centimetres", "metres", "millimetres", "kilometres"]);
    expect(unitsOf("ends per length")[0]).toMatchObject({
      label: "ends per centimetre",
      system: "metric",
      use: "usual",
    });
    const kinds = kindEntries().map(({ kind }) => kind);
    for (const { kind } of unitEntries()) expect(kinds).toContain(kind);
    expect(countSystems().map(({ name }) => name)).toContain("galashielsCut");
  });

  it("gives the inputs of any calculation with all that a form needs", () => {
    for (const [name, value] of exported) {
      if (!isCalculation(value)) continue;
      for (const { key, meaning, label, example, kinds, what } of inputEntries(value)) {
        for (const text of [key, meaning, label, example]) expect(text, name).not.toBe("");
        expect(kinds.length > 0, `${name} ${key}`).toBe(what === "quantity" || what === "unit");
      }
    }
    expect(inputEntries(maths.warpLength)[1]).toMatchObject({
      key: "finishedLength",
      label: "finished length",
      what: "quantity",
      kinds: ["length"],
      isList: false,
      range: { above: 0 },
      example: "inches(21)",
    });
  });

  it("loads a calculation by its name, and refuses any other name with those there are", async () => {
    expect((await loadFormula("reedWidth")).declaration.name).toBe("reedWidth");
    await expect(loadFormula("toString")).rejects.toThrow("the name of a calculation");
  });
});

describe("an example of the right kind", () => {
  it("stands in the fault of every input of every calculation", () => {
    for (const [name, value] of exported) {
      if (!isCalculation(value)) continue;
      const read = attempt(value, {});
      const faults = read.ok ? [] : read.faults;
      for (const { key, example } of inputEntries(value)) {
        const fault = faults.find(({ path }) => path[0] === key);
        expect(fault, `${name} ${key}`).toMatchObject({ code: "missing", function: name, params: { example } });
        if (!example.includes("inches(")) expect(fault?.remedy, `${name} ${key}`).not.toContain("inches(");
      }
    }
  });

  it("is taken where it stands", () => {
    const scope = Object.fromEntries(exported);
    for (const [name, value] of exported) {
      if (!isCalculation(value)) continue;
      for (const { key, example } of inputEntries(value)) {
        const given: unknown = runInNewContext(`(${example})`, { ...scope });
        const list = example.startsWith("[") ? Array.from(given as readonly unknown[]) : given;
        const read = attempt(value, { [key]: list });
        const wrong = read.ok ? [] : read.faults.filter(({ path }) => path[0] === key);
        expect(wrong, `${name} ${key}: ${example}`).toEqual([]);
      }
    }
  });
});

describe("what a form hands over", () => {
  const hostile: readonly unknown[] = [
    ...[undefined, null, 3, "x", true, 3n, Symbol("x"), [], {}, () => 3, new Date(0), new Map(), Number.NaN],
    ...[
      new Proxy({}, {}),
      new Proxy([], {}),
      Object.create({ ends: 3 }) as unknown,
      JSON.parse('{"__proto__":{"ends":1}}') as unknown,
    ],
  ];
  it("is never thrown at by any calculation or report", () => {
    for (const { name } of formulaEntries) {
      const call = Object.fromEntries(exported)[name] as (...given: never[]) => unknown;
      for (const given of hostile)
        expect(typeof attempt(call, given, given).ok, `${name} ${typeof given}`).toBe("boolean");
    }
  });
});
