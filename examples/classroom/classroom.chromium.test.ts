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
      // 252.222 in is 7.006 yd; 250 in, the shrinkage added, is 6.94 yd.
      expect(await answer("7.01")).toContain("Right.");
      expect(await answer("6.94")).toContain("adds the 10 % of loom to finished instead of dividing it out");
      expect(await answer("about 7")).toContain("expected a number as it was written");
      await third.locator("select").selectOption("right");
      expect(await third.getByRole("status").innerText()).toBe("The teacher says: right.");
      await third.getByText("Working").click();
      expect(await third.locator("math").textContent()).toContain("204.444");
      expect({ asked, faults }).toEqual({ asked: ["file:"], faults: [] });
      const kept = await page.evaluate("localStorage.length + sessionStorage.length");
      expect(kept).toBe(0);
    } finally {
      await browser.close();
    }
  });
});
