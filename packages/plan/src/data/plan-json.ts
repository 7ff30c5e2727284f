import { QuantityError } from "@thrum/maths";
import { planFrom } from "./plan-from.js";
import type { PlanData } from "./plan-data.js";

/** What JSON allows as it stands but a terminal would obey. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu;

function escapes(character: string): string {
  const units = Array.from({ length: character.length }, (_, at) => character.charCodeAt(at));
  return units.map((unit) => `\\u${unit.toString(16).padStart(4, "0")}`).join("");
}

/**
 * A plan as JSON, on one line; `readPlan` reads it back.
 *
 * @throws QuantityError as `planFrom` does
 */
export function planJson(plan: PlanData): string {
  return JSON.stringify(planFrom(plan)).replace(UNSEEN, escapes);
}

/**
 * A plan of its JSON.
 *
 * @param text what `planJson` wrote
 * @throws QuantityError "unreadable" for text that is no JSON, else as `planFrom` does
 */
export function readPlan(text: string): PlanData {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    const remedy = "Give the text that planJson wrote.";
    const received = typeof text === "string" ? "other text" : typeof text;
    throw new QuantityError({
      code: "unreadable",
      function: "readPlan",
      path: ["text"],
      expected: "JSON",
      received,
      remedy,
    });
  }
  return planFrom(data);
}
