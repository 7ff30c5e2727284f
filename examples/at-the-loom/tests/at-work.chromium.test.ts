import type { BrowserContext, Page } from "playwright-core";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";
import type { WorkRecord } from "../src/keep/records.js";
import { nextTap, onDevice, opened } from "./app.js";
import { jobRecord, jobText, keep, napkins, recordKept, workRecord } from "./kept.js";

const job = jobRecord("a", jobText("2-hall-napkins.yaml"), "Hall napkins");
/** What stands on the screen: its title, the big answer, and how much is done. */
const shown = (page: Page): Promise<string> =>
  page.evaluate(() =>
    ["h1", ".way p", ".big", ".facts"].map((one) => document.querySelector(one)?.textContent.trim() ?? "").join(" | "),
  );
const now = async (page: Page, is: (text: string) => boolean): Promise<string> => {
  await expect.poll(() => shown(page), { timeout: 15_000, interval: 20 }).toSatisfy(is);
  return shown(page);
};

/** The tab's process is killed, and a new one opened at the same address. */
async function killed(device: BrowserContext, page: Page): Promise<Page> {
  const address = page.url();
  const crash = await device.newCDPSession(page);
  const gone = page.waitForEvent("crash");
  void crash.send("Page.crash").catch(() => undefined);
  await gone;
  await page.close();
  const next = await device.newPage();
  await next.goto(address);
  await next.locator(".hands .main").waitFor();
  return next;
}

/** Writes to the database are held back so long. */
const heldBack = (milliseconds: number): string => `{
  const open = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (...given) {
    const made = open.apply(this, given);
    if (given[1] !== "readwrite") return made;
    const until = performance.now() + ${String(milliseconds)};
    const spin = () => { if (performance.now() < until) made.objectStore(made.objectStoreNames[0]).count().onsuccess = spin; };
    spin();
    made.commit = () => undefined;
    return made;
  };
}`;

/** Acts in each of four tasks, each killed after: in CI the undo and one with a slow database are among them. */
const acts = Number(process.env["THRUM_KILLS"] ?? 12) / 4;

describeWith("Chromium", (executablePath) => {
  it("finds the same place again after every kill, 40 of them with THRUM_KILLS=40, as soon as the new count is seen, also where the database is slow", async () => {
    const killedIn = (task: string): Promise<number> =>
      onDevice(executablePath, async (device, address) => {
        await keep(device, address, { jobs: [job] });
        let page = await opened(device, address, `${task}/a`);
        let kills = 0;
        for (let act = 0; act < acts; act += 1) {
          if (act === Math.ceil(acts / 2)) await device.addInitScript(heldBack(1000));
          // The second act is an undo.
          const taps = act === 1 ? page.locator(".hands button").nth(1) : page.locator(".hands .main");
          const before = await now(page, (text) => text.length > 10);
          await taps.click();
          const after = await now(page, (text) => text !== before);
          page = await killed(device, page);
          expect([task, act, await now(page, (text) => text.length > 10)]).toEqual([task, act, after]);
          kills += 1;
        }
        return kills;
      });
    expect(await Promise.all(["count", "wind", "tie", "tape"].map(killedIn))).toEqual([acts, acts, acts, acts]);
  }, 240_000);

  it("ties all groups of the napkins by keys alone, and 24 undos lead back to the first", async () => {
    await onDevice(executablePath, async (device, address) => {
      await device.clock.install();
      await keep(device, address, { jobs: [job] });
      const page = await opened(device, address, "tie/a");
      const step = async (key: string, group: number): Promise<void> => {
        await nextTap(page);
        await page.keyboard.press(key);
        await page.waitForFunction(
          (title) => document.querySelector("h1")?.textContent === title,
          group > 24 ? "Tie" : `Tie, group ${String(group)} of 24`,
        );
      };
      const keys = ["Space", "Enter", "ArrowRight", "ArrowDown", "PageDown"];
      const backs = ["ArrowLeft", "ArrowUp", "PageUp", "Backspace"];
      for (let group = 1; group <= 24; group += 1) await step(keys[group % keys.length] ?? "", group + 1);
      expect(await shown(page)).toContain("368 of 368 tied");
      await expect.poll(() => recordKept(device, address, "work", "a")).toMatchObject({ progress: { tied: "all" } });
      const { seq } = (await recordKept(device, address, "work", "a")) as WorkRecord;
      for (let group = 24; group >= 1; group -= 1) {
        await page.keyboard.press(backs[group % backs.length] ?? "");
        await page.waitForFunction(
          (title) => document.querySelector("h1")?.textContent === title,
          `Tie, group ${String(group)} of 24`,
        );
      }
      expect(await shown(page)).toContain("0 of 368 tied");
      await expect.poll(() => recordKept(device, address, "work", "a")).toMatchObject({ seq: seq + 24, past: [] });
    });
  }, 60_000);

  it("counts a held key once, a double tap once, and a palm, a swipe or a second finger not at all", async () => {
    await onDevice(
      executablePath,
      async (device, address) => {
        await keep(device, address, { jobs: [job], work: [workRecord("a", napkins)] });
        await device.clock.install();
        const page = await opened(device, address, "tie/a");
        const title = (): Promise<string> => page.locator("h1").innerText();
        const fingers = await device.newCDPSession(page);
        const touch = async (type: string, points: readonly object[]): Promise<void> => {
          await fingers.send("Input.dispatchTouchEvent", { type: type as "touchStart", touchPoints: points as never });
        };
        const at = { x: 200, y: 300 };
        const tap = async (points: readonly object[]): Promise<void> => {
          await touch("touchStart", points);
          await touch("touchEnd", []);
        };
        await page.clock.pauseAt(Date.now() + 60_000);
        await tap([{ ...at, radiusX: 8, radiusY: 8 }]);
        await tap([{ ...at, radiusX: 8, radiusY: 8 }]);
        await nextTap(page);
        await expect.poll(title).toBe("Tie, group 2 of 24");
        await tap([{ ...at, radiusX: 30, radiusY: 30 }]);
        await tap([at, { x: 260, y: 300 }]);
        await touch("touchStart", [at]);
        await touch("touchMove", [{ x: 240, y: 300 }]);
        await touch("touchEnd", []);
        await nextTap(page);
        expect(await title()).toBe("Tie, group 2 of 24");
        await page.keyboard.down("ArrowRight");
        for (let held = 0; held < 5; held += 1) {
          await nextTap(page);
          await page.keyboard.down("ArrowRight");
        }
        await page.keyboard.up("ArrowRight");
        await expect.poll(title).toBe("Tie, group 3 of 24");
      },
      { hasTouch: true },
    );
  });
});
