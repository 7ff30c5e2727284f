// Writes the sources of docs/bibliography.json for code: those that declarations name, which are published with the maths, and
// those that tests name. `--check` only compares.
import { readFileSync, writeFileSync } from "node:fs";
import { format } from "prettier";
import { bibliography, namedIn, nameOf, sourceOf } from "../support/bibliography.mjs";
import { root } from "../support/built.mjs";

const [declared, tested] = [false, true].map((tests) => {
  const names = namedIn(tests);
  return bibliography.filter(({ id }) => names.has(nameOf(id)));
});
const published = declared.map(
  (item) => `export const ${nameOf(item.id)}: Source = ${JSON.stringify(sourceOf(item))};`,
);
const cited = tested.map(({ id }) => `export const ${nameOf(id)}: CitedSource = source("${id}");`);
const mark = "// Written by pnpm generate, from docs/bibliography.json.\n";

const written = {
  "packages/maths/src/sources/declared.ts": `${mark}import type { Source } from "../engine/formula/index.js";\n\n${published.join("\n")}\n`,
  ".ci/support/sources.ts": `${mark}import { source } from "./bibliography.mjs";
import type { CitedSource } from "./cited.js";

export { commonPractice } from "../../packages/maths/src/sources/common-practice.js";
${cited.join("\n")}
`,
};
for (const [path, code] of Object.entries(written)) {
  const text = await format(code, { parser: "typescript", printWidth: 120 });
  if (!process.argv.includes("--check")) writeFileSync(root + path, text);
  else if (readFileSync(root + path, "utf8") !== text) {
    console.error(`${path} is not what docs/bibliography.json says: run pnpm generate`);
    process.exitCode = 1;
  }
}
