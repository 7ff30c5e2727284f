/** Last ends of the fewest chains of whole steps, one step apart at most; a last part step goes with the last chain. */
export function steppedCuts(ends: number, most: number, step: number): readonly number[] {
  const steps = Math.ceil(ends / step);
  const count = Math.ceil(steps / Math.floor(most / step));
  return Array.from({ length: count }, (_, index) => Math.min(ends, Math.floor(((index + 1) * steps) / count) * step));
}
