import { inWords } from "../working/index.js";
import { number, part, product } from "./hand.js";
import type { Hand } from "./hand.js";
import { changed } from "./places.js";
import type { Reason, Scene } from "./reason.js";
import { SIBLINGS } from "./sibling-units.js";

/** An input, or all of its kind, taken to be in another unit; the answer reckoned in one and called by another. */
export function unitReasons(scene: Scene): readonly Reason[] {
  const reasons: Reason[] = [];
  const put = (key: string, says: string, hand: Hand, family: Reason["family"], share = 1): void => {
    reasons.push({ family, key, line: "", says: () => says, hand, share });
  };
  const kinds = new Map<string, Set<string>>();
  const scaled = (names: ReadonlySet<string>, ratio: number): Hand =>
    changed(scene.hand, (one) =>
      one.op === "name" && names.has(one.name) ? product(part(one), part(number(ratio))) : null,
    );
  for (const [own, read] of scene.inputs) {
    const first = read.what === "list" ? read.members[0] : read;
    if (first?.what !== "quantity") continue;
    const { dimension, scale, symbol } = first.unit;
    const key = `${dimension}|${symbol}`;
    kinds.set(key, (kinds.get(key) ?? new Set()).add(own));
    for (const [other, over, under] of SIBLINGS[dimension] ?? []) {
      const ratio = ((over / under) * scale[1]) / scale[0];
      if (Math.abs(ratio - 1) < 1e-9) continue;
      put(
        `${own} in ${other}`,
        `takes ${inWords(own)} to be in ${other}, not ${symbol}`,
        scaled(new Set([own]), ratio),
        "constant",
        0.5,
      );
    }
    if (/^(?:ends|picks|dents|heddles|diameters) per length$/u.test(dimension))
      for (const ratio of [2.54, 1 / 2.54])
        put(
          `${own} by ${String(ratio > 1)}`,
          `takes ${inWords(own)} by the ${ratio > 1 ? "centimetre for the inch" : "inch for the centimetre"}`,
          scaled(new Set([own]), ratio),
          "constant",
        );
  }
  for (const [key, names] of kinds) {
    if (names.size < 2) continue;
    const [dimension = "", symbol = ""] = key.split("|");
    const own = (SIBLINGS[dimension] ?? []).find(([one]) => one === symbol);
    for (const [other, over, under] of SIBLINGS[dimension] ?? []) {
      if (own === undefined || other === symbol) continue;
      put(
        `all ${dimension} in ${other}`,
        `takes all of ${symbol} to be ${other}`,
        scaled(names, ((over / under) * own[2]) / own[1]),
        "constant",
        0.5,
      );
    }
  }
  const { unit, hand } = scene;
  if (unit === null) return reasons;
  for (const [other, over, under] of SIBLINGS[unit.dimension] ?? []) {
    const by = ((unit.scale[0] / unit.scale[1]) * under) / over;
    if (Math.abs(by - 1) < 1e-9) continue;
    put(
      `in ${other}`,
      `reckons in ${other} and calls them ${unit.symbol}`,
      product(part(hand), part(number(by))),
      "unit",
    );
    put(
      `from ${other}`,
      `takes ${unit.symbol} for ${other} and converts them once more`,
      product(part(hand), part(number(by), true)),
      "unit",
      0.5,
    );
  }
  if (/^(?:ends|picks|dents|heddles|diameters) per length$/u.test(unit.dimension))
    for (const by of [2.54, 1 / 2.54])
      put(
        `per ${String(by > 1)}`,
        `gives the number to the ${by > 1 ? "inch" : "centimetre"} as if to the ${by > 1 ? "centimetre" : "inch"}`,
        product(part(hand), part(number(by))),
        "unit",
      );
  return reasons;
}
