import { describe, expect, it } from "vitest";
import { faultsOf } from "#ci/faults-of.js";
import { endsPerInch, inches, millimetres, tex } from "../../units/index.js";
import {
  countsOfWarp,
  endsAtSides,
  groupsWithMiscount,
  joiningOrThreading,
  knotsThroughHeddles,
  knotsThroughReed,
  leaseLifts,
  miscountAtEdge,
  tieOn,
  wasteByKnots,
} from "./index.js";

const KNOTS = `"overhand of both ends" or "overhand of one end" or "square" or "weaver's"`;

describe("what a sum of the tie-on wants and does not get is named, with what it is", () => {
  it.each<[(nothing: never) => unknown, unknown, string[]]>([
    [
      countsOfWarp,
      { ends: 0, sharingHeddle: -1, floating: -1, lost: -1, endsInEachDent: [2, -1] },
      [
        "countsOfWarp({ ends }): a whole number of ends, 1 or more",
        "countsOfWarp({ sharingHeddle }): a whole number of ends, 0 or more",
        "countsOfWarp({ floating }): a whole number of ends, 0 or more",
        "countsOfWarp({ lost }): a whole number of ends, 0 or more",
        "countsOfWarp({ endsInEachDent[1] }): a whole number of ends in each dent, 0 or more",
      ],
    ],
    [
      groupsWithMiscount,
      { planned: [0], oldCounted: [-1], newCounted: [-1] },
      [
        "groupsWithMiscount({ planned[0] }): a whole number of ends, 1 or more",
        "groupsWithMiscount({ oldCounted[0] }): a whole number of ends, 0 or more",
        "groupsWithMiscount({ newCounted[0] }): a whole number of ends, 0 or more",
      ],
    ],
    [
      joiningOrThreading,
      { ends: 0 },
      [
        "joiningOrThreading({ ends }): a whole number of ends, 1 or more",
        "joiningOrThreading({ knotsPerHour }): a number",
        "joiningOrThreading({ otherHoursJoining }): a number",
        "joiningOrThreading({ endsPerHourThreading }): a number",
        "joiningOrThreading({ otherHoursThreading }): a number",
        "joiningOrThreading({ newWarpSpared }): a length",
        "joiningOrThreading({ oldWarpGivenUp }): a length",
      ],
    ],
    [
      knotsThroughHeddles,
      {},
      [
        "knotsThroughHeddles({ eyeWidth }): a length",
        "knotsThroughHeddles({ eyeHeight }): a length",
        'knotsThroughHeddles({ eye }): "metal" or "cord"',
        "knotsThroughHeddles({ oldDiameter }): a length",
        "knotsThroughHeddles({ newDiameter }): a length",
        `knotsThroughHeddles({ knot }): ${KNOTS}`,
      ],
    ],
    [
      knotsThroughReed,
      { space: millimetres(0) },
      [
        "knotsThroughReed({ space }): a length of more than 0",
        "knotsThroughReed({ oldDiameter }): a length",
        "knotsThroughReed({ newDiameter }): a length",
        "knotsThroughReed({ endsInDent }): a whole number of ends in a dent",
        `knotsThroughReed({ knot }): ${KNOTS}`,
      ],
    ],
    [
      leaseLifts,
      {},
      ["leaseLifts({ shafts }): a whole number of shafts", "leaseLifts({ parts }): a list of the parts of a threading"],
    ],
    [
      miscountAtEdge,
      { planned: [0, 24], lastRight: 2, foundAt: 3, oldSeen: -1, newSeen: -1, countedRight: [0], countedOdd: [3] },
      [
        "miscountAtEdge({ planned[0] }): a whole number of ends, 1 or more",
        "miscountAtEdge({ lastRight }): a whole number of groups, no more than 1",
        "miscountAtEdge({ foundAt }): a whole number of groups, no more than 2",
        "miscountAtEdge({ oldSeen }): a whole number of ends, 0 or more",
        "miscountAtEdge({ newSeen }): a whole number of ends, 0 or more",
        "miscountAtEdge({ countedRight[0] }): a whole number of groups, 1 or more",
        "miscountAtEdge({ countedOdd[0] }): a whole number of groups, no more than 2",
      ],
    ],
    [
      miscountAtEdge,
      { planned: [24, 24], lastRight: -1, foundAt: 0, oldSeen: 1, newSeen: 0, countedRight: [], countedOdd: [] },
      [
        "miscountAtEdge({ lastRight }): a whole number of groups, 0 or more",
        "miscountAtEdge({ foundAt }): a whole number of groups, 1 or more",
      ],
    ],
    [
      miscountAtEdge,
      { planned: [24, 24], lastRight: 1, foundAt: 1, oldSeen: 1, newSeen: 0, countedRight: [], countedOdd: [] },
      ["miscountAtEdge({ foundAt }): a group after the last that agreed"],
    ],
    [
      miscountAtEdge,
      { planned: [24, 24], lastRight: 1, foundAt: 2, oldSeen: 0, newSeen: 0, countedRight: [], countedOdd: [] },
      ["miscountAtEdge({ newSeen }): ends of one warp left over"],
    ],
    [
      wasteByKnots,
      { wasteInFront: inches(-1) },
      [
        'wasteByKnots({ knotsTied }): "in front of the reed" or "behind the reed" or "behind the heddles"',
        "wasteByKnots({ wasteInFront }): a length of 0 or more",
        "wasteByKnots({ wasteBehind }): a length",
      ],
    ],
    [
      (nothing) => tieOn(nothing, nothing),
      { ends: 0, threading: [1, 0, 1001] },
      [
        "tieOn({ oldWarp.ends }): a whole number of ends, 1 or more",
        "tieOn({ oldWarp.sett }): a sett",
        "tieOn({ oldWarp.threading[1] }): a whole number of shafts, 1 or more",
        "tieOn({ oldWarp.threading[2] }): a whole number of shafts, no more than 1000",
        "tieOn({ oldWarp.count }): a yarn count",
        "tieOn({ newWarp.ends }): a whole number of ends, 1 or more",
        "tieOn({ newWarp.sett }): a sett",
        "tieOn({ newWarp.threading[1] }): a whole number of shafts, 1 or more",
        "tieOn({ newWarp.threading[2] }): a whole number of shafts, no more than 1000",
        "tieOn({ newWarp.count }): a yarn count",
        "tieOn({ newWarp.edges }): a list of at least one, each a whole number of ends",
      ],
    ],
    [
      (nothing) => tieOn({ ends: 4, sett: endsPerInch(10), threading: [1], count: tex(10) }, nothing),
      { ends: 4, sett: endsPerInch(10), threading: [1], count: tex(10), edges: [0] },
      ["tieOn({ newWarp.edges[0] }): a whole number of ends, 1 or more"],
    ],
  ])("%o", (call, given, expected) => {
    expect(faultsOf(call, given)).toEqual(expected);
  });

  it("at the sides too, in the order the sides are read", () => {
    const ends = { oldEnds: 8, newEnds: 9, threading: [1, 2, 3], endsPerDent: 1 };
    const dents = { beforeFirst: 0, afterLast: 1 };
    const spares = { beforeFirst: [0, 0, 0], afterLast: [0, 0, 0] };
    const given = { ...ends, emptyDents: dents, spareHeddles: spares };
    const both = (field: string, one: string, wanted: string): string[] =>
      ["beforeFirst", "afterLast"].map((side) => `endsAtSides({ ${field}.${side}${one} }): ${wanted}`);
    const none = { oldEnds: 0, newEnds: 0, threading: [0, 1001], endsPerDent: 0 };
    expect(faultsOf(endsAtSides, { ...given, ...none })).toEqual([
      "endsAtSides({ oldEnds }): a whole number of ends, 1 or more",
      "endsAtSides({ newEnds }): a whole number of ends, 1 or more",
      "endsAtSides({ threading[0] }): a whole number of shafts, 1 or more",
      "endsAtSides({ threading[1] }): a whole number of shafts, no more than 1000",
      "endsAtSides({ endsPerDent }): a whole number of ends in each dent, 1 or more",
    ]);
    const many = { oldEnds: 1_000_001, newEnds: 1_000_001 };
    expect(faultsOf(endsAtSides, { ...given, ...many })).toEqual([
      "endsAtSides({ oldEnds }): a whole number of ends, no more than 1000000",
      "endsAtSides({ newEnds }): a whole number of ends, no more than 1000000",
    ]);
    expect(faultsOf(endsAtSides, { ...given, emptyDents: { beforeFirst: -1, afterLast: -1 } })).toEqual(
      both("emptyDents", "", "a whole number of dents, 0 or more"),
    );
    expect(faultsOf(endsAtSides, { ...given, spareHeddles: { beforeFirst: [-1], afterLast: [-1] } })).toEqual(
      both("spareHeddles", "[0]", "a whole number of heddles, 0 or more"),
    );
    expect(faultsOf(endsAtSides, { ...given, spareHeddles: { ...spares, afterLast: [0, 0] } })).toEqual([
      "endsAtSides({ spareHeddles.afterLast }): a number for each of 3 shafts",
    ]);
    expect(endsAtSides({ ...given, oldEnds: 1_000_000, newEnds: 1_000_000 }).verdict).toBe("fits");
  });
});
