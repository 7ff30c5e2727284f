import { hoursToJoin } from "@thrum/maths";
import type { TyingGroup } from "../plan/groups.js";

/** A line of the joining pages: a group of knots, or a rest. */
export type JoiningLine = TyingGroup | "rest";

/** One page, with what was tied before it and with it. */
export interface JoiningPage {
  readonly lines: readonly JoiningLine[];
  readonly broughtForward: number;
  readonly carriedForward: number;
}

/** Lines of 10 mm that stand between the heads of a page and its foot, on the shorter of the two papers. */
const MOST_LINES = 20;
const HOURS_TO_REST = 0.75;
/** The slower end of the goal that a loom's manual sets a practised weaver, 200 to 250 ends an hour. */
export const KNOTS_PER_HOUR = 200;

/** The groups with a rest after each 45 minutes of knots, never after the last. */
function withRests(groups: readonly TyingGroup[]): readonly JoiningLine[] {
  let sinceRest = 0;
  return groups.flatMap((group, at) => {
    sinceRest += group.ends;
    const isDue = hoursToJoin({ knots: sinceRest, knotsPerHour: KNOTS_PER_HOUR }) >= HOURS_TO_REST;
    if (!isDue || at === groups.length - 1) return [group];
    sinceRest = 0;
    return [group, "rest" as const];
  });
}

function tied(lines: readonly JoiningLine[]): number {
  return lines.reduce((total, line) => total + (line === "rest" ? 0 : line.ends), 0);
}

/** The groups in pages, in the order they are tied. */
export function joiningPages(groups: readonly TyingGroup[]): readonly JoiningPage[] {
  const lines = withRests(groups);
  return Array.from({ length: Math.ceil(lines.length / MOST_LINES) }, (_, at) => {
    const before = tied(lines.slice(0, at * MOST_LINES));
    const own = lines.slice(at * MOST_LINES, (at + 1) * MOST_LINES);
    return { lines: own, broughtForward: before, carriedForward: before + tied(own) };
  });
}
