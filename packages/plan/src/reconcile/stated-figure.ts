import { QuantityError } from "@thrum/maths";
import type { Fault, Unit } from "@thrum/maths";
import { figureKinds } from "./figures.js";
import type { FigureName } from "./figures.js";

/** A figure as the page prints it: "2320", "20.9" or "5 2/3". */
export interface PrintedFigure {
  readonly figure: FigureName;
  readonly printed: string;
  readonly unit: Unit<string> | "count" | "percent" | "money";
}

/** A printed figure in the unit it is reckoned in, with the worth of one of its last place. */
export interface StatedFigure extends PrintedFigure {
  readonly value: number;
  readonly lastPlace: number;
  /** The worth of one of the last digit that is not nought: 10 for 340. */
  readonly roundPlace: number;
  /** One of the printed unit in the unit reckoned in. */
  readonly scale: number;
}

const LONGEST = 40;

interface Places {
  readonly value: number;
  readonly lastPlace: number;
  readonly roundPlace: number;
}

function placesOf(printed: string): Places | null {
  if (printed.length > LONGEST) return null;
  const fraction = /^(?:(\d+) )?(\d+)\/(\d+)$/u.exec(printed);
  if (fraction !== null) {
    const [over, under] = [Number(fraction[2]), Number(fraction[3])];
    if (under === 0) return null;
    return { value: Number(fraction[1] ?? 0) + over / under, lastPlace: 1 / under, roundPlace: 1 / under };
  }
  const decimal = /^\d+(?:\.(\d+))?$/u.exec(printed);
  if (decimal === null) return null;
  const lastPlace = 10 ** -(decimal[1]?.length ?? 0);
  const noughts = decimal[1] === undefined ? printed.length - printed.replace(/0+$/u, "").length : 0;
  return { value: Number(printed), lastPlace, roundPlace: noughts < printed.length ? 10 ** noughts * lastPlace : 1 };
}

function fault(where: string, expected: string, received: string, remedy: string): Fault {
  return { code: "unreadable", where, expected, received, remedy };
}

/**
 * Reads one printed figure.
 *
 * @throws QuantityError "unreadable" for text that is no figure, for an unknown figure, and for a unit of another kind
 */
export function statedFigure(given: PrintedFigure): StatedFigure {
  const { figure, printed, unit } = given;
  const where = `reconcile: ${figure}`;
  if (!Object.hasOwn(figureKinds, figure)) {
    throw new QuantityError(
      fault(where, "one of the figures of a project", figure, Object.keys(figureKinds).join(", ")),
    );
  }
  const { base } = figureKinds[figure];
  const places = placesOf(printed);
  if (places === null) {
    const remedy = 'Write digits only, as "2320", "20.9" or "5 2/3".';
    throw new QuantityError(fault(where, "a figure", JSON.stringify(printed.slice(0, LONGEST)), remedy));
  }
  if (base === "percent" && places.value >= 100) {
    throw new QuantityError(fault(where, "less than 100 percent", printed, "Nothing can lose the whole of itself."));
  }
  const [expected, received] = [base, unit].map((one) => (typeof one === "string" ? one : one.dimension));
  if (expected !== received) {
    const remedy = "Name the unit the page prints.";
    throw new QuantityError(fault(where, expected ?? "", received ?? "", remedy));
  }
  if (typeof base === "string" || typeof unit === "string") return { ...given, ...places, scale: 1 };
  const scale = unit(1).in(base);
  const { value, lastPlace, roundPlace } = places;
  return { ...given, value: value * scale, lastPlace: lastPlace * scale, roundPlace: roundPlace * scale, scale };
}
