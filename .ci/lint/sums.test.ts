import { fileURLToPath } from "node:url";
import { ESLint } from "eslint";
import { expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const eslint = new ESLint({
  cwd: root,
  overrideConfigFile: `${root}.ci/eslint.config.mjs`,
  // The files below need not exist, so the rules that ask the compiler cannot run on them.
  overrideConfig: { languageOptions: { parserOptions: { projectService: false } } },
  ruleFilter: ({ ruleId }) => ruleId.startsWith("sums/"),
});
const rulesBroken = async (path: string, text: string): Promise<readonly (string | null)[]> =>
  (await eslint.lintText(text, { filePath: root + path })).flatMap(({ messages }) => messages.map((one) => one.ruleId));

it.each(["sum", "difference", "times", "ratio", "sum as added"])("the plan takes no %s by hand", async (name) => {
  const text = `import { inches, ${name} } from "@thrum/maths";`;
  for (const room of ["figures", "views", "data"]) {
    expect(await rulesBroken(`packages/plan/src/${room}/warp.ts`, text)).toEqual(["sums/no-sums"]);
  }
  expect(await rulesBroken("packages/plan/src/parts/warp.ts", text)).toEqual([]);
});

it.each([
  "Math.ceil(needed.in(ounces) / 8);",
  "Math.floor(length.in(inches));",
  "Math.round(Number(length?.in(inches)));",
  "const read = length.in(inches) * 8; Math.ceil(read);",
])("an amount read as a double is not rounded: %s", async (text) => {
  for (const name of ["maths", "plan", "sheets", "stripes"]) {
    expect(await rulesBroken(`packages/${name}/src/some.ts`, text)).toEqual(["sums/no-rounded-reading"]);
  }
});

it.each(["Math.ceil(ends / 2);", "length.in(inches);", "Math.max(length.in(inches), 1);"])(
  "is no such rounding: %s",
  async (text) => {
    expect(await rulesBroken("packages/plan/src/views/some.ts", text)).toEqual([]);
  },
);
