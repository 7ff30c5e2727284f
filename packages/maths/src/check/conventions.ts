import { inWords } from "../engine/working/index.js";
import { answerOf, name, number, part, sum } from "./hand.js";
import type { Hand } from "./hand.js";
import { withFactors } from "./places.js";
import type { Place } from "./places.js";
import { percentIn } from "./reason.js";
import type { Scene } from "./reason.js";

/** The answer by the other convention about what a percentage is measured on, in doubles. */
export interface Convention {
  readonly rule: "adding" | "dividing";
  readonly value: number;
}

/** How the sum goes for one who measures the percentages on the other length; none where the formula has none. */
export function conventionsOf(scene: Scene): readonly Convention[] {
  const names: string[] = [];
  let rule: Convention["rule"] = "dividing";
  const turned = (summed: boolean): Hand => {
    names.length = 0;
    const all: string[] = [];
    const other = (one: { readonly of: Hand; readonly turned: boolean }): readonly ReturnType<typeof part>[] | null => {
      const inside = percentIn(scene, one.of);
      if (inside === null) return null;
      const own = inside.flatMap(({ of }) => (of.op === "name" ? [of.name] : []));
      names.push(...own);
      const isLoss = inside[0]?.turned === true;
      if (isLoss) rule = "adding";
      if (summed) {
        all.push(...own);
        return [];
      }
      return own.map((p) => part(sum(part(number(1)), part(name(p), !isLoss)), !one.turned));
    };
    const hand = withFactors(scene.hand, other);
    if (!summed) return hand;
    let met = false;
    return withFactors(scene.hand, (one) => {
      if (percentIn(scene, one.of) === null) return null;
      const first = !met;
      met = true;
      return first ? [part(sum(part(number(1)), ...all.map((p) => part(name(p)))))] : [];
    });
  };
  const each = answerOf(turned(false), scene.values);
  if (names.length === 0) return [];
  const sums = names.length > 1 && (rule as string) === "adding" ? [answerOf(turned(true), scene.values)] : [];
  return [each, ...sums].map((value) => ({ rule, value }));
}

/** What to ask where a question states no base of the percentages that stand in it as 1 plus or 1 minus one. */
export function baseQuestion(scene: Scene): string {
  const standsIn = (own: string, { hand }: Place): boolean =>
    percentIn(scene, hand)?.some(({ of }) => of.op === "name" && of.name === own) === true;
  const names = [...scene.inputs.keys()].filter((own) => scene.places.some((place) => standsIn(own, place)));
  const each = names.length > 1 ? "were the percentages of" : "was the percentage of";
  return `On which length ${each} ${names.map(inWords).join(" and ")} measured: the one before, or the one after?`;
}
