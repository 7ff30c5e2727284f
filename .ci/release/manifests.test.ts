// What each package, workflow and citation must say before anything is published.
import { readdirSync, readFileSync } from "node:fs";
import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { addressed } from "./address.mjs";
import { packageNames, root } from "../support/built.mjs";

interface Manifest {
  readonly version: string;
  readonly license: string;
  readonly keywords: readonly string[];
  readonly types: string;
  readonly engines: { readonly node: string };
  readonly scripts: Readonly<Record<string, string>>;
  readonly dependencies?: Readonly<Record<string, string>>;
}

const text = (file: string): string => readFileSync(`${root}${file}`, "utf8");
const manifest = (name: string): Manifest => JSON.parse(text(`packages/${name}/package.json`)) as Manifest;

/** All that is needed at run time, by name: a new one is a decision, not a change in passing. */
const allowed = ["decimal.js", "fflate", "leven", "yaml"];

describe.each(packageNames)("@thrum/%s", (name) => {
  const { license, keywords, types, engines, scripts, dependencies = {} } = manifest(name);

  it("says its licence, its types, the Node it needs and five words to find it by", () => {
    expect({ license, types, node: engines.node }).toEqual({
      license: "MIT",
      types: "./dist/index.d.ts",
      node: ">=20.19",
    });
    expect(new Set(keywords).size).toBeGreaterThanOrEqual(5);
  });

  it("runs nothing when it is installed", () => {
    expect(Object.keys(scripts)).toEqual(["build"]);
  });

  it("is built without a change to what is committed, which pnpm generate alone writes", () => {
    const writers = [...text(".ci/build/generate.mjs").matchAll(/"(\.ci\/build\/[a-z-]+\.mjs)"/gu)];
    expect(writers.length).toBeGreaterThan(3);
    expect(writers.map(([, path = ""]) => path).filter((path) => scripts["build"]?.includes(path))).toEqual([]);
  });

  it("needs our packages and the few libraries that were chosen, each with its later mends", () => {
    const outside = Object.entries(dependencies).filter(([dependency]) => !dependency.startsWith("@thrum/"));
    expect(outside.filter(([dependency]) => !allowed.includes(dependency))).toEqual([]);
    expect(outside.filter(([, version]) => !/^\^\d+\.\d+\.\d+$/u.test(version))).toEqual([]);
  });
});

it("is cited by the version and licence that are published", () => {
  const { version, license } = manifest("maths");
  expect(text("CITATION.cff")).toMatch(new RegExp(`^cff-version: 1\\.2\\.0$[^]*^version: ${version}$`, "mu"));
  expect(text("CITATION.cff")).toContain(`license: ${license}`);
  expect(packageNames.map((name: string) => manifest(name).version)).toEqual(packageNames.map(() => version));
});

describe.each(readdirSync(`${root}.github/workflows`))("workflow %s", (file) => {
  const workflow = text(`.github/workflows/${file}`);

  it("pins every action by its digest and says which version that is", () => {
    const uses = [...workflow.matchAll(/uses: (.+)/gu)].map(([, action = ""]) => action);
    expect(uses).not.toEqual([]);
    expect(uses.filter((action) => !/^[\w./-]+@[0-9a-f]{40} # v\d+\.\d+\.\d+$/u.test(action))).toEqual([]);
  });

  it("may read and no more, unless a job says what else it needs", () => {
    expect(workflow).toMatch(/^permissions:\n {2}contents: read$/mu);
    expect(workflow.split("actions/checkout@").length).toBe(workflow.split("persist-credentials: false").length);
  });
});

describe("the release", () => {
  const release = text(".github/workflows/release.yml");
  const [packing = "", publishing = ""] = release.split(/^ {2}publish:$/mu);

  it("is tested, checked and packed by a job without an identity, on main only", () => {
    expect(packing).not.toContain("id-token");
    expect(packing).toContain("if: github.ref == 'refs/heads/main'");
    const steps = ["bash .ci/run", "address.mjs --check", "release:check", "tarballs.mjs", "upload-artifact"];
    const places = steps.map((step) => packing.indexOf(step));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it("is published by a job that runs nothing else, with a program that can prove where it comes from", () => {
    expect(publishing).toContain("needs: pack");
    expect(publishing).toContain("id-token: write");
    expect(publishing).toContain("npm publish --provenance");
    // npm 11.5.1, the first that publishes by identity, came with Node 24.5.
    expect(publishing).toMatch(/node-version: "24\.(?:[5-9]|\d\d)\.\d+"/u);
    expect(publishing).not.toMatch(/checkout|with-pnpm|npx|npm install|npm ci/u);
  });

  it("knows where the project lives from one line", () => {
    const address = "https://example.org/weavers/thrum";
    expect(addressed({ name: "x", license: "MIT", type: "module" }, address, "maths")).toEqual({
      name: "x",
      license: "MIT",
      homepage: `${address}#readme`,
      bugs: { url: `${address}/issues` },
      repository: { type: "git", url: `git+${address}.git`, directory: "packages/maths" },
      type: "module",
    });
    const { repository } = JSON.parse(text("package.json")) as { repository: string };
    for (const name of packageNames) expect(manifest(name)).toEqual(addressed(manifest(name), repository, name));
    const { status } = spawnSync(process.execPath, [`${root}.ci/release/address.mjs`, "--check"], { stdio: "pipe" });
    expect(status).toBe(repository === "" ? 1 : 0);
  });

  it("says for each package what a user finds in this version", () => {
    for (const name of packageNames) {
      expect(text(`packages/${name}/CHANGELOG.md`)).toContain(`\n## ${manifest(name).version}\n`);
      expect(manifest(name)).toMatchObject({ publishConfig: { access: "public", provenance: true } });
    }
  });
});

it("has a form for a number that differs from a book", () => {
  const form = text(".github/ISSUE_TEMPLATE/differs-from-a-book.yml");
  for (const asked of ["id: page", "id: printed", "id: ours"]) expect(form).toContain(asked);
});
