import { refuse } from "../refusal/check.js";
import { item } from "../sequence/item.js";

/**
 * Last ends of the fewest chains that end only at the places given, as nearly equal as they can be: the sum of the
 * squares of their lengths is the least. Each chain's end is looked for only between the earliest and the latest
 * place that still leaves the fewest chains.
 */
export function evenCuts(places: readonly number[], most: number): readonly number[] {
  const latest = farthest(places, most);
  const earliest = nearest(places, most, latest.length);
  let costs = new Map([[-1, 0]]);
  const cameFrom: Map<number, number>[] = [];
  for (let chain = 0; chain < latest.length; chain++) {
    const next = new Map<number, number>();
    const from = new Map<number, number>();
    for (let place = item(earliest, chain); place <= item(latest, chain); place++) {
      for (const [before, cost] of costs) {
        const length = item(places, place) - (before < 0 ? 0 : item(places, before));
        if (length < 1 || length > most) continue;
        const sum = cost + length * length;
        if (sum < (next.get(place) ?? Infinity)) {
          next.set(place, sum);
          from.set(place, before);
        }
      }
    }
    costs = next;
    cameFrom.push(from);
  }
  const cuts: number[] = [];
  for (let place = places.length - 1, chain = latest.length - 1; chain >= 0; chain--) {
    cuts.unshift(item(places, place));
    place = cameFrom[chain]?.get(place) ?? -1;
  }
  return cuts;
}

/** Index of the last place each chain can reach, every chain as long as it can be. */
function farthest(places: readonly number[], most: number): readonly number[] {
  const ends: number[] = [];
  let begun = 0;
  for (let place = 0; place < places.length; place++) {
    if (item(places, place) - begun > most) refuseStripe(item(places, place) - begun, most, place + 1);
    while (place + 1 < places.length && item(places, place + 1) - begun <= most) place++;
    ends.push(place);
    begun = item(places, place);
  }
  return ends;
}

/** Index of the first place at which each chain can end, counted back from the last. */
function nearest(places: readonly number[], most: number, count: number): readonly number[] {
  const ends = [places.length - 1];
  for (let place = places.length - 1; ends.length < count;) {
    const end = item(places, place);
    while (place > 0 && end - item(places, place - 1) <= most) place--;
    ends.unshift(place);
  }
  return ends;
}

function refuseStripe(ends: number, most: number, stripe: number): never {
  return refuse("chains", "does-not-fit", "most", {
    expected: `at least the ${ends} ends of stripe ${stripe}`,
    received: most,
    remedy: "Allow longer chains, or cut within stripes.",
  });
}
