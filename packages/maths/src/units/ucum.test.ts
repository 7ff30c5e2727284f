import { describe, expect, it } from "vitest";
import { unitOf } from "#ci/inputs.js";
import { ucumFactor } from "#ci/ucum.js";
import { centimetres, feet, inches, kilometres, metres, miles, millimetres, yards } from "./length.js";
import { drams, grains, grams, kilograms, milligrams, ounces, pounds } from "./mass.js";
import { decitex, denier, kilotex, tex } from "./direct-counts.js";
import { metricCount, yardsPerPound } from "./indirect-counts.js";

describe("the UCUM library", () => {
  it.each([
    [metres, "m", "m"],
    [kilometres, "km", "m"],
    [centimetres, "cm", "m"],
    [millimetres, "mm", "m"],
    [inches, "[in_i]", "m"],
    [feet, "[ft_i]", "m"],
    [yards, "[yd_i]", "m"],
    [miles, "[mi_i]", "m"],
    [grams, "g", "g"],
    [kilograms, "kg", "g"],
    [milligrams, "mg", "g"],
    [grains, "[gr]", "g"],
    [drams, "[dr_av]", "g"],
    [ounces, "[oz_av]", "g"],
    [pounds, "[lb_av]", "g"],
    [tex, "tex", "g/m"],
    [decitex, "dtex", "g/m"],
    [kilotex, "ktex", "g/m"],
    [denier, "[den]", "g/m"],
    [metricCount, "m/g", "m/g"],
    [yardsPerPound, "[yd_i]/[lb_av]", "m/g"],
  ] as const)("has %s as we have it", (unit, code, base) => {
    const theirs = ucumFactor(code, base);
    const [over, under] = unitOf(unit(1)).scale;
    const ours = over / under;
    const chains = `UCUM: 1 ${code} = ${String(theirs)} ${base}; ours: 1 ${unit.name} = ${String(over)} ÷ ${String(under)} ${base}`;
    expect(Math.abs(theirs - ours) / ours, chains).toBeLessThan(1e-12);
  });
});
