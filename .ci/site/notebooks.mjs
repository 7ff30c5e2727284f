// What the compiler and a real kernel make of the notebooks. `node .ci/site/notebooks.mjs --write JUPYTER` puts it into them.
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { folder, notebooks } from "../../docs/.vitepress/pages/notebooks.mjs";
import { root } from "../support/built.mjs";

export { notebooks };

const deno = join(folder, "node_modules/deno/bin.cjs");

/** The text of every code cell. */
function codeOf({ cells }) {
  return cells.filter(({ cell_type }) => cell_type === "code").map(({ source }) => source.join(""));
}

/** What `deno check` has to say of the cells, as one module beside the notebook; nothing where their types hold. */
export function typeFaults(name, notebook) {
  const file = join(folder, `.${name}.check.ts`);
  writeFileSync(file, codeOf(notebook).join("\n"));
  try {
    const { status, stderr } = spawnSync(process.execPath, [deno, "check", file], { cwd: folder, encoding: "utf8" });
    return status === 0 ? "" : stderr;
  } finally {
    rmSync(file);
  }
}

/** The outputs of every code cell, from a kernel of its own; `jupyter` is the path of that command. */
export function outputsOf(notebook, jupyter) {
  const place = mkdtempSync(join(tmpdir(), "thrum-kernel-"));
  try {
    const kernel = join(place, "kernels/thrum");
    mkdirSync(kernel, { recursive: true });
    const argv = [process.execPath, deno, "jupyter", "--kernel", "--conn", "{connection_file}"];
    writeFileSync(join(kernel, "kernel.json"), JSON.stringify({ argv, display_name: "Deno", language: "typescript" }));
    // The Python that Jupyter itself runs with has its packages; another may not.
    const python = /^#!(\S+)/u.exec(readFileSync(jupyter, "utf8"))?.[1] ?? "python3";
    const { status, stdout, stderr } = spawnSync(python, [`${root}.ci/site/run-notebook.py`, "thrum", folder], {
      input: JSON.stringify(codeOf(notebook)),
      encoding: "utf8",
      env: { ...process.env, JUPYTER_PATH: place, NO_COLOR: "1" },
    });
    if (status !== 0) throw new Error(stderr);
    return JSON.parse(stdout);
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
}

if (process.argv[2] === "--write") {
  const jupyter = process.argv[3];
  for (const [name, notebook] of notebooks()) {
    const outputs = outputsOf(notebook, jupyter);
    const cells = notebook.cells.map((cell) =>
      cell.cell_type === "code" ? { ...cell, outputs: outputs.shift() ?? [] } : cell,
    );
    writeFileSync(join(folder, `${name}.ipynb`), `${JSON.stringify({ ...notebook, cells }, null, 1)}\n`);
  }
}
