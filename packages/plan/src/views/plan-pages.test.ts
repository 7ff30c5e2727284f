import { expect, test } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { planWarp } from "../data/plan-warp.js";
import type { Section } from "./block.js";
import { planPages } from "./plan-pages.js";
import { planText } from "./text.js";

function pages(name: string): { readonly pages: readonly Section[]; readonly text: string } {
  const plan = planWarp(jobIn(exampleText(name)));
  return { pages: planPages(structuredClone(plan)), text: planText(plan) };
}

const saidOn = ({ blocks }: Section): readonly string[] =>
  blocks.flatMap((block) =>
    block.is === "says"
      ? [
          `${block.as}: ${block.says.map((one) => (typeof one === "object" ? JSON.stringify(one) : String(one))).join("")}`,
        ]
      : [],
  );

test("what stands before the cut is there in order, with its cautions", () => {
  const cutting = pages("2-hall-napkins").pages.find(({ name }) => name === "before-cutting");
  expect(cutting?.heading).toBe("Before cutting");
  const said = cutting === undefined ? [] : saidOn(cutting);
  const cautions = said.filter((one) => one.startsWith("caution")).map((one) => one.slice(0, 30));
  expect(cautions).toEqual(["caution: Ease the tension a to", "caution: Cut away from yoursel"]);
  expect(said.findIndex((one) => one.startsWith("step: Cut"))).toBeGreaterThan(
    said.findIndex((one) => one.startsWith("caution: Cut")),
  );
});

test("the pages come in the order in which the plan is printed", () => {
  for (const file of ["2-hall-napkins", "7-warp-with-faults", "1-smallest"]) {
    const { pages: given, text } = pages(file);
    const places = given.map(({ heading }) => text.indexOf(`\n${heading.toUpperCase()}\n`));
    expect(places).toEqual([...places].sort((one, other) => one - other));
    expect(places.every((place) => place > 0)).toBe(true);
  }
});
