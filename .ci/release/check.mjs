// pnpm release:check: the tarballs that would be published, installed in a bare project and used in every way promised.
// It asks the registry for other Nodes, Deno and compilers; nothing of ours is published. It wants packages already built.
import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { chromium } from "playwright-core";
import { packageNames, root } from "../support/built.mjs";
import { installPacked, napkinsInCode, packedTarballs } from "./packed.mjs";

const folder = mkdtempSync(join(tmpdir(), "thrum-release-"));
const names = "inches, percentLost, warpLength, yards";
const answer = `warpLength(${napkinsInCode}).in(yards)`;
const ALL = packageNames.map((name) => `@thrum/${name}`);
// 8 × 23 ÷ 0.9 ÷ 0.92 + 30 = 252.222… in = 7.00617… yd
const RIGHT = "7.00617";

const file = (name, text) => {
  writeFileSync(join(folder, name), text);
  return name;
};
const run = (program, ...args) => {
  const { status, stdout, stderr, error } = spawnSync(program, args, { cwd: folder, encoding: "utf8" });
  return { right: status === 0, said: `${stdout ?? ""}${stderr ?? ""}${error?.message ?? ""}`.trim() };
};
const npx = (wanted, ...args) => run("npx", "-y", "-p", wanted, ...args);
const rightNumber = ({ right, said }) => ({ right: right && said.includes(RIGHT), said });

const esm = `import { ${names} } from "@thrum/maths";\n`;
const everyPackage = ALL.map((name, at) => `import * as all${at} from "${name}";`).join("\n");

function scripts() {
  file("sum.mjs", `${everyPackage}\n${esm}console.log(${answer});`);
  file(
    "sum.cjs",
    `${ALL.map((name) => `require("${name}");`).join("")} const { ${names} } = require("@thrum/maths"); console.log(${answer});`,
  );
  file(
    "extended.mjs",
    `Object.prototype.added = function () {}; Object.prototype.more = 3;\nconst { ${names} } = await import("@thrum/maths"); console.log(${answer});`,
  );
  file(
    "two.mjs",
    `${esm}import { inches as others } from "./second/@thrum/maths/dist/index.js";\nconsole.log(warpLength(${napkinsInCode.replace("inches(21)", "others(21)")}).in(yards));`,
  );
  const typed = `${everyPackage}\n${esm}export const answer: number = ${answer};\nexport const all = [${ALL.map((_, at) => `all${at}`).join(", ")}];\n`;
  for (const name of ["typed.mts", "typed.cts", "typed.ts"]) file(name, typed);
  // A second copy, as another dependency would bring one.
  mkdirSync(join(folder, "second/@thrum"), { recursive: true });
  cpSync(join(folder, "node_modules/@thrum/maths"), join(folder, "second/@thrum/maths"), { recursive: true });
}

const tsc = (version, ...options) =>
  npx(`typescript@${version}`, "tsc", "--noEmit", "--strict", "--target", "es2022", ...options);

/** The plan of an example, printed by the installed command: 9 × 17.5 ÷ 0.9 ÷ 0.92 + 10 = 200.217 in = 5.5616 yd, rounded up. */
function command() {
  cpSync(join(root, "examples/jobs/2-hall-napkins.yaml"), join(folder, "job.yaml"));
  const { right, said } = run("npx", "--no-install", "thrum", "plan", "job.yaml");
  return { right: right && said.includes("Wind 5.57 yd"), said };
}

/** What a package must bring along besides its code. */
function papers() {
  const missing = ALL.flatMap((name) => {
    const brought = readdirSync(join(folder, "node_modules", name));
    return ["LICENSE", "README.md", "package.json"]
      .filter((paper) => !brought.includes(paper))
      .map((paper) => `${name}/${paper}`);
  });
  return { right: missing.length === 0, said: missing.join(", ") };
}

async function browserPage() {
  const { outputFiles } = await build({
    stdin: { contents: `${esm}document.title = String(${answer});`, resolveDir: folder },
    bundle: true,
    format: "iife",
    write: false,
  });
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox"],
  });
  try {
    const page = await browser.newPage();
    await page.setContent(`<script>${outputFiles[0].text}</script>`);
    const said = await page.title();
    return { right: said.includes(RIGHT), said };
  } finally {
    await browser.close();
  }
}

const onNode = (version) => ({
  [`ES module, Node ${version}`]: () => rightNumber(npx(`node@${version}`, "node", "sum.mjs")),
  [`require, Node ${version}`]: () => rightNumber(npx(`node@${version}`, "node", "sum.cjs")),
});
const forTypeScript = (version, commonJs) => ({
  [`TypeScript ${version}, module`]: () => tsc(version, "--module", "nodenext", "typed.mts"),
  [`TypeScript ${version}, bundler`]: () =>
    tsc(version, "--module", "esnext", "--moduleResolution", "bundler", "typed.ts"),
  ...(commonJs && { [`TypeScript ${version}, CommonJS`]: () => tsc(version, "--module", "nodenext", "typed.cts") }),
});

const ways = {
  "licence and README in each package": papers,
  "ES module, this Node": () => rightNumber(run(process.execPath, "sum.mjs")),
  "require, this Node": () => rightNumber(run(process.execPath, "sum.cjs")),
  "Object.prototype extended": () => rightNumber(run(process.execPath, "extended.mjs")),
  "two copies installed": () => rightNumber(run(process.execPath, "two.mjs")),
  "the command": command,
  ...onNode("20.19"),
  ...onNode("22"),
  ...onNode("24"),
  Deno: () =>
    rightNumber(npx("deno", "deno", "run", "--allow-read", "--allow-env", "--node-modules-dir=manual", "sum.mjs")),
  ...forTypeScript("5.5", false),
  ...forTypeScript("5.6", false),
  ...forTypeScript("5.7", false),
  ...forTypeScript("5.8", true),
  ...forTypeScript("5.9", true),
  ...forTypeScript("latest", true),
  "a page in Chromium": browserPage,
};

const failed = [];
try {
  installPacked(folder, packedTarballs(join(folder, "tarballs")));
  scripts();
  for (const [way, tried] of Object.entries(ways)) {
    const { right, said } = await tried();
    process.stdout.write(`${right ? "ok    " : "FAILED"}  ${way}\n${right ? "" : `${said}\n`}`);
    if (!right) failed.push(way);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
process.exitCode = failed.length > 0 ? 1 : 0;
