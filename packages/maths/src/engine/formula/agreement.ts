import { inPlace } from "../refusal.js";
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

/** The money of one sum is of one currency. */
export function mixedCurrencies(place: Place, read: ReadonlyMap<string, Read>): readonly Refusal[] {
  const moneys = [...read].flatMap(([field, one]) =>
    (one.what === "list" ? one.members : [one]).flatMap((member) =>
      member.what === "quantity" && member.unit.dimension === "money" ? [[field, member.unit.name] as const] : [],
    ),
  );
  const [first] = moneys;
  const other = moneys.find(([, currency]) => currency !== first?.[1]);
  if (first === undefined || other === undefined) return [];
  const remedy = "Change it to one currency first, at the rate of your day.";
  const expected = `money in ${first[1]}, as in ${first[0]}`;
  const at = inPlace([...place, other[0]]);
  return [{ code: "wrong-kind", ...at, expected, received: other[1], remedy, params: { kind: "money" } }];
}
