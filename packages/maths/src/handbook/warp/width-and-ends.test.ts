import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import type { Citation } from "#ci/cited.js";
import { QuantityError } from "../../engine/refusal.js";
import {
  allFiberArts,
  brooks1892,
  commonPractice,
  franz2021,
  goodOnes,
  horsensVaevekreds,
  marissa,
  starweaving,
  sunnano,
  weaveAway,
  wolfensberger1921,
} from "../../sources/index.js";
import { centimetres, endsPerInch, inches, percentAdded, percentLost } from "../../units/index.js";
import { combinedLoss } from "./combined-loss.js";
import { endsOfColour } from "./ends-of-colour.js";
import { endsWithSelvedges } from "./ends-with-selvedges.js";
import { reedWidth } from "../reed/index.js";
import { finishedWidthFromEnds } from "./finished-width-from-ends.js";
import { finishedWidth } from "./finished-width.js";
import { widthInReedByAdding } from "./width-in-reed-by-adding.js";
import { widthInReed } from "./width-in-reed.js";

describe("width in the reed", () => {
  cited(
    "17 1/2 inches wanted of a cloth that takes up 10 % and shrinks 10 %",
    published(
      goodOnes,
      "June 2019, planning figures",
      "21",
      "1750/81",
      "adds both percentages together and adds them on",
    ),
    widthInReed,
    [
      {
        finishedWidth: inches("17.5"),
        reedToFinished: combinedLoss({ first: percentLost(10), second: percentLost(10) }),
      },
    ],
    inches,
  );

  it("gives the finished width back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 0, max: 90 }), (width, lost) => {
        const reedToFinished = percentLost(lost);
        const inReed = widthInReed({ finishedWidth: inches(width), reedToFinished });
        expect(finishedWidth({ widthInReed: inReed, reedToFinished }).in(inches)).toBeCloseTo(width, 12);
      }),
    );
  });

  it("is refused for a cloth that loses all its width", () => {
    expect(() => widthInReed({ finishedWidth: inches(17), reedToFinished: percentLost(100) })).toThrow(QuantityError);
    expect(() => widthInReed({ finishedWidth: inches(17), reedToFinished: percentAdded(10) as never })).toThrow(
      QuantityError,
    );
  });
});

describe("finished width from whole ends", () => {
  cited(
    "501 ends at 24 to the inch that lose a tenth",
    {
      source: commonPractice,
      at: "worked by hand",
      status: "common practice, no source",
      prints: "",
      exact: "18.7875",
    },
    finishedWidthFromEnds,
    [{ ends: 501, sett: endsPerInch(24), reedToFinished: percentLost(10) }],
    inches,
  );

  it("is the width in the reed, less what is lost", () => {
    const ends = 420;
    const sett = endsPerInch(20);
    const reedToFinished = percentLost(15);
    const twoSteps = finishedWidth({ widthInReed: reedWidth({ ends, sett }), reedToFinished });
    expect(finishedWidthFromEnds({ ends, sett, reedToFinished })).toEqual(twoSteps);
    expect(() => finishedWidthFromEnds({ ends: 420.5, sett, reedToFinished })).toThrow(QuantityError);
  });
});

describe("width in the reed by adding", () => {
  const rows: readonly (readonly [title: string, Citation, width: number, percent: number])[] = [
    ["17 inches and 15 %", published(allFiberArts, "whole page", "19.5", "19.55"), 17, 15],
    ["8 inches and 10 %", published(starweaving, "steps 1-2", "8.8", "8.8"), 8, 10],
    ["36 inches and 6 %", published(brooks1892, "ch. IX, weight of a piece", "38", "38.16"), 36, 6],
  ];
  for (const [title, citation, width, percent] of rows) {
    const input = { finishedWidth: inches(width), allowance: percentAdded(percent) };
    cited(title, citation, widthInReedByAdding, [input], inches);
  }
  cited(
    "50 centimetres and 10 %",
    published(horsensVaevekreds, "whole page", "55", "55"),
    widthInReedByAdding,
    [{ finishedWidth: centimetres(50), allowance: percentAdded(10) }],
    centimetres,
  );

  it("is narrower than by dividing, by 1 % at 10 %", () => {
    const dividing = widthInReed({ finishedWidth: inches(18), reedToFinished: percentLost(10) });
    const adding = widthInReedByAdding({ finishedWidth: inches(18), allowance: percentAdded(10) });
    expect([dividing.in(inches), adding.in(inches)]).toEqual([20, 19.8]);
  });
});

describe("ends to wind", () => {
  const rows: readonly (readonly [title: string, Citation, body: number, selvedge: number, floating: number])[] = [
    ["a mat of 246 ends and four more in the selvedges", published(sunnano, "whole page", "250", "250"), 246, 2, 0],
    ["150 ends and eight more at the sides", published(marissa, "whole page", "158", "158"), 150, 4, 0],
    ["320 ends and one at each edge", published(weaveAway, "Linda's placemats", "322", "322"), 320, 1, 0],
    ["560 ends and two that float", published(franz2021, "figures of the sample", "562", "562"), 560, 0, 2],
  ];
  for (const [title, citation, bodyEnds, endsEachSelvedge, floatingEnds] of rows) {
    cited(title, citation, endsWithSelvedges, [{ bodyEnds, endsEachSelvedge, floatingEnds }]);
  }

  it("are refused for no body and for half an end", () => {
    expect(() => endsWithSelvedges({ bodyEnds: 0, endsEachSelvedge: 2, floatingEnds: 0 })).toThrow(QuantityError);
    expect(() => endsWithSelvedges({ bodyEnds: 100, endsEachSelvedge: 0.5, floatingEnds: 0 })).toThrow(QuantityError);
  });
});

describe("ends of a colour", () => {
  const rows: readonly (readonly [title: string, Citation, pattern: number, patterns: number, part: number])[] = [
    ["stripes of 15 ends, 38 of them", published(brooks1892, "p. 151, ch. IX", "570", "570"), 15, 38, 0],
    ["ground of 45 ends between them", published(brooks1892, "p. 151, ch. IX", "1710", "1710"), 45, 38, 0],
    ["sky in a pekin stripe", published(wolfensberger1921, "p. 97, disposition 6", "1680", "1680"), 240, 7, 0],
    // 204 + 180 + 234 + 180 + 30 in a repeat; 168 close it, and each edge holds 42 double ends.
    ["black in a pekin stripe", published(wolfensberger1921, "p. 97, disposition 6", "6132", "6132"), 828, 7, 336],
  ];
  for (const [title, citation, endsInPattern, patterns, endsInPart] of rows) {
    cited(title, citation, endsOfColour, [{ endsInPattern, patterns, endsInPart }]);
  }

  it("may be none", () => {
    expect(endsOfColour({ endsInPattern: 0, patterns: 12, endsInPart: 0 })).toBe(0);
  });
});
