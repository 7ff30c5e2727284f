import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { balasubramanianCloth } from "#ci/sources.js";
import { millimetres, percentAdded } from "../../units/index.js";
import { clothByShortRule } from "./cloth-by-short-rule.js";
import { peirceCloth } from "./peirce-cloth.js";
import { threadFromCrimp } from "./thread-from-crimp.js";
import { threadFromHeight } from "./thread-from-height.js";

describe("a square cloth of round threads, jammed", () => {
  const sections = "Jammed Structures, Square cloth";
  cited(
    "a jammed square cloth by the equations, from spacing and height",
    published(balasubramanianCloth, sections, "0.2092 of the cloth", "20.91995761561452337293855050947704881894"),
    threadFromHeight,
    [
      {
        spacing: millimetres("0.8660254037844386467637231707529361834714"),
        height: millimetres("0.5"),
        diameters: millimetres(1),
      },
    ],
    ["crimp", percentAdded],
  );
});

describe("a plain weave", () => {
  const unequal = {
    endSpacing: millimetres("0.4"),
    pickSpacing: millimetres("0.4"),
    warpDiameter: millimetres("0.2"),
    weftDiameter: millimetres("0.3"),
    warpCrimp: percentAdded(9),
  };
  it("meets both of Peirce's equations, put in again in doubles", () => {
    fc.assert(
      fc.property(fc.integer({ min: 88, max: 300 }), fc.integer({ min: 0, max: 50 }), (hundredths, height) => {
        const [p, h] = [hundredths / 100, height / 100];
        if (p * p + (1 - h) * (1 - h) <= 1) return;
        const thread = threadFromHeight({
          spacing: millimetres(p),
          height: millimetres(h),
          diameters: millimetres(1),
        });
        const [t, l] = [(thread.angle * Math.PI) / 180, thread.length.in(millimetres)];
        expect((l - t) * Math.cos(t) + Math.sin(t)).toBeCloseTo(p, 12);
        expect((l - t) * Math.sin(t) + 1 - Math.cos(t)).toBeCloseTo(h, 12);
      }),
    );
  });
  it("is refused past the jam, in spacing, height and crimp", () => {
    const thread = { spacing: millimetres("0.86"), height: millimetres("0.5"), diameters: millimetres(1) };
    expect(() => threadFromHeight(thread)).toThrow("no closer than jammed");
    expect(() => threadFromHeight({ ...thread, height: millimetres("1.01") })).toThrow("no higher than both");
    expect(() => threadFromCrimp({ ...thread, height: undefined, crimp: percentAdded(40) } as never)).toThrow(
      "({ height })",
    );
    const wide = { spacing: millimetres(1), diameters: millimetres(1) };
    expect(() => threadFromCrimp({ ...wide, crimp: percentAdded(58) })).toThrow("no more crimp than");
    expect(() => peirceCloth({ ...unequal, pickSpacing: millimetres("0.2") })).toThrow(
      "peirceCloth({ warpCrimp }): expected no more crimp than round threads",
    );
    expect(() => peirceCloth({ ...unequal, endSpacing: millimetres("0.2") })).toThrow(
      "peirceCloth({ endSpacing }): expected threads no closer than jammed",
    );
    expect(() => clothByShortRule({ ...unequal, warpCrimp: percentAdded(100), factor: 4 / 3 })).toThrow(
      "no higher than",
    );
  });
});
