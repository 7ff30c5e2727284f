import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { endsPerDentForEdges } from "./ends-per-dent-for-edges.js";
import { stripeEdgesInDents } from "./stripe-edges-in-dents.js";

describe("stripe edges among the dents", () => {
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
  it("refuses an edge past the warp, dents that are all empty, and half an end", () => {
    expect(() => stripeEdgesInDents({ ends: 10, edges: [11], endsInEachDent: [2] })).toThrow(/edge 11/u);
    expect(() => stripeEdgesInDents({ ends: 10, edges: [5], endsInEachDent: [0, 0] })).toThrow(/empty dents/u);
    expect(() => stripeEdgesInDents({ ends: 10, edges: [], endsInEachDent: [2] })).toThrow("edges");
    expect(() => endsPerDentForEdges({ ends: 10, edges: [2.5], mostPerDent: 3 })).toThrow("edges[0]");
    expect(() => endsPerDentForEdges({ ends: 10, edges: [12], mostPerDent: 3 })).toThrow(/edge 12/u);
  });
});
