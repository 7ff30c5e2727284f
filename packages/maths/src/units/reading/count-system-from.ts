import { described } from "../../engine/quantity/index.js";
import { missingOr, QuantityError, reading } from "../../engine/refusal.js";
import type { Reading, RefusalCode } from "../../engine/refusal.js";
import { inWords } from "../../engine/working/index.js";
import { ambiguous, SPELLINGS, systems } from "./count-names.js";
import type { CountSystem } from "./count-names.js";

const LONGEST = 60;

function namesOf({ name, symbol }: CountSystem): readonly string[] {
  return [name.toLowerCase(), inWords(name), symbol.toLowerCase(), ...(SPELLINGS[name] ?? [])];
}

/** A name of the system that means no other: "woollen cut". */
function readable({ name }: CountSystem): string {
  const taken = ambiguous();
  const names = [inWords(name), ...(SPELLINGS[name] ?? [])];
  return names.find((one) => !Object.hasOwn(taken, one)) ?? name;
}

/** "woollenCut (300 yd to 1 lb)" */
function defined({ name, dimension, of }: CountSystem): string {
  const [length, mass] = [of?.length, of?.mass].map((part) => (part ? `${String(part[0])} ${part[1].symbol}` : ""));
  return dimension === "mass per length"
    ? `${name} (${mass ?? ""} to ${length ?? ""})`
    : `${name} (${length ?? ""} to ${mass ?? ""})`;
}

/**
 * The count system that a text names: `cotton`, `Nm`, `yd/lb`, `galashiels cut`. A name that means two things is refused
 * with what it may mean.
 *
 * @param name the name of the system alone, without a number
 * @throws QuantityError "ambiguous" for a name of two systems, "unknown-unit" for a name of none
 * @example countSystemFrom("cotton")(20).toString() // "20 Ne"
 */
export function countSystemFrom(name: string): CountSystem {
  const given: unknown = name;
  const refuse = (code: RefusalCode, remedy: string, names: readonly CountSystem[] = []): never => {
    const params = { kind: "count system", candidates: names.map(readable) };
    const expected = "the name of one count system";
    throw new QuantityError({
      code,
      function: "countSystemFrom",
      path: ["name"],
      expected,
      received: described(name),
      remedy,
      params,
    });
  };
  if (typeof given !== "string") return refuse(missingOr(given, "wrong-kind"), "Give the name as text.");
  if (given.length > LONGEST) return refuse("too-long", `A name has ${String(LONGEST)} letters at most.`);
  const wanted = given.trim().replace(/\s+/gu, " ").toLowerCase();
  const meant = new Map(Object.entries(ambiguous()));
  const meanings = meant.get(wanted) ?? meant.get(wanted.replace(/s$/u, ""));
  if (meanings !== undefined) {
    return refuse("ambiguous", `It may mean ${meanings.map(defined).join(", ")}: name one of them.`, meanings);
  }
  const known = systems();
  const found = known.find((system) => namesOf(system).includes(wanted));
  return found ?? refuse("unknown-unit", `Known are ${known.map((system) => system.name).join(", ")}.`, known);
}

/**
 * As `countSystemFrom`, but what cannot be read comes back as data instead of an error.
 *
 * @example countSystemReading("cut").ok // false
 */
export function countSystemReading(name: string): Reading<CountSystem> {
  return reading(() => countSystemFrom(name));
}
