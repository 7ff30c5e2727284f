import { jobSchema } from "./schema.js";
import { writtenAmounts } from "./written-amounts.js";

/** What is read of a schema of the job: its parts, and the sentence it refuses with. */
interface Form {
  readonly type: string;
  readonly message?: unknown;
  readonly pipe?: readonly Form[];
  readonly entries?: Readonly<Record<string, Form>>;
  readonly item?: Form;
  readonly key?: Form;
  readonly value?: Form;
  readonly options?: readonly unknown[];
  readonly literal?: unknown;
  readonly requirement?: unknown;
  readonly wrapped?: Form;
  readonly getter?: (given: unknown) => Form;
}

/** A part of a JSON Schema. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/** The three ways to write an item of the stripes, each known by a key of its own. */
const STRIPES_ITEMS = ["colour", "repeat", "mirror"];
const STRIPES_ITEM = { $ref: "#/$defs/stripesItem" };

function sentence(message: unknown): JsonSchema {
  if (typeof message !== "string") return {};
  const [expected = "", remedy = ""] = message.split("|");
  return { description: remedy === "" ? `Expected: ${expected}.` : `Expected: ${expected}. ${remedy}` };
}

/** The range of a whole number or of a yarn's number stands in the sentence that refuses it. */
function ofCheck({ message }: Form): JsonSchema {
  if (typeof message !== "string") return {};
  const range = /from ([\d.]+) to ([\d.]+)\|/u.exec(message);
  const bounds = range === null ? {} : { minimum: Number(range[1]), maximum: Number(range[2]) };
  return { ...(message.includes("whole number") ? { type: "integer" } : {}), ...bounds, ...sentence(message) };
}

function ofAction(action: Form, isList: boolean): JsonSchema {
  const limit = action.requirement;
  if (action.type === "min_length") return isList ? { minItems: limit } : { minLength: limit };
  if (action.type === "max_length") return isList ? { maxItems: limit } : { maxLength: limit };
  if (action.type === "regex") return { pattern: (limit as RegExp).source };
  return action.type === "check" ? ofCheck(action) : {};
}

function ofObject(entries: Readonly<Record<string, Form>>): JsonSchema {
  const properties = Object.fromEntries(Object.entries(entries).map(([name, form]) => [name, schemaOf(form)]));
  const required = Object.keys(entries).filter((name) => entries[name]?.wrapped === undefined);
  return { type: "object", properties, required, additionalProperties: false };
}

function ofBare({ type, message, entries, item, key, value, options, literal }: Form): JsonSchema {
  if (entries !== undefined) return ofObject(entries);
  if (type === "array" && item !== undefined) return { type, items: schemaOf(item), ...sentence(message) };
  if (type === "record" && key !== undefined && value !== undefined) {
    return {
      type: "object",
      propertyNames: schemaOf(key),
      additionalProperties: schemaOf(value),
      ...sentence(message),
    };
  }
  if (type === "picklist") return { enum: options };
  if (type === "literal") return { const: literal };
  if (type === "union") return { anyOf: options?.map((one) => schemaOf(one as Form)), ...sentence(message) };
  if (type === "string" || type === "number") return { type, ...sentence(message) };
  throw new RangeError(`a ${type} has no form in JSON Schema`);
}

function schemaOf(form: Form): JsonSchema {
  if (form.getter !== undefined) return STRIPES_ITEM;
  if (form.wrapped !== undefined) return schemaOf(form.wrapped);
  const [bare, ...actions] = form.pipe ?? [form];
  if (bare === undefined) return {};
  const start = bare.pipe === undefined && bare.getter === undefined ? ofBare(bare) : schemaOf(bare);
  const isList = bare.type === "array";
  return Object.assign({}, start, ...actions.map((action) => ofAction(action, isList))) as JsonSchema;
}

function itemForms(form: Form): readonly Form[] {
  const item = form.entries?.["stripes"]?.pipe?.[0]?.item;
  return STRIPES_ITEMS.flatMap((key) => item?.getter?.({ [key]: null }) ?? []);
}

/** The form of a job file for editors, as JSON Schema; what no form can say `readJob` finds. */
export function jobJsonSchema(): JsonSchema {
  const form = jobSchema(writtenAmounts) as unknown as Form;
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "A job file of Thrum, version 1",
    ...schemaOf(form),
    $defs: { stripesItem: { oneOf: itemForms(form).map(schemaOf) } },
  };
}
