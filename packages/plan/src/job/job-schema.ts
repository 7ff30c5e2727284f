import type { Form, Shape } from "./form.js";
import { jobForm } from "./job.js";
import { meaningsOfKeys } from "./meanings.js";

/** A JSON Schema, as data. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/** A value an editor would read as a number or a truth value is text all the same; a key without a value is left out. */
const TEXTS = ["string", "number", "boolean", "null"];
const WHOLE = /^\d+$/u;

function meaningOf(path: readonly string[]): JsonSchema {
  const meanings = meaningsOfKeys();
  const known = meanings[path.join(".")] ?? meanings[path.map((step, at) => (at === 2 ? "*" : step)).join(".")];
  return known === undefined ? {} : { description: known };
}

function runsSchema(run: Form<unknown>, path: readonly string[], lists: Map<string, JsonSchema>): JsonSchema {
  const name = path.join(".");
  const $ref = `#/$defs/${name}`;
  const one = schemaOf(run.shape, path, lists);
  const list = { type: "array", minItems: 1, items: { $ref: `${$ref}.run` } };
  const several = { anyOf: [one, list] };
  const group = (properties: JsonSchema): JsonSchema => {
    return { type: "object", required: Object.keys(properties), properties, additionalProperties: false };
  };
  const often = { anyOf: [{ type: "integer", minimum: 1 }, { const: "the rest" }] };
  const repeat = group({ repeat: often, of: { $ref } });
  const mirror = group({ mirror: { $ref }, middle: { enum: ["once", "twice"] } });
  lists.set(name, several);
  lists.set(`${name}.run`, { anyOf: [one, repeat, mirror] });
  return { $ref };
}

function schemaOf(shape: Shape, path: readonly string[], lists: Map<string, JsonSchema>): JsonSchema {
  const below = (form: Form<unknown>, ...steps: readonly string[]): JsonSchema => {
    const place = [...path, ...steps];
    return { ...schemaOf(form.shape, place, lists), ...(steps.length === 0 ? {} : meaningOf(place)) };
  };
  switch (shape.kind) {
    case "text":
      return { type: WHOLE.test(shape.example) ? ["string", "integer"] : "string", examples: [shape.example] };
    case "words":
      return { type: TEXTS, maxLength: shape.longest };
    case "word":
      return { enum: [...shape.words, ...(shape.words.includes("yes") ? [true, false] : [])] };
    case "number":
      return { type: shape.whole ? "integer" : "number", minimum: shape.least, maximum: shape.most };
    case "group": {
      const properties = Object.entries(shape.keys).map(([key, form]) => [key, below(form, key)]);
      const required = shape.required.length === 0 ? {} : { required: shape.required };
      return {
        type: ["object", "null"],
        properties: Object.fromEntries(properties),
        ...required,
        additionalProperties: false,
      };
    }
    case "list": {
      const items = below(shape.of, "*");
      const list = { type: "array", minItems: 1, items };
      return shape.alone ? { anyOf: [items, list] } : list;
    }
    case "byName":
      return { type: ["object", "null"], additionalProperties: { anyOf: [below(shape.of, "*"), { type: "null" }] } };
    case "shapes":
      return { anyOf: Object.values(shape.ways).map((form) => below(form)) };
    case "either":
      return { anyOf: shape.ways.map((form) => below(form)) };
    case "runs":
      return runsSchema(shape.run, path, lists);
  }
}

/** The form of a job file as JSON Schema, for editors; it says the meaning of every key. */
export function jobSchema(): JsonSchema {
  const lists = new Map<string, JsonSchema>();
  const job = schemaOf(jobForm.shape, [], lists);
  const head = { $schema: "https://json-schema.org/draft/2020-12/schema", title: "A job of Thrum" };
  return { ...head, ...job, $defs: Object.fromEntries(lists) };
}
