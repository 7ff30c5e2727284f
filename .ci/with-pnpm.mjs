// node .ci/with-pnpm.mjs "COMMAND [OPTION…]"… : installs, then gives each command to the pinned pnpm (a script of the root,
// or `exec` and a program), on a machine that has only Node and npm.
// Standard output carries what the last one prints and nothing else.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const textOf = (path) => (existsSync(root + path) ? readFileSync(root + path, "utf8") : undefined);
const pin = JSON.parse(textOf("package.json")).packageManager.replace("pnpm@", "");

function pnpmCommand() {
  const installed = textOf("node_modules/pnpm/package.json");
  return installed !== undefined && JSON.parse(installed).version === pin
    ? [process.execPath, root + "node_modules/pnpm/bin/pnpm.cjs"]
    : ["npx", "-y", `pnpm@${pin}`];
}

function run(args, stdout) {
  const [program, ...first] = pnpmCommand();
  const { status, signal, error } = spawnSync(program, [...first, ...args], {
    cwd: root,
    stdio: ["inherit", stdout, "inherit"],
    shell: process.platform === "win32",
  });
  if (error) process.stderr.write(`${program}: ${error.message}\n`);
  if (signal) process.stderr.write(`${args.join(" ")} was ended by ${signal}\n`);
  if (status !== 0) process.exit(status ?? 1);
}

const commands = process.argv.slice(2);
const last = commands.at(-1);
if (last === undefined) {
  process.stderr.write('usage: node .ci/with-pnpm.mjs "COMMAND [OPTION…]"…\n');
  process.exit(2);
}

// pnpm leaves its copy of the lock file when an install is complete: equal copies need no install and no network.
if (textOf("node_modules/.pnpm/lock.yaml") !== textOf("pnpm-lock.yaml")) {
  run(["install", "--frozen-lockfile", "--config.confirmModulesPurge=false"], process.stderr);
}
for (const command of commands.slice(0, -1)) run(command.split(" "), process.stderr);
run(["--silent", ...last.split(" ")], "inherit");
