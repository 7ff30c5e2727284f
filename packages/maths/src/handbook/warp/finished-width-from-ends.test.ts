import { describe, expect, it } from "vitest";
import { cited } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { commonPractice } from "#ci/sources.js";
import { endsPerInch, inches, percentLost } from "../../units/index.js";
import { reedWidth } from "../reed/index.js";
import { finishedWidthFromEnds } from "./finished-width-from-ends.js";
import { finishedWidth } from "./finished-width.js";

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
    expect(() => finishedWidthFromEnds({ ends: 420.5, sett, reedToFinished })).toThrow("ends");
  });
});

describe("the limits of finished width from ends", () => {
  limits(
    finishedWidthFromEnds,
    [
      "of one end that loses nothing is the room of one end",
      { ends: 1, sett: endsPerInch(20), reedToFinished: percentLost(0) },
      0.05,
      inches,
    ],
    { ends: 0, sett: endsPerInch(0), reedToFinished: percentLost(100) },
  );
});
