import type { Fault } from "../refusal.js";
import type { Read } from "./read.js";

/** Lists that go together, as all of a formula do, have one length; a longer one would lose members unseen. */
export function unevenLists(name: string, read: ReadonlyMap<string, Read>): readonly Fault[] {
  const lists = [...read].flatMap(([field, one]) =>
    one.what === "list" ? [[field, one.members.length] as const] : [],
  );
  const [first, ...others] = lists;
  if (first === undefined) return [];
  return others
    .filter(([, length]) => length !== first[1])
    .map(([field, length]) => ({
      code: "wrong-kind",
      where: `${name}({ ${field} })`,
      expected: `a list of ${String(first[1])}, one for each of ${first[0]}`,
      received: `a list of ${String(length)}`,
      remedy: "Give the lists in the same order.",
    }));
}

/** The money of one sum is of one currency. */
export function mixedCurrencies(name: string, read: ReadonlyMap<string, Read>): readonly Fault[] {
  const moneys = [...read].flatMap(([field, one]) =>
    (one.what === "list" ? one.members : [one]).flatMap((member) =>
      member.what === "quantity" && member.unit.dimension === "money" ? [[field, member.unit.name] as const] : [],
    ),
  );
  const [first] = moneys;
  const other = moneys.find(([, currency]) => currency !== first?.[1]);
  if (first === undefined || other === undefined) return [];
  const remedy = "Change it to one currency first, at the rate of your day.";
  const where = `${name}({ ${other[0]} })`;
  return [
    { code: "wrong-kind", where, expected: `money in ${first[1]}, as in ${first[0]}`, received: other[1], remedy },
  ];
}
