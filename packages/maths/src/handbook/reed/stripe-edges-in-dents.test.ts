import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byHand, cited } from "#ci/cited.js";
import { codesOf } from "#ci/codes-of.js";
import { commonPractice } from "#ci/sources.js";
import { stripeEdgesInDents } from "./stripe-edges-in-dents.js";

describe("stripe edges among the dents", () => {
  // Seven dents of two hold 14 ends, so end 15 is the first of the two in dent 8.
  cited(
    "dent of the last end of a stripe of 15 ends, two in each dent",
    byHand(commonPractice, "8"),
    stripeEdgesInDents,
    [{ ends: 40, edges: [15, 24, 40], endsInEachDent: [2] }],
    "0.dent",
  );
  it("two in a dent: the edge at end 15 cuts dent 8, the edge at 24 closes dent 12", () => {
    expect(stripeEdgesInDents({ ends: 40, edges: [15, 24, 40], endsInEachDent: [2] })).toEqual([
      { edge: 15, dent: 8, place: 1, endsInDent: 2, cutsDent: true },
      { edge: 24, dent: 12, place: 2, endsInDent: 2, cutsDent: false },
    ]);
  });
  it("counts the empty dents of an order", () => {
    // 1-0-2: end 1 in dent 1, ends 2 and 3 in dent 3, end 4 in dent 4.
    expect(stripeEdgesInDents({ ends: 9, edges: [2, 4], endsInEachDent: [1, 0, 2] })).toEqual([
      { edge: 2, dent: 3, place: 1, endsInDent: 2, cutsDent: true },
      { edge: 4, dent: 4, place: 1, endsInDent: 1, cutsDent: false },
    ]);
  });
  it("puts end after end where sleying it out puts it", () => {
    const order = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(order, fc.integer({ min: 2, max: 60 }), (endsInEachDent, ends) => {
        fc.pre(endsInEachDent.some((one) => one > 0));
        const edge = ends - 1;
        const [found] = stripeEdgesInDents({ ends, edges: [edge], endsInEachDent });
        const places: [number, number][] = [];
        for (let dent = 0; places.length < ends; dent += 1)
          for (let place = 1; place <= (endsInEachDent[dent % endsInEachDent.length] ?? 0); place += 1)
            places.push([dent + 1, place]);
        expect([found?.dent, found?.place]).toEqual(places[edge - 1]);
        expect(found?.cutsDent).toBe(places[edge]?.[0] === found?.dent);
      }),
    );
  });
  it("are none at the last end of the warp, and close a dent that is just full", () => {
    expect(stripeEdgesInDents({ ends: 10, edges: [10], endsInEachDent: [3] })).toEqual([]);
    // 9 ends are three dents of 3; with 10 in the warp the last dent holds one.
    expect(stripeEdgesInDents({ ends: 10, edges: [9], endsInEachDent: [3] })).toEqual([
      { edge: 9, dent: 3, place: 3, endsInDent: 3, cutsDent: false },
    ]);
    expect(stripeEdgesInDents({ ends: 2, edges: [1], endsInEachDent: [1] })).toEqual([
      { edge: 1, dent: 1, place: 1, endsInDent: 1, cutsDent: false },
    ]);
  });
  it.each([
    ["no end", { ends: 0 }, "out-of-range ends"],
    ["an edge past the warp", { edges: [5, 11] }, "out-of-range edges"],
    ["no edge", { edges: [] }, "empty edges"],
    ["half an end", { edges: [2.5] }, "not-whole edges.0"],
    ["dents that are all empty", { endsInEachDent: [0, 0] }, "out-of-range endsInEachDent"],
    ["fewer ends in a dent than none", { endsInEachDent: [2, -1] }, "out-of-range endsInEachDent.1"],
  ])("are refused for %s", (_, change, code) => {
    expect(codesOf(stripeEdgesInDents, { ends: 10, edges: [5], endsInEachDent: [2], ...change })).toEqual([code]);
  });
});
