import { planFrom, planSums } from "@thrum/plan";
import type { PlanData } from "@thrum/plan";
import type { Book, Sheet } from "../book/book.js";
import { PLAIN, formulaCell, textCell } from "../book/cells.js";
import { drawingSheet } from "./drawing-sheet.js";
import { figuresSheet } from "./figures-sheet.js";
import { givenSheet } from "./given-sheet.js";
import { gridOf } from "./grid.js";
import { handsOf } from "./hands.js";
import { ledgerOf } from "./ledger.js";
import { listsSheet } from "./lists-sheet.js";
import { stripesSheet } from "./stripes-sheet.js";
import { workingOfPlan } from "./working-of-plan.js";

interface SheetWithNames {
  readonly sheet: Sheet;
  readonly names: ReadonlyMap<string, string>;
  readonly checks?: string;
}

/** What the weaver calls the entries of the pieces. */
function titlesOf({ figures }: PlanData): ReadonlyMap<string, string> {
  const entries = figures.rows.entries.value ?? [];
  return new Map(entries.map(({ name, title }) => [`piece ${name}`, title]));
}

/** The stripes and the drawing that follows them; none where the job has no stripes, or not yet their room. */
function sheetsOfStripes({ figures }: PlanData): readonly SheetWithNames[] {
  const runs = figures.loom.stripes.value?.runs ?? [];
  const hands = handsOf(runs);
  const drawn = { sheet: drawingSheet(hands), names: new Map<string, string>() };
  return runs.length === 0 ? [] : [stripesSheet(runs, hands, Object.keys(figures.yarn)), drawn];
}

/** A plan as a workbook: every figure in a cell of its own, what it was worked out from, and the working of it all. */
export function planBook(copy: PlanData): Book {
  const plan = planFrom(copy);
  const sums = planSums(plan);
  const ledger = ledgerOf(plan, sums);
  const groups = gridOf(sums);
  const sheets: readonly SheetWithNames[] = [
    figuresSheet(plan.job.title ?? "The plan", groups, ledger, titlesOf(plan)),
    givenSheet(ledger.givens),
    ...sheetsOfStripes(plan),
    listsSheet(ledger.lists),
    workingOfPlan(groups, ledger),
  ];
  const checks = sheets.flatMap(({ checks: own }) => (own === undefined ? [] : [`SUMPRODUCT(1*(${own}<>""))`]));
  const [first, ...others] = sheets.map(({ sheet }) => sheet);
  const fit = [textCell("E1", "every input fits", PLAIN), formulaCell("F1", `=${checks.join("+")}=0`, null, PLAIN)];
  return {
    sheets: first === undefined ? [] : [{ ...first, cells: [...first.cells, ...fit] }, ...others],
    names: new Map([...sheets.flatMap(({ names }) => [...names]), ["inputs_fit", "'Plan'!$F$1"]]),
  };
}
