import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { chromium } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { root } from "../support/built.mjs";
import { describeWith } from "../support/program.js";

/** Answers every published case and plans a whole warp, as one text. */
const ALL_ANSWERS = `
import * as maths from "./packages/maths/src/index.ts";
import { cases } from "./packages/maths/src/verification/index.ts";
import { argumentsOf } from "./packages/maths/src/verification/self-test.ts";
import { planJson, planText, planWarp, readJob } from "./packages/plan/src/index.ts";
const answers = cases.map((one) => [one.title, maths[one.call](...argumentsOf(one))]);
const plan = planWarp(readJob(JOB).value);
globalThis.said = [JSON.stringify(answers), planJson(plan), planText(plan)].join("\\n");`;

describeWith("Chromium", (executablePath) => {
  const folder = mkdtempSync(join(tmpdir(), "thrum-everywhere-"));
  const script = join(folder, "answers.mjs");
  const print = (program: string, ...args: readonly string[]): string =>
    execFileSync(program, [...args, script], {
      encoding: "utf8",
      maxBuffer: 1e8,
      env: { ...process.env, NO_COLOR: "1" },
    });
  let inNode = "";

  beforeAll(async () => {
    const job = readFileSync(join(root, "examples/jobs/2-hall-napkins.yaml"), "utf8");
    const { outputFiles } = await build({
      stdin: { contents: ALL_ANSWERS, resolveDir: root, loader: "ts" },
      bundle: true,
      write: false,
      format: "esm",
      define: { JOB: JSON.stringify(job) },
      alias: {
        "@thrum/maths": `${root}packages/maths/src/index.ts`,
        "@thrum/stripes": `${root}packages/stripes/src/index.ts`,
      },
    });
    writeFileSync(script, `${outputFiles[0]?.text ?? ""}\nglobalThis.console?.log(globalThis.said);`);
    inNode = print(process.execPath).trimEnd();
  }, 60_000);
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it("gives the same answers and the same plan to the letter in a browser as in Node", async () => {
    const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
    try {
      const page = await browser.newPage();
      await page.addScriptTag({ content: readFileSync(script, "utf8"), type: "module" });
      expect(inNode.length).toBeGreaterThan(100_000);
      expect(await page.evaluate("said")).toBe(inNode);
    } finally {
      await browser.close();
    }
  });

  it("gives the same answers and the same plan to the letter in Deno as in Node", () => {
    const deno = join(root, "examples/notebooks/node_modules/deno/bin.cjs");
    expect(print(process.execPath, deno, "run", "--quiet").trimEnd()).toBe(inNode);
  });
});
