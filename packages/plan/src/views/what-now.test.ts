import { describe, expect, it } from "vitest";
import { exampleText, jobIn } from "#ci/example-jobs.js";
import { planWarp } from "../data/plan-warp.js";
import type { Job } from "../job/job.js";
import type { Block, Line, Section, TableRow } from "./block.js";
import { planPages } from "./plan-pages.js";

/** Pages that are read with the hands at the loom, the reel or the scissors. */
const AT_THE_LOOM = [
  "old-warp",
  "winding",
  "before-cutting",
  "laying",
  "partners",
  "joining",
  "drawing-through",
  "shaft-check",
  "first-inches",
  "pieces",
];

const DO =
  /^(Beam|Begin|Count|Cut|Draw|Ease|Fasten|Hang|Keep|Label|Lay|Lift|Lock|Look|Make|Measure|Pick|Pull|Put|Sley|Stop|Take|Thread|Tie|Trim|Untie|Weave|Wind|Write)\b/u;
/** "While the warp is still tight, lift …", "Two ends crossed, each on the other's shaft: untie …" */
const WHEN_DO =
  /^(?:While|Where|If) [^:]*, (?:lift|pick|tie|put) |^[^:]+: (?:[^.]*\. )?(?:draw|hang|look|tie|untie) /iu;
/** In a row: what is done there and in no other. */
const DO_HERE = /^(?:change colour|cut back|expect|hold|lay|pass over|stop|tie) |^as found before: /u;

const textOf = (line: Line): string =>
  line.map((part) => (typeof part === "object" ? ("yarn" in part ? part.yarn : "____") : String(part))).join("");

function rowUnanswered({ cells, note }: TableRow, meanwhile: number): readonly string[] {
  const within = cells[meanwhile];
  const dos = [
    ...(note === null ? [] : note.startsWith("as found") ? [note] : note.split("; ")),
    ...(within === undefined ? [] : textOf(within).split("; ")),
  ];
  return dos.filter((one) => one !== "" && !DO_HERE.test(one));
}

/** Every line of a page that does not say what to do, and stands beneath none that does. */
function unanswered({ heading, blocks }: Section): readonly string[] {
  const found: string[] = [];
  let isTold = false;
  let isList = false;
  for (const block of blocks) {
    if (block.is === "heading") isTold = false;
    if (block.is === "says") {
      const text = textOf(block.says);
      if (block.as === "step") {
        if (!DO.test(text) && !WHEN_DO.test(text)) found.push(text);
        [isTold, isList] = [true, text.endsWith(":")];
      } else if (block.as === "caution") {
        if (!DO.test(text)) found.push(text);
      } else if (block.as === "fact" && isTold && !WHEN_DO.test(text) && !text.endsWith(":")) found.push(text);
      if (block.as === "fact" && isList && !WHEN_DO.test(text)) found.push(text);
    }
    if (block.is === "blanks" && !isTold) found.push(...block.what);
    if (block.is === "table" && block.ticked && !isTold) found.push(block.caption);
    if (block.is === "table")
      found.push(...block.rows.flatMap((row) => rowUnanswered(row, block.heads.indexOf("meanwhile"))));
  }
  return found.map((one) => `${heading}: ${one}`);
}

function unansweredIn(job: Job): readonly string[] {
  const pages = planPages(planWarp(job)).filter(({ name }) => AT_THE_LOOM.includes(name));
  expect(pages.length).toBeGreaterThan(5);
  return pages.flatMap(unanswered);
}

function changed(text: string, ...changes: readonly (readonly [from: string | RegExp, to: string])[]): Job {
  return jobIn(
    changes.reduce((so, [from, to]) => {
      const made = so.replace(from, to);
      if (made === so) throw new Error(`nothing to change at ${String(from)}`);
      return made;
    }, text),
  );
}

const POSITIONS = [
  ["in front of the reed", null, "left"],
  ["in front of the reed", null, "right"],
  ["behind the reed", "back of the loom", "left"],
  ["behind the reed", "back of the loom", "right"],
  ["behind the reed", "front of the loom", "left"],
  ["behind the reed", "front of the loom", "right"],
  ["behind the heddles", null, "left"],
  ["behind the heddles", null, "right"],
] as const;

/** What may be at the loom: each at each of the eight positions. */
const WARPS: Readonly<Record<string, Job>> = {
  "plain stripes": jobIn(exampleText("2-hall-napkins")),
  blends: jobIn(exampleText("3-blended-towels")),
  faults: jobIn(exampleText("7-warp-with-faults")),
  "ends added, with a thrum": jobIn(exampleText("6-wider-runner")),
  "ends added, threaded by themselves": changed(
    exampleText("2-hall-napkins"),
    ["  - 24 natural", "  - 32 natural"],
    ["join: {", "join: { sides: both, partner: thread it itself,"],
  ),
  "ends dropped before end 1": changed(
    exampleText("2-hall-napkins"),
    ["  - 24 natural", "  - 16 natural"],
    ["join: {", "join: { sides: before end 1,"],
  ),
  "from the last end": changed(exampleText("2-hall-napkins"), ["join: {", "join: { order: from the last end,"]),
  "one colour at a time": changed(exampleText("2-hall-napkins"), ["join: {", "join: { order: one colour at a time,"]),
  "weft in stripes": jobIn(exampleText("8-blankets")),
};

describe("what do I do now? has an answer at every line", () => {
  describe.each(Object.entries(WARPS))("%s", (_, job) => {
    it.each(POSITIONS)("knots %s, facing the %s, end 1 on the %s", (knots, faces, endOneOn) => {
      const join = Object.fromEntries(Object.entries(job.join ?? {}).filter(([key]) => key !== "faces")) as Job["join"];
      const sat: Job = {
        ...job,
        loom: { ...job.loom, endOneOn },
        join: { ...join, knots, ...(faces === null ? {} : { faces }) },
      };
      expect(unansweredIn(sat)).toEqual([]);
    });
  });

  const afresh = [/oldWarp:[\s\S]*?\n\n/u, "oldWarp: none\n\n"] as const;
  it("threaded afresh from the front", () => {
    expect(unansweredIn(changed(exampleText("2-hall-napkins"), afresh, [/join: .*\n/u, ""]))).toEqual([]);
  });
  it("threaded afresh, spread by a raddle and beamed before", () => {
    const raddle = ["winding: {", "winding: { raddle: 2 per inch,"] as const;
    expect(unansweredIn(changed(exampleText("2-hall-napkins"), afresh, [/join: .*\n/u, ""], raddle))).toEqual([]);
  });
});

describe("the question is asked in earnest", () => {
  const page = (...blocks: readonly Block[]): Section => ({
    name: "joining",
    heading: "Joining list",
    needs: [],
    isOfJob: true,
    blocks,
  });
  const step = (text: string): Block => ({ is: "says", as: "step", says: [text] });
  const table = (note: string | null): Block => ({
    is: "table",
    caption: "The knots",
    read: "bench",
    ticked: true,
    heads: ["group"],
    rows: [{ cells: [[1]], isEdge: false, note }],
  });

  it.each<readonly [string, Section]>([
    ["a step that tells a state", page(step("The sticks are out."))],
    ["a list to be ticked with nothing to do above it", page(table(null))],
    ["a list whose heading begins anew", page(step("Tie a knot."), { is: "heading", heading: "Raddle" }, table(null))],
    ["a row that only names what is wrong", page(step("Tie a knot."), table("a broken end"))],
    ["a fact among the steps", page(step("Tie a knot."), { is: "says", as: "fact", says: ["368 knots."] })],
    ["lines to fill in with nothing to measure", page({ is: "blanks", what: ["width"] })],
  ])("%s", (_, section) => {
    expect(unanswered(section)).toHaveLength(1);
  });
});
