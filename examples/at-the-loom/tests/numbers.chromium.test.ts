import { planHtml, planWarp, readJob } from "@thrum/plan";
import type { PlanData } from "@thrum/plan";
import { expect, it } from "vitest";
import { describeWith } from "#ci/program.js";
import { EXAMPLES } from "../src/draft/examples.js";
import { onDevice, opened } from "./app.js";
import { jobRecord, jobText, keep, workRecord } from "./kept.js";
import { loomOf } from "./loom-of.js";

function planOf(file: string): PlanData {
  const reading = readJob(jobText(file));
  if (!reading.ok) throw new Error(`${file} does not read`);
  return planWarp(reading.job);
}
const EIGHTHS = { "⅛": "1/8", "¼": "1/4", "⅜": "3/8", "½": "1/2", "⅝": "5/8", "¾": "3/4", "⅞": "7/8" };
const plain = (text: string): string =>
  Object.entries(EIGHTHS)
    .reduce((all, [sign, part]) => all.replaceAll(sign, ` ${part}`), text)
    .replaceAll(/[\s\u00a0\u202f]+/gu, " ")
    .trim();
/** What the sheets print, without their marks. */
const printed = (plan: PlanData): string =>
  plain(
    planHtml(plan)
      .replaceAll(/<style>[\s\S]*?<\/style>/gu, "")
      .replaceAll(/<[^>]+>/gu, " "),
  );

describeWith("Chromium", (executablePath) => {
  it("shows on the plan of each of nine jobs only numbers that its sheets print", async () => {
    await onDevice(executablePath, async (device, address) => {
      const told: string[] = [];
      for (const [name, file] of Object.entries(EXAMPLES)) {
        const page = await opened(device, address, name);
        await page.locator("aside .number").first().waitFor();
        const numbers = await page
          .locator("aside .number")
          .evaluateAll((all) => all.map((one) => one.firstChild?.textContent?.trim() ?? ""));
        const sheets = printed(planOf(`${file}.yaml`));
        expect(numbers.length).toBeGreaterThan(2);
        told.push(...numbers.filter((number) => !sheets.includes(plain(number))).map((number) => `${name}: ${number}`));
        await page.close();
      }
      expect(told).toEqual([]);
    });
  }, 240_000);

  it("shows at the loom what the plan lists, at the first group, in the middle and at the last, for each of nine jobs", async () => {
    await onDevice(executablePath, async (device, address) => {
      for (const [name, file] of Object.entries(EXAMPLES)) {
        const { tying, winding } = planOf(`${file}.yaml`).figures;
        const rows = tying.joining.value ?? [];
        const places = [...new Set([0, Math.floor(rows.length / 2), rows.length - 1])].filter((at) => at >= 0);
        const loom = loomOf(`${file}.yaml`);
        for (const at of rows.length === 0 ? [] : places) {
          const id = `${name}-${String(at)}`;
          const row = rows[at];
          if (row === undefined) throw new Error("no such turn");
          // Those before it in their turn are tied.
          const before = rows
            .slice(0, at)
            .map(({ group }) => ({ from: group, to: group }))
            .sort((one, other) => one.from - other.from);
          const work = workRecord(id, loom, { progress: at === 0 ? {} : { tied: before } });
          await keep(device, address, { jobs: [jobRecord(id, jobText(`${file}.yaml`))], work: [work] });
          const page = await opened(device, address, `tie/${id}`);
          await page.locator(".big strong").waitFor();
          expect([id, await page.locator(".big strong").innerText(), await page.locator("h1").innerText()]).toEqual([
            id,
            String(row.knots),
            row.turn === row.group
              ? `Tie, group ${String(row.group)} of ${String(rows.length)}`
              : `Tie, group ${String(row.group)}, turn ${String(row.turn)} of ${String(rows.length)}`,
          ]);
          const facts = await page.locator(".facts dd").allInnerTexts();
          const span =
            row.firstEnd === row.lastEnd ? String(row.firstEnd) : `${String(row.firstEnd)}–${String(row.lastEnd)}`;
          expect(facts[0]).toBe(span);
          await page.close();
        }
        const chain = winding.wound.value?.[0];
        const part = chain?.parts[0];
        if (chain === undefined || part === undefined) continue;
        await keep(device, address, { jobs: [jobRecord(name, jobText(`${file}.yaml`))] });
        const page = await opened(device, address, `wind/${name}`);
        await page
          .getByText(`0 of ${String(chain.ends)} ends`)
          .first()
          .waitFor();
        await page.close();
      }
    });
  }, 240_000);
});
