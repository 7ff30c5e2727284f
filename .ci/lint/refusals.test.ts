import { fileURLToPath } from "node:url";
import { ESLint } from "eslint";
import { expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const eslint = new ESLint({
  cwd: root,
  overrideConfigFile: `${root}.ci/eslint.config.mjs`,
  // The file below does not exist, so the rules that ask the compiler cannot run on it.
  overrideConfig: { languageOptions: { parserOptions: { projectService: false } } },
  ruleFilter: ({ ruleId }) => ruleId === "no-restricted-syntax",
});
const faults = async (text: string): Promise<number> =>
  (await eslint.lintText(text, { filePath: `${root}packages/maths/src/some.test.ts` })).flatMap(
    ({ messages }) => messages,
  ).length;

it.each([
  "expect(call).toThrow();",
  "expect(call).toThrowError();",
  "expect(call).toThrow(QuantityError);",
  "await expect(load()).rejects.toThrow(TypeError);",
])("a test says which refusal it waits for: not %s", async (text) => {
  expect(await faults(text)).toBe(1);
});

it.each([
  "expect(call).not.toThrow();",
  'expect(call).toThrow("above zero");',
  "expect(call).toThrow(/above zero/u);",
  "expect(call).toThrow(PICK);",
  "expect(call).toThrow(found.why);",
])("a test that says it in the way of %s is let stand", async (text) => {
  expect(await faults(text)).toBe(0);
});
