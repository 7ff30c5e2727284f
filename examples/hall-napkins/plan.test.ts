import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { planText, planWarp, readJob } from "@thrum/plan";
import { describe, expect, it } from "vitest";
import { parse, stringify } from "yaml";

const text = readFileSync("examples/hall-napkins/job.yaml", "utf8");
const job: unknown = parse(text);

/** The plan's data without functions, and its printed text; null where the job is refused. */
function planned(changedJob: unknown): { readonly data: string; readonly printed: string } | null {
  const reading = readJob(stringify(changedJob));
  if (!reading.ok) return null;
  const plan = planWarp(reading.job);
  return { data: JSON.stringify({ ...plan, title: "", note: "" }), printed: planText(plan) };
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
  ["stripe edges", "2 ends"],
];

/** Another value of the same sort: another number, length, mass, percentage, choice or words. */
function anotherFor(leaf: unknown): unknown {
  if (typeof leaf === "number") return leaf === 1 ? 2 : leaf * 2;
  const words = String(leaf);
  const choice = CHOICES.find((choices) => choices.includes(words));
  if (choice !== undefined) return choice[(choice.indexOf(words) + 1) % choice.length];
  const amount = /^(\d+)(.*)$/u.exec(words);
  return amount === null ? `${words} again` : `${String(Number(amount[1]) + 1)}${amount[2] ?? ""}`;
}

const original = planned(job);

describe("every leaf of the napkins' job, changed alone", () => {
  it.each(leavesOf(job).map(([path, leaf]) => ({ path: path.join("."), keys: path, leaf })))(
    "$path: the plan changes, or the job is refused",
    ({ keys, leaf }) => {
      const changed = planned(withLeaf(job, keys, anotherFor(leaf)));
      if (changed === null) return;
      const free = keys.length === 1 && (keys[0] === "title" || keys[0] === "note");
      if (free) expect(changed.printed).not.toBe(original?.printed);
      else expect(changed.data).not.toBe(original?.data);
    },
  );
});

describe("the printed plan of the napkins", () => {
  const lines = original?.printed.split("\n") ?? [];

  it.each([
    // 24 + 2 × (40 + 3 × (12 + 6) + 66) + 24 = 368 ends; 368 ÷ 20 = 18.4 in; × 0.85 = 15.64 in.
    "368 ends at 20 ends/in take 18 3/8 in in the reed; finished width 15 5/8 in.",
    // 9 × (16 + 2 × 3/4) = 157.5; ÷ 0.9 = 175; ÷ 0.92 = 190.217; + 10 = 200.217 in; ÷ 36 = 5.5616 yd.
    "Wind 200 1/4 in for 9 pieces, that is 5.57 yd.",
    // 80 × 5.56159 = 444.93 yd; ÷ 3360 = 0.132419 lb = 2.1187 oz.
    "madder     80  444.93 yd   2.12 oz  0 oz     2.12 oz  1 of 8 oz   5.88 oz",
    // 7 strands' worth: 36 × 5.08552 m = 183.079 m; ÷ 7 m/g = 26.154 g, of 50 g on hand.
    "indigo     36  200.22 yd   26.16 g  50 g     0 g      0 of 200 g  23.84 g",
    // The sixth edge is end 100: dent 50, and 100 = 25 × 4, the last place of the repeat.
    "     6  indigo      6  95 to 100          50      4      4",
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
