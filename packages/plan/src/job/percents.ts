import { percentAdded, percentLost, percentOf } from "@thrum/maths";
import type { Addition, Loss, Quantity, Share, Unit } from "@thrum/maths";
import { decimalOf, numberText } from "./amounts.js";
import { Unreadable } from "./fault.js";
import { text } from "./form.js";
import type { Form, Notation } from "./form.js";

function percents<D extends string>(
  unit: Unit<D>,
  ending: RegExp,
  most: number,
  told: (value: string) => string,
  remedy: string,
): Notation<Quantity<D>> {
  return {
    read: (written) => {
      const value = decimalOf(ending.exec(written)?.[1] ?? "");
      if (value === null) throw new Unreadable(remedy);
      if (Number(value) > most || (most === 100 && unit.dimension === "loss" && Number(value) === 100)) {
        throw new Unreadable(`Write less than ${String(most)} %.`, "out-of-range");
      }
      return unit(value);
    },
    write: ({ value }) => told(numberText(value)),
  };
}

export const lossNotation: Notation<Loss> = percents(
  percentLost,
  /^(.+?) ?% lost$/u,
  100,
  (value) => `${value} % lost`,
  "Write it such as 8 % lost: of what was there before.",
);
export const shareNotation: Notation<Share> = percents(
  percentOf,
  /^(.+?) ?%$/u,
  100,
  (value) => `${value} %`,
  "Write it such as 70 %.",
);
/** A percentage of what was there before, where no measures say it. */
export const plainLoss: Form<Loss> = text("a percentage lost", "30 % lost", lossNotation);
export const addition: Form<Addition> = text(
  "an allowance",
  "5 % added",
  percents(
    percentAdded,
    /^(.+?) ?% added$/u,
    1000,
    (value) => `${value} % added`,
    "Write 5 % added: of what it is added to.",
  ),
);
