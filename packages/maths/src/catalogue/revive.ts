import { described, isQuantity } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { refuse } from "../engine/refusal.js";
import { currency, quantityFrom } from "../units/index.js";
import { unitEntries, unitsOf } from "./unit-entry.js";

let units: ReadonlyMap<string, Unit<string>> | null = null;

function unitNamed(name: string): Unit<string> | undefined {
  units ??= new Map(unitEntries().map(({ name: one, unit }) => [one, unit]));
  return units.get(name);
}

/**
 * Makes every quantity of a JSON text again, of any kind: the second argument of JSON.parse. Whatever is no quantity stays as it
 * is.
 *
 * @param _key as JSON.parse hands it over
 * @param value as JSON.parse hands it over
 * @throws QuantityError "unreadable" or "unknown-unit" for what has the fields of a quantity and is none
 * @example typeof JSON.parse('{"dimension":"length","value":"21","unit":"inches"}', revive) // "object"
 */
export function revive(_key: string, value: unknown): unknown {
  if (typeof value !== "object" || value === null || isQuantity(value)) return value;
  const { dimension, unit, value: amount } = value as Readonly<Record<string, unknown>>;
  if (typeof dimension !== "string" || typeof unit !== "string" || typeof amount !== "string") return value;
  if (dimension === "money") return quantityFrom(value, [currency(unit)]);
  const named = unitNamed(unit);
  if (named !== undefined) return quantityFrom(value, [named]);
  refuse(
    "unknown-unit",
    ["revive"],
    `the name of a unit of ${described(dimension)}`,
    described(unit),
    "Take it from unitEntries.",
    { candidates: unitsOf(dimension).map(({ name }) => name) },
  );
}
