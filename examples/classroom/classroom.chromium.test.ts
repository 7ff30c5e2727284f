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
      expect(await page.locator("article").count()).toBe(6);
      const third = page.locator("article").nth(2);
      const answer = async (text: string): Promise<string> => {
        await third.locator("input").last().fill(text);
        await third.getByRole("button").click();
        return third.getByRole("status").innerText();
      };
      // 10 × 20.5 = 205; ÷ 0.86 = 238.372; ÷ 0.88 = 270.877; + 25.5 = 296.377 in, 8.233 yd. With 14 % added: 291.068 in.
      expect(await third.locator("li").nth(1).innerText()).toBe("finished length: 18 in, one piece, washed and hemmed");
      expect(await third.locator("math").first().isVisible()).toBe(false);
      expect(await answer("8.233")).toContain("8.233 yd is right");
      expect(await answer("8.085")).toContain("adds the 14 % of loom to finished instead of dividing it out");
      expect(await answer("about 7")).toContain("your answer: expected a number as it was written");
      expect(await answer("8,233 yd")).not.toContain("expected");
      await third.locator("input").nth(1).fill("233.7");
      expect(await answer("8.085")).toContain("The first line to look at: on loom.");
      expect(await third.locator("select").isVisible()).toBe(false);
      await third.getByText("Working").click();
      expect(await third.locator("math").textContent()).toContain("238.372");
      expect({ asked, faults }).toEqual({ asked: ["file:"], faults: [] });
      const kept = await page.evaluate("localStorage.length + sessionStorage.length");
      expect(kept).toBe(0);
    } finally {
      await browser.close();
    }
  });
});
