import { decimalFrom } from "../../engine/numbers.js";
import { described, areUnitsOf, makeQuantity } from "../../engine/quantity/index.js";
import type { Quantity, Unit } from "../../engine/quantity/index.js";
import { inPlace, QuantityError } from "../../engine/refusal.js";
import type { Place } from "../../engine/refusal.js";
import { amountFrom } from "./amount.js";
import type { ReadingOptions } from "./amount.js";

/**
 * A quantity made again from the data a copy holds, as JSON or structuredClone leaves it.
 *
 * What a unit prints, as text, is read too.
 *
 * @param data an object with just dimension, value and unit, as JSON.stringify wrote it, or text such as `21 in`
 * @param units the units it may be in
 * @param options the locale of the numerals of a text
 * @throws QuantityError "unknown-unit" for a unit not given, "unreadable" for anything else in the data
 * @example quantityFrom(JSON.parse('{"dimension":"length","value":"21","unit":"inches"}'), [inches]).in(inches) // 21
 */
export function quantityFrom<D extends string>(
  data: unknown,
  units: readonly Unit<D>[],
  options?: ReadingOptions,
): Quantity<D> {
  const dimension = (units as readonly Unit<D>[] | null | undefined)?.[0]?.dimension;
  if (typeof data === "string" && dimension !== undefined)
    return amountFrom("quantityFrom", dimension, data, units, options);
  const where: Place = ["quantityFrom"];
  const listed = areUnitsOf(dimension, units);
  const record = typeof data === "object" && data !== null ? (data as Readonly<Record<string, unknown>>) : {};
  const value = typeof record["value"] === "string" ? decimalFrom(record["value"]) : null;
  const keys = Object.keys(record);
  const plain = keys.length === 3 && keys.every((key) => key === "dimension" || key === "value" || key === "unit");
  if (!listed || value === null || !plain) {
    const expected = "data with dimension, value and unit, and a list of units";
    throw new QuantityError({ code: "unreadable", ...inPlace(where), expected, received: described(data), remedy: "" });
  }
  const unit = units.find(({ name, dimension }) => name === record["unit"] && dimension === record["dimension"]);
  if (unit === undefined) {
    const expected = `one of ${units.map(({ name }) => name).join(", ")}`;
    throw new QuantityError({
      code: "unknown-unit",
      ...inPlace(where),
      expected,
      received: described(data),
      remedy: "",
    });
  }
  return makeQuantity(unit, value);
}
