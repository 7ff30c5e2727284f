// The app built once for all its tests, and served as a page host would.
import { createHash } from "node:crypto";
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { root } from "#ci/built.mjs";
import { served } from "#ci/served.mjs";

const folder = join(root, "examples/at-the-loom");

function filesIn(path: string): readonly string[] {
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile())
    .map((one) => join(one.parentPath, one.name))
    .sort((one, other) => one.localeCompare(other));
}

/** The folder of the built app; whoever comes first builds it, by the letters of all that it is made of. */
export function builtApp(): string {
  const made = createHash("sha256");
  const own = ["index.html", "vite.config.ts", "package.json"].map((name) => join(folder, name));
  const packages = ["maths", "plan", "sheets", "stripes"].map((name) => join(root, `packages/${name}/dist/index.js`));
  const parts = [...own, ...packages, ...filesIn(join(folder, "src")), ...filesIn(join(folder, "public"))];
  for (const path of parts) made.update(path).update(readFileSync(path));
  const built = join(root, "reports/at-the-loom-shipped", made.digest("hex").slice(0, 16));
  if (existsSync(built)) return built;
  const making = `${built}.${String(process.pid)}`;
  mkdirSync(making, { recursive: true });
  const vite = [join(folder, "node_modules/vite/bin/vite.js"), "build", "--outDir", making, "--emptyOutDir"];
  // As it is shipped, not as a test is run: with its service worker, and the smaller build of the view library.
  execFileSync(process.execPath, vite, { cwd: folder, stdio: "pipe", env: { ...process.env, NODE_ENV: "production" } });
  try {
    renameSync(making, built);
  } catch {
    // Another test has built the same in the meantime.
    rmSync(making, { recursive: true });
  }
  return built;
}

interface App {
  readonly address: string;
  readonly browser: Browser;
}

let started: Promise<App> | undefined;

/** One server and one browser for all the files that a worker of the tests runs: they end with it. */
function theApp(executablePath: string): Promise<App> {
  const start = async (): Promise<App> => {
    const { address } = await served(builtApp(), "/plan-a-warp/");
    const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
    return { address, browser };
  };
  return (started ??= start());
}

/** A device of its own, with nothing kept on it, and no service worker unless it is asked for. */
export async function onDevice<T>(
  executablePath: string,
  look: (device: BrowserContext, address: string) => Promise<T>,
  options: BrowserContextOptions = {},
): Promise<T> {
  const { address, browser } = await theApp(executablePath);
  const phone = { viewport: { width: 390, height: 844 }, serviceWorkers: "block" as const };
  const device = await browser.newContext({ ...phone, ...options });
  device.setDefaultTimeout(20_000);
  try {
    return await look(device, address);
  } finally {
    await device.close();
  }
}

/** A page whose time can be moved on, so that no test waits for the gap between two taps that count. */
export const nextTap = (page: Page): Promise<void> => page.clock.fastForward(260);

/** A page of the app at a place, its screen there. */
export async function opened(device: BrowserContext, address: string, hash: string): Promise<Page> {
  const page = await device.newPage();
  await page.goto(`${address}#${hash}`);
  await page.locator(":is(main, .hands) :is(button, .button, input)").first().waitFor();
  return page;
}
