import { spawnSync } from "node:child_process";
import { appendFileSync, copyFileSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, posix } from "node:path";
import { fileURLToPath } from "node:url";
import * as everything from "@thrum/maths";
import { afterAll, describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const maths = "packages/maths/src";
const warpLength = `${maths}/handbook/warp/warp-length.ts`;

/** Each import no file may hold, and the rule it breaks. */
const forbidden = [
  [`${maths}/engine/numbers.ts`, "./quantity/unit.js", "engine/numbers"],
  [`${maths}/engine/formula/parse.ts`, "../working/working.js", "engine/formula"],
  [`${maths}/engine/formula.ts`, "./gadgets.js", "a part of the engine"],
  [`${maths}/engine/formula/run.ts`, "../../handbook/warp/warp-length.js", "maths/engine"],
  [`${maths}/units/lengths.ts`, "../sources/taylor.js", "maths/units"],
  [`${maths}/sources/taylor.ts`, "../handbook/yarn/yarn.js", "maths/sources"],
  [warpLength, "../../engine/solve/solve.js", "the handbook and the engine"],
  [warpLength, "../../check/check.js", "maths/handbook"],
  [`${maths}/engine/working/explain.ts`, "../../check/check.js", "maths/engine"],
  [`${maths}/check/check.ts`, "../teach/problem.js", "maths/check"],
  [`${maths}/check/check.ts`, "../handbook/index.js", "maths/check"],
  [`${maths}/units/length.ts`, "../check/mixed-up.js", "maths/units"],
  [warpLength, "../../engine/columns/block.js", "the handbook and the engine"],
  [warpLength, "../../index.js", "maths/handbook"],
  [warpLength, "#ci/cited.js", "maths and .ci"],
  [warpLength, "@thrum/stripes", "maths and other packages"],
  [`${maths}/engine/numbers.ts`, "node:fs", "maths and the world"],
  [`${maths}/engine/numbers.ts`, "yaml", "maths and the world"],
  [`${maths}/helpers/numbers.ts`, "../engine/numbers.js", "a room of maths"],
  [`${maths}/define/unit.ts`, "../catalogue/list.js", "maths/define"],
  [`${maths}/verification/self-test.ts`, "../catalogue/list.js", "maths/verification"],
  ["packages/stripes/src/merge.ts", "@thrum/maths", "stripes and other packages"],
  ["packages/stripes/src/merge.ts", "../../maths/src/index.js", "maths by its path"],
  ["packages/stripes/src/merge.ts", "decimal.js", "stripes and the world"],
  ["packages/stripes/src/merge.test.ts", "../../maths/src/index.js", "maths by its path"],
  ["packages/stripes/src/merge.test.ts", "@thrum/maths", "stripes and other packages"],
  ["packages/stripes/src/refusal/kinds.ts", "../sequence/join.js", "stripes/refusal, types"],
  ["packages/stripes/src/winding/rounds.ts", "../pairs/pairs.js", "stripes/winding"],
  ["packages/plan/src/plan-warp.ts", "../../maths/src/index.js", "maths by its path"],
  ["packages/plan/src/plan-warp.ts", "@thrum/sheets", "plan and other packages"],
  ["packages/plan/src/job/read-job.ts", "../figures/list.js", "plan/job"],
  ["packages/plan/src/core/work.ts", "../job/job.js", "plan/core"],
  ["packages/plan/src/core/work.ts", "../figures/list.js", "plan/core"],
  ["packages/plan/src/core/work.ts", "../parts/told.js", "plan/core"],
  ["packages/plan/src/core/work.ts", "../views/text.js", "plan/core"],
  ["packages/plan/src/figures/warp.ts", "../data/working.js", "plan/figures"],
  ["packages/plan/src/figures/warp.ts", "../views/text.js", "plan/figures"],
  ["packages/plan/src/figures/warp.ts", "../job/read-job.js", "plan/figures, types"],
  ["packages/plan/src/parts/groups.ts", "../figures/groups.js", "plan/parts"],
  ["packages/plan/src/parts/groups.ts", "../views/text.js", "plan/parts"],
  ["packages/plan/src/data/working.ts", "../views/text.js", "plan/data"],
  ["packages/plan/src/reconcile/reconcile.ts", "../figures/list.js", "plan/reconcile"],
  ["packages/sheets/src/book/xml.ts", "../plan/book.js", "sheets/book"],
  ["packages/sheets/src/functions/answer.ts", "../book/xml.js", "sheets/functions"],
  [`${maths}/handbook/reed/about.ts`, "./round.js", "a cycle"],
  ["packages/plan/src/core/about.ts", "./round.js", "a cycle"],
] as const;

/** Imports that are allowed; the file may hold forbidden ones besides. */
const allowed = [
  [`${maths}/engine/formula/parse.ts`, "./tokens.js"],
  [`${maths}/engine/working/text.ts`, "../formula/calculation.js"],
  [`${maths}/engine/columns.ts`, "./numbers.js"],
  [`${maths}/engine/numbers.ts`, "decimal.js"],
  [warpLength, "../yarn/yarn.js"],
  [warpLength, "../../engine/formula/calculation.js"],
  [`${maths}/handbook/warp/warp-length.test.ts`, "../../check/check.js"],
  [`${maths}/check/mixed-up.ts`, "../units/mass.js"],
  [`${maths}/teach/problem.ts`, "../check/index.js"],
  [`${maths}/handbook/warp/warp-length.test.ts`, "#ci/cited.js"],
  [`${maths}/verification/self-test.ts`, "../index.js"],
  [`${maths}/index.ts`, "./engine/columns.js"],
  ["packages/stripes/src/merge.test.ts", "fast-check"],
  ["packages/plan/src/plan-data.ts", "@thrum/maths"],
  ["packages/plan/src/index.ts", "./job/read-job.js"],
  ["packages/plan/src/figures/warp.ts", "../parts/pieces.js"],
  ["packages/plan/src/data/plan-data.ts", "../figures/list.js"],
  ["packages/plan/src/views/text.ts", "../data/working.js"],
  ["packages/plan/src/views/text.ts", "../figures/loom.js"],
  ["packages/plan/src/core/core.test.ts", "../job/job.js"],
] as const;

/** How the engine may not reach for the handbook, nor a type of the job be taken. */
const forms = [
  ["a type", 'import type { A } from "../handbook/warp/warp-length.js";'],
  ["a type in a list", 'import { type A } from "../handbook/warp/warp-length.js";'],
  ["a re-export", 'export * from "../handbook/warp/warp-length.js";'],
  ["a named re-export", 'export { A } from "../handbook/warp/warp-length.js";'],
  ["an import on demand", 'await import("../handbook/warp/warp-length.js");'],
  ["a type written as an import", 'export type Input = import("../handbook/warp/warp-length.js").A;'],
] as const;

const tree = mkdtempSync(join(tmpdir(), "thrum-rooms-"));
afterAll(() => {
  rmSync(tree, { recursive: true });
});

function write(path: string, line = ""): void {
  mkdirSync(dirname(join(tree, path)), { recursive: true });
  appendFileSync(join(tree, path), `${line}\n`);
}

/** The file an import asks for; null where that is a package. */
function target(path: string, specifier: string): string | null {
  if (specifier === "#ci/cited.js") return ".ci/support/cited.ts";
  const [, name] = /^@thrum\/(.+)$/u.exec(specifier) ?? [];
  if (name !== undefined) return `packages/${name}/src/index.ts`;
  return specifier.startsWith(".") ? posix.join(posix.dirname(path), specifier).replace(/\.js$/u, ".ts") : null;
}

interface Violation {
  readonly from: string;
  readonly to: string;
  readonly rule: { readonly name: string };
}

/** What the linter finds in a tree of files that hold all these imports, as "file → import: rule". */
function found(): readonly string[] {
  copyFileSync(`${root}tsconfig.base.json`, join(tree, "tsconfig.base.json"));
  for (const [path, specifier] of [...forbidden, ...allowed]) {
    write(path, `import "${specifier}";`);
    const to = target(path, specifier);
    if (to !== null) write(to);
  }
  forms.forEach(([, text], at) => {
    write(`${maths}/engine/refusal-${String(at)}.ts`, text);
  });
  for (const folder of [`${maths}/handbook/reed`, "packages/plan/src/core"])
    write(`${folder}/round.ts`, 'import "./about.js";');
  write("packages/plan/src/parts/pieces.ts", 'import type { Job } from "../job/job.js";');
  const linter = [`${root}node_modules/dependency-cruiser/bin/dependency-cruise.mjs`, "--output-type", "json"];
  const { stdout } = spawnSync(process.execPath, [...linter, "--config", `${root}.ci/lint/rooms.mjs`, "packages"], {
    cwd: tree,
    encoding: "utf8",
    maxBuffer: 1e8,
  });
  const { summary } = JSON.parse(stdout) as { summary: { violations: readonly Violation[] } };
  return summary.violations.map(({ from, to, rule }) => `${from} → ${to}: ${rule.name}`);
}

describe("who may import whom", () => {
  const said = found();
  const naming = (path: string, specifier: string): readonly string[] => {
    const to = target(path, specifier) ?? specifier.replace("node:", "");
    return said
      .filter((line) => line.startsWith(`${path} → `) && line.includes(to))
      .map((line) => line.split(": ")[1] ?? "");
  };

  it.each(forbidden)("%s may not import %s: %s", (path, specifier, rule) => {
    expect(naming(path, specifier)).toContain(rule);
  });

  it.each(allowed)("%s may import %s", (path, specifier) => {
    expect(naming(path, specifier)).toEqual([]);
  });

  it.each(forms.map(([form], at) => [form, at] as const))(
    "the engine may not reach for the handbook by %s",
    (_, at) => {
      expect(naming(`${maths}/engine/refusal-${String(at)}.ts`, "../handbook/warp/warp-length.js")).toContain(
        "maths/engine",
      );
    },
  );

  it("parts of the plan may take the types of the job", () => {
    expect(naming("packages/plan/src/parts/pieces.ts", "../job/job.js")).toEqual([]);
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
    ...(/\blimits\(|\.toThrow\(|"out-of-range"|\bcode\b|faultsOf\(|codesOf\(/u.test(text)
      ? []
      : [`${name}: a limit and a refusal`]),
  ];

  const textOf = (name: string): string => readFileSync(handbook + (fileOf(name, ".test.ts") ?? ""), "utf8");

  it("holds a case, a property, a limit and a refusal for every function", () => {
    const functions = named.filter((name) => typeof everything[name as keyof typeof everything] === "function");
    expect(functions.length).toBeGreaterThan(calculations.length + 40);
    expect(functions.flatMap((name) => lacking(name, textOf(name)))).toEqual([]);
    expect(lacking("sleyLength", "it(title, work);")).toEqual([
      "sleyLength: a case",
      "sleyLength: a property",
      "sleyLength: a limit and a refusal",
    ]);
  });
});
