import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { expect, it } from "vitest";
import { packagesToBuy } from "../../handbook/index.js";
import { grams } from "../../units/index.js";
import { forColumns } from "../columns/index.js";
import { calculations, unitOf, unitsOf, validInput } from "#ci/inputs.js";
import { describeWith } from "#ci/program.js";
import type { Quantity } from "../quantity/index.js";
import { QuantityError } from "../refusal.js";
import { spreadsheetFormula } from "./spreadsheet-formula.js";

const COLUMNS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

interface Row {
  readonly name: string;
  readonly cells: readonly (string | number)[];
  readonly expected: number;
}

/** One row of a sheet: the inputs from column A on, a list over several columns, the formula after them. */
function rowOf(
  name: string,
  calculation: (typeof calculations)[number][1],
  input: Record<string, unknown>,
  row: number,
): Row | null {
  let answer: unknown;
  try {
    answer = calculation(input);
  } catch (error) {
    if (error instanceof QuantityError) return null;
    throw error;
  }
  const cells: (string | number)[] = [];
  const place = (value: number): string => `${COLUMNS[cells.push(value) - 1] ?? ""}${String(row)}`;
  const quantityCell = (quantity: Quantity<string>): string => place(Number(quantity.value));
  const where = Object.entries(calculation.declaration.inputs).map(([field, { what, dimension }]) => {
    const value = input[field];
    if (what === "unit") return [field, value];
    if (what === "quantity")
      return [field, [quantityCell(value as Quantity<string>), unitOf(value as Quantity<string>)]];
    if (what !== "list") return [field, place(value as number)];
    const members = [...(value as readonly (number | Quantity<string>)[])];
    // No range is empty: where there is none, a cell with 0 stands in.
    const [first = unitsOf(dimension)[0]?.(0) ?? 0] = members;
    if (members.length === 0) members.push(first);
    const own = typeof first === "number" ? null : unitOf(first);
    const addresses = members.map((member) =>
      place(typeof member === "number" || own === null ? Number(member) : member.in(own)),
    );
    const range = `${addresses[0] ?? ""}:${addresses.at(-1) ?? ""}`;
    return [field, own === null ? range : [range, own]];
  });
  const unit = typeof answer === "number" ? null : unitOf(answer as Quantity<string>);
  const formula = spreadsheetFormula(calculation as never, Object.fromEntries(where) as never, unit);
  while (cells.length < COLUMNS.length) cells.push("");
  const expected = unit === null ? (answer as number) : (answer as Quantity<string>).in(unit);
  return { name, cells: [...cells, formula], expected };
}

/** The last column of a sheet as Calc works it out. */
function recalculated(soffice: string, rows: readonly Row[]): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), "thrum-calc-"));
  try {
    const lines = rows.map(({ cells }) => cells.map((cell) => `"${String(cell)}"`).join(","));
    writeFileSync(join(folder, "in.csv"), lines.join("\n"));
    const filters = [
      "--infilter=CSV:44,34,76,1,,0,false,true,false,true",
      "--convert-to",
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false",
    ];
    const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
    spawnSync(soffice, [profile, "--headless", ...filters, "--outdir", join(folder, "out"), join(folder, "in.csv")]);
    const out = readFileSync(join(folder, "out", "in.csv"), "utf8")
      .trim()
      .split("\n");
    return out.map((line) => line.split(",").at(-1)?.replace(/"/gu, "") ?? "");
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** What packages of 50 g are needed for a mass, by the library and by a column. */
const bought = (needed: string): readonly number[] => [
  packagesToBuy({ needed: grams(needed), packageMass: grams(50) }),
  ...forColumns(
    packagesToBuy,
    { needed: grams, packageMass: grams },
    null,
  )({ needed: [Number(needed)], packageMass: 50 }),
];

describeWith("LibreOffice Calc", (soffice) => {
  it("buys as many packages as the library and a column do, down to a tenth of a microgram", () => {
    const masses = ["499.9999999", "500", "500.0000001", "500.00000002"];
    const rows = masses.map((needed, at) => {
      const cells = { needed: [`A${String(at + 1)}`, grams], packageMass: [`B${String(at + 1)}`, grams] } as const;
      const formula = spreadsheetFormula(packagesToBuy, cells, null);
      return { name: needed, cells: [Number(needed), 50, formula], expected: bought(needed)[0] ?? 0 };
    });
    expect(masses.map(bought)).toEqual([10, 10, 11, 11].map((packages) => [packages, packages]));
    // 500.00000002 ÷ 50 = 10.0000000004: nine decimals, by which a cell tells a residue, leave 10.
    expect(recalculated(soffice, rows).map(Number)).toEqual([10, 10, 11, 10]);
  }, 120_000);

  it("recalculates the cell of every calculation to what the library answers, and catches a planted error", () => {
    const rows: Row[] = [];
    for (const [name, calculation] of calculations) {
      let found = 0;
      // Of some formulas most inputs drawn give nothing: more was taken than was there.
      for (const input of fc.sample(validInput(calculation), { numRuns: 60, seed: 20 })) {
        const row = found < 12 ? rowOf(name, calculation, input, rows.length + 1) : null;
        if (row !== null) found = rows.push(row) && found + 1;
      }
    }
    const planted: Row = { name: "planted", cells: [...Array<string>(COLUMNS.length).fill(""), "=1+1"], expected: 3 };
    const found = recalculated(soffice, [...rows, planted]).map(Number);
    const off = (at: number, expected: number): number =>
      Math.abs((found[at] ?? Number.NaN) - expected) / Math.max(1e-9, Math.abs(expected));
    expect(found).toHaveLength(rows.length + 1);
    expect(new Set(rows.map(({ name }) => name)).size).toBe(calculations.length);
    rows.forEach(({ name, expected, cells }, at) => {
      expect(off(at, expected), `${name}: ${String(cells.at(-1))}`).toBeLessThan(1e-12);
    });
    expect(off(rows.length, planted.expected)).toBeGreaterThan(0.3);
  }, 120_000);
});
