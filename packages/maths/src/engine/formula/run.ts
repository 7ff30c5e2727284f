import { Decimal, EXACT_STEP, kept, onStep, PLAIN_STEP } from "../numbers.js";
import type { Unit } from "../quantity/index.js";
import { refuse } from "../refusal.js";
import type { Declared } from "./declaration.js";
import { stepsOf } from "./evaluate.js";
import type { Step, Value } from "./evaluate.js";
import { frameOf, intoFrame, outOfFrame } from "./frame.js";
import type { Frame } from "./frame.js";
import { outside } from "./outside.js";
import { fieldsOf, readInputs } from "./read.js";
import type { Read } from "./read.js";
import { countedUnit } from "./reckoned.js";
import type { Tree } from "./tree.js";

/** One formula worked through once: the answer and its working are both read from this. */
export interface Run {
  readonly declared: Declared;
  readonly inputs: ReadonlyMap<string, Read>;
  readonly frame: Frame;
  readonly values: ReadonlyMap<string, Value>;
  readonly nearness: string;
  readonly steps: readonly Step[];
  /** The answer in `unit`; a plain number where that is null. */
  readonly value: Decimal;
  readonly unit: Unit<string> | null;
  /** The unit the last line counts in by itself, as a number of hanks to the pound does; null where that is the frame. */
  readonly countedIn: Unit<string> | null;
}

function valuesIn(frame: Frame, inputs: ReadonlyMap<string, Read>): Map<string, Value> {
  const values = new Map<string, Value>();
  const one = (read: Read): Decimal | null => {
    if (read.what === "number") return read.value;
    return read.what === "quantity" ? intoFrame(frame, read.value, read.unit, read.reckonedIn) : null;
  };
  for (const [name, read] of inputs) {
    if (read.what === "list")
      values.set(
        name,
        read.members.map(one).filter((x) => x !== null),
      );
    else if (read.what === "unit") {
      for (const part of ["length", "mass"] as const) {
        const [amount, unit] = read.unit.of?.[part] ?? [];
        if (amount !== undefined && unit !== undefined)
          values.set(`${name}.${part}`, intoFrame(frame, new Decimal(amount), unit));
      }
    } else values.set(name, one(read) ?? []);
  }
  return values;
}

/** The unit of the answer: the one asked for, that of the input named, or the frame's own. */
function resultUnit(
  { result, resultIn }: Declared,
  inputs: ReadonlyMap<string, Read>,
  frame: Frame,
): Unit<string> | null {
  if (result.what !== "quantity") return null;
  if (typeof resultIn === "string") {
    const read = inputs.get(resultIn);
    const first = read?.what === "list" ? read.members[0] : read;
    return first !== undefined && "unit" in first ? first.unit : null;
  }
  if (resultIn !== null) {
    const fits = (unit: Unit<string>): boolean =>
      unit.of?.length?.[1].name === frame.length?.name && unit.of?.mass?.[1].name === frame.mass?.name;
    return resultIn.find(fits) ?? resultIn[0] ?? null;
  }
  if (result.reckonedIn !== undefined) return null;
  return result.dimension === "mass" ? frame.mass : frame.length;
}

function noAnswer({ name }: Declared, expected: string, received: string): never {
  const remedy = "These inputs together give no such thing: look at each of them once more.";
  refuse("no-answer", [name], expected, received, remedy);
}

/** Whether a difference is taken anywhere: without one nothing leaves a residue beside nothing. */
function subtracts(tree: Tree): boolean {
  if (tree.op === "name" || tree.op === "number") return false;
  return "of" in tree ? subtracts(tree.of) : tree.op === "−" || subtracts(tree.left) || subtracts(tree.right);
}

/** A residue of division at a bound of the result is on the bound. */
function settled(declared: Declared, value: Decimal, nearness: string): Decimal {
  const { atLeast, above, below, atMost } = declared.result.range;
  for (const bound of [atLeast, above, below, atMost ?? null]) {
    // One or more is not near zero, the bound of nearly every result.
    if (bound === null || (bound === 0 && value.e >= 0)) continue;
    const whole = onStep(value, nearness);
    if (whole?.eq(bound) !== true) continue;
    if (bound !== 0 || declared.lines.some(({ tree }) => subtracts(tree))) return whole;
  }
  return kept(value);
}

/** Works a formula through. */
export function run(declared: Declared, given: unknown): Run {
  const inputs = readInputs(declared.name, declared.inputs, given, "together");
  const { what, noun, range } = declared.result;
  const frame = frameOf(inputs, declared.result.dimension);
  const values = valuesIn(frame, inputs);
  const nearness = fieldsOf(declared.inputs).hasPlain ? PLAIN_STEP : EXACT_STEP;
  const { steps, failed } = stepsOf(declared.lines, values, nearness);
  const last = steps.at(-1)?.value;
  if (failed !== null || last === undefined || Array.isArray(last)) {
    return noAnswer(declared, `a finite value for ${noun}`, `nothing at the line ${failed ?? "asked for"}`);
  }
  for (const [name, least] of Object.entries(declared.atLeast)) {
    const value = steps.find((step) => step.name === name)?.value;
    if (value instanceof Decimal && value.lt(least)) {
      return noAnswer(declared, `${name} of ${String(least)} or more for ${noun}`, String(value));
    }
  }
  const countedIn = countedUnit(declared, inputs);
  const unit = resultUnit(declared, inputs, frame) ?? countedIn;
  const inFrame = last as Decimal;
  const value = settled(declared, unit === null ? inFrame : outOfFrame(frame, inFrame, unit, countedIn), nearness);
  if (what === "whole" && onStep(value, nearness) === null) {
    return noAnswer(declared, `a whole number of ${noun}`, value.toSignificantDigits(10).toString());
  }
  const wrong = outside(value, unit, range);
  if (wrong !== null) {
    const expected = what === "whole" ? `a whole number of ${noun}, ${wrong}` : `${noun} of ${wrong}`;
    return noAnswer(declared, expected, value.toSignificantDigits(10).toString());
  }
  return { declared, inputs, frame, values, nearness, steps, value, unit, countedIn };
}
