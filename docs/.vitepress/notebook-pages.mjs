// The notebooks of the examples, with the outputs they were kept with, as pages of the site.
import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import { root } from "./pages/handbook.mjs";
import { notebooks } from "./pages/notebooks.mjs";

const fenced = (language, text) => `\`\`\`${language}\n${text.trimEnd()}\n\`\`\``;

/** A picture as an address of its own, so that the page takes none of its marks for markup. */
function picture(svg) {
  const alt = /<title[^>]*>([^<]*)<\/title>/u.exec(svg)?.[1] ?? "";
  // Written as markup: Markdown takes no address of this kind for a picture.
  return `<img alt="${alt}" src="data:image/svg+xml;base64,${Buffer.from(svg).toString("base64")}" style="width: 100%" />`;
}

function outputText({ text, data, evalue }) {
  if (text !== undefined) return fenced("text", text);
  if (evalue !== undefined) return fenced("text", evalue);
  if ("image/svg+xml" in data) return picture(data["image/svg+xml"]);
  return data["text/markdown"] ?? fenced("text", data["text/plain"]);
}

function cellText({ cell_type, source, outputs }) {
  if (cell_type === "markdown") return source.join("");
  return [fenced("typescript", source.join("")), ...outputs.map(outputText)].join("\n\n");
}

/** The pages, and under `take` the notebooks themselves with the cases and programs one may want beside them. */
export function writeNotebookPages() {
  const take = `${root}docs/public/take`;
  for (const folder of [`${root}docs/notebooks`, take]) mkdirSync(folder, { recursive: true });
  for (const path of [
    "examples/case-pack/check.py",
    "examples/case-pack/one_formula.py",
    "packages/maths/dist/case-pack.json",
    "packages/sheets/dist/thrum.script.js",
  ])
    copyFileSync(root + path, `${take}/${path.split("/").at(-1)}`);
  for (const [name, { cells }] of notebooks()) {
    copyFileSync(`${root}examples/notebooks/${name}.ipynb`, `${take}/${name}.ipynb`);
    writeFileSync(`${root}docs/notebooks/${name}.md`, `${cells.map(cellText).join("\n\n")}\n`);
  }
}
