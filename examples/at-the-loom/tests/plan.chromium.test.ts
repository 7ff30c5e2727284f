import { readFileSync } from "node:fs";
import { chromium } from "playwright-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { root } from "#ci/built.mjs";
import { describeWith } from "#ci/program.js";
import { servedApp } from "./app.js";

const axe = readFileSync(`${root}node_modules/axe-core/axe.min.js`, "utf8");

describeWith("Chromium", (executablePath) => {
  let browser: Browser;
  let site: Awaited<ReturnType<typeof servedApp>>;
  const asked: string[] = [];

  beforeAll(async () => {
    site = await servedApp();
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  }, 120_000);
  afterAll(async () => {
    await browser.close();
    site.stop();
  });

  async function on<T>(
    hash: string,
    look: (page: Page) => Promise<T>,
    colorScheme: "light" | "dark" = "light",
  ): Promise<T> {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 }, colorScheme });
    try {
      const page = await context.newPage();
      page.on("request", (request) => asked.push(request.url()));
      await page.goto(`${site.address}#${hash}`);
      return await look(page);
    } finally {
      await context.close();
    }
  }

  it("gives picture, width and yarn of the napkins once stripes, reed and length are typed", async () => {
    await on("shelf", async (page) => {
      await page.getByRole("button", { name: "Plan a new warp" }).click();
      await page.getByRole("button", { name: "Write it as a list" }).click();
      await page
        .getByRole("textbox", { name: /Runs, number first/u })
        .fill(
          "24 natural, { mirror: [40 madder, { repeat: 3, of: [12 natural, 6 indigo] }, 66 natural], middle: twice }, 24 natural",
        );
      await page.getByRole("button", { name: "Show it as rows" }).click();
      await page.getByLabel("dents", { exact: true }).fill("10");
      await page.getByLabel("ends in a dent").fill("2");
      await page.getByLabel("length", { exact: true }).fill("5.57");
      await page.keyboard.press("Tab");
      // 252, 80 and 36 ends × 5.57 yd; 368 ends ÷ 2 ÷ 10 = 18.4 in.
      await page.getByText("1403.64 yd").waitFor();
      const seen = (await page.locator("aside").textContent()) ?? "";
      for (const number of ["368", "18⅜ in", "1403.64 yd", "445.6 yd", "200.52 yd"]) expect(seen).toContain(number);
      await page.reload();
      await page.getByText("200.52 yd").waitFor();
    });
  });

  it("has no fault of access on its pages, light and dark, and none is wider than a phone", async () => {
    for (const shade of ["light", "dark"] as const)
      for (const hash of ["shelf", "napkins", "sheets/napkins", "edge/napkins"])
        await on(
          hash,
          async (page) => {
            await page.locator("main .do").first().waitFor();
            await page.waitForTimeout(300);
            await page.evaluate(axe);
            const run =
              "axe.run(document, { iframes: false }).then(({ violations }) => violations.map(({ id }) => id))";
            expect([hash, shade, await page.evaluate(run)]).toEqual([hash, shade, []]);
            expect(await page.evaluate("document.documentElement.scrollWidth")).toBe(390);
          },
          shade,
        );
  });

  it("asks nothing of any other address", () => {
    expect(asked.length).toBeGreaterThan(10);
    expect(asked.filter((url) => !url.startsWith(site.address) && !/^(?:data|blob):/u.test(url))).toEqual([]);
  });
});
