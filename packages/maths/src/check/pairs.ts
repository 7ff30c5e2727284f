import type { Told } from "../engine/working/index.js";
import { cellOf } from "./plain-slip.js";
import { others, told, valueOf, weighed } from "./evidence.js";
import type { Weighed } from "./evidence.js";
import { handIn } from "./reason.js";
import type { Scene } from "./reason.js";
import { reasonsOf, sceneWith } from "./reasons.js";
import { ALIKE } from "./tolerances.js";

/** Two things done wrong that give the claim together, and neither of them alone. */
export interface FoundPair {
  readonly slips: readonly [first: string, second: string];
  /** What the sum with both comes to, in the unit of the claim. */
  readonly value: string;
}

/** The pairs that give a claim; `says` tells them in sentences, with how many fit. */
export interface FoundPairs extends Told {
  /** The likeliest first, at most a dozen. */
  readonly pairs: readonly FoundPair[];
  /** How many pairs give the claim at the digits written: the more, the less any of them tells. */
  readonly fitting: number;
}

const LISTED = 12;
/** As many as are told at once: more than these fit by chance. */
const FEW = 3;
/** First members of a pair, the likeliest; a second may be any. */
const FIRSTS = 80;

function sentencesOf(pairs: readonly FoundPair[], fitting: number): readonly string[] {
  if (fitting === 0) return ["No pair of known slips gives this."];
  const listed = fitting > pairs.length ? `the ${String(pairs.length)} likeliest are listed` : "the likeliest first";
  const head =
    fitting <= FEW
      ? `${fitting === 1 ? "One pair" : `${String(fitting)} pairs`} of known slips would give this; two plain slips of arithmetic could as well.`
      : `${String(fitting)} pairs of known slips give this, ${listed}. Many fit by chance: ask for the working.`;
  return [head, ...pairs.map(({ slips: [first, second] }) => `A sum that ${first}, and ${second}, would give this.`)];
}

interface Pair {
  readonly first: Weighed;
  readonly second: Weighed;
  readonly value: number;
}

/** The likeliest single slips, each sum once. */
function firsts(scene: Scene, all: readonly Weighed[]): readonly Weighed[] {
  return [...told(scene, all)].slice(0, FIRSTS);
}

export const NO_PAIRS: FoundPairs = { pairs: [], fitting: 0, says: sentencesOf([], 0) };

/**
 * The pairs of known slips that give a wrong claim together, where neither does alone. Many pairs fit any number by chance: ask
 * only where no slip is named, and believe them only where few fit.
 */
export function pairsOf(
  scene: Scene,
  all: readonly Weighed[],
  { exact, step, claimed }: Readonly<Record<"exact" | "step" | "claimed", number>>,
): FoundPairs {
  const target = cellOf(claimed, step);
  const alone = new Set(all.filter(({ value }) => cellOf(value, step) === target).map(({ reason }) => reason.says()));
  const pairs = new Map<string, Pair>();
  const met = new Set<string>();
  for (const first of firsts(scene, all)) {
    const { taken } = first.reason;
    const hand = handIn(first.reason);
    const values = taken?.(scene.values) ?? scene.values;
    if (alone.has(first.reason.says())) continue;
    const after = sceneWith({ ...scene, hand, values, with: () => hand });
    for (const second of weighed(after, reasonsOf(after), first.value)) {
      if (cellOf(second.value, step) !== target || second.reason.family === "trade") continue;
      const [a, b] = [first.reason.says(), second.reason.says()];
      if (a === b || alone.has(b) || Math.abs(valueOf(second.reason, values) - exact) < ALIKE * Math.abs(exact))
        continue;
      const both = [a, b].sort((x, y) => (x < y ? -1 : 1)).join("\n");
      if (met.has(both)) continue;
      met.add(both);
      const key = `${second.value.toPrecision(9)} ${valueOf(second.reason, others(values, 1)).toPrecision(9)}`;
      const before = pairs.get(key);
      const weight = first.weight * second.weight;
      if (before === undefined || before.first.weight * before.second.weight < weight)
        pairs.set(key, { first, second, value: second.value });
    }
  }
  const found = [...pairs.values()]
    .sort((a, b) => b.first.weight * b.second.weight - a.first.weight * a.second.weight)
    .slice(0, LISTED)
    .map(({ first, second, value }): FoundPair => ({
      slips: [first.reason.says(), second.reason.says()],
      value: String(Number(value.toPrecision(12))),
    }));
  return { pairs: found, fitting: pairs.size, says: sentencesOf(found, pairs.size) };
}
