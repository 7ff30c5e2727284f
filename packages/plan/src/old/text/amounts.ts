import {
  asText,
  grams,
  inUnit,
  inches,
  kilograms,
  metres,
  ounces,
  percentLost,
  percentOf,
  pounds,
  yards,
} from "@thrum/maths";
import type { Length, Loss, Mass, Money, Share, Unit } from "@thrum/maths";

const MASSES: Readonly<Record<string, Unit<"mass">>> = { grams, kilograms, pounds, ounces };

/** A thousandth of an inch or of a centimetre, and the marks of the tape. */
const STEPS: Readonly<Record<string, { readonly fine: string; readonly tape: string }>> = {
  inches: { fine: "0.001", tape: "1/8" },
  metres: { fine: "0.00001", tape: "0.001" },
  centimetres: { fine: "0.001", tape: "0.1" },
  millimetres: { fine: "0.01", tape: "1" },
};

function isImperial({ unit }: Length): boolean {
  return unit === "inches" || unit === "feet" || unit === "yards";
}

function stepped(length: Length, by: "fine" | "tape", rounding: "nearest" | "roundUp" | "roundDown"): string {
  const shown = isImperial(length) ? inUnit(length, inches) : length;
  const steps = STEPS[shown.unit];
  return steps === undefined ? asText(shown) : asText(shown, { step: steps[by], rounding });
}

/** A length for a comparison, no tape in the hand. */
export function fineText(length: Length): string {
  return stepped(length, "fine", "nearest");
}

/** A length, and the mark of the tape to use where it does not fall on one. */
export function measuredText(length: Length, rounding: "nearest" | "roundUp"): string {
  const [tape, up, down] = [rounding, "roundUp" as const, "roundDown" as const].map((to) =>
    stepped(length, "tape", to),
  );
  const way = rounding === "nearest" ? "about" : "rounded up to";
  return up === down ? (tape ?? "") : `${stepped(length, "fine", "nearest")}, by the tape ${way} ${tape ?? ""}`;
}

/** A length of yarn or warp in yards or metres; what is needed is rounded up, what there is is rounded down. */
export function yarnText(length: Length, rounding: "roundUp" | "roundDown"): string {
  return asText(inUnit(length, isImperial(length) ? yards : metres), { step: "0.01", rounding });
}

/** A mass in the unit of another, so that the two can be compared at a glance. */
export function massText(mass: Mass, like: Mass, rounding: "roundUp" | "roundDown"): string {
  const unit = MASSES[like.unit] ?? grams;
  return asText(inUnit(mass, unit), { step: "0.01", rounding });
}

/** A percentage to the tenth; the sentence about it names what it is of. */
export function percentText(share: Loss | Share): string {
  const hundredths = share.dimension === "loss" ? share.in(percentLost) : share.in(percentOf);
  return `${hundredths.toFixed(1)} %`;
}

/** Money to the hundredth; what is asked at least is rounded up. */
export function moneyText(amount: Money, rounding: "nearest" | "roundUp"): string {
  const [number, name = ""] = asText(amount, { step: "0.01", rounding }).split(" ");
  return `${Number(number).toFixed(2)} ${name}`;
}
