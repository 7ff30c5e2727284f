import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { faultsOf } from "#ci/faults-of.js";
import { commonPractice } from "#ci/sources.js";
import { inches, millimetres } from "../../units/index.js";
import { knotsThroughHeddles } from "./knots-through-heddles.js";

const knot = "overhand of both ends";

describe("knots through the heddles", () => {
  it("need both ways of a metal eye, and only the height of a cord one", () => {
    const eye = {
      eyeWidth: millimetres("1.2"),
      eyeHeight: millimetres("5.5"),
      oldDiameter: millimetres("0.4"),
      newDiameter: millimetres("0.45"),
    };
    const overhand = "overhand of both ends";
    expect(knotsThroughHeddles({ ...eye, eye: "metal", knot: overhand }).verdict).toBe("does not pass untouched");
    expect(knotsThroughHeddles({ ...eye, eye: "cord", knot: overhand }).verdict).toBe("passes");
    const low = { ...eye, eyeHeight: millimetres("2.2") };
    expect(knotsThroughHeddles({ ...low, eye: "cord", knot: overhand }).verdict).toBe("does not pass untouched");
  });
});

describe("knots through the heddles", () => {
  it("are as thick as the thicker thread, old or new", () => {
    const eye = { eyeWidth: millimetres(2), eyeHeight: millimetres(6), eye: "metal", knot } as const;
    const [thin, thick] = [millimetres("0.5"), millimetres("0.6")];
    expect(knotsThroughHeddles({ ...eye, oldDiameter: thin, newDiameter: thin }).verdict).toBe("passes");
    for (const [oldDiameter, newDiameter] of [
      [thick, thin],
      [thin, thick],
    ] as const) {
      const found = knotsThroughHeddles({ ...eye, oldDiameter, newDiameter });
      expect(found.verdict).toBe("does not pass untouched");
      expect(found.widthNeeded.value).toBe("2.28");
    }
  });
});

describe("an eye for a knot of a thread of 0.6 mm", () => {
  const threads = { oldDiameter: millimetres("0.5"), newDiameter: millimetres("0.6"), knot } as const;
  const metal = { ...threads, eye: "metal", eyeWidth: millimetres("2.28"), eyeHeight: millimetres("2.91") } as const;

  // 3.8 and 4.85 diameters of 0.6 mm.
  cited(
    "width of an eye for an overhand of 0.6 mm",
    byHand(commonPractice, "2.28"),
    knotsThroughHeddles,
    [metal],
    ["widthNeeded", millimetres],
  );
  cited(
    "height of an eye for an overhand of 0.6 mm",
    byHand(commonPractice, "2.91"),
    knotsThroughHeddles,
    [metal],
    ["heightNeeded", millimetres],
  );

  it("is just wide and high enough at what is needed, and not a hair below", () => {
    expect(knotsThroughHeddles(metal).verdict).toBe("passes");
    const fails = "does not pass untouched";
    expect(knotsThroughHeddles({ ...metal, eyeWidth: millimetres("2.279") }).verdict).toBe(fails);
    expect(knotsThroughHeddles({ ...metal, eyeHeight: millimetres("2.909") }).verdict).toBe(fails);
    // Of cord, five diameters high and as narrow as may be.
    const cord = { ...threads, eye: "cord", eyeWidth: millimetres("0.01") } as const;
    expect(knotsThroughHeddles({ ...cord, eyeHeight: millimetres(3) }).verdict).toBe("passes");
    expect(knotsThroughHeddles({ ...cord, eyeHeight: millimetres("2.999") }).verdict).toBe(fails);
  });

  it("is judged alike with old and new thread exchanged, and with all of it as many times as large", () => {
    const size = fc.integer({ min: 1, max: 60 });
    const kind = fc.constantFrom("metal" as const, "cord" as const);
    fc.assert(
      fc.property(size, size, size, size, size, kind, (wide, high, old, now, times, eye) => {
        const verdict = (unit: typeof inches, by: number, [one, other] = [old, now]): string =>
          knotsThroughHeddles({
            eyeWidth: unit(wide * by),
            eyeHeight: unit(high * by),
            eye,
            oldDiameter: unit(one * by),
            newDiameter: unit(other * by),
            knot,
          }).verdict;
        expect(verdict(millimetres, 1, [now, old])).toBe(verdict(millimetres, 1));
        expect(verdict(inches, times)).toBe(verdict(millimetres, 1));
      }),
    );
  });

  it("is refused for an eye of no width and for all that is not told", () => {
    expect(codesOf(knotsThroughHeddles, { ...metal, eyeWidth: millimetres(0) })).toEqual(["out-of-range eyeWidth"]);
    const fields = ["eyeWidth", "eyeHeight", "eye", "oldDiameter", "newDiameter", "knot"];
    expect(codesOf(knotsThroughHeddles, {})).toEqual(fields.map((field) => `missing ${field}`));
    expect(faultsOf(knotsThroughHeddles, {})).toEqual([
      "knotsThroughHeddles({ eyeWidth }): a length",
      "knotsThroughHeddles({ eyeHeight }): a length",
      'knotsThroughHeddles({ eye }): "metal" or "cord"',
      "knotsThroughHeddles({ oldDiameter }): a length",
      "knotsThroughHeddles({ newDiameter }): a length",
      `knotsThroughHeddles({ knot }): "overhand of both ends" or "overhand of one end" or "square" or "weaver's"`,
    ]);
  });
});
