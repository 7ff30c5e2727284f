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

/** The widths of the columns; where they are too wide for the page the widest column of words gives way. */
function widthsOf(cells: readonly (readonly string[])[], isNumber: readonly boolean[]): readonly number[] {
  const widths = isNumber.map((_, at) => Math.max(...cells.map((row) => row[at]?.length ?? 0)));
  const over = (): number => widths.reduce((sum, width) => sum + width + 2, -2) - WIDTH;
  while (over() > 0) {
    const widest = widths.reduce((best, width, at) => {
      return isNumber[at] !== true && width > (best < 0 ? 0 : (widths[best] ?? 0)) ? at : best;
    }, -1);
    const width = widths[widest] ?? 0;
    if (width <= NARROWEST) break;
    widths[widest] = Math.max(NARROWEST, width - over());
  }
  return widths;
}

/** Columns set one under the other, row by row: words to the left, numbers to the right; long words run on below. */
export function tableRows(
  heads: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): readonly (readonly string[])[] {
  const cells = [heads, ...rows].map((row) => row.map(String));
  const isNumber = heads.map((_, at) => rows.every((row) => typeof row[at] === "number"));
  const widths = widthsOf(cells, isNumber);
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
