import leven from "leven";
import { printable } from "./printable.js";

const LONGEST = 40;
const MOST_COMPARED = 100;
const MOST_AWAY = 4;

/** The name that was most likely meant; undefined where none is near. */
export function nearName(given: string, names: readonly string[]): string | undefined {
  if (given.length > LONGEST) return undefined;
  let nearest: string | undefined;
  let most = Math.min(MOST_AWAY, given.length * 0.4);
  for (const name of names.slice(0, MOST_COMPARED)) {
    const away = leven(given.toLowerCase(), name.toLowerCase(), { maxDistance: MOST_AWAY + 1 });
    if (away <= most) [nearest, most] = [name, away - 1];
  }
  return nearest;
}

const MOST_NAMED = 30;

/** What to write in place of a name that is none of these. */
export function unlike(given: string, names: readonly string[]): string {
  const near = nearName(given, names);
  if (near !== undefined) return `Did you mean ${printable(near)}?`;
  const told = names.slice(0, MOST_NAMED).map((name) => printable(name));
  if (names.length > MOST_NAMED) told.push(`and ${String(names.length - MOST_NAMED)} more`);
  return `Write ${names.length > 1 ? "one of " : ""}${told.join(", ")}.`;
}
