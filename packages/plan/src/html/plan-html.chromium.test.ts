import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";
import { readJob } from "../job/read-job.js";
import { planWarp } from "../plan/plan-warp.js";
import { planHtml } from "./plan-html.js";

/** Counts the sheets and asks axe; the answer stands in the page that Chromium prints. */
const ASK = `axe.run(document).then(({ violations, passes }) => {
  const found = { violations: violations.map(({ id }) => id), passes: passes.length };
  document.title = "axe " + JSON.stringify(found);
});`;

describeWith("Chromium", (path) => {
  it("finds nothing to object to in the sheets of the napkins", () => {
    const reading = readJob(readFileSync("examples/hall-napkins/job.yaml", "utf8"));
    if (!reading.ok) throw new Error("the example's job cannot be read");
    const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
    // The page itself forbids scripts: only this copy lets axe in.
    const page = planHtml(planWarp(reading.job))
      .replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/u, "")
      .replace(
        "</body>",
        () => `<script>${axe.replaceAll("</script", "<\\/script")}</script><script>${ASK}</script></body>`,
      );
    const file = join(mkdtempSync(join(tmpdir(), "thrum-")), "plan.html");
    writeFileSync(file, page);
    const options = ["--headless", "--no-sandbox", "--disable-gpu", "--virtual-time-budget=20000", "--dump-dom"];
    const { stdout } = spawnSync(path, [...options, pathToFileURL(file).href], {
      encoding: "utf8",
      maxBuffer: 2 ** 26,
    });
    const answer = /<title>axe (\{.*?\})<\/title>/u.exec(stdout)?.[1] ?? "{}";
    const { violations, passes } = JSON.parse(answer) as { readonly violations?: unknown; readonly passes?: number };
    expect(violations).toEqual([]);
    expect(passes).toBeGreaterThan(10);
  });
});
