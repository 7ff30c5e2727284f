import { readFileSync } from "node:fs";
import { planWarp, readJob } from "@thrum/plan";
import { expect, it } from "vitest";
import { cellsOf, recalculated, typedInto } from "#ci/calc.js";
import type { Shown } from "#ci/calc.js";
import { describeWith } from "#ci/program.js";
import { workbookOf } from "../workbook-of.js";

const job = readFileSync("examples/hall-napkins/job.yaml", "utf8");

function bookOf(text: string): Uint8Array {
  const reading = readJob(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return workbookOf(planWarp(reading.job));
}

const first = bookOf(job);
const shown = cellsOf(first);

/** The cell of an amount, found by the words beside it; on the sheet of the yarns the first yarn that has it. */
function cell(sheet: string, label: string): string {
  const [at] = [...shown].find(([place, words]) => place.startsWith(`${sheet}!A`) && words === label) ?? [];
  if (at === undefined) throw new Error(`nothing is called ${label}`);
  return at.replace("!A", "!B");
}

/** What is typed into the workbook, and the same written into the job. */
const EDITS: readonly (readonly [
  said: string,
  typed: readonly (readonly [string, Shown])[],
  written: readonly (readonly [string, string])[],
])[] = [
  ["one piece more", [[cell("Warp", "pieces"), 10]], [["number: 9", "number: 10"]]],
  ["another loss of width", [[cell("Warp", "reed to finished"), 20]], [["Finished: 15 %", "Finished: 20 %"]]],
  [
    "broader borders",
    [
      ["Stripes!C5", 30],
      ["Stripes!C21", 30],
    ],
    [["{ colour: natural, ends: 24 }", "{ colour: natural, ends: 30 }"]],
  ],
  [
    "an indigo border on one side",
    [["Stripes!B21", "indigo"]],
    [["{ colour: natural, ends: 24 }\n\nwinding", "{ colour: indigo, ends: 24 }\n\nwinding"]],
  ],
  [
    "longer napkins from a coarser reed, more yarn at hand",
    [
      [cell("Warp", "finished length"), 17.5],
      [cell("Warp", "reed"), 8],
      [cell("Warp", "take-up"), 6.5],
      [cell("Warp", "loom waste"), 12],
      [cell("Yarns", "picks"), 15],
      [cell("Yarns", "on hand"), 20],
    ],
    [
      ["finishedLength: 16 in", "finishedLength: 17.5 in"],
      ["dents: 10", "dents: 8"],
      ["takeUp: 8", "takeUp: 6.5"],
      ["wasteInFront: 10", "wasteInFront: 12"],
      ["picks: 18", "picks: 15"],
      ["onHand: 6 oz", "onHand: 20 oz"],
    ],
  ],
];

function editedJob(written: (typeof EDITS)[number][2]): string {
  return written.reduce((text, [before, after]) => {
    expect(text).toContain(before);
    return text.replaceAll(before, after);
  }, job);
}

describeWith("LibreOffice Calc", (soffice) => {
  it("works out an edited plan as the plan of the edited job", () => {
    const files = EDITS.map(([, typed]) => typedInto(first, new Map(typed)));
    const found = recalculated(soffice, [first, ...files]);
    const expected = [first, ...EDITS.map(([, , written]) => bookOf(editedJob(written)))].map(cellsOf);
    let compared = 0;
    for (const [index, cells] of expected.entries()) {
      const said = EDITS[index - 1]?.[0] ?? "as it was planned";
      for (const [at, value] of cells) {
        const now = found[index]?.get(at);
        // In a plan joined stripes may make one; in a workbook each keeps its row. What is worked out is numbers.
        if (typeof value !== "number") continue;
        const off = Math.abs(Number(now) - value) / Math.max(1, Math.abs(value));
        expect(off, `${said}, ${at}: ${String(value)} in the plan, ${String(now)} in Calc`).toBeLessThan(1e-12);
        compared += 1;
      }
      expect([...(found[index]?.values() ?? [])].filter((one) => String(one).startsWith("#"))).toEqual([]);
    }
    expect(compared).toBeGreaterThan(6 * 100);
    const at = (index: number, label: string): number => Number(found[index]?.get(cell("Warp", label)));
    // 10 × 17.5 ÷ 0.9 ÷ 0.92 + 10; 18.4 × 0.8; 380 ÷ 20 × 0.85.
    expect(at(1, "warp to wind")).toBeCloseTo(221.352657, 6);
    expect(at(2, "finished width")).toBeCloseTo(14.72, 12);
    expect(at(3, "finished width")).toBeCloseTo(16.15, 12);
    expect(at(3, "ends more than there are")).toBe(12);
    // Ends 2, 27, 66, 78 and 367.
    const drawn = (index: number): unknown[] =>
      ["A", "L", "AC", "AH", "FD"].map((part) => found[index]?.get(`Drawing!${part}5`));
    expect(drawn(0)).toEqual([1, 2, 1, 3, 1]);
    expect(drawn(4)).toEqual([1, 2, 1, 3, 3]);
  }, 300_000);

  it("shows no answer while an input does not fit, and says which", () => {
    const bad: readonly (readonly [string, Shown, string])[] = [
      [cell("Warp", "pieces"), 2.5, cell("Warp", "pieces").replace("!B", "!F")],
      ["Stripes!C7", 0, "Stripes!H7"],
      ["Stripes!B7", "Natural", "Stripes!H7"],
      [cell("Yarns", "on hand"), -1, cell("Yarns", "on hand").replace("!B", "!F")],
    ];
    const found = recalculated(
      soffice,
      bad.map(([at, value]) => typedInto(first, new Map([[at, value]]))),
    );
    for (const [index, [at, , fault]] of bad.entries()) {
      expect(found[index]?.get(cell("Warp", "warp to wind")), at).toBe("#N/A");
      expect(found[index]?.get(cell("Yarns", "weighs")), at).toBe("#N/A");
      expect(found[index]?.get(fault), at).toMatch(/^a (?:whole )?number/u);
      expect(found[index]?.get("Warp!A3"), at).toMatch(/^Not every input fits/u);
    }
  }, 120_000);
});
