import { deflateRawSync } from "node:zlib";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";
import { linkOf } from "../src/draft/link.js";
import { nextTap, onDevice, opened } from "./app.js";
import { jobRecord, jobText, keep, napkins, recordKept, workRecord } from "./kept.js";

const job = jobRecord("a", jobText("2-hall-napkins.yaml"), "Hall napkins");
const packed = (bytes: Uint8Array): string =>
  `j1.${Buffer.from(deflateRawSync(bytes, { level: 9 })).toString("base64url")}`;
const VOICES = `
  globalThis.heard = [];
  const speech = {
    getVoices: () => [{ localService: true, lang: "en-GB", name: "a" }],
    cancel: () => heard.push("…"),
    speak: ({ text, rate }) => {
      heard.push(text);
      globalThis.rate = rate;
    },
    addEventListener: () => undefined,
  };
  Object.defineProperty(globalThis, "speechSynthesis", { value: speech, configurable: true });
  globalThis.asked = 0;
  navigator.storage.persist = async () => { asked += 1; return false; };
  globalThis.live = [];
  new MutationObserver((all) => {
    for (const { target } of all) {
      const region = (target.nodeType === 1 ? target : target.parentElement).closest("[aria-live], [role=status], [role=alert]");
      if (region !== null) live.push(region.textContent);
    }
  }).observe(document, { subtree: true, childList: true, characterData: true });
  globalThis.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };`;
const NO_SENSES = `
  Object.defineProperty(globalThis, "speechSynthesis", { value: { getVoices: () => [{ localService: false, lang: "en-GB" }], addEventListener: () => undefined, cancel: () => undefined }, configurable: true });
  Object.defineProperty(Navigator.prototype, "wakeLock", { value: undefined, configurable: true });
  delete Navigator.prototype.vibrate;`;

describeWith("Chromium", (executablePath) => {
  it("says each sentence once, in order, and stops what it was saying before", async () => {
    await onDevice(executablePath, async (device, address) => {
      await device.clock.install();
      await keep(device, address, { jobs: [job] });
      await device.addInitScript(VOICES);
      const page = await opened(device, address, "tie/a");
      await page.getByRole("button", { name: "Voice" }).click();
      await page.keyboard.press("Tab");
      await page.locator("main").focus();
      for (const key of ["ArrowRight", "ArrowRight", "ArrowLeft"]) {
        await nextTap(page);
        await page.keyboard.press(key);
      }
      await expect.poll(() => page.evaluate("heard.length")).toBe(8);
      const sentences = [
        "…",
        "Voice on",
        "…",
        "Group 2. madder, 24 knots.",
        "…",
        "Group 3. madder, 16 knots, to the end of the stripe.",
        "…",
        "Undone. Group 2.",
      ];
      expect(await page.evaluate("heard")).toEqual(sentences);
      // A reader hears the same, each once; the browser is asked once to keep it.
      expect(await page.evaluate("live")).toEqual(sentences.filter((one) => one !== "…"));
      expect(await page.evaluate("asked")).toBe(1);
      await page.getByRole("button", { name: /^Set/u }).click();
      await page.getByRole("button", { name: "fast" }).click();
      expect(await page.evaluate("[heard.at(-1), rate]")).toEqual(["Voice", 1.25]);
      const letters = (): Promise<unknown> =>
        page.evaluate("parseFloat(getComputedStyle(document.documentElement).fontSize)");
      expect(await letters()).toBe(16);
      await page.getByRole("button", { name: "larger" }).click();
      expect(await letters()).toBe(20);
      await expect.poll(() => recordKept(device, address, "settings", "settings")).toMatchObject({ larger: true });
      await page.reload();
      await expect.poll(letters).toBe(20);
    });
  });

  it("goes on without a voice of its own, a wake lock or a shake, and says so", async () => {
    await onDevice(executablePath, async (device, address) => {
      await keep(device, address, { jobs: [job], work: [workRecord("a", napkins)] });
      await device.addInitScript(NO_SENSES);
      const faults: string[] = [];
      const page = await opened(device, address, "tie/a");
      page.on("pageerror", ({ message }) => faults.push(message));
      await page.getByRole("button", { name: "Voice" }).click();
      await page
        .getByText("This device has no voice that works without a network.")
        .first()
        .waitFor({ state: "attached" });
      await page.keyboard.press("ArrowRight");
      await expect.poll(() => page.locator("h1").innerText()).toBe("Tie, group 2 of 24");
      await page.getByRole("button", { name: /^Set/u }).click();
      await page.getByText("The screen may go dark").waitFor();
      expect(faults).toEqual([]);
    });
  });

  it("refuses a link that is too long, a bomb or no job, and shows text as text; a file that is no job is told", async () => {
    await onDevice(executablePath, async (device, address) => {
      const page = await opened(device, address, "shelf");
      const bombs = [
        `j1.${"A".repeat(8001)}`,
        packed(new Uint8Array(5_000_000)),
        "j1.AAAA",
        packed(Buffer.from("stripes: 3")),
      ];
      expect(bombs[1]?.length).toBeLessThan(8000);
      for (const hash of bombs) {
        const bomb = await device.newPage();
        await bomb.goto(`${address}#${hash}`);
        await bomb.getByText("This link holds no job.").waitFor();
        await bomb.close();
      }
      const title = "<script>globalThis.hit = 1</script><img src=x onerror='globalThis.hit = 1'>";
      const link = linkOf(`title: ${JSON.stringify(title)}\nstripes: [24 natural, 12 "<b>bold</b>"]\n`) ?? "";
      const shown = await opened(device, address, link.slice(1));
      await shown.getByText(title).first().waitFor();
      await shown.getByRole("button", { name: "Keep on this device" }).click();
      await shown.getByLabel("dents", { exact: true }).waitFor();
      // The job is out of the address once it is kept.
      expect(shown.url()).not.toContain("j1.");
      expect(await shown.evaluate("globalThis.hit")).toBeUndefined();
      for (const [name, text] of [
        ["a.png", "\u0089PNG\r\n\u001a\n\0\0\0"],
        ["b.yaml", "a: [1, 2"],
        ["c.json", "{}".repeat(3)],
      ] as const) {
        await page
          .locator("input[type=file]")
          .setInputFiles({ name, mimeType: "text/plain", buffer: Buffer.from(text) });
        await page.getByText("This is not a job file:").waitFor();
        await page.reload();
        await page.locator("main .do button").first().waitFor();
      }
    });
  });
});
