import { expect, it } from "vitest";
import { jobSchema } from "./job-schema.js";
import { jobWords } from "./job-words.js";

/** Every list of words that stands anywhere in the schema. */
function listsIn(schema: unknown): readonly string[] {
  if (typeof schema !== "object" || schema === null) return [];
  const own =
    "enum" in schema ? [JSON.stringify(schema.enum)] : "const" in schema ? [JSON.stringify([schema.const])] : [];
  return [...own, ...Object.values(schema).flatMap(listsIn)];
}

it("the closed lists of words are those of the schema of a job file", () => {
  const lists = listsIn(jobSchema());
  for (const [key, words] of Object.entries(jobWords)) {
    // The chains may be cut every so many ends too, and each fault of the old warp is a form of its own.
    if (key === "winding.chains") continue;
    if (key === "oldWarp.faults.is") for (const word of words) expect(lists, word).toContain(JSON.stringify([word]));
    else expect(lists, key).toContain(JSON.stringify(words));
  }
});
