/** The milliseconds of processor time that work takes: on a busy machine it waits longer, but does no more. */
export function processorTime(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** The least of some tries, which is the least disturbed by the collector of what is no longer used. */
export function leastTime(work: () => unknown, tries = 5): number {
  return Math.min(...Array.from({ length: tries }, () => processorTime(work)));
}
