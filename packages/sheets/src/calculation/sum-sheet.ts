import type { Declared, Unit } from "@thrum/maths";
import type { BookCell, Rule, Sheet } from "../book/book.js";
import { ANSWER, ANSWER_UNIT, formulaCell, headings, PLAIN, textCell, TITLE, WARNING, WRAPPED } from "../book/cells.js";
import { answerTests } from "./bounds.js";
import type { Given } from "./given.js";
import { inputRow, ruleOf } from "./input-row.js";

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
  const tests = answerTests(declared, unit, parts.place, answer);
  const shown = `=IF(B${fitRow},IF(AND(${tests}),${answer},NA()),NA())`;
  const none = `=IF(B${fitRow},IF(AND(${tests}),"","these inputs together give no ${declared.result.noun.replace(/"/gu, '""')}"),"see the inputs above")`;
  cells.push(
    textCell(`A${answerRow}`, "the answer", ANSWER),
    formulaCell(`B${answerRow}`, shown, now, ANSWER),
    textCell(`C${answerRow}`, unit?.symbol ?? declared.result.noun, ANSWER_UNIT),
    textCell(`D${answerRow}`, heading, ANSWER),
    formulaCell(`F${answerRow}`, none, "", WARNING),
    textCell(`A${fitRow}`, "every input fits", PLAIN),
    formulaCell(`B${fitRow}`, `=SUMPRODUCT(1*(${checks}<>""))=0`, null, PLAIN),
  );
  const sheet: Sheet = {
    name: "Sum",
    widths: [28, 16, 18, 44, 44, 48],
    heights: new Map(),
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
    liveLooks: [],
    notes: [{ at: `B${answerRow}`, text: source }],
  };
  return { sheet, names };
}
