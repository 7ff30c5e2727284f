import { CST } from "yaml";
import type { Tree } from "./form.js";
import { flowText, scalar, yamlText } from "./yaml-lines.js";

/** A list or a group of a file as it was written, with every space and remark. */
export type Written = CST.BlockMap | CST.BlockSequence | CST.FlowCollection;
/** A key with its value, or a member of a list. */
export type Member = CST.CollectionItem;

const LINE = 100;

export function mark(type: CST.SourceToken["type"], source: string): CST.SourceToken {
  return { type, offset: 0, indent: 0, source };
}

const space = (wide: number): CST.SourceToken => mark("space", " ".repeat(wide));
const lineEnd = (): CST.SourceToken => mark("newline", "\n");

/** Its members; what stands behind the last, a remark or a comma, is none. */
export function membersOf(written: Written): readonly Member[] {
  const items: readonly Member[] = written.items;
  return items.filter(({ key, value, sep }) => key !== undefined || value !== undefined || sep !== undefined);
}

export function nameOf({ key }: Member): string {
  const name = key !== null && CST.isScalar(key) ? CST.resolveAsScalar(key).value : "";
  return name.trim().replace(/\s+/gu, " ").normalize("NFC");
}

/** What stands up to the end of the line, and what stands below it. */
function firstLine(tokens: readonly CST.SourceToken[]): readonly [CST.SourceToken[], CST.SourceToken[]] {
  const at = tokens.findIndex(({ type }) => type === "newline") + 1;
  return at === 0 ? [[...tokens], []] : [tokens.slice(0, at), tokens.slice(at)];
}

function isWritten(token: CST.Token | null | undefined): token is Written {
  return CST.isCollection(token);
}

/** The marks behind a value on its line: its remark, and the end of the line. */
export function behind(value: CST.Token): readonly CST.SourceToken[] {
  // Of brackets the closing one is the first of them.
  if (value.type === "flow-collection") return value.end.slice(1);
  return CST.isScalar(value) && value.type !== "block-scalar" ? (value.end ?? []) : [];
}

export function endWith(value: CST.Token, end: readonly CST.SourceToken[]): void {
  if (value.type === "flow-collection") value.end.splice(1, value.end.length, ...end);
  else if (CST.isScalar(value) && value.type !== "block-scalar") value.end = [...end];
}

function textOf(source: string, end: readonly CST.SourceToken[]): CST.Token {
  return { type: "scalar", offset: 0, indent: 0, source, end: [...end] };
}

/** A value within brackets, or behind the dash of a list. */
function replaceWithin(member: Member, tree: Tree, end: readonly CST.SourceToken[]): void {
  member.value = textOf(flowText(tree), end);
}

/** Whether a list or a group behind its key is too long for a line. */
export function isLong(member: Member, tree: Tree, indent: number): boolean {
  return typeof tree === "object" && indent + nameOf(member).length + flowText(tree).length > LINE;
}

/** Lists and groups too long for a line stand below their key, with its remark beside it. */
function replaceBehindKey(member: Member, tree: Tree, indent: number, end: readonly CST.SourceToken[]): void {
  const flow = flowText(tree);
  const colon = mark("map-value-ind", ":");
  if (!isLong(member, tree, indent)) {
    member.sep = [colon, space(1)];
    member.value = textOf(flow, end);
    return;
  }
  const pad = " ".repeat(indent + 2);
  const lines = yamlText(tree).trimEnd().split("\n").join(`\n${pad}`);
  member.sep = [colon, ...end, mark("space", pad)];
  member.value = textOf(lines, [lineEnd()]);
}

/** Puts another value in the place of one, whose remark stays. */
export function replaceValue(member: Member, tree: Tree, within: Written): void {
  const { value, sep } = member;
  const isBlock = value !== undefined && isWritten(value) && value.type !== "flow-collection";
  if (within.type === "flow-collection") replaceWithin(member, tree, value === undefined ? [] : behind(value));
  else if (sep === undefined) {
    const end = value === undefined || isBlock || value.type === "block-scalar" ? [lineEnd()] : behind(value);
    replaceWithin(member, tree, end);
  } else {
    const [beside, below] = firstLine(sep.slice(sep.findIndex(({ type }) => type === "map-value-ind") + 1));
    const isAlone = value === undefined || isBlock;
    const besideKey = beside[0]?.type === "comment" ? [space(1), ...beside] : beside;
    const end = isAlone ? besideKey : value.type === "block-scalar" ? [lineEnd()] : behind(value);
    replaceBehindKey(member, tree, within.indent, end.length === 0 ? [lineEnd()] : end);
    // Behind a key without a value stand the remarks of the next one.
    if (value === undefined && member.value !== undefined && "end" in member.value) member.value.end.push(...below);
  }
}

/** Puts a member in behind so many; the first of a list of lines stays the first. */
export function putIn(tree: Tree, name: string | null, after: number, written: Written): void {
  const items: Member[] = written.items;
  const isFlow = written.type === "flow-collection";
  const at = isFlow || written.type === "block-map" ? after : Math.max(1, after);
  const before = items[at - 1]?.value;
  const first = isFlow || at > 0 ? undefined : items[0];
  const start =
    first !== undefined
      ? first.start
      : isFlow
        ? at === 0
          ? [space(1)]
          : [mark("comma", ","), space(1)]
        : [space(written.indent), ...(name === null ? [mark("seq-item-ind", "-"), space(1)] : [])];
  // What stands above the first of lines stays above them.
  if (first !== undefined) first.start = [space(written.indent)];
  const member: Member = { start };
  if (name !== null) {
    member.key = textOf(scalar(name), []);
    member.sep = [mark("map-value-ind", ":"), space(1)];
  }
  if (isFlow) {
    // The space before a bracket stays before the bracket.
    const end = at === 0 ? [space(1)] : before === undefined ? [] : behind(before);
    if (before !== undefined) endWith(before, []);
    member.value = textOf(flowText(tree), end);
    const next = items[at];
    if (next !== undefined && next.start[0]?.type !== "comma" && membersOf(written).includes(next)) {
      next.start = [mark("comma", ","), space(1)];
      member.value = textOf(flowText(tree), []);
    }
  } else if (name === null) member.value = textOf(flowText(tree), [lineEnd()]);
  else replaceBehindKey(member, tree, written.indent, [lineEnd()]);
  items.splice(at, 0, member);
}
