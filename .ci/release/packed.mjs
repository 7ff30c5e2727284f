// Packages as they would be published: tarballs, and a bare project that has nothing else installed.
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, join } from "node:path";
import { packageNames, root } from "../support/built.mjs";

/** The eight napkins of the running example, as a program writes them. */
export const napkinsInCode =
  "{ pieces: 8, finishedLength: inches(21), hemEachEnd: inches(1), loomToFinished: percentLost(10), takeUp: percentLost(8), loomWaste: inches(30) }";

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

/** Everything our packages depend on except one another, however far down: name and folder. */
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
  return [...folders];
}

/** A tarball of an installed package, so that npm takes it for what a registry would have sent. */
function tarballOf([dependency, folder], destination) {
  const staged = join(destination, dependency);
  cpSync(folder, join(staged, "package"), { recursive: true, dereference: true });
  execFileSync("tar", ["-czf", `${staged}.tgz`, "-C", staged, "package"], { stdio: "pipe" });
  return [dependency, `${staged}.tgz`];
}

/** Makes a project in `folder` that has the tarballs and what they depend on, copied from here: no network is asked. */
export function installPacked(folder, tarballs) {
  const ours = packageNames.map((name) => [
    `@thrum/${name}`,
    tarballs.find((tarball) => basename(tarball).startsWith(`thrum-${name}-`)),
  ]);
  const outside = outsideDependencies().map((dependency) => tarballOf(dependency, join(folder, "outside")));
  const files = [...ours, ...outside].map(([name, path]) => [name, `file:${path}`]);
  const dependencies = Object.fromEntries(files);
  // Without overrides npm would ask the registry about each dependency of a dependency, though the file is at hand.
  const overrides = Object.fromEntries(files.map(([name]) => [name, `$${name}`]));
  const manifest = { name: "bare", private: true, type: "module", dependencies, overrides };
  writeFileSync(join(folder, "package.json"), JSON.stringify(manifest));
  // The settings of the npm or pnpm that runs this script are none of the bare project's.
  const settings = Object.entries(process.env).filter(([name]) => !name.toLowerCase().startsWith("npm_"));
  execFileSync("npm", ["install", "--offline", "--ignore-scripts", "--no-audit", "--no-fund"], {
    cwd: folder,
    env: Object.fromEntries(settings),
    stdio: "pipe",
    shell: process.platform === "win32",
  });
}
