import { Document, isMap, isScalar, LineCounter, Scalar, YAMLMap, YAMLSeq } from "yaml";
import { QuantityError } from "@thrum/maths";
import type { FaultPath } from "./fault.js";
import type { Form } from "./form.js";
import { jobForm } from "./job.js";
import { isNumber } from "./written-value.js";
import type { WrittenValue } from "./written-value.js";
import { composed } from "./yaml-document.js";
import { scalar } from "./yaml-lines.js";

/** What is to stand at one place of a job file; null takes the key out. */
export interface JobChange {
  readonly path: FaultPath;
  readonly value: WrittenValue | null;
}

/** The value as nodes of YAML, quoted where another reader would take it for something else. */
function nodeOf(value: WrittenValue): Scalar | YAMLMap | YAMLSeq {
  if (typeof value === "string") {
    const node = new Scalar(value);
    if (value !== "" && !isNumber(value) && scalar(value) !== value) node.type = Scalar.QUOTE_DOUBLE;
    if (value.includes("\n")) node.type = Scalar.BLOCK_LITERAL;
    return node;
  }
  const members: readonly (readonly [string, WrittenValue])[] = Object.entries(value);
  if (Array.isArray(value)) {
    const list = new YAMLSeq();
    for (const [, member] of members) list.items.push(nodeOf(member));
    return list;
  }
  const group = new YAMLMap();
  for (const [key, member] of members) group.set(nodeOf(key), nodeOf(member));
  return group;
}

/** The keys that may stand here, in the order in which they are written. */
function keysOf(form: Form<unknown> | null): readonly string[] {
  if (form?.shape.kind === "group") return Object.keys(form.shape.keys);
  return form?.shape.kind === "either" ? form.shape.ways.flatMap(keysOf) : [];
}

function formIn(form: Form<unknown> | null, step: string | number): Form<unknown> | null {
  const shape = form?.shape;
  if (shape?.kind === "group") return shape.keys[step] ?? null;
  if (shape?.kind === "list" || shape?.kind === "byName") return shape.of;
  if (shape?.kind !== "either") return null;
  return shape.ways.reduce<Form<unknown> | null>((found, way) => found ?? formIn(way, step), null);
}

const nameOf = (key: unknown): string => (isScalar(key) ? String(key.value) : String(key));

/** A key anew stands where the form has it, before the first that comes after it. */
function putIn(group: YAMLMap, form: Form<unknown> | null, step: string, node: unknown): void {
  if (group.has(step)) {
    group.set(step, node);
    return;
  }
  const order = keysOf(form);
  const own = order.indexOf(step);
  const later = group.items.findIndex(({ key }) => own >= 0 && order.indexOf(nameOf(key)) > own);
  group.set(nodeOf(step), node);
  if (later < 0) return;
  const [pair] = group.items.splice(-1, 1);
  if (pair !== undefined) group.items.splice(later, 0, pair);
}

/** Writes a value below a group or a list, making what is not there on the way. */
function put(
  at: YAMLMap | YAMLSeq,
  form: Form<unknown> | null,
  [step = "", ...rest]: FaultPath,
  value: WrittenValue,
): void {
  const next = at.get(step, true);
  const inside = formIn(form, step);
  const below = next instanceof YAMLMap || next instanceof YAMLSeq ? next : null;
  if (rest.length > 0 && below !== null) {
    put(below, inside, rest, value);
    return;
  }
  let node: Scalar | YAMLMap | YAMLSeq = nodeOf(value);
  if (rest.length > 0) {
    node = typeof rest[0] === "number" ? new YAMLSeq() : new YAMLMap();
    put(node, inside, rest, value);
  }
  const before = next instanceof Scalar || below !== null ? next : null;
  if (before?.comment) node.comment = before.comment;
  if (below !== null && "flow" in node && below.flow !== undefined) node.flow = below.flow;
  if (at instanceof YAMLMap) putIn(at, form, String(step), node);
  else at.set(step, node);
}

/** Takes a key out, and every group or list that is left with nothing. */
function takeOut(document: Document, path: FaultPath): void {
  if (path.length === 0 || !document.hasIn(path)) return;
  document.deleteIn(path);
  const above = path.slice(0, -1);
  const left = document.getIn(above, true);
  if ((left instanceof YAMLMap || left instanceof YAMLSeq) && left.items.length === 0) takeOut(document, above);
}

/**
 * A job file with some of its values changed and all others as they stood, remarks too. What is put in is not read: that
 * is `readJob`'s.
 *
 * @param text YAML of a job, as little of one as an empty text
 * @param changes places as `writtenPath` gives them, each with what is to stand there, one after the other
 * @throws QuantityError "unreadable" for a text that is no YAML
 * @example const sleyed = [{ path: ["loom", "sley"], value: "2" }];
 * jobTextWith("loom: { reed: 10 per inch } # maple", sleyed) // "loom: { reed: 10 per inch, sley: 2 } # maple\n"
 */
export function jobTextWith(text: string, changes: readonly JobChange[]): string {
  const { document, fault } = composed(text, new LineCounter());
  if (fault !== null) throw new QuantityError({ ...fault, function: "jobTextWith" });
  const whole = document ?? new Document();
  const top = isMap(whole.contents) && whole.contents.items.length > 0 ? whole.contents : new YAMLMap();
  whole.contents = top;
  for (const { path, value } of changes) {
    if (value === null) takeOut(whole, path);
    else put(top, jobForm, path, value);
  }
  return whole.toString({ lineWidth: 0, flowCollectionPadding: true });
}
