import type { Unit } from "../../engine/quantity/index.js";

/** Beside its name and symbol, what people write for a unit; a point after it is taken too. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  inches: ["inch", "ins", '"', "”", "″", "''", "’’", "′′"],
  feet: ["foot", "'", "’", "′"],
  yards: ["yard", "yds"],
  miles: ["mile"],
  millimetres: ["millimetre", "millimeter", "millimeters"],
  centimetres: ["centimetre", "centimeter", "centimeters", "cms"],
  metres: ["metre", "meter", "meters", "mtr", "mtrs"],
  kilometres: ["kilometre", "kilometer", "kilometers"],
  grams: ["gram", "gramme", "grammes", "gm", "gms"],
  milligrams: ["milligram", "milligramme", "milligrammes"],
  kilograms: ["kilogram", "kilogramme", "kilogrammes", "kilo", "kilos", "kgs"],
  pounds: ["pound", "lbs"],
  ounces: ["ounce", "ozs"],
  grains: ["grain"],
  drams: ["dram"],
  percentLost: ["% lost", "percent lost"],
  percentAdded: ["% added", "percent added"],
  percentOf: ["% of a whole", "% of the whole", "percent of a whole"],
};

/** "cottonHanks" as people would write it: "cotton hanks". */
export function spaced(name: string): string {
  return name.replace(/([A-Z]|\d+)/gu, " $1").toLowerCase();
}

/**
 * The unit among these that a word means: by its name, its symbol or another spelling people write, with a point after it or
 * without; undefined where it means none of them.
 *
 * @example unitCalled("ins.", [inches, yards])?.symbol // "in"
 */
export function unitCalled<D extends string>(word: string, units: readonly Unit<D>[]): Unit<D> | undefined {
  const given: readonly unknown[] = [word, units];
  if (typeof given[0] !== "string" || !Array.isArray(given[1])) return undefined;
  const wanted = word.toLowerCase().replace(/\.$/u, "");
  return units.find(({ name, symbol }) =>
    [name.toLowerCase(), spaced(name), symbol.toLowerCase(), ...(SPELLINGS[name] ?? [])].includes(wanted),
  );
}
