import { isQuantity, yards } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import { examplePlan, examplePlans } from "#ci/example-plans.js";
import { jobIn } from "#ci/example-jobs.js";
import { figureAt } from "./at-path.js";
import { LISTED } from "./listed.js";
import { planFrom } from "./plan-from.js";
import { planJson, readPlan } from "./plan-json.js";
import { figurePaths, planDifferences } from "./plan-differences.js";
import { planOf } from "./plan-data.js";
import { waitsFor } from "./waits-for.js";
import { working } from "./working.js";

const napkins = examplePlan("2-hall-napkins");

/** What in a value is no plain data. */
function notPlain(value: unknown, path = ""): readonly string[] {
  if (value === null || ["string", "number", "boolean"].includes(typeof value))
    return Number.isNaN(value) ? [path] : [];
  if (typeof value !== "object") return [`${path}: ${typeof value}`];
  if (isQuantity(value)) return [];
  const prototype: unknown = Object.getPrototypeOf(value);
  const isPlain = Array.isArray(value) || prototype === Object.prototype;
  return [
    ...(isPlain ? [] : [path]),
    ...Object.entries(value).flatMap(([key, one]) => notPlain(one, `${path}.${key}`)),
  ];
}

describe("a plan as data", () => {
  it.each(examplePlans)("%s: is plain, and reads back from JSON and from a clone", (_, plan) => {
    expect(notPlain(plan)).toEqual([]);
    const json = planJson(plan);
    expect(readPlan(json)).toEqual(plan);
    expect(planFrom(structuredClone(plan))).toEqual(plan);
    expect(planJson(readPlan(json))).toBe(json);
    expect(planOf(readPlan(json).job)).toEqual(plan);
  });

  it("holds the amounts again as quantities", () => {
    expect(readPlan(planJson(napkins)).figures.warp.needed.value?.in(yards)).toBeCloseTo(4605 / 23 / 36, 12);
  });

  it.each(examplePlans)("%s: every figure with a formula has its working, from a copy too", (_, plan) => {
    const copy = planFrom(structuredClone(plan));
    const worked = figurePaths(plan).filter((path) => {
      const data = figureAt(plan, path)?.data;
      return typeof data?.calculation === "string" && data.value !== null;
    });
    expect(worked.length).toBeGreaterThan(4);
    for (const path of worked) {
      const shown = working(copy, path);
      const value = figureAt(plan, path)?.data.value;
      const number = typeof value === "number" ? value : Number((value as { value: string }).value);
      const [, told = ""] = /^(-?[\d.,]+)/u.exec(shown?.result.value ?? "") ?? [];
      const last = Number(told.replaceAll(",", ""));
      expect(Math.abs(last - number) <= 1e-3 * Math.max(1, Math.abs(number)), `${path.join(" ")} ${told}`).toBe(true);
    }
  });

  it("shows the working of the figure that another is, and none of what is counted or waits", () => {
    expect(working(napkins, ["figures", "warp", "length"])?.name).toBe("warp for order");
    expect(working(napkins, ["figures", "loom", "ends"])).toBe(null);
    expect(working(napkins, ["figures", "warp", "turns"])).toBe(null);
    expect(() => working(napkins, ["figures", "warp", "girth"])).toThrow("the path of a figure");
    expect(() => working(napkins, ["figures", "yarn", "nobody", "missing"])).toThrow("the path of a figure");
  });

  it("takes any name for a yarn", () => {
    const job = jobIn(
      'stripes: [4 __proto__, 4 toString]\nyarns: { "__proto__": { count: 2-ply of 8 cotton }, toString: { count: 20 tex in all } }\noldWarp: { ends: 8 }',
    );
    const plan = planOf(job);
    expect(Object.keys(plan.figures.yarn)).toEqual(["__proto__", "toString"]);
    expect(planFrom(structuredClone(plan))).toEqual(plan);
    expect(Object.keys(readPlan(planJson(plan)).figures.yarn)).toEqual(["__proto__", "toString"]);
  });

  it.each([
    ["nothing", undefined, "copy }): expected plain data, received nothing."],
    ["null", null, "copy }): expected a plan, received nothing."],
    ["a text", "plan", 'copy }): expected a plan, received "plan".'],
    ["an empty group", {}, "copy.thrumPlan }): expected 1, the form of this plan, received nothing."],
    ["another form", { ...napkins, thrumPlan: 2 }, "copy.thrumPlan }): expected 1, the form of this plan, received 2."],
    ["no job", { thrumPlan: 1, figures: napkins.figures }, "copy.job }): expected a job, received nothing."],
    ["a job that is none", { ...napkins, job: { stripes: 3 } }, "copy.job.stripes }): expected a list of ends"],
    ["no figures", { thrumPlan: 1, job: napkins.job }, "copy.figures }): expected the figures, received nothing."],
    [
      "a group missing",
      { ...napkins, figures: { ...napkins.figures, warp: undefined } },
      "copy.figures.warp }): expected a group of figures, received nothing.",
    ],
    [
      "a figure missing",
      { ...napkins, figures: { ...napkins.figures, warp: { ...napkins.figures.warp, needed: 3 } } },
      "copy.figures.warp.needed }): expected a figure, received 3.",
    ],
    [
      "a function in it",
      { ...napkins, figures: { ...napkins.figures, more: () => 0 } },
      "copy }): expected plain data, received a function.",
    ],
    [
      "a unit of no plan",
      { ...napkins, note: { dimension: "length", value: "3", unit: "cubits" } },
      "copy }): expected an amount in a unit of a plan, received a unit called cubits.",
    ],
    [
      "an amount that is none",
      { ...napkins, note: { dimension: "length", value: "three", unit: "inches" } },
      "copy }): expected an amount in a unit of a plan, received three inches.",
    ],
  ])("refuses %s", (_, given, says) => {
    expect(() => planFrom(given)).toThrow(`planFrom({ ${says}`);
  });

  it("refuses what holds itself, and text that is no JSON", () => {
    const loop: Record<string, unknown> = { ...napkins };
    loop["figures"] = loop;
    expect(() => planFrom(loop)).toThrow("or one that holds itself");
    expect(() => readPlan("{")).toThrow("expected JSON");
  });

  it("tells what a change changes, figure by figure", () => {
    const { job } = napkins;
    const pieces = job.pieces?.map((piece) => ({ ...piece, number: 10 })) ?? [];
    const found = planDifferences(napkins, planOf({ ...job, pieces }));
    const needed = found.find(({ path }) => path.join(" ") === "figures warp needed");
    expect(needed?.label).toBe("warp needed");
    expect(String(needed?.before)).toMatch(/^200\.217/u);
    // 10 × 17.5 ÷ 0.9 ÷ 0.92 + 10.
    expect(String(needed?.after)).toMatch(/^221\.352657/u);
    expect(found.some(({ path }) => path[1] === "loom")).toBe(false);
    expect(planDifferences(napkins, planFrom(structuredClone(napkins)))).toEqual([]);
  });

  it("says what figures wait for, each key once", () => {
    const smallest = examplePlan("1-smallest");
    expect(waitsFor(smallest, [["warp", "needed"]])).not.toEqual([]);
    expect(waitsFor(napkins, [["warp", "needed"]])).toEqual([]);
    expect(waitsFor(napkins, [["warp", "turns"]])).toEqual([["winding", "turn"]]);
    expect(waitsFor(planOf({}), [["piece", "woven"]])).toEqual([["pieces"]]);
  });

  it("has one scope in each group", () => {
    const scopes = new Map<string, Set<string>>();
    for (const { group, scope } of LISTED) scopes.set(group, (scopes.get(group) ?? new Set()).add(scope));
    expect([...scopes].filter(([, of]) => of.size > 1).map(([group]) => group)).toEqual([]);
  });
});
