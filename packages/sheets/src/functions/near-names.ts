/** How many letters one must change, add or drop to turn one word into the other. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (const [i, letter] of Array.from(a).entries()) {
    const next = [i + 1];
    for (const [j, other] of Array.from(b).entries()) {
      const change = (row[j] ?? 0) + (letter === other ? 0 : 1);
      next.push(Math.min(change, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row[row.length - 1] ?? 0;
}

const SHOWN = 3;

/** The few names nearest to what was written. */
export function nearNames(written: string, names: readonly string[]): readonly string[] {
  return names
    .map((name) => ({ name, off: distance(written, name) - (name.startsWith(written) ? written.length : 0) }))
    .sort((a, b) => a.off - b.off)
    .slice(0, SHOWN)
    .map(({ name }) => name);
}
