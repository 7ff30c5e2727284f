import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { alessandrinaCounts, aLottaStitches2016, fiberartisan2014 } from "#ci/sources.js";
import { cottonCount, percentOf, tex, yardsPerPound } from "../../units/index.js";
import { yieldOfNominal } from "./yield-of-nominal.js";

describe("a measured yield beside the nominal one", () => {
  cited(
    "3/15 wool of a class",
    published(alessandrinaCounts, "class notes on yarn counts", "2650 yd/lb", "1325/14"),
    yieldOfNominal,
    [{ measured: yardsPerPound(2650), nominal: yardsPerPound(2800) }],
    percentOf,
  );
  cited(
    "2/15 wool of a class",
    published(alessandrinaCounts, "class notes on yarn counts", "3670 yd/lb", "1835/21"),
    yieldOfNominal,
    [{ measured: yardsPerPound(3670), nominal: yardsPerPound(4200) }],
    percentOf,
  );
  cited(
    "8/2 cotton by the balance",
    published(fiberartisan2014, "7 February", "3400 yd/lb", "2125/21"),
    yieldOfNominal,
    [{ measured: yardsPerPound(3400), nominal: cottonCount(4) }],
    percentOf,
  );
  cited(
    "4/4 cotton by the label",
    published(aLottaStitches2016, "whole post", "787 yd/lb", "3935/42"),
    yieldOfNominal,
    [{ measured: yardsPerPound(787), nominal: cottonCount(1) }],
    percentOf,
  );

  it("takes the measured yarn back from the nominal", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 1, max: 9000 }), (measured, nominal) => {
        const part = yieldOfNominal({ measured: yardsPerPound(measured), nominal: yardsPerPound(nominal) });
        expect((part.in(percentOf) / 100) * nominal).toBeCloseTo(measured, 6);
      }),
    );
  });

  it("is all of it where the label keeps its promise", () => {
    expect(yieldOfNominal({ measured: yardsPerPound(3360), nominal: cottonCount(4) }).value).toBe("100");
  });

  it("is refused for a direct count, whose yield would be the other way up", () => {
    expect(() => yieldOfNominal({ measured: tex(30) as never, nominal: cottonCount(4) })).toThrow("measured");
  });
});
