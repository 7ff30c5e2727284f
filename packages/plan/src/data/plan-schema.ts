import type { JsonSchema } from "../job/job-schema.js";
import { LISTED, isFigure } from "./listed.js";
import type { Listed } from "./listed.js";

const ref = (name: string): JsonSchema => ({ $ref: `#/$defs/${name}` });
const listOf = (items: JsonSchema): JsonSchema => ({ type: "array", items });
const textOrNone: JsonSchema = { type: ["string", "null"] };

function group(properties: Readonly<Record<string, JsonSchema>>): JsonSchema {
  return { type: "object", properties, required: Object.keys(properties) };
}

const read = { value: {}, needs: listOf(ref("path")), why: textOrNone };

const DEFS: JsonSchema = {
  path: { ...listOf({ type: ["string", "integer"] }), description: "A place in the plan, segment by segment." },
  origin: {
    description: "Where an amount came from.",
    anyOf: [group({ path: ref("path") }), group({ amount: {} }), group({ list: listOf(ref("origin")) })],
  },
  figure: group({
    label: { type: "string" },
    calculation: textOrNone,
    from: { type: "object", additionalProperties: ref("origin") },
    ...read,
  }),
  part: group(read),
  amount: {
    ...group({ dimension: { type: "string" }, value: { type: "string" }, unit: { type: "string" } }),
    description: "An amount: its exact value as decimal text, counted in the unit of this name.",
  },
};

function ofGroup(listed: readonly Listed[]): JsonSchema {
  const own = group(Object.fromEntries(listed.map((one) => [one.name, ref(isFigure(one) ? "figure" : "part")])));
  return listed[0]?.scope === "plan" ? own : { type: "object", additionalProperties: own };
}

/** The JSON Schema (draft 2020-12) of a plan as `planJson` writes it. */
export function planSchema(): JsonSchema {
  const names = [...new Set(LISTED.map((one) => one.group))];
  const groups = names.map((name): [string, JsonSchema] => [name, ofGroup(LISTED.filter((one) => one.group === name))]);
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "The plan of a warp",
    ...group({
      thrumPlan: { const: 1 },
      job: { type: "object", description: "The job as data: its amounts are those of `$defs/amount`." },
      figures: group(Object.fromEntries(groups)),
    }),
    $defs: DEFS,
  };
}
