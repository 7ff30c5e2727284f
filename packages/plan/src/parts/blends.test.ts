import { expect, test } from "vitest";
import { blendsOutlook, pictureOrder } from "./blends.js";
import { laid } from "./laid.js";
import { STRIPES } from "./laid-stripes.js";

const { runs } = laid(
  [
    { ends: 20, yarns: ["natural"] },
    { ends: 48, yarns: ["plum", "pink"] },
    { ends: 9, yarns: ["plum", "plum", "pink"] },
    { ends: 6, yarns: ["oat", "rose"], order: "strictly in turn" as const },
  ],
  STRIPES,
);

test("of every blend what chance can make: orders, stripes to expect, and the most of one yarn side by side", () => {
  expect(blendsOutlook(runs)).toEqual([
    {
      stripe: 2,
      ends: 48,
      hands: 24,
      yarns: [
        { yarn: "plum", ends: 24, mostTogether: 2 },
        { yarn: "pink", ends: 24, mostTogether: 2 },
      ],
      ordersOfHand: "2",
      stripesToExpect: "73/2",
      stripesToExpectAbout: 36.5,
    },
    {
      stripe: 3,
      ends: 9,
      hands: 3,
      yarns: [
        { yarn: "plum", ends: 6, mostTogether: 4 },
        { yarn: "pink", ends: 3, mostTogether: 2 },
      ],
      // Three orders of a hand, 27 of the stripe.
      ordersOfHand: "3",
      stripesToExpect: "53/9",
      stripesToExpectAbout: 53 / 9,
    },
  ]);
});

test("a possible picture: whole hands of the blend, strict turns as they are, the same for one seed", () => {
  const ends = (seed: number) => pictureOrder(runs, seed).flatMap(({ yarn, ends: of }) => Array<string>(of).fill(yarn));
  const picture = ends(7);
  expect(picture.length).toBe(83);
  expect(picture.slice(0, 20).every((yarn) => yarn === "natural")).toBe(true);
  for (let end = 20; end < 68; end += 2) expect(new Set(picture.slice(end, end + 2)).size).toBe(2);
  for (let end = 68; end < 77; end += 3)
    expect(picture.slice(end, end + 3).filter((yarn) => yarn === "plum").length).toBe(2);
  expect(picture.slice(77)).toEqual(["oat", "rose", "oat", "rose", "oat", "rose"]);
  expect(ends(7)).toEqual(picture);
  expect(ends(8)).not.toEqual(picture);
  const long = laid([{ ends: 10_000, yarns: ["plum", "pink"] }], STRIPES).runs;
  expect([blendsOutlook(long), pictureOrder(long, 1).reduce((sum, run) => sum + run.ends, 0)]).toEqual([[], 10_000]);
});
