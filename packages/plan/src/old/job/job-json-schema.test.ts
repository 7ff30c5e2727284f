import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { jobJsonSchema } from "./job-json-schema.js";
import type { JsonSchema } from "./job-json-schema.js";

const published = JSON.parse(readFileSync("packages/plan/job.schema.json", "utf8")) as JsonSchema;
const job: unknown = parse(readFileSync("examples/hall-napkins/woven.yaml", "utf8"));

type Node = Readonly<Record<string, unknown>>;

/** The keys of every group of the form, as `loom.knotsTied`, except in the stripes, which refer to themselves. */
function keysOf({ properties }: Node, at = ""): readonly string[] {
  return Object.entries((properties ?? {}) as Readonly<Record<string, Node>>).flatMap(([name, node]) => [
    at + name,
    ...keysOf(node, `${at}${name}.`),
  ]);
}

function keysWritten(value: unknown, at = ""): readonly string[] {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return [];
  return Object.entries(value).flatMap(([name, one]) => [at + name, ...keysWritten(one, `${at}${name}.`)]);
}

describe("the form of a job file for editors", () => {
  it("is published as it is: after a change of the form run .ci/job-schema.mjs", () => {
    expect(published).toEqual(JSON.parse(JSON.stringify(jobJsonSchema())));
  });

  it("knows every key the example writes and no other, names of yarns and fibres apart", () => {
    const written = keysWritten(job).filter(
      (key) => !/^(?:yarns|fibres|costs\.packagePrices|extraEnds\.\w+|coloursSeen\.colours)\./u.test(key),
    );
    expect([...keysOf(published)].sort((a, b) => a.localeCompare(b))).toEqual(
      [...written].sort((a, b) => a.localeCompare(b)),
    );
  });

  it("requires every key but the parts that may be left out whole, and allows no other, at every depth", () => {
    const optional = ["extraEnds", "coloursSeen", "firstInches", "warpLeft", "found", "costs", "fibres"];
    const seen = (node: unknown): void => {
      if (typeof node !== "object" || node === null) return;
      const group = node as Node;
      const { type, properties, required, additionalProperties } = group;
      if (type === "object" && typeof properties === "object" && properties !== null) {
        expect(required).toEqual(
          Object.keys(properties).filter((key) => node !== published || !optional.includes(key)),
        );
        expect(additionalProperties).toBe(false);
      }
      Object.values(group).forEach(seen);
    };
    seen(published);
  });

  it("has the ranges and phrases of the form", () => {
    const { properties } = published as { readonly properties: Readonly<Record<string, Node>> };
    const loom = properties["loom"] as { readonly properties: Readonly<Record<string, Node>> };
    const pieces = properties["pieces"] as { readonly properties: Readonly<Record<string, Node>> };
    expect(loom.properties["endOneOn"]).toEqual({ enum: ["left", "right"] });
    expect(pieces.properties["number"]).toMatchObject({ type: "integer", minimum: 1, maximum: 10_000 });
    expect(pieces.properties["finishedLength"]).toMatchObject({ type: "string" });
    expect(properties["stripes"]).toMatchObject({ type: "array", minItems: 1, items: { $ref: "#/$defs/stripesItem" } });
    const { stripesItem } = published["$defs"] as { readonly stripesItem: { readonly oneOf: readonly Node[] } };
    expect(stripesItem.oneOf.map((form) => form["required"])).toEqual([
      ["colour", "ends"],
      ["repeat", "of"],
      ["mirror", "middleStripe"],
    ]);
  });
});
