import { hoursToJoin } from "@thrum/maths";
import type { WarpPlan } from "../plan/warp-plan.js";
import { tyingSentence } from "../text/group-lines.js";
import { chainGroups, spansOf } from "./chain-index.js";
import { KNOTS_PER_HOUR } from "./joining-pages.js";
import { html } from "./markup.js";
import type { Markup } from "./markup.js";
import { columns, sheet, tickBox } from "./sheet.js";
import { colourSign, signsOf } from "./signs.js";

function layingTable({ laid, endOneAt }: WarpPlan): Markup {
  const rows = laid.map(({ place, number, firstEnd, lastEnd }) => {
    const [from, to] = endOneAt === "left" ? [firstEnd, lastEnd] : [lastEnd, firstEnd];
    return [place, number, `${String(from)} to ${String(to)}`];
  });
  return columns("The chains as they lie before you", ["from your left", "chain", "ends"], rows);
}

function byChain(plan: WarpPlan): Markup {
  const rows = chainGroups(plan).map(({ chain, firstEnd, lastEnd, ends, firstGroup, lastGroup }) => [
    tickBox,
    chain,
    `${String(firstEnd)} to ${String(lastEnd)}`,
    ends,
    `${String(firstGroup)} to ${String(lastGroup)}`,
  ]);
  return columns("Which ends each chain takes", ["tied", "chain", "ends", "how many", "groups"], rows);
}

function byColour(plan: WarpPlan): Markup {
  const signs = signsOf(plan);
  const rows = plan.yarns.flatMap(({ name }) =>
    spansOf(name, plan.groups).map(({ passOver, firstEnd, lastEnd, ends }) => [
      tickBox,
      colourSign(name, signs),
      passOver,
      `${String(firstEnd)} to ${String(lastEnd)}`,
      ends,
    ]),
  );
  const heads = ["tied", "colour", "pass over", "then tie ends", "how many"];
  return columns("One colour at a time", heads, rows);
}

/** How the chains are laid, and which ends each takes: one can be tied before another is wound. */
export function layingSheet(plan: WarpPlan): readonly Markup[] {
  const { author, title, year, place } = hoursToJoin.declaration.source;
  const body = html`<p>End 1 is at your <b>${plan.endOneAt.toUpperCase()}</b> as you sit.</p>
    ${layingTable(plan)}
    <p>${plan.position.beforeTying}</p>
    <p>${tyingSentence(plan)}</p>
    <p>
      A rest is marked after about 45 minutes of knots, reckoned at ${KNOTS_PER_HOUR} an hour: the slower end of the
      goal in ${author}, ${title}, ${year}, ${place}. Whoever ties more slowly rests sooner.
    </p>
    ${byChain(plan)}
    <p>
      One chain, or one colour, can be tied before the next is wound. Count the old ends of the gap off and tie them
      aside in a loose knot; they wait for their own chain.
    </p>
    ${byColour(plan)}`;
  return [sheet(plan, { name: "laying", kind: "plain", heading: "Laying the chains", body })];
}
