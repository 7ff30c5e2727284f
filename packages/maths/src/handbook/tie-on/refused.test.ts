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

const KNOTS = `"overhand of both ends" or "overhand of one end" or "square" or "weaver's" (how each old end is joined to its new one)`;

describe("what a sum of the tie-on wants and does not get is named, with what it is", () => {
  it.each<[(nothing: never) => unknown, unknown, string[]]>([
    [
      countsOfWarp,
      { ends: 0, sharingHeddle: -1, floating: -1, lost: -1, endsInEachDent: [2, -1] },
      [
        "countsOfWarp({ ends }): a whole number of ends, 1 or more (of the old warp, all of them)",
        "countsOfWarp({ sharingHeddle }): a whole number of ends, 0 or more (that share the heddle of a neighbour)",
        "countsOfWarp({ floating }): a whole number of ends, 0 or more (in no heddle)",
        "countsOfWarp({ lost }): a whole number of ends, 0 or more (broken or pulled out)",
        "countsOfWarp({ endsInEachDent[1] }): a whole number of ends in each dent, 0 or more (of the sleying order)",
      ],
    ],
    [
      groupsWithMiscount,
      { planned: [0], oldCounted: [-1], newCounted: [-1] },
      [
        "groupsWithMiscount({ planned[0] }): a whole number of ends, 1 or more (of one group, as planned)",
        "groupsWithMiscount({ oldCounted[0] }): a whole number of ends, 0 or more (of the old warp counted in one group)",
        "groupsWithMiscount({ newCounted[0] }): a whole number of ends, 0 or more (of the new warp counted in one group)",
      ],
    ],
    [
      joiningOrThreading,
      { ends: 0 },
      [
        "joiningOrThreading({ ends }): a whole number of ends, 1 or more (one knot to each)",
        "joiningOrThreading({ knotsPerHour }): a number (knots an hour, counted on a first hundred)",
        "joiningOrThreading({ otherHoursJoining }): a number (hours, of leases and of drawing the knots through)",
        "joiningOrThreading({ endsPerHourThreading }): a number (ends an hour, threaded and sleyed)",
        "joiningOrThreading({ otherHoursThreading }): a number (hours, of the lease and of looking for errors)",
        "joiningOrThreading({ newWarpSpared }): a length (of every end)",
        "joiningOrThreading({ oldWarpGivenUp }): a length (of every end, kept for the knots)",
      ],
    ],
    [
      knotsThroughHeddles,
      {},
      [
        "knotsThroughHeddles({ eyeWidth }): a length (of the eye, measured)",
        "knotsThroughHeddles({ eyeHeight }): a length (of the eye, measured)",
        'knotsThroughHeddles({ eye }): "metal" or "cord" (what the eye is made of)',
        "knotsThroughHeddles({ oldDiameter }): a length (across the thickest old thread, pressed together)",
        "knotsThroughHeddles({ newDiameter }): a length (across the thickest new thread, pressed together)",
        `knotsThroughHeddles({ knot }): ${KNOTS}`,
      ],
    ],
    [
      knotsThroughReed,
      { space: millimetres(0) },
      [
        "knotsThroughReed({ space }): a length of more than 0 (free in one dent)",
        "knotsThroughReed({ oldDiameter }): a length (across the thickest old thread, pressed together)",
        "knotsThroughReed({ newDiameter }): a length (across the thickest new thread, pressed together)",
        "knotsThroughReed({ endsInDent }): a whole number of ends in a dent (of the thickest new yarn, where there are most)",
        `knotsThroughReed({ knot }): ${KNOTS}`,
      ],
    ],
    [
      leaseLifts,
      {},
      [
        "leaseLifts({ shafts }): a whole number of shafts (of the loom)",
        "leaseLifts({ parts }): a list of the parts of a threading",
      ],
    ],
    [
      miscountAtEdge,
      { planned: [0, 24], lastRight: 2, foundAt: 3, oldSeen: -1, newSeen: -1, countedRight: [0], countedOdd: [3] },
      [
        "miscountAtEdge({ planned[0] }): a whole number of ends, 1 or more (of one group, as planned)",
        "miscountAtEdge({ lastRight }): a whole number of groups, no more than 1 (up to the last edge that agreed)",
        "miscountAtEdge({ foundAt }): a whole number of groups, no more than 2 (up to the edge with ends left over)",
        "miscountAtEdge({ oldSeen }): a whole number of ends, 0 or more (of the old warp seen left at the edge)",
        "miscountAtEdge({ newSeen }): a whole number of ends, 0 or more (of the new warp seen left at the edge)",
        "miscountAtEdge({ countedRight[0] }): a whole number of groups, 1 or more (by number, that were counted right)",
        "miscountAtEdge({ countedOdd[0] }): a whole number of groups, no more than 2 (by number, that were counted odd)",
      ],
    ],
    [
      miscountAtEdge,
      { planned: [24, 24], lastRight: -1, foundAt: 0, oldSeen: 1, newSeen: 0, countedRight: [], countedOdd: [] },
      [
        "miscountAtEdge({ lastRight }): a whole number of groups, 0 or more (up to the last edge that agreed)",
        "miscountAtEdge({ foundAt }): a whole number of groups, 1 or more (up to the edge with ends left over)",
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
        'wasteByKnots({ knotsTied }): "in front of the reed" or "behind the reed" or "behind the heddles" (where the knots are tied)',
        "wasteByKnots({ wasteInFront }): a length of 0 or more (of a warp threaded afresh, to the first pick)",
        "wasteByKnots({ wasteBehind }): a length (of a warp threaded afresh, from the last pick)",
      ],
    ],
    [
      (nothing) => tieOn(nothing, nothing),
      { ends: 0, threading: [1, 0, 1001] },
      [
        "tieOn({ oldWarp.ends }): a whole number of ends, 1 or more (one knot to each)",
        "tieOn({ oldWarp.sett }): a sett (in the reed)",
        "tieOn({ oldWarp.threading[1] }): a whole number of shafts, 1 or more (of one threading repeat, in turn)",
        "tieOn({ oldWarp.threading[2] }): a whole number of shafts, no more than 1000 (of one threading repeat, in turn)",
        "tieOn({ oldWarp.count }): a yarn count (of the finished thread)",
        "tieOn({ newWarp.ends }): a whole number of ends, 1 or more (one knot to each)",
        "tieOn({ newWarp.sett }): a sett (in the reed)",
        "tieOn({ newWarp.threading[1] }): a whole number of shafts, 1 or more (of one threading repeat, in turn)",
        "tieOn({ newWarp.threading[2] }): a whole number of shafts, no more than 1000 (of one threading repeat, in turn)",
        "tieOn({ newWarp.count }): a yarn count (of the finished thread)",
        "tieOn({ newWarp.edges }): a list of at least one, each a whole number of ends (up to and with the last of a stripe)",
      ],
    ],
    [
      (nothing) => tieOn({ ends: 4, sett: endsPerInch(10), threading: [1], count: tex(10) }, nothing),
      { ends: 4, sett: endsPerInch(10), threading: [1], count: tex(10), edges: [0] },
      ["tieOn({ newWarp.edges[0] }): a whole number of ends, 1 or more (up to and with the last of a stripe)"],
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
      "endsAtSides({ oldEnds }): a whole number of ends, 1 or more (of the old warp)",
      "endsAtSides({ newEnds }): a whole number of ends, 1 or more (of the new warp)",
      "endsAtSides({ threading[0] }): a whole number of shafts, 1 or more (of one threading repeat, in turn)",
      "endsAtSides({ threading[1] }): a whole number of shafts, no more than 1000 (of one threading repeat, in turn)",
      "endsAtSides({ endsPerDent }): a whole number of ends in each dent, 1 or more (as sleyed)",
    ]);
    const many = { oldEnds: 1_000_001, newEnds: 1_000_001 };
    expect(faultsOf(endsAtSides, { ...given, ...many })).toEqual([
      "endsAtSides({ oldEnds }): a whole number of ends, no more than 1000000 (of the old warp)",
      "endsAtSides({ newEnds }): a whole number of ends, no more than 1000000 (of the new warp)",
    ]);
    expect(faultsOf(endsAtSides, { ...given, emptyDents: { beforeFirst: -1, afterLast: -1 } })).toEqual(
      both("emptyDents", "", "a whole number of dents, 0 or more (still empty at that side)"),
    );
    expect(faultsOf(endsAtSides, { ...given, spareHeddles: { beforeFirst: [-1], afterLast: [-1] } })).toEqual(
      both(
        "spareHeddles",
        "[0]",
        "a whole number of heddles, 0 or more (that hang outside the outermost threaded end)",
      ),
    );
    expect(faultsOf(endsAtSides, { ...given, spareHeddles: { ...spares, afterLast: [0, 0] } })).toEqual([
      "endsAtSides({ spareHeddles.afterLast }): a number for each of 3 shafts",
    ]);
    expect(endsAtSides({ ...given, oldEnds: 1_000_000, newEnds: 1_000_000 }).verdict).toBe("fits");
  });
});
