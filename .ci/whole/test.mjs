// Runs every test, then prints the tally as the last line and leaves it in reports/tally.txt.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tally } from "./tally.mjs";

const report = "reports/vitest.json";
mkdirSync("reports", { recursive: true });
for (const old of [report, "reports/tally.txt"]) rmSync(old, { force: true });

const vitest = ["node_modules/vitest/vitest.mjs", "run", "--config", ".ci/vitest.config.ts"];
const { status } = spawnSync(process.execPath, vitest, { stdio: "inherit" });
const results = existsSync(report) ? JSON.parse(readFileSync(report, "utf8")).testResults : [];
const line = tally(results, { ranToTheEnd: status === 0 });
writeFileSync("reports/tally.txt", line + "\n");
process.stdout.write(`\n${line}\n`);
process.exit(status ?? 1);
