import { planHtml, planWarp, readJob } from "@thrum/plan";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";
import { onDevice, opened } from "./app.js";
import { jobRecord, jobText, keep } from "./kept.js";

const text = jobText("2-hall-napkins.yaml");
const scarves = jobText("4-scarves.yaml");
const jobs = [
  jobRecord("a", text),
  jobRecord("right", scarves),
  jobRecord("left", scarves.replace("endOneOn: right", "endOneOn: left")),
];

describeWith("Chromium", (executablePath) => {
  it("prints the sheets of the plan, and of the plan's page picture, numbers and findings; sits her on the side the job says; can be installed", async () => {
    await onDevice(executablePath, async (device, address) => {
      await keep(device, address, { jobs });
      const page = await opened(device, address, "sheets/a");
      const reading = readJob(text);
      if (!reading.ok) throw new Error("the napkins do not read");
      expect(await page.locator("iframe").getAttribute("srcdoc")).toBe(planHtml(planWarp(reading.value)));

      await page.goto(`${address}#plan/a`);
      await page.getByText("18⅜ in").first().waitFor();
      await page.emulateMedia({ media: "print" });
      for (const kept of ["aside .strip", "aside .number", ".told"])
        expect([kept, await page.locator(kept).first().isVisible()]).toEqual([kept, true]);
      const buttons = await page
        .locator(":is(button, .button, input, select):visible")
        .evaluateAll((all) => all.filter((one) => !one.matches(".number")).map((one) => one.outerHTML.slice(0, 120)));
      expect(buttons).toEqual([]);
      // Each colour is told by a letter of its own, where no colour is to be seen.
      const letters = await page.locator("tbody .yarn b").allInnerTexts();
      expect([...new Set(letters)]).toEqual(["N", "M", "I"]);
      await page.emulateMedia({ media: null });

      // Behind the heddles she faces the front: what lies on its right lies at her left, and the other way round.
      for (const [id, side] of [
        ["right", "left"],
        ["left", "right"],
      ] as const) {
        await page.goto(`${address}#tie/${id}`);
        await page.locator(".way", { hasText: `from your ${side}` }).waitFor();
        expect([id, await page.locator(".way .strip.mirrored").count()]).toEqual([id, side === "right" ? 1 : 0]);
        // One colour at a time: all of the ash, then the moss.
        await page.locator("h1", { hasText: "Tie, group 1" }).waitFor();
      }

      const answer = await page.request.get(`${address}manifest.webmanifest`);
      const manifest = (await answer.json()) as { readonly icons: readonly { readonly src: string; sizes: string }[] };
      expect(manifest).toMatchObject({ name: "Plan a warp", display: "standalone", id: "./", start_url: "./" });
      expect(manifest.icons).toHaveLength(3);
      for (const { src, sizes } of manifest.icons) {
        const icon = await (await page.request.get(`${address}${src}`)).body();
        // The width and the height of a PNG stand in its first chunk.
        expect([src, `${String(icon.readUInt32BE(16))}x${String(icon.readUInt32BE(20))}`]).toEqual([src, sizes]);
      }
    });
  }, 120_000);
});
