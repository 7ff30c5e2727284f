/** Whether two colours are one: the same value, as the keys of a Map are compared. */
export function sameColour(one: unknown, other: unknown): boolean {
  return one === other || (one !== one && other !== other);
}
