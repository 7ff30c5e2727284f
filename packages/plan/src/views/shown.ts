import { isQuantity, sign, unitOf } from "@thrum/maths";
import type { Mass, Quantity } from "@thrum/maths";
import type { Figure, Source } from "../core/source.js";
import * as rows from "../figures/rows.js";
import * as yarn from "../figures/yarn.js";
import { byTheScale, byTheScaleDown } from "./mass-formats.js";
import type { Line } from "./block.js";
import type { Units } from "./units.js";
import { shown } from "./view.js";
import type { At, Shown } from "./view.js";

/** A count with its noun. */
export function many(figure: Source<number, string>, noun: string, plural = `${noun}s`): Shown {
  return shown(figure, (number) => `${String(number)} ${number === 1 ? noun : plural}`);
}

function always(say: (at: Parameters<Shown["say"]>[0]) => Line): Shown {
  return { reads: [], say: (at) => ({ is: "there", value: say(at) }) };
}

/** A measure of the trade, in the units of the job. */
export function either(imperial: string, metric: string): Shown {
  return always(({ units }) => [units === "inches" ? imperial : metric]);
}

/** The yarn of a row. */
export const yarnName: Shown = always(({ row }) => [{ yarn: row?.of?.["yarn"] ?? row?.name ?? "" }]);

/** What the weaver calls the entry of a row. */
export const pieceTitle: Shown = {
  reads: [],
  say: ({ see, row }) => {
    const seen = see(rows.entries);
    const name = row?.of?.["piece"] ?? row?.name;
    return seen.is === "there"
      ? { is: "there", value: [seen.value.find((one) => one.name === name)?.title ?? ""] }
      : seen;
  },
};

/** A mass of a yarn, in the unit of its package or of what is on hand: all masses of one yarn in one unit. */
function ofYarn(mass: Figure<Mass, "yarn">, format: typeof byTheScale): Shown {
  return shown(mass, (value, units, { see, row }) => {
    const package_ = see(yarn.packageMass, row);
    const there = see(yarn.there, row);
    const like = package_.is === "there" ? package_.value : there.is === "there" ? there.value : value;
    return format(value, units, unitOf(like));
  });
}

export const weighed = (mass: Figure<Mass, "yarn">): Shown => ofYarn(mass, byTheScale);
export const weighedDown = (mass: Figure<Mass, "yarn">): Shown => ofYarn(mass, byTheScaleDown);

/** The name of a row as it stands. */
export const rowWord: Shown = always(({ row }) => [row?.name ?? ""]);

/** An amount that is told only where there is any. */
export function ifAny<T extends number | Quantity<string>>(
  figure: Source<T, string>,
  format: (value: T, units: Units, at: At) => string | Line,
): Shown {
  const told = shown(figure, format);
  return {
    reads: told.reads,
    say: (at) => {
      const seen = at.see(figure, at.row);
      const isNothing = seen.is === "there" && (isQuantity(seen.value) ? sign(seen.value) === 0 : seen.value === 0);
      return isNothing ? { is: "waiting", needs: [] } : told.say(at);
    },
  };
}

/** What is told only where an amount is so: elsewhere there is no such thing. */
export function onlyWhere<T>(source: Source<T, string>, holds: (value: T) => boolean, told: Shown): Shown {
  return {
    reads: [source, ...told.reads],
    say: (at) => {
      const seen = at.see(source, at.row);
      return seen.is === "there" && !holds(seen.value) ? { is: "waiting", needs: [] } : told.say(at);
    },
  };
}
