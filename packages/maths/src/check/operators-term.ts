import { joined, name, number, part, product } from "./hand.js";
import type { Hand, Part } from "./hand.js";
import type { Place } from "./places.js";
import { percentIn, worded } from "./reason.js";
import type { Reason, Scene } from "./reason.js";

const isTwice = (hand: Hand): boolean =>
  hand.op === "product" && hand.parts.some(({ of, turned }) => !turned && of.op === "number" && of.value === 2);

/** Everything a hand does wrong with the terms of a sum that is no percentage factor. */
export function termReasons(scene: Scene, place: Place): readonly Reason[] {
  const { hand, line } = place;
  if (hand.op !== "sum" || percentIn(scene, hand) !== null) return [];
  const { parts } = hand;
  const made = (
    own: Part | null,
    what: string,
    says: () => string,
    next: readonly Part[],
    family: Reason["family"] = "term",
  ): Reason => {
    const [first] = next;
    const rightWay = first?.turned === true && next.length === 1 ? [{ ...first, turned: false }] : next;
    return {
      family,
      key: `${what} ${line}`,
      line: own === null || own.line === "" ? line : own.line,
      says,
      hand: joined("sum", rightWay.length === 0 ? [part(number(0))] : rightWay),
      place,
    };
  };
  const counts = [...scene.inputs].filter(([, read]) => read.what === "number" && read.value.gt(1)).map(([own]) => own);
  return parts.flatMap((at, index) => {
    const rest = parts.filter((_, other) => other !== index);
    const say = (): string => worded(scene, at.of);
    const with_ = (of: Hand): readonly Part[] => parts.map((one, other) => (other === index ? { ...one, of } : one));
    const sign = parts.map((one, other) => (other === index ? { ...one, turned: !one.turned } : one));
    const reasons = [
      made(at, `no ${String(index)}`, () => `leaves out ${say()}`, rest),
      made(
        at,
        `sign ${String(index)}`,
        () => (at.turned ? `adds ${say()} instead of taking it away` : `takes ${say()} away instead of adding it`),
        sign,
      ),
      made(at, `twice ${String(index)}`, () => `counts ${say()} twice`, with_(product(part(number(2)), part(at.of)))),
      {
        ...made(
          at,
          `half ${String(index)}`,
          () => (isTwice(at.of) ? `counts ${say()} once, not twice` : `counts half of ${say()}`),
          with_(product(part(at.of), part(number(2), true))),
        ),
        share: 0.5,
      },
    ];
    if (at.of.op === "number") return reasons;
    for (const one of counts) {
      if (worded(scene, at.of).includes(worded(scene, name(one)))) continue;
      reasons.push(
        made(
          at,
          `each ${String(index)} ${one}`,
          () => `counts ${say()} once for each of the ${worded(scene, name(one))}`,
          with_(product(part(name(one)), part(at.of))),
        ),
      );
    }
    if (parts.length > 2)
      for (const [other, two] of parts.entries()) {
        if (other <= index) continue;
        const both = parts.filter((_, own) => own !== index && own !== other);
        reasons.push({
          ...made(
            at,
            `no ${String(index)} ${String(other)}`,
            () => `leaves out ${say()} and ${worded(scene, two.of)}`,
            both,
          ),
          share: 0.5,
        });
      }
    return reasons;
  });
}
