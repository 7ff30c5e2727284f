import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { chromium } from "playwright-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { examplePlan, examplePlans } from "#ci/example-plans.js";
import { describeWith } from "#ci/program.js";
import { planHtml } from "./html.js";

/** What is asked of a page: how wide it lies, and its sizes; then what axe finds. */
const SIZES = `(() => {
  const points = (selector) => [...document.querySelectorAll(selector)].map((one) => Math.round(parseFloat(getComputedStyle(one).fontSize) * 75) / 100);
  const line = document.querySelector("[aria-label='A line of 100 mm'] path");
  return {
    wide: document.documentElement.scrollWidth,
    numbers: points(".bench td.number"),
    words: points(".bench td:not(.number)"),
    checkLine: line === null ? null : line.getBoundingClientRect().width * 25.4 / 96,
  };
})()`;
const AXE = `axe.run(document).then(({ violations, passes }) => ({ violations: violations.map(({ id }) => id), passes: passes.length }))`;

/** Rows of a table are alike: a few of each kind are enough to be looked at by axe. */
const FEW_ROWS = `document.querySelectorAll("tbody > tr:not(:nth-child(-n + 4)):not(.note):not(.noted):not(:last-child)").forEach((row) => row.remove())`;

interface Sizes {
  readonly wide: number;
  readonly numbers: readonly number[];
  readonly words: readonly number[];
  readonly checkLine: number | null;
}
interface Found {
  readonly violations: readonly string[];
  readonly passes: number;
}

describeWith("Chromium", (executablePath) => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
    page = await browser.newPage();
  }, 60_000);
  afterAll(async () => {
    await browser.close();
  });

  async function sizesAt(width: number): Promise<Sizes> {
    await page.setViewportSize({ width, height: 900 });
    return page.evaluate<Sizes>(SIZES);
  }
  async function found(): Promise<Found> {
    await page.evaluate(readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"));
    return page.evaluate<Found>(AXE);
  }

  it.each(examplePlans)(
    "%s: axe objects to nothing, and nothing lies beside a table's or a telephone's window",
    async (_, plan) => {
      // The workings are the same few elements over and over: they are asked once, below.
      await page.setContent(planHtml(plan, { without: "workings" }));
      const table = await sizesAt(1280);
      expect(table.wide).toBe(1280);
      for (const size of table.numbers) expect(size).toBe(18);
      for (const size of table.words) expect(size).toBe(14);
      if (table.checkLine !== null) expect(table.checkLine).toBeCloseTo(100, 1);
      expect((await sizesAt(390)).wide).toBe(390);
      await page.evaluate(FEW_ROWS);
      for (const width of [390, 1280]) {
        await page.setViewportSize({ width, height: 900 });
        const { violations, passes } = await found();
        expect(violations).toEqual([]);
        expect(passes).toBeGreaterThan(10);
      }
    },
  );

  it("objects to nothing in the workings either", async () => {
    await page.setContent(planHtml(examplePlan("7-warp-with-faults")));
    expect((await sizesAt(390)).wide).toBe(390);
    expect((await found()).violations).toEqual([]);
  });
});
