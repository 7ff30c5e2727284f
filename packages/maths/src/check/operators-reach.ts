import { joined, number, part, product, sum } from "./hand.js";
import type { Hand } from "./hand.js";
import type { Place } from "./places.js";
import { percentIn, worded } from "./reason.js";
import type { Reason, Scene } from "./reason.js";

/** A factor that reaches too far or not far enough over a sum. */
export function reachReasons(scene: Scene, place: Place): readonly Reason[] {
  const { hand, line } = place;
  const reasons: Reason[] = [];
  const add = (key: string, says: () => string, next: Hand, share = 1): void => {
    reasons.push({ family: "reach", key: `${key} ${line}`, line, says, hand: next, place, share });
  };
  if (hand.op === "sum" && percentIn(scene, hand) === null) {
    for (const [index, { of, turned }] of hand.parts.entries()) {
      if (of.op !== "product") continue;
      const others = hand.parts.filter((_, other) => other !== index);
      const rest = sum(...others);
      const restSay = (): string => others.map((one) => worded(scene, one.of)).join(" and ");
      const percents = of.parts.filter((one) => percentIn(scene, one.of) !== null);
      const sets = [
        ...of.parts.filter(({ of: own }) => own.op !== "number" || own.constant === undefined).map((one) => [one]),
        ...(percents.length > 1 ? [percents] : []),
      ];
      for (const set of sets) {
        const left = of.parts.filter((one) => !set.includes(one));
        const inner = left.length === 0 ? number(1) : joined("product", left);
        const say = (): string => set.map((one) => worded(scene, one.of)).join(" and ");
        add(
          `over ${String(index)} ${say()}`,
          () => `brings ${say()} in on ${restSay()} too`,
          product(part(sum(part(inner, turned), ...others)), ...set),
        );
        add(
          `moved ${String(index)} ${say()}`,
          () => `brings ${say()} in on ${restSay()}, not where it belongs`,
          sum(part(inner, turned), part(product(part(rest), ...set))),
          0.5,
        );
      }
      if (of.parts.length > 1) {
        for (const [at, first] of of.parts.entries()) {
          if (first.turned || first.of.op === "number" || sets.length < 3) continue;
          const tail = of.parts.filter((_, other) => other !== at);
          add(
            `whole ${String(index)} ${String(at)}`,
            () => `adds ${restSay()} before the rest of the sum`,
            product(part(sum(part(first.of, turned), ...others)), ...tail),
          );
        }
      }
    }
  }
  if (hand.op === "product") {
    for (const [index, { of, turned }] of hand.parts.entries()) {
      if (of.op !== "sum" || turned || percentIn(scene, of) !== null) continue;
      const factors = hand.parts.filter((_, other) => other !== index);
      const constants = factors.filter(({ of: own }) => own.op === "number" && own.constant !== undefined);
      const percents = factors.filter((one) => percentIn(scene, one.of) !== null);
      const free = factors.filter((one) => !constants.includes(one));
      const sets = [
        ...free.map((one) => [one]),
        ...(percents.length > 1 ? [percents] : []),
        ...(free.length > 1 ? [free] : []),
      ];
      for (const set of sets)
        for (const [at, term] of of.parts.entries()) {
          const others = of.parts.filter((_, other) => other !== at);
          const left = factors.filter((one) => !set.includes(one));
          const say = (): string => set.map((one) => worded(scene, one.of)).join(" and ");
          const next = sum({ ...term, of: product(part(term.of), ...set) }, ...others);
          add(
            `only ${String(index)} ${String(at)} ${say()}`,
            () => `brings ${say()} in on ${worded(scene, term.of)} only`,
            left.length === 0 ? next : product(part(next), ...left),
          );
          const but = sum(term, ...others.map((one) => ({ ...one, of: product(part(one.of), ...set) })));
          if (others.length > 1 || sets.length > 0)
            add(
              `but ${String(index)} ${String(at)} ${say()}`,
              () => `adds ${worded(scene, term.of)} only after ${say()}`,
              left.length === 0 ? but : product(part(but), ...left),
            );
        }
    }
  }
  return reasons;
}
