// Beside each page its Markdown, and llms.txt with the list of them; and addresses that also hold for a page on a disk.
import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { pageFiles, titleOf, twinOf } from "./pages/site-pages.mjs";

/** Addresses from the root made relative to the page, so that it can be read without a server. */
function withRelativeAddresses(html, base, file) {
  const up = "../".repeat(file.split("/").length - 1) || "./";
  const folders = new RegExp(`(\\s(?:href|src)=")${base}([^"]*)"`, "gu");
  return html.replace(folders, (_, attribute, path) => `${attribute}${up}${path === "" ? "index.html" : path}"`);
}

/** The style put into the page, and no sheet of icons that nobody uses: nothing is waited for before the text is shown. */
function withOwnStyle(html, style) {
  return html
    .replace(/<link rel="preload stylesheet" href="[^"]*style\.[^"]+" as="style">/u, () => `<style>${style}</style>`)
    .replace(/\s*<link rel="preload stylesheet" href="[^"]*vp-icons\.css" as="style">/u, "");
}

/** The app that plans a warp, built into the site: the page it is opened on. */
function withApp(outDir) {
  const app = fileURLToPath(new URL("../../examples/at-the-loom", import.meta.url));
  const vite = [join(app, "node_modules/vite/bin/vite.js"), "build", "--emptyOutDir", "--outDir"];
  // As a site is built, not as a test is run.
  const env = { ...process.env, NODE_ENV: "production" };
  execFileSync(process.execPath, [...vite, join(outDir, "plan-a-warp")], { cwd: app, stdio: "pipe", env });
}

export function afterBuild({ outDir, site }) {
  const sheet = readdirSync(join(outDir, "assets")).find((file) => file.endsWith(".css"));
  const style = readFileSync(join(outDir, "assets", sheet), "utf8").trim();
  const lines = pageFiles().map((file) => {
    const text = twinOf(file);
    const path = join(outDir, file);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    const page = file.replace(/\.md$/u, ".html");
    const html = readFileSync(join(outDir, page), "utf8");
    writeFileSync(join(outDir, page), withOwnStyle(withRelativeAddresses(html, site.base, page), style));
    return `- [${titleOf(text)}](${site.base}${file})`;
  });
  const head = `# ${site.title}\n\n> ${site.description}\n\nEvery page of the site as Markdown:\n`;
  withApp(outDir);
  writeFileSync(join(outDir, "llms.txt"), `${head}\n${lines.join("\n")}\n`);
}
