import type { Cell, Unit } from "@thrum/maths";
import { spreadsheetFormula } from "@thrum/maths";
import { amountAt, membersAt, pathText } from "@thrum/plan";
import type { Origin, PlanData, PlanSum } from "@thrum/plan";
import { isAmount, numberOf, turned, unitOrNone } from "../calculation/amounts.js";
import type { Amount } from "../calculation/amounts.js";
import { cellNames } from "./cell-names.js";
import { placed, rowPrefix } from "./ledger-cells.js";
import type { FigureCell, GivenCell, Held, Input, Ledger, ListRow } from "./ledger-cells.js";

/** Gives every figure its cell, found by where its inputs came from; nothing is reckoned again by hand. */
export function ledgerOf(plan: PlanData, sums: readonly PlanSum[]): Ledger {
  const nameOf = cellNames();
  const [figures, byPath] = [new Map<PlanSum, FigureCell>(), new Map<string, PlanSum>()];
  const [givens, lists] = [new Map<string, GivenCell>(), new Map<string, ListRow & { readonly cell: Cell }>()];
  const prefixes = new Map<PlanSum, string>();
  const seen = new Map<string, string[]>();
  for (const sum of sums) {
    byPath.set(JSON.stringify(sum.path), sum);
    const rows = seen.get(sum.group) ?? [];
    seen.set(sum.group, rows);
    if (sum.row !== null && !rows.includes(sum.row)) rows.push(sum.row);
    prefixes.set(sum, sum.row === null ? sum.group : rowPrefix(sum.group, rows.indexOf(sum.row)));
  }

  function given(origin: Origin, input: Input | null): Held {
    const value = amountAt(plan, origin);
    if (!isAmount(value)) throw new RangeError(`${JSON.stringify(origin)} is no amount`);
    const isFixed = "amount" in origin;
    const key = JSON.stringify(isFixed ? { value, unit: unitOrNone(value)?.name } : origin);
    const path = "path" in origin ? origin.path : [];
    const own = {
      name: "",
      label: isFixed ? "as it stands" : pathText(path.slice(1)),
      value: numberOf(value),
      unit: unitOrNone(value),
      input,
      isFixed,
    };
    const found = givens.get(key) ?? { ...own, name: nameOf("given", ...path.slice(1)) };
    givens.set(key, found);
    return { ...found, now: found.value };
  }

  function held(origin: Origin, input: Input | null): Held {
    const sum = "path" in origin ? byPath.get(JSON.stringify(origin.path)) : undefined;
    if (sum === undefined) return given(origin, input);
    return cellOf(sum);
  }

  function list(origin: Origin, input: Input, label: string, spare: Unit<string> | null): Cell {
    const key = JSON.stringify(origin);
    const found = lists.get(key);
    if (found !== undefined && membersAt(plan, origin).length > 0) return found.cell;
    const members = membersAt(plan, origin).map((member) => held(member, input.member ?? input));
    const unit = members[0]?.unit ?? spare;
    // No range is empty: a list of none is one cell with 0.
    const own = members.map(({ name, unit: from, now }) => ({
      formula: `=${turned(name, from, unit)}`,
      now: from === null || unit === null ? now : from(now).in(unit),
    }));
    const made = { name: nameOf("list", label), label, members: own.length === 0 ? [{ formula: null, now: 0 }] : own };
    const cell: Cell = unit === null ? made.name : [made.name, unit];
    lists.set(own.length === 0 ? `${key} ${made.name}` : key, { ...made, cell });
    return cell;
  }

  /** A unit for a list of none: that of another amount of the kind. */
  function spareUnit(sum: PlanSum, { dimension }: Input): Unit<string> | null {
    const amounts = [sum.value, ...Object.values(sum.from).map((origin) => amountAt(plan, origin))].flat();
    const alike = amounts.find((one): one is Amount => isAmount(one) && unitOrNone(one)?.dimension === dimension);
    return alike === undefined ? null : unitOrNone(alike);
  }

  function cellOf(sum: PlanSum): FigureCell {
    const known = figures.get(sum);
    if (known !== undefined) return known;
    const { value, calculation, from, cell, label, name } = sum;
    if (!isAmount(value)) throw new RangeError(`${label} is no amount`);
    const prefix = prefixes.get(sum) ?? sum.group;
    const base = { name: nameOf(prefix, name), sum, unit: unitOrNone(value), now: numberOf(value) };
    const made = ((): Pick<FigureCell, "formula" | "cells"> => {
      if (calculation !== null) {
        const { inputs } = calculation.declaration;
        const cells = Object.fromEntries(
          Object.entries(inputs).map(([field, input]): [string, Cell] => {
            const origin = from[field] ?? { amount: 0 };
            if (input.what !== "list") return [field, placed(held(origin, input))];
            return [field, list(origin, input, `${prefix} ${name} ${field}`, spareUnit(sum, input))];
          }),
        );
        return { formula: spreadsheetFormula(calculation, cells, base.unit), cells };
      }
      const { is } = from;
      if (is !== undefined) return { formula: `=${held(is, null).name}`, cells: {} };
      return { formula: cell === null ? null : `=${cell.replaceAll("{row}", prefix)}`, cells: {} };
    })();
    const whole = { ...base, ...made };
    figures.set(sum, whole);
    return whole;
  }

  for (const sum of sums) if (isAmount(sum.value)) cellOf(sum);
  return { figures, givens: [...givens.values()], lists: [...lists.values()], nameOf };
}
