import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { describeWith } from "#ci/program.js";

interface Pack {
  readonly cases: readonly { readonly exact: string; readonly formula: string; readonly source: string }[];
  readonly conversions: readonly { readonly from: unknown }[];
  readonly formulas: Readonly<Record<string, unknown>>;
  readonly sources: Readonly<Record<string, unknown>>;
}

const published = createRequire(import.meta.url).resolve("@thrum/maths/case-pack.json");
const pack = JSON.parse(readFileSync(published, "utf8")) as Pack;
const schema = JSON.parse(readFileSync("packages/maths/case-pack.schema.json", "utf8")) as object;
const fits = new Ajv2020({ strict: true, strictTuples: false, allowUnionTypes: true }).compile(schema);

describe("the case pack", () => {
  it("fits its schema, which refuses a case without an exact answer and a sign it does not know", () => {
    expect(fits(pack), JSON.stringify(fits.errors)).toBe(true);
    const [first] = pack.cases;
    expect(fits({ ...pack, cases: [{ ...first, exact: "" }] })).toBe(false);
    expect(fits({ ...pack, more: 1 })).toBe(false);
    const unknownSign = { warpLength: { ...(pack.formulas["warpLength"] as object), lines: [["a", ["^", "1", "2"]]] } };
    expect(fits({ ...pack, formulas: unknownSign })).toBe(false);
  });

  it("has the formula and the source of every case", () => {
    for (const { formula, source } of pack.cases) {
      expect(pack.formulas).toHaveProperty([formula]);
      expect(pack.sources).toHaveProperty([source]);
    }
  });
});

describeWith("Python 3", (path) => {
  const check = (file: string): { readonly status: number | null; readonly stdout: string } =>
    spawnSync(path, ["examples/case-pack/check.py", file], { encoding: "utf8" });

  it("works out every case of the pack, in a program of under 70 lines", () => {
    const all = pack.cases.length + pack.conversions.length;
    const { status, stdout } = check(published);
    expect(stdout.trim()).toBe(`${String(all)} of ${String(all)} cases agree`);
    expect(status).toBe(0);
    expect(readFileSync("examples/case-pack/check.py", "utf8").split("\n").length).toBeLessThan(70);
  });

  it("works one formula in twenty lines", () => {
    const script = "examples/case-pack/one_formula.py";
    const { stdout } = spawnSync(path, [script, published], { encoding: "utf8" });
    // By hand: 21 + 2; 8 × 23 ÷ 0.9; ÷ 0.92; + 30; ÷ 36.
    const inches = ["cutLength = 23 in", "onLoom = 204.444 in", "threadInCloth = 222.222 in", "warp = 252.222 in"];
    expect(stdout.trim().split("\n")).toEqual([...inches, "7.00617 yd"]);
    expect(readFileSync(script, "utf8").trim().split("\n").length).toBeLessThanOrEqual(21);
  });

  it("tells a case whose answer was changed", () => {
    const [first, ...others] = pack.cases;
    const file = join(mkdtempSync(join(tmpdir(), "thrum-")), "case-pack.json");
    writeFileSync(file, JSON.stringify({ ...pack, cases: [{ ...first, exact: "123456789" }, ...others] }));
    expect(check(file).status).toBe(1);
  });
});
