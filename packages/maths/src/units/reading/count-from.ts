import { decimalText, kept } from "../../engine/numbers.js";
import type { Decimal } from "../../engine/numbers.js";
import { reading } from "../../engine/refusal.js";
import { lengthPerMass } from "../length-per-mass.js";
import type { DirectCount, IndirectCount } from "../kinds.js";
import { centimetres, feet, inches, kilometres, metres, yards } from "../length.js";
import { grains, grams, kilograms, ounces, pounds } from "../mass.js";
import type { ReadingOptions } from "./amount.js";
import { countSystemFrom } from "./count-system-from.js";
import type { Led } from "./leading-number.js";
import { leadingNumber } from "./leading-number.js";
import { refusalsOf, textGiven } from "./text-given.js";
import type { RefuseText } from "./text-given.js";
import { unitCalled } from "./unit-words.js";

const LENGTHS = [metres, yards, centimetres, feet, inches, kilometres];
const MASSES = [grams, kilograms, pounds, ounces, grains];
const PER = /^(\p{L}+\.?) ?(?:per|\/|to|in|=) ?(?:an? )?(.+)$/iu;

/** A label: `300 m per 100 g`, `1680 yd/lb`; null for what is none. */
function labelOf({ value, rest }: Led, options: ReadingOptions | undefined, refuse: RefuseText): IndirectCount | null {
  const [, over = "", under = ""] = PER.exec(rest) ?? [];
  const length = unitCalled(over, LENGTHS);
  if (length === undefined) return null;
  const many = leadingNumber(under, options, refuse);
  const mass = unitCalled(many?.rest ?? under, MASSES);
  if (mass === undefined) return null;
  const times = many?.value;
  if (value.lte(0) || times?.lte(0) === true) return refuse("out-of-range", "A label tells of more than nothing.");
  const isWhole = times === undefined || (times.isInteger() && times.lte(1_000_000));
  const unit = lengthPerMass(length, isWhole ? (times?.toNumber() ?? 1) : 1, mass);
  return unit(decimalText(kept(isWhole ? value : value.div(times))));
}

/** A number and a system, by any name that has one meaning; the readings of any other as texts to choose from. */
function numbered(value: Decimal, system: string, refuse: RefuseText): DirectCount | IndirectCount {
  const many = decimalText(kept(value));
  const found = reading(() => countSystemFrom(system));
  if (found.ok) return value.gt(0) ? found.value(many) : refuse("out-of-range", "A count is more than nothing.");
  const [{ code, remedy, params }] = found.faults;
  return refuse(
    code,
    remedy,
    (params.candidates ?? []).map((name) => `${many} ${name}`),
  );
}

/**
 * The count of a thread from text: a number and its system, or what a label prints.
 *
 * @param text such as `20 cotton`, `20s cotton`, `Nm 28`, `30 tex`, `17 1/3 worsted`, `3360 yd per lb`, `225 m / 50 g`
 * @param options the locale of the numerals, needed where a comma stands in them
 * @throws QuantityError "ambiguous" for a name of several systems, with what it may mean in `params.candidates`
 * @example countFrom("300 m per 100 g").in(metresPerKilogram) // 3000
 */
export function countFrom(text: string, options?: ReadingOptions): DirectCount | IndirectCount {
  const refuse = refusalsOf("countFrom", "the count of a thread", "20 cotton", text);
  const given = textGiven(text, refuse);
  const led = leadingNumber(given, options, refuse, "two numbers");
  if (led !== null) {
    if (/^[/-] ?\d/u.test(led.rest)) return refuse("ambiguous", "Two numbers are those of a yarn: use yarnFromText.");
    const system = led.rest.replace(/^['’]?s\b ?/u, "");
    return labelOf(led, options, refuse) ?? numbered(led.value, system, refuse);
  }
  const [, system = "", number = ""] = /^(\D+?) ?(\d.*)$/u.exec(given) ?? [];
  const behind = leadingNumber(number, options, refuse, "two numbers");
  if (behind?.rest !== "")
    return refuse("unreadable", "Write a number and its system: 20 cotton, 30 tex, 300 m per 100 g.");
  return numbered(behind.value, system, refuse);
}
