import { Decimal, decimalText, EXACT_STEP, kept, rounded, shown } from "../numbers.js";
import type { Rounding } from "../numbers.js";
import { refuse } from "../refusal.js";
import type { RefusalCode } from "../refusal.js";
import { described, toldAs } from "./described.js";
import { withMarks } from "./marks.js";
import { requireSameDimension } from "./genuine.js";
import { keptIn, ownUnit } from "./quantity.js";
import type { Quantity } from "./quantity.js";
import { fractionText, roundingFrom, stepFrom } from "./step-text.js";
import type { Unit } from "./unit.js";

/** How a quantity is written; of `step`, `digits` and `decimals` only one. */
export interface TextOptions<D extends string = string> {
  /** The unit it is written in, or several from large to small, as pounds and ounces. */
  readonly unit?: Unit<D> | readonly Unit<D>[];
  /** The finest part shown, counted in the smallest unit: "1/8", "1/2", "1" or a decimal such as "0.01". */
  readonly step?: string;
  /** Figures that count, from 1 to 30; all whole digits are kept. Six where nothing is asked for. */
  readonly digits?: number;
  /** Decimals always written, from 0 to 30: 2 for money. */
  readonly decimals?: number;
  /** The direction in which it is rounded; halves go up where none is named. */
  readonly rounding?: Rounding;
  /** The language whose marks the numerals take, such as "de"; a point and nothing else where none is named. */
  readonly locale?: string;
}

const USUAL_DIGITS = 6;
const MOST_DIGITS = 30;
const KNOWN = ["unit", "step", "digits", "decimals", "rounding", "locale"];

function refuseOption(field: string, code: RefusalCode, expected: string, given: unknown): never {
  refuse(code, ["asText", field], expected, described(given), "", { candidates: KNOWN });
}

/** The options as given, or the refusal of any that is none. */
function optionsFrom(given: unknown): TextOptions {
  if (typeof given !== "object" || given === null)
    return refuseOption("options", "wrong-kind", "an object of options", given);
  const options = given as TextOptions & Readonly<Record<string, unknown>>;
  const unknown = Object.keys(options).find((field) => !KNOWN.includes(field));
  if (unknown !== undefined)
    return refuseOption(unknown, "unknown-field", `only ${KNOWN.join(", ")}`, options[unknown]);
  const { step, digits, decimals } = options;
  if ([step, digits, decimals].filter((one) => one !== undefined).length > 1)
    return refuseOption("step", "wrong-kind", "one of step, digits and decimals", "several");
  for (const [field, count, least] of [
    ["digits", digits, 1],
    ["decimals", decimals, 0],
  ] as const) {
    const fits = count === undefined || (Number.isInteger(count) && count >= least && count <= MOST_DIGITS);
    if (!fits)
      return refuseOption(field, "wrong-kind", `a whole number from ${String(least)} to ${String(MOST_DIGITS)}`, count);
  }
  return options;
}

/** A number as the options want it, in plain digits or as a whole and a fraction. */
function numberText(value: Decimal, options: TextOptions): string {
  const { step, digits = USUAL_DIGITS, decimals, locale = null } = options;
  const rounding = roundingFrom(options.rounding);
  if (step !== undefined) {
    const [whole = "", ...part] = fractionText(value, stepFrom(step), rounding).split(" ");
    const [sign, figures] = whole.startsWith("-") ? ["-", whole.slice(1)] : ["", whole];
    return [sign + (figures.includes("/") ? figures : withMarks(figures, locale)), ...part].join(" ");
  }
  const isUsual = decimals === undefined && rounding === "nearest";
  const places = decimals ?? Math.max(0, digits - 1 - (value.isZero() ? 0 : value.e));
  const by = new Decimal(10).pow(places);
  const exact = rounded(value.abs().times(by), awayFrom(rounding, value), EXACT_STEP).div(by);
  const text = isUsual
    ? shown(value.abs(), digits).text
    : decimals === undefined
      ? decimalText(exact)
      : exact.toFixed(decimals);
  return (value.isNegative() && /[1-9]/u.test(text) ? "-" : "") + withMarks(text, locale);
}

/** Up and down are those of the number line; what is rounded is the amount without its sign. */
function awayFrom(rounding: Rounding, value: Decimal): Rounding {
  if (rounding === "nearest" || !value.isNegative()) return rounding;
  return rounding === "roundUp" ? "roundDown" : "roundUp";
}

/** An amount in several units: whole numbers of the larger ones, what is left in the smallest. */
function partsText(
  value: Decimal,
  units: readonly Unit<string>[],
  smallest: Unit<string>,
  options: TextOptions,
): string {
  const { step = options.decimals === undefined && options.digits === undefined ? "1" : undefined } = options;
  const finest = step === undefined ? null : stepFrom(step);
  const size = ({ scale }: Unit<string>): Decimal =>
    new Decimal(scale[0]).div(scale[1]).div(smallest.scale[0]).times(smallest.scale[1]);
  const rounding = awayFrom(roundingFrom(options.rounding), value);
  const all = value.abs();
  let left =
    finest === null
      ? all
      : rounded(all.times(finest[1]).div(finest[0]), rounding, EXACT_STEP).times(finest[0]).div(finest[1]);
  const texts: string[] = [];
  for (const unit of units) {
    const many = unit === smallest ? left : kept(left.div(size(unit))).floor();
    left = left.minus(many.times(size(unit)));
    const number = numberText(
      many,
      unit === smallest ? { ...options, ...(step === undefined ? {} : { step }) } : { step: "1" },
    );
    if (!many.isZero() && number !== "0") texts.push(`${number} ${unit.symbol}`);
  }
  const sign = value.isNegative() && texts.length > 0 ? "-" : "";
  return sign + (texts.join(" ") || `0 ${smallest.symbol}`);
}

/** A quantity as a person would write it: six figures in its own unit where no option says otherwise. */
export function quantityText(quantity: Quantity<string>, options?: TextOptions): string {
  const own = ownUnit(quantity, ["asText", "quantity"]);
  const wanted = options === undefined ? {} : optionsFrom(options);
  const asked: unknown = wanted.unit ?? own;
  const units = (Array.isArray(asked) ? asked : [asked]) as readonly Unit<string>[];
  for (const unit of units) requireSameDimension(own, unit, ["asText", "unit"]);
  const smallest = units.at(-1) ?? refuseOption("unit", "wrong-kind", "a unit, or some from large to small", asked);
  const value = keptIn(quantity, own, smallest);
  if (units.length > 1) return partsText(value, units, smallest, wanted);
  return `${numberText(value, wanted)} ${toldAs(smallest)}`;
}
