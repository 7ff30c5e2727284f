import { isDefinedName } from "@thrum/maths";
import { planJson, planSums, planWarp, readJob } from "@thrum/plan";
import type { PlanData } from "@thrum/plan";
import { describe, expect, it } from "vitest";
import { examplePlan, examplePlans } from "#ci/example-plans.js";
import { jobIn } from "#ci/example-jobs.js";
import { INPUT } from "../book/cells.js";
import type { Book } from "../book/book.js";
import { workbookOf } from "../workbook-of.js";
import { planBook } from "./plan-book.js";

const book = planBook(examplePlan("2-hall-napkins"));

function formulasOf({ sheets }: Book): readonly string[] {
  return sheets.flatMap(({ cells }) => cells.flatMap(({ content }) => ("formula" in content ? [content.formula] : [])));
}

describe("the workbook of a plan", () => {
  it.each(examplePlans)("%s: has a cell for every figure, worked out where a formula gives it", (_, plan) => {
    const own = planBook(plan);
    const [sheet] = own.sheets;
    const sums = planSums(plan);
    const cells = (sheet?.cells ?? []).filter(({ at, content }) => /^[C-Z]/u.test(at) && "formula" in content);
    const worked = sums.filter(({ calculation }) => calculation !== null);
    expect(cells.length).toBeGreaterThanOrEqual(worked.length);
    const names = [...own.names.keys()];
    expect(names.filter((name) => !isDefinedName(name))).toEqual([]);
    expect(new Set(own.names.values()).size).toBe(own.names.size);
    // Every name that a formula reads stands somewhere.
    const read = formulasOf(own).flatMap(
      (formula) => formula.replace(/"[^"]*"/gu, "").match(/\b[a-z]+\d*_[a-z\d_]+/gu) ?? [],
    );
    expect([...new Set(read)].filter((name) => !own.names.has(name))).toEqual([]);
  });

  it("lets nothing be typed without a rule, and rules nothing else", () => {
    const ruled = book.sheets.flatMap(({ name, rules }) => rules.map(({ at }) => `${name}!${at}`));
    const given = book.sheets.flatMap(({ name, cells }) =>
      cells.filter(({ look }) => look.fill === INPUT.fill).map(({ at }) => `${name}!${at}`),
    );
    expect(new Set(ruled)).toEqual(new Set(given));
  });

  it("tells on each sum where its rule comes from, and of what waits which key", () => {
    const notes = book.sheets.flatMap((sheet) => sheet.notes.map(({ text }) => text));
    expect(notes.filter((text) => /^Source: \S/u.test(text)).length).toBeGreaterThan(60);
    expect(notes).toContain("waits for winding.turn");
  });

  it("shares the ends of a blend among its yarns", () => {
    const towels = planBook(examplePlan("3-blended-towels"));
    expect(formulasOf(towels)).toContain("=SUMPRODUCT(stripe_ends*yarn2_share)");
    expect(formulasOf(towels)).toContain("=2/3");
  });

  it("takes any name for a yarn", () => {
    const job = jobIn(
      'stripes: [4 __proto__, "4 =1+1"]\nyarns: { "__proto__": { count: 2-ply of 8 cotton }, "=1+1": { count: 20 tex in all } }',
    );
    const odd = planBook(planWarp(job));
    const texts = odd.sheets.flatMap(({ cells }) =>
      cells.flatMap(({ content }) => ("text" in content ? [content.text] : [])),
    );
    expect(texts).toContain("=1+1");
    expect(texts).toContain("__proto__");
    expect(formulasOf(odd)).not.toContain("=1+1");
  });

  it.each(examplePlans)("%s: is the same file to the byte each time, of a copy too", (_, plan) => {
    const bytes = workbookOf(plan);
    expect(workbookOf(structuredClone(plan))).toEqual(bytes);
    expect(workbookOf(JSON.parse(planJson(plan)) as PlanData)).toEqual(bytes);
  });

  it("is made of a job with nothing in it, and refused for what is no plan", () => {
    const reading = readJob("thrum: 1");
    if (!reading.ok) throw new Error("no job");
    expect(workbookOf(planWarp(reading.value)).length).toBeGreaterThan(1000);
    expect(() => workbookOf({} as PlanData)).toThrow("planFrom");
  });
});
