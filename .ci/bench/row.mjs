const three = (figure) => (Number.isInteger(figure) ? String(figure) : figure.toPrecision(3));

/** A figure that must be exactly so: the run fails where it is not. */
export function exactly(line, figure, wanted) {
  return { line, figure: three(figure), budget: `= ${three(wanted)}`, holds: figure === wanted, mustHold: true };
}

/** How far a time may be off its budget on a machine that does other things too: a fifth. */
const MARGIN = 0.2;

/** A ratio of times of one run beside a peer: fails past the budget and the margin, which are both told. */
export function ratioAtLeast(line, figure, budget) {
  const least = budget * (1 - MARGIN);
  const holds = figure >= least;
  return {
    line,
    figure: `${three(figure)} ×`,
    budget: `≥ ${three(budget)} ×, fails below ${three(least)}`,
    holds,
    mustHold: true,
  };
}

export function ratioAtMost(line, figure, budget) {
  const most = budget * (1 + MARGIN);
  const holds = figure <= most;
  return {
    line,
    figure: `${three(figure)} ×`,
    budget: `≤ ${three(budget)} ×, fails above ${three(most)}`,
    holds,
    mustHold: true,
  };
}

/** A count, the same on every machine. */
export function countAtMost(line, figure, budget, unit) {
  const holds = figure <= budget;
  return { line, figure: `${three(figure)} ${unit}`, budget: `≤ ${three(budget)} ${unit}`, holds, mustHold: true };
}

export function countAtLeast(line, figure, budget, unit) {
  const holds = figure >= budget;
  return { line, figure: `${three(figure)} ${unit}`, budget: `≥ ${three(budget)} ${unit}`, holds, mustHold: true };
}

/** A figure without a budget, shown for comparison. */
export const told = (line, figure, unit) => ({
  line,
  figure: `${three(figure)} ${unit}`.trim(),
  budget: "",
  holds: true,
});
