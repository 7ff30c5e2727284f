import {
  dentsPerInch,
  dentsPerTenCentimetres,
  endsPerCentimetre,
  endsPerInch,
  picksPerCentimetre,
  picksPerInch,
  ratio,
  inches,
  centimetres,
  inUnit,
  lengthReading,
  times,
} from "@thrum/maths";
import type { DentsPerLength, EndsPerLength, Length, PicksPerLength, Quantity, Unit } from "@thrum/maths";
import { decimalOf, numberText } from "./amounts.js";
import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form, Notation } from "./form.js";

/** How often something comes in a length: its words, and its unit of the trade and of the metre. */
interface Closeness<D extends string> {
  readonly nouns: readonly string[];
  readonly short: string;
  readonly perInch: Unit<D>;
  readonly metric: Unit<D>;
  /** Centimetres that the metric unit counts on. */
  readonly centimetres: number;
}

const INCH = inches(1);

/** So many per how much: `45 per 10 cm` per one centimetre or one inch. */
function measured(written: string): { readonly inch: boolean; readonly length: Length } | null {
  const given = /^\d/u.test(written) ? written : `1 ${written}`;
  const read = lengthReading(given.replace(/\.$/u, ""), [inches, centimetres]);
  return read.ok && Number(read.value.value) > 0 ? { inch: read.value.unit === INCH.unit, length: read.value } : null;
}

function notation<D extends string>({
  nouns,
  short,
  perInch,
  metric,
  centimetres: base,
}: Closeness<D>): Notation<Quantity<D>> {
  const [noun = ""] = nouns;
  return {
    read: (written) => {
      const expanded = written.replace(new RegExp(` ?${short}$`, "u"), " per inch");
      const [, number = "", said, per = ""] = /^(.+?)(?: (\p{L}+))? per (.+)$/u.exec(expanded) ?? [];
      if (said !== undefined && !nouns.includes(said)) {
        throw new Unreadable(`${noun} stand here: write ${number} per inch.`, "wrong-kind");
      }
      const value = decimalOf(number);
      const length = measured(per);
      if (value === null) {
        const bare = decimalOf(written);
        const other = /^(.+?) ?(?:epi|ppi|dpi)$/u.exec(written)?.[1];
        if (bare !== null)
          throw new Unreadable(`Per what? Write ${written} per inch, or ${written} per cm.`, "ambiguous");
        throw other === undefined
          ? new Unreadable("")
          : new Unreadable(`${noun} stand here: write ${other} per inch.`, "wrong-kind");
      }
      if (length === null)
        throw new Unreadable("It is counted in an inch or in centimetres: write 20 per inch, or 45 per 10 cm.");
      if (Number(value) === 0 || Number(value) > 10_000)
        throw new Unreadable("Write a number above 0, and at most 10000.", "out-of-range");
      const unit = length.inch ? perInch : metric;
      const counted = length.inch ? INCH : centimetres(base);
      const over = Number(value) * Number(counted.value);
      const under = Number(length.length.value);
      const isFraction = Number.isSafeInteger(over) && Number.isSafeInteger(under);
      // A double holds no third: whole numbers are divided as the fraction they are.
      const exact = isFraction ? decimalOf(`${String(over)}/${String(under)}`) : null;
      return exact === null ? times(unit(value), ratio(counted, length.length)) : unit(exact);
    },
    write: (amount) => {
      const isTrade = amount.unit === perInch.name;
      const per = isTrade ? "inch" : base === 1 ? "cm" : `${String(base)} cm`;
      return `${numberText(isTrade ? amount.value : inUnit(amount, metric).value)} per ${per}`;
    },
  };
}

const ENDS: Closeness<"ends per length"> = {
  nouns: ["ends", "end"],
  short: "epi",
  perInch: endsPerInch,
  metric: endsPerCentimetre,
  centimetres: 1,
};
const PICKS: Closeness<"picks per length"> = {
  nouns: ["picks", "pick"],
  short: "ppi",
  perInch: picksPerInch,
  metric: picksPerCentimetre,
  centimetres: 1,
};
const DENTS: Closeness<"dents per length"> = {
  nouns: ["dents", "dent", "teeth", "tooth"],
  short: "dpi",
  perInch: dentsPerInch,
  metric: dentsPerTenCentimetres,
  centimetres: 10,
};

export const picksNotation: Notation<PicksPerLength> = notation(PICKS);
export const endsPerLength: Form<EndsPerLength> = text("ends in a length", "20 per inch", notation(ENDS));
export const picksPerLength: Form<PicksPerLength> = text("picks in a length", "18 per inch", picksNotation);
export const dentsPerLength: Form<DentsPerLength> = text("dents in a length", "10 per inch", notation(DENTS));
