import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { root } from "#ci/built.mjs";
import { describeWith } from "#ci/program.js";
import { linkOf } from "../src/draft/link.js";
import { onDevice, opened } from "./app.js";
import { jobRecord, jobText, keep, napkins, workRecord } from "./kept.js";

const axe = readFileSync(`${root}node_modules/axe-core/axe.min.js`, "utf8");

const job = jobRecord("a", jobText("2-hall-napkins.yaml"), "Hall napkins");
/** In the middle of everything: groups 1 to 9 counted and tied, four rounds wound, two pieces woven. */
const begunWork = workRecord("a", napkins, {
  progress: {
    counted: { old: [{ from: 1, to: 9 }] },
    winding: { chain: 1, stripe: 2, pass: 8 },
    tied: [{ from: 1, to: 9 }],
    woven: 2,
  },
});
/** Long enough ago that she is asked where she stopped. */
const work = { ...begunWork, at: Date.now() - 3_600_000 };
const AT_LOOM = ["count", "wind", "cut", "lay", "tie", "left", "through", "shafts", "inches", "tape", "measures"];
const SCREENS = [
  "shelf",
  "plan/a",
  "edge/a",
  "sheets/a",
  (linkOf(job.text) ?? "").slice(1),
  "order/a",
  "stopped/a",
  "settings/a",
  ...AT_LOOM.map((task) => `${task}/a`),
];
const SIZES = [
  [320, 568],
  [390, 844],
  [844, 390],
  [820, 1180],
  [1280, 800],
] as const;

const faults = (page: Page, options: string): Promise<readonly string[]> =>
  page.evaluate(
    `axe.run(document, ${options}).then(({ violations }) => violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => id + ": " + html.slice(0, 160))))`,
  );
// What stands on a control is in its name, so that she can say it.
const WHOLE = '{ iframes: false, rules: { "label-content-name-mismatch": { enabled: true } } }';
const CONTRAST = '{ iframes: false, runOnly: ["color-contrast"] }';

/** What is wrong with a screen as it lies: sideways scroll, controls that are too small, hands out of view. */
const layout = (page: Page, least: number): Promise<readonly string[]> =>
  page.evaluate((small) => {
    const told: string[] = [];
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth > clientWidth) told.push(`page ${String(scrollWidth)} of ${String(clientWidth)} px`);
    for (const part of document.querySelectorAll("main, .stage, .hands"))
      if (part.scrollWidth > part.clientWidth + 1) told.push(`${part.className} scrolls sideways`);
    for (const control of document.querySelectorAll<HTMLElement>("button, .button, .bar a, input, select, summary")) {
      const { width, height } = control.getBoundingClientRect();
      const isShown = control.checkVisibility() && !control.classList.contains("unseen") && width > 0;
      const label = control.closest("label")?.getBoundingClientRect();
      const isSmall = Math.max(width, label?.width ?? 0) < small || Math.max(height, label?.height ?? 0) < small;
      if (isShown && isSmall)
        told.push(
          `${control.textContent.trim() || control.outerHTML.slice(0, 80)}: ${String(Math.round(width))} × ${String(Math.round(height))}`,
        );
    }
    // Colour never speaks alone: beside every swatch stands the letter of its yarn.
    for (const swatch of document.querySelectorAll(".swatch"))
      if (!/^[A-Z\d]/u.test(swatch.parentElement?.textContent.trim() ?? "")) told.push("a colour without its letter");
    if (document.getAnimations().length > 0) told.push("something moves");
    for (const hand of document.querySelectorAll(".hands > *")) {
      const { left, top, right, bottom } = hand.getBoundingClientRect();
      if (left < 0 || top < 0 || right > innerWidth + 0.5 || bottom > innerHeight + 0.5)
        told.push(`${hand.textContent.trim()} out of view`);
    }
    return told;
  }, least);

describeWith("Chromium", (executablePath) => {
  it("has no fault of access on any screen, light, dark and in forced colours; it lies in every size, and with text twice as large", async () => {
    const told: string[] = [];
    await onDevice(executablePath, async (device, address) => {
      await keep(device, address, { jobs: [job], work: [work] });
      device.on("page", (page) => void page.emulateMedia({ reducedMotion: "reduce" }));
      const page = await opened(device, address, "shelf");
      await page.evaluate(axe);
      const fonts = await device.newCDPSession(page);
      const setText = (size: number): Promise<unknown> =>
        fonts.send("Page.setFontSizes", { fontSizes: { standard: size, fixed: size } });
      for (const hash of SCREENS) {
        await page.evaluate((to) => {
          location.hash = `#${to}`;
        }, hash);
        const name = hash.slice(0, 12);
        await page
          .locator(`.at-${hash.startsWith("j1.") ? "link" : (hash.split("/")[0] ?? "")} :is(button, .button)`)
          .first()
          .waitFor();
        await page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true; })");
        if (hash.startsWith("sheets")) await page.locator("iframe").waitFor();
        await page.evaluate("new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))");
        await page.emulateMedia({ colorScheme: "light", forcedColors: "none" });
        const found = [
          ...(await faults(page, WHOLE)),
          ...(await page.emulateMedia({ colorScheme: "dark" }), await faults(page, CONTRAST)),
          ...(await page.emulateMedia({ forcedColors: "active" }), await faults(page, CONTRAST)),
        ];
        await page.emulateMedia({ colorScheme: "light", forcedColors: "none" });
        const isAtLoom = AT_LOOM.includes(hash.split("/")[0] ?? "");
        for (const [width, height] of SIZES) {
          await page.setViewportSize({ width, height });
          const lies = await layout(page, isAtLoom ? 56 : 24);
          found.push(...lies.map((one) => `${String(width)}×${String(height)} ${one}`));
        }
        await setText(32);
        for (const [width, height] of [...SIZES].reverse()) {
          await page.setViewportSize({ width, height });
          const lies = await layout(page, 24);
          found.push(...lies.map((one) => `${String(width)}×${String(height)}, text twice as large: ${one}`));
        }
        await setText(16);
        told.push(...found.map((one) => `${name} ${one}`));
      }
    });
    expect(told).toEqual([]);
  }, 240_000);
});
