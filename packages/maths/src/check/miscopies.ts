import { decimalText } from "../engine/numbers.js";
import { inWords } from "../engine/working/index.js";
import { number, part, product } from "./hand.js";
import type { Amounts, Hand } from "./hand.js";
import type { Reason, Scene } from "./reason.js";

const LOOK_ALIKE = ["38", "17", "60", "49", "56"];

/** A number as it is copied wrong, with how likely each kind is. */
export function miscopies(text: string): readonly (readonly [how: string, text: string, share: number])[] {
  const found: (readonly [string, string, number])[] = [];
  const digits = Array.from(text);
  for (const [at, one] of digits.entries()) {
    if (one === ".") continue;
    const put = (how: string, instead: string, share: number, length = 1): void => {
      const next = `${digits.slice(0, at).join("")}${instead}${digits.slice(at + length).join("")}`;
      if (
        next !== text &&
        /^(?:0|[1-9]\d*)(?:\.\d+)?$/u.test(next) &&
        Number(next) > 0 &&
        Number(next) !== Number(text)
      )
        found.push([how, next, share]);
    };
    const next = digits[at + 1];
    if (next !== undefined && next !== "." && next !== one) put("two figures changed over", `${next}${one}`, 15, 2);
    for (const pair of LOOK_ALIKE) if (pair.includes(one)) put("a figure misread", pair.replace(one, ""), 12);
    if (digits.length > 1) put("a figure lost", "", 8);
    put("a figure doubled", `${one}${one}`, 4);
  }
  return found;
}

/** An input copied wrong, or its point moved. */
export function copyReasons(scene: Scene): readonly Reason[] {
  return [...scene.inputs].flatMap(([own, read]) => {
    if (read.what !== "quantity" && read.what !== "number") return [];
    const text = decimalText(read.value);
    if (read.value.lte(0) || text.length > 8) return [];
    const percent = scene.percents.has(own);
    const made = (how: string, other: string, share: number): Reason => ({
      family: "copied",
      key: `${own} ${how} ${other}`,
      line: "",
      share,
      hand: scene.hand,
      says: () => `takes ${other} for the ${text} of ${inWords(own)}, ${how}`,
      taken: (values: Amounts) => new Map(values).set(own, Number(other) / (percent ? 100 : 1)),
    });
    const isWhole = scene.run.declared.inputs[own]?.what === "whole";
    const places = [10, 0.1].filter((by) => !isWhole || read.value.times(String(by)).isInteger());
    const point = places.map((by) => made("the point moved", decimalText(read.value.times(String(by))), 3));
    return [...miscopies(text).map(([how, other, share]) => made(how, other, share)), ...point];
  });
}

/** What is done wrong with an answer that was right. */
export function answerReasons({ hand, run }: Scene): readonly Reason[] {
  const made = (key: string, says: string, own: Hand, share = 1): Reason => ({
    family: "answer",
    key,
    line: "",
    says: () => says,
    hand: own,
    share,
  });
  const one = number(1);
  return [
    made("half", "halves the answer", product(part(hand), part(number(2), true))),
    made("double", "doubles the answer", product(part(hand), part(number(2)))),
    ...(run.unit === null && run.declared.result.what === "whole"
      ? []
      : [made("upside", "turns the answer upside down", product(part(one), part(hand, true)))]),
  ];
}
