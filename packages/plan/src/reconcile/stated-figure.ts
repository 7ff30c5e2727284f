import { QuantityError } from "@thrum/maths";
import type { Quantity, Unit } from "@thrum/maths";
import { figureKinds } from "./figures.js";
import type { FigureName } from "./figures.js";
import { printable } from "../text/printable.js";

/** A figure as the page prints it: "2320", "20.9" or "5 2/3". */
export interface PrintedFigure {
  readonly figure: FigureName;
  readonly printed: string;
  readonly unit: Unit<string> | "count" | "percent";
}

/** What a figure is worth: a quantity, or a number of things or of percent. */
export type Amount = number | Quantity<string>;

/** A printed figure with its worth, exact, and the worth of one of its last place in the unit printed. */
export interface StatedFigure extends PrintedFigure {
  readonly amount: Amount;
  readonly lastPlace: number;
  /** Why the figure cannot be what the page means, where it cannot: nothing loses the whole of itself, things are whole. */
  readonly impossible: "all of it or more lost" | "no whole number" | null;
}

const LONGEST = 40;
/** As many digits of a fraction as the maths keep. */
const DIGITS = 34;

/** Where an impossible loss is looked for from: what a loss usually is. */
const POSSIBLE_LOSS = 10;

interface Places {
  readonly decimal: string;
  readonly lastPlace: number;
}

/** A fraction in decimal text, divided in whole numbers. */
function divided(over: bigint, under: bigint): string {
  const text = String((over * 10n ** BigInt(DIGITS)) / under).padStart(DIGITS + 1, "0");
  return `${text.slice(0, -DIGITS)}.${text.slice(-DIGITS)}`;
}

function placesOf(printed: unknown): Places | null {
  if (typeof printed !== "string" || printed.length > LONGEST) return null;
  const fraction = /^(?:(\d+) )?(\d+)\/(\d+)$/u.exec(printed);
  if (fraction !== null) {
    const [whole, over, under] = [fraction[1] ?? 0, fraction[2] ?? 0, fraction[3] ?? 0].map(BigInt);
    if (whole === undefined || over === undefined || under === undefined || under === 0n) return null;
    const place = 1 / Number(under);
    return { decimal: divided(whole * under + over, under), lastPlace: place };
  }
  const decimal = /^\d+(?:\.(\d+))?$/u.exec(printed);
  if (decimal === null) return null;
  return { decimal: printed, lastPlace: 10 ** -(decimal[1]?.length ?? 0) };
}

function refuse(figure: string, expected: string, received: string, remedy: string): never {
  throw new QuantityError({ code: "unreadable", function: "reconcile", path: [figure], expected, received, remedy });
}

/**
 * Reads one printed figure.
 *
 * @throws QuantityError "unreadable" for text that is no figure, for an unknown figure, and for a unit of another kind
 */
export function statedFigure(given: PrintedFigure): StatedFigure {
  const { figure, printed, unit } = given;
  if (!Object.hasOwn(figureKinds, figure)) {
    return refuse(
      printable(figure),
      "one of the figures of a project",
      printable(figure),
      Object.keys(figureKinds).join(", "),
    );
  }
  const { counted } = figureKinds[figure];
  const received = typeof unit === "string" ? unit : unit.dimension;
  if (counted !== received) return refuse(figure, counted, printable(received), "Name the unit the page prints.");
  const places = placesOf(printed);
  if (places === null) {
    const remedy = 'Write digits only and as text, so that every figure printed is kept: "2320", "20.90" or "5 2/3".';
    return refuse(
      figure,
      "a figure as it is printed",
      typeof printed === "string" ? JSON.stringify(printed.slice(0, LONGEST)) : `a bare ${typeof printed}`,
      remedy,
    );
  }
  const { decimal, lastPlace } = places;
  const written = Number(decimal);
  if (counted === "percent" && figure !== "weftAllowance" && written >= 100)
    return { ...given, amount: POSSIBLE_LOSS, lastPlace, impossible: "all of it or more lost" };
  if (counted === "count" && !Number.isSafeInteger(written))
    return { ...given, amount: Math.max(1, Math.round(written)), lastPlace: 1, impossible: "no whole number" };
  return { ...given, amount: typeof unit === "string" ? written : unit(decimal), lastPlace, impossible: null };
}
