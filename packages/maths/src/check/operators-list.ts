import { isPercent } from "../engine/quantity/index.js";
import { name, number, part, product } from "./hand.js";
import type { Hand, Sigma, Spread } from "./hand.js";
import { changed } from "./places.js";
import { worded } from "./reason.js";
import type { Reason, Scene } from "./reason.js";

const each = (hand: Hand, of: Hand): Hand => product(part(hand), part(of));
const over = (hand: Hand, under: Hand): Hand => product(part(hand), part(under, true));
const sigma = (of: Hand): Hand => ({ op: "Σ", of });
const members = (of: Hand): Hand => ({ op: "members", of });

const ORDINALS = ["first", "second", "third", "fourth", "fifth"];

/** Everything a hand does wrong with lists. */
export function listReasons(scene: Scene): readonly Reason[] {
  const { inputs, hand } = scene;
  const lists = [...inputs].flatMap(([own, read]) =>
    read.what === "list" ? [{ own, read, size: read.members.length }] : [],
  );
  const size = Math.max(0, ...lists.map((list) => list.size));
  if (size < 2) return [];
  const reasons: Reason[] = [];
  const put = (key: string, says: string, next: Hand, share = 1): void => {
    reasons.push({ family: "list", key, line: "", says: () => says, hand: next, share });
  };
  const sums = (change: (own: Sigma) => Hand | null): Hand =>
    changed(hand, (one) => (one.op === "Σ" ? change(one) : null));
  const factorOf = (own: string): Hand => {
    let found: Hand = name(own);
    changed(hand, (one) => {
      if (one.op === "product" && one.parts.some(({ of }) => of.op === "name" && of.name === own)) {
        const constants = one.parts.filter(
          ({ of }) => (of.op === "name" && of.name === own) || (of.op === "number" && of.constant?.input === own),
        );
        found = product(...constants.map((two) => ({ ...two, turned: false })));
      }
      return null;
    });
    return found;
  };
  for (let at = 0; at < size; at += 1) {
    const which = at === size - 1 ? "last" : (ORDINALS[at] ?? `${String(at + 1)}th`);
    const share = at === 0 || at === size - 1 ? 1 : 0.7;
    put(
      `without ${which}`,
      `leaves out the ${which} of the list`,
      sums((one) => ({ ...one, without: at })),
      share,
    );
    put(
      `only ${which}`,
      `takes only the ${which} of the list`,
      sums((one) => ({ ...one, only: at })),
      0.4,
    );
  }
  let order = 0;
  changed(hand, (one) => {
    if (one.op !== "Σ") return null;
    const here = order;
    order += 1;
    const inside = one.of;
    const at = (next: Hand): Hand => {
      let met = -1;
      return sums(() => {
        met += 1;
        return met === here ? next : null;
      });
    };
    const say = worded(scene, inside);
    put(`members ${String(here)}`, `takes the number of them for the sum of ${say}`, at(members(inside)), 0.6);
    put(`mean ${String(here)}`, `takes the mean of ${say} for the sum`, at(over(one, members(inside))), 0.6);
    if (inside.op === "product") {
      const apart = product(...inside.parts.map((own) => ({ ...own, of: sigma(own.of) })));
      put(`apart ${String(here)}`, `adds the lists first and works once with the sums`, at(apart));
    }
    for (let index = 0; index < size; index += 1)
      put(
        `one ${String(here)} ${String(index)}`,
        `leaves out the ${index === size - 1 ? "last" : (ORDINALS[index] ?? "")} in one place`,
        at({ ...one, without: index }),
        0.2,
      );
    return null;
  });
  const spread = (own: string, how: Spread): Hand =>
    changed(hand, (one) => (one.op === "name" && one.name === own ? { op: "spread", how, name: own } : null));
  for (const { own } of lists) {
    const say = worded(scene, name(own));
    put(`mean of ${own}`, `takes the plain mean of ${say} for each`, spread(own, "mean"));
    put(`first of ${own}`, `takes the first of ${say} for all`, spread(own, "first"));
    put(`last of ${own}`, `takes the last of ${say} for all`, spread(own, "last"), 0.3);
    put(`sum of ${own}`, `takes the sum of ${say} for each`, spread(own, "sum"), 0.4);
  }
  const result = scene.run.declared.result.dimension;
  const percent = isPercent(scene.unit) ? number(100) : number(1);
  for (const { own, read } of lists) {
    const [first] = read.members;
    if (first?.what !== "quantity" || (first.unit.dimension !== result && !scene.percents.has(own))) continue;
    const ratio = first.unit.name === scene.unit?.name || scene.percents.has(own) ? 1 : Number.NaN;
    if (Number.isNaN(ratio)) continue;
    const list = name(own);
    const say = worded(scene, list);
    const n = members(list);
    const inverses = sigma(over(number(1), list));
    const whole = (key: string, says: string, of: Hand, share = 1): void => {
      put(`${key} ${own}`, says, each(of, percent), share);
    };
    whole("plain mean", `takes the plain mean of ${say}`, over(sigma(list), n));
    whole("sum", `adds ${say}`, sigma(list));
    whole(
      "mean by number",
      `takes the mean of ${say} and divides it by their number`,
      over(over(sigma(list), n), n),
      0.4,
    );
    whole("harmonic", `takes the harmonic mean of ${say}, each for as much`, over(n, inverses));
    whole("folded", `folds ${say} into one`, over(number(1), inverses), 0.7);
    for (const { own: other } of lists) {
      if (other === own) continue;
      const weights = factorOf(other).op === "name" ? name(other) : name(other);
      whole(
        `weighted ${other}`,
        `weights ${say} the other way: their mean by ${worded(scene, weights)}`,
        over(sigma(each(list, weights)), sigma(weights)),
      );
      whole(
        `harmonic ${other}`,
        `weights ${say} the other way: their harmonic mean by ${worded(scene, weights)}`,
        over(sigma(weights), sigma(over(weights, list))),
      );
    }
  }
  return reasons;
}
