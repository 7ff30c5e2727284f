/**
 * Prints figures beside their budgets, and gives the exit code of the run: 1 where one that must hold does not. Each row is
 * { line, figure, budget, holds, mustHold }, the first three as text; without a budget it is only told.
 */
export function printTable(rows) {
  const width = (column) => Math.max(...rows.map((row) => row[column].length));
  const [line, figure, budget] = [width("line"), width("figure"), width("budget")];
  for (const row of rows) {
    const cells = [row.line.padEnd(line), row.figure.padStart(figure), row.budget.padStart(budget)];
    const verdict = row.budget === "" ? "" : row.holds ? "ok" : "PAST BUDGET";
    process.stdout.write(`${[...cells, verdict].join("  ").trimEnd()}\n`);
  }
  return rows.every(({ holds, mustHold }) => holds || !mustHold) ? 0 : 1;
}
