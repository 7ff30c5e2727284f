// The hall's napkins, planned by the sources as they stand: what the pictures and the sheets of the site are made from.
import { readFileSync } from "node:fs";
import { build } from "esbuild";
import { root } from "./pages/handbook.mjs";

const source = (name) => `${root}packages/${name}/src/index.ts`;
const { outputFiles } = await build({
  stdin: {
    contents:
      'export { planHtml, planWarp, readJob } from "@thrum/plan"; export { workbookOf } from "@thrum/sheets"; export { letteredSvg, sequence, stripesSvg } from "@thrum/stripes";',
    resolveDir: `${root}packages/sheets`,
  },
  bundle: true,
  format: "esm",
  alias: Object.fromEntries(["maths", "stripes", "plan", "sheets"].map((name) => [`@thrum/${name}`, source(name)])),
  write: false,
  logLevel: "error",
});
const code = Buffer.from(outputFiles[0].contents).toString("base64");
const loaded = await import(`data:text/javascript;base64,${code}`);

const { sequence } = loaded;
export const { letteredSvg, planHtml, planWarp, readJob, stripesSvg, workbookOf } = loaded;

const text = readFileSync(`${root}examples/jobs/2-hall-napkins.yaml`, "utf8");
export const { value: job } = readJob(text);
export const plan = planWarp(job);

export const paints = new Map([
  ["natural", { fill: "#e8dcc0", letter: "N", name: "natural" }],
  ["madder", { fill: "#a4392f", letter: "M", name: "madder" }],
  ["indigo", { fill: "#2b3a6b", letter: "I", name: "indigo" }],
]);

export const sequenceOf = (runs) => sequence(runs.map(({ yarns, ends }) => ({ colour: yarns.join(" + "), ends })));

/** The new warp, end by end in its stripes. */
export const warp = sequenceOf(plan.figures.loom.stripes.value.runs);
