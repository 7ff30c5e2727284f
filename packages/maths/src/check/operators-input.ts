import type { Read } from "../engine/formula/index.js";
import { inWords } from "../engine/working/index.js";
import { joined, name, number, part, product, sum } from "./hand.js";
import type { Hand } from "./hand.js";
import { changed } from "./places.js";
import type { Place } from "./places.js";
import { called, worded } from "./reason.js";
import type { Reason, Scene } from "./reason.js";
import { countsToLength } from "./unit-factors.js";

const kindOf = (read: Read | undefined): string => {
  if (read?.what === "list") return `list ${kindOf(read.members[0])}`;
  if (read?.what === "quantity") return countsToLength(read.unit) ? "things to a length" : read.unit.dimension;
  return read?.what ?? "";
};

const renamed = (hand: Hand, instead: (own: string) => string | null): Hand =>
  changed(hand, (one) => {
    const other = one.op === "name" ? instead(one.name) : null;
    return other === null ? null : name(other);
  });

/** One input taken for another of its kind, in one place or all; two exchanged; the ratio of two under a root or squared. */
export function nameReasons(scene: Scene): readonly Reason[] {
  const { hand, inputs } = scene;
  const names = [...inputs.keys()];
  const places = scene.places.filter((one) => one.hand.op === "name");
  const reasons: Reason[] = [];
  const put = (key: string, says: () => string, next: Hand, family: Reason["family"] = "name", place?: Place): void => {
    reasons.push({ family, key, line: "", says, hand: next, ...(place === undefined ? {} : { place }) });
  };
  for (const [at, one] of names.entries())
    for (const other of names.slice(at + 1)) {
      if (kindOf(inputs.get(one)) !== kindOf(inputs.get(other))) continue;
      const [a, b] = [one, other].map((own) => called(scene, own)) as [string, string];
      put(
        `${one} <> ${other}`,
        () => `exchanges ${a} and ${b}`,
        renamed(hand, (own) => (own === one ? other : own === other ? one : null)),
      );
      put(
        `${one} > ${other}`,
        () => `takes ${b} where ${a} belongs`,
        renamed(hand, (own) => (own === one ? other : null)),
      );
      put(
        `${other} > ${one}`,
        () => `takes ${a} where ${b} belongs`,
        renamed(hand, (own) => (own === other ? one : null)),
      );
      for (const [from, to] of [
        [one, other],
        [other, one],
      ] as const) {
        const own = places.filter((place) => place.hand.op === "name" && place.hand.name === from);
        if (own.length > 1)
          for (const [index, place] of own.entries())
            put(
              `${from} > ${to} ${String(index)}`,
              () => `takes ${called(scene, to)} where ${called(scene, from)} belongs, in one place`,
              name(to),
              "name",
              place,
            );
      }
    }
  for (const place of scene.places) {
    const own = place.hand;
    if (own.op !== "product") continue;
    for (const [at, one] of own.parts.entries())
      for (const [order, other] of own.parts.entries()) {
        if (one.turned || !other.turned || one.of.op !== "name" || other.of.op !== "name") continue;
        if (kindOf(inputs.get(one.of.name)) !== kindOf(inputs.get(other.of.name))) continue;
        const rest = own.parts.filter((_, index) => index !== at && index !== order);
        const ratio = product(part(one.of), part(other.of, true));
        const say = `the ratio of ${worded(scene, one.of)} to ${worded(scene, other.of)}`;
        for (const op of ["√", "square"] as const)
          put(
            `${op} ${one.of.name}`,
            () => `takes the ${op === "√" ? "square root" : "square"} of ${say}`,
            joined("product", [...rest, part({ op, of: ratio })]),
            "power",
            place,
          );
        put(
          `minus ${one.of.name}`,
          () => `takes the difference of ${worded(scene, one.of)} and ${worded(scene, other.of)} for their ratio`,
          sum(part(rest.length === 0 ? number(0) : joined("product", rest)), part(one.of), part(other.of, true)),
          "factor",
          place,
        );
      }
  }
  return reasons;
}

/** One too many or too few of what is counted. */
export function countReasons(scene: Scene): readonly Reason[] {
  const { declared } = scene.run;
  return [...scene.inputs].flatMap(([own, read]) => {
    const whole = declared.inputs[own]?.what === "whole";
    if (!whole || read.what !== "number") return [];
    return [1, -1].map((by): Reason => ({
      family: "count",
      key: `${own} ${String(by)}`,
      line: "",
      says: () => `counts one too ${by > 0 ? "many" : "few"} of the ${inWords(own)}`,
      hand: changed(scene.hand, (one) =>
        one.op === "name" && one.name === own ? sum(part(one), part(number(by))) : null,
      ),
    }));
  });
}
