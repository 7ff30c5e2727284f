import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";
import { expect, it } from "vitest";
import { describeWith } from "../support/program.js";
import { root } from "../support/built.mjs";

describeWith("Chromium", (executablePath) => {
  it("plans on the page that the guide shows, opened from a disk, and the job as it is changed", async () => {
    const guide = readFileSync(`${root}docs/guides/app-developer.md`, "utf8");
    const [, html = ""] = /```html\n([\s\S]*?)```/u.exec(guide) ?? [];
    const script = pathToFileURL(`${root}packages/plan/dist/thrum.global.js`).href;
    mkdirSync(`${root}reports`, { recursive: true });
    writeFileSync(`${root}reports/one-page.html`, html.replace(/node_modules[^"]*thrum.global.js/u, script));
    const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
    try {
      const page = await browser.newPage();
      const faults: string[] = [];
      page.on("pageerror", (error) => faults.push(error.message));
      page.on("request", (request) => {
        if (!/^(?:file|data):/u.test(request.url())) faults.push(request.url());
      });
      await page.goto(pathToFileURL(`${root}reports/one-page.html`).href);
      // 24 + 2 × (40 + 66) + 24 = 260; 260 ÷ 2 ÷ 10 = 13 in.
      expect(await page.textContent("#answer")).toBe("260 ends.");
      expect(await page.textContent("#plan")).toContain("Width in the reed: 13 in");
      await page.fill("#job", "stripes: [24 natural, 40 madder]");
      await page.click("#plan-it");
      expect(await page.textContent("#answer")).toBe("64 ends.");
      await page.waitForFunction("document.querySelector('#stripes').naturalWidth > 0");
      await page.fill("#job", "stripes: 3");
      await page.click("#plan-it");
      expect(await page.textContent("#answer")).toContain("stripes");
      expect(faults).toEqual([]);
    } finally {
      await browser.close();
    }
  });
});
