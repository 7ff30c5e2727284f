import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { balasubramanianCloth, cdquestionsJam2025, gateTextile } from "#ci/sources.js";
import { endsPerCentimetre, endsPerInch, inches, millimetres, percentAdded } from "../../units/index.js";
import { jammedSquareCloth } from "./jammed-square-cloth.js";
import { threadFromHeight } from "./thread-from-height.js";

describe("a square cloth of round threads, jammed", () => {
  const sections = "Jammed Structures, Square cloth";
  const half = { diameter: millimetres("0.5") };
  cited(
    "angle of the threads of a jammed square cloth",
    published(balasubramanianCloth, sections, "60", "60"),
    jammedSquareCloth,
    [half],
    "thread.angle",
  );
  cited(
    "thread from crossing to crossing, for both diameters of one",
    published(balasubramanianCloth, sections, "1.0472", "1.047197551196597746154214461093167628066"),
    jammedSquareCloth,
    [half],
    ["thread.length", millimetres],
  );
  cited(
    "spacing of a jammed square cloth, for both diameters of one",
    published(balasubramanianCloth, sections, "0.866", "0.8660254037844386467637231707529361834714"),
    jammedSquareCloth,
    [half],
    ["spacing", millimetres],
  );
  cited(
    "crimp of a jammed square cloth, for both diameters of one",
    published(balasubramanianCloth, sections, "0.2092 of the cloth", "20.91995761561452337293855050947704881894"),
    jammedSquareCloth,
    [half],
    ["thread.crimp", percentAdded],
  );
  cited(
    "crimp at the most threads of 0.5 mm",
    published(gateTextile, "2009, Q54", "21", "20.91995761561452337293855050947704881894"),
    jammedSquareCloth,
    [half],
    ["thread.crimp", percentAdded],
  );
  cited(
    "picks of a cloth half a millimetre thick",
    published(gateTextile, "2013, Q41", "23", "23.0940107675850305803659512200782982259"),
    jammedSquareCloth,
    [{ diameter: millimetres("0.25") }],
    ["ends", endsPerCentimetre],
  );
  cited(
    "threads of 10s cotton to the inch",
    published(cdquestionsJam2025, "whole question", "51", "51.01684620070283459169120513182115362853"),
    jammedSquareCloth,
    [{ diameter: millimetres("0.2874481260508507468701000822550357136176") }],
    ["ends", endsPerInch],
  );

  it("is of one shape whatever the thread: its crimp and angle, the spacing √3 diameters, the thickness two", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (hundredths) => {
        const diameter = millimetres(`${String(hundredths)}e-2`);
        const { spacing, ends, thread, thickness } = jammedSquareCloth({ diameter });
        const across = hundredths / 100;
        expect(spacing.in(millimetres) / across).toBeCloseTo(Math.sqrt(3), 12);
        expect(thickness.in(millimetres) / across).toBeCloseTo(2, 12);
        expect(ends.in(endsPerInch) * spacing.in(inches)).toBeCloseTo(1, 12);
        expect(thread.angle).toBeCloseTo(60, 10);
        // Bent round a sixth of a turn of both diameters: 2 × π ÷ 3 of thread on √3 of cloth.
        expect(thread.crimp.in(percentAdded)).toBeCloseTo(100 * ((2 * Math.PI) / 3 / Math.sqrt(3) - 1), 10);
      }),
    );
  });

  it("is as close as its threads can lie: a thousandth closer there is no such cloth", () => {
    const jam = { height: millimetres("0.5"), diameters: millimetres(1) };
    const { spacing } = jammedSquareCloth(half);
    expect(codesOf(threadFromHeight, { ...jam, spacing })).toEqual([]);
    const closer = millimetres(0.999 * spacing.in(millimetres));
    expect(codesOf(threadFromHeight, { ...jam, spacing: closer })).toEqual(["no-answer spacing"]);
  });

  it("is refused for a thread of no thickness, a plain number and no thread", () => {
    expect(codesOf(jammedSquareCloth, { diameter: millimetres(0) })).toEqual(["out-of-range diameter"]);
    expect(codesOf(jammedSquareCloth, { diameter: 0.5 })).toEqual(["wrong-kind diameter"]);
    expect(codesOf(jammedSquareCloth, {})).toEqual(["missing diameter"]);
  });
});
