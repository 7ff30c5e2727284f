import { compare, convertCount, ratio, tex } from "@thrum/maths";
import type { DirectCount, IndirectCount } from "@thrum/maths";
import { nearName } from "../job/near-name.js";
import type { JobYarn, YarnCount } from "../job/yarns.js";
import type { LaidStripe } from "./laid-stripes.js";
import { finishedCount } from "./thread-diameter.js";
import { counted, firstSix, listed } from "./told.js";
import type { Told } from "./told.js";
import { threadsHeld } from "./winding.js";

type Yarns = Readonly<Record<string, JobYarn>>;

interface Weighed {
  readonly yarn: string;
  /** Of the thickest old thread's weight for its length, in whole percent. */
  readonly percent: number;
}

function heaviest(counts: readonly (DirectCount | IndirectCount)[]): DirectCount | undefined {
  const weights = counts.map((count) => convertCount(count, tex).count);
  return weights.reduce<DirectCount | undefined>(
    (most, one) => (most === undefined || compare(one, most) > 0 ? one : most),
    undefined,
  );
}

/** The weight of each new yarn for its length, as a share of the heaviest old one. */
export function againstGrist(stripes: readonly LaidStripe[], yarns: Yarns, old: readonly YarnCount[]): readonly Told[] {
  const before = heaviest(old.map(finishedCount));
  if (before === undefined) return [];
  const names = [...new Set(stripes.flatMap((stripe) => stripe.yarns))];
  const others = names.flatMap((yarn): readonly Weighed[] => {
    const count = Object.hasOwn(yarns, yarn) ? yarns[yarn]?.count : undefined;
    if (count === undefined) return [];
    const weight = convertCount(finishedCount(count), tex).count;
    return compare(weight, before) === 0 ? [] : [{ yarn, percent: Math.round(ratio(weight, before) * 100) }];
  });
  if (others.length === 0) return [];
  const shares = others.map(({ yarn, percent }) => `${yarn} about ${String(percent)} %`);
  const says = `Of the weight of the old yarn for its length: ${listed(shares)}. Look whether the cloth wants the same sett, and whether the knots pass.`;
  const values = { yarns: others.map(({ yarn }) => yarn), percent: others.map(({ percent }) => percent) };
  return [{ standing: "check", about: "grist", says, values }];
}

/** Blends that the threads held in the hand are no multiple of. */
export function againstHands(stripes: readonly LaidStripe[], threads: number): readonly Told[] {
  return stripes.flatMap(({ yarns }, at): readonly Told[] => {
    const hand = yarns.length;
    if (hand < 2 || threadsHeld(hand, threads) === threads) return [];
    const says = `Stripe ${String(at + 1)}, ${yarns.join(" + ")}, is wound ${String(hand)} threads together, not ${String(threads)}: a hand of ${String(hand)} does not go into ${String(threads)}.`;
    return [{ standing: "free", about: "blend", says, values: { stripe: at + 1, hand, threads } }];
  });
}

/** Yarns of the list that nothing uses. */
export function unusedYarns(yarns: Yarns, used: readonly string[]): readonly Told[] {
  const unused = Object.keys(yarns).filter((name) => !used.includes(name));
  if (unused.length === 0) return [];
  const says = `Nothing uses ${listed(unused)}.`;
  return [{ standing: "free", about: "yarns", says, values: { yarns: unused } }];
}

/** Without a list of yarns: names met once that are near another. */
export function nearNames(stripes: readonly LaidStripe[]): readonly Told[] {
  const names = stripes.flatMap(({ yarns }) => [...new Set(yarns)]);
  const all = [...new Set(names)];
  return all.flatMap((name): readonly Told[] => {
    const near = nearName(
      name,
      all.filter((other) => other !== name),
    );
    if (near === undefined || names.filter((other) => other === name).length > 1) return [];
    const says = `${name} is met once and is near ${near}: are they one yarn?`;
    return [{ standing: "ask", about: "yarns", says, values: { name, near } }];
  });
}

/** Yarn that is not there: what to buy, never a fault. */
export function yarnsToBuy(names: readonly string[], packages: readonly (number | null)[]): readonly Told[] {
  const short = names.flatMap((name, at) => {
    const number = packages[at] ?? 0;
    return number > 0 ? [`${counted(number, "package")} of ${name}`] : [];
  });
  if (short.length === 0) return [];
  return [{ standing: "free", about: "yarn", says: `To buy: ${firstSix(short)}.`, values: { short } }];
}

/** By yarn, the dents in which another number of ends begins: the old ends must stand so already. */
export function sleyRepeated(
  sley: Readonly<Record<string, number>>,
  stripes: readonly LaidStripe[],
  dents: readonly (number | null)[],
): readonly Told[] {
  let last: number | null = null;
  const changes: string[] = [];
  for (const { yarns, firstEnd } of stripes) {
    const at = sley[yarns[0] ?? ""] ?? sley["others"] ?? null;
    const dent = dents[firstEnd - 1] ?? null;
    if (at !== null && dent !== null && last !== null && at !== last)
      changes.push(`dent ${String(dent)} must be the first with ${String(at)}`);
    last = at ?? last;
  }
  if (changes.length === 0) return [];
  const says = `Sleyed by yarn, and the old ends must stand so already: ${firstSix(changes)}.`;
  return [{ standing: "check", about: "sley", says, values: { changes } }];
}
