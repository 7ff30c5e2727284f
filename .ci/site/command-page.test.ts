// The page of the command names every form of it that its own help names.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { root } from "../support/built.mjs";

it("lists on its page all that thrum help lists", () => {
  const help = execFileSync(process.execPath, [`${root}packages/plan/dist/cli.js`, "help"], { encoding: "utf8" });
  const forms = [...help.matchAll(/^ {2}(thrum .+?)(?: {3,}.*)?$/gmu)].map(([, form = ""]) => form);
  const page = readFileSync(`${root}docs/guides/command.md`, "utf8");
  expect(forms.length).toBeGreaterThan(10);
  expect(forms.filter((form) => !page.includes(`\`${form}\``))).toEqual([]);
});
