// The app built once for all its tests, and served as a page host would.
import { createHash } from "node:crypto";
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { root } from "#ci/built.mjs";
import { served } from "#ci/docs/served.mjs";

const folder = join(root, "examples/at-the-loom");

function filesIn(path: string): readonly string[] {
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile())
    .map((one) => join(one.parentPath, one.name))
    .sort((one, other) => one.localeCompare(other));
}

/** The folder of the built app; whoever comes first builds it, by the letters of all that it is made of. */
function builtApp(): string {
  const made = createHash("sha256");
  const own = ["index.html", "vite.config.ts", "package.json"].map((name) => join(folder, name));
  const packages = ["maths", "plan", "sheets", "stripes"].map((name) => join(root, `packages/${name}/dist/index.js`));
  const parts = [...own, ...packages, ...filesIn(join(folder, "src")), ...filesIn(join(folder, "public"))];
  for (const path of parts) made.update(path).update(readFileSync(path));
  const built = join(root, "reports/at-the-loom", made.digest("hex").slice(0, 16));
  if (existsSync(built)) return built;
  const making = `${built}.${String(process.pid)}`;
  mkdirSync(making, { recursive: true });
  const vite = [join(folder, "node_modules/vite/bin/vite.js"), "build", "--outDir", making, "--emptyOutDir"];
  execFileSync(process.execPath, vite, { cwd: folder, stdio: "pipe" });
  try {
    renameSync(making, built);
  } catch {
    // Another test has built the same in the meantime.
    rmSync(making, { recursive: true });
  }
  return built;
}

/** The app under a path of a host, with how to stop it. */
export function servedApp(): ReturnType<typeof served> {
  return served(builtApp(), "/plan-a-warp/");
}
