import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "../support/built.mjs";
import { installPacked, napkinsInCode, packedTarballs } from "./packed.mjs";

// Eight napkins of 21 in with 1 in hems, 10 % and 8 % lost, 30 in of waste; by hand (8 × 23 ÷ 0.9 ÷ 0.92 + 30) ÷ 36 = 2270 ÷ 324.
const names = "inches, percentLost, warpLength, yards";
const answer = `warpLength(${napkinsInCode}).in(yards)`;

describe("the packages as published, installed in a bare project", () => {
  const folder = mkdtempSync(join(tmpdir(), "thrum-packed-"));
  const write = (file: string, text: string): string => {
    writeFileSync(join(folder, file), text);
    return file;
  };
  const printed = (file: string): unknown =>
    JSON.parse(execFileSync(process.execPath, [file], { cwd: folder, encoding: "utf8", stdio: "pipe" }));
  const compiled = (...options: string[]): string => {
    const tsc = [
      join(root, "node_modules/typescript/bin/tsc"),
      "--noEmit",
      "--strict",
      "--target",
      "es2022",
      ...options,
    ];
    return spawnSync(process.execPath, tsc, { cwd: folder, encoding: "utf8" }).stdout;
  };

  beforeAll(() => {
    installPacked(folder, packedTarballs(join(folder, "tarballs")));
  }, 120_000);
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it("answer a script that imports them", () => {
    const text = `import { ${names} } from "@thrum/maths"; console.log(JSON.stringify(${answer}));`;
    expect(printed(write("sum.mjs", text))).toBeCloseTo(2270 / 324, 12);
  });

  it("answer a script that requires them", () => {
    const text = `const { ${names} } = require("@thrum/maths"); console.log(JSON.stringify(${answer}));`;
    expect(printed(write("sum.cjs", text))).toBeCloseTo(2270 / 324, 12);
  });

  it.each([
    "@thrum/maths",
    "@thrum/maths/catalogue",
    "@thrum/maths/define",
    "@thrum/maths/verification",
    "@thrum/stripes",
    "@thrum/plan",
    "@thrum/sheets",
    "@thrum/sheets/functions",
    "@thrum/plan/files",
  ])("%s gives the same names to import and to require", (name) => {
    const all = "console.log(JSON.stringify(Object.keys(all).filter((key) => key !== 'module.exports').sort()));";
    const imported = printed(write("all.mjs", `import * as all from "${name}"; ${all}`));
    expect(imported).not.toEqual([]);
    expect(printed(write("all.cjs", `const all = require("${name}"); ${all}`))).toEqual(imported);
  });

  it("hold their types in a module, in CommonJS and under a bundler", () => {
    const text = `import { ${names} } from "@thrum/maths";\nexport const answer: number = ${answer};\n`;
    const files = [write("typed.mts", text), write("typed.cts", text)];
    expect(compiled("--module", "nodenext", ...files)).toBe("");
    expect(compiled("--module", "esnext", "--moduleResolution", "bundler", write("typed.ts", text))).toBe("");
  });

  it("do not let a mass stand for a length", () => {
    const text = `import { grains, yards } from "@thrum/maths";\ngrains(20).in(yards);\n`;
    expect(compiled("--module", "nodenext", write("wrong.mts", text))).toContain("wrong.mts(2,");
  });
});
