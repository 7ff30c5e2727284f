import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { compare, times } from "../../engine/quantity/index.js";
import { QuantityError } from "../../engine/refusal.js";
import { lisaKay2013 } from "../../sources/index.js";
import {
  dentsPerInch,
  dentsPerTenCentimetres,
  endsPerCentimetre,
  endsPerInch,
  inches,
  percentOf,
} from "../../units/index.js";
import { endsPerDentForEdges } from "./ends-per-dent-for-edges.js";
import { exactSley } from "./exact-sley.js";
import { settOfSley } from "./sett-of-sley.js";
import { stripeEdgesInDents } from "./stripe-edges-in-dents.js";
import { substituteReeds } from "./substitute-reeds.js";

describe("the exact sley for a wanted sett", () => {
  cited(
    "18 to the inch in a 12-dent reed",
    published(lisaKay2013, "whole post", "1-2-1-2", "1-2"),
    exactSley,
    [{ reed: dentsPerInch(12), sett: endsPerInch(18), mostDents: 8 }],
    "order",
  );

  it("of 16 to the inch in a 10-dent reed is 8 ends in 5 dents, spread evenly", () => {
    const sley = exactSley({ reed: dentsPerInch(10), sett: endsPerInch(16), mostDents: 10 });
    expect(sley).toMatchObject({ ends: 8, dents: 5, order: "1-2-1-2-2", endsInEachDent: [1, 2, 1, 2, 2] });
    expect(sley.says).toBe("1 in every dent and one more in 3 of every 5 dents.");
  });

  it("of 12 in a 10-dent reed has one dent of two in every five", () => {
    expect(exactSley({ reed: dentsPerInch(10), sett: endsPerInch(12), mostDents: 5 }).order).toBe("1-1-1-1-2");
  });

  it("of twice the reed is two in every dent, and of a third of it one dent in three", () => {
    const even = exactSley({ reed: dentsPerInch(10), sett: endsPerInch(20), mostDents: 5 });
    expect([even.order, even.says]).toEqual(["2", "2 in every dent."]);
    expect(exactSley({ reed: dentsPerInch(12), sett: endsPerInch(4), mostDents: 5 }).order).toBe("0-0-1");
  });

  it("reads setts and reeds of two countries", () => {
    const sley = exactSley({ reed: dentsPerTenCentimetres(50), sett: endsPerCentimetre("7.5"), mostDents: 5 });
    expect(sley.order).toBe("1-2");
  });

  it("gives the sett back, and no shorter order does", () => {
    const input = fc.record({ ends: fc.integer({ min: 1, max: 60 }), dents: fc.integer({ min: 1, max: 20 }) });
    fc.assert(
      fc.property(input, ({ ends, dents }) => {
        const reed = dentsPerInch(12);
        const sett = settOfSley({ reed, dents: [1, 2 * dents - 1], endsPerDent: [2 * ends, 0] });
        const sley = exactSley({ reed, sett, mostDents: 20 });
        const [step] = sley.steps;
        expect(step && compare(step.calculation(step.input) as typeof sett, sett)).toBe(0);
        expect(sley.ends * dents).toBe(ends * sley.dents);
        expect(sley.dents).toBeLessThanOrEqual(dents);
        expect(Math.max(...sley.endsInEachDent) - Math.min(...sley.endsInEachDent)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("is refused where no order is short enough, with where to look next", () => {
    const input = { reed: dentsPerInch(10), sett: endsPerInch(16), mostDents: 4 };
    expect(() => exactSley(input)).toThrow(/order of 4 dents or fewer.*substituteReeds/u);
    expect(() => exactSley({ ...input, mostDents: 101 })).toThrow(QuantityError);
    expect(() => exactSley({ ...input, mostDents: 0 })).toThrow(QuantityError);
    expect(() => exactSley({ ...input, sett: dentsPerInch(16) as never })).toThrow(QuantityError);
  });
});

describe("substitute reeds", () => {
  const input = {
    sett: endsPerInch(16),
    ends: 320,
    reeds: [dentsPerInch(10), dentsPerInch(12)],
    within: percentOf(5),
    mostDents: 5,
  };

  it("for 16 to the inch: 1-1-2 in twelve and 1-2-1-2-2 in ten are exact, the shorter first, then the near ones", () => {
    const found = substituteReeds(input).map(({ reed, order, change }) => [String(reed), order, Number(change.value)]);
    expect(found.slice(0, 2)).toEqual([
      ["12 dents/in", "1-1-2", 0],
      ["10 dents/in", "1-2-1-2-2", 0],
    ]);
    // 3 in 2 dents is 15, a sixteenth less than 16: outside 5 in the hundred. 5 in 3 is 16 2/3, 4.17 % more: inside.
    expect(found.map(([, order]) => order)).not.toContain("1-2");
    expect(found.map(([, order]) => order)).toContain("1-2-2");
    // 7 in 5 of twelve are 16.8, just 5 in the hundred more: the last.
    expect(found.at(-1)?.slice(0, 2)).toEqual(["12 dents/in", "1-1-2-1-2"]);
  });

  it("give the change of sett and of width: 5 in 3 dents of ten are 2/3 closer, 320 ends 0.8 in narrower", () => {
    const choice = substituteReeds(input).find(({ order }) => order === "1-2-2");
    expect(choice?.sett.in(endsPerInch)).toBeCloseTo(50 / 3, 12);
    expect(choice?.change.in(endsPerInch)).toBeCloseTo(2 / 3, 12);
    expect(choice?.widthInReed.in(inches)).toBeCloseTo(19.2, 12);
    expect(choice?.widthChange.in(inches)).toBeCloseTo(-0.8, 12);
    expect(choice?.step.calculation(choice.step.input)).toEqual(choice?.sett);
  });

  it("hold a sett that lies just on the limit", () => {
    const limit = { ...input, sett: endsPerInch(20), reeds: [dentsPerInch(19)], within: percentOf(5), mostDents: 1 };
    expect(substituteReeds(limit).map(({ order }) => order)).toEqual(["1"]);
    expect(substituteReeds({ ...limit, within: percentOf("4.99") })).toEqual([]);
  });

  it("are every order inside the limits, nearest first, none twice", () => {
    const any = fc.record({ sett: fc.integer({ min: 4, max: 48 }), within: fc.integer({ min: 1, max: 20 }) });
    fc.assert(
      fc.property(any, ({ sett, within }) => {
        const found = substituteReeds({ ...input, sett: endsPerInch(sett), within: percentOf(within), mostDents: 4 });
        const wanted: string[] = [];
        for (const reed of [10, 12])
          for (let dents = 1; dents <= 4; dents += 1)
            for (let ends = 1; ends <= 5 * sett; ends += 1)
              if (100 * Math.abs(reed * ends - sett * dents) <= within * sett * dents)
                wanted.push(`${String((reed * ends) / dents)} in ${String(reed)}`);
        const got = found.map((one) => `${String(one.sett.in(endsPerInch))} in ${String(one.reed.in(dentsPerInch))}`);
        expect(new Set(got)).toEqual(new Set(wanted));
        expect(new Set(got).size).toBe(got.length);
        const off = found.map(({ change }) => Math.abs(change.in(endsPerInch)));
        expect(off).toEqual([...off].sort((a, b) => a - b));
      }),
    );
  });

  it("are refused without reeds, without a limit and for half an end", () => {
    expect(() => substituteReeds({ ...input, reeds: [] })).toThrow(QuantityError);
    expect(() => substituteReeds({ ...input, within: percentOf(0) })).toThrow(QuantityError);
    expect(() => substituteReeds({ ...input, ends: 320.5 })).toThrow(QuantityError);
    expect(() => substituteReeds({ ...input, mostDents: 200 })).toThrow(QuantityError);
  });

  it("change the width the other way when the sett is more open", () => {
    const open = substituteReeds({
      ...input,
      sett: endsPerInch(17),
      reeds: [dentsPerInch(8)],
      mostDents: 1,
      within: percentOf(6),
    });
    expect(open.map(({ order, widthChange }) => [order, compare(widthChange, times(widthChange, 0))])).toEqual([
      ["2", 1],
    ]);
  });
});

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

  it("tells for every number in a dent which edges it would cut", () => {
    expect(endsPerDentForEdges({ ends: 48, edges: [12, 30, 48], mostPerDent: 5 })).toEqual([
      { endsPerDent: 1, edgesInsideDents: [] },
      { endsPerDent: 2, edgesInsideDents: [] },
      { endsPerDent: 3, edgesInsideDents: [] },
      { endsPerDent: 4, edgesInsideDents: [30] },
      { endsPerDent: 5, edgesInsideDents: [12] },
    ]);
  });

  it("refuses an edge past the warp, dents that are all empty, and half an end", () => {
    expect(() => stripeEdgesInDents({ ends: 10, edges: [11], endsInEachDent: [2] })).toThrow(/edge 11/u);
    expect(() => stripeEdgesInDents({ ends: 10, edges: [5], endsInEachDent: [0, 0] })).toThrow(/empty dents/u);
    expect(() => stripeEdgesInDents({ ends: 10, edges: [], endsInEachDent: [2] })).toThrow(QuantityError);
    expect(() => endsPerDentForEdges({ ends: 10, edges: [2.5], mostPerDent: 3 })).toThrow(QuantityError);
    expect(() => endsPerDentForEdges({ ends: 10, edges: [12], mostPerDent: 3 })).toThrow(/edge 12/u);
  });
});
