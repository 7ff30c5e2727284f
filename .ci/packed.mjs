// Packages as they would be published: tarballs, and a bare project that has nothing else installed.
import { execFileSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { packageNames, root } from "./built.mjs";

const manifestOf = (folder) => JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));

/** Packs every package into the folder `destination`, emptied first; gives the paths of the tarballs. */
export function packedTarballs(destination) {
  rmSync(destination, { recursive: true, force: true });
  mkdirSync(destination, { recursive: true });
  const pnpm = [join(root, "node_modules/pnpm/bin/pnpm.cjs"), "pack", "--pack-destination", destination];
  for (const name of packageNames) {
    execFileSync(process.execPath, pnpm, { cwd: join(root, "packages", name), stdio: "pipe" });
  }
  return readdirSync(destination).map((file) => join(destination, file));
}

/** Folder of an installed package, found from a folder that depends on it. */
function folderOf(dependency, dependant) {
  const places = createRequire(join(dependant, "package.json")).resolve.paths(dependency) ?? [];
  const found = places
    .map((place) => join(place, dependency))
    .find((folder) => {
      try {
        return manifestOf(folder).name === dependency;
      } catch (error) {
        if (error.code === "ENOENT") return false;
        throw error;
      }
    });
  if (found === undefined) throw new Error(`${dependency}, which ${dependant} depends on, is not installed`);
  return found;
}

/** Folders of everything our packages depend on, however far down, except one another. */
function outsideDependencies() {
  const folders = new Map();
  const collect = (dependant) => {
    for (const dependency of Object.keys(manifestOf(dependant).dependencies ?? {})) {
      if (dependency.startsWith("@thrum/") || folders.has(dependency)) continue;
      const folder = folderOf(dependency, dependant);
      folders.set(dependency, folder);
      collect(folder);
    }
  };
  for (const name of packageNames) collect(join(root, "packages", name));
  return [...folders.values()];
}

/** Makes a project in `folder` that has the tarballs and what they depend on, copied from here: no network is asked. */
export function installPacked(folder, tarballs) {
  writeFileSync(join(folder, "package.json"), JSON.stringify({ name: "bare", private: true, type: "module" }));
  const options = ["--offline", "--install-links", "--ignore-scripts", "--no-audit", "--no-fund"];
  const npm = ["install", ...options, ...tarballs, ...outsideDependencies()];
  execFileSync("npm", npm, { cwd: folder, stdio: "pipe", shell: process.platform === "win32" });
}
