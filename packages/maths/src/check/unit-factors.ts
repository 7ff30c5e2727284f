import { factorInto } from "../engine/formula/index.js";
import type { Frame } from "../engine/formula/index.js";
import { powersOf } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { number, part } from "./hand.js";
import type { Constant, Part } from "./hand.js";
import { ALIKE, RESIDUE } from "./tolerances.js";

/** Whether a unit counts things to a length, whatever the things are. */
export const countsToLength = ({ dimension }: Unit<string>): boolean => String(powersOf(dimension)) === "-1,0";

export const size = ({ scale: [over, under] }: Unit<string>): number => over / under;

/** A ratio as the hand writes it: a whole number to multiply or divide by where it is one. */
export function written(ratio: number, kind: Constant["kind"], input: string, says: string): readonly Part[] {
  if (Math.abs(ratio - 1) < RESIDUE) return [];
  const turned = ratio < 1;
  return [part(number(Number((turned ? 1 / ratio : ratio).toPrecision(12)), { kind, input, says }), turned)];
}

export function between(from: Unit<string>, to: Unit<string>, kind: "length" | "mass", input: string): readonly Part[] {
  const [big, small] = size(from) > size(to) ? [from, to] : [to, from];
  return written(size(from) / size(to), kind, input, `${small.symbol} in a ${big.symbol}`);
}

export const flipped = (parts: readonly Part[]): readonly Part[] =>
  parts.map((one) => ({ ...one, turned: !one.turned }));

/** The factors that turn a number of a unit into one of the frame. */
export function factorsInto(frame: Frame, unit: Unit<string>, input: string): readonly Part[] {
  const powers = powersOf(unit.dimension);
  if (frame.only?.dimension === unit.dimension) {
    const ratio = size(unit) / size(frame.only);
    return written(ratio, "length", input, `${unit.symbol} for ${frame.only.symbol}`);
  }
  const parts = (["length", "mass"] as const).flatMap((kind, at) => {
    const power = powers[at] ?? 0;
    const own = frame[kind];
    if (power === 0 || own === null) return [];
    const [amount, of] = unit.dimension === kind ? [1, unit] : (unit.of?.[kind] ?? [1, own]);
    const counted = amount === 1 ? [] : [part(number(amount, { kind: "amount", input, says: unit.symbol }))];
    const one = [...counted, ...between(of, own, kind, input)];
    const all = Array.from({ length: Math.abs(power) }, () => one).flat();
    return power < 0 ? flipped(all) : all;
  });
  const [over, under] = factorInto(frame, unit).map(Number) as [number, number];
  const product = parts.reduce((by, { turned, of }) => {
    const own = of.op === "number" ? of.value : 1;
    return turned ? by / own : by * own;
  }, 1);
  const isWhole = Math.abs((product * under) / over - 1) < ALIKE;
  return isWhole ? parts : written(over / under, "length", input, unit.symbol);
}
