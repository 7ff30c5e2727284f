import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import ts from "typescript";
import { expect, it } from "vitest";
import { root } from "../support/built.mjs";
import { typedProjects } from "./typed-projects.mjs";

const committed = execFileSync("git", ["ls-files", "*.ts", "*.mts"], { cwd: root, encoding: "utf8" })
  .trim()
  .split("\n");

/** The files of a project, as its compiler finds them. */
function filesOf(project: string): readonly string[] {
  const path = join(root, project);
  const file = statSync(path).isDirectory() ? join(path, "tsconfig.json") : path;
  const { config } = ts.readConfigFile(file, (name) => ts.sys.readFile(name)) as { config: object };
  return ts.parseJsonConfigFileContent(config, ts.sys, dirname(file)).fileNames;
}

/** Committed files that no project of these holds. */
function unchecked(projects: readonly string[]): readonly string[] {
  const held = new Set(projects.flatMap(filesOf));
  return committed.filter((file) => !held.has(join(root, file)));
}

it("every file of TypeScript belongs to a project whose types are checked", () => {
  const projects = typedProjects.map(([project = ""]) => project);
  expect(committed.length).toBeGreaterThan(1000);
  expect(unchecked(projects)).toEqual([]);
  for (const left of [".ci", "examples/at-the-loom", "examples/small-apps"])
    expect(unchecked(projects.filter((one) => one !== left)).length, left).toBeGreaterThan(0);
});

it("fails, and says where, for a wrong type", () => {
  const folder = mkdtempSync(join(tmpdir(), "thrum-types-"));
  const options = { noLib: true, types: [] };
  writeFileSync(
    join(folder, "tsconfig.json"),
    JSON.stringify({ compilerOptions: options, files: ["one.ts", "lib.d.ts"] }),
  );
  const names = [
    "Array<T>",
    "Boolean",
    "CallableFunction",
    "Function",
    "IArguments",
    "NewableFunction",
    "Number",
    "Object",
    "RegExp",
    "String",
  ];
  writeFileSync(join(folder, "lib.d.ts"), names.map((name) => `interface ${name} {}`).join("\n"));
  const checked = (code: string) => {
    writeFileSync(join(folder, "one.ts"), code);
    return spawnSync(process.execPath, [".ci/lint/typecheck.mjs", folder], { cwd: root, encoding: "utf8" });
  };
  expect(checked("export const ends: number = 24;")).toMatchObject({ status: 0, stderr: "" });
  expect(checked('export const ends: number = "24";')).toMatchObject({
    status: 1,
    stderr: `types do not hold in ${folder}\n`,
  });
  rmSync(folder, { recursive: true });
});
