import { frozen } from "../../engine/frozen.js";
import { readThreading, threadedShafts } from "../reed/threading.js";
import type { Threading } from "../reed/threading.js";

/** Two lifts that raise alternate ends, or the neighbours that stand in the way. */
export interface LeaseLifts {
  /** Null where neighbours forbid a lease by lifting. */
  readonly lifts: readonly [first: readonly number[], second: readonly number[]] | null;
  /** Ends, each with its next neighbour, that no two lifts part: there the lease is picked up by hand. */
  readonly together: readonly (readonly [end: number, next: number])[];
  readonly says: string;
}

/** Shafts in groups whose members must rise together or apart. */
class Sides {
  private readonly parent: number[];
  private readonly apart: boolean[];

  constructor(shafts: number) {
    this.parent = Array.from({ length: shafts + 1 }, (_, shaft) => shaft);
    this.apart = Array.from({ length: shafts + 1 }, () => false);
  }

  /** The group of a shaft, and whether it rises against the group's first. */
  find(shaft: number): readonly [root: number, apart: boolean] {
    let [root, apart] = [shaft, false];
    while (this.parent[root] !== root) {
      apart = apart !== (this.apart[root] ?? false);
      root = this.parent[root] ?? root;
    }
    return [root, apart];
  }

  /** Sets two shafts apart; false where what is known makes them rise together. */
  part(one: number, other: number): boolean {
    const [[a, aApart], [b, bApart]] = [this.find(one), this.find(other)];
    if (a === b) return aApart !== bApart;
    this.parent[b] = a;
    this.apart[b] = aApart === bApart;
    return true;
  }
}

/**
 * Two lifts of the shafts that raise alternate ends, for a lease one end by one; or the neighbouring ends that forbid it.
 *
 * @param input the shafts of the loom and the threading in parts, as often as each stands
 * @throws QuantityError for a field that is missing, unknown or of another kind, one error for all
 * @source common practice, no source
 * @example leaseLifts({ shafts: 4, parts: [{ threading: [1, 2, 3, 4], times: 90 }] }).lifts // [[1, 3], [2, 4]]
 */
export function leaseLifts(input: Threading): LeaseLifts {
  readThreading("leaseLifts", input);
  const order = threadedShafts(input);
  const sides = new Sides(input.shafts);
  const together: (readonly [number, number])[] = [];
  for (let end = 1; end < order.length; end += 1) {
    const parted = sides.part(order[end - 1] ?? 0, order[end] ?? 0);
    if (!parted) together.push([end, end + 1]);
  }
  if (together.length > 0) {
    const [[end, next]] = together as [readonly [number, number]];
    const others = together.length > 1 ? ` and ${String(together.length - 1)} more such places` : "";
    return frozen({
      lifts: null,
      together,
      says: `No two lifts part ends ${String(end)} and ${String(next)}${others}: pick the lease up by hand there.`,
    });
  }
  const first: number[] = [];
  const second: number[] = [];
  const used = [...new Set(order)].sort((a, b) => a - b);
  const [, leads] = sides.find(order[0] ?? 0);
  for (const shaft of used) (sides.find(shaft)[1] === leads ? first : second).push(shaft);
  const lifts = [first, second] as const;
  const says =
    second.length === 0
      ? "There are no two ends to part."
      : `Shafts ${first.join(" and ")} against ${second.join(" and ")} raise alternate ends.`;
  return frozen({ lifts, together: [], says });
}
