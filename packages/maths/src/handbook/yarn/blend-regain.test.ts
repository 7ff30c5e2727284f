import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { gateTextile, islamInvoiceMass } from "#ci/sources.js";
import type { QuantityError } from "../../engine/refusal.js";
import { percentAdded, percentOf } from "../../units/index.js";
import { blendRegain } from "./blend-regain.js";

describe("averages, contraction and regain", () => {
  cited(
    "polyester and cotton, 80 to 20",
    published(islamInvoiceMass, "Problem 2", "2.02", "2.02"),
    blendRegain,
    [{ shares: [percentOf(80), percentOf(20)], regains: [percentAdded("0.4"), percentAdded("8.5")] }],
    percentAdded,
  );
  cited(
    "cotton and viscose, 60 to 40",
    published(islamInvoiceMass, "Problem 1", "10.3", "10.3"),
    blendRegain,
    [{ shares: [percentOf(60), percentOf(40)], regains: [percentAdded("8.5"), percentAdded(13)] }],
    percentAdded,
  );
  cited(
    "polyester and cotton, 70 to 30",
    published(gateTextile, "2022, Q23", "2.83", "2.83"),
    blendRegain,
    [{ shares: [percentOf(70), percentOf(30)], regains: [percentAdded("0.4"), percentAdded("8.5")] }],
    percentAdded,
  );
  cited(
    "linen, cotton and polyester by dry mass",
    published(gateTextile, "2006, Q68, working", "7.43", "7.43"),
    blendRegain,
    [
      {
        shares: [percentOf(30), percentOf(50), percentOf(20)],
        regains: [percentAdded(12), percentAdded("7.5"), percentAdded("0.4")],
      },
    ],
    percentAdded,
  );
  cited(
    "wool, silk and viscose, half and two quarters",
    published(gateTextile, "2007, Q70", "12.28 g in 100 g", "14"),
    blendRegain,
    [
      {
        shares: [percentOf(50), percentOf(25), percentOf(25)],
        regains: [percentAdded(17), percentAdded(11), percentAdded(11)],
      },
    ],
    percentAdded,
  );
  it("a faulty share is refused once, and its list is not called too short for it", () => {
    const shares = [percentOf(120), percentOf(40)];
    try {
      blendRegain({ shares, regains: [percentAdded(8), percentAdded(13)] });
      expect.unreachable();
    } catch (error) {
      expect((error as QuantityError).faults.map(({ path }) => path)).toEqual([["shares", 0]]);
    }
  });

  it("lies between the least and the most of its parts, whole or not", () => {
    const part = fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: 30 }));
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const per = parts.map(([, regain]) => regain);
        const given = {
          shares: parts.map(([share]) => percentOf(share)),
          regains: per.map((one) => percentAdded(one)),
        };
        const regain = blendRegain(given).in(percentAdded);
        expect(regain).toBeGreaterThanOrEqual(Math.min(...per) * (1 - 1e-12));
        expect(regain).toBeLessThanOrEqual(Math.max(...per) * (1 + 1e-12));
      }),
    );
  });
});

describe("the limits of blend regain", () => {
  limits(
    blendRegain,
    [
      "of one fibre is the regain of the fibre",
      { shares: [percentOf(100)], regains: [percentAdded("8.5")] },
      8.5,
      percentAdded,
    ],
    { shares: [percentOf(0)], regains: [percentAdded(-1)] },
  );
});
