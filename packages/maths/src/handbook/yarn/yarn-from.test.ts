import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cited, published } from "#ci/cited.js";
import { faultsOf } from "#ci/faults-of.js";
import { dooley1914, rugtalkYarnSize, taylor1909 } from "#ci/sources.js";
import type { QuantityError } from "../../engine/refusal.js";
import { cottonCount, inches, metricCount, spunSilkCount, tex, worstedCount } from "../../units/index.js";
import { yarnFrom, yarnReading } from "./yarn-from.js";
import { yarnCount } from "./yarn.js";

const british = { order: "plies first", system: cottonCount, counted: "single" } as const;
const american = { ...british, order: "count first" } as const;

const spunSilk = { ...american, system: spunSilkCount, counted: "finished thread" } as const;
const orders = published(rugtalkYarnSize, "British order statement", "8/4 in America is 4/8 in Britain", "4");

describe("the numbers of a label", () => {
  cited("the plies of 8/4, count first", orders, yarnFrom, ["8/4", american], "plies");
  cited("the plies of 4/8, plies first", orders, yarnFrom, ["4/8", british], "plies");
  cited(
    "2-40s cotton is of singles of 40",
    published(taylor1909, "site page 239", "20 hanks to the pound", "40"),
    yarnFrom,
    ["2-40s", british],
    ["count", cottonCount],
  );
  cited(
    "40s-2 spun silk is 40 as written",
    published(taylor1909, "site page 239", "40", "40"),
    yarnFrom,
    ["40s-2", spunSilk],
    ["count", spunSilkCount],
  );
  cited(
    "50-3 spun silk is 50 as written",
    published(dooley1914, "chapter on silk", "42000 yards to the pound", "50"),
    yarnFrom,
    ["50-3", spunSilk],
    ["count", spunSilkCount],
  );

  it.each([
    ["2/40s", british, 40, 2],
    ["2-40s", british, 40, 2],
    ["2/40's", british, 40, 2],
    ["8/2", american, 8, 2],
    ["2/8", british, 8, 2],
    ["40s-2", american, 40, 2],
    ["20s", american, 20, 1],
    ["20", british, 20, 1],
    ["5.5", american, 5.5, 1],
    ["99999.999", american, 99999.999, 1],
  ] as const)("%s is read", (label, how, count, plies) => {
    expect(yarnFrom(label, how)).toMatchObject({ count: { value: String(count) }, plies, counted: "single" });
  });

  it("alike on both sides are not taken for as many plies: 16/16 may be two threads of 16", () => {
    for (const [label, how, two] of [
      ["3/3", british, "2/3"],
      ["16/16", british, "2/16"],
      ["16/16s", british, "2/16"],
      ["16/16", american, "16/2"],
    ] as const) {
      const read = yarnReading(label, how);
      expect(read.ok ? null : read.faults[0]).toMatchObject({ code: "ambiguous", params: { candidates: [two] } });
      expect(yarnFrom(two, how).plies).toBe(2);
    }
    expect(yarnFrom("2/2", british)).toMatchObject({ count: { value: "2" }, plies: 2 });
  });

  it("make one yarn of 8/2 and 2/8 when each is read in its own order", () => {
    expect(yarnCount(yarnFrom("8/2", american)).value).toBe(yarnCount(yarnFrom("2/8", british)).value);
  });

  it("are of the system stated: 28/2 metric, 2/24 worsted, 30/2 tex", () => {
    expect(String(yarnCount(yarnFrom("28/2", { ...american, system: metricCount })))).toBe("14 Nm");
    expect(yarnCount(yarnFrom("2/24s", { ...british, system: worstedCount })).value).toBe("12");
    expect(yarnCount(yarnFrom("30/2", { ...american, system: tex })).value).toBe("60");
  });

  it.each([
    ["2/40s", american, "ambiguous"],
    ["40s/2", british, "ambiguous"],
    ["No. 60", american, "unreadable"],
    ["ticket 60", american, "unreadable"],
    ["8/0", american, "unreadable"],
    ["0/2", american, "unreadable"],
    ["8/2.5", american, "unreadable"],
    ["8/2/3", american, "unreadable"],
    ["eight", american, "unreadable"],
    ["100000", american, "unreadable"],
    ["8.0001", american, "unreadable"],
    ["", american, "unreadable"],
    ["Ne 8/2", american, "unreadable"],
  ] as const)("%j are refused", (label, how, code) => {
    const found = yarnReading(label, how);
    expect(found.ok ? "read" : found.faults[0].code).toBe(code);
  });

  it("are refused without order, system or what is counted, all at once", () => {
    try {
      yarnFrom("8/2", {} as never);
      expect.unreachable();
    } catch (error) {
      expect((error as QuantityError).faults).toHaveLength(3);
    }
    expect(() => yarnFrom("8/2", { ...american, system: inches as never })).toThrow("{ how.system })");
  });

  it("of any text give a yarn or a typed refusal", () => {
    const marks = fc.constantFrom("1", "8", "40", "s", "'", "/", "-", " ", ".", "No", "0");
    fc.assert(
      fc.property(
        fc.oneof(
          fc.array(marks).map((parts) => parts.join("")),
          fc.string(),
        ),
        (label) => {
          const found = yarnReading(label, american);
          if (found.ok) expect(found.value.plies).toBeGreaterThan(0);
        },
      ),
    );
  });
});

describe("a label", () => {
  const how = { order: "count first", system: cottonCount, counted: "single" } as const;
  const wanted = "yarnFrom({ label }): the numbers of a yarn, such as 2/40s or 8/2";
  const remedy = (label: unknown, by: object = how): string => {
    const lines = { text: "" };
    try {
      yarnFrom(label as never, by as never);
    } catch (error) {
      lines.text = (error as { remedy: string }).remedy;
    }
    return lines.text;
  };

  it("wants its order, system and meaning stated", () => {
    expect(faultsOf(() => yarnFrom("8/2", {} as never), {})).toEqual([
      'yarnFrom({ how.order }): "plies first" or "count first"',
      "yarnFrom({ how.system }): a unit for an indirect count",
      'yarnFrom({ how.counted }): "single" or "finished thread"',
    ]);
    expect(faultsOf(() => yarnFrom("8/2", undefined as never), {})).toHaveLength(3);
    expect(faultsOf(() => yarnFrom("8/2", { ...how, system: { ...tex } } as never), {})).toEqual([
      "yarnFrom({ how.system }): a unit for a direct count",
    ]);
  });

  it("is refused with what is to be done where it cannot be read", () => {
    for (const label of ["8/", "8/0", "0/2", "No. 30", 8, "8".repeat(41), "8/2s"])
      expect(faultsOf(() => yarnFrom(label as never, how), {})).toEqual([wanted]);
    expect(remedy("8/")).toBe("");
    expect(remedy(8)).toBe("Give the label as text.");
    expect(remedy(`8/2${" ".repeat(38)}`)).toBe("Give the label as text.");
    expect(remedy(" No. 30")).toBe("A ticket number is no count: find the count it stands for.");
    expect(remedy("8/0")).toBe("The plies are a whole number, 1 or more.");
    expect(remedy("8/1.5")).toBe("The plies are a whole number, 1 or more.");
    expect(remedy("0/2")).toBe("A count is more than nothing.");
    expect(remedy("8/2s")).toBe("The s marks the count, but the order stated is count first.");
    expect(remedy("8s/2", { ...how, order: "plies first" })).toBe(
      "The s marks the count, but the order stated is plies first.",
    );
  });

  it("may have blanks around it, 40 letters in all, a single with its mark in either order, and a dozen plies", () => {
    expect(yarnFrom(` 8/2${" ".repeat(36)}`, how).plies).toBe(2);
    expect(yarnFrom("20s", { ...how, order: "plies first" }).plies).toBe(1);
    expect(yarnFrom("8/12", how).plies).toBe(12);
  });
});
