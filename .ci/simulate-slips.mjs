// Claims made with one known slip each, over every calculation: how many are named. Writes the table of the docs.
import { rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { root } from "./built.mjs";

const SEED = 6;
const bundled = join(root, ".ci", "slip-simulation.tmp.mjs");
await build({
  entryPoints: [join(root, ".ci/slip-simulation.ts")],
  bundle: true,
  format: "esm",
  outfile: bundled,
  alias: { "@thrum/maths": join(root, "packages/maths/src/index.ts") },
  external: ["decimal.js", "fast-check"],
  logLevel: "error",
});
const { simulate } = await import(pathToFileURL(bundled).href);
const table = simulate({ seed: SEED, inputs: Number(process.argv[2] ?? 2), slips: Number(process.argv[3] ?? 12) });
await rm(bundled);
const percent = (part, of) => `${((100 * part) / of).toFixed(1)} %`;
const rows = table.map(
  ({ figures, claims, unique, tied, hidden, missed, accused }) =>
    `| ${[figures, claims, ...[unique, tied, hidden, missed].map((one) => percent(one, claims)), percent(unique + tied, claims - hidden), accused].join(" | ")} |`,
);
const text = [
  "# What a check can see",
  "",
  `Random inputs of every calculation, claims made with one known slip each and written to so many figures; seed ${SEED}. A hidden slip gives the right answer at these figures, or its digits cut off: nobody can see it there. Of the slips that show, the share named is in the last column but one. The slips are those \`check\` knows, so this tells how well it finds them again, not how many slips weavers make that it does not know.`,
  "",
  "| figures | claims | named alone | named among others | hidden | missed | named of those that show | right answers accused |",
  "|---|---|---|---|---|---|---|---|",
  ...rows,
  "",
].join("\n");
await writeFile(join(root, "docs/what-check-sees.md"), text);
process.stdout.write(`${rows.join("\n")}\n`);
