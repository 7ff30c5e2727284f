import { fileURLToPath } from "node:url";
import { ESLint } from "eslint";
import { expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const eslint = new ESLint({
  cwd: root,
  overrideConfigFile: `${root}.ci/eslint.config.mjs`,
  // The file below does not exist, so the rules that ask the compiler cannot run on it.
  overrideConfig: { languageOptions: { parserOptions: { projectService: false } } },
  ruleFilter: ({ ruleId }) => ruleId.startsWith("no-restricted-"),
});
const faults = async (text: string, path = "packages/maths/src/some.test.ts"): Promise<number> =>
  (await eslint.lintText(text, { filePath: root + path })).flatMap(({ messages }) => messages).length;

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

it.each(["it", "test", "describe"])("the title of a row of %s.each stands alone", async (name) => {
  for (const title of [
    ...["the same in yards", "its crimp", "and back", "Also in yards", "too", "as above, in yards"],
    ...["those ends and picks", "these in yards", "this in yards", "that is in yards", "such as a yard"],
  ])
    for (const table of ["each", "for"])
      expect(await faults(`${name}.${table}([["a yard", 1], ["${title}", 2]])("%s", sum);`), title).toBe(1);
  expect(
    await faults(
      `${name}.each([["a yard", 1], ["backwards", 2], ["itself", 3], ["a reed that is too fine", 4]])("%s", sum);`,
    ),
  ).toBe(0);
});

it.each(["it(title, { retry: 3 }, work);", "performance.now();", "Math.random();", "Date.now();", "new Date();"])(
  "nothing sways a test: not %s",
  async (text) => {
    for (const path of ["packages/maths/src/some.test.ts", ".ci/whole/some.test.ts"])
      expect(await faults(text, path)).toBe(1);
  },
);

it("a test of an app may tell its page the hour, and take no time by it", async () => {
  const app = "examples/at-the-loom/tests/some.chromium.test.ts";
  expect(await faults("Date.now();", app)).toBe(0);
  expect(await faults("performance.now();", app)).toBe(1);
});

it("the fields of an object stand where they are, in a test and in the source", async () => {
  for (const path of ["packages/maths/src/some.test.ts", "packages/maths/src/some.ts", ".ci/build/some.mjs"]) {
    expect(await faults("const job = { ...{ ends: 1 } };", path)).toBe(1);
    expect(await faults("const job = { ...others, ends: 1 };", path)).toBe(0);
  }
});
