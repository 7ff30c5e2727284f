import { spawnSync } from "node:child_process";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";

const folder = "examples/classroom";

describeWith("Chromium", (path) => {
  it("judges the answers of a class in one file that asks the network for nothing", async () => {
    const built = spawnSync(process.execPath, ["build.mjs"], { cwd: folder, encoding: "utf8" });
    expect({ status: built.status, stderr: built.stderr }).toEqual({ status: 0, stderr: "" });
    const browser = await chromium.launch({ executablePath: path, args: ["--no-sandbox"] });
    try {
      const page = await browser.newPage();
      const asked: string[] = [];
      const faults: string[] = [];
      page.on("request", (request) => asked.push(new URL(request.url()).protocol));
      page.on("pageerror", (error) => faults.push(error.message));
      await page.goto(pathToFileURL(resolve(folder, "classroom.html")).href);
      expect(await page.locator("article").count()).toBe(5);
      const third = page.locator("article").nth(2);
      const answer = async (text: string): Promise<string> => {
        await third.locator("input").fill(text);
        await third.getByRole("button").click();
        return third.getByRole("status").innerText();
      };
      // 13 × 34.5 = 448.5; ÷ 0.89 = 503.933; ÷ 0.85 = 592.862; + 23 = 615.862 in, 17.107 yd. With 11 % added: 608.688 in.
      expect(await third.locator("li").nth(1).innerText()).toBe("finished length: 33 in, one piece, washed and hemmed");
      expect(await answer("17.107")).toContain("17.107 yd is right");
      expect(await answer("16.908")).toContain("adds the 11 % of loom to finished instead of dividing it out");
      expect(await answer("about 7")).toContain("expected a number as it was written");
      await third.locator("select").selectOption("right");
      expect(await third.getByRole("status").innerText()).toBe("The teacher says: right.");
      await third.getByText("Working").click();
      expect(await third.locator("math").textContent()).toContain("503.933");
      expect({ asked, faults }).toEqual({ asked: ["file:"], faults: [] });
      const kept = await page.evaluate("localStorage.length + sessionStorage.length");
      expect(kept).toBe(0);
    } finally {
      await browser.close();
    }
  });
});
