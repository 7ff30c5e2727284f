import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";

const folder = "examples/one-page";

describeWith("Chromium", (executablePath) => {
  it("plans the napkins on a page opened from a disk, and the job as it is changed", async () => {
    const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
    try {
      const page = await browser.newPage();
      const faults: string[] = [];
      page.on("pageerror", (error) => faults.push(error.message));
      page.on("request", (request) => {
        if (!/^(?:file|data):/u.test(request.url())) faults.push(request.url());
      });
      await page.goto(pathToFileURL(`${folder}/index.html`).href);
      // 9 × 17.5 ÷ 0.9 ÷ 0.92 + 10 = 200.217 in; ÷ 36 = 5.5616 yd; × 0.0254 = 5.0855 m; both rounded up.
      expect(await page.textContent("#answer")).toBe("368 ends of 5.57 yd, which are 5.09 m.");
      expect(await page.textContent("#plan")).toContain("Width in the reed: 18 3/8 in");
      expect(
        await page.locator("#stripes").evaluate((img) => (img as unknown as { naturalWidth: number }).naturalWidth),
      ).toBeGreaterThan(0);
      const job = await page.inputValue("#job");
      expect(job).toBe(readFileSync("examples/jobs/2-hall-napkins.yaml", "utf8"));
      await page.fill("#job", job.replace("number: 9", "number: 10"));
      await page.click("#plan-it");
      // 10 × 17.5 ÷ 0.9 ÷ 0.92 + 10 = 221.353 in, 6.1487 yd, 5.6224 m.
      expect(await page.textContent("#answer")).toBe("368 ends of 6.15 yd, which are 5.63 m.");
      await page.fill("#job", job.replace("number: 9", "number: 0"));
      await page.click("#plan-it");
      expect(await page.textContent("#answer")).toBe("The job has faults: 1.");
      expect(faults).toEqual([]);
    } finally {
      await browser.close();
    }
  });
});
