import { readdirSync, readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { load } from "js-yaml";
import { describe, expect, it } from "vitest";
import { jobForm } from "./job.js";
import { jobSchema } from "./job-schema.js";
import { meaningsOfKeys } from "./meanings.js";
import type { Form } from "./form.js";
import { newJob } from "./new-job.js";
import { writtenPath } from "./written-path.js";

const valid = new Ajv2020({ allowUnionTypes: true }).compile(jobSchema());
const FOLDER = "examples/jobs/";
const examples = readdirSync(FOLDER).filter((name) => /^\d[^.]*\.yaml$/u.test(name));

/** Every key that can be written, by its path. */
function keysOf({ shape }: Form<unknown>, path: readonly string[]): readonly string[] {
  switch (shape.kind) {
    case "group":
      return Object.entries(shape.keys).flatMap(([key, form]) => [
        [...path, key].join("."),
        ...keysOf(form, [...path, key]),
      ]);
    case "list":
    case "byName":
      return keysOf(shape.of, [...path, "*"]);
    case "shapes":
    case "either":
      return Object.values(shape.ways).flatMap((form) => keysOf(form, path));
    case "text":
    case "words":
    case "word":
    case "number":
    case "runs":
      return [];
  }
}

describe("the schema of a job file", () => {
  it.each(examples)("takes %s", (name) => {
    expect([valid(load(readFileSync(FOLDER + name, "utf8"))), valid.errors]).toEqual([true, null]);
  });

  it("takes the job to fill in, and refuses an unknown key and a wrong word", () => {
    expect(valid(load(newJob()))).toBe(true);
    expect(valid({ oldWrap: {} })).toBe(false);
    expect(valid({ join: { knot: "granny" } })).toBe(false);
    expect(valid({ stripes: [{ mirror: ["3 a"] }] })).toBe(false);
    expect(valid({ stripes: [{ mirror: ["3 a"], middle: "once" }] })).toBe(true);
  });

  it("says the meaning of every key, and of none that is not there", () => {
    const keys = new Set(keysOf(jobForm, []));
    const meanings = meaningsOfKeys();
    const has = (path: string): boolean =>
      path in meanings || path.replace(/^loom\.room\.\w+/u, "loom.room.*") in meanings;
    const ofPieces = "pieces.*.weft.";
    expect([...keys].filter((path) => !has(path) && !path.startsWith(ofPieces))).toEqual([]);
    const used = new Set([...keys].map((path) => path.replace(/^loom\.room\.\w+\./u, "loom.room.*.")));
    expect(Object.keys(meanings).filter((path) => !keys.has(path) && !used.has(path))).toEqual([]);
  });

  it("is published as it is: after a change of the form run pnpm generate", () => {
    const published: unknown = JSON.parse(readFileSync("packages/plan/job.schema.json", "utf8"));
    expect(published).toEqual(JSON.parse(JSON.stringify(jobSchema())));
  });
});

describe("a place of a job", () => {
  it("is named as it is written", () => {
    expect(writtenPath(["loom", "sley", "places"])).toEqual(["loom", "sley"]);
    expect(writtenPath(["loom", "sley", "byYarn", "blue"])).toEqual(["loom", "sley", "blue"]);
    expect(writtenPath(["yarns", "no. 2", "count", "number", "plies", 0])).toEqual(["yarns", "no. 2", "count"]);
    expect(writtenPath(["cloth", "takeUp", "lost"])).toEqual(["cloth", "takeUp"]);
    expect(writtenPath(["join", "sides", "numbers", "before"])).toEqual(["join", "sides", "before"]);
    expect(writtenPath(["join", "sides", "where"])).toEqual(["join", "sides"]);
    expect(writtenPath(["pieces", 0, "weft", "lengths"])).toEqual(["pieces", 0, "weft", "lengths"]);
    expect(writtenPath(["oldWarp", "ends"])).toEqual(["oldWarp", "ends"]);
  });
});
