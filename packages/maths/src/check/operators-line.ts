import { parseLines, dimensionsOf } from "../engine/formula/index.js";
import { isPercent } from "../engine/quantity/index.js";
import { inWords } from "../engine/working/index.js";
import { handOf } from "./hand-of.js";
import { answerOf, joined, name, number, part, product } from "./hand.js";
import type { Hand } from "./hand.js";
import { worded } from "./reason.js";
import type { Reason, Scene } from "./reason.js";

/** The slips declared with a formula. */
export function tradeReasons(scene: Scene): readonly Reason[] {
  const { declared } = scene.run;
  return declared.slips.map(({ says, instead }): Reason => {
    const replaced = new Map(parseLines(instead).map((line) => [line.name, line]));
    const lines = declared.lines.map((one) => replaced.get(one.name) ?? one);
    const line = lines.find((one) => replaced.has(one.name))?.name ?? "";
    return { family: "trade", key: says, line, says: () => says, hand: scene.with(lines) };
  });
}

/** An answer that stops at a line, at a step within the last, or gives what stood in the question. */
export function stopReasons(scene: Scene): readonly Reason[] {
  const { declared } = scene.run;
  const reasons: Reason[] = [];
  const put = (key: string, says: () => string, hand: Hand, share = 1): void => {
    reasons.push({ family: "line", key, line: "", says, hand, share });
  };
  const kinds = dimensionsOf(declared);
  const last = declared.lines.at(-1)?.name ?? "";
  const percent = isPercent(scene.unit);
  for (const { name: line } of declared.lines.slice(0, -1)) {
    const own = scene.lineOf(line);
    const alike = String(kinds.get(line)) === String(kinds.get(last));
    const converted = alike
      ? handOf({ ...scene.run, declared: { ...declared, lines: upTo(declared.lines, line) } }, scene.unit).hand
      : own;
    put(`stops ${line}`, () => `stops at ${inWords(line)}`, converted);
    if (alike && !percent && converted !== own)
      put(`stops raw ${line}`, () => `stops at ${inWords(line)}, its unit not turned`, own, 0.5);
  }
  for (const [own, read] of scene.inputs) {
    if (read.what !== "quantity" && read.what !== "number") continue;
    const same =
      read.what === "number"
        ? scene.unit === null
        : read.unit.dimension === scene.unit?.dimension || (percent && scene.percents.has(own));
    if (same)
      put(
        `input ${own}`,
        () => `gives ${inWords(own)} for the answer`,
        percent ? product(part(name(own)), part(number(100))) : name(own),
        0.5,
      );
  }
  const { hand } = scene;
  for (const { hand: own } of scene.places.slice(1)) {
    if (!("parts" in own) || own.parts.length < 2 || own.parts.some(({ of }) => of.op === "number" && of.value === 1))
      continue;
    put(`inner ${JSON.stringify(own)}`, () => `stops at what ${worded(scene, own)} give`, own, 0.3);
    if (percent)
      put(
        `inner % ${JSON.stringify(own)}`,
        () => `gives ${worded(scene, own)} as the per cent`,
        product(part(own), part(number(100))),
        0.3,
      );
  }
  if (hand.op === "product")
    for (let most = 2; most < hand.parts.length - 1; most += 1)
      put(
        `prefix ${String(most)}`,
        () => `stops before ${worded(scene, hand.parts[most]?.of ?? hand)}`,
        joined("product", hand.parts.slice(0, most)),
        0.3,
      );
  return reasons;
}

function upTo(lines: Scene["run"]["declared"]["lines"], line: string): Scene["run"]["declared"]["lines"] {
  return lines.slice(0, lines.findIndex(({ name: own }) => own === line) + 1);
}

const STEPS = [10, 1, 0.5, 0.1] as const;
const WAYS = ["round", "floor", "ceil"] as const;
const WORDS = { round: "", floor: " down", ceil: " up" } as const;

/** A line brought to a round number before the sum went on. */
export function earlyReasons(scene: Scene): readonly Reason[] {
  const { declared } = scene.run;
  return declared.lines.slice(0, -1).flatMap(({ name: line }) => {
    const size = Math.abs(answerOf(scene.lineOf(line), scene.values));
    return STEPS.flatMap((step) => {
      if (step > size / 2 || step < size / 2000) return [];
      const own = answerOf(scene.lineOf(line), scene.values) / step;
      const ways = WAYS.filter((way) => way === "round" || Math[way](own) !== Math.round(own));
      return ways.map((way): Reason => ({
        family: "early",
        key: `${line} ${String(step)} ${way}`,
        line,
        share: way === "round" ? 1 : 0.5,
        says: () =>
          `rounds ${inWords(line)}${WORDS[way]} to ${step === 1 ? "a whole number" : step === 0.5 ? "a half" : `a full ${String(step)}`} first`,
        hand: scene.with(declared.lines, (own, hand) => (own === line ? { op: "step", step, way, of: hand } : hand)),
      }));
    });
  });
}
