import { Decimal } from "../engine/numbers.js";
import { miscopies } from "./miscopies.js";

/** What is true of a wrong number whatever was done: it accuses nobody. */
export interface Fact {
  readonly key: "point" | "figures" | "figure" | "round" | "size";
  readonly says: string;
}

const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];
const COUNTS = ["", "one place", "two places", "three places", "four places"];

function point(claimed: Decimal, exact: Decimal, step: Decimal): Fact | null {
  for (const places of [1, -1, 2, -2, 3, -3, 4, -4]) {
    const moved = exact.times(new Decimal(10).pow(places));
    const isSame = claimed.minus(moved).abs().lte(step.div(2)) && moved.gt(step.times(4));
    if (!isSame) continue;
    const side = places > 0 ? "right" : "left";
    return {
      key: "point",
      says: `the figures are right, the point is ${String(COUNTS[Math.abs(places)])} too far to the ${side}`,
    };
  }
  return null;
}

function figures(claim: string, answer: string): Fact | null {
  if (claim.length === answer.length) {
    const off = Array.from(claim).flatMap((one, at) => (one === answer[at] ? [] : [at]));
    const [at = 0, next] = off;
    if (off.length === 2 && next === at + 1 && claim[at] === answer[next] && claim[next] === answer[at])
      return { key: "figures", says: `the figures ${answer.slice(at, at + 2)} are changed over` };
    if (off.length === 1) {
      const place = Array.from(claim.slice(0, at)).filter((one) => /\d/u.test(one)).length;
      return { key: "figure", says: `only the ${ORDINALS[place] ?? "last"} figure differs` };
    }
  }
  const found = miscopies(answer).find(([how, text]) => /lost|doubled/u.test(how) && Number(text) === Number(claim));
  return found === undefined ? null : { key: "figures", says: `the figures are right but for ${found[0]}` };
}

function round(claimed: Decimal, exact: Decimal): Fact | null {
  if (claimed.minus(exact).abs().gt(exact.abs().times("0.12"))) return null;
  for (const [parts, word] of [
    [1, "whole"],
    [2, "half"],
    [4, "quarter"],
    [0.1, "ten"],
  ] as const) {
    const scaled = exact.times(parts);
    if (scaled.isInteger()) continue;
    if (claimed.times(parts).eq(scaled.ceil()))
      return { key: "round", says: `it is the answer rounded up to the ${word}` };
    if (claimed.times(parts).eq(scaled.floor()) && !claimed.isZero())
      return { key: "round", says: `it is the answer rounded down to the ${word}` };
  }
  return null;
}

/** Too large or too small by so much, as one says it. */
function bySize(claimed: Decimal, exact: Decimal): Fact | null {
  if (exact.isZero()) return null;
  const ratio = claimed.div(exact).toNumber();
  const word = ratio > 1 ? "large" : "small";
  const size = ratio > 1 ? ratio : 1 / ratio;
  const off = Math.abs(ratio - 1);
  if (ratio <= 0) return { key: "size", says: "it has the wrong sign" };
  if (size >= 1.95)
    return {
      key: "size",
      says: `it is about ${size < 10 ? size.toFixed(1).replace(/\.0$/u, "") : size.toPrecision(2)} times too ${word}`,
    };
  const percent = 100 * off;
  return {
    key: "size",
    says: `it is too ${word} by about ${percent < 1 ? percent.toPrecision(1) : percent.toFixed(0)} %`,
  };
}

/** The facts about a wrong number, the most telling first. */
export function factsOf(
  written: string,
  claimed: Decimal,
  exact: Decimal,
  step: Decimal,
  rounded: string,
): readonly Fact[] {
  const found = [point(claimed, exact, step), round(claimed, exact), figures(written, rounded), bySize(claimed, exact)];
  return found.filter((one) => one !== null);
}
