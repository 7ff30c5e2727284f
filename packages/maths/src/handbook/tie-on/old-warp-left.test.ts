import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { avlHomeLoom, notesFromTheFell } from "#ci/sources.js";
import { centimetres, inches } from "../../units/index.js";
import { oldWarpLeft } from "./index.js";

describe("the old warp left in the loom", () => {
  const bare = { pastReed: inches(0), behindHeddles: inches(0) };
  const [front, behind] = [
    { knotsTied: "in front of the reed", ...bare },
    { knotsTied: "behind the heddles", ...bare },
  ] as const;
  const home = (prints: string): ReturnType<typeof published> =>
    published(avlHomeLoom, "tying on to the old warp", prints, prints);
  cited(
    "what must stand behind the heddles of a warp tied there",
    home("12"),
    oldWarpLeft,
    [behind],
    ["mustStand.behindHeddles", inches],
  );
  cited(
    "what must stand past the reed of a warp tied behind the heddles",
    home("6"),
    oldWarpLeft,
    [behind],
    ["mustStand.pastReed", inches],
  );
  cited(
    "what must stand past the reed of a warp tied in front of the reed",
    published(notesFromTheFell, "opening", "8", "8"),
    oldWarpLeft,
    [front],
    ["mustStand.pastReed", inches],
  );

  it("of the scarves reaches behind the heddles: 18 cm past the reed against 15.24, 35 cm behind against 30.48", () => {
    const found = oldWarpLeft({
      knotsTied: "behind the heddles",
      pastReed: centimetres(18),
      behindHeddles: centimetres(35),
    });
    expect([found.mustStand.pastReed, found.mustStand.behindHeddles].map((one) => one.in(centimetres))).toEqual([
      15.24, 30.48,
    ]);
    expect(found).toMatchObject({ reaches: true, instead: [] });
    expect(found.says).toBe(
      "Tied behind the heddles, the old warp must stand 30 cm (12 in) behind the heddles and 15 cm (6 in) past the reed. It reaches: 18 cm past the reed, 35 cm behind the heddles.",
    );
  });

  it("is told by how much it is short, with the place that would do", () => {
    const left = { pastReed: inches(8), behindHeddles: inches(10) };
    const found = oldWarpLeft({ knotsTied: "behind the heddles", ...left });
    expect(String(found.short.behindHeddles)).toBe("2 in");
    expect(found).toMatchObject({ reaches: false, instead: ["in front of the reed"] });
    expect(found.says).toContain("It is 2 in short behind the heddles. Tied in front of the reed it would do.");
    const other = oldWarpLeft({ knotsTied: "in front of the reed", pastReed: inches(7), behindHeddles: inches(12) });
    expect(other).toMatchObject({ reaches: false, instead: ["behind the heddles"] });
    expect(other.says).toContain("It is 1 in short past the reed.");
    // 20.32 − 18 = 2.32
    const metric = oldWarpLeft({
      knotsTied: "in front of the reed",
      pastReed: centimetres(18),
      behindHeddles: inches(12),
    });
    expect(metric.says).toContain("It is 2.4 cm short past the reed.");
  });

  it("behind the reed is said, not compared", () => {
    const found = oldWarpLeft({ knotsTied: "behind the reed", pastReed: inches(0), behindHeddles: inches(0) });
    expect(found).toMatchObject({ reaches: null, instead: [] });
    expect(found.says).toBe(
      "Tied behind the reed, the old warp must stand a hand's length before the heddles. There will stand 0 in past the reed, 0 in behind the heddles.",
    );
  });

  it("says what stands where nothing is asked of it", () => {
    const left = { pastReed: inches(10), behindHeddles: inches(24) };
    expect(oldWarpLeft({ knotsTied: "in front of the reed", ...left }).says).toBe(
      "Tied in front of the reed, the old warp must stand 8 in (20 cm) past the reed. It reaches: 10 in past the reed, 24 in behind the heddles.",
    );
  });

  it("reaches in front just from 8 inches on", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1600 }), (hundredths) => {
        const pastReed = inches(hundredths / 100);
        const found = oldWarpLeft({ knotsTied: "in front of the reed", pastReed, behindHeddles: inches(0) });
        expect(found.reaches).toBe(hundredths >= 800);
      }),
    );
  });

  it("reaches behind the heddles with just what must stand there, and not a hundredth less", () => {
    const reaches = (pastReed: number, behindHeddles: number): boolean | null =>
      oldWarpLeft({ ...behind, pastReed: inches(pastReed), behindHeddles: inches(behindHeddles) }).reaches;
    expect([reaches(6, 12), reaches(5.99, 12), reaches(6, 11.99)]).toEqual([true, false, false]);
  });

  it("is refused for a place that is none and for less than nothing left", () => {
    expect(() => oldWarpLeft({ ...bare, knotsTied: "anywhere" as never })).toThrow("where the knots are tied");
    expect(codesOf(oldWarpLeft, { knotsTied: "anywhere", pastReed: inches(-1) })).toEqual([
      "unknown-word knotsTied",
      "out-of-range pastReed",
      "missing behindHeddles",
    ]);
  });
});
