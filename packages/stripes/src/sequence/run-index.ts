/** Index of the run that holds an end, by halving; `starts` must begin at or before the end. */
export function runIndex(starts: readonly number[], end: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= end) low = middle;
    else high = middle - 1;
  }
  return low;
}
