import { execFileSync, spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { root } from "../support/built.mjs";

const folder = mkdtempSync(join(tmpdir(), "thrum-unfit-"));

/** A package of one module, packed as it would be published, with files written otherwise. */
function tarball(name: string, changed: Readonly<Record<string, string>>): string {
  const manifest = {
    name,
    version: "1.0.0",
    license: "MIT",
    type: "module",
    exports: { ".": { types: "./index.d.ts", default: "./index.js" } },
  };
  const files = { "package.json": JSON.stringify(manifest), "index.js": "export const ends = 24;", ...changed };
  const inside = join(folder, name, "package");
  mkdirSync(inside, { recursive: true });
  for (const [file, text] of Object.entries({ "index.d.ts": "export declare const ends: number;", ...files }))
    writeFileSync(join(inside, file), text);
  execFileSync("tar", ["czf", `${name}.tgz`, "-C", name, "package"], { cwd: folder });
  return join(folder, `${name}.tgz`);
}

it("a tarball with a wrong manifest or wrong types is not fit to publish, and is named", () => {
  const fit = tarball("fit", {});
  const manifest = tarball("manifest", { "index.js": "module.exports = { ends: 24 };" });
  const types = tarball("types", { "index.d.ts": 'export * from "./of-no-ending";' });
  const { status, stderr } = spawnSync(process.execPath, [".ci/release/pack.mjs", fit, manifest, types], {
    cwd: root,
    encoding: "utf8",
  });
  rmSync(folder, { recursive: true });
  expect(stderr).toContain(`not fit to publish: ${manifest}, ${types}\n`);
  expect(status).toBe(1);
});
