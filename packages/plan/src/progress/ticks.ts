/** Numbers ticked off, all of them, or some in stretches; none is an empty list. */
export type Ticks = "all" | readonly Stretch[];

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Stretches in order, those that meet in one. */
export function tidied(stretches: readonly Stretch[]): readonly Stretch[] {
  const sorted = [...stretches].sort((a, b) => a.from - b.from);
  return sorted.reduce<readonly Stretch[]>((done, next) => {
    const last = done.at(-1);
    if (last === undefined || next.from > last.to + 1) return [...done, next];
    return [...done.slice(0, -1), { from: last.from, to: Math.max(last.to, next.to) }];
  }, []);
}

/** Whether this number is ticked off. */
export function isTicked(given: Ticks | undefined, number: number): boolean {
  if (given === undefined) return false;
  return given === "all" || given.some(({ from, to }) => number >= from && number <= to);
}

/** The ticks with this number ticked off. */
export function tickedOff(given: Ticks | undefined, number: number): Ticks {
  return given === "all" ? given : tidied([...(given ?? []), { from: number, to: number }]);
}

/** The ticks without this number; `last` is the last there is, which "all" reaches to. */
export function untick(given: Ticks | undefined, number: number, last: number): Ticks {
  const stretches = given === "all" ? [{ from: 1, to: last }] : (given ?? []);
  return stretches.flatMap(({ from, to }) => {
    const parts = [
      { from, to: Math.min(to, number - 1) },
      { from: Math.max(from, number + 1), to },
    ];
    return number < from || number > to ? [{ from, to }] : parts.filter((part) => part.from <= part.to);
  });
}

/** The highest number ticked off one by one; 0 where none is, and for "all". */
export function highestTick(given: Ticks | undefined): number {
  return given === undefined || given === "all" ? 0 : Math.max(0, ...given.map(({ to }) => to));
}
