// Of every example the sheets as one page to print, the workbook and the job file; of the hall's napkins single sheets as
// pictures of themselves.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { classPage } from "../../examples/classroom/build.mjs";
import { root } from "./pages/handbook.mjs";
import { plan, planHtml, planWarp, readJob, workbookOf } from "./napkins.mjs";

/** A4 in dots of 96 to the inch, and the part of it that is shown. */
const [WIDTH, HEIGHT] = [794, 1010];
const SHOWN = ["before-cutting", "winding", "joining", "first-inches", "workings"];

/** A section of the sheets with their own style, inside a picture: nothing is drawn twice, so nothing can differ. */
function picture(html, id) {
  const style = /<style>([\s\S]*?)<\/style>/u.exec(html)[1];
  const hatches = /<svg class="hatches"[\s\S]*?<\/svg>/u.exec(html)?.[0] ?? "";
  const from = html.indexOf(`<section class="sheet" id="${id}"`);
  const section = html.slice(from, html.indexOf("</section>", from) + "</section>".length);
  const xhtml = section
    .replace(/<(br|input|col|hr|img|meta)\b([^>]*?)\s*\/?>/gu, "<$1$2/>")
    .replace(/&nbsp;/gu, "&#160;")
    .replace(/ (checked|disabled|hidden)(?=[\s/>])/gu, ' $1="$1"');
  const css = style.replace(/@media screen[^{]*\{(?:[^{}]*\{[^{}]*\})*[^{}]*\}/gu, "");
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}"><rect width="100%" height="100%" fill="#fff"/><foreignObject width="${WIDTH}" height="${HEIGHT}"><div xmlns="http://www.w3.org/1999/xhtml"><style><![CDATA[${css.replaceAll("body {", ".page {")} .page { padding: 4mm 12mm; }]]></style><div class="page">${hatches}${xhtml}</div></div></foreignObject></svg>`;
}

/** The page of the class, from the sources as they stand. */
export async function writeClassPage() {
  const from = (name) => `${root}packages/${name}/src/index.ts`;
  const alias = { "@thrum/maths": from("maths"), "@thrum/stripes": from("stripes") };
  writeFileSync(`${root}docs/public/class.html`, await classPage(alias));
}

export function writeSheetFiles() {
  const folder = `${root}docs/public/sheets`;
  mkdirSync(folder, { recursive: true });
  const jobs = readdirSync(`${root}examples/jobs`).filter((file) => /^\d-[a-z-]+\.yaml$/u.test(file));
  for (const file of jobs) {
    const text = readFileSync(`${root}examples/jobs/${file}`, "utf8");
    const reading = readJob(text);
    if (!reading.ok) throw new Error(`examples/jobs/${file} does not read`);
    const made = planWarp(reading.value);
    const name = file.replace(/^\d-/u, "").replace(/\.yaml$/u, "");
    writeFileSync(`${folder}/${name}.html`, planHtml(made));
    writeFileSync(`${folder}/${name}.xlsx`, workbookOf(made));
    writeFileSync(`${folder}/${name}.yaml`, text);
  }
  const html = planHtml(plan);
  for (const id of SHOWN) writeFileSync(`${folder}/${id}.svg`, picture(html, id));
}
