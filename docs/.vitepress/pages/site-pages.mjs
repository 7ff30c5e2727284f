// The Markdown pages of the site, in the order of the menu.
import { readdirSync, readFileSync } from "node:fs";
import { root } from "./handbook.mjs";

const FIRST = ["index.md", "start.md", "weavers-job.md", "job-file.md", "formulas/index.md", "stripes.md", "trust.md"];

export function pageFiles() {
  const files = readdirSync(`${root}docs`, { recursive: true, encoding: "utf8" })
    .map((file) => file.replaceAll("\\", "/"))
    .filter((file) => file.endsWith(".md") && !file.startsWith(".vitepress/") && !file.startsWith("public/"));
  const rank = (file) => (FIRST.includes(file) ? FIRST.indexOf(file) : FIRST.length);
  return files.sort((a, b) => rank(a) - rank(b) || a.localeCompare(b));
}

/** A page as a reader without the site has it: no front matter, no marks of ours. */
export function twinOf(file) {
  const text = readFileSync(`${root}docs/${file}`, "utf8");
  const caption = /^caption: "?(.+?)"?$/mu.exec(text)?.[1] ?? "";
  return text
    .replace(/^<!-- live -->$/mu, caption)
    .replace(/^---\n[\s\S]*?\n---\n+/u, "")
    .replace(/<!-- (?:\/live|picture: \w+) -->\n+/gu, "")
    .replace(/^<[A-Z]\w+ [^>]*\/>\n+/gmu, "")
    .replace(/<Outside to="([^"]+)">([^<]+)<\/Outside>/gu, `[$2](${"../".repeat(file.split("/").length - 1)}$1)`)
    .replace(/^<<< @\/(\S+)$/gmu, (_, path) =>
      ["```js", readFileSync(`${root}docs/${path}`, "utf8").trimEnd(), "```"].join("\n"),
    )
    .replace(/^```formula$/gmu, "```text");
}

export const titleOf = (text) => /^# (.+)$/mu.exec(text)?.[1] ?? "Thrum";
