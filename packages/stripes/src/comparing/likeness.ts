import { check } from "../refusal/check.js";
import { listOf, oneOf, someEnds } from "../refusal/kinds.js";
import { cyclicRuns } from "../sequence/cyclic-runs.js";
import { item } from "../sequence/item.js";
import { reverse } from "../sequence/reverse.js";
import { rotationOf } from "../sequence/rotation-of.js";
import { sameColour } from "../sequence/same-colour.js";
import type { Sequence, Stripe } from "../sequence/sequence.js";

export interface LikenessInput<C> {
  readonly first: Sequence<C>;
  readonly second: Sequence<C>;
  /** What may differ; an empty list asks for the same warp end for end. */
  readonly upTo: readonly ("rotation" | "reversal" | "scale" | "recolouring")[];
}

/** How the second comes from the first: turned round, its ends moved to the far side, scaled, recoloured. */
export interface Likeness<C> {
  readonly reversed: boolean;
  /** In ends of the first; no whole number where the scaled repeat begins within an end. */
  readonly rotatedBy: number;
  /** Ends of the second for so many of the first. */
  readonly scale: { readonly second: number; readonly first: number };
  /** Each colour of the first, and what stands for it in the second. */
  readonly colours: readonly { readonly first: C; readonly second: C }[];
}

/**
 * How one sequence becomes another if it may be begun elsewhere, turned round, scaled or recoloured; null if it cannot.
 *
 * @throws StripeError for a sequence without ends, or an unknown liberty
 * @example
 * const half = sequence([{ colour: "ash", ends: 12 }, { colour: "coal", ends: 4 }]);
 * likeness({ first: half, second: multiply({ sequence: half, by: 3 }), upTo: ["scale"] }).scale // { second: 3, first: 1 }
 */
export function likeness<C>(input: LikenessInput<C>): Likeness<C> | null {
  check("likeness", input, {
    first: someEnds,
    second: someEnds,
    upTo: listOf(0, oneOf("rotation", "reversal", "scale", "recolouring")),
  });
  const { first, second, upTo } = input;
  if (!upTo.includes("scale") && first.ends !== second.ends) return null;
  const straight = likeTo(first, second, upTo, false);
  return straight ?? (upTo.includes("reversal") ? likeTo(reverse(first), second, upTo, true) : null);
}

function likeTo<C>(
  first: Sequence<C>,
  second: Sequence<C>,
  upTo: LikenessInput<C>["upTo"],
  reversed: boolean,
): Likeness<C> | null {
  const rotates = upTo.includes("rotation");
  const recolours = upTo.includes("recolouring");
  const begun = (warp: Sequence<C>): ReturnType<typeof cyclicRuns<C>> =>
    rotates ? cyclicRuns(warp) : { begins: 0, runs: warp.runs };
  const [one, other] = [begun(first), begun(second)];
  const [from, to] = [symbols(one.runs, second.ends), symbols(other.runs, first.ends)];
  const shift = rotationOf(
    from,
    to,
    (a, b) => a.width === b.width && (recolours ? a.back === b.back : sameColour(a.colour, b.colour)),
  );
  if (shift === null || (shift > 0 && !rotates)) return null;
  const shifted = one.runs.slice(0, shift).reduce((sum, { ends }) => sum + ends, 0);
  const begins = shifted + one.begins - (other.begins * first.ends) / second.ends;
  const colours = new Map(to.map(({ colour }, index) => [item(from, (shift + index) % from.length).colour, colour]));
  return {
    reversed,
    rotatedBy: (begins + first.ends) % first.ends,
    scale: ratio(second.ends, first.ends),
    colours: [...colours].map(([before, after]) => ({ first: before, second: after })),
  };
}

interface StripeSymbol<C> {
  readonly colour: C;
  /** Ends times the ends of the other warp: the same in both if the proportions are. */
  readonly width: number;
  /** Stripes back to the last one of its colour, round the repeat: the same for any names of the colours. */
  readonly back: number;
}

function symbols<C>(runs: readonly Stripe<C>[], times: number): readonly StripeSymbol<C>[] {
  const seen = new Map(runs.map(({ colour }, index) => [colour, index - runs.length]));
  return runs.map(({ colour, ends }, index) => {
    const back = index - (seen.get(colour) ?? index);
    seen.set(colour, index);
    return { colour, width: ends * times, back };
  });
}

function ratio(second: number, first: number): Likeness<never>["scale"] {
  let [one, other] = [second, first];
  while (other > 0) [one, other] = [other, one % other];
  return { second: second / one, first: first / one };
}
