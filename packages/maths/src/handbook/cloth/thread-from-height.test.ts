import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { balasubramanianCloth } from "#ci/sources.js";
import { millimetres, percentAdded } from "../../units/index.js";
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
  it("lies straight at no height, and a quarter turn round at the height of both diameters, so far apart", () => {
    // A quarter turn of diameter 2 is π ÷ 2 of thread on 1 of cloth.
    const one = { spacing: millimetres(1), diameters: millimetres(1) };
    const straight = threadFromHeight({ ...one, height: millimetres(0) });
    expect(straight.angle).toBe(0);
    expect(straight.crimp.value).toBe("0");
    const full = threadFromHeight({ ...one, height: millimetres(1) });
    expect(full.angle).toBeCloseTo(90, 10);
    expect(full.length.in(millimetres)).toBeCloseTo(Math.PI / 2, 12);
  });
  it.each([
    ["closer than jammed", { spacing: millimetres("0.86") }, "no-answer spacing"],
    ["higher than both threads", { height: millimetres("1.001") }, "no-answer height"],
    ["lower than straight", { height: millimetres(-1) }, "out-of-range height"],
    ["of no thickness", { diameters: millimetres(0) }, "out-of-range diameters"],
  ])("is refused for threads %s", (_, change, code) => {
    const sound = { spacing: millimetres("0.87"), height: millimetres("0.5"), diameters: millimetres(1) };
    expect(codesOf(threadFromHeight, { ...sound, ...change })).toEqual([code]);
  });
});
