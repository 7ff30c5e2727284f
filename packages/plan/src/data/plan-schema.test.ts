import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, it } from "vitest";
import { examplePlans } from "#ci/example-plans.js";
import { planJson } from "./plan-json.js";
import { planSchema } from "./plan-schema.js";

const fits = new Ajv2020({ strict: false }).compile(planSchema());

it.each(examplePlans)("%s: its JSON is as the schema says", (_, plan) => {
  expect(fits(JSON.parse(planJson(plan))), JSON.stringify(fits.errors)).toBe(true);
});

it("refuses a figure without its label", () => {
  const [first] = examplePlans;
  const data = JSON.parse(planJson(first?.[1] as never)) as { figures: { warp: { needed: { label?: string } } } };
  delete data.figures.warp.needed.label;
  expect(fits(data)).toBe(false);
});
