import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { chromium } from "playwright-core";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { calculations } from "../support/inputs.js";
import { root } from "../support/built.mjs";
import { served } from "../support/served.mjs";
import { isOfAnother, linkFaults } from "./links.js";
import { paths } from "./paths.js";
import { describeWith } from "../support/program.js";

const BASE = "/a/b/";
const dist = join(root, "reports/site");
const axe = readFileSync(join(root, "node_modules/axe-core/axe.min.js"), "utf8");
const zipped = (path: string): number => gzipSync(readFileSync(path), { level: 9 }).length;
const kebab = (name: string): string => name.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);

/** Pages of every sort. */
const sorts = [
  ...["index.html", "start.html", "weavers-job.html", "stripes.html", "formulas/index.html"],
  ...["formulas/warp-length.html", "formulas/average-count.html", "guides/percent.html", "errors/ambiguous.html"],
  ...[
    "errata.html",
    "notebooks/striped-warp.html",
    "guides/counts.html",
    "guides/recipes.html",
    "about/changes.html",
    "trust.html",
  ],
  ...["guides/index.html", "glossary.html", "guides/command.html", "api/index.html", "api/maths/check.html"],
  ...["guides/spreadsheet.html"],
];

/** What readers look for, with the pages that answer it: as it was found, and as it was written before the search was made. */
const queries: unknown = JSON.parse(readFileSync(join(root, ".ci/site/queries.json"), "utf8"));
const lookedFor = queries as Readonly<Record<"found" | "fresh", readonly (readonly [asked: string, wanted: string])[]>>;

/** Tables, code and formulas that are wider than their box. */
const cut = `[...document.querySelectorAll(".table, pre, .formula")]
  .filter((one) => one.scrollWidth > one.clientWidth + 1)
  .map((one) => one.textContent.trim().slice(0, 60))`;

describeWith("Chromium", (executablePath) => {
  let browser: Browser;
  let site: Awaited<ReturnType<typeof served>>;
  const asked: string[] = [];

  beforeAll(async () => {
    execFileSync(process.execPath, [join(root, "node_modules/vitepress/bin/vitepress.js"), "build", "docs"], {
      cwd: root,
      env: { ...process.env, DOCS_BASE: BASE, DOCS_OUT: dist },
      stdio: "pipe",
    });
    site = await served(dist, BASE);
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  }, 900_000);
  afterAll(async () => {
    await browser.close();
    site.stop();
  });

  async function on<T>(path: string, options: BrowserContextOptions, look: (page: Page) => Promise<T>): Promise<T> {
    const context = await browser.newContext(options);
    try {
      const page = await context.newPage();
      page.on("request", (request) => asked.push(request.url()));
      await page.goto(path.startsWith("file:") ? path : site.address + path, { waitUntil: "networkidle" });
      return await look(page);
    } finally {
      await context.close();
    }
  }

  it("has a page for every formula and no other", () => {
    const pages = readdirSync(join(dist, "formulas")).filter((file) => file.endsWith(".html"));
    expect(new Set(pages)).toEqual(new Set(["index.html", ...calculations.map(([name]) => `${kebab(name)}.html`)]));
  });

  it("lists every page in llms.txt, and each has its Markdown", () => {
    const links = [...readFileSync(join(dist, "llms.txt"), "utf8").matchAll(/\]\((.+?)\)/gu)].map(
      ([, link = ""]) => link,
    );
    expect(links.length).toBeGreaterThan(calculations.length);
    expect(links.filter((link) => !existsSync(join(dist, link.slice(BASE.length))))).toEqual([]);
    const html = readdirSync(dist, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".html"));
    const listed = new Set(links.map((link) => link.slice(BASE.length).replace(/\.md$/u, ".html")));
    expect(html.filter((file) => file !== "404.html" && !isOfAnother(file) && !listed.has(file))).toEqual([]);
  });

  it("has no link to a page or a place on a page that is not there, and a link to every page from another", () => {
    const html = readdirSync(dist, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".html"));
    const texts = new Map(html.map((file) => [file, readFileSync(join(dist, file), "utf8")]));
    expect(linkFaults(texts, BASE)).toEqual({ dead: [], unreached: [] });
  });

  it.each(sorts)(
    "%s can be read by everybody, light and dark, and never scrolls sideways, even at 320 px",
    async (path) => {
      await on(path, {}, async (page) => {
        await page.evaluate(axe);
        // In the dark only the colours are others.
        for (const [colorScheme, width, rules] of [
          ["light", 1280, "{}"],
          ["light", 390, "{}"],
          ["dark", 390, "{ runOnly: ['color-contrast'] }"],
        ] as const) {
          await page.emulateMedia({ colorScheme });
          await page.setViewportSize({ width, height: 900 });
          const found = await page.evaluate(
            `axe.run(${rules}).then(({ violations }) => violations.map(({ id, nodes }) => id + ": " + nodes[0].html.slice(0, 120)))`,
          );
          expect(found, `${colorScheme}, ${String(width)} px`).toEqual([]);
          expect(await page.evaluate(cut), `cut at ${String(width)} px`).toEqual([]);
        }
        await page.setViewportSize({ width: 320, height: 700 });
        const over = await page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        expect(over).toBeLessThanOrEqual(0);
      });
    },
  );

  it("cuts no formula, table or code of a formula page on a phone", { timeout: 120_000 }, async () => {
    const options = { viewport: { width: 390, height: 844 }, javaScriptEnabled: false };
    const parts = await on("index.html", options, async (page) => {
      const found: Record<string, unknown> = {};
      for (const [name] of calculations) {
        await page.goto(`${site.address}formulas/${kebab(name)}.html`, { waitUntil: "domcontentloaded" });
        found[name] = await page.evaluate(cut);
      }
      return found;
    });
    expect(Object.entries(parts).filter(([, cuts]) => (cuts as string[]).length > 0)).toEqual([]);
  });

  it("works a formula as one types, keeps it in the address, and tells a slip", async () => {
    await on("formulas/warp-length.html", {}, async (page) => {
      const wanted = { pieces: "8", "finished length": "21", "hem each end": "1", "loom to finished": "10" };
      for (const [label, value] of Object.entries({ ...wanted, "take-up": "8", "loom waste": "30" })) {
        await page.getByLabel(label, { exact: true }).fill(value);
      }
      for (const field of ["finished length", "hem each end", "loom waste"]) {
        await page.getByLabel(`unit of ${field}`, { exact: true }).selectOption("inches");
      }
      // By hand: 8 × 23 ÷ 0.9 ÷ 0.92 + 30 = 252.222 in.
      await expect.poll(() => page.locator("output").innerText()).toContain("252.222 in");
      expect(await page.locator(".working").innerText()).toContain("8 × 23 in ÷ (1 − 10 %)");
      await page.getByLabel("Check my answer", { exact: true }).first().fill("7.01");
      await page.getByLabel("unit of my answer").selectOption("yards");
      await expect.poll(() => page.locator(".says").innerText()).toContain("is right");
      await page.getByLabel("Check my answer", { exact: true }).first().fill("6.94");
      await expect.poll(() => page.locator(".says").innerText()).toContain("instead of dividing");
      await page.reload({ waitUntil: "networkidle" });
      await expect.poll(() => page.locator("output").innerText()).toContain("252.222 in");
      await page.getByLabel("loom to finished", { exact: true }).fill("100");
      await expect.poll(() => page.locator("#warpLength-loomToFinished-is").innerText()).toContain("less than 100 %");
      expect(await page.locator("output").innerText()).toContain("252.222 in");
      expect(await page.getByLabel("loom to finished", { exact: true }).getAttribute("aria-invalid")).toBe("true");
    });
  });

  it("turns a formula round: the answer goes in, the input asked for comes out, and the address keeps it", async () => {
    await on("formulas/warp-length.html", {}, async (page) => {
      const said = (): Promise<string> => page.locator("output").innerText();
      await expect.poll(() => page.getByLabel("Solve for").locator("option").count()).toBe(7);
      await page.getByLabel("Solve for").selectOption("pieces");
      await page.getByLabel("warp", { exact: true }).fill("8 m");
      // By hand: (800 − 75) × 0.9 ÷ 74 = 8.8, so 8 whole towels.
      await expect.poll(said).toBe("pieces = 8 pieces");
      await page.getByLabel("rounded").selectOption("roundUp");
      await expect.poll(said).toBe("pieces = 9 pieces");
      await page.getByLabel("Solve for").selectOption("loomWaste");
      // 800 − 3 × 74 ÷ 0.9 = 553.333 cm.
      await expect.poll(said).toContain("553.333 cm");
      await page.getByRole("button", { name: "the code" }).click();
      const code = page.locator(".uses");
      await expect
        .poll(() => code.innerText())
        .toContain('solveFor(warpLength, "loomWaste", "warp", { in: centimetres })');
      await page.reload({ waitUntil: "networkidle" });
      await expect.poll(said).toContain("553.333 cm");
    });
  });

  it("draws what is measured where, in the words of the fields", async () => {
    await on("formulas/warp-length.html", {}, async (page) => {
      const words = await page.locator(".drawn text").allTextContents();
      const labels = await page.locator(".live label").allInnerTexts();
      expect(labels.filter((label) => words.some((word) => word.includes(label)))).toEqual(labels);
    });
  });

  it.each([
    [1280, 720],
    [390, 844],
  ])(
    "tells on the first screen of %i by %i what it is, a number, its source and three ways in",
    async (width, height) => {
      await on("index.html", { viewport: { width, height } }, async (page) => {
        for (const text of ["library", "7.006 yd", "Ratios, Rationale", "Plan my warp", "Find a sum", "npm install"]) {
          const box = await page.locator("main").getByText(text).first().boundingBox();
          expect((box?.y ?? height) + (box?.height ?? 0), text).toBeLessThanOrEqual(height);
        }
        expect(await page.locator(".tie-on path").count()).toBeGreaterThan(5);
        const sheet = page.locator(".sheets img").first();
        await sheet.scrollIntoViewIfNeeded();
        await expect
          .poll(() => page.evaluate("document.querySelector('.sheets img').naturalWidth"))
          .toBeGreaterThan(100);
      });
    },
  );

  it("opens with the sum of a warp, to be worked with one's own numbers", async () => {
    await on("index.html", {}, async (page) => {
      expect(await page.locator("output").innerText()).toContain("7.00617 yd");
      await page.getByLabel("pieces", { exact: true }).fill("9");
      // By hand: 9 × 23 ÷ 0.9 ÷ 0.92 + 30 = 280 in, ÷ 36 = 7.77778 yd.
      await expect.poll(() => page.locator("output").innerText()).toContain("7.77778 yd");
      expect(await page.locator(".caption").innerText()).toBe("Your numbers");
    });
  });

  it.each([
    ["10 %", "loom to finished", null],
    ["27,5", "finished length", null],
    ["2 1/2 yd", "loom waste", null],
    ["1,234", "loom waste", "without a comma"],
    ["x", "loom waste", "a length, such as 27 1/2"],
    ["three", "pieces", "a whole number, such as 8"],
    ["", "take-up", "a percentage"],
  ])("reads what is typed, or says at the field what to write: %j as %s", async (typed, label, says) => {
    await on("formulas/warp-length.html", {}, async (page) => {
      const field = page.getByLabel(label, { exact: true });
      await field.fill(typed);
      const told = page.locator(`[id="${(await field.getAttribute("aria-describedby")) ?? ""}"]`);
      if (says === null) {
        await page.locator(".copies").waitFor();
        expect(await field.getAttribute("aria-invalid")).toBe(null);
      } else await expect.poll(() => told.innerText()).toContain(says);
      expect(await page.locator("main").innerText()).not.toMatch(/NaN|undefined|QuantityError/u);
    });
  });

  it("asks without telling, judges when told to, and copies what follows the fields", async () => {
    const asked =
      "pieces=8&finishedLength=21~inches&hemEachEnd=1~inches&loomToFinished=10&takeUp=8&loomWaste=30~inches&answer=yards";
    await on(`formulas/warp-length.html?${asked}&ask=1`, {}, async (page) => {
      const result = page.locator(".result");
      await expect.poll(() => result.innerText()).toContain("warp length = ?");
      expect(await result.innerText()).not.toContain("7.006");
      await page.getByLabel("Check my answer", { exact: true }).first().fill("7.01");
      await page.getByRole("button", { name: "Judge it" }).click();
      await expect.poll(() => page.locator(".says").innerText()).toContain("is right");
      expect(await result.innerText()).toContain("7.00617 yd");
    });
    await on(`formulas/warp-length.html?${asked}`, {}, async (page) => {
      await page.getByRole("button", { name: "the cell formula" }).click();
      const uses = page.locator(".uses");
      await expect.poll(() => uses.innerText()).toContain("finishedLength: inches(21)");
      expect(await uses.innerText()).toContain("finished length in in");
      expect(await uses.innerText()).toContain("answer.in(yards); // 7.00617");
    });
    await on("formulas/warp-length.html?finishedLength=21~furlongs", {}, async (page) => {
      await expect.poll(() => page.locator("form.live").innerText()).toContain("“furlongs”, which is no unit here");
    });
  });

  it("finds formulas by what they give, what goes in, or a unit", async () => {
    await on("formulas/index.html", {}, async (page) => {
      const shown = (): Promise<string[]> => page.locator("main li:visible > a").allInnerTexts();
      expect(await shown()).toHaveLength(calculations.length + 10);
      await page.getByRole("searchbox").fill("loom waste");
      await expect.poll(shown).toContain("Warp length");
      expect(await shown()).not.toContain("Folded count");
      await page.getByRole("searchbox").fill("no such thing");
      await expect.poll(shown).toEqual([]);
      expect(await page.locator("main h2:visible").count()).toBe(0);
    });
  });

  it("converts a count and shows the division", async () => {
    await on("guides/counts.html", {}, async (page) => {
      const said = (): Promise<string> => page.locator("output").innerText();
      expect(await said()).toBe("590.541 ÷ 20 Ne ≈ 29.5271 tex");
      const saidOf = (count: string) => async (): Promise<string> => {
        await page.getByLabel("a count of").fill(count);
        return said();
      };
      // Filled again until the script of the page has taken over.
      await expect.poll(saidOf("-3"), { timeout: 10_000 }).toContain("above zero");
      await page.getByLabel("a count of").fill("8/2");
      await expect.poll(said).toContain("2 threads of 8 folded together");
      await page.getByRole("button", { name: "the folded yarn" }).click();
      // By hand: 590.541 ÷ 4 = 147.635.
      await expect.poll(said).toContain("147.635 tex");
      await page.reload({ waitUntil: "networkidle" });
      await expect.poll(said).toContain("147.635 tex");
    });
  });

  it("lets a keyboard alone reach and change every input", async () => {
    await on("formulas/warp-length.html", {}, async (page) => {
      const reached = new Set<string>();
      for (let presses = 0; presses < 60; presses += 1) {
        await page.keyboard.press("Tab");
        reached.add(
          String(await page.evaluate("document.activeElement.id || document.activeElement.getAttribute('aria-label')")),
        );
      }
      const inputs = await page.evaluate<string[]>(
        "[...document.querySelectorAll('main input, main select')].map((one) => one.id || one.getAttribute('aria-label'))",
      );
      expect(inputs.filter((one) => !reached.has(one))).toEqual([]);
    });
  });

  it("leads from home by keyboard in four steps to the length for eight napkins and why adding gives less", async () => {
    await on("index.html", {}, async (page) => {
      expect(await page.locator("main").innerText()).toContain("7.006 yd");
      const focused = (): Promise<string> => page.evaluate<string>("document.activeElement.textContent");
      for (let presses = 0; presses < 60 && !(await focused()).startsWith("Why adding"); presses += 1)
        await page.keyboard.press("Tab");
      expect(await focused()).toBe("Why adding the percentage gives less");
      await page.keyboard.press("Enter");
      await page.waitForURL("**/guides/percent.html");
      await expect.poll(() => page.locator("main").innerText()).toContain("184 ÷ 0.9 = 204.444");
    });
  });

  it.each(Object.entries(paths))("%s, from home", { timeout: 60_000 }, async (_reader, walk) => {
    await on("index.html", { viewport: { width: 1280, height: 720 } }, walk);
  });

  it("winds and draws a written order", async () => {
    const bomb = encodeURIComponent(`[${"[1 a, 1 b] 1000 times, ".repeat(40)}] 1 times`);
    await on(`stripes.html?order=${bomb}`, {}, async (page) => {
      await page.getByText("This page draws at most 5000 ends; these are 80000.").waitFor({ timeout: 10_000 });
    });
    await on("stripes.html", {}, async (page) => {
      expect(await page.locator("#totals").innerText()).toContain("368 ends");
      const order = page.getByLabel("The order, end 1 first");
      const said = page.locator("#order-is");
      await order.fill("24 natural 40 indigo");
      await expect.poll(() => said.innerText()).toContain("is a comma missing before 40?");
      await order.fill("10 madder\n[4 white, 3 blue] 2 times");
      await expect.poll(() => page.locator("#totals").innerText()).toContain("24 ends");
      expect(await page.locator(".picture rect").count()).toBe(5);
      expect(await page.getByRole("link", { name: "Plan this warp" }).getAttribute("href")).toContain("#j1.");
      await page.reload({ waitUntil: "networkidle" });
      await expect.poll(() => page.locator("#totals").innerText()).toContain("24 ends");
      await order.fill('5 <img src=x onerror="document.title=1">');
      expect(await page.locator("main img").count()).toBe(0);
    });
  });

  it("finds what readers look for among the first three", { timeout: 120_000 }, async () => {
    await on("index.html", {}, async (page) => {
      const box = page.getByLabel("Search the pages");
      const opened = async (): Promise<boolean> => {
        await page.keyboard.press("/");
        return box.isVisible();
      };
      // Pressed again until the script of the page has taken over.
      await expect.poll(opened, { timeout: 20_000 }).toBe(true);
      await box.fill("");
      const first = "[...document.querySelectorAll('dialog li a')].slice(0, 3).map((one) => one.getAttribute('href'))";
      await box.fill("warp length");
      await page.locator("dialog li").first().waitFor({ timeout: 20_000 });
      const missed: Record<string, string[]> = { found: [], fresh: [] };
      for (const part of ["found", "fresh"] as const) {
        for (const [asked, wanted] of lookedFor[part]) {
          await box.fill(asked);
          const links = await page.evaluate<string[]>(first);
          const isRight = new RegExp(`^${BASE}(?:${wanted})`, "u");
          if (!links.some((link) => isRight.test(link))) missed[part]?.push(asked);
        }
      }
      expect(missed["found"]?.length, missed["found"]?.join(", ")).toBeLessThanOrEqual(4);
      expect(missed["fresh"]?.length, missed["fresh"]?.join(", ")).toBeLessThanOrEqual(3);
      await box.fill("take-up");
      await box.press("ArrowDown");
      const second = await page.locator("dialog li a").nth(1).getAttribute("href");
      await box.press("Enter");
      await page.waitForURL(`**${second ?? ""}`);
    });
  });

  it("shows formula, working and cases without JavaScript, and from the disk", async () => {
    const file = pathToFileURL(join(dist, "formulas/warp-length.html")).href;
    for (const [path, options] of [
      ["formulas/warp-length.html", { javaScriptEnabled: false }],
      [file, {}],
    ] as const) {
      await on(path, options, async (page) => {
        const text = await page.locator("main").innerText();
        expect(await page.locator("math").count()).toBe(1);
        expect(text).toMatch(/≈\s321\.667 cm/u);
        // 28 ÷ 0.88 ÷ 0.91, by hand.
        expect(text).toMatch(/≈\s34\.965/u);
        const link = await page.locator("main a", { hasText: "Warp length by adding" }).first().getAttribute("href");
        expect(new URL(link ?? "", page.url()).href).toContain("warp-length-by-adding.html");
        const colour = await page.evaluate("getComputedStyle(document.body).backgroundColor");
        expect(colour).not.toBe("rgba(0, 0, 0, 0)");
      });
    }
  });

  it("prints the formula, the inputs, the working and the version, and no menu", async () => {
    await on("formulas/warp-length.html", {}, async (page) => {
      await page.emulateMedia({ media: "print" });
      expect(await page.getByRole("navigation").isVisible()).toBe(false);
      for (const shown of ["math", ".working", "footer", "#warpLength-pieces"]) {
        expect(await page.locator(shown).first().isVisible()).toBe(true);
      }
      // A4 at 96 dots to the inch, with margins of 15 mm: nothing may stand out to the right.
      await page.setViewportSize({ width: 680, height: 1000 });
      const cut = await page.evaluate<string[]>(
        "[...document.querySelectorAll('main *')].filter((one) => one.getBoundingClientRect().right > 681 || (one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).overflowX !== 'visible')).map((one) => one.outerHTML.slice(0, 80))",
      );
      expect(cut).toEqual([]);
      expect((await page.pdf({ format: "A4" })).length).toBeGreaterThan(10_000);
    });
  });

  it("stays small: a formula page, its scripts and its style, read and used", async () => {
    await on("formulas/warp-length.html", {}, async (page) => {
      const scripts = async (): Promise<readonly string[]> =>
        page.evaluate<string[]>(
          "[...new Set(performance.getEntriesByType('resource').map(({ name }) => name))].filter((name) => name.endsWith('.js'))",
        );
      const bytes = async (): Promise<number> =>
        (await scripts()).reduce((sum, name) => sum + zipped(join(dist, name.slice(site.address.length))), 0);
      expect(await bytes()).toBeLessThanOrEqual(75_000);
      const shifted = await page.evaluate<number>(
        "new Promise((resolve) => new PerformanceObserver((list) => resolve(list.getEntries().reduce((sum, { value }) => sum + value, 0)))" +
          ".observe({ type: 'layout-shift', buffered: true }) ?? setTimeout(() => resolve(0), 500))",
      );
      expect(shifted).toBeLessThan(0.02);
      await page.getByLabel("pieces", { exact: true }).fill("4");
      // 4 × 74 ÷ 0.9 + 75, by hand.
      await expect.poll(() => page.locator("output").innerText()).toContain("403.889 cm");
      expect(await bytes()).toBeLessThanOrEqual(105_000);
      expect((await scripts()).filter((name) => name.includes("search"))).toEqual([]);
    });
    const style = readdirSync(join(dist, "assets")).find((file) => file.endsWith(".css")) ?? "";
    expect(zipped(join(dist, "assets", style))).toBeLessThanOrEqual(25_000);
    expect(zipped(join(dist, "formulas/warp-length.html"))).toBeLessThanOrEqual(15_000);
  });

  it.each(["index.html", "formulas/warp-length.html"])(
    "%s shows its text from the first answer of the server alone, and that fits into its first ten packets",
    (page) => {
      const html = readFileSync(join(dist, page), "utf8");
      expect(html).not.toContain('stylesheet"');
      expect(/<script(?! type="module")[^>]* src=/u.exec(html)).toBe(null);
      expect(zipped(join(dist, page))).toBeLessThanOrEqual(14_000);
    },
  );

  it("asks nothing of any other origin and sets no cookie", async () => {
    const cookies = await on("stripes.html", {}, (page) => page.context().cookies());
    expect(cookies).toEqual([]);
    expect(asked.length).toBeGreaterThan(0);
    expect(asked.filter((url) => !url.startsWith(site.address) && !/^(?:file|data):/u.test(url))).toEqual([]);
  });
});
