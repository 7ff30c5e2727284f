import { item } from "../sequence/item.js";

/**
 * Last ends of the fewest chains that end only at the places given, as nearly equal as they can be: the sum of the
 * squares of their lengths is the least. The places begin with 0, end with the last end, and are never farther apart
 * than a chain may be long. Built up from the best division of the ends before each place.
 */
export function evenCuts(places: readonly number[], most: number): readonly number[] {
  const best = [{ chains: 0, squares: 0, from: 0 }];
  for (let place = 1; place < places.length; place++) {
    let chosen = { chains: Infinity, squares: Infinity, from: 0 };
    for (let from = place - 1; from >= 0; from--) {
      const length = item(places, place) - item(places, from);
      if (length > most) break;
      const chains = item(best, from).chains + 1;
      const squares = item(best, from).squares + length * length;
      if (chains < chosen.chains || (chains === chosen.chains && squares <= chosen.squares)) {
        chosen = { chains, squares, from };
      }
    }
    best.push(chosen);
  }
  const cuts: number[] = [];
  for (let place = places.length - 1; place > 0; place = item(best, place).from) cuts.push(item(places, place));
  return cuts.reverse();
}
