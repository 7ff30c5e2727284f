import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { commonPractice } from "#ci/sources.js";
import { centimetres, inches, percentLost, yards } from "../../units/index.js";
import { breaksBetween } from "./breaks-between.js";
import { fringesInAll } from "./fringes-in-all.js";
import { lossFromMeasures } from "./loss-from-measures.js";
import { warpForOrder } from "./warp-for-order.js";
import { wovenInOrder } from "./woven-in-order.js";
import { wovenLength } from "./woven-length.js";
import { piecesOfOrder } from "./pieces-of-order.js";

describe("pieces that a fixed warp gives", () => {
  cited("beside two pieces of 93 cm with fringe, a break between each", byHand(commonPractice, "6"), piecesOfOrder, [
    {
      warpLength: centimetres(986),
      loomWaste: centimetres(45),
      takeUp: percentLost(7),
      otherNumbers: [2],
      otherWoven: [centimetres(93)],
      otherFringes: [centimetres(5)],
      wovenLength: centimetres("92.07"),
      fringeEachEnd: centimetres(10),
      breakLength: centimetres("0.93"),
    },
  ]);
  cited("a millimetre short of six", byHand(commonPractice, "5"), piecesOfOrder, [
    {
      warpLength: centimetres("985.9"),
      loomWaste: centimetres(45),
      takeUp: percentLost(7),
      otherNumbers: [2],
      otherWoven: [centimetres(93)],
      otherFringes: [centimetres(5)],
      wovenLength: centimetres("92.07"),
      fringeEachEnd: centimetres(10),
      breakLength: centimetres("0.93"),
    },
  ]);
  cited("with nothing else on the warp", byHand(commonPractice, "4"), piecesOfOrder, [
    {
      warpLength: inches(100),
      loomWaste: inches(10),
      takeUp: percentLost(0),
      otherNumbers: [],
      otherWoven: [],
      otherFringes: [],
      wovenLength: inches(20),
      fringeEachEnd: inches(0),
      breakLength: inches(2),
    },
  ]);
  cited(
    "fifteen yards after a header of 3 inches, towels of 26 inches that were 29",
    byHand(commonPractice, "15"),
    piecesOfOrder,
    [
      {
        warpLength: yards(15),
        loomWaste: inches(9),
        takeUp: percentLost(6),
        otherNumbers: [1],
        otherWoven: [inches(3)],
        otherFringes: [inches(0)],
        wovenLength: wovenLength({
          finishedLength: inches(26),
          hemEachEnd: inches("1.25"),
          loomToFinished: lossFromMeasures({ before: inches(29), after: inches(26) }),
        }),
        fringeEachEnd: inches(0),
        breakLength: inches("0.25"),
      },
    ],
  );

  it("are as many as the sum of the warp allows, and one more would need a longer warp", () => {
    const length = fc.integer({ min: 0, max: 40 });
    const other = fc.tuple(fc.nat(4), length, length);
    const others = fc.array(other, { maxLength: 3 });
    fc.assert(
      fc.property(
        others,
        fc.integer({ min: 1, max: 60 }),
        length,
        length,
        fc.nat(30),
        (rest, size, fringe, gap, lost) => {
          const common = { takeUp: percentLost(lost), loomWaste: inches(20) };
          const needed = (pieces: number): number => {
            const number = [...rest.map(([one]) => one), pieces];
            const lengths = [...rest.map(([, woven]) => inches(woven)), inches(size)];
            const breaks = breaksBetween({ entries: number });
            const woven = wovenInOrder({ number: [...number, breaks], wovenLength: [...lengths, inches(gap)] });
            const fringeEachEnd = [...rest.map(([, , each]) => inches(each)), inches(fringe)];
            if (woven.value === "0") return 20;
            return warpForOrder({ ...common, woven, fringes: fringesInAll({ number, fringeEachEnd }) }).in(inches);
          };
          const pieces = (warp: number): number =>
            piecesOfOrder({
              ...common,
              warpLength: inches(warp),
              otherNumbers: rest.map(([one]) => one),
              otherWoven: rest.map(([, woven]) => inches(woven)),
              otherFringes: rest.map(([, , each]) => inches(each)),
              wovenLength: inches(size),
              fringeEachEnd: inches(fringe),
              breakLength: inches(gap),
            });
          for (const wanted of [1, 7]) {
            expect(pieces(needed(wanted) + 0.001)).toBe(wanted);
            expect(pieces(needed(wanted) - 0.001)).toBe(wanted - 1);
          }
        },
      ),
    );
  });
  it("are refused where the others alone are too long for the warp", () => {
    const others = { otherNumbers: [2], otherWoven: [inches(50)], otherFringes: [inches(0)] };
    const piece = { wovenLength: inches(20), fringeEachEnd: inches(0), breakLength: inches(0) };
    const warp = { loomWaste: inches(10), takeUp: percentLost(0), ...others, ...piece };
    expect(piecesOfOrder({ warpLength: inches(110), ...warp })).toBe(0);
    expect(() => piecesOfOrder({ warpLength: inches(109), ...warp })).toThrow("a whole number of pieces, 0 or more");
    expect(() => piecesOfOrder({ warpLength: inches(109), ...warp, otherNumbers: [] })).toThrow("a list of");
  });
});
