// What the search looks through: whole pages, with the words readers use for them where a page has others.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { pageFiles, titleOf, twinOf } from "./pages/site-pages.mjs";

const words = JSON.parse(readFileSync(fileURLToPath(new URL("words.json", import.meta.url)), "utf8"));

/** Pages that are long lists: their headings tell what is in them, their rows would drown every other page. */
const isBulky = (file) => /^(?:verification|sources|errata)\.md$|^turned-round\.md$|^(?:api|about)\//u.test(file);

const KINDS = {
  formulas: "Formula",
  guides: "Guide",
  errors: "Error",
  api: "API",
  notebooks: "Notebook",
  about: "About",
};

const asText = (markdown) =>
  markdown
    .replace(/```[\s\S]*?```/gu, " ")
    .replace(/\]\([^)]*\)/gu, "]")
    .replace(/<[^>]+>/gu, " ")
    .replace(/&#(\d+);/gu, (_, code) => String.fromCodePoint(Number(code)))
    .replace(/[|*`[\]#]|:?-{3,}:?/gu, " ")
    .replace(/\s+/gu, " ")
    .trim();

function pageOf(file) {
  const twin = twinOf(file);
  const body = twin.replace(/^# .+$/mu, "").replace(/## (?:In a spreadsheet|In code)[\s\S]*?(?=\n## )/gu, "");
  const text = isBulky(file) ? asText(body).slice(0, 600) : asText(body);
  const link = file.replace(/\.md$/u, ".html");
  return {
    link,
    title: asText(titleOf(twin)),
    kind: KINDS[file.split("/")[0]] ?? "Page",
    headings: [...body.matchAll(/^#{2,3} (.+)$/gmu)].map(([, heading]) => asText(heading)).join(" "),
    lead: text.slice(0, 160),
    words: words.pages[link] ?? "",
    text,
  };
}

export function searchModule() {
  return {
    name: "search-index",
    resolveId: (id) => (id === "virtual:search" ? "\0virtual:search" : null),
    load(id) {
      if (id !== "\0virtual:search") return null;
      const elsewhere = words.elsewhere.map((one) => ({ headings: "", words: "", text: "", ...one }));
      const pages = [...pageFiles().map(pageOf), ...elsewhere];
      return `export const pages = ${JSON.stringify(pages)};\nexport const meant = ${JSON.stringify(words.meant)};`;
    },
  };
}
