import { inPlace } from "../refusal.js";
import type { Unit } from "../quantity/index.js";
import type { Place, Refusal } from "../refusal.js";
import type { Read } from "./read.js";

/** Lists that go together, as all of a formula do, have one length; a longer one would lose members unseen. */
export function unevenLists(place: Place, read: ReadonlyMap<string, Read>): readonly Refusal[] {
  const lists = [...read].flatMap(([field, one]) =>
    one.what === "list" ? [[field, one.members.length] as const] : [],
  );
  const [first, ...others] = lists;
  if (first === undefined) return [];
  return others
    .filter(([, length]) => length !== first[1])
    .map(([field, length]) => ({
      code: "wrong-kind",
      ...inPlace([...place, field]),
      expected: `a list of ${String(first[1])}, one for each of ${first[0]}`,
      received: `a list of ${String(length)}`,
      remedy: "Give the lists in the same order.",
    }));
}

/** Amounts that are told in no other unit of their kind are all in the unit of the first. */
export function mixedUnits(place: Place, read: ReadonlyMap<string, Read>): readonly Refusal[] {
  let first: readonly [field: string, unit: Unit<string>] | null = null;
  for (const [field, one] of read)
    for (const member of one.what === "list" ? one.members : [one]) {
      if (member.what !== "quantity" || member.unit.alone === null) continue;
      const { dimension: kind, name, alone: remedy } = member.unit;
      first ??= [field, member.unit];
      if (name === first[1].name) continue;
      const expected = `${kind} in ${first[1].name}, as in ${first[0]}`;
      const at = inPlace([...place, field]);
      return [{ code: "wrong-kind", ...at, expected, received: name, remedy, params: { kind } }];
    }
  return [];
}
