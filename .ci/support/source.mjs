// The sources of @thrum/maths bundled and loaded as they stand, with their inside in reach of the scripts.
import { readdirSync, readFileSync } from "node:fs";
import { build } from "esbuild";
import { root } from "./built.mjs";

const maths = `${root}packages/maths/src`;
const entry = [
  "index.ts",
  "engine/quantity/index.ts",
  "engine/formula/index.ts",
  "engine/working/index.ts",
  "engine/working/as-mathml.ts",
  "engine/working/escaped.ts",
  "engine/solve/index.ts",
  "units/mixed-up.ts",
  "verification/self-test.ts",
];

let loaded = 0;

/** The sources as one text; `change` may give another text for a file. */
export async function mathsText(change = () => null) {
  const { outputFiles } = await build({
    stdin: { contents: entry.map((file) => `export * from "${maths}/${file}";`).join("\n"), resolveDir: maths },
    bundle: true,
    format: "esm",
    platform: "node",
    alias: { "decimal.js": `${root}node_modules/decimal.js/decimal.mjs` },
    write: false,
    logLevel: "error",
    plugins: [
      {
        name: "change",
        setup({ onLoad }) {
          onLoad({ filter: /\.ts$/ }, ({ path }) => {
            const contents = change(path.slice(maths.length + 1), () => readFileSync(path, "utf8"));
            return contents === null ? null : { contents, loader: "ts" };
          });
        },
      },
    ],
  });
  return outputFiles[0].text;
}

/** Everything such a text exports. */
export async function loadedFrom(text) {
  loaded += 1;
  const code = `${text}\n// ${String(loaded)}`;
  return import(`data:text/javascript;base64,${Buffer.from(code).toString("base64")}`);
}

/** Everything the sources export. */
export const mathsSource = async (change) => loadedFrom(await mathsText(change));

/** The calculations among what a module exports, by name. */
export function calculationsOf(module) {
  return Object.entries(module).filter(([, value]) => typeof value === "function" && "declaration" in value);
}

const handbook = "packages/maths/src/handbook/";

/** The file of a calculation, and its text. */
export function fileOf(name) {
  const kebab = name.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);
  const files = readdirSync(root + handbook, { recursive: true }).map((file) => handbook + file);
  const path = files.find((file) => file.endsWith(`/${kebab}.ts`));
  if (path === undefined) throw new Error(`${name} has no file ${kebab}.ts in the handbook`);
  return { kebab, path, text: readFileSync(root + path, "utf8") };
}
