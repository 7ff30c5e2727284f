import { asText, explain } from "@thrum/maths";
import { refuseUnlessPlan } from "../plan/brand.js";
import type { WarpPlan } from "../plan/warp-plan.js";

type Step = Parameters<typeof explain>;

function isStep(value: unknown): value is { readonly calculation: Step[0]; readonly input: Step[1] } {
  return typeof value === "object" && value !== null && "calculation" in value && "input" in value;
}

/** A calculation is code; what a reader of data can use is its name, what went in and how it was worked. */
function asData(_: string, value: unknown): unknown {
  if (!isStep(value)) return value;
  const { calculation, input } = value;
  return { name: calculation.declaration.name, input, working: asText(explain(calculation, input)).split("\n") };
}

/** What JSON allows as it stands but a terminal would obey; the line ends are our own, those of the job are escaped. */
const UNSEEN = /(?!\n)[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu;

function escapes(character: string): string {
  const units = Array.from({ length: character.length }, (_, at) => character.charCodeAt(at));
  return units.map((unit) => `\\u${unit.toString(16).padStart(4, "0")}`).join("");
}

/**
 * A plan as JSON: all its data, each sum with its working. Lengths and masses keep their units and exact values.
 *
 * @param plan what `planWarp` gives
 * @throws QuantityError for anything else, a copy of a plan too
 */
export function planJson(plan: WarpPlan): string {
  refuseUnlessPlan("planJson(plan)", plan);
  return JSON.stringify({ thrumPlan: 1, ...plan }, asData, 2).replace(UNSEEN, escapes);
}
