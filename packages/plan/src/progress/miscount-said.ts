import type { Miscount, Suspect, TyingOrder } from "./miscount.js";

type Seen = Pick<Miscount, "seen" | "lookFor" | "means" | "odd"> & { readonly since: readonly Suspect[] };

function oddSaid({ group, firstEnd, lastEnd, old, new: added }: Miscount["odd"][number]): string {
  const off = (number: number, noun: string): readonly string[] =>
    number === 0
      ? []
      : [`${String(Math.abs(number))} ${noun}${Math.abs(number) === 1 ? "" : "s"} too ${number > 0 ? "many" : "few"}`];
  const parts = [...off(old, "old end"), ...off(added, "new end")].join(" and ");
  return `Group ${String(group)}, ends ${String(firstEnd)} to ${String(lastEnd)}, was counted with ${parts}: begin there.`;
}

/** A miscount in sentences: what it means and where to look, and how much may be untied. */
export function miscountSaid(
  { seen, lookFor, means, odd, since }: Seen,
  order: TyingOrder,
): Pick<Miscount, "says" | "untie"> {
  if (lookFor === "tie on") return { says: "Tie on: they have partners.", untie: "" };
  const [is, none] = seen.new > 0 ? (["new", "old"] as const) : (["old", "new"] as const);
  const [passed = "", twice = "", chain = ""] = means;
  const firstEnd = Math.min(...since.map((one) => one.firstEnd));
  const lastEnd = Math.max(...since.map((one) => one.lastEnd));
  const says = [
    `${String(seen[is])} ${is} left, no ${none}: ${passed}, or ${twice}; else ${chain}.`,
    `Look for ${lookFor} in ends ${String(firstEnd)} to ${String(lastEnd)}.`,
    ...odd.filter((one) => one.old !== 0 || one.new !== 0).map(oddSaid),
  ];
  const groups = since.map(({ group }) => group);
  const [low, high] = [Math.min(...groups), Math.max(...groups)];
  const upTo = low === high ? `group ${String(low)}` : `groups ${String(low)} to ${String(high)}`;
  const agreed =
    order === "one colour at a time"
      ? "It lies in this stripe."
      : order === "from end 1"
        ? firstEnd === 1
          ? "No edge was held before it."
          : `All before end ${String(firstEnd)} agreed.`
        : `All after end ${String(lastEnd)} agreed.`;
  return { says: says.join(" "), untie: `${agreed} Untie no more than ${upTo}.` };
}
