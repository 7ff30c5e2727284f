import { Decimal, decimalText } from "../numbers.js";
import { intoFrame } from "../formula/index.js";
import type { Read, Run, Value } from "../formula/index.js";
import { inWords } from "../working/index.js";
import { miscopied } from "./miscopied.js";
import { SIBLINGS } from "./sibling-units.js";

/** An input read as something else than stands there. */
export interface Misreading {
  readonly rank: number;
  readonly says: () => string;
  readonly values: ReadonlyMap<string, Value>;
}

type Scalar = Extract<Read, { readonly value: Decimal }>;

function inFrame({ frame }: Run, read: Scalar, value: Decimal): Decimal {
  return read.what === "quantity" ? intoFrame(frame, value, read.unit) : value;
}

function kindOf(worked: Run, name: string): string {
  const input = worked.declared.inputs[name];
  return input?.what === "whole" ? "whole" : (input?.dimension ?? "");
}

/** Whether a weaver could take one number for the other: two of a kind, or the count and the ply of a yarn. */
function exchangeable(a: string, b: string): boolean {
  return a === b || (a === "whole" && b === "length per mass") || (b === "whole" && a === "length per mass");
}

/** How many times larger an amount becomes when its unit is taken for the sibling. */
function mistaken([over, under]: readonly [number, number], [, n, d]: readonly [string, number, number]): Decimal {
  return new Decimal(n).times(under).div(new Decimal(d).times(over));
}

/** Whole numbers one off, digits miscopied, numbers taken for another unit, and the numbers of two inputs exchanged. */
export function misreadings(worked: Run): readonly Misreading[] {
  const scalars = [...worked.inputs].filter((entry): entry is [string, Scalar] => "value" in entry[1]);
  const found: Misreading[] = [];
  const put = (rank: number, says: () => string, changed: readonly (readonly [string, Decimal])[]): void => {
    found.push({ rank, says, values: new Map<string, Value>([...worked.values, ...changed]) });
  };
  scalars.forEach(([name, read], at) => {
    if (kindOf(worked, name) === "whole") {
      for (const [by, how] of [
        [-1, "few"],
        [1, "many"],
      ] as const)
        put(4, () => `takes one too ${how} of ${inWords(name)}`, [[name, read.value.plus(by)]]);
    }
    for (const [how, text] of miscopied(decimalText(read.value))) {
      const says = (): string => `takes ${text} for the ${decimalText(read.value)} of ${inWords(name)}, ${how},`;
      put(8, says, [[name, inFrame(worked, read, new Decimal(text))]]);
    }
    if (read.what === "quantity") {
      for (const sibling of SIBLINGS[read.unit.dimension] ?? []) {
        if (sibling[0] === read.unit.symbol) continue;
        const says = (): string => `takes the ${read.unit.symbol} of ${inWords(name)} for ${sibling[0]}`;
        put(4, says, [[name, inFrame(worked, read, read.value).times(mistaken(read.unit.scale, sibling))]]);
      }
    }
    for (const [other, second] of scalars.slice(at + 1)) {
      if (!exchangeable(kindOf(worked, name), kindOf(worked, other))) continue;
      const says = (): string => `exchanges ${inWords(name)} and ${inWords(other)}`;
      put(5, says, [
        [name, inFrame(worked, read, second.value)],
        [other, inFrame(worked, second, read.value)],
      ]);
    }
  });
  return found;
}
