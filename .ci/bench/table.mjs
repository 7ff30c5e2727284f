/** Prints figures beside their budgets; each row is { line, figure, budget, holds }, the first three as text; without a budget it is only told. */
export function printTable(rows) {
  const width = (column) => Math.max(...rows.map((row) => row[column].length));
  const [line, figure, budget] = [width("line"), width("figure"), width("budget")];
  for (const row of rows) {
    const cells = [row.line.padEnd(line), row.figure.padStart(figure), row.budget.padStart(budget)];
    const verdict = row.budget === "" ? "" : row.holds ? "ok" : "PAST BUDGET";
    process.stdout.write(`${[...cells, verdict].join("  ").trimEnd()}\n`);
  }
}
