import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse, stringify } from "yaml";
import { planWarp } from "../plan/plan-warp.js";
import { planText } from "../text/plan-text.js";
import type { Job } from "./job.js";
import { readJob } from "./read-job.js";

/** What only repeats the job, or what the input of a working holds of it. */
const ECHOES: readonly string[] = [
  ...["title", "note", "steps", "pieces", "threadsTogether", "weaverFaces", "knotsTied"],
  ...["spared", "waste", "old", "new", "says", "onHand", "packageMass", "others", "before", "after", "widthAtFell"],
];

function readAgain(changedJob: unknown): Job | null {
  const reading = readJob(stringify(changedJob));
  return reading.ok ? reading.job : null;
}

/** The plan's data without its echo of the job. */
function dataOf(job: Job): string {
  return JSON.stringify(planWarp(job), (key, value: unknown) => (ECHOES.includes(key) ? undefined : value));
}

type Path = readonly (string | number)[];

function leavesOf(value: unknown, path: Path = []): readonly (readonly [Path, unknown])[] {
  if (Array.isArray(value)) return value.flatMap((one, at) => leavesOf(one, [...path, at]));
  if (typeof value !== "object" || value === null) return [[path, value]];
  return Object.entries(value).flatMap(([key, one]) => leavesOf(one, [...path, key]));
}

function withLeaf(value: unknown, [key, ...rest]: Path, leaf: unknown): unknown {
  if (key === undefined) return leaf;
  if (Array.isArray(value)) return value.map((one: unknown, at) => (at === key ? withLeaf(one, rest, leaf) : one));
  const record = value as Readonly<Record<string, unknown>>;
  return { ...record, [key]: withLeaf(record[String(key)], rest, leaf) };
}

const CHOICES: readonly (readonly string[])[] = [
  ["in front of the reed", "behind the reed", "behind the heddles"],
  ["back of the loom", "front of the loom"],
  ["left", "right"],
  ["1 inch", "10 centimetres", "1 centimetre"],
  ["tex", "denier", "cotton", "worsted", "linen", "metric"],
  ["single", "finished thread"],
  ["once", "twice"],
  ["overhand, two strands together", "overhand, one strand", "square", "weaver's"],
];

/** Other values of the same sort: other numbers, lengths, masses, percentages, money, choices, colours or words. */
function othersFor(leaf: unknown, yarns: readonly string[]): readonly unknown[] {
  if (typeof leaf === "number") return [leaf + 1, leaf + 2, leaf * 2, leaf / 2, leaf - 1];
  if (leaf === "stripe edges") return [1, 2, 4];
  if (leaf === "not measured") return ["1.5 mm"];
  const words = String(leaf);
  const choice = [...CHOICES, yarns].find((choices) => choices.includes(words));
  if (choice !== undefined) return choice.filter((other) => other !== words);
  if (words.startsWith("#")) return ["#123456", "#fedcba"];
  const amount = /^(\d+)(.*)$/u.exec(words);
  if (amount === null) return [`${words} again`];
  return [Number(amount[1]) + 1, Number(amount[1]) * 2 + 1].map((more) => `${String(more)}${amount[2] ?? ""}`);
}

/**
 * Changed alone these leave no job: there is one version of the form; knots in front of the reed are tied facing the
 * back, those behind the heddles facing the front; a yarn is of one fibre only; one whose only stripe takes another
 * colour is left without any; and two stripes of one colour may be more than a chain can hold.
 */
const NAPKINS = ["thrum", "loom.weaverFaces", "stripes.1.mirror.0.colour", "stripes.1.mirror.1.of.1.colour"];
const ALWAYS_REFUSED: Readonly<Record<string, readonly string[]>> = {
  "hall-napkins/job.yaml": NAPKINS,
  "hall-napkins/woven.yaml": [
    ...NAPKINS,
    ...["fibres.cotton.yarns.0", "fibres.cotton.yarns.1", "fibres.linen.yarns.0"],
  ],
  "library-runner/job.yaml": ["thrum", "stripes.1.of.0.colour"],
  "bread-bags/job.yaml": ["thrum", "loom.weaverFaces", "stripes.0.mirror.2.colour", "stripes.0.mirror.3.colour"],
  "room-cushions/job.yaml": [
    ...["thrum", "loom.weaverFaces", "weft.yarn", "stripes.0.of.0.colour", "stripes.0.of.1.colour"],
    ...["fibres.cotton.yarns.0", "fibres.cotton.yarns.1", "fibres.wool.yarns.0"],
  ],
};
/** A limit may be moved a little and leave the chains, or the whole pieces, as they are. */
const LIMITS = ["winding.mostEndsInChain", "winding.chainsEndAt", "warpLeft"];

const files = readdirSync("examples").flatMap((folder) =>
  readdirSync(`examples/${folder}`)
    .filter((file) => file.endsWith(".yaml"))
    .map((file) => `${folder}/${file}`),
);

describe.each(files)("every leaf of %s, changed alone", (file) => {
  const written: unknown = parse(readFileSync(`examples/${file}`, "utf8"));
  const original = readAgain(written);
  const yarns = Object.keys(original?.yarns ?? {});

  it.each(leavesOf(written).map(([path, leaf]) => ({ path: path.join("."), keys: path, leaf })))(
    "$path: the plan changes, or the job is refused",
    ({ path, keys, leaf }) => {
      if (original === null) throw new Error("the example's job cannot be read");
      const told = path === "title" || path === "note" ? (job: Job) => planText(planWarp(job)) : dataOf;
      const was = told(original);
      const changed = othersFor(leaf, yarns).map((other) => readAgain(withLeaf(written, keys, other)));
      const isOther = changed.filter((job) => job !== null).map((job) => told(job) !== was);
      expect(isOther.length === 0).toBe(ALWAYS_REFUSED[file]?.includes(path) ?? false);
      const least = LIMITS.includes(path) ? 1 : isOther.length;
      expect(isOther.filter(Boolean).length).toBeGreaterThanOrEqual(least);
    },
  );
});
