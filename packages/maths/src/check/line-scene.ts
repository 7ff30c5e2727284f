import { Decimal } from "../engine/numbers.js";
import type { Run, Value } from "../engine/formula/index.js";
import { weighed } from "./evidence.js";
import type { Weighed } from "./evidence.js";
import { handOf } from "./hand-of.js";
import type { Amount } from "./hand.js";
import type { Scene } from "./reason.js";
import { lineReasons, sceneWith } from "./reasons.js";
import { isPercent } from "../engine/quantity/index.js";

/** One line alone, the figures above it as written standing beside the question's own numbers. */
export function lineScene(run: Run, at: number, known: ReadonlyMap<string, Value>): Scene {
  const line = run.declared.lines[at];
  const declared = { ...run.declared, lines: line === undefined ? [] : [line], slips: [] };
  const worked = handOf({ ...run, declared }, null);
  const values = new Map<string, Amount>(worked.values);
  for (const { name } of run.declared.lines.slice(0, at)) {
    const value = known.get(name);
    if (value !== undefined)
      values.set(name, value instanceof Decimal ? value.toNumber() : value.map((one) => one.toNumber()));
  }
  const percents = new Set(
    [...run.inputs].flatMap(([name, read]) => (read.what === "quantity" && isPercent(read.unit) ? [name] : [])),
  );
  return sceneWith({ ...worked, values, inputs: run.inputs, percents });
}

/** The wrong sums of a line with their weights: fewer than a whole formula has, so fewer figures suffice. */
export function lineWeights(scene: Scene, exact: number): readonly Weighed[] {
  return weighed(scene, lineReasons(scene), exact);
}
