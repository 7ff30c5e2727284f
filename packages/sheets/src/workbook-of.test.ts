import { createHash } from "node:crypto";
import { countFromWrapping, cottonCount, grains, isDefinedName, QuantityError, reedWidth, yards } from "@thrum/maths";
import { endsPerInch } from "@thrum/maths";
import { strFromU8, unzipSync } from "fflate";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellsOf } from "#ci/calc.js";
import { calculations, validInput } from "#ci/inputs.js";
import type { Book } from "./book/book.js";
import { textCell } from "./book/cells.js";
import { xlsxOf } from "./book/xlsx-of.js";
import { calculationBook } from "./calculation/calculation-book.js";
import { workbookOf } from "./workbook-of.js";

const reed = { ends: 368, sett: endsPerInch(20) };

function bookWith(text: string): Book {
  const sheet = {
    name: "Sum",
    widths: [20],
    heights: new Map<number, number>(),
    rules: [],
    liveLooks: [],
    notes: [{ at: "A1", text }],
  };
  return { sheets: [{ ...sheet, cells: [textCell("A1", text, {})] }], names: new Map() };
}

function partsOf(bytes: Uint8Array): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));
}

describe("a workbook of a calculation", () => {
  it("is refused of a function that is none", () => {
    const twice: unknown = ({ ends }: { readonly ends: number }): number => 2 * ends;
    expect(() => workbookOf(twice as typeof reedWidth, reed)).toThrow(
      "expected a calculation of the handbook, or a plan",
    );
  });

  it("has the inputs, their units and the answer on its first sheet", () => {
    const cells = cellsOf(workbookOf(reedWidth, reed));
    // 368 ÷ 20 = 18.4 in.
    expect(["Sum!B5", "Sum!C5", "Sum!B6", "Sum!C6", "Sum!B8", "Sum!C8"].map((at) => cells.get(at))).toEqual([
      ...[368, "ends", 20, "ends/in"],
      ...[18.4, "in"],
    ]);
  });

  it("counts in the system it was made for, and says that this is fixed", () => {
    const cells = cellsOf(workbookOf(countFromWrapping, { length: yards(120), mass: grains(20), system: cottonCount }));
    expect(cells.get("Sum!D7")).toBe("counted in cottonCount (Ne); fixed when this workbook was made");
    expect(cells.get("Sum!B9")).toBe(50);
  });

  it("is refused where the calculation is", () => {
    expect(() => workbookOf(reedWidth, { ...reed, ends: 0 })).toThrow(
      "reedWidth({ ends }): expected a whole number of ends, 1 or more",
    );
  });

  it("is the same file to the byte in every time zone", () => {
    const hash = (): string => createHash("sha256").update(workbookOf(reedWidth, reed)).digest("hex");
    const here = process.env["TZ"];
    const hashes = ["UTC", "Asia/Kolkata", "America/Los_Angeles"].map((zone) => {
      process.env["TZ"] = zone;
      return hash();
    });
    if (here === undefined) delete process.env["TZ"];
    else process.env["TZ"] = here;
    expect(new Set(hashes).size).toBe(1);
  });

  it("gives every input and line of every calculation a name that no program takes for a cell, once", () => {
    let books = 0;
    for (const [name, calculation] of calculations) {
      for (const input of fc.sample(validInput(calculation), { numRuns: 40, seed: 3 })) {
        let names: readonly string[];
        try {
          names = [...calculationBook(calculation as never, input).names.keys()];
        } catch (error) {
          if (error instanceof QuantityError) continue;
          throw error;
        }
        expect(
          names.filter((one) => !isDefinedName(one)),
          name,
        ).toEqual([]);
        books += 1;
        break;
      }
    }
    expect(books).toBe(calculations.length);
  });
});

describe("text in a workbook", () => {
  it.each(["=1+1", "+cmd", "-2", "@SUM(A1)", "\t=1", "<b>&\"'", "_x0041_", "a\u0000b", "\uD800", "]]>", "🧶"])(
    "%j stays text",
    (text) => {
      const parts = partsOf(xlsxOf(bookWith(text)));
      const sheet = parts["xl/worksheets/sheet1.xml"] ?? "";
      expect(sheet).toContain('t="inlineStr"');
      expect(sheet).not.toContain("<f>");
      if (/^[=+\-@\t]/u.test(text)) expect(parts["xl/styles.xml"]).toContain('quotePrefix="1"');
    },
  );

  it("is well-formed whatever it holds", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 40 }), (text) => {
        const parts = partsOf(xlsxOf(bookWith(text)));
        for (const xml of Object.values(parts)) {
          // Nothing between two tags but escapedForXml text, and no character that XML cannot hold.
          expect(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/u.test(xml)).toBe(false);
          expect(/&(?!amp;|lt;|gt;|quot;)/u.test(xml)).toBe(false);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("longer than a cell holds is refused, not cut", () => {
    expect(() => xlsxOf(bookWith("x".repeat(40_000)))).toThrow("32000");
  });
});
