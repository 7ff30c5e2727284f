import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { planText, planWarp, readJob } from "@thrum/plan";
import { describe, expect, it } from "vitest";
import { parse, stringify } from "yaml";

const text = readFileSync("examples/hall-napkins/job.yaml", "utf8");
const job: unknown = parse(text);

/** What only repeats the job, or what the input of a working holds of it. */
const ECHOES: readonly string[] = [
  ...["title", "note", "steps", "pieces", "threadsTogether", "weaverFaces", "knotsTied"],
  ...["spared", "waste", "old", "new", "says", "onHand", "packageMass"],
];

/** The plan's data without its echo of the job, and its printed text; null where the job is refused. */
function planned(changedJob: unknown): { readonly data: string; readonly printed: string } | null {
  const reading = readJob(stringify(changedJob));
  if (!reading.ok) return null;
  const plan = planWarp(reading.job);
  const data = JSON.stringify(plan, (key, value: unknown) => (ECHOES.includes(key) ? undefined : value));
  return { data, printed: planText(plan) };
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

/** Other values of the same sort: other numbers, lengths, masses, percentages, choices, colours or words. */
function othersFor(leaf: unknown): readonly unknown[] {
  if (typeof leaf === "number") return [leaf + 1, leaf + 2, leaf * 2, leaf / 2, leaf - 1];
  if (leaf === "stripe edges") return [1, 2, 4];
  const words = String(leaf);
  const choice = [...CHOICES, ["natural", "madder", "indigo"]].find((choices) => choices.includes(words));
  if (choice !== undefined) return choice.filter((other) => other !== words);
  const amount = /^(\d+)(.*)$/u.exec(words);
  return amount === null ? [`${words} again`] : [`${String(Number(amount[1]) + 1)}${amount[2] ?? ""}`];
}

/**
 * Changed alone these leave no job: there is one version of the form; knots in front of the reed are tied facing the
 * back; and a yarn whose only stripe takes another colour is left without one.
 */
const ALWAYS_REFUSED = [
  ...["thrum", "loom.weaverFaces"],
  ...["stripes.1.mirror.0.colour", "stripes.1.mirror.1.of.1.colour"],
];
/** A limit may be moved a little and leave the chains as they are. */
const LIMITS = ["winding.mostEndsInChain"];
const original = planned(job);

describe("every leaf of the napkins' job, changed alone", () => {
  it.each(leavesOf(job).map(([path, leaf]) => ({ path: path.join("."), keys: path, leaf })))(
    "$path: the plan changes, or the job is refused",
    ({ path, keys, leaf }) => {
      const changed = othersFor(leaf).map((other) => planned(withLeaf(job, keys, other)));
      const plans = changed.filter((plan) => plan !== null);
      expect(plans.length === 0).toBe(ALWAYS_REFUSED.includes(path));
      const isFree = path === "title" || path === "note";
      const isOther = isFree
        ? plans.map(({ printed }) => printed !== original?.printed)
        : plans.map(({ data }) => data !== original?.data);
      expect(isOther.filter(Boolean).length).toBeGreaterThanOrEqual(LIMITS.includes(path) ? 1 : plans.length);
    },
  );
});

describe("the printed plan of the napkins", () => {
  const lines = original?.printed.split("\n") ?? [];

  it.each([
    // 24 + 2 × (40 + 3 × (12 + 6) + 66) + 24 = 368 ends; 10 dents × 2.
    "368 ends at 20 ends/in.",
    // 368 ÷ 20; 18.4 × 0.85.
    "Width in the reed: 18.4 in, by the tape about 18 3/8 in.",
    "Finished width: 15.64 in, by the tape about 15 5/8 in.",
    // 9 × (16 + 2 × 3/4) = 157.5; ÷ 0.9 = 175; ÷ 0.92 = 190.217; + 10 = 200.217 in; ÷ 36 = 5.5616 yd.
    "Warp for 9 pieces: 200.217 in, by the tape rounded up to 200 1/4 in.",
    "Wind 5.57 yd to each end.",
    // 368 × 18 in = 6624 in = 184 yd.
    "The old warp stands in for 18 in of waste at the back: 184 yd of yarn need not",
    // 14 ÷ 2 = 7 m to the gram, 142.857 tex; 8 ÷ 2 = 4 hanks of 840 yd to the pound, 147.637 tex; 0.9676 of it.
    "  CHECK, indigo: The new yarn is lighter, about 97 % of the old weight for its",
    // 9 × 17.5 × 1.18 + 10, the hundredths added up instead of divided out.
    "Added up instead of divided out, the percentages give 195.85 in, by the tape",
    // 252 × 5.56159 = 1401.52 yd; 175 in × 18 picks × 18.4 in = 57,960 in = 1610 yd; 3011.52 ÷ 3360 × 16 = 14.3406 oz.
    "natural   252  1401.53 yd  1610 yd  3011.53 yd  14.35 oz",
    // 14.3406 − 6 = 8.3406; 16 − 8.3406 = 7.6594.
    "natural  6 oz     8.35 oz  2 of 8 oz  7.65 oz",
    // 20 g × 7 m = 140 m; ÷ 36 = 3.8889 m = 4.2530 yd.
    "The indigo on hand allows a warp of 4.25 yd with these stripes.",
    // 17.5 ÷ 0.9 = 19.4444, eight of them 155.5556.
    "    8  155.556 in, by the tape about 155 1/2 in  ______",
    // 252 ÷ 4, 80 ÷ 4, 36 ÷ 4: every stripe but the indigo is whole repeats, and those come in pairs.
    "    1    92  63 natural, 20 madder, 9 indigo",
    // 1.6 mm ÷ (25.4 ÷ (28 √4)) = 3.5276 threads; 0.7 and 1.3 of it.
    "  Knots in natural and madder: A dent is 3.5 threads wide, between 2.5 and 4.6",
    // 80 × 5.56159 = 444.93 yd; ÷ 3360 = 0.132419 lb = 2.1187 oz; 8 − 2.1187 = 5.8813.
    "madder     80  444.93 yd   0 yd     444.93 yd   2.12 oz",
    "madder   0 oz     2.12 oz  1 of 8 oz  5.88 oz",
    // 36 × 5.08552 m = 183.079 m; ÷ 7 m/g = 26.154 g; less 20 g on hand 6.154; 50 − 6.154 = 43.846.
    "indigo     36  200.22 yd   0 yd     200.22 yd   26.16 g",
    "indigo   20 g     6.16 g   1 of 50 g  43.84 g",
    // The sixth edge is end 100: dent 50, and 100 = 25 × 4, the last place of the repeat.
    "     6  indigo      6     95   100    50      4      4",
    // The seventeenth is the last: end 368, dent 184, place 4.
    "    17  natural    24    345   368   184      4      4",
  ])("has the line %s", (line) => {
    expect(lines).toContain(line);
  });
});

describe("the program", () => {
  const run = (file: string): ReturnType<typeof spawnSync> =>
    spawnSync(process.execPath, ["plan.mjs", file], { cwd: "examples/hall-napkins", encoding: "utf8" });

  it("prints the plan on standard output and nothing else", () => {
    const { status, stdout, stderr } = run("job.yaml");
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toBe(`${original?.printed ?? ""}\n`);
  });

  it("answers a faulty job with all its faults, exits with 1 and writes nothing", () => {
    const folder = mkdtempSync(join(tmpdir(), "thrum-"));
    const file = join(folder, "faulty.yaml");
    writeFileSync(file, text.replace("number: 9", "number: 0").replace("endOneOn: left", "endOneOn: up"));
    const { status, stdout, stderr } = run(file);
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
    expect(String(stderr).trim().split("\n")).toHaveLength(2);
    expect(readdirSync(folder)).toEqual(["faulty.yaml"]);
  });
});
