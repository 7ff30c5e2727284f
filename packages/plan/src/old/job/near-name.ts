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
  return row.at(-1) ?? 0;
}

const LONGEST = 40;

/** The name that was likely meant; null where none is near. */
export function nearName(written: string, names: readonly string[]): string | null {
  if (written.length > LONGEST) return null;
  const plain = (word: string): string => word.toLowerCase().replace(/[\s_-]/gu, "");
  const near = names
    .map((name) => ({ name, off: distance(plain(written), plain(name)) }))
    .filter(({ name, off }) => off <= Math.max(1, Math.floor(name.length / 3)))
    .sort((a, b) => a.off - b.off);
  return near[0]?.name ?? null;
}
