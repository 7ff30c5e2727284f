import type { Declared, Unit } from "@thrum/maths";
import type { BookCell, Rule, Sheet } from "../book/book.js";
import { ANSWER, formulaCell, headings, INPUT, PLAIN, textCell, TITLE, WARNING, WRAPPED } from "../book/cells.js";
import { allowed, checkFormula, comparisons } from "./bounds.js";
import type { Given, GivenCell } from "./given.js";

interface SumParts {
  readonly heading: string;
  readonly given: readonly Given[];
  readonly declared: Declared;
  readonly unit: Unit<string> | null;
  readonly now: number;
  readonly place: (name: string) => string;
  readonly answer: string;
  readonly source: string;
}

const FIRST = 5;

function ruleOf(at: string, { input, unit, label }: GivenCell): Rule {
  const tests = [`ISNUMBER(${at})`, ...comparisons(at, input, unit)];
  return {
    at,
    formula: `AND(${tests.join(",")})`,
    title: label.slice(0, 31),
    says: allowed(input, unit).slice(0, 250),
  };
}

function inputRow(cell: GivenCell, row: string): readonly BookCell[] {
  const { label, value, unit, input } = cell;
  return [
    textCell(`A${row}`, label, PLAIN),
    { at: `B${row}`, content: { number: value }, look: INPUT },
    textCell(`C${row}`, unit === null ? (input.what === "whole" ? input.noun : "") : unit.symbol, PLAIN),
    textCell(`D${row}`, input.meaning, WRAPPED),
    textCell(`E${row}`, allowed(input, unit), WRAPPED),
    formulaCell(`F${row}`, checkFormula(`B${row}`, input, unit), "", WARNING),
  ];
}

/** What must hold of the working for its answer to be one, in spreadsheet words. */
function answerTests({ declared, unit, place, answer }: SumParts): string {
  const lines = Object.entries(declared.atLeast).map(([line, least]) => `${place(line)}>=${String(least)}`);
  const own = comparisons(answer, { ...declared.result, what: "number" }, unit);
  return [...lines, ...own, "TRUE"].join(",");
}

/** The sheet with the inputs, which a reader may change, and the answer. */
export function sumSheet(parts: SumParts): { readonly sheet: Sheet; readonly names: ReadonlyMap<string, string> } {
  const { heading, given, declared, unit, now, answer, source } = parts;
  const names = new Map<string, string>();
  const cells: BookCell[] = [];
  const rules: Rule[] = [];
  let row = FIRST;
  for (const { name, cells: own, fixed, field } of given) {
    const first = row;
    for (const cell of own) {
      cells.push(...inputRow(cell, String(row)));
      rules.push(ruleOf(`B${String(row)}`, cell));
      row += 1;
    }
    if (own.length > 0) {
      const end = own.length > 1 ? `:$B$${String(row - 1)}` : "";
      names.set(name, `'Sum'!$B$${String(first)}${end}`);
    }
    if (fixed === null) continue;
    const counted = `counted in ${fixed.name} (${fixed.symbol}); fixed when this workbook was made`;
    cells.push(textCell(`A${String(row)}`, field, PLAIN), textCell(`D${String(row)}`, counted, WRAPPED));
    row += 1;
  }
  const checks = `F${String(FIRST)}:F${String(row - 1)}`;
  const [answerRow, fitRow] = [String(row + 1), String(row + 3)];
  names.set("inputs_fit", `'Sum'!$B$${fitRow}`);
  const tests = answerTests(parts);
  const shown = `=IF(B${fitRow},IF(AND(${tests}),${answer},NA()),NA())`;
  const none = `=IF(B${fitRow},IF(AND(${tests}),"","these inputs together give no ${declared.result.noun.replace(/"/gu, '""')}"),"see the inputs above")`;
  cells.push(
    textCell(`A${answerRow}`, "the answer", ANSWER),
    formulaCell(`B${answerRow}`, shown, now, ANSWER),
    textCell(`C${answerRow}`, unit?.symbol ?? declared.result.noun, ANSWER),
    textCell(`D${answerRow}`, heading, ANSWER),
    formulaCell(`F${answerRow}`, none, "", WARNING),
    textCell(`A${fitRow}`, "every input fits", PLAIN),
    formulaCell(`B${fitRow}`, `=SUMPRODUCT(1*(${checks}<>""))=0`, null, PLAIN),
  );
  const sheet: Sheet = {
    name: "Sum",
    widths: [28, 16, 16, 44, 40, 40],
    cells: [
      textCell("A1", heading, TITLE),
      textCell(
        "A2",
        "Change the yellow cells; the rest is worked out. A list is made longer by rows inserted inside it.",
        PLAIN,
      ),
      ...headings(FIRST - 1, ["Given", "Number", "Unit", "Meaning", "Allowed", "Check"]),
      ...cells,
    ],
    rules,
    warnings: [],
    notes: [{ at: `B${answerRow}`, text: `Source: ${source}` }],
  };
  return { sheet, names };
}
