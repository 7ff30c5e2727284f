import { chains, sequence } from "@thrum/stripes";
import type { JobJoin, JobWinding } from "../job/job.js";
import type { Hand } from "../job/runs.js";
import { belowOneEnd } from "./below-one-end.js";
import type { Group } from "./groups.js";
import { handOf } from "./laid-stripes.js";
import type { LaidStripe } from "./laid-stripes.js";
import { counted, listed } from "./told.js";
import type { Told } from "./told.js";

/** The ends of one stripe in a chain. */
export interface ChainPart extends Hand {
  readonly stripe: number;
  readonly ends: number;
  readonly firstEnd: number;
  readonly lastEnd: number;
}

/** A part of the warp wound and carried to the loom by itself. */
export interface WarpChain {
  readonly chain: number;
  readonly ends: number;
  /** In the order wound; of a chain by colour they need not lie side by side. */
  readonly parts: readonly ChainPart[];
}

export interface Chains {
  /** None where the most of a chain is missing, or a stripe or group is wider than that. */
  readonly chains: readonly WarpChain[];
  /** By stripe and by group wait for the most of a chain. */
  readonly waitsForMost: boolean;
  readonly tooWide: readonly Told[];
}

/** Most ends of a chain: one number, or one for each yarn where it comes from a mass; null where it is not told. */
export type MostEnds = number | Readonly<Record<string, number>> | null;

function mostOf(most: MostEnds, yarns: readonly string[]): number | null {
  if (most === null || typeof most === "number") return most;
  return yarns.reduce((least, yarn) => Math.min(least, most[yarn] ?? least), Infinity);
}

/** What of the parts lies after one end of the chain and up to another, both counted along the parts. */
function partsBetween(parts: readonly ChainPart[], after: number, upTo: number): readonly ChainPart[] {
  let before = 0;
  return parts.flatMap((part) => {
    const from = Math.max(after - before, 0);
    const to = Math.min(upTo - before, part.ends);
    before += part.ends;
    if (from >= to) return [];
    return [{ ...part, ends: to - from, firstEnd: part.firstEnd + from, lastEnd: part.firstEnd + to - 1 }];
  });
}

/** The parts cut into the fewest chains, as nearly equal as the places for a cut allow. */
function cutInto(
  parts: readonly ChainPart[],
  most: number,
  cutAt: number | readonly number[],
): readonly (readonly ChainPart[])[] {
  const warp = sequence(parts.map(({ ends }, at) => ({ colour: at, ends })));
  return chains({ sequence: warp, most, cutAt }).map(({ firstEnd, lastEnd }) =>
    partsBetween(parts, firstEnd - 1, lastEnd),
  );
}

/** The last end of each of them, counted along them. */
function edgesOf(parts: readonly { readonly ends: number }[]): readonly number[] {
  let edge = 0;
  return parts.map(({ ends }) => (edge += ends));
}

/** One list of stripes for each hand, in the order in which the hands come. */
function byColour(parts: readonly ChainPart[]): readonly (readonly ChainPart[])[] {
  const hands = new Map<string, ChainPart[]>();
  for (const part of parts) {
    const { yarns, order } = part;
    const held = order === undefined ? [...yarns].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0)) : yarns;
    const same = JSON.stringify([held, order ?? null]);
    hands.set(same, [...(hands.get(same) ?? []), part]);
  }
  return [...hands.values()];
}

/** What is wider than a chain may be. */
function tooWide(
  what: "stripe" | "group",
  parts: readonly ChainPart[],
  groups: readonly Group[],
  most: number | null,
): readonly Told[] {
  if (most === null) return [];
  const ends = what === "stripe" ? parts : groups;
  const remedy = what === "stripe" ? "Cut by group" : "Take smaller groups";
  return ends.flatMap((one, at): readonly Told[] => {
    if (one.ends <= most) return [];
    const name = `${what === "stripe" ? "Stripe" : "Group"} ${String("group" in one ? one.group : one.stripe)}`;
    const says = `${name} has ${counted(one.ends, "end")}, a chain at most ${String(most)}. ${remedy}, or allow longer chains.`;
    return [{ standing: "must", about: what, says, values: { [what]: at + 1, ends: one.ends, most } }];
  });
}

/** The warp in chains, from end 1; by colour each yarn or blend in chains of its own. */
export function chainsOf(
  stripes: readonly LaidStripe[],
  groups: readonly Group[],
  by: NonNullable<JobWinding["chains"]>,
  most: MostEnds,
): Chains {
  const parts = stripes.map((stripe, at): ChainPart => {
    const { ends, firstEnd, lastEnd } = stripe;
    return { stripe: at + 1, ...handOf(stripe), ends, firstEnd, lastEnd };
  });
  const numbered = (cut: readonly (readonly ChainPart[])[]): readonly WarpChain[] =>
    cut.map((of, at) => ({ chain: at + 1, ends: of.reduce((sum, { ends }) => sum + ends, 0), parts: of }));
  const held = parts.flatMap(({ yarns }) => yarns);
  const ofAll = mostOf(most, held);
  const none = { chains: [], waitsForMost: false, tooWide: belowOneEnd(most) };
  if (none.tooWide.length > 0) return none;
  if (typeof by === "object") {
    const atMost = Math.max(ofAll ?? by.every, by.every);
    const wide = ofAll !== null && ofAll < by.every;
    const says = `Sections of ${counted(by.every, "end")} are longer than the ${String(ofAll ?? 0)} of a chain.`;
    const told: Told = { standing: "must", about: "chain", says, values: { every: by.every, most: ofAll ?? 0 } };
    return wide ? { ...none, tooWide: [told] } : { ...none, chains: numbered(cutInto(parts, atMost, by.every)) };
  }
  if (by === "by colour") {
    const wide = parts.flatMap((part) => tooWide("stripe", [part], groups, mostOf(most, part.yarns)));
    if (wide.length > 0) return { ...none, tooWide: wide };
    const cut = byColour(parts).map((of) => {
      const ends = of.reduce((sum, part) => sum + part.ends, 0);
      return cutInto(of, mostOf(most, of[0]?.yarns ?? []) ?? ends, edgesOf(of));
    });
    return { ...none, chains: numbered(cut.flat()) };
  }
  if (ofAll === null) return { ...none, waitsForMost: true };
  const wide = tooWide(by === "by group" ? "group" : "stripe", parts, groups, ofAll);
  const places = by === "by group" ? groups.map(({ lastEnd }) => lastEnd) : edgesOf(parts);
  return wide.length > 0 ? { ...none, tooWide: wide } : { ...none, chains: numbered(cutInto(parts, ofAll, places)) };
}

/** One colour at a time over chains of several. */
export function againstOrder(made: readonly WarpChain[], order: JobJoin["order"] | null): readonly Told[] {
  if (order !== "one colour at a time") return [];
  const mixed = made.filter(({ parts }) => byColour(parts).length > 1).map(({ chain }) => chain);
  if (mixed.length === 0) return [];
  const says = `Tied one colour at a time, but ${mixed.length === 1 ? "chain" : "chains"} ${listed(mixed)} ${mixed.length === 1 ? "holds" : "hold"} several: lay each over as often as its colours come, or wind by colour.`;
  return [{ standing: "check", about: "chain", says, values: { chains: mixed } }];
}
