/** How many of one entry lie within the first so many of the run, in the order of weaving. */
export function stillToWeave(given: {
  readonly most: number;
  readonly numbers: readonly number[];
  readonly place: number;
}): number {
  const { most, numbers, place } = given;
  const before = numbers.slice(0, place).reduce((so, number) => so + number, 0);
  return Math.max(0, Math.min(numbers[place] ?? 0, most - before));
}
