import type { Decimal } from "../engine/numbers.js";
import { amountOf, joined } from "./hand.js";
import type { Amount, Hand } from "./hand.js";
import { percentIn } from "./reason.js";
import type { Scene } from "./reason.js";
import { ALIKE } from "./tolerances.js";

interface Off {
  /** Half a unit of the so manieth figure, as a part of the number; nothing where the number ends before it. */
  readonly most: number;
  /** What rounding there takes off or adds. */
  readonly own: number;
}

function offOf(value: number, figures: number): Off {
  if (value === 0 || !Number.isFinite(value)) return { most: 0, own: 0 };
  const size = 10 ** (Math.floor(Math.log10(Math.abs(value))) - figures + 1);
  const off = Math.abs(value / size - Math.round(value / size));
  if (off < ALIKE * Math.abs(value / size)) return { most: 0, own: 0 };
  return { most: (0.5 * size) / Math.abs(value), own: (off * size) / Math.abs(value) };
}

const scaled = (amount: Amount, by: number): Amount =>
  typeof amount === "number" ? amount * by : amount.map((one) => one * by);

function most(hand: Hand, { values, known }: Scene, figures: number): number {
  const amount = amountOf(hand, values, known);
  return Math.max(0, ...(typeof amount === "number" ? [amount] : amount).map((one) => offOf(one, figures).most));
}

/** A constant is always rounded to the same number, so what that is off counts, not what any might be. */
function reciprocal(amount: Amount, figures: number): number {
  return Math.max(0, ...(typeof amount === "number" ? [amount] : amount).map((one) => offOf(1 / one, figures).own));
}

/** How far off, as a part of it, a hand comes that writes every step of a place to so many figures. */
function offAt(scene: Scene, hand: Hand, isWhole: boolean, figures: number): number {
  const own = isWhole ? 0 : most(hand, scene, figures);
  if (hand.op === "number")
    return hand.constant !== undefined && hand.value.toString().length > 5
      ? offOf(hand.value, Math.max(3, figures - 1)).own
      : 0;
  if (hand.op !== "product") return hand.op === "name" ? 0 : own;
  let off = own;
  for (let size = 2; size < hand.parts.length; size += 1)
    off += most(joined("product", hand.parts.slice(0, size)), scene, figures);
  for (const { of, turned } of hand.parts)
    if (turned && percentIn(scene, of) !== null) off += reciprocal(amountOf(of, scene.values, scene.known), figures);
  return off;
}

/** Every step rounded as badly as can be, and all to one side, is no sensible rounding. */
const TOGETHER = 0.8;

/** How far from the exact answer sensible rounding of every step can lead, in the unit of the claim. */
export function reachOf(scene: Scene, exact: number, figures: number): number {
  const { places } = scene;
  let reach = 0;
  for (const [at, { hand, answer }] of places.entries()) {
    const off = offAt(scene, hand, at === 0, figures);
    if (off === 0) continue;
    const ends = [off, -off].map((by) =>
      Math.abs(answer(scaled(amountOf(hand, scene.values, scene.known), 1 + by)) - exact),
    );
    const moved = Math.max(...ends.filter((one) => Number.isFinite(one)), 0);
    reach += moved;
  }
  return Math.min(TOGETHER * reach, 0.01 * Math.abs(exact));
}

const USE = 0.02;

/** Whether a claim is the answer brought to the whole, half or quarter that one cuts, winds or buys. */
export function forUse(way: "up" | "down" | null, claimed: Decimal, exact: Decimal): boolean {
  if (way === null || exact.isZero()) return false;
  const off = claimed.minus(exact);
  if ((way === "up") === off.isNegative() || off.abs().gt(exact.abs().times(USE))) return false;
  return [1, 2, 4].some((parts) => {
    const scaled = exact.times(parts);
    return claimed.times(parts).eq(way === "up" ? scaled.ceil() : scaled.floor());
  });
}
