// Writes maths, stripes and plan into one file each for a page: a module, and a classic script that a page opened from a
// disk can load as well, where browsers refuse modules. The last step of the build of @thrum/plan.
import { build } from "esbuild";
import { root } from "./built.mjs";

const folder = `${root}packages/plan/dist`;
const contents = ["maths", "stripes", "plan"].map((name) => `export * as ${name} from "@thrum/${name}";`).join("\n");

const forms = { "thrum.bundle.js": { format: "esm" }, "thrum.global.js": { format: "iife", globalName: "Thrum" } };
for (const [file, form] of Object.entries(forms)) {
  await build({
    stdin: { contents, resolveDir: `${root}packages/plan` },
    outfile: `${folder}/${file}`,
    bundle: true,
    minify: true,
    platform: "browser",
    target: "es2022",
    charset: "utf8",
    legalComments: "inline",
    alias: { "@thrum/plan": `${folder}/index.js` },
    logLevel: "error",
    ...form,
  });
}
