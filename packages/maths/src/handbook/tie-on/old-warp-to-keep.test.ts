import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { limits } from "#ci/limits.js";
import { avlHomeLoom, notesFromTheFell } from "#ci/sources.js";
import { inches } from "../../units/index.js";
import { oldWarpToKeep } from "./old-warp-to-keep.js";

describe("the old warp to keep", () => {
  const [none, six] = [inches(0), inches(6)];
  const behind = { pastReed: six, reedToHeddles: none, behindHeddles: inches(12) };
  cited(
    "tied behind the heddles",
    published(avlHomeLoom, "p. 6-4", "18", "18", "printed as 12 in and 6 in, the depth of the harness apart"),
    oldWarpToKeep,
    [behind],
    inches,
  );
  const inFront = { pastReed: inches(8), reedToHeddles: none, behindHeddles: none };
  cited(
    "tied in front of the reed",
    published(notesFromTheFell, "opening", "8", "8"),
    oldWarpToKeep,
    [inFront],
    inches,
  );
  it("is the sum of its parts, none of them counted twice", () => {
    const kept = oldWarpToKeep({ pastReed: six, reedToHeddles: inches(10), behindHeddles: inches(12) });
    expect(kept.in(inches)).toBe(28);
  });
});

describe("the limits of old warp to keep", () => {
  limits(
    oldWarpToKeep,
    [
      "is what is past the reed where nothing is kept behind the reed",
      { pastReed: inches(10), reedToHeddles: inches(0), behindHeddles: inches(0) },
      10,
      inches,
    ],
    { pastReed: inches(-1), reedToHeddles: inches(-1), behindHeddles: inches(-1) },
  );
});
