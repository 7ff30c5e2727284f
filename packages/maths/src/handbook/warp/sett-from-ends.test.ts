import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Citation } from "#ci/cited.js";
import { cited, published } from "#ci/cited.js";
import { creativeThreads, jeanWeaves2014, mallikerta, measuredThreads, wovenWords2011 } from "#ci/sources.js";
import { centimetres, endsPerCentimetre, endsPerInch, inches } from "../../units/index.js";
import type { Length } from "../../units/index.js";
import { endsInWidth } from "./ends-in-width.js";
import { settFromEnds } from "./sett-from-ends.js";

describe("the sett from the ends", () => {
  const inch: readonly (readonly [title: string, Citation, ends: number, Length])[] = [
    ["528 ends in 22 inches", published(measuredThreads, "whole entry", "24", "24"), 528, inches(22)],
    ["2304 ends in 48 inches", published(jeanWeaves2014, "whole post", "48", "48"), 2304, inches(48)],
    ["a very dense warp, 14,256 ends in 54 inches", published(wovenWords2011, "opening", "", "264"), 14256, inches(54)],
  ];
  for (const [title, citation, ends, width] of inch) {
    cited(title, citation, settFromEnds, [{ ends, width }], endsPerInch);
  }
  const metric: readonly (readonly [title: string, Citation, ends: number, Length])[] = [
    ["440 ends in 55 centimetres", published(creativeThreads, "whole page", "8", "8"), 440, centimetres(55)],
    ["265 ends in 106 centimetres", published(mallikerta, "Pohja-en-4", "2.5", "2.5"), 265, centimetres(106)],
  ];
  for (const [title, citation, ends, width] of metric) {
    cited(title, citation, settFromEnds, [{ ends, width }], endsPerCentimetre);
  }

  it("gives the ends back, and is told in the units of the width", () => {
    expect(settFromEnds({ ends: 300, width: centimetres(40) }).toString()).toBe("7.5 ends/cm");
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 900 }), (ends, eighths) => {
        const width = inches(eighths / 8);
        expect(endsInWidth({ sett: settFromEnds({ ends, width }), width })).toBe(ends);
      }),
    );
  });

  it("is refused for no end and for no width", () => {
    expect(() => settFromEnds({ ends: 0, width: inches(10) })).toThrow("1 or more");
    expect(() => settFromEnds({ ends: 10, width: inches(0) })).toThrow("more than 0");
  });
});
