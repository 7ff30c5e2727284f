import { groupOutlook, groupPreview } from "@thrum/stripes";
import type { LaidStripe } from "./laid-stripes.js";

/** What chance can make of a blended stripe. */
export interface BlendOutlook {
  readonly stripe: number;
  readonly ends: number;
  readonly hands: number;
  /** Ends of each yarn: exactly so many, whatever the order; and the most that can lie side by side. */
  readonly yarns: readonly { readonly yarn: string; readonly ends: number; readonly mostTogether: number }[];
  /** Orders of one hand; those of the stripe are that to the power of its hands. */
  readonly ordersOfHand: string;
  /** Stripes of one colour to expect, exactly and as a number. */
  readonly stripesToExpect: string;
  readonly stripesToExpectAbout: number;
}

/** Of more hands nothing is said that an eye could use. */
const MOST_HANDS = 2000;
const MOST_IN_HAND = 100;

function timesOfEach(yarns: readonly string[]): readonly (readonly [yarn: string, times: number])[] {
  const times = new Map<string, number>();
  for (const yarn of yarns) times.set(yarn, (times.get(yarn) ?? 0) + 1);
  return [...times];
}

/** A blend whose order is the lease's. */
function isByChance({ yarns, order }: LaidStripe): boolean {
  return order === undefined && new Set(yarns).size > 1;
}

/** The outlook of every blended stripe; of one too long to be judged, none. */
export function blendsOutlook(stripes: readonly LaidStripe[]): readonly BlendOutlook[] {
  return stripes.flatMap((stripe, at): readonly BlendOutlook[] => {
    const { yarns, ends } = stripe;
    const hands = ends / yarns.length;
    if (!isByChance(stripe) || hands > MOST_HANDS || yarns.length > MOST_IN_HAND) return [];
    const each = timesOfEach(yarns);
    const threads = each.map(([, times]) => times);
    const { meanRuns } = groupOutlook({ groups: hands, threads });
    const { numerator, denominator } = meanRuns;
    return [
      {
        stripe: at + 1,
        ends,
        hands,
        yarns: each.map(([yarn, times]) => ({
          yarn,
          ends: hands * times,
          mostTogether: hands > 1 ? 2 * times : times,
        })),
        ordersOfHand: groupOutlook({ groups: 1, threads }).orders,
        stripesToExpect: denominator === "1" ? numerator : `${numerator}/${denominator}`,
        stripesToExpectAbout: Number(numerator) / Number(denominator),
      },
    ];
  });
}

/** Neighbouring ends of one yarn. */
export interface PictureRun {
  readonly yarn: string;
  readonly ends: number;
}

/** One of the orders in which the ends may lie, for a picture: blends by chance, the rest as it is. */
export function pictureOrder(stripes: readonly LaidStripe[], seed: number): readonly PictureRun[] {
  const runs: PictureRun[] = [];
  const add = (yarn: string, ends: number): void => {
    const last = runs.at(-1);
    if (last?.yarn === yarn) runs[runs.length - 1] = { yarn, ends: last.ends + ends };
    else runs.push({ yarn, ends });
  };
  stripes.forEach((stripe, at) => {
    const { yarns, ends } = stripe;
    const [yarn = ""] = yarns;
    if (new Set(yarns).size < 2) add(yarn, ends);
    else if (!isByChance(stripe)) for (let end = 0; end < ends; end += 1) add(yarns[end % yarns.length] ?? "", 1);
    else
      for (let done = 0; done < ends; done += MOST_HANDS * yarns.length) {
        const groups = Math.min(MOST_HANDS, (ends - done) / yarns.length);
        const one = groupPreview({ seed: (seed + at + done) % 4_294_967_296, groups, hand: yarns });
        for (const run of one.runs) add(run.colour, run.ends);
      }
  });
  return runs;
}
