// What stands elsewhere in the repository and is also read on the site: changes, how to cite, to contribute, to report.
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { packageNames, root } from "./pages/handbook.mjs";

const textOf = (path) => readFileSync(root + path, "utf8");

/** Changes not yet published, then the changelog of each package. */
function changes() {
  const waiting = readdirSync(`${root}.changeset`)
    .filter((file) => file.endsWith(".md"))
    .map((file) => textOf(`.changeset/${file}`).replace(/^---\n[\s\S]*?\n---\n+/u, ""));
  const logs = packageNames
    .map((name) => `packages/${name}/CHANGELOG.md`)
    .filter((path) => existsSync(root + path))
    .map((path) => textOf(path).replace(/^#/gmu, "##"));
  const next = waiting.length === 0 ? ["Nothing yet."] : waiting;
  return ["# Changes", "## In the next release", ...next, ...logs].join("\n\n");
}

function citation() {
  const fence = ["```text", textOf("CITATION.cff").trimEnd(), "```"].join("\n");
  return `# How to cite\n\nName the version and, for any number you print, the source its page gives.\n\n${fence}\n`;
}

const pages = {
  changes: ["Changes", changes],
  cite: ["How to cite", citation],
  contribute: ["For contributors", () => textOf("DEVELOPERS.md")],
  security: ["Security", () => textOf(".github/SECURITY.md")],
};

export function writeAboutPages() {
  mkdirSync(`${root}docs/about`, { recursive: true });
  for (const [name, [, text]] of Object.entries(pages)) writeFileSync(`${root}docs/about/${name}.md`, text());
  const links = Object.entries(pages).map(([name, [title]]) => `- [${title}](./${name}.md)`);
  const all = [...links, "- [From one version to the next](../guides/upgrade.md)"].join("\n");
  writeFileSync(`${root}docs/about/index.md`, `# About the library\n\n${all}\n`);
}
