// Writes the page: one file that needs no network, for a class to open from a stick.
import { writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const here = (name) => fileURLToPath(new URL(name, import.meta.url));

/** The page as text; `alias` may lead the packages to other files than those installed. */
export async function classPage(alias = {}) {
  const { outputFiles } = await build({
    entryPoints: [here("page.mjs")],
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2022",
    alias,
    write: false,
  });
  return pageWith(outputFiles[0].text.replaceAll("</script", "<\\/script"));
}

const pageWith = (script) => `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; form-action 'none'">
<title>Six sums for a warp</title>
<style>
  :root { color-scheme: light dark; --paper: light-dark(#fbf8f1, #1b1a18); --ink: light-dark(#22201c, #ece6d9); }
  body { font: 1.1rem/1.5 Georgia, serif; max-width: 44rem; margin: 1rem auto; padding: 0 1rem; color: var(--ink); background: var(--paper); }
  article { border-top: 1px solid #777; padding: 0.5rem 0 1rem; }
  input, button, select { font: inherit; }
  input { width: 7rem; }
  .verdict { min-height: 1.5rem; font-weight: 600; }
  .verdict p { margin: 0.2rem 0; }
  table { border-collapse: collapse; } th, td { text-align: left; padding: 0 0.8rem 0 0; }
  math { text-align: left; } mtd { text-align: left; }
  details > div { overflow-x: auto; }
  .room { display: none; }
  @media print {
    body { color: #000; background: #fff; }
    .teacher, .screen, button, details, .verdict { display: none; }
    article { break-after: page; break-inside: avoid; border: 0; }
    input { border: 0; border-bottom: 1px solid; }
    .room { display: block; height: 9cm; margin-top: 1rem; border: 1px dotted #777; }
  }
</style>
<main>
<h1>Six sums for a warp</h1>
<p>Name ____________________ Date ____________ Sheet of seed 1.</p>
<p>For each line: one mark for the method, one for the number, one for the unit. The sums are of one warp: an answer goes into the next sum. Fractions such as 7 3/8 are read.</p>
<p class="screen">Nothing written here is kept or sent. For the teacher: open the page with #teacher behind its address.</p>
</main>
<script>${script}</script>
</html>
`;

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await writeFile(here("classroom.html"), await classPage());
  process.stdout.write("classroom.html is written: open it in a browser.\n");
}
