import { describe, expect, it } from "vitest";
import { isCalculation } from "../engine/formula/index.js";
import { attempt } from "../engine/refusal.js";
import type { Fault } from "../engine/refusal.js";
import * as maths from "../index.js";
import { formulaEntries, inputEntries } from "./index.js";

const exported: Readonly<Record<string, unknown>> = { ...maths };
const functions = formulaEntries.map(({ name }) => [name, exported[name] as (...given: never[]) => unknown] as const);
/** How an example of a kind begins, where only units of that kind make one. */
const MAKERS: Readonly<Record<string, string>> = {
  length: "inches(",
  mass: "ounces(",
  loss: "percentLost(",
  addition: "percentAdded(",
  share: "percentOf(",
};

/** Every fault of a call; none where it answers. */
function faultsOf(f: (...given: never[]) => unknown, ...given: readonly unknown[]): readonly Fault<string>[] {
  const read = attempt(f, ...given);
  return read.ok ? [] : read.faults;
}

/** What holds of any fault, whatever was wrong. */
function expectWhole(fault: Fault<string>, about: string): void {
  const { code, path, expected, received, remedy, params } = fault;
  expect(code, about).toMatch(/^[a-z]+(?:-[a-z]+)*$/u);
  expect(
    path.every((step) => typeof step === "string" || typeof step === "number"),
    about,
  ).toBe(true);
  for (const words of [expected, received]) expect(words, about).not.toBe("");
  expect(remedy, `${about} ${code}`).not.toBe("");
  expect(JSON.parse(JSON.stringify(fault)), about).toEqual(fault);
  for (const [kind, maker] of Object.entries(MAKERS)) {
    // An example in the remedy is one of the kind that was asked for, and of no other.
    if (typeof params.kind === "string" && params.kind !== "list" && params.kind !== kind && maker !== "ounces(")
      expect(remedy, `${about} wants ${params.kind}`).not.toContain(maker);
  }
}

describe.each(functions)("the faults of %s", (name, f) => {
  // A function that is not called with one object of fields asks for its first input where it is given nothing.
  const missing = faultsOf(f, {}).filter(
    ({ code, path, function: by }) => code === "missing" && by === name && typeof path[0] === "string",
  );
  const fields = [...new Set(missing.map(({ path }) => String(path[0])))];

  it("are whole, at the field, where nothing is given, or what is of no kind", () => {
    for (const given of [undefined, null, 3, "x", {}, []])
      for (const fault of faultsOf(f, given)) expectWhole(fault, `${name} ${JSON.stringify(given)}`);
    for (const field of fields) {
      for (const given of [new Date(0), { a: 1 }, () => 3, Symbol("x")]) {
        const faults = faultsOf(f, { [field]: given });
        for (const fault of faults) expectWhole(fault, `${name} ${field}`);
        const [own] = faults.filter(({ path }) => path[0] === field);
        // Of an object in an object the fields are missing.
        if (own?.path.length === 1) expect(own.code, `${name} ${field}`).toMatch(/^(?:wrong-kind|unknown-unit)$/u);
        expect(faults.length, `${name} ${field}`).toBeGreaterThan(0);
      }
      const [nothing] = faultsOf(f, { [field]: null }).filter(({ path }) => path[0] === field);
      if (nothing !== undefined) expect(nothing.code, `${name} ${field}`).toBe("missing");
    }
  });

  if (isCalculation(f)) {
    it("name every input that is missing, and what lies out of its range with an example that lies in it", () => {
      const inputs = inputEntries(f);
      expect(fields).toEqual(inputs.map(({ key }) => key));
      for (const { key, what, kinds, range, example, isList } of inputs) {
        if (what === "unit" || what === "word") continue;
        const [kind = ""] = kinds;
        const unit = maths[example.replace("[", "").split("(")[0] as "inches"] as maths.Unit<string> | undefined;
        const low = kind === "" ? -1 : kind === "money" ? maths.currency("EUR")(-1) : unit?.(-1);
        const over = range.below === 1 || range.atMost === 1 ? unit?.(101) : undefined;
        for (const bad of [low, over].filter((one) => one !== undefined)) {
          if (bad === low && range.atLeast === null && range.above === null) continue;
          const [own] = faultsOf(f, { [key]: isList ? [bad] : bad }).filter(({ path }) => path[0] === key);
          expect(own, `${name} ${key}`).toMatchObject({ code: "out-of-range", path: isList ? [key, 0] : [key] });
          if (own !== undefined) expectWhole(own, `${name} ${key}`);
          expect(own?.params.example, `${name} ${key}`).toBe(isList ? example.slice(1, -1) : example);
        }
      }
    });
  }
});
