import {
  centimetres,
  currency,
  endsPerCentimetre,
  endsPerInch,
  feet,
  grams,
  inches,
  kilograms,
  metres,
  metresPerKilogram,
  millimetres,
  ounces,
  picksPerCentimetre,
  picksPerInch,
  pounds,
  yards,
  yardsPerPound,
} from "@thrum/maths";
import { printable } from "../text/printable.js";
import { unlike } from "../text/near-name.js";
import { figureKinds } from "./figures.js";
import type { FigureName } from "./figures.js";
import type { PrintedFigure } from "./stated-figure.js";

/** The figures of a page read from text, or what is wrong with it, a sentence a line. */
export type FiguresReading =
  | { readonly ok: true; readonly figures: readonly PrintedFigure[] }
  | { readonly ok: false; readonly faults: readonly string[] };

type Unit = PrintedFigure["unit"];

const UNITS: Readonly<Record<string, Readonly<Record<string, Unit>>>> = {
  count: { "": "count" },
  percent: { "%": "percent" },
  length: { in: inches, ft: feet, yd: yards, mm: millimetres, cm: centimetres, m: metres },
  "ends per length": { "per inch": endsPerInch, "per cm": endsPerCentimetre },
  "picks per length": { "per inch": picksPerInch, "per cm": picksPerCentimetre },
  "length per mass": { "yd/lb": yardsPerPound, "m/kg": metresPerKilogram },
  mass: { oz: ounces, lb: pounds, g: grams, kg: kilograms },
};
const MONEY = /^[A-Z]{3}$/u;
const LINE = /^(\w+): *([\d.]+(?: \d+)?(?:\/\d+)?) *(\S.*)?$/u;

function unitOf(counted: string, text: string): Unit | undefined {
  if (counted === "money") return MONEY.test(text) ? currency(text) : undefined;
  const known = UNITS[counted] ?? {};
  return Object.hasOwn(known, text) ? known[text] : undefined;
}

function wantedIn(counted: string): string {
  if (counted === "money") return "three capitals of a currency";
  const names = Object.keys(UNITS[counted] ?? {});
  return names[0] === "" ? "no unit" : names.join(", ");
}

const NAMES = Object.keys(figureKinds);

function isFigure(name: string): name is FigureName {
  return Object.hasOwn(figureKinds, name);
}

function figureFrom(text: string): PrintedFigure | string {
  const [, name = "", printed = "", unitText = ""] = LINE.exec(text) ?? [];
  if (name === "") return `expected "figure: number unit", as "warpLength: 5 2/3 yd", received "${printable(text)}".`;
  if (!isFigure(name)) return `there is no figure "${printable(name)}". ${unlike(name, NAMES)}`;
  const { counted, says } = figureKinds[name];
  const unit = unitOf(counted, unitText);
  if (unit !== undefined) return { figure: name, printed, unit };
  const received = unitText === "" ? "none" : `"${printable(unitText)}"`;
  return `${says} takes ${wantedIn(counted)}, received ${received}.`;
}

/**
 * Reads the figures of a printed project from text: one a line, its name, a colon, the number as it is printed and its
 * unit; what follows # is a remark.
 *
 * @example readFigures("ends: 390\nwidthInReed: 19 1/2 in # to the nearest half").ok // true
 */
export function readFigures(text: string): FiguresReading {
  const faults: string[] = [];
  const figures: PrintedFigure[] = [];
  for (const [at, whole] of text.split(/\r?\n/u).entries()) {
    const line = whole.replace(/(?:^|\s)#.*$/u, "").trim();
    if (line === "") continue;
    const found = figureFrom(line);
    const twice = typeof found !== "string" && figures.some(({ figure }) => figure === found.figure);
    if (typeof found === "string" || twice) {
      faults.push(
        `line ${String(at + 1)}: ${typeof found === "string" ? found : `${found.figure} stands there twice.`}`,
      );
    } else figures.push(found);
  }
  if (faults.length === 0 && figures.length === 0) return { ok: false, faults: ["No figure stands in it."] };
  return faults.length > 0 ? { ok: false, faults } : { ok: true, figures };
}
