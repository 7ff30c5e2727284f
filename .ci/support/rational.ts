// A second, tiny evaluator of the declared formulas in whole-number fractions, to hold the first against.
import type { Declared, Quantity, Unit } from "@thrum/maths";
import { unitOf } from "./inputs.js";

export type Fraction = readonly [over: bigint, under: bigint];
type Value = Fraction | readonly Fraction[];
type Tree = Declared["lines"][number]["tree"];

/** A division by nothing. */
export class NoValue extends Error {}

function fraction(over: bigint, under: bigint): Fraction {
  if (under === 0n) throw new NoValue();
  let [a, b] = [over < 0n ? -over : over, under < 0n ? -under : under];
  while (b > 0n) [a, b] = [b, a % b];
  const sign = under < 0n ? -1n : 1n;
  return a === 0n ? [0n, 1n] : [(sign * over) / a, (sign * under) / a];
}

/** Decimal text such as "-12.5" as a fraction. */
export function fractionFrom(text: string): Fraction {
  const [, sign = "", whole = "", part = ""] = /^(-?)(\d+)(?:\.(\d+))?$/u.exec(text) ?? [];
  if (whole === "") throw new RangeError(`${text} is no decimal number`);
  return fraction(BigInt(`${sign}${whole}${part}`), 10n ** BigInt(part.length));
}

function floor([over, under]: Fraction): bigint {
  return over >= 0n ? over / under : -((-over + under - 1n) / under);
}

const BINARY: Readonly<Record<"+" | "−" | "×" | "÷", (a: Fraction, b: Fraction) => Fraction>> = {
  "+": ([a, b], [c, d]) => fraction(a * d + c * b, b * d),
  "−": ([a, b], [c, d]) => fraction(a * d - c * b, b * d),
  "×": ([a, b], [c, d]) => fraction(a * c, b * d),
  "÷": ([a, b], [c, d]) => fraction(a * d, b * c),
};

const ROUNDING = {
  roundUp: ([over, under]: Fraction): Fraction => [-floor([-over, under]), 1n],
  roundDown: (x: Fraction): Fraction => [floor(x), 1n],
  nearest: ([over, under]: Fraction): Fraction => [floor([2n * over + under, 2n * under]), 1n],
  orNothing: ([over, under]: Fraction): Fraction => (over < 0n ? [0n, 1n] : [over, under]),
} as const;

const FORTY_PLACES = 10n ** 40n;

/** Newton's steps down to the whole number whose square is not above `of`. */
function wholeRoot(of: bigint): bigint {
  if (of < 2n) return of;
  let root = 1n << BigInt(Math.ceil(of.toString(2).length / 2));
  for (;;) {
    const next = (root + of / root) / 2n;
    if (next >= root) return root;
    root = next;
  }
}

/** No fraction, but for squares: down to the fortieth place. */
function root([over, under]: Fraction): Fraction {
  if (over < 0n) throw new NoValue();
  return fraction(wholeRoot(over * under * FORTY_PLACES ** 2n), under * FORTY_PLACES);
}

function isList(value: Value): value is readonly Fraction[] {
  return value.length === 0 || Array.isArray(value[0]);
}

function valueOf(tree: Tree, known: ReadonlyMap<string, Value>): Value {
  if (tree.op === "number") return fractionFrom(tree.text);
  if (tree.op === "name") {
    const value = known.get(tree.name);
    if (value === undefined) throw new ReferenceError(tree.name);
    return value;
  }
  if ("of" in tree) {
    const inside = valueOf(tree.of, known);
    if (tree.op === "Σ") return isList(inside) ? inside.reduce(BINARY["+"], [0n, 1n]) : inside;
    const round = tree.op === "√" ? root : ROUNDING[tree.op];
    return isList(inside) ? inside.map(round) : round(inside);
  }
  const [a, b] = [valueOf(tree.left, known), valueOf(tree.right, known)];
  const apply = BINARY[tree.op];
  if (isList(a)) return a.map((one, at) => apply(one, isList(b) ? (b[at] ?? fraction(0n, 0n)) : b));
  return isList(b) ? b.map((one) => apply(a, one)) : apply(a, b);
}

/** An amount in metres, grams or what follows from them. */
export function inBase(quantity: Quantity<string>): Fraction {
  const [over, under] = unitOf(quantity).scale;
  return BINARY["×"](fractionFrom(quantity.value), [BigInt(over), BigInt(under)]);
}

function isFraction(value: unknown): value is Fraction {
  return Array.isArray(value) && value.length === 2 && value.every((one) => typeof one === "bigint");
}

function numberFrom(value: unknown): Fraction {
  if (isFraction(value)) return value;
  if (Array.isArray(value)) throw new RangeError("a list within a list");
  return typeof value === "number" ? fractionFrom(String(value)) : inBase(value as Quantity<string>);
}

/** What one of the unit that a rule of thumb reckons in is of base units; one where it names none. */
function reckoned(
  { reckonedIn }: Declared["result"],
  value: unknown,
  input: Readonly<Record<string, unknown>>,
): Fraction {
  if (reckonedIn === undefined) return [1n, 1n];
  const { dimension } = Object(value) as { readonly dimension?: string };
  const named = typeof reckonedIn === "string" ? [input[reckonedIn] as Unit<string>] : reckonedIn;
  const unit = named.find((one) => one.dimension === dimension) ?? named[0];
  return unit === undefined ? [1n, 1n] : [BigInt(unit.scale[0]), BigInt(unit.scale[1])];
}

/** Every line of a formula in base units, of inputs that may be fractions already; a line whose value is nothing throws NoValue. */
export function linesInFractions(
  { inputs, lines, result }: Declared,
  input: Readonly<Record<string, unknown>>,
): ReadonlyMap<string, Value> {
  const known = new Map<string, Value>();
  for (const [name, declared] of Object.entries(inputs)) {
    const value = input[name];
    if (declared.what === "unit") {
      const { of } = value as {
        of: Readonly<Record<"length" | "mass", readonly [number, { scale: readonly number[] }]>>;
      };
      for (const part of ["length", "mass"] as const) {
        const [amount, { scale }] = of[part];
        known.set(`${name}.${part}`, fraction(BigInt(amount) * BigInt(scale[0] ?? 0), BigInt(scale[1] ?? 0)));
      }
    } else if (Array.isArray(value) && !isFraction(value)) known.set(name, value.map(numberFrom));
    else known.set(name, BINARY["÷"](numberFrom(value), reckoned(declared, value, input)));
  }
  for (const { name, tree } of lines) known.set(name, valueOf(tree, known));
  const last = lines.at(-1)?.name ?? "";
  const answer = known.get(last);
  if (answer !== undefined && !isList(answer)) known.set(last, BINARY["×"](answer, reckoned(result, null, input)));
  return known;
}

/** How far two fractions are apart, as a part of the first. */
export function apart(a: Fraction, b: Fraction): number {
  if (a[0] * b[1] === b[0] * a[1]) return 0;
  const [over, under] = BINARY["−"](a, b);
  const [x, y] = a[0] === 0n ? [over, under] : BINARY["÷"]([over, under], a);
  const size = x < 0n ? -x : x;
  return 10 ** (String(size).length - String(y).length + 1);
}
