import type { WarpPlan } from "../plan/warp-plan.js";
import { COUNTED } from "../text/group-lines.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { blank, columns, sheet, tickBox } from "./sheet.js";

const HEADS = ["counted", "group", "ends", "how many", "first shaft", "last shaft", "found"];

/** The old warp as it stands, counted before anything is cut. */
export function countSheet(plan: WarpPlan): readonly Markup[] {
  const rows = plan.oldGroups.map(({ group, firstEnd, lastEnd, ends, firstShaft, lastShaft }) => [
    tickBox,
    group,
    `${String(firstEnd)} to ${String(lastEnd)}`,
    ends,
    firstShaft,
    lastShaft,
    blank,
  ]);
  const body = html`<p>
      Count the old warp as it stands, from end 1, at your <b>${plan.endOneAt.toUpperCase()}</b>, before anything is
      cut. ${COUNTED}
    </p>
    ${columns("Group by group", HEADS, rows)}`;
  return [sheet(plan, { name: "old-warp", kind: "plain", heading: "The old warp", body })];
}
