// The site: plain pages from Markdown, our own theme, and modules made from the declarations.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitepress";
import { calculations } from "./pages/handbook.mjs";
import { formulaMathml } from "./pages/mathml.mjs";
import { codeHighlighter } from "./code.mjs";
import { escapedForVue } from "./marks.mjs";
import { drawingOf } from "./drawings/index.mjs";
import { formNamed, formulaModule, formulaModules } from "./formulas.mjs";
import { afterBuild } from "./after-build.mjs";
import { jobPicture } from "./job-pictures.mjs";
import { writeAboutPages } from "./about-pages.mjs";
import { writeApiPages } from "./api-pages.mjs";
import { writeNotebookPages } from "./notebook-pages.mjs";
import { writeTables } from "./table-pages.mjs";
import { searchModule } from "./search.mjs";
import { writeClassPage, writeSheetFiles } from "./sheet-files.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const { version } = JSON.parse(readFileSync(`${root}packages/maths/package.json`, "utf8"));
const base = process.env.DOCS_BASE ?? "/";

writeAboutPages();
await writeApiPages();
writeTables();
writeNotebookPages();
writeSheetFiles();
await writeClassPage();

const highlight = await codeHighlighter();

/** From so many columns on a table is too wide for a phone: its rows are told there one below the other. */
const WIDE = 4;

/** Formulas become MathML, marks become pictures; the part a reader can change is wrapped in its fields. */
function ourMarkdown(md) {
  const fence = md.renderer.rules.fence;
  md.renderer.rules.fence = (...args) => {
    const { info, content } = args[0][args[1]];
    return info.trim() === "formula" ? formulaMathml(content) : fence(...args);
  };
  md.core.ruler.push("no-empty-heads", ({ tokens }) => {
    for (let at = tokens.length - 1; at >= 0; at -= 1) {
      if (tokens[at].type !== "thead_open") continue;
      const end = tokens.findIndex(({ type }, place) => place > at && type === "thead_close");
      if (tokens.slice(at, end).every(({ content }) => content === "")) tokens.splice(at, end - at + 1);
    }
  });
  md.core.ruler.push("signs-beside-their-numbers", ({ tokens }) => {
    for (const text of tokens.flatMap(({ children }) => children ?? [])) {
      if (text.type === "text")
        text.content = text.content.replace(/(\d) %/gu, "$1\u00a0%").replace(/≈ (?=\d)/gu, "≈\u00a0");
    }
  });
  md.core.ruler.push("columns-named", ({ tokens }) => {
    let [table, heads, column] = [null, [], 0];
    for (const [at, token] of tokens.entries()) {
      if (token.type === "table_open") [table, heads] = [token, []];
      if (token.type === "tr_open") column = 0;
      if (token.type === "th_open") heads.push(tokens[at + 1].content);
      if (token.type === "thead_close" && heads.length >= WIDE) table.attrJoin("class", "wide");
      if (token.type !== "td_open" || heads.length < WIDE) continue;
      // A link says itself what it is.
      if (column > 0 && /^[^<[]/u.test(tokens[at + 1].content)) token.attrSet("data-of", heads[column]);
      column += 1;
    }
  });
  md.renderer.rules.table_open = (tokens, at, _options, env) => {
    env.tables = (env.tables ?? 0) + 1;
    const classes = ["table", tokens[at].attrGet("class")].filter(Boolean).join(" ");
    return `<div class="${classes}" tabindex="0" role="region" aria-label="table ${env.tables}"><table>`;
  };
  const inline = md.renderer.rules.code_inline;
  md.renderer.rules.code_inline = (...args) =>
    inline(...args).replace(/(?<=[\s>])-+[a-z]+/gu, '<span class="whole">$&</span>');
  md.renderer.rules.table_close = () => "</table></div>";
  md.renderer.rules.html_block = (tokens, at, _options, env) => {
    const text = tokens[at].content.trim();
    if (text === "<!-- live -->") {
      // The page brings the way to its own formula, and to no other.
      const load = `const load = () => import(${JSON.stringify(formulaModule(env.frontmatter.formula))});`;
      env.sfcBlocks?.scripts.push({ type: "script", content: `<script setup>\n${load}\n</script>` });
      const form = escapedForVue(JSON.stringify(formNamed(env.frontmatter.formula, env.frontmatter.given)));
      const caption = escapedForVue(env.frontmatter.caption ?? "");
      return `<LiveFormula form="${form}" caption="${caption}" :load="load">`;
    }
    if (text === "<!-- drawing -->") return drawingOf(env.frontmatter.formula);
    const [, picture] = /^<!-- picture: ([a-z]+) -->$/u.exec(text) ?? [];
    if (picture !== undefined) return jobPicture(picture);
    return text === "<!-- /live -->" ? "</LiveFormula>" : tokens[at].content;
  };
}

export default defineConfig({
  title: "Thrum",
  description: "The arithmetic of a hand weaver's warp, checked against books and redoable by hand",
  lang: "en-GB",
  base,
  cleanUrls: false,
  srcDir: ".",
  // A page brings its own scripts and no more; nobody pays for pages not opened.
  router: { prefetchLinks: false },
  // The list of all pages is fetched once, not carried by each.
  metaChunk: true,
  outDir: process.env.DOCS_OUT ?? ".vitepress/dist",
  cacheDir: ".vitepress/cache",
  srcExclude: ["public/**"],
  appearance: true,
  head: [["link", { rel: "icon", href: `${base}favicon.svg`, type: "image/svg+xml" }]],
  themeConfig: { version, formulas: calculations.length },
  // A page of a formula is told by its own sentence.
  transformPageData({ relativePath, frontmatter }) {
    return frontmatter.sentence === undefined ? undefined : { description: frontmatter.sentence, relativePath };
  },
  markdown: { highlight, config: ourMarkdown, headers: { level: [2, 3] } },
  buildEnd: afterBuild,
  vite: {
    plugins: [formulaModules(), searchModule()],
    resolve: {
      alias: [
        { find: "@thrum/stripes", replacement: `${root}packages/stripes/src/index.ts` },
        { find: "@thrum/maths/catalogue", replacement: `${root}packages/maths/src/catalogue/index.ts` },
        { find: "@thrum/maths", replacement: `${root}packages/maths/src/index.ts` },
      ],
    },
    build: { chunkSizeWarningLimit: 2000, reportCompressedSize: false },
  },
});
