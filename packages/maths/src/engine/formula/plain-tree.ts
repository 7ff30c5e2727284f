import { Decimal, decimalText } from "../numbers.js";
import { described, isUnit } from "../quantity/index.js";
import type { Unit } from "../quantity/index.js";
import { missingOr, refuse } from "../refusal.js";
import type { Place } from "../refusal.js";
import type { Declared } from "./declaration.js";
import { factorInto, frameOf, intoFrame } from "./frame.js";
import type { Frame } from "./frame.js";
import { fieldsOf } from "./read.js";
import type { Read } from "./read.js";
import { countedUnit, reckon } from "./reckoned.js";
import { folded, withNames } from "./tree.js";
import type { Tree } from "./tree.js";

type Fraction = readonly [over: Decimal, under: Decimal];

function lowest([over, under]: Fraction): Fraction {
  let [a, b] = [over, under];
  while (!b.isZero()) [a, b] = [b, a.mod(b)];
  return [over.div(a), under.div(a)];
}

/** A tree times a fraction, with nothing written where that is one. */
export function scaled(tree: Tree, fraction: Fraction): Tree {
  const [over, under] = lowest(fraction);
  const times: Tree = over.eq(1) ? tree : { op: "×", left: tree, right: { op: "number", text: decimalText(over) } };
  return under.eq(1) ? times : { op: "÷", left: times, right: { op: "number", text: decimalText(under) } };
}

function unitNeeded(where: Place, dimension: string, given: unknown, orDimension = dimension): Unit<string> {
  if (isUnit(given) && (given.dimension === dimension || given.dimension === orDimension)) return given;
  refuse(
    isUnit(given) ? "wrong-kind" : missingOr(given, "unknown-unit"),
    where,
    `a unit of ${dimension}`,
    described(given),
    "Every column and cell names the unit its numbers are in.",
    { kind: dimension },
  );
}

function refuseUnit(where: Place, given: unknown): never {
  const remedy = "Plain numbers stand in this column or cell: leave the unit out.";
  refuse("wrong-kind", where, "no unit", described(given), remedy);
}

function refuseUnknown({ name, inputs }: Declared, caller: string, field: string, given: unknown): never {
  refuse(
    "unknown-field",
    [caller, field],
    `only ${Object.keys(inputs).join(", ")}`,
    described(given),
    "Leave the field out, or correct its name.",
    { calculation: name, candidates: Object.keys(inputs) },
  );
}

/** A number of a unit's parts, in the frame, as text. */
function constant(frame: Frame, [amount, unit]: readonly [number, Unit<string>]): Tree {
  return { op: "number", text: decimalText(intoFrame(frame, new Decimal(amount), unit)) };
}

/** A formula over plain numbers: each input counted in the unit given for it, the answer in the unit wanted. */
interface PlainFormula {
  readonly frame: Frame;
  /** A tree of the formula with its inputs turned into the units of work; names of lines stay. */
  readonly inFrame: (tree: Tree) => Tree;
  /** How much of the unit wanted one of the last line is; null where the two are the same. */
  readonly answer: Fraction | null;
  /** One of each unit given, and what the formula reckons it in. */
  readonly reads: ReadonlyMap<string, Read>;
  /** The unit the last line counts in by itself; null where that is the frame. */
  readonly countedIn: Unit<string> | null;
}

/** The units of a formula whose inputs are plain numbers. */
export function plainFormula(
  declared: Declared,
  caller: string,
  units: Readonly<Record<string, unknown>>,
  wanted: Unit<string> | null,
): PlainFormula {
  const given = Object(units) as typeof units;
  for (const field of Object.keys(given)) {
    if (!Object.hasOwn(declared.inputs, field)) refuseUnknown(declared, caller, field, given[field]);
  }
  const reads = new Map<string, Read>();
  for (const [field, { dimension, orDimension, what, member }] of Object.entries(declared.inputs)) {
    const needsUnit = what === "quantity" || what === "unit" || member?.what === "quantity";
    if (!needsUnit) {
      if (given[field] !== undefined) refuseUnit([caller, field], given[field]);
      continue;
    }
    const unit = unitNeeded([caller, field], dimension, given[field], orDimension);
    const amount = { what: "quantity", value: new Decimal(1), unit, reckonedIn: null } as const;
    reads.set(field, what === "unit" ? { what, unit } : amount);
  }
  reckon(reads, fieldsOf(declared.inputs).reckoned);
  const frame = frameOf(reads, declared.result.dimension);
  const placed = (name: string): Tree | null => {
    const [field = "", part] = name.split(".");
    const read = reads.get(field);
    if (read?.what === "unit") {
      const parts = part === "length" ? read.unit.of?.length : read.unit.of?.mass;
      return parts ? constant(frame, parts) : null;
    }
    if (read?.what !== "quantity") return null;
    return scaled({ op: "name", name }, factorInto(frame, read.unit, read.reckonedIn));
  };
  const countedIn = countedUnit(declared, reads);
  return {
    frame,
    inFrame: (tree) => withNames(tree, placed),
    answer: answerFraction(declared, caller, countedIn, frame, wanted),
    reads,
    countedIn,
  };
}

function answerFraction(
  declared: Declared,
  caller: string,
  countedIn: Unit<string> | null,
  frame: Frame,
  wanted: Unit<string> | null,
): Fraction | null {
  if (declared.result.what !== "quantity") return null;
  const result = unitNeeded([caller, "unit"], declared.result.dimension, wanted);
  const [over, under] = factorInto(frame, result, countedIn);
  const fraction: Fraction = [under, over];
  return fraction[0].eq(fraction[1]) ? null : fraction;
}

/** The whole formula as one tree over plain numbers: spreadsheet cells and notebook columns are both written from it. */
export function plainTree(
  declared: Declared,
  caller: string,
  units: Readonly<Record<string, unknown>>,
  wanted: Unit<string> | null,
): Tree {
  const { inFrame, answer } = plainFormula(declared, caller, units, wanted);
  const tree = inFrame(folded(declared.lines));
  return answer === null ? tree : scaled(tree, answer);
}
