import { inside, refuse } from "./form.js";
import type { At } from "./form.js";
import { oneOf, whole } from "./forms.js";
import type { Node } from "./node.js";
import { entryOf, opened } from "./node.js";
import type { RunKind } from "./run-kind.js";
import { isMirrored, isRepeated } from "./runs.js";
import type { AnyRun, Runs } from "./runs.js";
import { jobWords } from "./job-words.js";

const DEEPEST = 8;

/** Where in the list one reads: how deep, whether within a repeat, and whether an open place was met. */
interface Reach {
  readonly depth: number;
  readonly repeats: boolean;
  readonly open: { met: boolean };
}

function openPlace(reach: Reach, node: Node, at: At): boolean {
  const remedy = reach.repeats
    ? "Within a repeat it could be any number: write the number."
    : "Write the number of one of them.";
  if (reach.repeats || reach.open.met) {
    refuse(at, node, {
      expected: "one open place, never within a repeat",
      received: "the rest",
      remedy,
      code: "ambiguous",
    });
    return false;
  }
  reach.open.met = true;
  return true;
}

function isGroupOfRuns(node: Node): boolean {
  const group = opened(node);
  return group.kind === "group" && ["repeat", "of", "mirror", "middle"].some((key) => entryOf(node, key) !== undefined);
}

const NOTHING: Node = { kind: "nothing" };
const times = oneOf("the rest");
const number = whole("repeats");
const middle = oneOf(...jobWords["stripes.middle"]);

function readRun<Run>(kind: RunKind<Run>, node: Node, at: At, reach: Reach): AnyRun<Run> | null {
  if (!isGroupOfRuns(node)) {
    const run = kind.run.read(node, at);
    if (opened(node).kind === "nothing")
      return refuse(at, node, { expected: `a run of ${kind.noun}`, remedy: "Fill it in.", code: "missing" });
    return run !== null && kind.isOpen(run) && !openPlace(reach, node, at) ? null : run;
  }
  const group = opened(node);
  const keys = group.kind === "group" ? group.entries.map(({ key }) => key) : [];
  const wanted = keys.includes("mirror") ? ["mirror", "middle"] : ["repeat", "of"];
  if (keys.length !== 2 || !wanted.every((key) => keys.includes(key))) {
    const expected = wanted.includes("middle") ? "mirror and middle" : "repeat and of";
    const remedy = keys.includes("mirror")
      ? "Write { mirror: [ … ], middle: once } or middle: twice: whether the last run stands once or twice."
      : "Write { repeat: 3, of: [ … ] } or { mirror: [ … ], middle: once }.";
    return refuse(at, node, { expected, received: keys.join(", "), remedy, code: "missing" });
  }
  if (wanted.includes("middle")) {
    const word = middle.read(entryOf(node, "middle") ?? NOTHING, inside(at, "middle"));
    const mirror = readRuns(kind, entryOf(node, "mirror") ?? NOTHING, inside(at, "mirror"), {
      ...reach,
      depth: reach.depth + 1,
    });
    if (word === null) {
      const isEmpty = opened(entryOf(node, "middle") ?? NOTHING).kind === "nothing";
      return isEmpty
        ? refuse(inside(at, "middle"), node, {
            expected: "once or twice",
            received: "nothing",
            remedy: "Write middle: once, or middle: twice.",
            code: "missing",
          })
        : null;
    }
    return mirror === null ? null : { mirror, middle: word };
  }
  const given = entryOf(node, "repeat") ?? NOTHING;
  const rest =
    given.kind === "text" ? given.text.trim() === "the rest" : given.kind === "data" && given.value === "the rest";
  const place = inside(at, "repeat");
  const isOpen = rest && openPlace(reach, given, place);
  const repeat = rest ? times.read(given, place) : number.read(given, place);
  const of = readRuns(kind, entryOf(node, "of") ?? NOTHING, inside(at, "of"), {
    ...reach,
    depth: reach.depth + 1,
    repeats: true,
  });
  if (opened(given).kind === "nothing")
    return refuse(place, node, {
      expected: "how often",
      received: "nothing",
      remedy: "Write a number, or the rest.",
      code: "missing",
    });
  return repeat === null || of === null || (rest && !isOpen) ? null : { repeat, of };
}

export function readRuns<Run>(kind: RunKind<Run>, given: Node, at: At, reach: Reach): Runs<Run> | null {
  const node = opened(given);
  const expected = `a list of ${kind.noun}`;
  if (reach.depth > DEEPEST)
    return refuse(at, node, {
      expected: `lists at most ${String(DEEPEST)} deep`,
      remedy: "Write some of it out.",
      code: "out-of-range",
    });
  if (node.kind === "nothing") {
    return reach.depth === 1
      ? null
      : refuse(at, node, { expected, remedy: "Write its runs in brackets.", code: "missing" });
  }
  if (node.kind === "list") {
    if (node.items.length === 0)
      return refuse(at, node, { expected, remedy: "Leave the key out where there is none.", code: "empty" });
    const read = node.items.map((item, index) => readRun(kind, item, inside(at, index), reach));
    const isRead = (one: AnyRun<Run> | null): one is AnyRun<Run> => one !== null;
    const alone =
      node.items.length > 1 || reach.depth > 1
        ? read.findIndex(
            (run) => run !== null && !isRepeated(run) && !isMirrored(run) && kind.standsAlone?.(run) === true,
          )
        : -1;
    if (alone >= 0) {
      const item = node.items[alone] ?? node;
      return refuse(inside(at, alone), item, {
        expected: `a number before ${kind.noun}`,
        remedy: "A comma parts runs: write the number of this one too.",
      });
    }
    return read.every(isRead) ? read : null;
  }
  if (isGroupOfRuns(node))
    return refuse(at, node, {
      expected,
      remedy: "A group stands only in a list: put brackets round it.",
      code: "wrong-kind",
    });
  if (given.kind === "data") return refuse(at, node, { expected, remedy: "Give a list.", code: "wrong-kind" });
  const run = readRun(kind, node, at, reach);
  return run === null ? null : [run];
}
