import * as maths from "@thrum/maths";
import { inWords, isUnit } from "@thrum/maths";
import type { Unit } from "@thrum/maths";
import { nearNames } from "./near-names.js";

const LONGEST = 60;

const units = Object.values<unknown>(maths).filter(isUnit);

/** What a unit may be called; a bare % is none, for it has no base. */
function namesOf({ name, symbol }: Unit<string>): readonly string[] {
  const words = inWords(name);
  const short = symbol === "%" ? words.replace("percent", "%") : symbol;
  return [words, name.toLowerCase(), short.toLowerCase()];
}

/** The unit a text names among those of a few dimensions; otherwise an error that names the near ones. */
export function unitFromText(where: string, dimensions: readonly string[], text: unknown): Unit<string> {
  const fitting = units.filter(({ dimension }) => dimensions.includes(dimension));
  const known = fitting.map(({ name }) => inWords(name));
  const sorts = dimensions.join(" or ");
  if (typeof text !== "string" || text.trim() === "" || text.length > LONGEST) {
    throw new Error(`${where}: expected a unit of ${sorts} as text, received none. Write one of ${known.join(", ")}.`);
  }
  const wanted = text.trim().replace(/\s+/gu, " ").toLowerCase();
  const found = fitting.filter((unit) => namesOf(unit).includes(wanted));
  const [only] = found;
  if (only !== undefined && found.length === 1) return only;
  const meant = found.length > 1 ? found.map(({ name }) => inWords(name)) : nearNames(wanted, known);
  const elsewhere = units.find((unit) => namesOf(unit).includes(wanted));
  const received = elsewhere === undefined ? `"${wanted}"` : `"${wanted}", a unit of ${elsewhere.dimension}`;
  throw new Error(`${where}: expected a unit of ${sorts}, received ${received}. Write ${meant.join(" or ")}.`);
}
