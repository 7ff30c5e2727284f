import { Decimal, decimalText, kept } from "../../engine/numbers.js";
import type { Quantity, Unit } from "../../engine/quantity/index.js";
import {
  dentsPerInch,
  dentsPerTenCentimetres,
  endsPerCentimetre,
  endsPerInch,
  heddlesPerCentimetre,
  heddlesPerInch,
  picksPerCentimetre,
  picksPerInch,
} from "../closeness.js";
import type { DentsPerLength, EndsPerLength, HeddlesPerLength, PicksPerLength } from "../kinds.js";
import { centimetres, feet, inches, metres, millimetres, yards } from "../length.js";
import type { ReadingOptions } from "./amount.js";
import { leadingNumber } from "./leading-number.js";
import { refusalsOf, textGiven } from "./text-given.js";
import { unitCalled } from "./unit-words.js";

interface Closeness<D extends string> {
  readonly reader: string;
  readonly noun: string;
  /** Imperial first, then metric, with the centimetres it counts over. */
  readonly units: readonly [inch: Unit<D>, metric: Unit<D>, centimetres: number];
}

const NOUNS: Readonly<Record<string, string>> = {
  end: "ends",
  ends: "ends",
  dent: "dents",
  dents: "dents",
  pick: "picks",
  picks: "picks",
  heddle: "heddles",
  heddles: "heddles",
};
/** epi, dpi, ppi and the same over a centimetre. */
const SHORT: Readonly<Record<string, readonly [noun: string, over: string]>> = {
  epi: ["ends", "in"],
  epc: ["ends", "cm"],
  dpi: ["dents", "in"],
  dpc: ["dents", "cm"],
  ppi: ["picks", "in"],
  ppc: ["picks", "cm"],
};
/** What stands under a word itself, and not what every object has. */
function ownOf<T>(table: Readonly<Record<string, T>>, word: string): T | undefined {
  return Object.hasOwn(table, word) ? table[word] : undefined;
}

const PER = /^(?:(\p{L}+) ?)?(?:per|\/|to the|to an?|an?) ?(.+)$/iu;

/** So many to a length: `20 ends per inch`, `20 epi`, `8/cm`, `45 per 10 cm`. */
function closenessFrom<D extends string>(
  { reader, noun, units }: Closeness<D>,
  text: string,
  options: ReadingOptions | undefined,
): Quantity<D> {
  const example = `20 ${noun} per inch`;
  const refuse = refusalsOf(reader, `${noun} in a length`, example, text);
  const led = leadingNumber(textGiven(text, refuse), options, refuse);
  if (led === null) return refuse("unreadable", `Write a number first: ${example}.`);
  const { value, rest } = led;
  const short = ownOf(SHORT, rest.toLowerCase());
  const [, word = "", over = ""] = short === undefined ? (PER.exec(rest) ?? []) : ["", ...short];
  const many = decimalText(kept(value));
  if (over === "") return refuse("ambiguous", "Over which length?", [`${many} per inch`, `${many} per cm`]);
  const counted = word === "" ? noun : ownOf(NOUNS, word.toLowerCase());
  if (counted !== noun) return refuse("wrong-kind", `Here ${noun} are counted: write ${example}.`);
  const length = leadingNumber(over, options, refuse) ?? { value: new Decimal(1), rest: over };
  const unit = unitCalled(length.rest, [inches, centimetres, millimetres, metres, feet, yards]);
  if (unit === undefined || !length.value.gt(0)) return refuse("unknown-unit", `Count over a length: ${example}.`);
  const isMetric = [centimetres, millimetres, metres].includes(unit);
  const [base, made] = isMetric ? [centimetres.scale, units[1]] : [inches.scale, units[0]];
  const inBase = length.value.times(unit.scale[0]).times(base[1]).div(unit.scale[1]).div(base[0]);
  return made(decimalText(kept(value.times(isMetric ? units[2] : 1).div(inBase))));
}

/**
 * A sett from text: `20 epi`, `20 ends per inch`, `8 per cm`, `45 per 10 cm`.
 *
 * @param text a number, and the length over which the ends are counted
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "ambiguous" without a length, with the readings in `params.candidates`; "wrong-kind" for picks or dents
 * @example settFrom("45 per 10 cm").in(endsPerCentimetre) // 4.5
 */
export function settFrom(text: string, options?: ReadingOptions): EndsPerLength {
  return closenessFrom({ reader: "settFrom", noun: "ends", units: [endsPerInch, endsPerCentimetre, 1] }, text, options);
}

/**
 * The number of a reed from text: `12 dpi`, `12 dents per inch`, `45 per 10 cm`.
 *
 * @param text a number, and the length over which the dents are counted
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "ambiguous" without a length; "wrong-kind" for ends or picks
 * @example reedFrom("10 dents per inch").in(dentsPerInch) // 10
 */
export function reedFrom(text: string, options?: ReadingOptions): DentsPerLength {
  const units = [dentsPerInch, dentsPerTenCentimetres, 10] as const;
  return closenessFrom({ reader: "reedFrom", noun: "dents", units }, text, options);
}

/**
 * Picks from text: `18 ppi`, `18 picks per inch`, `7 per cm`.
 *
 * @param text a number, and the length over which the picks are counted
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "ambiguous" without a length; "wrong-kind" for ends or dents
 * @example picksFrom("17 1/2 ppi").in(picksPerInch) // 17.5
 */
export function picksFrom(text: string, options?: ReadingOptions): PicksPerLength {
  const units = [picksPerInch, picksPerCentimetre, 1] as const;
  return closenessFrom({ reader: "picksFrom", noun: "picks", units }, text, options);
}

/**
 * The closeness of heddles on one shaft from text: `6 heddles per inch`.
 *
 * @param text a number, and the length over which the heddles are counted
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "ambiguous" without a length; "wrong-kind" for ends, dents or picks
 * @example healdFrom("6 heddles per inch").in(heddlesPerInch) // 6
 */
export function healdFrom(text: string, options?: ReadingOptions): HeddlesPerLength {
  const units = [heddlesPerInch, heddlesPerCentimetre, 1] as const;
  return closenessFrom({ reader: "healdFrom", noun: "heddles", units }, text, options);
}
