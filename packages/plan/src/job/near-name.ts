import { printable } from "./fault.js";

/** Letters to change, add, take away or swap with a neighbour, counted. */
function distance(one: string, other: string): number {
  const table = Array.from({ length: one.length + 1 }, (_, row) => [row]);
  const at = (row: number, column: number): number => table[row]?.[column] ?? row + column;
  for (let row = 0; row <= one.length; row += 1) {
    for (let column = row === 0 ? 1 : 0; column <= other.length; column += 1) {
      const cells = table[row];
      if (cells === undefined) continue;
      const differs = one[row - 1] === other[column - 1] ? 0 : 1;
      const swapped = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1] && row > 1 && column > 1;
      const ways = [at(row, column - 1) + 1, at(row - 1, column) + 1, at(row - 1, column - 1) + differs];
      if (row === 0) cells[column] = column;
      else if (column > 0) cells[column] = Math.min(...ways, swapped ? at(row - 2, column - 2) + 1 : Infinity);
    }
  }
  return at(one.length, other.length);
}

const LONGEST = 40;
const MOST_COMPARED = 100;
const MOST_AWAY = 4;

/** The name that was most likely meant; undefined where none is near. */
export function nearName(given: string, names: readonly string[]): string | undefined {
  if (given.length > LONGEST) return undefined;
  const wanted = given.toLowerCase();
  const scored = names.slice(0, MOST_COMPARED).map((name) => ({ name, away: distance(wanted, name.toLowerCase()) }));
  const [best] = scored.sort((a, b) => a.away - b.away);
  return best !== undefined && best.away <= Math.min(MOST_AWAY, Math.floor(wanted.length / 3)) ? best.name : undefined;
}

const MOST_NAMED = 30;

/** What to write in place of a name that is none of these. */
export function unlike(given: string, names: readonly string[]): string {
  const near = nearName(given, names);
  if (near !== undefined) return `Did you mean ${printable(near)}?`;
  const more = names.length - MOST_NAMED;
  const told = names
    .slice(0, MOST_NAMED)
    .map((name) => printable(name))
    .join(", ");
  return `Write ${names.length > 1 ? "one of " : ""}${told}${more > 0 ? ` and ${String(more)} more` : ""}.`;
}
