import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import * as everything from "@thrum/maths";
import { ESLint } from "eslint";
import { describe, expect, it } from "vitest";
import { importFault } from "./rooms.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const maths = "packages/maths/src";

describe("a forbidden import fails lint", () => {
  const eslint = new ESLint({
    cwd: root,
    overrideConfigFile: `${root}.ci/eslint.config.mjs`,
    // The files below need not exist, so the rules that ask the compiler cannot run on them.
    overrideConfig: { languageOptions: { parserOptions: { projectService: false } } },
    ruleFilter: ({ ruleId }) => ruleId.startsWith("rooms/"),
  });
  const messages = async (path: string, text: string): Promise<string[]> =>
    (await eslint.lintText(text, { filePath: root + path })).flatMap((file) =>
      file.messages.map((found) => found.message),
    );

  it.each([
    ["import", 'import { warpLength } from "../handbook/warp/warp-length.js";'],
    ["type import", 'import type { WarpLengthInput } from "../handbook/warp/warp-length.js";'],
    ["re-export", 'export * from "../handbook/warp/warp-length.js";'],
    ["named re-export", 'export { warpLength } from "../handbook/warp/warp-length.js";'],
    ["import on demand", 'await import("../handbook/warp/warp-length.js");'],
    ["type written as an import", 'type Input = import("../handbook/warp/warp-length.js").WarpLengthInput;'],
  ])("the engine reaches for the handbook by a %s", async (_, text) => {
    expect(await messages(`${maths}/engine/formula.ts`, text)).toEqual([
      "engine may not import handbook, which is built on it",
    ]);
  });

  it("a figure of the plan may take the types of the job, and not what reads it", async () => {
    const figures = "packages/plan/src/figures/warp.ts";
    expect(await messages(figures, 'import type { Job } from "../job/job.js";')).toEqual([]);
    expect(await messages(figures, 'import { readJob } from "../job/read-job.js";')).toEqual([
      "in the plan figures may not import job but for its types",
    ]);
  });

  it("the handbook may use the engine", async () => {
    const text = 'import { calculation } from "../../engine/formula/calculation.js";';
    expect(await messages(`${maths}/handbook/warp/warp-length.ts`, text)).toEqual([]);
  });

  it("a file of the handbook may not import itself round a corner", async () => {
    const text = 'import { reedWidth } from "./reed-width.js";';
    expect(await messages(`${maths}/handbook/reed/reed-width.ts`, text)).toEqual([
      "the handbook has a cycle of imports: reed/reed-width.ts → reed/reed-width.ts",
    ]);
  });
});

describe("the plan of the house", () => {
  it.each([
    [`${maths}/engine/numbers.ts`, "./quantity/unit.js"],
    [`${maths}/engine/formula/parse.ts`, "../working/working.js"],
    [`${maths}/engine/formula.ts`, "./gadgets.js"],
    [`${maths}/units/lengths.ts`, "../sources/taylor.js"],
    [`${maths}/sources/taylor.ts`, "../handbook/yarn/yarn.js"],
    [`${maths}/handbook/warp/warp-length.ts`, "../../check/check.js"],
    [`${maths}/engine/working/explain.ts`, "../../check/check.js"],
    [`${maths}/check/check.ts`, "../teach/problem.js"],
    [`${maths}/check/check.ts`, "../handbook/index.js"],
    [`${maths}/units/length.ts`, "../check/mixed-up.js"],
    [`${maths}/handbook/warp/warp-length.ts`, "../../engine/columns/block.js"],
    [`${maths}/handbook/warp/warp-length.ts`, "../../index.js"],
    [`${maths}/handbook/warp/warp-length.ts`, "#ci/cited.js"],
    [`${maths}/engine/numbers.ts`, "node:fs"],
    [`${maths}/helpers/numbers.ts`, "../engine/numbers.js"],
    [`${maths}/handbook/warp/warp-length.ts`, "@thrum/stripes"],
    ["packages/stripes/src/merge.ts", "@thrum/maths"],
    ["packages/stripes/src/merge.ts", "../../maths/src/index.js"],
    ["packages/stripes/src/merge.test.ts", "../../maths/src/index.js"],
    ["packages/stripes/src/merge.test.ts", "@thrum/maths"],
    ["packages/plan/src/plan-warp.ts", "../../maths/src/index.js"],
    ["packages/plan/src/plan-warp.ts", "@thrum/sheets"],
    ["packages/plan/src/job/read-job.ts", "../figures/list.js"],
    ["packages/plan/src/core/work.ts", "../job/job.js"],
    ["packages/plan/src/core/work.ts", "../figures/list.js"],
    ["packages/plan/src/core/work.ts", "../parts/told.js"],
    ["packages/plan/src/core/work.ts", "../views/text.js"],
    ["packages/plan/src/figures/warp.ts", "../data/working.js"],
    ["packages/plan/src/figures/warp.ts", "../views/text.js"],
    ["packages/plan/src/parts/groups.ts", "../figures/groups.js"],
    ["packages/plan/src/parts/groups.ts", "../views/text.js"],
    ["packages/plan/src/data/working.ts", "../views/text.js"],
    ["packages/plan/src/reconcile/reconcile.ts", "../figures/list.js"],
  ])("%s may not import %s", (path, specifier) => {
    expect(importFault(path, specifier)).toBeTypeOf("string");
  });

  it.each([
    [`${maths}/engine/formula/parse.ts`, "./tokens.js"],
    [`${maths}/engine/working/text.ts`, "../formula/calculation.js"],
    [`${maths}/engine/columns.ts`, "./numbers.js"],
    [`${maths}/engine/numbers.ts`, "decimal.js"],
    [`${maths}/handbook/warp/warp-length.ts`, "../yarn/yarn.js"],
    [`${maths}/handbook/warp/warp-length.test.ts`, "../../check/check.js"],
    [`${maths}/check/mixed-up.ts`, "../units/length.js"],
    [`${maths}/teach/problem.ts`, "../check/index.js"],
    [`${maths}/handbook/warp/warp-length.test.ts`, "#ci/cited.js"],
    [`${maths}/verification/self-test.ts`, "../index.js"],
    [`${maths}/index.ts`, "./engine/columns.js"],
    ["packages/stripes/src/merge.test.ts", "fast-check"],
    ["packages/plan/src/plan-warp.ts", "@thrum/maths"],
    ["packages/plan/src/index.ts", "./job/read-job.js"],
    ["packages/plan/src/figures/warp.ts", "../parts/pieces.js"],
    ["packages/plan/src/data/plan-data.ts", "../figures/list.js"],
    ["packages/plan/src/views/text.ts", "../data/working.js"],
    ["packages/plan/src/views/text.ts", "../figures/loom.js"],
    ["packages/plan/src/core/core.test.ts", "../job/job.js"],
    ["examples/hall-napkins/plan.ts", "@thrum/plan"],
  ])("%s may import %s", (path, specifier) => {
    expect(importFault(path, specifier)).toBeUndefined();
  });
});

describe("the test of a function of the handbook", () => {
  const handbook = `${root}${maths}/handbook/`;
  const files = readdirSync(handbook, { recursive: true, encoding: "utf8" });
  const fileOf = (name: string, end: string, among = files): string | undefined =>
    among.find((path) => path.endsWith(`/${name.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`)}${end}`));
  const withoutTest = (names: readonly string[], among = files): readonly string[] =>
    names.filter((name) => fileOf(name, ".test.ts", among) === undefined);
  const named = Object.keys(everything).filter((name) => fileOf(name, ".ts") !== undefined);
  const calculations = Object.entries(everything).flatMap(([name, one]) =>
    everything.isCalculation(one) ? [name] : [],
  );

  it("stands beside it by its name, so that a page may point to it", () => {
    expect(named.length).toBeGreaterThan(200);
    expect(withoutTest(named)).toEqual([]);
    expect(withoutTest(["warpLength"], ["warp/warp-length.ts", "warp/warp-length-by-adding.test.ts"])).toEqual([
      "warpLength",
    ]);
  });

  it("stands for every calculation", () => {
    expect(calculations.length).toBeGreaterThan(150);
    expect(calculations.filter((name) => !named.includes(name))).toEqual([]);
  });

  const monotone = readFileSync(`${handbook}monotone.test.ts`, "utf8");
  /** What the test of a calculation lacks; that more gives more may stand in the table of all. */
  const lacking = (name: string, text: string): readonly string[] => [
    ...(/\bcited\(/u.test(text) ? [] : [`${name}: a case`]),
    ...(/\bfc\.property\(/u.test(text) || monotone.includes(`["${name}", [`) ? [] : [`${name}: a property`]),
    ...(/\blimits\(|\.toThrow\(|"out-of-range"|\bcode\b|faultsOf\(/u.test(text)
      ? []
      : [`${name}: a limit and a refusal`]),
  ];

  it("holds a case, a property, a limit and a refusal for every calculation", () => {
    const textOf = (name: string): string => readFileSync(handbook + (fileOf(name, ".test.ts") ?? ""), "utf8");
    expect(calculations.flatMap((name) => lacking(name, textOf(name)))).toEqual([]);
    expect(lacking("sleyLength", "it(title, work);")).toEqual([
      "sleyLength: a case",
      "sleyLength: a property",
      "sleyLength: a limit and a refusal",
    ]);
  });
});
