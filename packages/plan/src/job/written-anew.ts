import { CST, Parser } from "yaml";
import type { FaultPath } from "./fault.js";
import type { Branch, Tree } from "./form.js";
import { sameData } from "./same-data.js";
import { isLong, membersOf, nameOf, putIn, replaceValue } from "./source-members.js";
import type { Member, Written } from "./source-members.js";
import { remarkAt } from "./source-remark.js";
import { takeOut } from "./source-take-out.js";
import { yamlText } from "./yaml-lines.js";

/** A remark to stand behind a value of a job file. */
export interface Remark {
  /** As it is written: names of keys, numbers of members counted from 0. */
  readonly path: FaultPath;
  readonly says: string;
}

function changeGroup(written: Written, was: readonly Branch[], now: readonly Branch[]): void {
  const [before, after] = [new Map(was), new Map(now)];
  for (const [at, [name, tree]] of now.entries()) {
    const names = membersOf(written).map(nameOf);
    const member = membersOf(written)[names.indexOf(name)];
    const behind = Math.max(-1, ...now.slice(0, at).map(([key]) => names.indexOf(key)));
    if (member === undefined) putIn(tree, name, behind + 1, written);
    else change(member, before.get(name), tree, written);
  }
  // Last, so that there is always one to stand behind.
  for (const member of membersOf(written))
    if (before.has(nameOf(member)) && !after.has(nameOf(member))) takeOut(member, written);
}

/** Members alike at the head and the foot of two lists. */
function alike(was: readonly Tree[], now: readonly Tree[]): readonly [head: number, foot: number] {
  const most = Math.min(was.length, now.length);
  let [head, foot] = [0, 0];
  while (head < most && sameData(was[head], now[head])) head += 1;
  while (foot < most - head && sameData(was.at(-1 - foot), now.at(-1 - foot))) foot += 1;
  return [head, foot];
}

function changeList(written: Written, was: readonly Tree[], now: readonly Tree[]): void {
  const members = membersOf(written);
  const [head, foot] = alike(was, now);
  const [toChange, other] = [members.slice(head, members.length - foot), now.slice(head, now.length - foot)];
  for (const member of toChange.slice(other.length)) takeOut(member, written);
  for (const [at, tree] of other.entries()) {
    const member = toChange[at];
    if (member === undefined) putIn(tree, null, head + at, written);
    else change(member, was[head + at], tree, written);
  }
}

/** Whether it was written on one line, without remarks, and no longer fits there. */
function outgrows(member: Member, was: Tree, now: Tree, within: Written): boolean {
  const { value } = member;
  if (within.type !== "block-map" || value?.type !== "flow-collection") return false;
  const isOneLine = !/[\n#]/u.test(CST.stringify({ ...value, end: value.end.slice(0, 1) }));
  return isOneLine && !isLong(member, was, within.indent) && isLong(member, now, within.indent);
}

/** What stands there, changed only where it says something else. */
function change(member: Member, was: Tree | undefined, now: Tree, within: Written): void {
  if (sameData(was, now)) return;
  const { value } = member;
  const isWithin = CST.isCollection(value) && typeof was === "object" && typeof now === "object";
  if (isWithin && !outgrows(member, was, now, within)) {
    if ("group" in was && "group" in now && now.group.length > 0) {
      changeGroup(value, was.group, now.group);
      return;
    }
    if ("list" in was && "list" in now && membersOf(value).length === was.list.length) {
      changeList(value, was.list, now.list);
      return;
    }
  }
  replaceValue(member, now, within);
}

/**
 * A file with the values that are no longer the same, and all others as they were written, with their spaces and remarks.
 *
 * @param was what the text says
 * @param now what it is to say
 */
export function writtenAnew(
  text: string,
  was: readonly Branch[],
  now: readonly Branch[],
  remarks: readonly Remark[],
): string {
  const tokens = [...new Parser().parse(text === "" || text.endsWith("\n") ? text : `${text}\n`)];
  const { value } = tokens.find((token) => token.type === "document") ?? {};
  const written = (): string => tokens.map((token) => CST.stringify(token)).join("");
  const isGroup = CST.isCollection(value) && value.type !== "block-seq" && membersOf(value).length > 0;
  if (value === undefined) return now.length === 0 ? written() : written() + yamlText({ group: now });
  if (!isGroup || now.length === 0) return yamlText({ group: now });
  changeGroup(value, was, now);
  for (const { path, says } of remarks) remarkAt(value, path, says);
  return written();
}
