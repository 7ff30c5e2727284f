import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { faultsOf } from "#ci/faults-of.js";
import { quiltingClimber2017, settSinglePage, sweetGeorgia } from "#ci/sources.js";
import type { QuantityError } from "../../engine/refusal.js";
import { cottonCount, diametersPerInch } from "../../units/index.js";
import { diametersByConstant } from "../sett/diameters-by-constant.js";
import { diameterConstant } from "./diameter-constant.js";

describe("the constant of the rule of diameters", () => {
  cited(
    "for woollen yarn, by a page of 1999",
    published(settSinglePage, "whole page", "0.84", "0.84"),
    diameterConstant,
    [{ material: "woollen", givenBy: "faena" }],
    "constant",
  );
  cited(
    "for woollen yarn, by a spinners’ school",
    published(sweetGeorgia, "whole article", "0.85", "0.85"),
    diameterConstant,
    [{ material: "woollen", givenBy: "SweetGeorgia" }],
    "constant",
  );
  cited(
    "for woollen yarn, by a weaver who compares constants",
    published(quiltingClimber2017, "whole article", "0.86", "0.86"),
    diameterConstant,
    [{ material: "woollen", givenBy: "quiltingclimber" }],
    "constant",
  );

  it("gives Taylor's 156 threads to the inch for 32s cotton", () => {
    const { constant } = diameterConstant({ material: "cotton", givenBy: "Taylor" });
    expect(Math.round(diametersByConstant({ constant, count: cottonCount(32) }).in(diametersPerInch))).toBe(156);
  });

  it("times the root of the yards to the pound is the diameters to the inch, whoever gives it", () => {
    const who = fc.constantFrom("faena" as const, "SweetGeorgia" as const, "quiltingclimber" as const);
    const material = fc.constantFrom("worsted" as const, "woollen" as const);
    fc.assert(
      fc.property(who, material, fc.integer({ min: 1, max: 200 }), (givenBy, of, n) => {
        const { constant } = diameterConstant({ material: of, givenBy });
        const diameters = diametersByConstant({ constant, count: cottonCount(n) }).in(diametersPerInch);
        expect((diameters / constant) ** 2).toBeCloseTo(840 * n, 6);
        expect(Math.abs(constant - 0.87)).toBeLessThan(0.05);
      }),
    );
  });

  it.each([
    [{ material: "cotton", givenBy: "quiltingclimber" }, "no-answer", "Taylor 0.95, faena 0.9, SweetGeorgia 0.91"],
    [{ material: "nettle", givenBy: "Taylor" }, "unknown-word", "cotton"],
    [{ material: "cotton", givenBy: "constructor" }, "unknown-word", "Taylor"],
    [{ material: "cotton" }, "missing", "givenBy"],
    [{ material: "cotton", givenBy: "Taylor", count: 20 }, "unknown-field", "count"],
  ])("%j is refused", (of, code, named) => {
    try {
      diameterConstant(of as never);
      expect.unreachable();
    } catch (error) {
      expect((error as QuantityError).code).toBe(code);
      expect((error as QuantityError).message).toContain(named);
    }
  });

  it("is refused with those who give one", () => {
    expect(faultsOf(diameterConstant, {})).toEqual([
      'diameterConstant({ material }): "cotton" or "worsted" or "woollen"',
      'diameterConstant({ givenBy }): "Taylor" or "faena" or "SweetGeorgia" or "quiltingclimber"',
    ]);
    const taylor = { givenBy: "Taylor", material: "worsted" } as const;
    expect(faultsOf(diameterConstant, taylor)).toEqual([
      "diameterConstant({ givenBy }): one who gives a constant for worsted",
    ]);
    expect(() => diameterConstant(taylor)).toThrow(
      /It is given by faena 0\.9, SweetGeorgia 0\.9, quiltingclimber 0\.9\.$/u,
    );
  });
});
