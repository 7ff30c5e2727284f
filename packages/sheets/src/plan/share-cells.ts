import type { BookCell } from "../book/book.js";
import { PLAIN, columnLetters, formulaCell, textCell } from "../book/cells.js";
import type { Hand } from "./hands.js";

/** What each yarn has of a hand: in the list of hands beside them, and through that of every stripe. */
export function shareCells(
  top: number,
  hands: readonly Hand[],
  yarns: readonly string[],
  stripes: number,
): { readonly cells: readonly BookCell[]; readonly ranges: readonly string[] } {
  const [first, lastHand, lastStripe] = [top, top + hands.length - 1, top + stripes - 1].map(String);
  const cells = yarns.flatMap((yarn, at): readonly BookCell[] => {
    const [own, read] = [columnLetters(12 + at), columnLetters(12 + yarns.length + at)];
    const ofHand = hands.map(({ yarns: held }, hand): BookCell => {
      const times = held.filter((one) => one === yarn).length;
      const share = `=${String(times)}/${String(held.length)}`;
      return formulaCell(`${own}${String(top + hand)}`, share, times / held.length, PLAIN);
    });
    const ofStripe = Array.from({ length: stripes }, (_, stripe): BookCell => {
      const row = String(top + stripe);
      return formulaCell(
        `${read}${row}`,
        `=IF(G${row}>0,INDEX(${own}$${String(first)}:${own}$${String(lastHand)},G${row}),0)`,
        null,
        PLAIN,
      );
    });
    return [...shareHeadings(top, own, read, yarn), ...ofHand, ...ofStripe];
  });
  const ranges = yarns.map((_, at) => {
    const read = columnLetters(12 + yarns.length + at);
    return `'Stripes'!$${read}$${String(first)}:$${read}$${String(lastStripe)}`;
  });
  return { cells, ranges };
}

function shareHeadings(top: number, own: string, read: string, yarn: string): readonly BookCell[] {
  return [
    textCell(`${own}${String(top - 1)}`, `${yarn} in a hand`, PLAIN),
    textCell(`${read}${String(top - 1)}`, `${yarn} in the stripe`, PLAIN),
  ];
}
