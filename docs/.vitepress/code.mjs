// Code in the colours of the page, made at build: keywords, texts and what a line gives are set apart.
import { createCssVariablesTheme, createHighlighter } from "shiki";
import { escapedForVue } from "./marks.mjs";

const LANGUAGES = ["ts", "js", "vue", "yaml", "html", "python", "shellscript", "json"];
const NAMES = { typescript: "ts", javascript: "js", mjs: "js", py: "python", sh: "shellscript" };

/** The one colour of a piece of code, as a class: the page has few inks. */
const INKS = {
  "var(--code-token-keyword)": "keyword",
  "var(--code-token-string)": "text",
  "var(--code-token-string-expression)": "text",
  "var(--code-token-comment)": "gives",
};

function piece({ content, color }) {
  const ink = INKS[color];
  return ink === undefined || content.trim() === ""
    ? escapedForVue(content)
    : `<span class="${ink}">${escapedForVue(content)}</span>`;
}

export async function codeHighlighter() {
  const theme = createCssVariablesTheme({ name: "page", variablePrefix: "--code-" });
  const highlighter = await createHighlighter({ themes: [theme], langs: LANGUAGES });
  return (code, language) => {
    const lang = NAMES[language] ?? language;
    if (!LANGUAGES.includes(lang)) return `<pre v-pre tabindex="0"><code>${escapedForVue(code)}</code></pre>`;
    const lines = highlighter.codeToTokensBase(code, { lang, theme: "page" });
    return `<pre v-pre tabindex="0"><code>${lines.map((line) => line.map(piece).join("")).join("\n")}</code></pre>`;
  };
}
