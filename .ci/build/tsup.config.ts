// An ESM file for each entry of a package: its main module, and whatever else its package.json names under dist/.
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename, resolve } from "node:path";
import { build, transform } from "esbuild";
import type { Plugin } from "esbuild";
import { defineConfig, type Options } from "tsup";

interface Manifest {
  exports: Record<string, string | { default: string }>;
  bin?: Record<string, string>;
  devDependencies?: Record<string, string>;
}
const manifest = JSON.parse(readFileSync("package.json", "utf8")) as Manifest;

const built = [...Object.values(manifest.exports), ...Object.values(manifest.bin ?? {})]
  .map((target) => (typeof target === "string" ? target : target.default))
  .flatMap((target) => /^\.\/dist\/([a-z-]+)\.js$/.exec(target)?.[1] ?? []);

const sources = built.map((name): [string, string] => {
  const source = [`src/${name}.ts`, `src/${name}/index.ts`].find((path) => existsSync(path));
  if (source === undefined) throw new Error(`package.json promises dist/${name}.js but there is no src/${name}.ts`);
  return [name, source];
});

// Forms and figures are values made as a module loads, and a bundler keeps or drops such a module whole. So each room of a
// plan is a module of its own, of which the main one only passes names on: who reads a job takes no figures, who plans takes
// no views, who ticks off takes no forms.
const ROOM = "room-";
const rooms = [
  "job/checked-job",
  "job/index",
  "data/plan-warp",
  "data/plan-json",
  "data/plan-schema",
  "data/check-figure",
  "views/amount-text",
  "views/units",
  "views/yarn-signs",
  "views/differences",
  "views/text",
  "views/html",
  "progress/miscount",
  "progress/knots-tied",
  "progress/still-holds",
  "progress/index",
  "reconcile/reconcile",
]
  .map((path): [string, string] => [`${ROOM}${path.replace("/", "-")}`, `src/${path}.ts`])
  .filter(([, source]) => manifest.bin !== undefined && existsSync(source));

// A second entry that imports src/index.ts runs the very code users import, not a copy of it.
const mainModuleOnce: NonNullable<Options["esbuildPlugins"]>[number] = {
  name: "main-module-once",
  setup(build) {
    build.onResolve({ filter: /\/index\.js$/ }, ({ path, resolveDir }) =>
      resolve(resolveDir, path) === resolve("src/index.js") ? { path: "./index.js", external: true } : undefined,
    );
  },
};

// decimal.js is four times what it need be to read: one minified file beside ours, its notice kept, read by all of them.
const decimalBeside: NonNullable<Options["esbuildPlugins"]>[number] = {
  name: "decimal-beside",
  setup(build) {
    build.onResolve({ filter: /^decimal\.js$/ }, () => ({ path: "./decimal.js", external: true }));
  },
};
const decimal =
  manifest.devDependencies?.["decimal.js"] === undefined ? {} : { decimal: "node_modules/decimal.js/decimal.mjs" };

// A formula that is loaded by its name stands in a file of its own, beside the main module, which holds them all: as a file
// a formula the main module would be slow to load.
const FORMULAS = "src/catalogue/loaders.ts";
const PARTS = "src/catalogue/formula-parts.ts";
const parts: Record<string, string> = existsSync(PARTS) ? { "formula-parts": PARTS } : {};
const formulasBeside: Plugin = {
  name: "formulas-beside",
  setup(builder) {
    builder.onResolve({ filter: /\/handbook\/.*\.js$/ }, ({ kind, path }) =>
      kind === "dynamic-import" ? { path: `./formulas/${basename(path)}`, external: true } : undefined,
    );
  },
};
const partsOnce: Plugin = {
  name: "parts-once",
  setup(builder) {
    builder.onResolve({ filter: /\/(?:engine\/.*|units\/index)\.js$/ }, () => ({
      path: "../formula-parts.js",
      external: true,
    }));
  },
};

async function writeFormulas(): Promise<void> {
  if (!existsSync(FORMULAS)) return;
  const files = [...readFileSync(FORMULAS, "utf8").matchAll(/import\("\.\.\/(handbook\/.*)\.js"\)/gu)];
  const entries = files.map(([, file = ""]) => ({ in: `src/${file}.ts`, out: basename(file) }));
  await build({
    entryPoints: entries,
    outdir: "dist/formulas",
    bundle: true,
    format: "esm",
    target: "es2022",
    minifyIdentifiers: true,
    minifySyntax: true,
    charset: "utf8",
    plugins: [partsOnce],
  });
}

/** What is taken whole or not at all needs no marks, and no blanks. */
async function withoutBlanks(): Promise<void> {
  for (const file of ["dist/decimal.js", "dist/verification.js"].filter((path) => existsSync(path))) {
    const { code } = await transform(readFileSync(file, "utf8"), { minifyWhitespace: true, charset: "utf8" });
    writeFileSync(file, code);
  }
}

/** Only what entries share is loaded, by the names it passes on: to load it for nothing else makes bundlers complain. */
function withoutDoors(): void {
  for (const file of rooms.map(([name]) => `dist/${name}.js`)) rmSync(file);
  for (const file of readdirSync("dist").filter((name) => name.endsWith(".js"))) {
    const text = readFileSync(`dist/${file}`, "utf8");
    writeFileSync(`dist/${file}`, text.replaceAll(/^import ?"\.\/chunk-[A-Z0-9]+\.js";\n?/gmu, ""));
  }
}

const config: Options = {
  entry: { ...Object.fromEntries(sources), ...Object.fromEntries(rooms), ...parts, ...decimal },
  format: ["esm"],
  target: "es2022",
  platform: "neutral",
  // What two entries share stands once, beside them; a command loads what it needs when it needs it.
  splitting: true,
  sourcemap: false,
  onSuccess: async () => {
    await withoutBlanks();
    withoutDoors();
    await writeFormulas();
  },
  // Short names, but the blanks stay: without them the marks of what has no side effect go too, and with them every bundle
  // would hold the whole handbook.
  esbuildOptions(options) {
    options.minifyIdentifiers = true;
    options.minifySyntax = true;
  },
  clean: true,
  esbuildPlugins: [mainModuleOnce, decimalBeside, formulasBeside],
  // `paths` point at sources for the editor and the tests; declarations are made against the built packages.
  dts: { entry: Object.fromEntries(sources), compilerOptions: { ignoreDeprecations: "6.0", paths: {} } },
};

export default defineConfig(config);
