import type { Unit } from "../engine/quantity/index.js";
import { inWords } from "../engine/working/index.js";
import { allUnits } from "./all-units.js";

/** A unit as a picker offers it. */
export interface UnitEntry {
  /** The name it is imported by. */
  readonly name: string;
  readonly symbol: string;
  readonly kind: string;
  /** The name as words: "ends per inch". */
  readonly label: string;
  readonly use: "usual" | "old trade";
  readonly system: "metric" | "imperial" | "neither";
  readonly unit: Unit<string>;
}

/** What is met in a shop or a weaving room today, in the order a picker wants; every other unit is of the old trade. */
const USUAL: Readonly<Record<string, readonly string[]>> = {
  metric: [
    ...["centimetres", "metres", "millimetres", "kilometres", "grams", "kilograms", "milligrams"],
    ...["endsPerCentimetre", "picksPerCentimetre", "dentsPerTenCentimetres", "heddlesPerCentimetre"],
    "diametersPerCentimetre",
    ...["gramsPerSquareMetre", "tex", "decitex", "kilotex", "metricCount", "metresPerKilogram"],
    ...["gramsPerCubicCentimetre", "cubicCentimetresPerGram"],
  ],
  imperial: [
    ...["inches", "yards", "feet", "miles", "ounces", "pounds", "grains"],
    ...["endsPerInch", "picksPerInch", "dentsPerInch", "heddlesPerInch", "diametersPerInch", "ouncesPerSquareYard"],
    ...["yardsPerPound", "cottonCount", "worstedCount", "linenCount", "typp"],
  ],
  neither: ["percentLost", "percentAdded", "percentOf", "denier", "spunSilkCount"],
};

function entryOf(unit: Unit<string>): UnitEntry {
  const { name, symbol, dimension } = unit;
  const [system = "neither"] = Object.entries(USUAL).find(([, names]) => names.includes(name)) ?? [];
  const isUsual = Object.values(USUAL).flat().includes(name);
  return {
    name,
    symbol,
    kind: dimension,
    label: inWords(name),
    use: isUsual ? "usual" : "old trade",
    system: system === "metric" || system === "imperial" ? system : "neither",
    unit,
  };
}

/** Every unit: the usual ones first, in the order a picker wants, then those of the old trade by name. */
export function unitEntries(): readonly UnitEntry[] {
  const order = Object.values(USUAL).flat();
  const place = ({ name }: UnitEntry): number => (order.includes(name) ? order.indexOf(name) : order.length);
  return allUnits()
    .map(entryOf)
    .sort((a, b) => place(a) - place(b) || a.label.localeCompare(b.label, "en"));
}

/**
 * The units of a kind, the usual first; none of money, whose units `currency` makes of any name: `kindEntries` tells which
 * kinds are listed.
 */
export function unitsOf(kind: string): readonly UnitEntry[] {
  return unitEntries().filter((entry) => entry.kind === kind);
}
