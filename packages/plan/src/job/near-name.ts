import { printable } from "./fault.js";

/** Letters to change, add, take away or swap with a neighbour, counted. */
function distance(one: string, other: string): number {
  let earlier: readonly number[] = [];
  let row: readonly number[] = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let at = 1; at <= one.length; at += 1) {
    const next = [at];
    for (let column = 1; column <= other.length; column += 1) {
      const changed = (row[column - 1] ?? 0) + (one[at - 1] === other[column - 1] ? 0 : 1);
      const swapped = one[at - 1] === other[column - 2] && one[at - 2] === other[column - 1];
      const twoBack = swapped ? (earlier[column - 2] ?? Infinity) + 1 : Infinity;
      next.push(Math.min(changed, twoBack, (row[column] ?? 0) + 1, (next[column - 1] ?? 0) + 1));
    }
    [earlier, row] = [row, next];
  }
  return row[other.length] ?? 0;
}

const LONGEST = 40;
const MOST_COMPARED = 100;
const MOST_AWAY = 4;

/** The name that was most likely meant; undefined where none is near. */
export function nearName(given: string, names: readonly string[]): string | undefined {
  if (given.length > LONGEST) return undefined;
  const wanted = given.toLowerCase();
  const near = (name: string): boolean => Math.abs(name.length - wanted.length) <= MOST_AWAY;
  const compared = names.slice(0, MOST_COMPARED).filter(near);
  const scored = compared.map((name) => ({ name, away: distance(wanted, name.toLowerCase()) }));
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
