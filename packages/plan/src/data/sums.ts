import type { AnyCalculation } from "@thrum/maths";
import type { Origin } from "../core/origin.js";
import type { Path } from "../core/source.js";
import { figureAt } from "./at-path.js";
import { calculationOf } from "./calculation-of.js";
import { figurePaths } from "./plan-differences.js";
import type { PlanData } from "./plan-data.js";

/** A figure with the formula itself, for a program that does the plan again in another way. */
export interface PlanSum {
  readonly path: Path;
  readonly group: string;
  readonly name: string;
  /** Of a figure that is worked once for each row. */
  readonly row: string | null;
  readonly label: string;
  readonly value: unknown;
  /** Null for what is counted, is another figure as it stands, or has no value. */
  readonly calculation: AnyCalculation | null;
  readonly from: Readonly<Record<string, Origin>>;
  /** How a workbook counts what is counted; `{row}` stands for the row. */
  readonly cell: string | null;
  readonly needs: readonly Path[];
  readonly why: string | null;
}

/**
 * The figures of a plan in the order of the list, each with its formula.
 *
 * @param plan a plan; of a copy, what `planFrom` makes of it
 */
export function planSums(plan: PlanData): readonly PlanSum[] {
  return figurePaths(plan).flatMap((path) => {
    const found = figureAt(plan, path);
    if (found === null) return [];
    const { listed, row, data } = found;
    const { label, value, from, needs, why } = data;
    const calculation = data.calculation === null || value === null ? null : calculationOf(found);
    const cell = listed.node.is === "counted" ? listed.node.cell : null;
    return [{ path, group: listed.group, name: listed.name, row, label, value, calculation, from, cell, needs, why }];
  });
}
