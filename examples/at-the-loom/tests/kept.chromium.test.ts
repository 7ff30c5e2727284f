import { readFileSync } from "node:fs";
import type { BrowserContext, Page } from "playwright-core";
import { expect, it } from "vitest";
import { root } from "#ci/built.mjs";
import { describeWith } from "#ci/program.js";
import type { WorkRecord } from "../src/keep/records.js";
import { nextTap, onDevice, opened } from "./app.js";
import { jobRecord, jobText, keep, napkins, recordKept, workRecord } from "./kept.js";

const job = jobRecord("a", jobText("2-hall-napkins.yaml"), "Hall napkins");
const refusals = {
  database: `IDBFactory.prototype.open = () => { throw new DOMException("refused", "SecurityError"); };`,
  mark: `Storage.prototype.setItem = () => { throw new DOMException("refused", "QuotaExceededError"); };`,
  full: `if (location.hash.includes("tie")) { let puts = 0; const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (...given) { puts += 1; if (puts > 3) throw new DOMException("full", "QuotaExceededError"); return put.apply(this, given); }; }`,
};
const title = (page: Page): Promise<string> => page.locator("h1").innerText();
const tap = async (page: Page, group: number): Promise<void> => {
  await nextTap(page);
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => title(page)).toBe(`Tie, group ${String(group + 1)} of 24`);
};
const reloaded = async (page: Page): Promise<void> => {
  await page.reload();
  await page.locator(".hands .main").waitFor();
};

describeWith("Chromium", (executablePath) => {
  it("loses no count where the database, the mark or both are refused, nor where the device is full in the middle", async () => {
    const tied = async (
      device: BrowserContext,
      address: string,
      refused: readonly (keyof typeof refusals)[],
    ): Promise<void> => {
      await device.clock.install();
      for (const one of refused) await device.addInitScript(refusals[one]);
      const page = await opened(device, address, "tie/napkins");
      // Three acts are kept before the device is full.
      const taps = refused.includes("full") ? 5 : 2;
      for (let group = 1; group <= taps; group += 1) await tap(page, group);
      const warned = await page.getByText("This browser keeps nothing.").count();
      expect([refused, warned]).toEqual([refused, refused.some((one) => one !== "mark") ? 1 : 0]);
      await reloaded(page);
      expect([refused, await title(page)]).toEqual([refused, `Tie, group ${String(taps + 1)} of 24`]);
    };
    for (const refused of [["database"], ["mark"], ["database", "mark"], ["full", "mark"]] as const)
      await onDevice(executablePath, (device, address) => tied(device, address, refused));
  }, 120_000);

  it("lets one window write: the other says so, and takes the work over where it stands", async () => {
    await onDevice(executablePath, async (device, address) => {
      await device.clock.install();
      await keep(device, address, { jobs: [job], work: [workRecord("a", napkins)] });
      const first = await opened(device, address, "tie/a");
      await tap(first, 1);
      const second = await opened(device, address, "tie/a");
      await second.getByText("Open in another window").waitFor();
      await second.keyboard.press("ArrowRight");
      expect(await title(second)).toBe("Tie, group 2 of 24");
      await tap(first, 2);
      await second.getByRole("button", { name: "Use it here" }).click();
      await expect.poll(() => title(second)).toBe("Tie, group 3 of 24");
      await first.getByText("Open in another window").waitFor();
      await first.keyboard.press("ArrowRight");
      await tap(second, 3);
      expect(await title(first)).toBe("Tie, group 3 of 24");
      await expect
        .poll(() => recordKept(device, address, "work", "a"))
        .toMatchObject({ progress: { tied: [{ from: 1, to: 3 }] } });
    });
  });

  it("reads what a newer version wrote, and leaves it as it is; opens what the first version wrote", async () => {
    await onDevice(executablePath, async (device, address) => {
      const newer = { ...workRecord("b", napkins), schema: 2, more: ["of it"] } as unknown as WorkRecord;
      const first = JSON.parse(
        readFileSync(`${root}examples/at-the-loom/tests/records/work-1.json`, "utf8"),
      ) as WorkRecord;
      await keep(device, address, {
        jobs: [
          { ...job, id: "b" },
          { ...job, id: first.job },
        ],
        work: [newer, first],
      });
      const page = await opened(device, address, "tie/b");
      await page.getByText("Written by a newer version.").waitFor();
      await page.keyboard.press("ArrowRight");
      await page.locator(".hands .main").click();
      expect(await recordKept(device, address, "work", "b")).toEqual(newer);
      const other = await opened(device, address, `stopped/${first.job}`);
      await other.getByText("Look at the loom").first().waitFor();
    });
  });
});
