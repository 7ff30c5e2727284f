// What the search looks through: titles, headings and sentences of every page, with the words readers use for them.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { pageFiles, titleOf, twinOf } from "../../.ci/docs/site-pages.mjs";

const words = JSON.parse(readFileSync(fileURLToPath(new URL("words.json", import.meta.url)), "utf8"));

export function searchModule() {
  return {
    name: "search-index",
    resolveId: (id) => (id === "virtual:search" ? "\0virtual:search" : null),
    load(id) {
      if (id !== "\0virtual:search") return null;
      const pages = pageFiles().map((file) => {
        const text = twinOf(file)
          .replace(/```[\s\S]*?```/gu, " ")
          .replace(/&#\d+;|[|*#`[\]()]/gu, " ");
        const title = titleOf(twinOf(file));
        const bulky =
          file === "verification.md" || file === "sources.md" || file === "errata.md" || file.startsWith("api/");
        return [
          file.replace(/\.md$/u, ".html"),
          title,
          bulky ? text.slice(0, 400) : text.replace(/\s+/gu, " ").slice(0, 900),
        ];
      });
      return `export const pages = ${JSON.stringify(pages)};\nexport const words = ${JSON.stringify(words)};`;
    },
  };
}
