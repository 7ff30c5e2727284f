import { dimensionsOf, namesIn, parseLines } from "../engine/formula/index.js";
import type { Declared, Input, Line } from "../engine/formula/index.js";
import { areUnitsOf, described } from "../engine/quantity/index.js";
import { inPlace, missingOr } from "../engine/refusal.js";
import type { FaultParams, FaultPath, Refusal, RefusalCode } from "../engine/refusal.js";

type Group = Readonly<Record<string, unknown>>;
type Tell = (
  path: FaultPath,
  code: RefusalCode,
  words: readonly [expected: string, value: unknown, remedy: string],
  params?: FaultParams,
) => void;

const FIELDS: readonly string[] = [
  ...["name", "inputs", "formula", "result", "source"],
  ...["atLeast", "resultIn", "toldIn", "forUse", "slips"],
];
const OF_A_SOURCE = ["key", "author", "title", "year", "place"];
const NAME = /^[a-z][A-Za-z0-9]{0,39}$/u;
const TAKEN: readonly string[] = ["roundUp", "roundDown", "nearest", "orNothing"];
const LONGEST = 2000;

const asGroup = (value: unknown): Group | null =>
  typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Group) : null;

function isInput(value: unknown): value is Input<unknown> {
  const { what, dimension, noun, meaning, range } = asGroup(value) ?? {};
  return [what, dimension, noun, meaning].every((text) => typeof text === "string") && asGroup(range) !== null;
}

function nameFault(tell: Tell, path: FaultPath, name: unknown): void {
  if (typeof name !== "string" || !NAME.test(name) || TAKEN.includes(name))
    tell(path, "unreadable", ["a name as of a variable", name, "Write it such as warpLength."]);
}

/** The inputs that are inputs; what is wrong with the others is told. */
function inputsIn(tell: Tell, value: unknown): Readonly<Record<string, Input<unknown>>> {
  const group = asGroup(value);
  if (group === null || Object.keys(group).length === 0)
    tell(["inputs"], "wrong-kind", ["an input or more, by name", value, "Write { length: positive(Length, …) }."]);
  return Object.fromEntries(
    Object.entries(group ?? {}).flatMap(([key, input]): [string, Input<unknown>][] => {
      nameFault(tell, ["inputs", key], key);
      if (isInput(input)) return [[key, input]];
      tell(["inputs", key], "wrong-kind", ["an input", input, "Make it with positive, atLeastZero, whole or loss."]);
      return [];
    }),
  );
}

/** The lines of the formula; none where it cannot be read, which is told. */
function linesIn(tell: Tell, formula: unknown): readonly Line[] {
  const remedy = "Write lines such as warp = length + waste, with + − × ÷ √ Σ and the named roundings.";
  if (typeof formula !== "string") tell(["formula"], "wrong-kind", ["a formula as text", formula, remedy]);
  else if (formula.length > LONGEST)
    tell(["formula"], "too-long", [`at most ${String(LONGEST)} characters`, formula, remedy], { atMost: LONGEST });
  else if (formula.trim() === "") tell(["formula"], "empty", ["a line or more", formula, remedy]);
  else {
    try {
      return parseLines(formula);
    } catch (error) {
      if (!(error instanceof SyntaxError)) throw error;
      tell(["formula"], "unreadable", ["a formula", formula, `${error.message}. ${remedy}`]);
    }
  }
  return [];
}

/** Every name is known where it stands, stands for one thing, and every input is used. */
function namesFaults(tell: Tell, lines: readonly Line[], inputs: readonly string[]): void {
  const known = new Set(inputs);
  const used = new Set<string>();
  for (const { name, tree } of lines) {
    for (const one of namesIn(tree).map((whole) => whole.split(".")[0] ?? "")) {
      used.add(one);
      if (known.has(one)) continue;
      const remedy = "Name an input, or a line above this one.";
      tell(["formula"], "unknown-word", ["names that are known", one, remedy], { candidates: [...known] });
    }
    nameFault(tell, ["formula"], name);
    if (known.has(name)) tell(["formula"], "ambiguous", ["a name for one thing", name, "Name the line differently."]);
    known.add(name);
  }
  for (const input of inputs)
    if (!used.has(input))
      tell(["inputs", input], "unknown-field", ["an input the formula uses", input, "Use it, or take it away."]);
}

/** A result that is neither a length nor a mass says in which unit it comes. */
function resultFaults(tell: Tell, given: Group, inputs: Readonly<Record<string, Input<unknown>>>): void {
  const { result, resultIn, toldIn } = given;
  if (!isInput(result)) {
    tell(["result"], "wrong-kind", ["what the answer is", result, "Make it with positive, atLeastZero or whole."]);
    return;
  }
  const { dimension, what } = result;
  const alike = Object.keys(inputs).filter((key) => inputs[key]?.dimension === dimension);
  const remedy = `Name an input of its kind, or give units of ${dimension}.`;
  if (typeof resultIn === "string") {
    if (!alike.includes(resultIn))
      tell(["resultIn"], "unknown-word", ["an input of the kind of the answer", resultIn, remedy], {
        candidates: alike,
      });
  } else if (resultIn !== undefined) {
    if (!areUnitsOf(dimension, resultIn)) tell(["resultIn"], "wrong-kind", [`units of ${dimension}`, resultIn, remedy]);
  } else if (what === "quantity" && dimension !== "length" && dimension !== "mass")
    tell(["resultIn"], "missing", [`a unit of ${dimension}`, resultIn, remedy], { candidates: alike });
  if (toldIn !== undefined && !(typeof toldIn === "string" && Object.hasOwn(inputs, toldIn)))
    tell(["toldIn"], "unknown-word", ["an input", toldIn, "Name one."], { candidates: Object.keys(inputs) });
}

/** Everything that is wrong with a declaration: what our own are held to by tests. */
export function declarationFaults(declaration: unknown): readonly Refusal[] {
  const faults: Refusal[] = [];
  const tell: Tell = (path, code, [expected, value, remedy], params) => {
    const fault = { code: missingOr(value, code), ...inPlace(["defineCalculation", ...path]) };
    faults.push({ ...fault, expected, received: described(value), remedy, ...(params && { params }) });
  };
  const given = asGroup(declaration);
  if (given === null) {
    tell([], "wrong-kind", ["a declaration", declaration, "Give name, inputs, formula, result and source."]);
    return faults;
  }
  nameFault(tell, ["name"], given["name"]);
  const inputs = inputsIn(tell, given["inputs"]);
  const lines = linesIn(tell, given["formula"]);
  namesFaults(tell, lines, Object.keys(inputs));
  resultFaults(tell, given, inputs);
  const source = asGroup(given["source"]);
  for (const field of OF_A_SOURCE)
    if (typeof source?.[field] !== "string" || source[field] === "")
      tell(["source", field], "wrong-kind", ["text", source?.[field], "Say where the rule is from, be it a notebook."]);
  for (const field of Object.keys(given))
    if (!FIELDS.includes(field))
      tell([field], "unknown-field", ["no such field", field, "Give name, inputs, formula, result and source."]);
  if (faults.length > 0) return faults;
  try {
    dimensionsOf({ ...given, inputs, lines } as unknown as Declared);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    tell(["formula"], "wrong-kind", ["lines whose dimensions balance", error.message, "Add like to like."]);
  }
  return faults;
}
