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
  return planWarp(reading.value);
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
      const page = await opened(device, address, "settings");
      for (const [name, file] of Object.entries(EXAMPLES)) {
        await page.evaluate((hash) => {
          location.hash = hash;
        }, name);
        const sheets = printed(planOf(`${file}.yaml`));
        // As long as the numbers of the job before stand there, some of them are not printed.
        const others = async (): Promise<readonly string[]> => {
          const numbers = await page
            .locator("aside .number")
            .evaluateAll((all) => all.map((one) => one.firstChild?.textContent?.trim() ?? ""));
          return numbers.length > 2
            ? numbers.filter((number) => !sheets.includes(plain(number)))
            : ["no more than two numbers"];
        };
        await expect.poll(others, { timeout: 20_000, message: name }).toEqual([]);
      }
    });
  }, 240_000);

  it("shows at the loom what the plan lists, at the first group, in the middle and at the last, for each of nine jobs", async () => {
    const turns = Object.entries(EXAMPLES).flatMap(([name, file]) => {
      const rows = planOf(`${file}.yaml`).figures.tying.joining.value ?? [];
      const places = rows.length === 0 ? [] : new Set([0, Math.floor(rows.length / 2), rows.length - 1]);
      return [...places].flatMap((at) => {
        const row = rows[at];
        return row === undefined ? [] : [{ id: `${name}-${String(at)}`, file: `${file}.yaml`, at, row, rows }];
      });
    });
    expect(turns.length).toBeGreaterThan(18);
    const jobs = turns.map(({ id, file }) => jobRecord(id, jobText(file)));
    const work = turns.map(({ id, file, at, rows }) => {
      // Those before it in their turn are tied.
      const tied = rows
        .slice(0, at)
        .map(({ group }) => ({ from: group, to: group }))
        .sort((one, other) => one.from - other.from);
      return workRecord(id, loomOf(file), { progress: at === 0 ? {} : { tied } });
    });
    const chains = Object.entries(EXAMPLES).flatMap(([name, file]) => {
      const chain = planOf(`${file}.yaml`).figures.winding.wound.value?.[0];
      return chain?.parts[0] === undefined ? [] : [{ id: `wind-${name}`, file: `${file}.yaml`, ends: chain.ends }];
    });
    const wound = chains.map(({ id, file }) => jobRecord(id, jobText(file)));
    await onDevice(executablePath, async (device, address) => {
      await keep(device, address, { jobs: [...jobs, ...wound], work });
      const page = await opened(device, address, "settings");
      const goTo = (place: string): Promise<void> =>
        page.evaluate((hash) => {
          location.hash = hash;
        }, place);
      for (const { id, row, rows } of turns) {
        await goTo(`tie/${id}`);
        const [group, turn] = [String(row.group), String(row.turn)];
        const title =
          row.turn === row.group
            ? `Tie, group ${group} of ${String(rows.length)}`
            : `Tie, group ${group}, turn ${turn} of ${String(rows.length)}`;
        const span =
          row.firstEnd === row.lastEnd ? String(row.firstEnd) : `${String(row.firstEnd)}–${String(row.lastEnd)}`;
        const shown = async (): Promise<readonly string[]> => [
          await page.locator("h1").innerText(),
          await page.locator(".big strong").innerText(),
          await page.locator(".facts dd").first().innerText(),
        ];
        await expect.poll(shown, { timeout: 20_000, message: id }).toEqual([title, String(row.knots), span]);
      }
      for (const { id, ends } of chains) {
        await goTo(`wind/${id}`);
        await page
          .getByText(`0 of ${String(ends)} ends`)
          .first()
          .waitFor();
      }
    });
  }, 240_000);
});
