// Every @example of a public comment and every ts block of README and docs is run, and each `// value` it shows is checked.
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runInNewContext } from "node:vm";
import * as maths from "@thrum/maths";
import * as verification from "@thrum/maths/verification";
import * as catalogue from "@thrum/maths/catalogue";
import * as define from "@thrum/maths/define";
import * as plan from "@thrum/plan";
import * as sheets from "@thrum/sheets";
import * as sheetFunctions from "@thrum/sheets/functions";
import * as stripes from "@thrum/stripes";
import { transform } from "esbuild";
import { describe, expect, it } from "vitest";
import { exampleText } from "../support/example-jobs.js";

const root: string = fileURLToPath(new URL("../..", import.meta.url));
type Scope = Readonly<Record<string, unknown>>;

/** What an example may use without importing it: its own package, and for documents all of them. */
const scopes: Readonly<Record<string, Scope>> = {
  maths: { ...maths, ...verification, ...catalogue, ...define },
  stripes: { ...stripes },
  plan: { ...maths, ...plan },
  sheets: { ...maths, ...sheets },
};
const everything: Scope = {
  ...sheetFunctions,
  ...plan,
  ...sheets,
  ...stripes,
  ...verification,
  ...catalogue,
  ...define,
  ...maths,
};

function filesIn(folder: string, ends: string): readonly string[] {
  const files = readdirSync(root + folder, { recursive: true, encoding: "utf8" });
  return files
    .filter((file) => file.endsWith(ends) && !file.includes("node_modules") && !file.includes(".vitepress"))
    .map((file) => `${folder}/${file}`);
}

/** The examples of a source file: what follows `@example` in a comment, to the next tag or its end. */
function examplesIn(file: string): readonly string[] {
  const text = readFileSync(root + file, "utf8");
  return [...text.matchAll(/@example\s([^@]*?)(?=\n\s*\*\/|\s\*\/|\n\s*\* @)/gu)].map(([, example = ""]) =>
    example
      .replace(/^\s*\* ?/gmu, "")
      .replace(/^```\w*$/gmu, "")
      .trim(),
  );
}

function blocksIn(file: string): readonly string[] {
  const text = readFileSync(root + file, "utf8");
  return [...text.matchAll(/```ts\n([\s\S]*?)```/gu)].map(([, block = ""]) => block);
}

const modules: Readonly<Record<string, Scope>> = {
  "@thrum/maths": { ...maths },
  "@thrum/maths/catalogue": { ...catalogue },
  "@thrum/maths/define": { ...define },
  "@thrum/maths/verification": { ...verification },
  "@thrum/stripes": { ...stripes },
  "@thrum/plan": { ...plan },
  "@thrum/sheets": { ...sheets },
  "@thrum/sheets/functions": { ...sheetFunctions },
};

/** Names that a block imports, but that its package does not export. */
function missingImports(block: string): readonly string[] {
  return [...block.matchAll(/^import \{([^}]*)\} from "(@thrum\/[^"]+)";$/gmu)].flatMap(([, names = "", from = ""]) =>
    names
      .split(",")
      .map((name) => name.trim())
      .filter((name) => name !== "" && !Object.hasOwn(modules[from] ?? {}, name))
      .map((name) => `${name} from ${from}`),
  );
}

function shownAs(value: unknown): string {
  return value === undefined ? "undefined" : JSON.stringify(value);
}

/** The place of the first Map, Set or bigint in what a function gave; null where all of it is data that JSON can hold. */
function noData(value: unknown, place: string, above: readonly unknown[] = []): string | null {
  const of = Object.prototype.toString.call(value).slice(8, -1);
  if (/^(?:Map|Set|WeakMap|WeakSet|BigInt)$/u.test(of)) return `${place}: a ${of}`;
  if (typeof value !== "object" || value === null || above.includes(value) || above.length > 12) return null;
  if (ArrayBuffer.isView(value) || value instanceof Promise) return null;
  for (const [key, part] of Object.entries(value).slice(0, 200)) {
    const found = noData(part, `${place}.${key}`, [...above, value]);
    if (found !== null) return found;
  }
  return null;
}

const called = new Set<string>();
const kept: string[] = [];

/** The functions of a scope, each watched for what it gives. A unit, a calculation and a class stay themselves. */
function watched(scope: Scope): Scope {
  const watch = ([name, one]: [string, unknown]): [string, unknown] => {
    if (typeof one !== "function" || "scale" in one || "declaration" in one || /^[A-Z]/u.test(name)) return [name, one];
    const apply = (target: (...given: unknown[]) => unknown, self: unknown, given: unknown[]): unknown => {
      const value = Reflect.apply(target, self, given);
      called.add(name);
      const found = noData(value, name);
      if (found !== null) kept.push(found);
      return value;
    };
    return [name, new Proxy(one as (...given: unknown[]) => unknown, { apply })];
  };
  return Object.fromEntries(Object.entries(scope).map(watch));
}

/** Lines that end in a comment show what they give; a shown number that ends in … is its beginning. */
async function run(snippet: string, scope: Scope): Promise<number> {
  const found: (readonly [shown: string, value: unknown])[] = [];
  const lines = snippet.split("\n").map((line) => {
    const [, code, shown] = /^(?!\s*\/\/)(.*\S)\s*\/\/ (.+)$/u.exec(line) ?? [];
    const expression = code?.replace(/;$/u, "");
    return expression === undefined ? line : `show(${JSON.stringify(shown)}, ${expression});`;
  });
  const withoutImports = lines.join("\n").replace(/^import [^;]*;$/gmu, "");
  const { code } = await transform(withoutImports, { loader: "ts", format: "esm" });
  const show = (shown: string, value: unknown): void => {
    found.push([shown, value]);
  };
  runInNewContext(code, { Map, ...watched(scope), show }, { timeout: 5000 });
  for (const [shown, value] of found) {
    const cut = shown.indexOf("…");
    if (cut >= 0) expect(shownAs(value).slice(0, cut)).toBe(shown.slice(0, cut));
    else expect(shownAs(value)).toBe(shownAs(runInNewContext(`(${shown})`)));
  }
  return found.length;
}

const sources = ["maths", "stripes", "plan", "sheets"].flatMap((name) => filesIn(`packages/${name}/src`, ".ts"));
const documents = ["README.md", ...filesIn("docs", ".md"), ...filesIn("packages", "README.md")];

describe("every example shown in a comment gives what it says", () => {
  for (const file of sources) {
    for (const [index, example] of examplesIn(file).entries()) {
      it(`${file} ${String(index + 1)}`, async () => {
        expect(await run(example, scopes[file.split("/")[1] ?? ""] ?? everything)).toBeGreaterThan(0);
      });
    }
  }
});

describe("every ts block of the documents gives what it says", () => {
  for (const file of documents) {
    for (const [index, block] of blocksIn(file).entries()) {
      it(`${file} ${String(index + 1)}`, async () => {
        expect(missingImports(block)).toEqual([]);
        expect(await run(block, everything)).toBeGreaterThan(0);
      });
    }
  }
});

describe("what a function gives", () => {
  it("is data: no Map, no Set and no bigint anywhere in it, of every function there is", () => {
    expect(kept).toEqual([]);
    const reports = catalogue.formulaEntries.filter(({ what }) => what === "report").map(({ name }) => name);
    const listed = [...reports, ...Object.keys(stripes).filter((name) => /^(?!attempt$|noEnds$)[a-z]/u.test(name))];
    expect(listed.filter((name) => !called.has(name))).toEqual([]);
    const read = plan.readJob(exampleText("2-hall-napkins"));
    if (!read.ok) throw new Error("it reads");
    const planned = plan.planWarp(read.value);
    for (const given of [read, planned, plan.nextJob(planned), plan.planSums(planned), plan.jobSchema()])
      expect(noData(given, "plan")).toBeNull();
  });
});
