import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { faultsOf } from "#ci/faults-of.js";
import { commonPractice } from "#ci/sources.js";
import { inches } from "../../units/index.js";
import { wasteByKnots } from "./waste-by-knots.js";

const usual = { wasteInFront: inches(10), wasteBehind: inches(18) };

describe("waste by the place of the knots", () => {
  // Of 10 in before the first pick and 18 in behind the last, the old ends stand in for the one or the other.
  for (const [knotsTied, left] of [
    ["in front of the reed", "10"],
    ["behind the reed", "10"],
    ["behind the heddles", "18"],
  ] as const)
    cited(
      `waste of 10 and 18 in, tied ${knotsTied}`,
      byHand(commonPractice, left),
      wasteByKnots,
      [{ knotsTied, ...usual }],
      ["inAll", inches],
    );

  it("is spared at one end of the loom, never at both: what is spared and what is left are the whole", () => {
    const places = fc.constantFrom(
      "in front of the reed" as const,
      "behind the reed" as const,
      "behind the heddles" as const,
    );
    const length = fc.integer({ min: 0, max: 100 });
    fc.assert(
      fc.property(places, length, length, (knotsTied, front, back) => {
        const found = wasteByKnots({ knotsTied, wasteInFront: inches(front), wasteBehind: inches(back) });
        expect(found.inAll.in(inches) + found.spared.in(inches)).toBe(front + back);
        expect(found.inFront.in(inches) + found.behind.in(inches)).toBe(found.inAll.in(inches));
        const other = found.sparedAt === "front" ? found.inFront : found.behind;
        expect(other.in(inches)).toBe(0);
      }),
    );
  });

  it("is none where a warp threaded afresh has none", () => {
    const none = wasteByKnots({ knotsTied: "behind the reed", wasteInFront: inches(0), wasteBehind: inches(0) });
    expect([none.inAll, none.spared].map(String)).toEqual(["0 in", "0 in"]);
  });

  it("is refused below none, for a place that is none and for what is not told", () => {
    expect(codesOf(wasteByKnots, { ...usual, knotsTied: "anywhere" })).toEqual(["unknown-word knotsTied"]);
    const given = { wasteInFront: inches(-1) };
    expect(codesOf(wasteByKnots, given)).toEqual([
      "missing knotsTied",
      "out-of-range wasteInFront",
      "missing wasteBehind",
    ]);
    expect(faultsOf(wasteByKnots, given)).toEqual([
      'wasteByKnots({ knotsTied }): "in front of the reed" or "behind the reed" or "behind the heddles"',
      "wasteByKnots({ wasteInFront }): a length of 0 or more",
      "wasteByKnots({ wasteBehind }): a length",
    ]);
  });
});
