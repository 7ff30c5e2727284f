import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { jobTextWith } from "./job-text-with.js";
import type { JobChange } from "./job-text-with.js";
import { readJob } from "./read-job.js";
import { writtenText, writtenValue } from "./written-value.js";
import type { WrittenValue } from "./written-value.js";

const folder = "examples/jobs/";
const files = readdirSync(folder).filter((name) => /^\d[^.]*\.yaml$/u.test(name));
const textOf = (file: string): string => readFileSync(folder + file, "utf8");

/** Every text of a value with its place. */
function leaves(value: WrittenValue, path: JobChange["path"] = []): readonly JobChange[] {
  if (typeof value === "string") return [{ path, value }];
  const isList = Array.isArray(value);
  return Object.entries(value).flatMap(([key, one]) => leaves(one, [...path, isList ? Number(key) : key]));
}

it("leaves every job as it was where each value is put back in its place", () => {
  expect(files).toHaveLength(9);
  for (const file of files) {
    const text = textOf(file);
    const changes = leaves(writtenValue(text) ?? {});
    expect(changes.length).toBeGreaterThan(2);
    expect(readJob(jobTextWith(text, changes))).toEqual(readJob(text));
  }
});

it("makes every job from nothing, value by value, backwards too", () => {
  for (const file of files) {
    const text = textOf(file);
    const groups = Object.entries(writtenValue(text) ?? {}).map(([key, value]) => ({ path: [key], value }));
    expect(readJob(jobTextWith("", groups))).toEqual(readJob(text));
    expect(readJob(jobTextWith("", [...groups].reverse()))).toEqual(readJob(text));
  }
});

it("keeps the remarks, and the order of the keys", () => {
  const text = "# of spring\n\nloom:\n  reed: 10 per inch # maple\ncloth: { picks: 18 per inch } # beaten lightly\n";
  const changes = [
    { path: ["loom", "reed"], value: "12 per inch" },
    { path: ["yarns", "no. 2", "count"], value: "2-ply of 8 cotton" },
    { path: ["pieces", 0, "number"], value: "9" },
    { path: ["cloth", "sett"], value: "20 per inch" },
  ];
  expect(jobTextWith(text, changes)).toBe(`# of spring

yarns: { no. 2: { count: 2-ply of 8 cotton } }
loom:
  reed: 12 per inch # maple
cloth: { sett: 20 per inch, picks: 18 per inch } # beaten lightly
pieces: [{ number: 9 }]
`);
});

it("leaves every space and mark of what is not changed, whether or not the text reads as a job", () => {
  const text = "loom:   { reed:   10 per inch ,\n  sley : '2' }   # maple\nclothes: 8   # no key of a job\n";
  expect(jobTextWith(text, [{ path: ["loom", "sley"], value: "3" }])).toBe(text.replace("'2' }", "3 }"));
});

it("breaks a group that outgrows its line into lines, and keeps one that was long or has remarks", () => {
  const at = (name: string) => [{ path: ["yarns", name, "count"], value: "2-ply of 8 cotton" }];
  const line =
    "yarns: { natural: { count: 2-ply of 8 cotton }, madder: { count: 2-ply of 8 cotton } } # of the shelf\n";
  const long = jobTextWith(line, at("indigo"));
  expect(long).toMatch(/^yarns: # of the shelf\n {2}natural: /u);
  expect(long.split("\n")).toHaveLength(5);
  const own = line.replace("{ natural", "{ # hers\n  natural");
  expect(jobTextWith(own, at("indigo"))).toContain("{ # hers\n  natural: { count: 2-ply of 8 cotton }, madder");
});

it("takes a key out, and the group that is left with nothing", () => {
  const text = "loom: { reed: 10 per inch }\nwarp: { length: 5 yd }\n";
  expect(jobTextWith(text, [{ path: ["warp", "length"], value: null }])).toBe("loom: { reed: 10 per inch }\n");
  expect(jobTextWith(text, [{ path: ["weft"], value: null }])).toBe(text);
});

it("refuses what is no YAML", () => {
  expect(() => jobTextWith("a: [", [])).toThrow("expected plain YAML");
});

it("reads one value as it is written, a list without brackets too", () => {
  const stripes = ["24 natural", { mirror: ["6 plum + pink"], middle: "once" }];
  expect(writtenValue("24 natural, { mirror: [6 plum + pink], middle: once }")).toEqual(stripes);
  expect(writtenText(stripes)).toBe("24 natural, { mirror: [6 plum + pink], middle: once }");
  expect(writtenValue("2")).toBe("2");
  expect(writtenText(writtenValue("[2]") ?? "")).toBe("[2]");
  expect(writtenValue("{ blue: 3, others: 2 }")).toEqual({ blue: "3", others: "2" });
  expect(writtenValue("[24 natural")).toBeNull();
});
