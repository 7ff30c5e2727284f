import { isQuantity, unitOf } from "@thrum/maths";
import { planSums, planWarp } from "@thrum/plan";
import type { PlanData } from "@thrum/plan";
import { expect, it } from "vitest";
import { recalculated, typedInto } from "#ci/calc.js";
import type { Cells } from "#ci/calc.js";
import { examplePlan, examplePlans } from "#ci/example-plans.js";
import { describeWith } from "#ci/program.js";
import { xlsxOf } from "../book/xlsx-of.js";
import { planBook } from "./plan-book.js";

function numberOf(value: unknown): number | null {
  if (typeof value === "number") return value;
  return isQuantity(value) ? value.in(unitOf(value)) : null;
}

/** What Calc shows for every figure, beside what the plan has. */
function compared(plan: PlanData, book: ReturnType<typeof planBook>, cells: Cells): readonly string[] {
  const names = [...book.names].flatMap(([name, place]) => {
    const at = /^'Plan'!\$([A-Z]+)\$(\d+)$/u.exec(place);
    return at === null || name === "inputs_fit" ? [] : [`Plan!${String(at[1])}${String(at[2])}`];
  });
  const wanted = planSums(plan).flatMap(({ value }) => numberOf(value) ?? []);
  expect(names.length).toBe(wanted.length);
  const held = new Map(
    (book.sheets[0]?.cells ?? []).map(({ at, content }) => [
      `Plan!${at}`,
      "number" in content ? content.number : "formula" in content ? content.now : null,
    ]),
  );
  const inOrder = (numbers: readonly number[]): readonly number[] => [...numbers].sort((a, b) => a - b);
  expect(inOrder(names.map((at) => Number(held.get(at))))).toEqual(inOrder(wanted));
  return names.filter((at) => {
    const [now, value] = [Number(cells.get(at)), Number(held.get(at))];
    return !(Math.abs(now - value) / Math.max(1, Math.abs(value)) < 1e-12);
  });
}

describeWith("LibreOffice Calc", (soffice) => {
  it("works out every figure of every example as the plan has it", () => {
    const books = examplePlans.map(([, plan]) => planBook(plan));
    const found = recalculated(soffice, books.map(xlsxOf));
    let formulas = 0;
    for (const [index, [name, plan]] of examplePlans.entries()) {
      const [book, cells] = [books[index], found[index]];
      if (book === undefined || cells === undefined) throw new RangeError(name);
      expect(compared(plan, book, cells), name).toEqual([]);
      expect(
        [...cells].filter(([, shown]) => String(shown).startsWith("#")),
        name,
      ).toEqual([]);
      formulas += book.sheets[0]?.cells.filter(({ content }) => "formula" in content).length ?? 0;
    }
    expect(formulas).toBeGreaterThan(9 * 40);
  }, 300_000);

  it("follows what is changed: a piece more, longer pieces, broader stripes", () => {
    const plan = examplePlan("2-hall-napkins");
    const book = planBook(plan);
    const bytes = xlsxOf(book);
    const place = (name: string): string => (book.names.get(name) ?? "").replace(/['$]/gu, "");
    const typed = [
      new Map([[place("piece1_given"), 10]]),
      new Map([[place("given_pieces_0_finished_length"), 17.5]]),
      new Map([["Stripes!C5", 30]]),
    ];
    const found = recalculated(
      soffice,
      typed.map((entries) => typedInto(bytes, entries)),
    );
    const shown = (at: number, name: string): number => Number(found[at]?.get(place(name)));
    const again = planWarp({ ...plan.job, pieces: (plan.job.pieces ?? []).map((piece) => ({ ...piece, number: 10 })) });
    // 10 × 17.5 ÷ 0.9 ÷ 0.92 + 10; 9 × 19 ÷ 0.9 ÷ 0.92 + 10; 374 ends.
    expect(shown(0, "warp_needed")).toBeCloseTo(221.352657, 6);
    expect(shown(0, "yarn2_missing")).toBeCloseTo(numberOf(again.figures.yarn["madder"]?.missing.value) ?? 0, 9);
    expect(shown(1, "warp_needed")).toBeCloseTo(216.521739, 6);
    expect(shown(2, "loom_ends_of_stripes")).toBe(374);
    expect(shown(2, "yarn1_ends")).toBe(258);
  }, 120_000);
});
