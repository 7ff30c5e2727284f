import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { gateTextile } from "#ci/sources.js";
import { percentAdded, percentOf } from "../../units/index.js";
import { blendRegainByConditionedMass } from "./blend-regain-by-conditioned-mass.js";
import { blendRegain } from "./blend-regain.js";

describe("the regain of a blend by conditioned mass", () => {
  cited(
    "linen, cotton and polyester by conditioned mass",
    published(gateTextile, "2006, Q68", "7.27", "819860/112683", "cut off, not rounded: 7.276"),
    blendRegainByConditionedMass,
    [
      {
        shares: [percentOf(30), percentOf(50), percentOf(20)],
        regains: [percentAdded(12), percentAdded("7.5"), percentAdded("0.4")],
      },
    ],
    percentAdded,
  );

  it("lies between the regains of its fibres, and never above that by dry mass", () => {
    const fibre = fc.tuple(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 0, max: 40 }));
    fc.assert(
      fc.property(fc.array(fibre, { minLength: 1, maxLength: 5 }), (fibres) => {
        const shares = fibres.map(([share]) => percentOf(share));
        const regains = fibres.map(([, regain]) => percentAdded(regain));
        const found = blendRegainByConditionedMass({ shares, regains }).in(percentAdded);
        expect(found).toBeGreaterThanOrEqual(Math.min(...fibres.map(([, regain]) => regain)) - 1e-9);
        expect(found).toBeLessThanOrEqual(blendRegain({ shares, regains }).in(percentAdded) + 1e-9);
      }),
    );
  });

  it("of one fibre is its own", () => {
    expect(blendRegainByConditionedMass({ shares: [percentOf(100)], regains: [percentAdded(17)] }).value).toBe("17");
  });

  it("is refused for a share of nothing, of more than all, and for a regain too few", () => {
    const regains = [percentAdded(17)];
    expect(() => blendRegainByConditionedMass({ shares: [percentOf(0)], regains })).toThrow("shares[0]");
    expect(() => blendRegainByConditionedMass({ shares: [percentOf(130)], regains })).toThrow("shares[0]");
    const two = [percentOf(50), percentOf(50)];
    expect(() => blendRegainByConditionedMass({ shares: two, regains })).toThrow(
      "{ regains }): expected a list of 2, one for each of shares",
    );
  });
});
