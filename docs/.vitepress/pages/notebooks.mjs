// The notebooks of examples/notebooks by name, as they are kept.
import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { root } from "./handbook.mjs";

export const folder = `${root}examples/notebooks`;

export function notebooks() {
  const files = readdirSync(folder).filter((file) => file.endsWith(".ipynb"));
  return files.map((file) => [basename(file, ".ipynb"), JSON.parse(readFileSync(join(folder, file), "utf8"))]);
}
