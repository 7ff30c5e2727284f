import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";
import { onDevice, opened } from "./app.js";
import { jobRecord, jobText, keep, napkins, workRecord } from "./kept.js";

const text = jobText("2-hall-napkins.yaml");
const job = jobRecord("a", text, "Hall napkins");

describeWith("Chromium", (executablePath) => {
  it("shows what a fault of the old warp changes before it goes into the job, and undo takes it out again", async () => {
    await onDevice(executablePath, async (device, address) => {
      await keep(device, address, { jobs: [job], work: [workRecord("a", napkins)] });
      const page = await opened(device, address, "count/a");
      await page.getByRole("button", { name: "Another number" }).click();
      await page.getByLabel("An end left out").check();
      await page.getByRole("button", { name: "Put it into the job" }).click();
      // 368 counted, and one place without an old end: 369 places for 368 new ends.
      await page.getByText("What it changes in the plan").waitFor();
      await page.getByRole("button", { name: "Put it into the job" }).click();
      await page.locator("h1", { hasText: "Count the old warp" }).waitFor();
      await page.goto(`${address}#plan/a`);
      await page.getByText("What was found in it").first().waitFor({ state: "attached" });
      const found = (): Promise<string> => page.locator("body").innerHTML();
      await expect.poll(found).toContain("left out");
      await page.goto(`${address}#count/a`);
      await page.getByRole("button", { name: "Undo" }).click();
      await page.goto(`${address}#sheets/a`);
      const [file] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: "Save the job file" }).click(),
      ]);
      expect(readFileSync(await file.path(), "utf8")).not.toContain("left out");
    });
  });

  it("makes the next job of what was measured, with the loom as it stands", async () => {
    await onDevice(executablePath, async (device, address) => {
      const found = "\nfound: { takeUp: 21 in to 19 1/2 in, firstInches: { picks: 17 per inch } }\n";
      const steps = { inches: [1, 2], measures: Array.from({ length: 12 }, (_, at) => at + 1) };
      await keep(device, address, {
        jobs: [{ ...job, text: text + found }],
        work: [workRecord("a", napkins, { here: { steps } })],
      });
      const page = await opened(device, address, "inches/a");
      // 17 picks in the place of 18: shown before they are taken, and undo brings the 18 back.
      const again = page.getByRole("button", { name: "Plan again with these" });
      await again.click();
      await page.getByText("What it changes in the plan").waitFor();
      // The plan is reckoned beside the page, and its differences come when it is done.
      await page.locator("dd").filter({ hasText: "→" }).first().waitFor();
      await again.click();
      await page.getByText("What it changes in the plan").waitFor({ state: "detached" });
      await page.getByRole("button", { name: "Undo" }).click();
      await page.goto(`${address}#measures/a`);
      await page.getByRole("button", { name: "The next job" }).click();
      await page.waitForURL(/#plan\//u);
      // The name of the new job is drawn, and one in sixteen begins with an a.
      await expect.poll(() => page.url()).not.toMatch(/plan\/a$/u);
      await page.getByText("368", { exact: false }).first().waitFor();
    });
  });

  it("says on the shelf where each warp stands, and takes all of them to another device in a file", async () => {
    const work = workRecord("a", napkins, { here: { task: "tie" }, progress: { tied: [{ from: 1, to: 9 }] } });
    const path = await onDevice(executablePath, async (device, address) => {
      await keep(device, address, { jobs: [job], work: [work] });
      const page = await opened(device, address, "shelf");
      // Nine groups: 24 natural, 24 and 16 madder, three times 12 natural and 6 indigo.
      await page.getByText(/^Tying, stopped on .* at \d\d:\d\d: 118 of 368 ends tied\.$/u).waitFor();
      const [file] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: "Save all jobs to a file" }).click(),
      ]);
      await page.getByText(/Last saved to a file: \d/u).waitFor();
      return readFileSync(await file.path());
    });
    await onDevice(executablePath, async (device, address) => {
      const page = await opened(device, address, "shelf");
      await page
        .locator("input[type=file]")
        .setInputFiles({ name: "warps.thrum.json", mimeType: "application/json", buffer: path });
      await page.getByText("118 of 368 ends tied").waitFor();
      const progress = jobText("2-hall-napkins.progress.yaml");
      await page.locator("input[type=file]").setInputFiles([
        { name: "2-hall-napkins.yaml", mimeType: "text/plain", buffer: Buffer.from(text) },
        { name: "2-hall-napkins.progress.yaml", mimeType: "text/plain", buffer: Buffer.from(progress) },
      ]);
      await page.waitForURL(/#plan\//u);
      await page.goto(page.url().replace("#plan", "#tie"));
      // Groups 1 to 8 are tied in that file, and 5 knots of the ninth.
      await page.locator("h1", { hasText: "Tie, group 9 of 24" }).waitFor();
      expect(new URL(page.url()).hash).toMatch(/^#tie\//u);
    });
  });

  it("offers the two ways out where a stripe is wider than a chain", async () => {
    await onDevice(executablePath, async (device, address) => {
      await keep(device, address, { jobs: [{ ...job, text: text.replace("most: 140 ends", "most: 100 ends") }] });
      const page = await opened(device, address, "plan/a");
      await page.getByRole("button", { name: "Cut by group" }).waitFor();
      const ways = page.getByRole("button", { name: /Cut by group|132 ends/u });
      expect(await ways.count()).toBe(2);
      // Twice 66 natural in the middle.
      await page.getByRole("button", { name: "132 ends" }).click();
      await page.getByRole("button", { name: "Cut by group" }).waitFor({ state: "detached" });
      expect(await ways.count()).toBe(0);
    });
  });
});
