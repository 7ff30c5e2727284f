import { describe, expect, it } from "vitest";
import { napkins } from "#ci/napkins.js";
import { dentsForEnds, reedWidth, warpLength } from "../../handbook/index.js";
import { centimetres, endsPerInch, inches, yards } from "../../units/index.js";
import { equal } from "../quantity/index.js";
import type { Quantity } from "../quantity/index.js";
import { attempt } from "../refusal.js";
import { asText, explain } from "./index.js";

describe("a working", () => {
  it("carries the answer, in the unit asked for, told in the figures asked for", () => {
    const { answer, result } = explain(warpLength, napkins, { unit: yards, digits: 3 });
    // 184 ÷ 0.9 ÷ 0.92 + 30 = 252.222… in = 7.0061… yd.
    expect(result).toEqual({ sign: "≈", value: "7.01 yd" });
    expect(equal(answer as Quantity<"length">, warpLength(napkins))).toBe(true);
    expect((answer as Quantity<"length">).unit).toBe("yards");
    expect(asText(explain(warpLength, napkins, { unit: centimetres }))).toContain("that is ≈ 640.644 cm");
    expect(explain(reedWidth, { ends: 300, sett: endsPerInch(15) }).answer).toEqual(inches(20));
  });

  it("names its inputs and lines by their keys, and carries their values as data", () => {
    const { inputs, steps } = explain(warpLength, napkins);
    expect(inputs.map(({ key }) => key)).toEqual(Object.keys(napkins));
    expect(steps.map(({ key, values }) => [key, values[0]])[0]).toEqual(["cutLength", "23"]);
    expect(steps[0]?.tree).toMatchObject({ op: "+", left: { op: "name", name: "finishedLength" } });
    expect(JSON.parse(JSON.stringify(steps))).toEqual(steps);
  });

  it("carries the number before a rounding", () => {
    const { steps } = explain(dentsForEnds, { ends: 25, endsPerDent: 2 });
    expect(steps.map(({ unrounded, values }) => [unrounded, values[0]])).toContainEqual(["12.5", "13"]);
  });
});

describe("an option of explain that is none", () => {
  it("is refused, as are figures that no number has", () => {
    const input = { ends: 368, sett: endsPerInch(20) };
    for (const [options, code, field] of [
      [{ unitt: inches }, "unknown-field", "unitt"],
      [{ digits: 0 }, "out-of-range", "digits"],
      [{ digits: 2.5 }, "out-of-range", "digits"],
      [null, "wrong-kind", "options"],
    ] as const)
      expect(attempt(explain, reedWidth, input, options)).toMatchObject({
        ok: false,
        faults: [{ code, path: [field] }],
      });
  });
});
