const three = (figure) => (Number.isInteger(figure) ? String(figure) : figure.toPrecision(3));

/** A figure that must be exactly so: the run fails where it is not. */
export function exactly(line, figure, wanted) {
  return { line, figure: three(figure), budget: `= ${three(wanted)}`, holds: figure === wanted, mustHold: true };
}

export function atMost(line, figure, budget, unit) {
  return { line, figure: `${three(figure)} ${unit}`, budget: `≤ ${three(budget)} ${unit}`, holds: figure <= budget };
}

export function atLeast(line, figure, budget, unit) {
  return { line, figure: `${three(figure)} ${unit}`, budget: `≥ ${three(budget)} ${unit}`, holds: figure >= budget };
}

/** A figure without a budget, shown for comparison. */
export const told = (line, figure, unit) => ({
  line,
  figure: `${three(figure)} ${unit}`.trim(),
  budget: "",
  holds: true,
});
