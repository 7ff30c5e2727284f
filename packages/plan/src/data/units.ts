import {
  alloaOf240,
  alloaOf480,
  americanAsbestosCut,
  britishAsbestosCount,
  cottonCount,
  currency,
  decitex,
  denier,
  dentsPerInch,
  dentsPerTenCentimetres,
  dramSilk,
  endsPerCentimetre,
  endsPerInch,
  frenchCottonCount,
  galashielsCut,
  grainsPer120Yards,
  grainsPer20Yards,
  hawickCut,
  heddlesPerCentimetre,
  heddlesPerInch,
  internationalDenier,
  juteCount,
  kilotex,
  leicesterCount,
  linenCount,
  metresPerKilogram,
  metricCount,
  milanDenier,
  oldEnglishDenier,
  percentAdded,
  percentLost,
  percentOf,
  picksPerCentimetre,
  picksPerInch,
  spunSilkCount,
  tex,
  turinDenier,
  typp,
  westOfEnglandCount,
  woollenCut,
  woollenRun,
  worstedCount,
  yardsPerOunce,
  yardsPerPound,
  yorkshireSkein,
} from "@thrum/maths";
import type { Unit } from "@thrum/maths";
import { LENGTHS, MASSES } from "../job/units.js";

/** The units of a job and of what is worked out from it; all of the handbook's would weigh more than the plan. */
const UNITS: readonly Unit<string>[] = [
  ...LENGTHS,
  ...MASSES,
  ...[percentLost, percentAdded, percentOf],
  ...[endsPerInch, endsPerCentimetre, dentsPerInch, dentsPerTenCentimetres],
  ...[picksPerInch, picksPerCentimetre, heddlesPerInch, heddlesPerCentimetre],
  ...[tex, kilotex, decitex, denier, dramSilk, oldEnglishDenier, internationalDenier, turinDenier, milanDenier],
  ...[juteCount, grainsPer20Yards, grainsPer120Yards],
  ...[cottonCount, spunSilkCount, worstedCount, linenCount, metricCount, yardsPerPound, metresPerKilogram, typp],
  ...[woollenRun, woollenCut, yorkshireSkein, galashielsCut, alloaOf240, alloaOf480, hawickCut, leicesterCount],
  ...[westOfEnglandCount, yardsPerOunce, americanAsbestosCut, britishAsbestosCount, frenchCottonCount],
];

const BY_NAME: ReadonlyMap<string, Unit<string>> = new Map(UNITS.map((unit) => [unit.name, unit]));

/** The unit of this name, money by its currency; null where a plan has no such unit. */
export function unitNamed(name: string, dimension: string): Unit<string> | null {
  if (dimension === "money") return /^[A-Za-z]{1,20}$/u.test(name) ? currency(name) : null;
  const unit = BY_NAME.get(name);
  return unit?.dimension === dimension ? unit : null;
}
