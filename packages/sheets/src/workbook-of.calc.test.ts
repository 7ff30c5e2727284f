import fc from "fast-check";
import { QuantityError, warpLength } from "@thrum/maths";
import type { AnyCalculation, Quantity } from "@thrum/maths";
import { expect, it } from "vitest";
import { cellsOf, recalculated } from "#ci/calc.js";
import { calculations, unitOf, validInput } from "#ci/inputs.js";
import { napkins } from "#ci/napkins.js";
import { describeWith } from "#ci/program.js";
import type { Book, BookCell } from "./book/book.js";
import { xlsxOf } from "./book/xlsx-of.js";
import { calculationBook } from "./calculation/calculation-book.js";

type Input = Readonly<Record<string, unknown>>;

function bookOrNone(calculation: (typeof calculations)[number][1], input: Input): Book | null {
  try {
    return calculationBook(calculation as never, input);
  } catch (error) {
    if (error instanceof QuantityError) return null;
    throw error;
  }
}

/** Another number of the same sort in the same unit: what somebody types over the first. */
function edited(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(edited);
  if (typeof value === "number") return Number.isInteger(value) ? value + 1 : value * 2;
  if (typeof value !== "object") return value;
  const quantity = value as Quantity<string>;
  const number = Number(quantity.value);
  return unitOf(quantity)(quantity.toString().endsWith("%") ? number / 2 : number * 1.25);
}

/** The first book with the numbers of the second typed into its yellow cells: all else as it was. */
function typedOver(first: Book, second: Book): Book {
  const other = new Map(second.sheets.flatMap(({ name, cells }) => cells.map((cell) => [`${name}!${cell.at}`, cell])));
  const over = (sheet: string, cell: BookCell): BookCell => {
    const content = other.get(`${sheet}!${cell.at}`)?.content;
    return "number" in cell.content && content !== undefined ? { ...cell, content } : cell;
  };
  const sheets = first.sheets.map((sheet) => ({ ...sheet, cells: sheet.cells.map((cell) => over(sheet.name, cell)) }));
  return { ...first, sheets };
}

/** For every calculation so many edits: the edited file, and the file the library makes of the edited input. */
function editsOf([name, calculation]: (typeof calculations)[number], wanted: number) {
  const edits: { readonly name: string; readonly file: Uint8Array; readonly expected: Uint8Array }[] = [];
  for (const input of fc.sample(validInput(calculation), { numRuns: 60, seed: 20 })) {
    if (edits.length === wanted) break;
    const first = bookOrNone(calculation, input);
    const changed = Object.fromEntries(Object.entries(input).map(([field, value]) => [field, edited(value)]));
    const second = bookOrNone(calculation, changed);
    if (first === null || second === null) continue;
    edits.push({ name, file: xlsxOf(typedOver(first, second)), expected: xlsxOf(second) });
  }
  return edits;
}

/** The workbook of the warp with something else in one of its cells. */
function warpWith(at: string, content: BookCell["content"]): Uint8Array {
  const book = calculationBook(warpLength as unknown as AnyCalculation, { ...napkins });
  const sheets = book.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) => (sheet.name === "Sum" && cell.at === at ? { ...cell, content } : cell)),
  }));
  return xlsxOf({ ...book, sheets });
}

/** Every calculation in CI; opening a file takes long enough that a bare test run is content with some. */
const isAll = process.env["THRUM_REQUIRE"] === "all";
const tried = calculations.filter((_, at) => isAll || at % 12 === 0);
const editsWanted = isAll ? 200 : tried.length + 2;

describeWith("LibreOffice Calc", (soffice) => {
  it("answers edited workbooks as the library does", () => {
    const once = tried.flatMap((entry) => editsOf(entry, 1));
    const more = editsOf(["warpLength", warpLength as never], editsWanted - once.length);
    const edits = [...once, ...more];
    expect(new Set(once.map(({ name }) => name)).size).toBe(tried.length);
    expect(edits.length).toBeGreaterThanOrEqual(editsWanted);
    const found = recalculated(
      soffice,
      edits.map(({ file }) => file),
    );
    let [worst, compared, changed] = [0, 0, 0];
    for (const [index, { name, file, expected }] of edits.entries()) {
      const now = found[index] ?? new Map<string, never>();
      const before = cellsOf(file);
      for (const [at, value] of cellsOf(expected)) {
        if (typeof value !== "number") continue;
        const off = Math.abs(Number(now.get(at)) - value) / Math.max(1e-9, Math.abs(value));
        expect(off, `${name} ${at}: ${String(value)} by the library, ${String(now.get(at))} in Calc`).toBeLessThan(
          1e-12,
        );
        worst = Math.max(worst, off);
        compared += 1;
        if (before.get(at) !== value) changed += 1;
      }
      expect([...now.values()].filter((shown) => String(shown).startsWith("#"))).toEqual([]);
      expect([...now.values()], name).toContain("the same");
    }
    // The answers the edited files brought along are wrong: were they kept, the comparison would see it.
    expect(changed).toBeGreaterThan(editsWanted);
    const line = `${String(tried.length)} calculations, ${String(edits.length)} edits, ${String(compared)} cells`;
    process.stdout.write(`${line}, worst relative difference ${worst.toExponential(1)}\n`);
  }, 600_000);

  it("shows no answer for an input that does not fit, says which, and passes an error on as itself", () => {
    const bad: readonly (readonly [at: string, content: BookCell["content"]])[] = [
      ["B5", { number: 2.5 }],
      ["B6", { text: "long" }],
      ["B8", { number: 100 }],
      ["B10", { number: -1 }],
      ["B6", { formula: "=1/0", now: null }],
    ];
    const found = recalculated(
      soffice,
      bad.map(([at, content]) => warpWith(at, content)),
    );
    expect(found.map((cells) => cells.get("Sum!B12"))).toEqual(["#N/A", "#N/A", "#N/A", "#N/A", "#DIV/0!"]);
    expect(found[0]?.get("Sum!F5")).toBe("a whole number of pieces, 1 or more");
    expect(found[1]?.get("Sum!F6")).toBe("a number (in), more than 0 in");
    expect(found[2]?.get("Sum!F8")).toBe("a number (%), 0 % or more, less than 100 %");
  }, 120_000);
});
