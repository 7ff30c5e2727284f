import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { centimetres, inches } from "../../units/index.js";
import { lengthWithFringe } from "./length-with-fringe.js";

describe("a piece with its fringe", () => {
  cited(
    "a scarf of 72 inches, 4 3/8 of fringe at each end",
    byHand(commonPractice, "80.75"),
    lengthWithFringe,
    [{ finishedLength: inches(72), fringeEachEnd: inches("4.375") }],
    inches,
  );
  it("is the cloth alone where it has none, and is refused for less than none", () => {
    expect(lengthWithFringe({ finishedLength: centimetres(180), fringeEachEnd: centimetres(0) }).in(centimetres)).toBe(
      180,
    );
    expect(() => lengthWithFringe({ finishedLength: inches(70), fringeEachEnd: inches(-1) })).toThrow("0 or more");
  });
});
