import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { examplePlans } from "#ci/example-plans.js";
import { describeWith } from "#ci/program.js";
import type { PlanData } from "../data/plan-data.js";
import type { Section } from "./block.js";
import { planHtml } from "./html.js";
import { planPages } from "./plan-pages.js";

/** A line as it stands on paper: what it says, and the points of its letters. */
interface PrintedLine {
  readonly text: string;
  readonly points: readonly number[];
}

/** The lines of every page but its number, from the top: what overlaps in height is one line. */
function printedPages(xml: string): readonly (readonly PrintedLine[])[] {
  const points = new Map(
    [...xml.matchAll(/<fontspec id="(\d+)" size="(\d+)"/gu)].map(([, id, size]) => [id, Number(size)]),
  );
  return xml
    .split("<page ")
    .slice(1)
    .map((page) => {
      const texts = [
        ...page.matchAll(/<text top="(-?\d+)" left="(-?\d+)" width="\d+" height="(\d+)" font="(\d+)">(.*?)<\/text>/gu),
      ]
        .map(([, top, left, height, font, text = ""]) => ({
          middle: Number(top) + Number(height) / 2,
          left: Number(left),
          size: points.get(font) ?? 0,
          text: text.replace(/<[^>]*>/gu, "").trim(),
        }))
        .filter(({ text }) => text !== "" && !/^page \d+ of \d+$/u.test(text))
        .sort((one, other) => one.middle - other.middle);
      const lines: (typeof texts)[] = [];
      for (const one of texts) {
        const last = lines.at(-1);
        if (last?.[0] !== undefined && one.middle - last[0].middle < 6) last.push(one);
        else lines.push([one]);
      }
      return lines.map((line) => {
        const inOrder = [...line].sort((one, other) => one.left - other.left);
        return { text: inOrder.map(({ text }) => text).join(" "), points: inOrder.map(({ size }) => size) };
      });
    });
}

const words = (text: string): readonly string[] => text.split(/\s+/u).filter((word) => word !== "");

/** Whether a line is a heading, a caption, or the head of a table, or a part of one that is broken. */
function isHead(text: string, sections: readonly Section[]): boolean {
  const titles = sections.flatMap(({ heading, blocks }) => [
    heading,
    ...blocks.flatMap((block) =>
      block.is === "heading" ? [block.heading] : block.is === "table" ? [block.caption] : [],
    ),
  ]);
  const heads = sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.is === "table" ? [new Set(["done", ...block.heads].flatMap(words))] : [])),
  );
  return titles.includes(text) || heads.some((head) => words(text).every((word) => head.has(word)));
}

/** The sizes of the first rows of a table. */
function sizesUnder(caption: string, lines: readonly PrintedLine[], sections: readonly Section[]): readonly number[] {
  const under = lines.slice(lines.findIndex(({ text }) => text === caption) + 1);
  const rows = under.slice(under.findIndex(({ text }) => !isHead(text, sections)));
  return [...new Set(rows.slice(0, 2).flatMap(({ points }) => points))].sort((one, other) => one - other);
}

describeWith("Chromium", (executablePath) => {
  describeWith("Poppler", (pdftohtml) => {
    const folder = mkdtempSync(join(tmpdir(), "thrum-paper-"));
    let browser: Browser;
    let page: Page;
    beforeAll(async () => {
      browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
      page = await browser.newPage();
    }, 60_000);
    afterAll(async () => {
      await browser.close();
      rmSync(folder, { recursive: true });
    });

    async function printed(plan: PlanData, format: "A4" | "Letter"): Promise<readonly (readonly PrintedLine[])[]> {
      const path = join(folder, "plan.pdf");
      await page.setContent(planHtml(plan, { without: "workings" }));
      await page.pdf({ path, format, preferCSSPageSize: true });
      const { stdout } = spawnSync(pdftohtml, ["-xml", "-stdout", "-i", "-zoom", "1", path], {
        encoding: "utf8",
        maxBuffer: 2 ** 26,
      });
      return printedPages(stdout);
    }

    describe.each(["A4", "Letter"] as const)("printed on %s", (format) => {
      it.each(examplePlans)(
        "%s: four lines or more on every page but the last, no head alone at the foot",
        async (_, plan) => {
          const [pages, sections] = [await printed(plan, format), planPages(plan)];
          expect(pages.length).toBeGreaterThan(1);
          for (const lines of pages.slice(0, -1)) {
            expect(lines.length).toBeGreaterThanOrEqual(4);
            const foot = lines.at(-1)?.text ?? "";
            expect(isHead(foot, sections) ? foot : "no head").toBe("no head");
          }
          // Read from a metre, and from a reel: numbers of 18 points, words of 14.
          const captions = sections
            .flatMap(({ blocks }) => blocks)
            .flatMap((block) => (block.is === "table" && block.read === "bench" ? [block.caption] : []));
          for (const caption of captions)
            expect(sizesUnder(caption, pages.flat(), sections), caption).toEqual([14, 18]);
        },
      );
    });
  });
});
