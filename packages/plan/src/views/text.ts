import { planFrom } from "../data/plan-from.js";
import type { PlanData } from "../data/plan-data.js";
import type { Block, Inline, Line, Manner } from "./block.js";
import { keptIndent, tableRows, wrapped } from "./layout.js";
import { sectionsOf } from "./section.js";
import type { PrintOptions } from "./section.js";
import type { Signs } from "./signs.js";

const BLANK = "______";

/** Text from a job made fit for a terminal: no control character, no direction mark, on one line. */
function plainText(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]+/gu, " ");
}

function inline(part: Inline): string {
  if (typeof part === "number") return String(part);
  if (typeof part === "string") return plainText(part);
  return "yarn" in part ? plainText(part.yarn) : BLANK;
}

function lineText(line: Line): string {
  return line.map(inline).join("").trim();
}

/** A number as such, so that its column stands to the right. */
function cell(line: Line): string | number {
  const [only] = line;
  return line.length === 1 && typeof only === "number" ? only : lineText(line);
}

const MARKS: Readonly<Record<Manner, string>> = {
  fact: "",
  step: "[ ] ",
  caution: "CAUTION: ",
  MUST: "MUST   ",
  CHECK: "CHECK  ",
  ASK: "ASK    ",
  WAITS: "WAITS  ",
  note: "",
};

function says(as: Manner, line: Line): readonly string[] {
  const mark = MARKS[as];
  const hanging = as === "caution" ? "" : " ".repeat(mark.length);
  return wrapped(lineText(line), mark.slice(0, -1), hanging);
}

function picture(
  stripes: readonly { readonly yarns: readonly string[]; readonly ends: number }[],
  signs: Signs,
): readonly string[] {
  const letter = (yarn: string): string => signs.get(yarn)?.letter ?? "";
  const shown = stripes
    .slice(0, MOST_IN_PICTURE)
    .map(({ yarns, ends }) => `${String(ends)} ${yarns.map(letter).join("+")}`);
  const more = stripes.length > shown.length ? [`and ${String(stripes.length - shown.length)} more`] : [];
  const key = [...signs].map(([name, sign]) => `${sign.letter} ${plainText(name)}`);
  return [...wrapped([...shown, ...more].join(" | ")), ...wrapped(`(${key.join(", ")})`)];
}

const MOST_IN_PICTURE = 120;

function blockText(block: Block, signs: Signs): readonly string[] {
  switch (block.is) {
    case "says":
      return says(block.as, block.says);
    case "heading":
      return ["", block.heading];
    case "table": {
      const isTicked = block.ticked || block.rows.some(({ isEdge }) => isEdge);
      const heads = isTicked ? ["", ...block.heads] : block.heads;
      const rows = block.rows.map(({ cells, isEdge }) => [
        ...(isTicked ? [`${block.ticked ? "[ ]" : ""}${isEdge ? "=" : ""}`] : []),
        ...cells.map(cell),
      ]);
      const [head = [], ...lines] = tableRows(heads, rows);
      const noted = lines.flatMap((line, at) => {
        const note = block.rows[at]?.note ?? null;
        return note === null ? line : [...line, ...wrapped(plainText(note), "      !", "        ")];
      });
      return [...(block.caption === "" ? [] : [block.caption]), ...head, ...noted];
    }
    case "blanks": {
      const width = block.what.reduce((most, what) => Math.max(most, what.length), 0);
      return block.what.map((what) => `  ${what.padEnd(width)}  ${BLANK}`);
    }
    case "picture":
      return picture(block.stripes, signs);
    case "tape":
      return [];
    case "lines":
      return [...wrapped(plainText(block.heading)), ...block.lines.flatMap((line) => keptIndent(plainText(line))), ""];
  }
}

/**
 * A plan as plain text in 80 columns, in the order of the work at the loom.
 *
 * @param plan what `planWarp` gives, or a copy of it
 * @param options `without: "workings"` leaves out the sums at the back
 */
export function planText(plan: PlanData, options: PrintOptions = {}): string {
  const { title, sections, signs } = sectionsOf(planFrom(plan), options);
  const lines = sections.flatMap(({ heading, blocks }) => [
    heading.toUpperCase(),
    ...blocks.flatMap((block) => blockText(block, signs)),
    "",
  ]);
  return [...wrapped(plainText(title).trim()), "", ...lines].join("\n").trimEnd();
}
