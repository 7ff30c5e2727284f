import { CST } from "yaml";
import type { FaultPath } from "./fault.js";
import { mark, membersOf, nameOf } from "./source-members.js";
import type { Member, Written } from "./source-members.js";

/** A remark on the line of these marks, before one that stands there; what was said the time before goes. */
function remarked(tokens: readonly CST.SourceToken[], says: string): CST.SourceToken[] {
  const end = tokens.findIndex(({ type }) => type === "newline");
  const line = end === -1 ? tokens : tokens.slice(0, end);
  const there = line.find(({ type }) => type === "comment");
  const was = /^(?:\w+ )?was /u.exec(says)?.[0] ?? says;
  const parts = there?.source.replace(/^# ?/u, "").trim().split("; ") ?? [];
  const kept = parts.filter((part) => part !== "" && !part.startsWith(was)).join("; ");
  const whole = mark("comment", kept === "" ? `# ${says}` : `# ${says}; ${kept}`);
  if (there !== undefined) return tokens.map((one) => (one === there ? whole : one));
  const rest = tokens.slice(line.length);
  return [...line.filter(({ type }) => type !== "space"), mark("space", " "), whole, ...rest];
}

function remarkBehind({ value, sep }: Member, says: string): void {
  if (value?.type === "flow-collection") value.end = remarked(value.end, says);
  else if (CST.isScalar(value)) {
    if (value.type !== "block-scalar") value.end = remarked(value.end ?? [], says);
  } else if (sep !== undefined) {
    const colon = sep.findIndex(({ type }) => type === "map-value-ind") + 1;
    sep.splice(colon, sep.length, ...remarked(sep.slice(colon), says));
  }
}

/** Puts a remark behind a value, or behind the nearest around it that ends its line. */
export function remarkAt(written: Written, path: FaultPath, says: string): void {
  let [here, found]: [Written | null, Member | null] = [written, null];
  let inside: FaultPath = path;
  for (const [at, step] of path.entries()) {
    if (here === null || here.type === "flow-collection") break;
    const members = membersOf(here);
    const next = typeof step === "number" ? members[step] : members.find((member) => nameOf(member) === step);
    if (next === undefined) break;
    found = next;
    inside = path.slice(at + 1);
    here = CST.isCollection(next.value) ? next.value : null;
  }
  const whole = [...inside.map(String), says].join(" ").replace(/\s+/gu, " ").trim();
  if (found !== null) remarkBehind(found, whole);
}
