import type { Unit } from "../engine/quantity/index.js";
import { inWords, singular } from "../engine/working/index.js";
import { number, part, product } from "./hand.js";
import type { Hand } from "./hand.js";
import { ratioOf, takenFor, toldTo } from "./mixed-up.js";
import { changed } from "./places.js";
import type { Reason, Scene } from "./reason.js";
import { countsToLength } from "./unit-factors.js";
import { ALIKE } from "./tolerances.js";

/** The units that one is taken for, but for those of its own size. */
const othersOf = (unit: Unit<string>): ReturnType<typeof takenFor> =>
  takenFor(unit).filter((one) => Math.abs(ratioOf(one, unit) - 1) >= ALIKE);

/** An input, or all of its kind, taken to be in another unit; the answer reckoned in one and called by another. */
export function unitReasons(scene: Scene): readonly Reason[] {
  const { unit: answer, hand } = scene;
  const reasons: Reason[] = [];
  const put = (key: string, says: string, own: Hand, family: Reason["family"], share = 1): void => {
    reasons.push({ family, key, line: "", says: () => says, hand: own, share });
  };
  const kinds = new Map<string, { readonly unit: Unit<string>; readonly names: Set<string> }>();
  const scaled = (names: ReadonlySet<string>, ratio: number): Hand =>
    changed(hand, (one) => (one.op === "name" && names.has(one.name) ? product(part(one), part(number(ratio))) : null));
  for (const [own, read] of scene.inputs) {
    const first = read.what === "list" ? read.members[0] : read;
    if (first?.what !== "quantity") continue;
    const { unit } = first;
    const { name, symbol } = unit;
    const alone = new Set([own]);
    kinds.set(name, { unit, names: (kinds.get(name)?.names ?? new Set()).add(own) });
    const say = `takes ${inWords(own)}`;
    for (const other of othersOf(unit)) {
      const wrong = scaled(alone, ratioOf(other, unit));
      put(`${own} in ${other.symbol}`, `${say} to be in ${other.symbol}, not ${symbol}`, wrong, "constant", 0.5);
    }
    if (countsToLength(unit))
      for (const [of, by] of toldTo()) {
        const ratio = ratioOf(of, by);
        const says = `${say} by the ${singular(by.name)} for the ${singular(of.name)}`;
        put(`${own} by ${String(ratio > 1)}`, says, scaled(alone, ratio), "constant");
      }
  }
  for (const { unit, names } of kinds.values()) {
    const { dimension, symbol } = unit;
    if (names.size < 2 || !takenFor(unit).some((one) => one.symbol === symbol)) continue;
    for (const other of othersOf(unit)) {
      const wrong = scaled(names, ratioOf(other, unit));
      put(
        `all ${dimension} in ${other.symbol}`,
        `takes all of ${symbol} to be ${other.symbol}`,
        wrong,
        "constant",
        0.5,
      );
    }
  }
  if (answer === null) return reasons;
  const { symbol } = answer;
  for (const other of othersOf(answer)) {
    const by = part(number(ratioOf(answer, other)));
    const own = part(hand);
    put(`in ${other.symbol}`, `reckons in ${other.symbol} and calls them ${symbol}`, product(own, by), "unit");
    const again = product(own, { ...by, turned: true });
    put(`from ${other.symbol}`, `takes ${symbol} for ${other.symbol} and converts them once more`, again, "unit", 0.5);
  }
  if (countsToLength(answer))
    for (const [to, as] of toldTo()) {
      const by = ratioOf(to, as);
      const says = `gives the number to the ${singular(to.name)} as if to the ${singular(as.name)}`;
      put(`per ${String(by > 1)}`, says, product(part(hand), part(number(by))), "unit");
    }
  return reasons;
}
