import { countSystemReading, inWords, tex, yardsPerPound } from "@thrum/maths";
import type { CountSystem, DirectCount, IndirectCount, Length, Mass } from "@thrum/maths";
import { decimalOf, isLength, isMass, lengthNotation, massNotation, numberText } from "./amounts.js";
import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form, Notation } from "./form.js";

/** The finished thread of a yarn: by its label, or by number and plies. */
export interface YarnCount {
  readonly label?: { readonly length: Length; readonly mass: Mass };
  readonly number?: NumberedCount;
}

/** A count as the trade writes it. */
export interface NumberedCount {
  readonly count: DirectCount | IndirectCount;
  /** One number a folding, the last first: 3-ply of 2-ply is 3, 2. Empty where the number is of the finished thread. */
  readonly plies: readonly number[];
}

const THREE = "Write the label, such as 3360 yd per lb, or 2-ply of 8 cotton, or 80 tex in all.";

function systemOf(name: string): CountSystem {
  const system = countSystemReading(name);
  if (system.ok) return system.value;
  const { code, remedy } = system.faults[0];
  throw new Unreadable(
    code === "ambiguous" ? remedy : "Which system of counts? Write such as cotton, worsted, linen, metric, tex.",
    code === "ambiguous" ? code : "unknown-unit",
    "a count of a known system",
    `"${name}"`,
  );
}

/** A number of finished or single thread: `8 cotton`. */
function numbered(written: string): DirectCount | IndirectCount {
  const [, number = "", name = ""] = /^([\d./ ½¼¾]*[\d½¼¾]) ?(\D.*)$/u.exec(written) ?? [];
  const value = decimalOf(number);
  if (value === null || Number(value) <= 0) throw new Unreadable(THREE);
  const system = systemOf(name);
  return system.dimension === "mass per length" ? system(value) : system(value);
}

/** Yards in a pound of so many plies of a number, in four figures; only for a sentence. */
function yardsInPound(plies: number, number: number, system: CountSystem): string {
  const single =
    system.dimension === "length per mass" ? system(number).in(yardsPerPound) : YARDS_OF_TEX / system(number).in(tex);
  return String(Number((single / plies).toPrecision(4)));
}

/** Yards in a pound at 1 tex: 453,592.37 g ÷ 0.9144 m. */
const YARDS_OF_TEX = 453_592.37 / 0.9144;

/** `8/2 cotton` says 2-ply of 8 to one and 8-ply of 2 to another. */
function refuseTwoReadings(written: string): void {
  const [, before = "", one = "", other = "", after = ""] = /^(.*?) ?(\d+) ?\/ ?(\d+)s? ?(.*)$/u.exec(written) ?? [];
  const name = `${before}${after}`.trim();
  if (one === "" || /\d/u.test(name) || (one === "1" && name === "")) return;
  const system = countSystemReading(name);
  const reading = (plies: string, number: string): string => {
    const yards = system.ok ? ` (${yardsInPound(Number(plies), Number(number), system.value)} yd per lb)` : "";
    return `${plies}-ply of ${number} ${name || "cotton"}${yards}`;
  };
  const [first, second] = [reading(other, one), reading(one, other)];
  const candidates = `${first}, ${second}`;
  throw new Unreadable(`It has two readings: ${candidates}. Write one of them.`, "ambiguous", "a count of one reading");
}

const notation: Notation<YarnCount> = {
  read: (written) => {
    const [before = "", per, more] = written.split(" per ");
    if (
      per !== undefined &&
      more === undefined &&
      isLength(before) &&
      isMass(/^[\d½¼¾]/u.test(per) ? per : `1 ${per}`)
    ) {
      return {
        label: {
          length: lengthNotation.read(before),
          mass: massNotation.read(/^[\d½¼¾]/u.test(per) ? per : `1 ${per}`),
        },
      };
    }
    const plies: number[] = [];
    let rest = written;
    for (let ply = PLY.exec(rest); ply !== null; ply = PLY.exec(rest)) {
      plies.push(Number(ply[1]));
      rest = rest.slice(ply[0].length);
    }
    const inAll = rest.endsWith(" in all");
    if (inAll && plies.length > 0)
      throw new Unreadable("Of the single or of the finished thread? Take away the ply, or in all.", "ambiguous");
    if (plies.some((ply) => ply < 1 || ply > 99)) throw new Unreadable("Write 1 to 99 plies.", "out-of-range");
    if (inAll) return { number: { count: numbered(rest.slice(0, -" in all".length)), plies } };
    if (plies.length > 0) return { number: { count: numbered(rest), plies } };
    refuseTwoReadings(written);
    if (/^\d[\d.]* ?\D/u.test(written)) {
      throw new Unreadable(
        `Of how many plies? Write 1-ply of ${written}, or ${written} in all where it is of the finished thread.`,
        "ambiguous",
      );
    }
    throw new Unreadable(THREE);
  },
  write: ({ label, number }) => {
    if (label !== undefined) {
      const mass = massNotation.write(label.mass);
      return `${lengthNotation.write(label.length)} per ${mass.replace(/^1 (?=\p{L})/u, "")}`;
    }
    if (number === undefined) return "";
    const { count, plies } = number;
    const single = `${numberText(count.value)} ${systemName(count)}`;
    return plies.length === 0
      ? `${single} in all`
      : `${plies.map((ply) => `${String(ply)}-ply of `).join("")}${single}`;
  },
};

const PLY = /^(\d+)-ply of /u;

/** The shortest name of the system of a count that reads as that system and no other. */
function systemName({ unit }: DirectCount | IndirectCount): string {
  const spaced = inWords(unit);
  const names = [spaced.replace(/ count$/u, ""), spaced, unit];
  const reads = (name: string): boolean => {
    const system = countSystemReading(name);
    return system.ok && system.value.name === unit;
  };
  return names.find(reads) ?? (unit === "denier" ? "den" : unit);
}

export const count: Form<YarnCount> = text("a count", "2-ply of 8 cotton", notation);
