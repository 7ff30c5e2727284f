import { listOf, positive, readInputs, share, whole } from "../../engine/formula/index.js";
import type { ReportStep } from "../../engine/formula/index.js";
import { frozen } from "../../engine/frozen.js";
import { Decimal, EXACT_STEP } from "../../engine/numbers.js";
import { compare, difference, ratio, sign, times } from "../../engine/quantity/index.js";
import { DentsPerLength, EndsPerLength, percentOf } from "../../units/index.js";
import type { Length, Share } from "../../units/index.js";
import { endsADent } from "./ends-a-dent.js";
import { evenOrder } from "./even-order.js";
import { greatestCommonMeasure } from "./greatest-common-measure.js";
import { reedWidth } from "./reed-width.js";
import { settOfSley } from "./sett-of-sley.js";
import type { SettOfSleyInput } from "./sett-of-sley.js";

export interface SubstituteReedsInput {
  /** Wanted. */
  readonly sett: EndsPerLength;
  /** In the warp. */
  readonly ends: number;
  /** One owns. */
  readonly reeds: readonly DentsPerLength[];
  /** Of the sett, either way. */
  readonly within: Share;
  /** In the longest order one is ready to sley. */
  readonly mostDents: number;
}

/** One way to sley a warp near a wanted sett. */
export interface SubstituteReed {
  readonly reed: DentsPerLength;
  /** "1-2-1-2-2" */
  readonly order: string;
  readonly sett: EndsPerLength;
  /** Of the sett, got less wanted. */
  readonly change: EndsPerLength;
  readonly widthInReed: Length;
  /** Of the width, got less what the wanted sett gives. */
  readonly widthChange: Length;
  readonly step: ReportStep<SettOfSleyInput>;
}

/** The orders of one reed: so many ends in so few dents that no shorter order does the same, inside the limits. */
function ordersIn(reed: DentsPerLength, { sett, within, mostDents }: SubstituteReedsInput): (readonly number[])[] {
  const perDent = endsADent(sett, reed);
  const part = ratio(within, percentOf(100));
  const orders: (readonly number[])[] = [];
  for (let dents = 1; dents <= mostDents; dents += 1) {
    const middle = perDent.times(dents);
    const off = middle.times(part).plus(middle.times(EXACT_STEP));
    const last = middle.plus(off).floor().toNumber();
    for (let ends = Decimal.max(1, middle.minus(off).ceil()).toNumber(); ends <= last; ends += 1) {
      if (greatestCommonMeasure(ends, dents) === 1) orders.push(evenOrder(ends, dents));
    }
  }
  return orders;
}

/**
 * Every sleying near a wanted sett in the reeds one owns, the nearest first; of two as near, the shorter order.
 *
 * @param input the sett and the ends, the reeds, how far the sett may be off and how long an order may be
 * @returns an empty list where no reed comes near enough
 * @source taylor-1909
 * @example
 * const input = { sett: endsPerInch(16), ends: 320, reeds: [dentsPerInch(10), dentsPerInch(12)], within: percentOf(2), mostDents: 4 };
 * substituteReeds(input)[0].order // "1-1-2"
 */
export function substituteReeds(input: SubstituteReedsInput): readonly SubstituteReed[] {
  const declared = {
    sett: positive(EndsPerLength, "wanted"),
    ends: whole("ends", "in the warp", { atLeast: 1 }),
    reeds: listOf(positive(DentsPerLength, "one owns")),
    within: share("of the sett, either way"),
    mostDents: whole("dents", "in the longest order one is ready to sley", { atLeast: 1, atMost: 100 }),
  };
  readInputs("substituteReeds", declared, input);
  const wanted = reedWidth({ ends: input.ends, sett: input.sett });
  const found = input.reeds.flatMap((reed) =>
    ordersIn(reed, input).map((endsInEachDent): SubstituteReed => {
      const step = { reed, dents: endsInEachDent.map(() => 1), endsPerDent: endsInEachDent };
      const sett = settOfSley(step);
      const widthInReed = reedWidth({ ends: input.ends, sett });
      return {
        reed,
        order: endsInEachDent.join("-"),
        sett,
        change: difference(sett, input.sett),
        widthInReed,
        widthChange: difference(widthInReed, wanted),
        step: { calculation: settOfSley, input: step },
      };
    }),
  );
  const size = ({ change }: SubstituteReed): EndsPerLength => (sign(change) < 0 ? times(change, -1) : change);
  return frozen(found.sort((a, b) => compare(size(a), size(b)) || a.order.length - b.order.length));
}
