import type { CST } from "yaml";
import { behind, endWith } from "./source-members.js";
import type { Member, Written } from "./source-members.js";

const isSpace = (token: CST.SourceToken | undefined): boolean => token?.type === "space";

/** Takes a member out, with its remark; what stands above it goes on above the next. */
export function takeOut(member: Member, written: Written): void {
  const items: Member[] = written.items;
  const at = items.indexOf(member);
  const next = items[at + 1];
  items.splice(at, 1);
  const before = items[at - 1]?.value;
  if (written.type === "flow-collection" && next === undefined && before !== undefined && member.value !== undefined)
    endWith(before, behind(member.value));
  if (at > 0 || next === undefined) return;
  if (written.type === "flow-collection") next.start = next.start.filter(({ type }) => type !== "comma");
  else {
    const start = member.start.filter(({ type }) => type !== "seq-item-ind");
    const above = written.type === "block-seq" && isSpace(start.at(-1)) ? start.slice(0, -1) : start;
    next.start = [...above, ...(isSpace(next.start[0]) ? next.start.slice(1) : next.start)];
  }
}
