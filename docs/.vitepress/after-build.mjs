// Beside each page its Markdown, and llms.txt with the list of them.
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pageFiles, titleOf, twinOf } from "../../.ci/docs/site-pages.mjs";

export function afterBuild({ outDir, site }) {
  const lines = pageFiles().map((file) => {
    const text = twinOf(file);
    const path = join(outDir, file);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    return `- [${titleOf(text)}](${site.base}${file})`;
  });
  const head = `# ${site.title}\n\n> ${site.description}\n\nEvery page of the site as Markdown:\n`;
  writeFileSync(join(outDir, "llms.txt"), `${head}\n${lines.join("\n")}\n`);
}
