import { joined, number, part, product, sum } from "./hand.js";
import type { Hand } from "./hand.js";
import type { Place } from "./places.js";
import { worded } from "./reason.js";
import type { Reason, Scene } from "./reason.js";

/** What a hand does wrong with roots, squares and roundings. */
export function powerReasons(scene: Scene, place: Place): readonly Reason[] {
  const { hand, line } = place;
  const made = (key: string, says: string, next: Hand, family: Reason["family"] = "power", share = 1): Reason => ({
    family,
    key: `${key} ${line}`,
    line,
    says: () => says,
    hand: next,
    place,
    share,
  });
  if (hand.op === "√" || hand.op === "square") {
    const inside = hand.of;
    const say = worded(scene, inside);
    const what = hand.op === "√" ? "the square root" : "the square";
    const turned = product(part(number(1)), part(hand, true));
    const over = inside.op === "product" ? inside.parts : [];
    const one = over.map((own): Hand =>
      product(part({ op: hand.op, of: own.of }, own.turned), ...over.filter((two) => two !== own)),
    );
    return [
      made("none", `forgets ${what} of ${say}`, inside),
      made("upside", `takes ${say} upside down under ${what}`, turned),
      made(
        "other",
        hand.op === "√"
          ? `squares ${say} instead of taking the root`
          : `takes the square root of ${say} instead of the square`,
        { op: hand.op === "√" ? "square" : "√", of: inside },
      ),
      made(
        "half",
        hand.op === "√" ? `halves ${say} instead of taking the root` : `doubles ${say} instead of squaring`,
        product(part(inside), part(number(2), hand.op === "√")),
      ),
      ...(over.length > 1
        ? one.map((next, at) =>
            made(`part ${String(at)}`, `takes ${what} of a part of ${say} only`, next, "power", 0.5),
          )
        : []),
      made(
        "turned none",
        `forgets ${what} of ${say} and turns it upside down`,
        product(part(number(1)), part(inside, true)),
        "power",
        0.5,
      ),
    ];
  }
  if (hand.op === "roundUp" || hand.op === "roundDown" || hand.op === "nearest") {
    const { op } = hand;
    const ways = (["roundUp", "roundDown", "nearest"] as const).filter((way) => way !== op);
    const words = { roundUp: "up", roundDown: "down", nearest: "to the nearest" } as const;
    return [
      ...ways.map((way) =>
        made(
          way,
          `rounds ${words[way]} instead of ${words[op]}`,
          { op: way, of: hand.of },
          "rounding",
          way === "nearest" ? 1 : 2,
        ),
      ),
      made("unrounded", "does not round to a whole number", hand.of, "rounding"),
      ...[1, -1].map((by) =>
        made(
          `one ${String(by)}`,
          `counts one too ${by > 0 ? "many" : "few"}${line === "" ? "" : ` at ${line}`}`,
          sum(part(hand), part(number(by))),
          "count",
        ),
      ),
    ];
  }
  if (hand.op === "orNothing") {
    return [made("less than nothing", "counts less than nothing", hand.of)];
  }
  return [];
}

/** Root or square of the whole; a rounding moved to the end. */
export function wholePowers({ hand, run, with: other }: Scene): readonly Reason[] {
  const made = (key: string, says: string, next: Hand, family: Reason["family"]): Reason => ({
    family,
    key,
    line: "",
    says: () => says,
    hand: next,
  });
  const text = run.declared.formula;
  const inside = (own: Hand): Hand => {
    if (own.op === "√" || own.op === "square") return inside(own.of);
    if ("parts" in own)
      return joined(
        own.op,
        own.parts.map((one) => ({ ...one, of: inside(one.of) })),
      );
    return own;
  };
  const rounding = (own: Hand): Hand => {
    if (own.op === "roundUp" || own.op === "roundDown" || own.op === "nearest") return rounding(own.of);
    if ("parts" in own)
      return joined(
        own.op,
        own.parts.map((one) => ({ ...one, of: rounding(one.of) })),
      );
    return own;
  };
  const way = /round(?:Up|Down)/u.exec(text)?.[0] === "roundDown" ? "roundDown" : "roundUp";
  const isPower = text.includes("√") || /(\b[a-z]\w*\b)\s×\s\1\b/iu.test(text);
  return [
    ...(isPower
      ? [made("root of all", "takes the square root of the whole", { op: "√", of: inside(hand) }, "power")]
      : []),
    ...(text.includes("√") || isPower || hand.op !== "product" || hand.parts.length < 3 || hand.parts.length > 5
      ? []
      : []),
    ...(text.includes("round")
      ? [made("moved", "rounds only at the end", { op: way, of: rounding(other(run.declared.lines)) }, "rounding")]
      : []),
  ];
}
