import { remembered } from "./places.js";
import { handOf } from "./hand-of.js";
import type { Run } from "../engine/formula/index.js";
import type { Unit } from "../engine/quantity/index.js";
import { answerReasons, copyReasons } from "./miscopies.js";
import { constantReasons, percentAnswers } from "./operators-constant.js";
import { factorReasons } from "./operators-factor.js";
import { countReasons, nameReasons } from "./operators-input.js";
import { earlyReasons, stopReasons, tradeReasons } from "./operators-line.js";
import { listReasons } from "./operators-list.js";
import { percentReasons } from "./operators-percent.js";
import { powerReasons, wholePowers } from "./operators-power.js";
import { reachReasons } from "./operators-reach.js";
import { termReasons } from "./operators-term.js";
import { unitReasons } from "./operators-unit.js";
import { placesOf } from "./places.js";
import type { Reason, Scene } from "./reason.js";
import { severalPercents } from "./several-percents.js";
import { isPercent } from "../engine/quantity/index.js";

/** The sum of a question written out as the hand works it, for the operators to look at. */
export function sceneOf(run: Run, unit: Unit<string> | null): Scene {
  const percents = new Set(
    [...run.inputs].flatMap(([name, read]) => {
      const one = read.what === "list" ? read.members[0] : read;
      return one?.what === "quantity" && isPercent(one.unit) ? [name] : [];
    }),
  );
  return sceneWith({ ...handOf(run, unit), inputs: run.inputs, percents });
}

/** A scene with its parts worked out. */
export function sceneWith(scene: Omit<Scene, "known" | "places">): Scene {
  const known = remembered(scene.hand, scene.values, new Map());
  const last = scene.run.declared.lines.at(-1)?.name ?? "";
  return { ...scene, known, places: placesOf(scene.hand, last, known) };
}

const AT_PLACES = [percentReasons, factorReasons, termReasons, reachReasons, powerReasons];
const AT_WHOLE = [
  tradeReasons,
  severalPercents,
  constantReasons,
  percentAnswers,
  wholePowers,
  nameReasons,
  countReasons,
  unitReasons,
  listReasons,
  stopReasons,
  earlyReasons,
  copyReasons,
  answerReasons,
];

/** Every wrong sum the operators make of a question. */
export function reasonsOf(scene: Scene): readonly Reason[] {
  return [
    ...AT_WHOLE.slice(0, 1).flatMap((operator) => operator(scene)),
    ...scene.places.flatMap((place) => AT_PLACES.flatMap((operator) => operator(scene, place))),
    ...AT_WHOLE.slice(1).flatMap((operator) => operator(scene)),
  ];
}

/** The wrong sums of one line by itself. */
export function lineReasons(scene: Scene): readonly Reason[] {
  const whole = [severalPercents, constantReasons, wholePowers, nameReasons, countReasons, unitReasons, copyReasons];
  return [
    ...scene.places.flatMap((place) => AT_PLACES.flatMap((operator) => operator(scene, place))),
    ...whole.flatMap((operator) => operator(scene)),
  ];
}
