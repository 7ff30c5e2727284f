import { describe, expect, it } from "vitest";
import { millimetres } from "../../units/index.js";
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
