/**
 * So many ends spread over so many dents as evenly as whole ends allow: 8 in 5 is 1-2-1-2-2.
 *
 * The dents up to each one hold the whole part of their share, so that no stretch gathers more than one end too many.
 */
export function evenOrder(ends: number, dents: number): readonly number[] {
  const upTo = (dent: number): number => Math.floor((dent * ends) / dents);
  return Object.freeze(Array.from({ length: dents }, (_, dent) => upTo(dent + 1) - upTo(dent)));
}
