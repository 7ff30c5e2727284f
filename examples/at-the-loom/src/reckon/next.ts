import { amountText, jobTextWith, nextJob, planDifferences, planFrom, planWarp, readJob, unitsOf } from "@thrum/plan";
import type { PlanData } from "@thrum/plan";
import { isQuantity } from "@thrum/maths";
import type { Quantity } from "@thrum/maths";
import { eighths } from "./eighths.js";

function planIn(text: string): PlanData {
  const reading = readJob(text);
  if (!reading.ok) throw new RangeError("a job that does not read has no plan");
  return planFrom(planWarp(reading.value));
}

type Plain = number | string | Quantity<string> | null;

/** A figure that a change moves: what it is, as it was, as it is then. */
export type Differs = readonly [label: string, was: string, is: string];

/** What another job text changes, before it is taken. */
export function differences(before: string, after: string): readonly Differs[] {
  const [was, is] = [planIn(before), planIn(after)];
  const units = unitsOf(was.job);
  const isPlain = (value: unknown): value is Plain =>
    value === null || typeof value === "number" || typeof value === "string" || isQuantity(value);
  const said = (value: Plain): string => {
    if (value === null) return "–";
    return typeof value === "string" ? value : eighths(amountText(value, units));
  };
  return planDifferences(was, is)
    .flatMap(({ path, label, before: one, after: other }): readonly Differs[] => {
      const row = path.length > 3 ? `${String(path[2])}: ` : "";
      return isPlain(one) && isPlain(other) ? [[`${row}${label}`, said(one), said(other)]] : [];
    })
    .filter(([, one, other]) => one !== other);
}

/** The job after this one, as text, with what it asks; the old figures stand in it as remarks. */
export function next(text: string): { readonly text: string; readonly asks: readonly string[] } {
  const { job, remarks, asked } = nextJob(planIn(text));
  return { text: jobTextWith(text, job, remarks), asks: asked.map(({ says }) => says) };
}
