import { expect, it } from "vitest";
import { inches } from "../units/index.js";
import { frozen } from "./frozen.js";

it("freezes a report with its lists and their members, and leaves amounts and units what they are", () => {
  const hem = inches(1);
  const report = frozen({ says: "short", steps: [{ input: { hem, unit: inches, ends: [1, 2] } }] });
  const [step] = report.steps;
  for (const part of [report, report.steps, step, step?.input, step?.input.ends])
    expect(part).toSatisfy(Object.isFrozen);
  expect(step?.input.hem).toBe(hem);
  expect(step?.input.unit).toBe(inches);
});
