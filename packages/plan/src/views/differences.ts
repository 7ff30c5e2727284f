import { asText, isQuantity } from "@thrum/maths";
import { planDifferences } from "../data/plan-differences.js";
import type { PlanData } from "../data/plan-data.js";
import { table } from "./layout.js";
import { plainText } from "../text/clean.js";

/** An amount beside another: what a hand would write down. */
function valueText(value: unknown): string {
  if (value === null || value === undefined) return "–";
  if (isQuantity(value)) return asText(value, { step: "0.01" });
  return plainText(typeof value === "string" ? value : JSON.stringify(value));
}

/** The figures that two plans do not share, side by side. */
export function planDifferencesText(before: PlanData, after: PlanData): string {
  const rows = planDifferences(before, after).map(({ path, label, before: was, after: is }) => {
    const row = path.length > 3 ? `${plainText(String(path[2]))}: ` : "";
    return [`${row}${label}`, valueText(was), valueText(is)];
  });
  return rows.length === 0 ? "The two plans share every figure." : table(["", "first", "second"], rows).join("\n");
}
