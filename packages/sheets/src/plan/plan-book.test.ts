import { readFileSync } from "node:fs";
import { isDefinedName } from "@thrum/maths";
import { planWarp, readJob } from "@thrum/plan";
import type { WarpPlan } from "@thrum/plan";
import { describe, expect, it } from "vitest";
import { INPUT } from "../book/cells.js";
import { workbookOf } from "../workbook-of.js";
import { planBook } from "./plan-book.js";

const text = readFileSync("examples/hall-napkins/job.yaml", "utf8");

function planOf(job: string): WarpPlan {
  const reading = readJob(job);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return planWarp(reading.job);
}

const book = planBook(planOf(text));

describe("the workbook of a plan", () => {
  it("has every number that is not given worked out by a formula", () => {
    const numbers = book.sheets.flatMap(({ name, cells }) =>
      cells.filter(({ content }) => "number" in content).map((cell) => ({ name, ...cell })),
    );
    const plain = numbers.filter(({ look }) => look.fill !== INPUT.fill).map(({ name, at }) => `${name}!${at}`);
    // The numbers of the three yarns in the list beside the stripes.
    expect(plain).toEqual(["Stripes!I5", "Stripes!I6", "Stripes!I7"]);
    expect(numbers.length).toBeGreaterThan(30);
  });

  it("names its cells as no program names a cell of its own, each once", () => {
    expect([...book.names.keys()].filter((name) => !isDefinedName(name))).toEqual([]);
    expect(new Set(book.names.values()).size).toBe(book.names.size);
  });

  it("lets nothing be typed that the job would refuse", () => {
    const ruled = book.sheets.flatMap(({ name, rules }) => rules.map(({ at }) => `${name}!${at}`));
    const given = book.sheets.flatMap(({ name, cells }) =>
      cells.filter(({ look }) => look.fill === INPUT.fill).map(({ at }) => `${name}!${at}`),
    );
    expect(new Set(ruled)).toEqual(new Set(given));
  });

  it("tells on each answer of a calculation where its rule comes from", () => {
    const notes = book.sheets.flatMap((sheet) => sheet.notes);
    expect(notes.length).toBeGreaterThan(20);
    for (const note of notes) expect(note.text).toMatch(/^Source: \S/u);
  });

  it("is the same file to the byte each time", () => {
    expect(workbookOf(planOf(text))).toEqual(workbookOf(planOf(text)));
  });

  it("counts each yarn in its own units, and takes any name for one", () => {
    const renamed = text.replaceAll("indigo", '"=1+1"').replace("package: 50 g", "package: 2 oz");
    const odd = planBook(planOf(renamed));
    const cells = odd.sheets.find(({ name }) => name === "Yarns")?.cells ?? [];
    const heading = cells.findIndex(({ content }) => "text" in content && content.text === "=1+1");
    expect(heading).toBeGreaterThan(0);
    const formulas = odd.sheets
      .flatMap((sheet) => sheet.cells)
      .flatMap(({ content }) => ("formula" in content ? [content.formula] : []));
    // 2 oz of 28.349523125 g each, beside 20 g on hand.
    expect(formulas).toContain("=yarn3_packages*yarn3_package_mass*45359237/1600000+yarn3_on_hand-yarn3_mass");
  });

  it("is refused for a copy of a plan, which has lost its units", () => {
    expect(() => workbookOf(JSON.parse(JSON.stringify(planOf(text))) as WarpPlan)).toThrow("made by planWarp");
  });
});
