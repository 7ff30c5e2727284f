import { equal } from "@thrum/maths";
import { isQuantity } from "./node.js";

type Member = readonly [string, unknown];

function membersOf(value: object): readonly Member[] {
  const members: readonly Member[] = Object.entries(value);
  return members.filter(([, member]) => member !== undefined);
}

/** Whether two plain values hold the same; a key that is undefined is a key left out. */
export function sameData(one: unknown, other: unknown): boolean {
  if (typeof one !== "object" || typeof other !== "object" || one === null || other === null) return one === other;
  if (isQuantity(one) || isQuantity(other)) {
    return (
      isQuantity(one) &&
      isQuantity(other) &&
      one.unit === other.unit &&
      one.dimension === other.dimension &&
      equal(one, other)
    );
  }
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const members = membersOf(one);
  const others = new Map(membersOf(other));
  return (
    members.length === others.size &&
    members.every(([key, value]) => others.has(key) && sameData(value, others.get(key)))
  );
}
