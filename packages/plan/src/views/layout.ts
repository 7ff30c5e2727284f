const WIDTH = 80;
const NARROWEST = 5;

/** A word too long for any line, in pieces that fit. */
function pieces(word: string, width: number): readonly string[] {
  if (word.length <= width) return [word];
  const letters = Array.from(word);
  return [letters.slice(0, width).join(""), ...pieces(letters.slice(width).join(""), width)];
}

/** Text broken at spaces to a width, every line after the first set in. */
export function wrapped(text: string, indent = "", hanging: string = indent, width: number = WIDTH): readonly string[] {
  const room = width - Math.max(indent.length, hanging.length);
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(" ").flatMap((long) => pieces(long, room))) {
    const begun = line.trim() !== "";
    if (begun && line.length + 1 + word.length > width) {
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

const longestWord = (text: string): number => Math.max(...text.split(" ").map((word) => word.length));

/** The widths of the columns; where they are too wide for the page the widest gives way, down to its longest word while there is another. */
function widthsOf(cells: readonly (readonly string[])[]): readonly number[] {
  const columns = (cells[0] ?? []).map((_, at) => cells.map((row) => row[at] ?? ""));
  const widths = columns.map((column) => Math.max(...column.map((text) => text.length)));
  const over = (): number => widths.reduce((sum, width) => sum + width + 2, -2) - WIDTH;
  const narrow = (least: readonly number[]): void => {
    while (over() > 0) {
      const room = widths.map((width, at) => (width > (least[at] ?? 0) ? width : 0));
      const widest = room.indexOf(Math.max(...room));
      const width = room[widest] ?? 0;
      if (width === 0) break;
      widths[widest] = width - 1;
    }
  };
  narrow(columns.map((column) => Math.max(...column.map(longestWord))));
  narrow(columns.map(() => NARROWEST));
  return widths;
}

/** Columns set one under the other, row by row: words to the left, numbers to the right; long words run on below. */
export function tableRows(
  heads: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): readonly (readonly string[])[] {
  const cells = [heads, ...rows].map((row) => row.map(String));
  const isNumber = heads.map((_, at) => rows.every((row) => typeof row[at] === "number"));
  const widths = widthsOf(cells);
  return cells.map((row) => {
    const broken = row.map((cell, at) => wrapped(cell, "", "", widths[at]));
    const height = Math.max(...broken.map((lines) => lines.length));
    return Array.from({ length: height }, (_, line) => {
      const padded = broken.map((lines, at) => {
        const [text, width] = [lines[line] ?? "", widths[at] ?? 0];
        return isNumber[at] === true ? text.padStart(width) : text.padEnd(width);
      });
      return padded.join("  ").trimEnd();
    });
  });
}

/** The same, one after the other. */
export function table(heads: readonly string[], rows: readonly (readonly (string | number)[])[]): readonly string[] {
  return tableRows(heads, rows).flat();
}
