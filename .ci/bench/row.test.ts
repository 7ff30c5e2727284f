import { expect, it, vi } from "vitest";
import { countAtLeast, countAtMost, exactly, ratioAtLeast, ratioAtMost, told } from "./row.mjs";
import { printTable } from "./table.mjs";

it.each([
  ["a figure that must be so", exactly("line", 3, 3), exactly("line", 4, 3)],
  ["a count that has a most", countAtMost("line", 6, 6, "B"), countAtMost("line", 7, 6, "B")],
  ["a count that has a least", countAtLeast("line", 6, 6, "B"), countAtLeast("line", 5, 6, "B")],
  ["a ratio of times, by a fifth past its most", ratioAtMost("line", 2.4, 2), ratioAtMost("line", 2.41, 2)],
  ["a ratio of times, by a fifth short of its least", ratioAtLeast("line", 1.6, 2), ratioAtLeast("line", 1.59, 2)],
])("fails the run past its budget: %s", (_what, within, past) => {
  expect(within).toMatchObject({ holds: true, mustHold: true });
  expect(past).toMatchObject({ holds: false, mustHold: true });
});

it("is only told where it has no budget", () => {
  expect(told("line", 7, "ms")).not.toHaveProperty("mustHold");
});

it("fails the run for one row past its budget, and tells which", () => {
  const written = vi.spyOn(process.stdout, "write").mockReturnValue(true);
  const rows = [exactly("right", 3, 3), told("a time", 7, "ms")];
  expect(printTable(rows)).toBe(0);
  expect(printTable([...rows, countAtMost("heavy", 7, 6, "B")])).toBe(1);
  const lines = written.mock.calls.map(([line]) => String(line).trim());
  written.mockRestore();
  expect(lines.at(-1)).toMatch(/^heavy .* PAST BUDGET$/u);
  expect(lines.filter((line) => line.endsWith("PAST BUDGET"))).toHaveLength(1);
});
