// The functions of @thrum/sheets as one script for a spreadsheet that takes one: everything in it, nothing to import.
import { build } from "esbuild";
import { root } from "./built.mjs";

/** What a script host may lack and the library uses. */
const OLDER_HOSTS = `
if (!Object.hasOwn) Object.defineProperty(Object, "hasOwn", { value: (thing, key) => Object.prototype.hasOwnProperty.call(thing, key) });
if (!Array.prototype.at) Object.defineProperty(Array.prototype, "at", { value(at) { return this[at < 0 ? this.length + at : at]; } });
if (!Array.prototype.findLast) Object.defineProperty(Array.prototype, "findLast", { value(fits) { return this.slice().reverse().find(fits); } });
if (!String.prototype.replaceAll) Object.defineProperty(String.prototype, "replaceAll", { value(text, by) { return this.split(text).join(by); } });
`;

/** The text of the script, from the sources as they stand. */
export async function scriptBundle() {
  const folder = `${root}packages/sheets/src/functions`;
  const bundled = (options) =>
    build({
      absWorkingDir: root,
      bundle: true,
      alias: {
        "@thrum/maths": `${root}packages/maths/src/index.ts`,
        "decimal.js": `${root}node_modules/decimal.js/decimal.mjs`,
      },
      write: false,
      logLevel: "error",
      ...options,
    });
  const text = await bundled({ entryPoints: [`${folder}/script-text.ts`], format: "esm", platform: "node" });
  const { scriptText } = await import(
    `data:text/javascript;base64,${Buffer.from(text.outputFiles[0].contents).toString("base64")}`
  );
  const sums = await bundled({
    stdin: { contents: 'export { answer, checkRows, workingRows } from "./index.js";', resolveDir: folder },
    format: "iife",
    globalName: "Thrum_",
    target: "es2020",
    minify: true,
    banner: { js: OLDER_HOSTS },
  });
  return `${sums.outputFiles[0].text}\n${scriptText()}\n`;
}
