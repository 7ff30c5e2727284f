import type { BookCell, LiveLook, Sheet } from "../book/book.js";
import { columnLetters, formulaCell, PLAIN, textCell, TITLE } from "../book/cells.js";
import { colourOf } from "./colours.js";
import type { Hand } from "./hands.js";

const PARTS = 160;
const ROW = 5;

/** The warp drawn across the sheet, which follows the stripes as they are changed. */
export function drawingSheet(hands: readonly Hand[]): Sheet {
  const row = String(ROW);
  const last = columnLetters(PARTS);
  const parts = Array.from({ length: PARTS }, (_, at): BookCell => {
    const end = `1+INT(SUM(stripe_ends)*${String(2 * at + 1)}/${String(2 * PARTS)})`;
    return formulaCell(`${columnLetters(at + 1)}${row}`, `=INDEX(stripe_hands,MATCH(${end},stripe_firsts,1))`, null, {
      shows: "nothing",
    });
  });
  const liveLooks = hands.map((_, at): LiveLook => ({
    at: `A${row}:${last}${row}`,
    formula: `A$${row}=${String(at + 1)}`,
    look: { fill: colourOf(at) },
  }));
  return {
    name: "Drawing",
    widths: parts.map(() => 0.9),
    heights: new Map([[ROW, 200]]),
    cells: [
      textCell("A1", "The warp, end 1 on the left", TITLE),
      textCell(
        "A2",
        `Each column is 1/${String(PARTS)} of the ends: a narrower stripe may not show. The colours are those of the sheet Stripes.`,
        PLAIN,
      ),
      ...parts,
    ],
    rules: [],
    liveLooks,
    notes: [],
  };
}
