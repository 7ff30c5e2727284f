// What a page pays for one function: bundled, minified, gzipped, beside decimal.js. Exit 1 past a budget.
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { built, mainModule, root } from "./built.mjs";
import { printTable } from "./table.mjs";

const calculations = ["warpLength", "foldedCount", "endsForWidth", "countFromWrapping", "settByDiameter"];

async function bytes(name, imported) {
  const { outputFiles } = await build({
    stdin: {
      contents: `export { ${imported.join(", ")} } from ${JSON.stringify(mainModule(name))};`,
      resolveDir: root,
    },
    bundle: true,
    minify: true,
    format: "esm",
    target: "es2022",
    external: ["decimal.js"],
    write: false,
  });
  return gzipSync(outputFiles[0].contents, { level: 9 }).length;
}

const row = (line, figure, budget) => ({ line, figure: `${figure} B`, budget: `${budget} B`, holds: figure <= budget });

async function mathsRows() {
  const alone = await Promise.all(calculations.map((name) => bytes("maths", [name])));
  const together = await Promise.all(calculations.map((_, last) => bytes("maths", calculations.slice(0, last + 1))));
  return [
    ...calculations.map((name, index) => row(`maths: ${name} alone`, alone[index], 7000)),
    ...calculations
      .slice(1)
      .map((name, before) => row(`maths: ${name} added`, together[before + 1] - together[before], 250)),
  ];
}

async function stripesRows() {
  const exported = Object.entries(await built("stripes"));
  const functions = exported.filter(([, value]) => typeof value === "function").map(([name]) => name);
  const sizes = await Promise.all(functions.map((name) => bytes("stripes", [name])));
  const largest = Math.max(...sizes);
  return [
    row(`stripes: largest function, ${functions[sizes.indexOf(largest)]}`, largest, 2000),
    row(
      "stripes: everything",
      await bytes(
        "stripes",
        exported.map(([name]) => name),
      ),
      8000,
    ),
  ];
}

const rows = [...(await mathsRows()), ...(await stripesRows())];
printTable(rows);
process.exitCode = rows.every(({ holds }) => holds) ? 0 : 1;
