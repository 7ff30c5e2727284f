import { expect, it } from "vitest";
import { readsOf } from "../core/reads.js";
import { nodeOf } from "../core/source.js";
import type { Node } from "../core/source.js";
import { LISTED, isFigure } from "../data/listed.js";
import { PLAN } from "../figures/list.js";
import type { Form } from "../job/form.js";
import { jobForm } from "../job/job.js";
import { VIEWS } from "./pages.js";

const inViews = VIEWS.flatMap(({ blocks }) => blocks.flatMap(({ reads }) => reads.map(nodeOf)));

/** All that is read on the way from some nodes, as far as `goesOn` says. */
function readFrom(from: readonly Node[], goesOn: (node: Node) => boolean = () => true): ReadonlySet<Node> {
  const seen = new Set<Node>();
  const walk = (node: Node): void => {
    if (seen.has(node)) return;
    seen.add(node);
    if (goesOn(node)) readsOf(PLAN, node).forEach(walk);
  };
  from.forEach(walk);
  return seen;
}

/** What takes an amount as it stands, and so prints it. */
const PASSES_ON: readonly Node["is"][] = ["all", "its", "wish", "orNone", "field", "these", "joined", "group", "own"];

/** Whether the workings at the back print it, with the sum that gives it. */
function hasSum(node: Node): boolean {
  if (node.is === "figure" || node.is === "searched") return true;
  return (node.is === "first" || node.is === "choice" || node.is === "its") && readsOf(PLAN, node).some(hasSum);
}

/** Figures that only choose a way by a word. */
const WORDS: readonly string[] = [
  ...["breaks.writtenAs", "chainLimit.by", "enough.isEnough", "knots.spaceIs", "loom.sidesBy", "loom.sleyIs"],
  ...["loom.written", "piece.hasAllowance", "warpLeft.isEnough", "warpLeft.takeUpBy"],
  ...["yarn.countWritten", "yarn.counts", "yarn.isThere", "yarn.isWound", "yarn.soldBy"],
];

/** Figures that are counted or a key, and only feed others: their number stands in the working of those. */
const FEED_OTHERS: readonly string[] = [
  ...["knots.endsInDent", "loom.empty", "loom.endsOfStripes", "loom.mended", "order.growing"],
  ...["piece.allowance", "piece.eachStripe", "piece.given", "piece.more", "piece.picks", "remaining.entriesOf"],
  ...["warpLeft.wasteToCome", "weft.picks", "weft.shots", "weft.stripes", "weft.threads", "yarn.beside", "yarn.folded"],
];

/** Parts of the plan as data that no page prints, for programs beside it. */
const FOR_PROGRAMS: Readonly<Record<string, string>> = {
  "order.tape": "the marks of the piece tape, drawn by the site and walked along at the loom",
  "stripe.neighbours": "yarns side by side and how different they look",
  "yarn.inDent": "printed with its sum: the sentence of the knots says its number",
  "yarn.diameter": "as inDent",
  "yarn.lengthToMass": "as inDent",
};

const nameOf = ({ group, name }: { readonly group: string; readonly name: string }): string => `${group}.${name}`;
const inOrder = (names: readonly string[]): readonly string[] => [...names].sort((a, b) => (a < b ? -1 : 1));

it("prints every figure on a page or with its sum, but for those that only feed others", () => {
  const printed = readFrom(inViews, ({ is }) => PASSES_ON.includes(is));
  const others = LISTED.filter((one) => isFigure(one) && !printed.has(one.node) && !hasSum(one.node));
  expect(inOrder(others.map(nameOf))).toEqual(inOrder([...WORDS, ...FEED_OTHERS]));
});

it("lists no figure and no part that leads to no page, but for what programs read", () => {
  const read = readFrom(inViews);
  const unread = LISTED.filter(({ node }) => !read.has(node));
  expect(inOrder(unread.map(nameOf))).toEqual(inOrder(Object.keys(FOR_PROGRAMS)));
});

/** The keys of a job, down to those that hold a value. */
function keysIn(form: Form<unknown>, path: readonly string[] = []): readonly string[] {
  const { shape } = form;
  const among = (keys: Readonly<Record<string, Form<unknown>>>): readonly string[] =>
    Object.entries(keys).flatMap(([name, one]) => keysIn(one, [...path, name]));
  switch (shape.kind) {
    case "group":
      return among(shape.keys);
    case "shapes":
      return among(shape.ways);
    case "list":
    case "byName":
      return keysIn(shape.of, [...path, "*"]);
    case "either":
      return shape.ways.flatMap((way) => keysIn(way, path));
    case "text":
    case "word":
    case "words":
    case "number":
    case "runs":
      return [path.join(".")];
  }
}

/** Lists and records that a part takes whole to make its rows: that says nothing of the keys within. */
const WHOLE: readonly string[] = ["pieces", "yarns"];

/** Keys that are read otherwise: the title by the printers, the rest with the rows. `every-leaf` changes each and looks. */
const READ_WITH_ROWS: readonly string[] = [
  ...["title", "yarns.*.fibre", "yarns.*.seen", "pieces.*.number", "pieces.*.name"],
];

it("reads every key of the job", () => {
  const read = [...readFrom([...LISTED.map(({ node }) => node), ...inViews])].flatMap((node): readonly string[] => {
    if (node.is === "key") return [node.path.join(".")];
    return node.is === "field" && node.of.is === "key" ? [[...node.of.path, node.field].join(".")] : [];
  });
  const own = read.filter((one) => !WHOLE.includes(one));
  const isRead = (key: string): boolean =>
    own.some((one) => key === one || key.startsWith(`${one}.`) || one.startsWith(`${key}.`));
  const keys = [...new Set(keysIn(jobForm))];
  expect(keys.length).toBeGreaterThan(70);
  expect(keys.filter((key) => !isRead(key))).toEqual(READ_WITH_ROWS);
});
