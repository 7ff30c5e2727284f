// The API of each package, whose page stands beside its sources, as pages of the site.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { packageNames, root } from "../../.ci/built.mjs";

export function writeApiPages() {
  mkdirSync(`${root}docs/api`, { recursive: true });
  for (const name of packageNames) {
    const text = readFileSync(`${root}packages/${name}/api.md`, "utf8");
    writeFileSync(`${root}docs/api/${name}.md`, text.replaceAll("](../../docs/", "](../"));
  }
  const links = packageNames.map((name) => `- [@thrum/${name}](./${name}.md)`).join("\n");
  const head = "# API\n\nEvery export with its signature and its fields, made by TypeDoc from the sources.";
  writeFileSync(`${root}docs/api/index.md`, `${head}\n\n${links}\n`);
}
