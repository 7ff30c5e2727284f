import { calculation, countsInUnit, declarationOf, formulaStyle, treeText, withNames } from "../formula/index.js";
import type { Calculation, Declared, Input, Line, Tree } from "../formula/index.js";
import type { Rounding } from "../numbers.js";
import { described, powersOf } from "../quantity/index.js";
import type { Quantity, Unit } from "../quantity/index.js";
import { refuse } from "../refusal.js";
import { rearrangement } from "./rearrangement.js";

/** How the answer of a formula turned round is given. */
export interface Turned<Q> {
  /** Where a whole number of things is asked for. */
  readonly rounding?: Rounding;
  /** The unit of an answer that is no length or mass, where no input has one of its kind. */
  readonly in?: Q extends Quantity<infer D> ? Unit<D> : never;
}

/** The inputs of a formula turned round: the answer goes in, the input asked for comes out. */
export type TurnedInput<I, K extends keyof I, A extends string, R> = {
  readonly [F in Exclude<keyof I, K> | A]: F extends keyof I ? I[F] : R;
};

const ROUNDINGS: readonly string[] = ["roundUp", "roundDown", "nearest"] satisfies Rounding[];

/** The answer as the last line counts it: a count in its unit, where the formula works in hanks to the pound. */
function answerAsCounted(declared: Declared, answer: string): Tree {
  const name: Tree = { op: "name", name: answer };
  const { result, resultIn } = declared;
  if (result.reckonedIn !== undefined || !countsInUnit(declared) || typeof resultIn !== "string") return name;
  const [length, mass] = powersOf(result.dimension);
  const part = (of: string): Tree => ({ op: "name", name: `${resultIn}.${of}` });
  const by = (tree: Tree, power: number, of: string): Tree =>
    power === 0 ? tree : { op: power > 0 ? "÷" : "×", left: tree, right: part(of) };
  return by(by(name, length, "length"), mass, "mass");
}

function linesOf(declared: Declared, wanted: string, answer: string): readonly Line[] {
  const found = rearrangement(declared, wanted);
  const inputs = Object.keys(declared.inputs);
  if (!inputs.includes(wanted)) {
    const remedy = "Name one of the inputs.";
    return refuse("unknown-field", ["solveFor", "wanted"], inputs.join(" or "), described(wanted), remedy, {
      candidates: inputs,
    });
  }
  if (!found.ok) {
    const remedy = "Ask for another input.";
    return refuse("no-answer", ["solveFor", "wanted"], "an input that the answer settles", found.why, remedy);
  }
  if (found.answer !== answer) {
    const remedy = "The third word is the name of the formula's last line, under which its answer now goes in.";
    const expected = `the answer by its name, "${found.answer}"`;
    return refuse("unknown-word", ["solveFor", "answer"], expected, described(answer), remedy, {
      candidates: [found.answer],
    });
  }
  const given = answerAsCounted(declared, answer);
  return found.lines.map(({ name, tree }) => ({
    name,
    tree: withNames(tree, (used) => (used === answer ? given : null)),
  }));
}

/** The unit of the answer: that of an input of its kind, or the one asked for; a length or a mass needs neither. */
function unitFor(
  wanted: Input<unknown>,
  inputs: Readonly<Record<string, Input<unknown>>>,
  unit: Unit<string> | undefined,
): string | readonly Unit<string>[] | undefined {
  const { dimension, orDimension = dimension, reckonedIn } = wanted;
  if (unit !== undefined) {
    if (wanted.what === "quantity" && [dimension, orDimension].includes(unit.dimension)) return [unit];
    const remedy = "Leave the unit out, or give one of the input's kind.";
    return refuse("wrong-kind", ["solveFor", "in"], `a unit for ${wanted.noun}`, unit.name, remedy);
  }
  if (wanted.what !== "quantity" || ["length", "mass"].includes(dimension)) return undefined;
  if (typeof reckonedIn === "string") return reckonedIn;
  if (reckonedIn !== undefined && dimension === orDimension) return undefined;
  const alike = Object.entries(inputs).find(
    ([, { what, dimension }]) => what === "quantity" && dimension === wanted.dimension,
  );
  if (alike !== undefined) return alike[0];
  const example = wanted.example.slice(0, wanted.example.lastIndexOf("("));
  const remedy = `Name it: solveFor(…, { in: ${example} }).`;
  return refuse("missing", ["solveFor", "in"], `a unit for ${wanted.noun}`, "nothing", remedy);
}

/**
 * A formula turned round: solved for one of its inputs, and again a calculation, with working, check, cell and columns.
 *
 * @param formula any calculation of the handbook
 * @param wanted the input to work out
 * @param answer the name of the formula's last line, under which its answer goes in
 * @param turned how a whole number is rounded, and the unit of an answer whose kind no input has
 * @throws QuantityError "no-answer" with the reason under a rounding, for a list or a unit
 * @example solveFor(warpLength, "pieces", "warp", { rounding: "roundDown" }).declaration.name // "piecesFromWarp"
 */
export function solveFor<I, R, K extends keyof I & string, A extends string>(
  formula: Calculation<I, R>,
  wanted: K,
  answer: A,
  turned: Turned<I[K]> = {},
): Calculation<TurnedInput<I, K, A, R>, I[K]> {
  const declared = declarationOf("solveFor", formula);
  const lines = linesOf(declared, wanted, answer);
  // What is no input has been refused with the lines.
  const input = declared.inputs[wanted] ?? declared.result;
  const { rounding, in: unit } = Object(turned) as Turned<I[K]>;
  if (rounding !== undefined && !ROUNDINGS.includes(rounding)) {
    const [expected, remedy] = ['"roundUp", "roundDown" or "nearest"', "Say which way to round."];
    const params = { candidates: ROUNDINGS };
    return refuse("unknown-word", ["solveFor", "rounding"], expected, described(rounding), remedy, params);
  }
  if ((input.what === "whole") !== (rounding !== undefined)) {
    const [expected, received] = rounding === undefined ? ["how to round", "nothing"] : ["no rounding", rounding];
    const remedy = 'A number of things is rounded: solveFor(…, { rounding: "roundDown" }); nothing else is.';
    const code = rounding === undefined ? "missing" : "unknown-field";
    return refuse(code, ["solveFor", "rounding"], `${expected} for ${input.noun}`, received, remedy);
  }
  const inputs = Object.fromEntries(
    Object.entries(declared.inputs).map(([field, one]) =>
      field === wanted ? [answer, declared.result] : [field, one],
    ),
  );
  const resultIn = unitFor(input, inputs, unit);
  const style = formulaStyle((name) => name);
  const texts = lines.map(({ name, tree }) => [
    name === wanted && rounding ? "unrounded" : name,
    treeText(tree, style),
  ]);
  if (rounding) texts.push([wanted, `${rounding}(unrounded)`]);
  return calculation<TurnedInput<I, K, A, R>, I[K]>(() => ({
    name: `${wanted}From${answer.charAt(0).toUpperCase()}${answer.slice(1)}`,
    inputs: inputs as never,
    formula: texts.map((line) => line.join(" = ")).join("\n"),
    result: input as Input<I[K]>,
    ...(resultIn === undefined ? {} : { resultIn: resultIn as never }),
    source: declared.source,
  }));
}
