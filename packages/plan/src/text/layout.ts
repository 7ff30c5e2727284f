const WIDTH = 80;

/** Text broken at spaces to the width of the page, every line after the first set in. */
export function wrapped(text: string, indent = "", hanging: string = indent): readonly string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(" ")) {
    const begun = line.trim() !== "";
    if (begun && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = hanging + word;
    } else {
      line = begun ? `${line} ${word}` : `${line}${word}`;
    }
  }
  return [...lines, line];
}

/** A line of a working, its own indent kept where it must be broken. */
export function keptIndent(line: string): readonly string[] {
  if (line.length <= WIDTH) return [line];
  const indent = /^ */u.exec(line)?.[0] ?? "";
  return wrapped(line.trimStart(), indent, `${indent}    `);
}

/** Columns set one under the other: text to the left, numbers to the right. */
export function table(heads: readonly string[], rows: readonly (readonly (string | number)[])[]): readonly string[] {
  const cells = [heads, ...rows].map((row) => row.map(String));
  const widths = heads.map((_, at) => Math.max(...cells.map((row) => row[at]?.length ?? 0)));
  const isNumber = heads.map((_, at) => rows.every((row) => typeof row[at] === "number"));
  const lines = cells.map((row) =>
    row.map((cell, at) => (isNumber[at] === true ? cell.padStart(widths[at] ?? 0) : cell.padEnd(widths[at] ?? 0))),
  );
  return lines.flatMap((row) => keptIndent(row.join("  ").trimEnd()));
}

/** A heading with its lines, and an empty line after. */
export function section(heading: string, ...lines: readonly string[]): readonly string[] {
  return [heading.toUpperCase(), ...lines, ""];
}
