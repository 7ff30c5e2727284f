const PAUSE = 3 * 60_000;
const LEAST_KNOTS = 50;
const STEP = 5;

/** Milliseconds for one knot over her last groups, pauses left out; null until there are enough to tell. */
function pace(times: readonly (readonly [at: number, knots: number])[]): number | null {
  const groups = times.slice(1).map(([at, knots], before) => ({ took: at - (times[before]?.[0] ?? at), knots }));
  const each = groups.map(({ took, knots }) => took / Math.max(1, knots)).sort((one, other) => one - other);
  const usual = each[Math.floor((each.length - 1) / 2)];
  if (usual === undefined) return null;
  const worked = groups.filter(({ took, knots }) => took - usual * knots <= PAUSE);
  const knots = worked.reduce((sum, one) => sum + one.knots, 0);
  return knots === 0 ? null : worked.reduce((sum, { took }) => sum + took, 0) / knots;
}

/** Minutes to go, in steps of five; null until she has tied 50 and her pace is known. */
export function minutesToGo(times: readonly (readonly [number, number])[], tied: number, left: number): number | null {
  const one = tied < LEAST_KNOTS ? null : pace(times);
  if (one === null || one <= 0) return null;
  return Math.max(STEP, Math.round((one * left) / 60_000 / STEP) * STEP);
}
