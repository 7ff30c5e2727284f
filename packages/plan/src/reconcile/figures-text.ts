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
import type { Reading, RefusalCode } from "@thrum/maths";
import type { Fault } from "../job/fault.js";
import { textReading } from "../job/text-reading.js";
import { printable } from "../text/printable.js";
import { unlike } from "../text/near-name.js";
import { figureKinds } from "./figures.js";
import type { FigureName } from "./figures.js";
import type { PrintedFigure } from "./stated-figure.js";

/** The figures of a page read from text, or everything that is wrong with it. */
export type FiguresReading = Reading<readonly PrintedFigure[], RefusalCode>;

const LONGEST = 100_000;

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
  return names[0] === "" ? "no unit" : names.join(" or ");
}

const NAMES = Object.keys(figureKinds);

function isFigure(name: string): name is FigureName {
  return Object.hasOwn(figureKinds, name);
}

type Unlike = Pick<Fault, "code" | "expected" | "received" | "remedy" | "params">;

function figureFrom(text: string): PrintedFigure | Unlike {
  const [, name = "", printed = "", unitText = ""] = LINE.exec(text) ?? [];
  const received = `"${printable(text)}"`;
  if (name === "") {
    const remedy = "Write such as warpLength: 5 2/3 yd.";
    return { code: "unreadable", expected: "figure: number unit", received, remedy, params: {} };
  }
  if (!isFigure(name)) {
    const [expected, remedy] = ["a figure of a printed project", unlike(name, NAMES)];
    return { code: "unknown-word", expected, received: `"${printable(name)}"`, remedy, params: { candidates: NAMES } };
  }
  const { counted, says } = figureKinds[name];
  const unit = unitOf(counted, unitText);
  if (unit !== undefined) return { figure: name, printed, unit };
  const wanted = wantedIn(counted);
  return {
    code: "unknown-unit",
    expected: `${says} with ${wanted}`,
    params: {},
    received: unitText === "" ? "none" : `"${printable(unitText)}"`,
    remedy: `Write ${wanted} behind the number.`,
  };
}

/**
 * Reads the figures of a printed project from text: one a line, its name, a colon, the number as it is printed and its
 * unit; what follows # is a remark.
 *
 * @example readFigures("ends: 390\nwidthInReed: 19 1/2 in # to the nearest half").ok // true
 */
export function readFigures(text: unknown): FiguresReading {
  return textReading(text, {
    name: "readFigures",
    what: "the figures of a printed project",
    longest: LONGEST,
    read: (given, tell) => {
      const figures: PrintedFigure[] = [];
      for (const [at, whole] of given.split(/\r?\n/u).entries()) {
        const remark = whole.search(/(?:^|\s)#/u);
        const line = (remark < 0 ? whole : whole.slice(0, remark)).trim();
        if (line === "") continue;
        const found = figureFrom(line);
        const place = { line: at + 1, path: [] };
        if ("code" in found) tell({ ...found, ...place });
        else if (figures.some(({ figure }) => figure === found.figure)) {
          const received = `${found.figure} a second time`;
          tell({
            ...place,
            code: "unreadable",
            expected: "every figure once",
            received,
            remedy: "Keep one.",
            params: {},
          });
        } else figures.push(found);
      }
      return figures.length === 0 ? null : figures;
    },
  });
}
