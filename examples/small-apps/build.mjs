// Builds the five apps as a developer would: once with Vite, once with esbuild.
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { build as viteBuild } from "vite";

const here = fileURLToPath(new URL(".", import.meta.url));
/** The script of each page. */
const pages = { form: "form", designer: "designer", counts: "ask", store: "store", plan: "plan" };

async function withEsbuild() {
  const out = `${here}dist/esbuild`;
  const entryPoints = [...Object.entries(pages).map(([app, script]) => `${here}${app}/${script}.ts`)];
  const shared = { bundle: true, minify: true, format: "esm", target: "es2022", outbase: here, outdir: out };
  await build({ ...shared, entryPoints, splitting: true });
  await build({
    ...shared,
    entryPoints: [`${here}counts/service.ts`],
    platform: "node",
    outExtension: { ".js": ".mjs" },
  });
  cpSync(`${here}page.css`, `${out}/page.css`);
  for (const [app, script] of Object.entries(pages)) {
    mkdirSync(`${out}/${app}`, { recursive: true });
    const page = readFileSync(`${here}${app}/index.html`, "utf8");
    writeFileSync(`${out}/${app}/index.html`, page.replace(`./${script}.ts`, `./${script}.js`));
  }
}

async function withVite() {
  const input = Object.fromEntries(Object.keys(pages).map((app) => [app, `${here}${app}/index.html`]));
  await viteBuild({
    root: here,
    base: "./",
    configFile: false,
    logLevel: "error",
    build: { outDir: `${here}dist/vite`, emptyOutDir: true, target: "es2022", rollupOptions: { input } },
  });
}

rmSync(`${here}dist`, { recursive: true, force: true });
await withEsbuild();
await withVite();
process.stdout.write("dist/esbuild and dist/vite hold the five apps: serve either folder.\n");
