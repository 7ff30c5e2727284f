import type { Block, Section } from "./block.js";

/** Sheets of paper in a ream. */
const REAM = 500;
/** Rows and lines that a page holds at most, large and small, so that no fewer pages than these come out. */
const [BENCH, TABLE, LINES] = [23, 34, 55] as const;

function pagesOf(block: Block): number {
  if (block.is === "table") return block.rows.length / (block.read === "bench" ? BENCH : TABLE);
  return block.is === "lines" ? block.lines.length / LINES : 0;
}

/** Told first where the pages would take more than a ream of paper, with what makes them fewer. */
export function moreThanAReam(sections: readonly Section[]): readonly Block[] {
  const pages = sections.flatMap(({ blocks }) => blocks).reduce((sum, block) => sum + pagesOf(block), 0);
  if (pages <= REAM) return [];
  const fewer = sections.some(({ name }) => name === "workings") ? "leave out the workings, " : "";
  const says = `Printed, this takes at least ${String(Math.floor(pages))} pages, more than a ream of ${String(REAM)}: ${fewer}print the pages you need, or count in larger groups (groups).`;
  return [{ is: "says", as: "CHECK", says: [says] }];
}
