import type { Decimal } from "../engine/numbers.js";
import { dimensionsOf, outOfFrame, intoFrame } from "../engine/formula/index.js";
import type { Run } from "../engine/formula/index.js";
import { isPercent, powersOf } from "../engine/quantity/index.js";
import type { Unit } from "../engine/quantity/index.js";

/** A way to count a line: in a unit, in per cent, or as the formula counts it. */
export interface Counting {
  readonly unit: Unit<string> | null;
  readonly symbol: string;
  readonly inFrame: (value: Decimal) => Decimal;
  readonly outOfFrame: (value: Decimal) => Decimal;
}

const PLAIN: Counting = { unit: null, symbol: "", inFrame: (value) => value, outOfFrame: (value) => value };

function counting({ frame }: Run, unit: Unit<string>): Counting {
  if (isPercent(unit)) return { ...PERCENT, unit };
  return {
    unit,
    symbol: unit.symbol,
    inFrame: (value) => intoFrame(frame, value, unit),
    outOfFrame: (value) => outOfFrame(frame, value, unit),
  };
}

const PERCENT: Counting = {
  unit: null,
  symbol: "%",
  inFrame: (value: Decimal): Decimal => value.div(100),
  outOfFrame: (value: Decimal): Decimal => value.times(100),
};

/** The ways a line may be counted, the likeliest first: as asked, as the exercise and the formula count, in per cent. */
export function countingsOf(
  worked: Run,
  line: string,
  asked: Unit<string> | null,
  own: Unit<string> | null | undefined,
): readonly Counting[] {
  const { declared, frame, unit, inputs, countedIn } = worked;
  const powers = String(dimensionsOf(declared).get(line) ?? [0, 0]);
  const fits = (one: Unit<string>): boolean => String(powersOf(one.dimension)) === powers;
  const isLast = line === declared.lines.at(-1)?.name;
  const isBare = powers === "0,0";
  if (isLast && countedIn !== null) {
    const units = own === undefined || own === null ? [asked, unit] : [own];
    return units
      .filter((one) => one !== null)
      .map((one) => ({
        unit: one,
        symbol: one.symbol,
        inFrame: (value: Decimal) => intoFrame(frame, value, one, countedIn),
        outOfFrame: (value: Decimal) => outOfFrame(frame, value, one, countedIn),
      }));
  }
  if (own !== undefined && own !== null && (fits(own) || isLast)) return [counting(worked, own)];
  const given = [...inputs.values()].flatMap((read) => {
    const one = read.what === "list" ? read.members[0] : read;
    return one?.what === "quantity" ? [one.unit] : [];
  });
  const units = [...(isLast ? [asked, unit] : []), frame.only, frame.length, frame.mass, ...given, asked, unit]
    .filter((one) => one !== null)
    .filter((one) => fits(one) && !(isBare && one !== asked && one !== unit));
  const found = [...new Map(units.map((one) => [one.name, counting(worked, one)])).values()];
  const plain = isBare ? (isLast ? [PLAIN] : [PLAIN, PERCENT]) : [];
  return [...found, ...plain, ...(found.length + plain.length === 0 ? [PLAIN] : [])];
}
