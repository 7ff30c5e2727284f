import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";
import { planWarp } from "../data/plan-warp.js";
import { readJob } from "../job/read-job.js";
import { planHtml } from "./html.js";

/** What is asked of the page: what axe finds, and its sizes as they are laid out; the answer stands in its title. */
const ASK = `
const points = (selector) => [...document.querySelectorAll(selector)].map((one) => Math.round(parseFloat(getComputedStyle(one).fontSize) * 75) / 100);
const right = (selector) => Math.max(0, ...[...document.querySelectorAll(selector)].map((one) => one.getBoundingClientRect().right));
const line = document.querySelector("[aria-label='A line of 100 mm'] path");
const sizes = {
  wide: document.documentElement.scrollWidth,
  window: window.innerWidth,
  sheets: right(".sheet :not(.tape *)"),
  numbers: points(".bench td.number"),
  words: points(".bench td:not(.number)"),
  checkLine: line === null ? null : Math.round(line.getBoundingClientRect().width * 254 / 96 * 10) / 100,
};
axe.run(document).then(({ violations, passes }) => {
  document.title = "asked " + JSON.stringify({ violations: violations.map(({ id }) => id), passes: passes.length, sizes });
});`;

interface Answer {
  readonly violations: readonly string[];
  readonly passes: number;
  readonly sizes: {
    readonly wide: number;
    readonly window: number;
    readonly sheets: number;
    readonly numbers: readonly number[];
    readonly words: readonly number[];
    readonly checkLine: number | null;
  };
}

/** A usual job, blends, faults, and the smallest, of which little is known. */
const examples = ["1-smallest.yaml", "2-hall-napkins.yaml", "3-blended-towels.yaml", "7-warp-with-faults.yaml"];

function pageOf(file: string): string {
  const reading = readJob(readFileSync(`examples/jobs/${file}`, "utf8"));
  if (!reading.ok) throw new Error("the example's job cannot be read");
  return planHtml(planWarp(reading.job));
}

function answerOf(chromium: string, page: string, width: number): Answer {
  const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
  // The page itself forbids scripts: only this copy lets axe in; a narrow frame stands for a telephone.
  const asked = page
    .replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/u, "")
    .replace(
      "</body>",
      () => `<script>${axe.replaceAll("</script", "<\\/script")}</script><script>${ASK}</script></body>`,
    );
  const folder = mkdtempSync(join(tmpdir(), "thrum-"));
  writeFileSync(join(folder, "plan.html"), asked);
  const options = [`--window-size=${String(width)},900`, "--headless", "--no-sandbox", "--disable-gpu"];
  const { stdout } = spawnSync(
    chromium,
    [...options, "--virtual-time-budget=20000", "--dump-dom", pathToFileURL(join(folder, "plan.html")).href],
    { encoding: "utf8", maxBuffer: 2 ** 26 },
  );
  return JSON.parse(/<title>asked (\{.*?\})<\/title>/u.exec(stdout)?.[1] ?? "{}") as Answer;
}

/** Rows, lines and steps of each printed page, by its text. */
function linesOfPages(chromium: string, page: string): readonly number[] {
  const folder = mkdtempSync(join(tmpdir(), "thrum-"));
  const [html, pdf] = [join(folder, "plan.html"), join(folder, "plan.pdf")];
  writeFileSync(html, page);
  const options = ["--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer", `--print-to-pdf=${pdf}`];
  spawnSync(chromium, [...options, pathToFileURL(html).href]);
  const { stdout, error } = spawnSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8", maxBuffer: 2 ** 26 });
  if (error !== undefined) return [];
  const pages = stdout.split("\f").slice(0, -1);
  return pages.map((text) => text.split("\n").filter((one) => one.trim() !== "").length - 1);
}

describeWith("Chromium", (path) => {
  it.each(examples)("finds nothing to object to in the page of %s, of the sizes promised", (file) => {
    const { violations, passes, sizes } = answerOf(path, pageOf(file), 1280);
    expect(violations).toEqual([]);
    expect(passes).toBeGreaterThan(10);
    expect(sizes.wide).toBeLessThanOrEqual(sizes.window);
    for (const size of sizes.numbers) expect(size).toBe(18);
    for (const size of sizes.words) expect(size).toBe(14);
    if (sizes.checkLine !== null) expect(sizes.checkLine).toBeCloseTo(100, 1);
  });

  it.each(examples)("needs no scrolling sideways for %s on a telephone", (file) => {
    const { violations, sizes } = answerOf(path, pageOf(file), 500);
    expect(violations).toEqual([]);
    expect(sizes.window).toBeLessThan(600);
    expect(sizes.wide).toBeLessThanOrEqual(sizes.window);
  });

  it.each(examples)("prints no page of %s with fewer than four lines but the last", (file) => {
    const lines = linesOfPages(path, pageOf(file));
    for (const number of lines.slice(0, -1)) expect(number).toBeGreaterThanOrEqual(4);
  });
});
