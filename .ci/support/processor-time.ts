/** The milliseconds of processor time that work takes: on a busy machine it waits longer, but does no more. */
function processorTime(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** The least of some tries, which is the least disturbed by the collector of what is no longer used. */
export function leastTime(work: () => unknown, tries = 5): number {
  return Math.min(...Array.from({ length: tries }, () => processorTime(work)));
}

/**
 * The same of one of so many calls, after as many that the compiler learns from. Two works are held beside each other by as
 * many calls as make them equally long, so that neither is disturbed more.
 */
export function leastTimeOfCalls(work: () => unknown, calls: number): number {
  const all = (): void => {
    for (let call = 0; call < calls; call += 1) work();
  };
  all();
  return leastTime(all, 7) / calls;
}
