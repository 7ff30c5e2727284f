// The built packages, for scripts that measure what users get.
import { existsSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../..", import.meta.url));
export const packageNames = readdirSync(`${root}packages`);

/** Path of the main module of @thrum/<name>, from `pnpm build`. */
export function mainModule(name) {
  const path = `${root}packages/${name}/dist/index.js`;
  if (!existsSync(path)) throw new Error(`packages/${name}/dist is missing: run pnpm build first`);
  return path;
}

/** Everything @thrum/<name> exports. */
export const built = (name) => import(mainModule(name));
