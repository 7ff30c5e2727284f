import { describe, expect, it } from "vitest";
import { faultsOf } from "#ci/faults-of.js";
import { sum } from "../../engine/quantity/index.js";
import { centimetres, millimetres, percentAdded } from "../../units/index.js";
import {
  clothByShortRule,
  jammedSquareCloth,
  peirceCloth,
  threadFromCrimp,
  threadFromHeight,
  waveHeight,
} from "./index.js";

const [two, three, four] = [millimetres("0.2"), millimetres("0.3"), millimetres("0.4")];
const cloth = { endSpacing: four, pickSpacing: four, warpDiameter: two, weftDiameter: three };
const crimped = { ...cloth, warpCrimp: percentAdded(25) };
const THREADS = [
  "({ endSpacing }): a length",
  "({ pickSpacing }): a length",
  "({ warpDiameter }): a length",
  "({ weftDiameter }): a length",
  "({ warpCrimp }): a percentage added",
];

describe("what a sum of the cloth wants and does not get is named, with what it is", () => {
  it.each<[string, (nothing: never) => unknown, string[]]>([
    ["peirceCloth", peirceCloth, THREADS],
    ["clothByShortRule", clothByShortRule, [...THREADS, "({ factor }): a number"]],
    ["jammedSquareCloth", jammedSquareCloth, ["({ diameter }): a length"]],
    [
      "threadFromCrimp",
      threadFromCrimp,
      ["({ spacing }): a length", "({ crimp }): a percentage added", "({ diameters }): a length"],
    ],
    [
      "threadFromHeight",
      threadFromHeight,
      ["({ spacing }): a length", "({ height }): a length", "({ diameters }): a length"],
    ],
  ])("%s", (name, call, expected) => {
    expect(faultsOf(call, {})).toEqual(expected.map((line) => name + line));
  });
});

describe("a thread that cannot lie so is refused, with what to look at", () => {
  it("where it stands higher than both threads", () => {
    const high = { ...crimped, warpCrimp: percentAdded(100), factor: 1.36 };
    expect(() => clothByShortRule(high)).toThrow(
      "clothByShortRule({ warpCrimp }): expected a warp that stands no higher than both threads, " +
        "received 100 % added. Look at the diameters, the picks and the crimp.",
    );
    const height = { spacing: four, height: millimetres("0.6"), diameters: millimetres("0.5") };
    expect(() => threadFromHeight(height)).toThrow(
      "threadFromHeight({ height }): expected a wave no higher than both threads, received length 0.6 millimetres. " +
        "Round threads of these diameters cannot lie so: look at the diameters, the spacing and the height.",
    );
  });

  it("where threads would be closer than jammed", () => {
    const close = { spacing: millimetres("0.1"), height: two, diameters: millimetres("0.5") };
    expect(() => threadFromHeight(close)).toThrow(
      "threadFromHeight({ spacing }): expected threads no closer than jammed, received length 0.1 millimetres.",
    );
  });

  it("where round threads cannot take up the crimp", () => {
    const much = { spacing: four, crimp: percentAdded(300), diameters: four };
    expect(() => threadFromCrimp(much)).toThrow(
      "threadFromCrimp({ crimp }): expected no more crimp than round threads 1 of both diameters apart can take up, " +
        "received 300 % added. Look at the diameters and the spacing; a thread that flattens is not Peirce's.",
    );
  });
});

describe("the thickness of a cloth", () => {
  it("is taken where it is thickest, through the warp or through the weft", () => {
    // The wave is 4/3 × 0.4 × √0.25 = 4/15 mm: 4/15 + 0.2 against 0.5 − 4/15 + 0.3; with the diameters turned, the warp.
    const rule = { ...crimped, factor: 4 / 3 };
    expect(clothByShortRule(rule).thickness.in(millimetres)).toBeCloseTo(8 / 15, 12);
    const turned = { ...rule, warpDiameter: three, weftDiameter: two };
    expect(clothByShortRule(turned).thickness.in(millimetres)).toBeCloseTo(17 / 30, 12);
    expect(clothByShortRule(rule).steps).toEqual([
      { calculation: waveHeight, input: { spacing: four, crimp: percentAdded(25), factor: 4 / 3 } },
    ]);
    const thick = (input: typeof crimped): readonly number[] => {
      const { warp, weft, thickness } = peirceCloth(input);
      const through = [sum(warp.height, input.warpDiameter), sum(weft.height, input.weftDiameter)];
      return [...through, thickness].map((length) => length.in(millimetres));
    };
    const open = { ...crimped, endSpacing: millimetres("0.6"), pickSpacing: millimetres("0.6") };
    const [warp = 0, weft = 0, most] = thick({ ...open, warpCrimp: percentAdded(9) });
    expect(weft).toBeGreaterThan(warp);
    expect(most).toBe(weft);
    const [turnedWarp = 0, turnedWeft = 0, turnedMost] = thick({ ...open, warpDiameter: three, weftDiameter: two });
    expect(turnedWarp).toBeGreaterThan(turnedWeft);
    expect(turnedMost).toBe(turnedWarp);
  });

  it("is told in the unit of the first thread where both go through alike", () => {
    const jam = { ...cloth, warpDiameter: two, weftDiameter: two, pickSpacing: centimetres("0.04") };
    const alike = clothByShortRule({ ...jam, warpCrimp: percentAdded(25), factor: 1 });
    expect(alike.thickness).toMatchObject({ value: "0.04", unit: "centimetres" });
  });
});
