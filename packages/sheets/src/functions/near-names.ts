import leven from "leven";

const SHOWN = 3;

/** The few names nearest to what was written. */
export function nearNames(written: string, names: readonly string[]): readonly string[] {
  return names
    .map((name) => ({ name, off: leven(written, name) - (name.startsWith(written) ? written.length : 0) }))
    .sort((a, b) => a.off - b.off)
    .slice(0, SHOWN)
    .map(({ name }) => name);
}
