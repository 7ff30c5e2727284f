// Writes maths, stripes and plan into one classic script, which a page opened from a disk can load too, where browsers refuse
// modules; with the licences of all that is in it. The last step of the build of @thrum/plan.
import { readdirSync, readFileSync } from "node:fs";
import { build } from "esbuild";
import { root } from "../support/built.mjs";

const folder = `${root}packages/plan/dist`;
const contents = ["maths", "stripes", "plan"].map((name) => `export * as ${name} from "@thrum/${name}";`).join("\n");

/** The licence of a library of which code is taken in, whole, as each of them asks. */
function licenceOf(library) {
  const place = `${root}packages/plan/node_modules/${library}`;
  const file = readdirSync(place).find((name) => /^LICEN[CS]E/iu.test(name));
  return `${library}\n\n${readFileSync(`${place}/${file}`, "utf8").trim()}`;
}

const licences = ["yaml"].map(licenceOf).join("\n\n");

await build({
  stdin: { contents, resolveDir: `${root}packages/plan` },
  outfile: `${folder}/thrum.global.js`,
  bundle: true,
  minify: true,
  platform: "browser",
  target: "es2022",
  charset: "utf8",
  legalComments: "inline",
  alias: { "@thrum/plan": `${folder}/index.js` },
  logLevel: "error",
  format: "iife",
  globalName: "Thrum",
  footer: { js: `/*! Code of others in this file, under their licences:\n\n${licences.replaceAll("*/", "* /")}\n*/` },
});
