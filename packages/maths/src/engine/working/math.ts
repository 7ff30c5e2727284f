import { escaped } from "./escaped.js";
import { partsOf } from "./parts.js";
import type { Part } from "./parts.js";

const ELEMENT = { number: "mn", sign: "mo", words: "mtext" } as const;
const leaf = ({ what, text }: Part, gap = ""): string => `<${ELEMENT[what]}>${gap}${escaped(text)}</${ELEMENT[what]}>`;
const sign = (text: string): string => leaf({ what: "sign", text });
const row = (inside: string): string => `<mrow>${inside}</mrow>`;

/** A unit stands off its number: MathML sets neighbours without a space. */
const GAP = "\u00a0";

/** Longer lines are set as they stand: nobody reads them, and what brackets nest in them is bounded. */
const LONGEST = 400;

/** A piece of a line; `inside` is what a bracket holds: a fraction or a root needs no bracket of its own. */
interface Piece {
  readonly math: string;
  readonly inside?: string;
}

/** The pieces of a line read as a sum; null where they are none. */
function read(parts: readonly Part[]): string | null {
  let at = 0;
  const next = (...signs: readonly string[]): string | null => {
    const part = parts[at];
    if (part?.what !== "sign" || !signs.includes(part.text)) return null;
    at += 1;
    return part.text;
  };
  const atom = (): Piece | null => {
    const part = parts[at];
    if (part === undefined) return null;
    at += 1;
    const after = parts[at];
    if (part.what === "number") {
      if (after?.what !== "words") return { math: leaf(part) };
      at += 1;
      return { math: row(leaf(part) + leaf(after, GAP)) };
    }
    if (part.what === "words") {
      if (after?.text !== "(") return { math: leaf(part) };
      const of = atom();
      return of && { math: row(leaf(part) + of.math) };
    }
    if (part.text === "(") {
      const inside = list();
      return inside === null || next(")") === null ? null : { math: row(sign("(") + inside + sign(")")), inside };
    }
    const of = part.text === "√" || part.text === "Σ" ? atom() : null;
    if (of === null) return null;
    return { math: part.text === "√" ? `<msqrt>${of.inside ?? of.math}</msqrt>` : row(sign("Σ") + of.math) };
  };
  const product = (): string | null => {
    let left = atom();
    for (let by = next("×", "÷"); left !== null && by !== null; by = next("×", "÷")) {
      const right = atom();
      if (right === null) return null;
      const fraction = [left, right].map(({ math, inside }) => row(inside ?? math)).join("");
      left = { math: by === "÷" ? `<mfrac>${fraction}</mfrac>` : left.math + sign("×") + right.math };
    }
    return left?.math ?? null;
  };
  const chain = (one: () => string | null, first: string, ...signs: readonly string[]): string | null => {
    let math: string | null = first;
    for (let by: string | null = ""; by !== null && math !== null; by = next(...signs)) {
      const more = one();
      math = more === null ? null : math + (by === "" ? "" : sign(by)) + more;
    }
    return math;
  };
  const sum = (): string | null => chain(product, next("−") === null ? "" : sign("−"), "+", "−");
  const list = (): string | null => chain(sum, "", ",");
  const whole = list();
  return at === parts.length ? whole : null;
}

/** A line of a working as MathML: quotients as fractions; what is no sum is set as it stands. */
export function mathOf(text: string): string {
  const parts = partsOf(text);
  const plain = (): string => {
    const gap = (at: number): string => (parts[at]?.what === "words" && parts[at - 1]?.what === "number" ? GAP : "");
    return parts.map((part, at) => leaf(part, gap(at))).join("");
  };
  return (parts.length > LONGEST ? null : read(parts)) ?? plain();
}
