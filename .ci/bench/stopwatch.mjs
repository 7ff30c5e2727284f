const kept = new Float64Array(1024);

/** The middle one of some figures. */
export const median = (figures) => [...figures].sort((a, b) => a - b)[Math.floor(figures.length / 2)];

/** Nanoseconds of one call of `work`, which gets the number of the call; results are kept, or the engine drops the loop. */
function nanoseconds(work, calls) {
  const started = process.hrtime.bigint();
  for (let call = 0; call < calls; call += 1) kept[call & 1023] = work(call);
  return Number(process.hrtime.bigint() - started) / calls;
}

/** Medians of nine rounds for each piece of work, taken in turn so that a slow moment hits all of them. */
export function timesOf(works, { calls }) {
  const rounds = works.map(() => []);
  for (let round = -2; round < 9; round += 1) {
    for (const [index, work] of works.entries()) {
      const time = nanoseconds(work, calls);
      if (round >= 0) rounds[index].push(time);
    }
  }
  return rounds.map(median);
}

/** How many times as long as the first each other work takes: the median over rounds of ratios within a round. */
export function timesTheFirst(works, { calls }) {
  const rounds = works.map(() => []);
  for (let round = -3; round < 15; round += 1) {
    const [first, ...others] = works.map((work) => nanoseconds(work, calls));
    if (round < 0) continue;
    rounds[0].push(first);
    others.forEach((time, at) => rounds[at + 1].push(time / first));
  }
  return rounds.map(median);
}
