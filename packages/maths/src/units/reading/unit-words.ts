import type { Unit } from "../../engine/quantity/index.js";
import { inWords, singular } from "../../engine/working/index.js";

/** Beside its name, one of it and its symbol, what people write for a unit; a point after it is taken too. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  inches: ["ins", '"', "”", "″", "''", "’’", "′′"],
  feet: ["foot", "'", "’", "′"],
  yards: ["yds"],
  millimetres: ["millimeter", "millimeters"],
  centimetres: ["centimeter", "centimeters", "cms"],
  metres: ["meter", "meters", "mtr", "mtrs"],
  kilometres: ["kilometer", "kilometers"],
  grams: ["gramme", "grammes", "gm", "gms"],
  milligrams: ["milligramme", "milligrammes"],
  kilograms: ["kilogramme", "kilogrammes", "kilo", "kilos", "kgs"],
  pounds: ["lbs"],
  ounces: ["ozs"],
  percentLost: ["% lost", "percent lost"],
  percentAdded: ["% added", "percent added"],
  percentOf: ["% of a whole", "% of the whole", "percent of a whole"],
};

/**
 * The unit among these that a word means: by its name, as many or one, its symbol or another spelling people write, with a point
 * after it or without; undefined where it means none of them.
 *
 * @example unitCalled("ins.", [inches, yards])?.symbol // "in"
 */
export function unitCalled<D extends string>(word: string, units: readonly Unit<D>[]): Unit<D> | undefined {
  const given: readonly unknown[] = [word, units];
  if (typeof given[0] !== "string" || !Array.isArray(given[1])) return undefined;
  const wanted = word.toLowerCase().replace(/\.$/u, "");
  return units.find(({ name, symbol }) =>
    [
      name.toLowerCase(),
      inWords(name),
      singular(inWords(name)),
      symbol.toLowerCase(),
      ...(SPELLINGS[name] ?? []),
    ].includes(wanted),
  );
}
