import { inUnit, packagesToBuy, weftLength, yarnForEnds, yarnLength, yarnMass, yarnMassDirect } from "@thrum/maths";
import type { WarpPlan, YarnPlan } from "@thrum/plan";
import { unitOf } from "../calculation/bounds.js";
import type { AnyCalculation } from "../calculation/given.js";
import { sumOf } from "./common-groups.js";
import { turned } from "./item.js";
import type { Between, Group, Item } from "./item.js";

const AT_HAND = yarnLength.declaration.inputs["mass"];

/** What the weft adds to a yarn; nothing where it is not woven with. */
function weftItems({ steps, warp, weft, length }: YarnPlan, own: (part: string) => string): readonly Item[] {
  const woven = sumOf(steps, weftLength, {
    ...{ name: own("weft"), label: "weft", reads: { wovenLength: "woven" } },
    answer: inUnit(weft, unitOf(warp) as never),
  });
  if (woven.length === 0) return [];
  const words = "warp + weft";
  const formula = `=${own("warp")}+${own("weft")}`;
  return [
    ...woven,
    { what: "between", name: own("length"), label: "warp and weft", words, formula, noun: "", answer: length },
  ];
}

/** What has to be bought, everything counted in the unit of the yarn on hand. */
function buyingItems(yarn: YarnPlan, own: (part: string) => string): readonly Item[] {
  const { steps, mass, missing, onHand, packages, packageMass } = yarn;
  const unit = unitOf(onHand);
  const [needed, have] = [own("mass"), own("on_hand")];
  const bought = turned(own("package_mass"), unitOf(packageMass), unit);
  const between = (part: string, label: string, words: string, formula: string, answer: YarnPlan["mass"]): Between => ({
    ...{ what: "between", name: own(part), label, words, formula, noun: "" },
    answer: inUnit(answer, unit as never),
  });
  if (AT_HAND === undefined) throw new RangeError("no mass at hand");
  const weighed = [yarnMass, yarnMassDirect].flatMap((calculation) =>
    sumOf(steps, calculation as unknown as AnyCalculation, {
      ...{ name: needed, label: "weighs", answer: inUnit(mass, unit as never) },
      reads: {
        length: own(
          steps.some(({ calculation: { declaration } }) => declaration.name === "weftLength") ? "length" : "warp",
        ),
        count: own("count"),
      },
    }),
  );
  return [
    ...weighed,
    { what: "stated", name: have, label: "on hand", input: AT_HAND, value: onHand },
    between(
      "missing",
      "missing",
      "what it weighs − what is on hand, where that is less",
      `=IF(${needed}>${have},${needed}-${have},0)`,
      missing,
    ),
    ...sumOf(steps, packagesToBuy, {
      ...{ name: own("packages"), label: "packages to buy", answer: packages },
      reads: { needed: own("missing"), packageMass: own("package_mass") },
    }),
    between(
      "spare",
      "left over",
      "packages × package + on hand − what it weighs",
      `=${own("packages")}*${bought}+${have}-${needed}`,
      yarn.spare,
    ),
  ];
}

/** One yarn, from its ends to what is left over. */
export function yarnGroup(plan: WarpPlan, yarn: YarnPlan, number: number): Group {
  const own = (part: string): string => `yarn${String(number)}_${part}`;
  const { name, extraEnds, warp } = yarn;
  const ends = yarn.ends + extraEnds;
  const [beside, plus] =
    extraEnds === 0 ? ["", ""] : [`, and ${String(extraEnds)} beside the warp`, `+${String(extraEnds)}`];
  const wound = { ends, warpLength: inUnit(plan.warpLength, unitOf(warp) as never) };
  return {
    heading: name,
    items: [
      {
        ...{ what: "between", name: own("ends"), label: "ends", noun: "ends", answer: ends },
        ...{
          words: `the ends of its stripes${beside}`,
          formula: `=SUMPRODUCT((stripe_yarns=${String(number)})*stripe_ends)${plus}`,
        },
      },
      {
        ...{ what: "sum", name: own("warp"), label: "warp", calculation: yarnForEnds as unknown as AnyCalculation },
        ...{ input: wound, reads: { ends: own("ends") }, answer: warp },
      },
      ...weftItems(yarn, own),
      ...buyingItems(yarn, own),
    ],
  };
}
