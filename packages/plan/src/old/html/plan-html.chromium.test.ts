import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";
import { readJob } from "../job/read-job.js";
import { planWarp } from "../plan/plan-warp.js";
import { planHtml } from "./plan-html.js";

/** What is asked of the page: what axe finds, and its sizes as they are laid out; the answer stands in its title. */
const ASK = `
const PX_TO_MM = 25.4 / 96;
const millimetres = (selector, side) =>
  [...document.querySelectorAll(selector)].map((one) => Math.round(one.getBoundingClientRect()[side] * PX_TO_MM * 100) / 100);
const points = (selector) => [...document.querySelectorAll(selector)].map((one) => Math.round(parseFloat(getComputedStyle(one).fontSize) * 75) / 100);
const sizes = {
  sheetHeights: millimetres(".knots, .tape", "height"),
  widest: Math.max(...millimetres(".sheet *:not(.unseen)", "right")) - Math.min(...millimetres(".sheet", "left")),
  rowHeights: millimetres(".knots tbody tr", "height"),
  boxes: millimetres(".knots .box", "width"),
  checkLine: millimetres("[aria-label='A line of 100 mm'] path", "width"),
  numbers: points(".knots td.number"),
  words: points(".knots .colour span"),
};
axe.run(document).then(({ violations, passes }) => {
  document.title = "asked " + JSON.stringify({ violations: violations.map(({ id }) => id), passes: passes.length, sizes });
});`;

interface Answer {
  readonly violations: readonly string[];
  readonly passes: number;
  readonly sizes: Readonly<
    Record<"sheetHeights" | "rowHeights" | "boxes" | "checkLine" | "numbers" | "words", readonly number[]>
  > & { readonly widest: number };
}

/** Letter is the shorter of the two papers, A4 the narrower; margins of 25 mm above and 12 mm elsewhere. */
const ROOM = { height: 279.4 - 25 - 12, width: 210 - 2 * 12 };

const exampleJobs = readdirSync("examples").flatMap((folder) =>
  readdirSync(`examples/${folder}`)
    .filter((file) => file.endsWith(".yaml"))
    .map((file) => `examples/${folder}/${file}`),
);

function answerOf(chromium: string, job: string): Answer {
  const reading = readJob(readFileSync(job, "utf8"));
  if (!reading.ok) throw new Error("the example's job cannot be read");
  const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
  // The page itself forbids scripts: only this copy lets axe in, and lays the sheets out without the screen's padding.
  const page = planHtml(planWarp(reading.job))
    .replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/u, "")
    .replace("@media screen", "@media none")
    .replace(
      "</body>",
      () => `<script>${axe.replaceAll("</script", "<\\/script")}</script><script>${ASK}</script></body>`,
    );
  const file = join(mkdtempSync(join(tmpdir(), "thrum-")), "plan.html");
  writeFileSync(file, page);
  const options = ["--headless", "--no-sandbox", "--disable-gpu", "--virtual-time-budget=20000", "--dump-dom"];
  const { stdout } = spawnSync(chromium, [...options, pathToFileURL(file).href], {
    encoding: "utf8",
    maxBuffer: 2 ** 26,
  });
  return JSON.parse(/<title>asked (\{.*?\})<\/title>/u.exec(stdout)?.[1] ?? "{}") as Answer;
}

describeWith("Chromium", (path) => {
  it.each(exampleJobs)(
    "finds nothing to object to in the sheets of %s, of the sizes promised on A4 and Letter",
    (job) => {
      const { violations, passes, sizes } = answerOf(path, job);
      expect(violations).toEqual([]);
      expect(passes).toBeGreaterThan(10);
      // One joining sheet and one of the tape at least.
      expect(sizes.sheetHeights.length).toBeGreaterThanOrEqual(2);
      expect(Math.max(...sizes.sheetHeights)).toBeLessThanOrEqual(ROOM.height);
      expect(sizes.widest).toBeLessThanOrEqual(ROOM.width + 0.01);
      expect(Math.min(...sizes.rowHeights)).toBeGreaterThanOrEqual(10);
      expect(new Set(sizes.boxes)).toEqual(new Set([6]));
      expect(sizes.checkLine.length).toBeGreaterThanOrEqual(1);
      for (const line of sizes.checkLine) expect(line).toBeCloseTo(100, 1);
      expect(new Set(sizes.numbers)).toEqual(new Set([18]));
      expect(new Set(sizes.words)).toEqual(new Set([14]));
    },
  );
});
