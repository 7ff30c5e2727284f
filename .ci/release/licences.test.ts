// What is bundled keeps the notice of those who wrote it, and nothing is packed twice.
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { packageNames, root } from "../support/built.mjs";

it.each([
  ["packages/maths/dist/decimal.js", ["Michael Mclaughlin"]],
  ["packages/plan/dist/thrum.global.js", ["Michael Mclaughlin", "Eemeli Aro"]],
  ["packages/sheets/dist/thrum.script.js", ["Michael Mclaughlin"]],
])("%s names %j", (file, authors) => {
  const text = readFileSync(root + file, "utf8");
  for (const author of authors) expect(text).toContain(author);
});

it.each(packageNames)("@thrum/%s is packed without source maps", (name) => {
  expect(readdirSync(`${root}packages/${name}/dist`).filter((file) => file.endsWith(".map"))).toEqual([]);
});
