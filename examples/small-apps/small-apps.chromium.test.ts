import { spawn, spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";
import { chromium } from "playwright-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { describeWith } from "#ci/program.js";

const folder = "examples/small-apps";
const APPS = ["form", "designer", "counts", "store", "plan"];
const scripts = APPS.flatMap((app) =>
  readdirSync(join(folder, app)).flatMap((name) => (name.endsWith(".ts") ? [join(folder, app, name)] : [])),
);

describe("the five small apps", () => {
  it.each(scripts)("%s is short, reads none of our texts by a pattern, and takes only what is public", (path) => {
    const text = readFileSync(path, "utf8");
    expect(text.split("\n").length - 1).toBeLessThanOrEqual(60);
    expect(text).not.toMatch(
      /RegExp|\.(?:match|matchAll|replace|replaceAll|search|test|exec)\(|[=(,:?&|!]\s*\/(?![/*])/u,
    );
    const imported = Array.from(text.matchAll(/from "([^"]+)"/gu), ([, name]) => name);
    const packages = ["@thrum/maths", "@thrum/maths/catalogue", "@thrum/stripes", "@thrum/plan"];
    for (const name of imported) expect([...packages, "node:http", "../page.js"]).toContain(name);
  });
});

const TYPES: Readonly<Record<string, string>> = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css" };

function served(root: string): Promise<{ readonly address: string; readonly close: () => void }> {
  const server = createServer(({ url = "/" }, response) => {
    const { pathname } = new URL(url, "http://localhost");
    try {
      const body = readFileSync(join(root, pathname));
      response.writeHead(200, { "content-type": TYPES[extname(pathname)] ?? "text/plain" }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  return new Promise((resolve) => {
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address() as AddressInfo;
      resolve({ address: `http://127.0.0.1:${String(port)}`, close: () => server.close() });
    });
  });
}

describeWith("Chromium", (executablePath) => {
  let browser: Browser;
  beforeAll(async () => {
    const built = spawnSync(process.execPath, [join(folder, "build.mjs")], { encoding: "utf8" });
    expect({ status: built.status, stderr: built.stderr }).toEqual({ status: 0, stderr: "" });
    browser = await chromium.launch({ executablePath, args: ["--no-sandbox"], timeout: 60_000 });
  }, 90_000);
  afterAll(() => browser.close());

  /** Opens an app, hands it to the hands, and holds that nothing on it went wrong. */
  async function opened(root: string, app: string, hands: (page: Page) => Promise<void>): Promise<void> {
    const { address, close } = await served(join(folder, "dist", root));
    const page = await browser.newPage({ locale: "en-GB" });
    const faults: string[] = [];
    page.on("pageerror", ({ message }) => faults.push(message));
    page.on("console", (told) => {
      if (told.type() === "error" && !told.text().includes("422") && !told.location().url.includes("favicon"))
        faults.push(told.text());
    });
    try {
      await page.goto(`${address}/${app}`);
      await hands(page);
      expect(faults).toEqual([]);
    } finally {
      await page.close();
      close();
    }
  }

  describe.each(["vite", "esbuild"])("built by %s", (root) => {
    it("a form asks for any formula of the catalogue, and answers or says beside the field what is wrong", async () => {
      await opened(root, "form/index.html", async (page) => {
        const fill = async (values: Readonly<Record<string, readonly [string, string?]>>): Promise<void> => {
          for (const [name, [value, unit]] of Object.entries(values)) {
            await page.fill(`[name=${name}]`, value);
            if (unit !== undefined) await page.selectOption(`[name=${name}-unit]`, unit);
          }
        };
        await page.waitForSelector("[name=finishedLength]");
        expect(await page.locator(".wrong:not(:empty)").count()).toBeGreaterThan(0);
        await fill({ pieces: ["8"], finishedLength: ["21", "inches"], hemEachEnd: ["1", "inches"] });
        await fill({ loomToFinished: ["10"], takeUp: ["8"], loomWaste: ["2 1/2", "feet"] });
        // (8 × 23 ÷ 0.9 ÷ 0.92 + 30) in = 252.222… in
        expect(await page.textContent("#answer")).toMatch(/≈252\.222\sin/u);
        await fill({ takeUp: ["108"] });
        expect(await page.textContent("label:has([name=takeUp]) .wrong")).not.toBe("");
        expect(await page.textContent("#answer")).toBe("");
        const names = await page
          .locator("#formula option")
          .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
        expect(names.length).toBeGreaterThan(150);
        const silent = await page.evaluate(async (formulas) => {
          const found: string[] = [];
          const picker = document.querySelector<HTMLSelectElement>("#formula");
          const fields = document.querySelector<HTMLElement>("#fields");
          for (const formula of formulas) {
            if (picker === null || fields === null) throw new Error("no form");
            fields.replaceChildren();
            picker.value = formula;
            picker.dispatchEvent(new Event("change"));
            while (fields.childElementCount === 0) await new Promise((next) => setTimeout(next));
            for (const input of fields.querySelectorAll("input")) input.value = "8";
            fields.dispatchEvent(new Event("input", { bubbles: true }));
            const told = document.querySelector("#answer")?.childElementCount ?? 0;
            const wrong = document.querySelectorAll(".wrong:not(:empty)").length;
            if (told === 0 && wrong === 0) found.push(formula);
          }
          return found;
        }, names);
        expect(silent).toEqual([]);
      });
    });

    it("a designer draws what is typed, and fits it to a width", async () => {
      await opened(root, "designer/index.html", async (page) => {
        // 24 + 3 × (4 + 24 + 8 + 24) = 204; 12.5 in at 16 to the inch take 200.
        expect(await page.textContent("#total")).toBe("204 ends");
        expect(await page.locator("#totals li").allTextContents()).toEqual([
          "natural: 168",
          "madder: 12",
          "indigo: 24",
        ]);
        expect(await page.locator("#picture rect").count()).toBe(13);
        expect(await page.textContent("#fitted")).toContain("= 200 ends");
        await page.fill("#list", "24 natural\n4");
        expect(await page.textContent("#list-wrong")).toContain("received");
        await page.fill("#list", "24 natural\n76 madder");
        await page.fill("#width", "12 spans");
        expect(await page.textContent("#width-wrong")).not.toBe("");
        await page.fill("#width", "25 in");
        expect(await page.textContent("#fitted")).toBe("96 natural, 304 madder = 400 ends");
      });
    });

    it("cones are kept as JSON, and are quantities again when the page is next opened", async () => {
      await opened(root, "store/index.html", async (page) => {
        await page.click("#add");
        await page.fill("#mass", "half a pound");
        await page.click("#add");
        expect(await page.textContent("#wrong")).not.toBe("");
        await page.fill("#mass", "50 g");
        await page.fill("#price", "9 EUR");
        await page.click("#add");
        await page.reload();
        expect(await page.locator("#cones li").allTextContents()).toEqual([
          "madder: 3.5 oz at 14.50 EUR",
          "madder: 50 g at 9.00 EUR",
        ]);
        // 3.5 × 28.349523125 g + 50 g = 149.22… g
        expect(await page.textContent("#all")).toBe("149.2 g");
      });
    });

    it("a plan is made of an object of the page, with its workings", async () => {
      await opened(root, "plan/index.html", async (page) => {
        const figure = (at: number): Promise<string | null> => page.locator("#figures li").nth(at).textContent();
        // 24 + 4 × 80 = 344 ends; 9 × 17.5 ÷ 0.9 ÷ 0.92 + 28 = 218.217… in
        expect(await figure(0)).toContain("344");
        expect(await figure(1)).toContain("218.22 in");
        await page.locator("#figures button").nth(1).click();
        expect(await page.textContent("#working")).toMatch(/≈218\.217\sin/u);
        await page.fill("#pieces", "0");
        expect(await page.textContent("#wrong")).toContain("pieces");
      });
    });
  });

  it("a service reads counts as they are typed, and gives the readings where there are two", async () => {
    const service = spawn(process.execPath, [join(folder, "dist/esbuild/counts/service.mjs")], {
      stdio: ["ignore", "pipe", "inherit"],
    });
    try {
      const { port } = await new Promise<AddressInfo>((resolve) => {
        service.stdout.once("data", (told: Buffer) => {
          resolve(JSON.parse(told.toString()) as AddressInfo);
        });
      });
      const address = `http://127.0.0.1:${String(port)}/`;
      const ask = async (body: string, query = ""): Promise<unknown> => {
        const sent = await fetch(address + query, { method: "POST", body });
        return { status: sent.status, ...((await sent.json()) as object) };
      };
      for (const bad of ["", "{", "null", "[]", '{"text":7}', '{"text":"8 hemp"}', `"${"8".repeat(50_000)}"`])
        expect(await ask(bad), bad.slice(0, 20)).toMatchObject({ status: 422, path: ["text"] });
      expect(await ask('{"text":"Nm 27,5"}', "?locale=de")).toMatchObject({ status: 200, plies: 1 });
      for (const root of ["vite", "esbuild"]) {
        await opened(root, `counts/index.html?service=${encodeURIComponent(address)}`, async (page) => {
          await page.fill("#yarn", "8/2 cotton");
          await page.locator("#yarn").blur();
          await page.getByRole("button", { name: "2-ply of 8 cotton" }).click();
          // 8 ÷ 2 = 4 hanks of 840 yd
          await page.locator("#counts li", { hasText: "3,360 yd/lb" }).waitFor();
          expect(await page.textContent("#said")).toBe("");
        });
      }
    } finally {
      service.kill();
    }
  });
});
