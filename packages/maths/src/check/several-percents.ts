import { name, part, sum } from "./hand.js";
import type { Hand, Part } from "./hand.js";
import { ONE, WAYS, and, factor } from "./operators-percent.js";
import type { Way } from "./operators-percent.js";
import { withFactors } from "./places.js";
import { called, percentIn } from "./reason.js";
import type { Reason, Scene } from "./reason.js";

/** The same thing done wrong to several percentages: all of them, or each pair. */
export function severalPercents(scene: Scene): readonly Reason[] {
  const found = new Map<string, { readonly parts: Set<Part>; readonly ps: readonly string[]; readonly way: Way }>();
  const visit = (hand: Hand): void => {
    if (hand.op === "product")
      for (const one of hand.parts) {
        const { of, turned } = one;
        const inside = percentIn(scene, of);
        if (inside === null) continue;
        const ps = inside.flatMap(({ of: p }) => (p.op === "name" ? [p.name] : []));
        const key = `${ps.join()} ${String(turned)} ${String(inside[0]?.turned)}`;
        const before = found.get(key);
        if (before === undefined)
          found.set(key, { parts: new Set([one]), ps, way: [inside[0]?.turned !== true, turned] });
        else before.parts.add(one);
      }
    if ("parts" in hand) for (const { of } of hand.parts) visit(of);
    else if ("of" in hand) visit(hand.of);
  };
  visit(scene.hand);
  const all = [...found.values()];
  const sets =
    all.length < 2
      ? []
      : [all, ...(all.length > 2 ? all.flatMap((a, at) => all.slice(at + 1).map((b) => [a, b])) : [])];
  const reasons: Reason[] = [];
  const put = (what: string, says: string, hand: Hand): void => {
    reasons.push({ family: "percentages", key: what, line: "", says: () => says, hand });
  };
  for (const set of sets) {
    const names = set.flatMap(({ ps }) => ps);
    const say = and(names.map((one) => called(scene, one)));
    const withEach = (instead: (one: (typeof all)[number]) => readonly Part[]): Hand =>
      withFactors(scene.hand, (one) => {
        const own = set.find(({ parts }) => parts.has(one));
        return own === undefined ? null : instead(own);
      });
    put(
      `none of ${names.join()}`,
      `leaves both ${say} out`.replace("both ", set.length === 2 ? "both " : ""),
      withEach(() => []),
    );
    for (const way of WAYS) {
      if (set.every((one) => one.way[0] === way[0] && one.way[1] === way[1])) continue;
      const [plus, divided] = way;
      const what = divided
        ? plus
          ? "divides by 1 plus each of"
          : "divides out each of"
        : plus
          ? "adds each of"
          : "takes off each of";
      put(
        `each ${String(way)} ${names.join()}`,
        `${what} ${say}`,
        withEach(({ ps }) => ps.map((p) => factor(name(p), way, ""))),
      );
    }
    const total = sum(...names.map((one) => part(name(one))));
    for (const way of WAYS) {
      const [plus, divided] = way;
      const [first] = set;
      const what = divided
        ? plus
          ? "divides by 1 plus them"
          : "divides once"
        : plus
          ? "adds them once"
          : "takes them off once";
      put(
        `summed ${String(way)} ${names.join()}`,
        `adds ${say} together and ${what}`,
        withEach((one) => (one === first ? [factor(total, way, "")] : [])),
      );
    }
    const [a, b] = set;
    if (set.length === 2 && a !== undefined && b !== undefined && a.ps.length === 1 && b.ps.length === 1) {
      const [p = "", q = ""] = [a.ps[0], b.ps[0]];
      if (a.way[1] !== b.way[1] || a.way[0] !== b.way[0]) {
        put(
          `difference ${names.join()}`,
          `takes the difference of ${say} and works with that`,
          withEach((one) => {
            const gain = (own: Way): boolean => own[0] !== own[1];
            if (one !== a) return [];
            return [part(sum(part(ONE), part(name(p), !gain(a.way)), part(name(q), !gain(b.way))))];
          }),
        );
        put(
          `exchanged ${names.join()}`,
          `exchanges ${say}`,
          withEach((one) => [factor(name(one === a ? q : p), one.way, "")]),
        );
      }
      for (const one of [p, q])
        put(
          `both ${one} ${names.join()}`,
          `takes ${called(scene, one)} for both`,
          withEach((own) => [factor(name(one), own.way, "")]),
        );
    }
  }
  return reasons;
}
