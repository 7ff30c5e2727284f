import type { CheckedSum, Stated } from "./checked-sums.js";
import { figureKinds } from "./figures.js";
import type { FigureName } from "./figures.js";
import type { Reconciliation } from "./reconcile.js";
import type { Rounding, SumConvention, WayOfReckoning } from "./relations.js";
import type { SingleChange } from "./single-changes.js";
import type { Amount, StatedFigure } from "./stated-figure.js";

const MOST = 3;
/** More figures than a page prints, fewer than a fraction has. */
const FIGURES = 6;

const CONVENTIONS: Readonly<Record<SumConvention, string>> = {
  "adding rule": "what is lost is added to the finished size, not divided out of it",
  "hem once": "a piece is given one hem, not two",
  "pairs counted as ends": "what is called an end is a pair of threads",
  "edge ends left out": "the extra ends at the edges are not in the total",
  "waste with every piece": "the loom waste is counted with every piece",
  "weft taken equal to warp": "as much weft is taken as there is warp",
  "edge dents crammed": "the dent at each edge holds twice its ends",
  "places left empty": "places in the reed or in the heddles are left empty",
};

const ROUNDINGS: Readonly<Record<Rounding, string | null>> = {
  nearest: null,
  roundDown: "every figure is rounded down",
  roundUp: "every figure is rounded up",
  "in round numbers": "yarn is given in round numbers, to the nearest or the next ten or hundred",
};

const IMPOSSIBLE: Readonly<Record<NonNullable<StatedFigure["impossible"]>, string>> = {
  "all of it or more lost": "nothing loses the whole of itself",
  "no whole number": "these are counted whole",
};

function unitText(unit: StatedFigure["unit"] | undefined): string {
  if (unit === undefined || unit === "count") return "";
  return unit === "percent" ? " %" : ` ${unit.symbol}`;
}

function printedText(figure: FigureName, stated: Stated): string {
  const own = stated.get(figure);
  return `${own?.printed ?? ""}${unitText(own?.unit)}`;
}

function amountText(amount: Amount, figure: FigureName, stated: Stated): string {
  const number = typeof amount === "number" ? amount : Number(amount.value);
  return `${String(Number(number.toPrecision(FIGURES)))}${unitText(stated.get(figure)?.unit)}`;
}

function changeText({ figure, needed, shape }: SingleChange, stated: Stated): string {
  const how = shape === "none" ? "" : ` (${shape})`;
  const text = amountText(needed, figure, stated);
  return `${figureKinds[figure].says} were ${text} where ${printedText(figure, stated)} is printed${how}`;
}

function sumText({ figure, reckoned }: CheckedSum, stated: Stated): string {
  const own = printedText(figure, stated);
  return `${figureKinds[figure].says}: ${own} is printed, the other figures give ${amountText(reckoned, figure, stated)}`;
}

function wayText({ convention, rounding }: WayOfReckoning): string {
  const texts = [convention === null ? null : CONVENTIONS[convention], ROUNDINGS[rounding]];
  return texts.filter((one) => one !== null).join(" and ");
}

function listed(texts: readonly string[]): string {
  const more = texts.length > MOST ? `; or if one of ${String(texts.length - MOST)} more were another` : "";
  return `${texts.slice(0, MOST).join("; or if ")}${more}`;
}

function sentence(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
}

function room({ figure, reckoned, unsaid }: CheckedSum, stated: Stated): string {
  const least = amountText(reckoned, figure, stated);
  const names = unsaid.map((name) => figureKinds[name].says).join(", ");
  const own = printedText(figure, stated);
  return sentence(
    `${figureKinds[figure].says}: ${least} at least, ${own} is printed; the rest may be what the page does not state (${names})`,
  );
}

/** A finding in sentences: what does not agree, and what one change or one way of reckoning would make it agree. */
export function sentencesOf(
  { verdict, sums, ways, changes, impossible }: Omit<Reconciliation, "says">,
  stated: Stated,
): readonly string[] {
  const would =
    changes.length === 0 ? [] : [`All would agree if ${listed(changes.map((one) => changeText(one, stated)))}.`];
  if (verdict === "impossible figure") {
    const texts = impossible.map((name) => {
      const why = stated.get(name)?.impossible ?? "no whole number";
      return sentence(`${figureKinds[name].says} cannot be ${printedText(name, stated)}: ${IMPOSSIBLE[why]}`);
    });
    return [...texts, ...would];
  }
  const rooms = sums.filter(({ finding }) => finding === "leaves room").map((one) => room(one, stated));
  if (verdict === "too little stated") return ["Too little is stated for any sum to be closed.", ...rooms];
  if (verdict === "agrees") return ["All figures that can be checked agree.", ...rooms];
  const differs = sums.filter(({ finding }) => finding === "differs").map((one) => sentence(sumText(one, stated)));
  const agree = ways.length === 0 ? [] : [`All agree if ${listed(ways.map(wayText))}.`];
  const none = verdict === "not explained" ? ["No one figure and no one way of reckoning explains it."] : [];
  const open = ways.length + changes.length > 1 ? ["The page alone cannot tell which."] : [];
  return [...differs, ...agree, ...would, ...open, ...none];
}
