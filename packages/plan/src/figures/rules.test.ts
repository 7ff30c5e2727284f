import { readFileSync, readdirSync } from "node:fs";
import { asText, isCalculation, isQuantity } from "@thrum/maths";
import { expect, it } from "vitest";
import type { Node } from "../core/source.js";
import { readsOf } from "../core/reads.js";
import { LISTED, NAMES } from "../data/listed.js";
import { PLAN } from "./list.js";

/** Every node of the list, the nameless ways too. */
function allNodes(): readonly Node[] {
  const seen = new Set<Node>();
  const walk = (node: Node): void => {
    if (seen.has(node)) return;
    seen.add(node);
    readsOf(PLAN, node).forEach(walk);
  };
  for (const { node } of LISTED) walk(node);
  return [...seen];
}

const nodes = allNodes();

/** What a source stands for, by the name it has in the plan or in the job. */
function nameOf(node: Node): string {
  const name = NAMES.get(node);
  if (name !== undefined) return name.join(".");
  if (node.is === "key") return `job.${node.path.join(".")}`;
  return "of" in node ? `${nameOf(node.of)}${node.is === "field" ? `.${node.field}` : ""}` : node.is;
}

/** A bound that decides in which unit an amount is shown, and is never printed. */
const BOUNDS = ["packages/plan/src/views/formats.ts"];

it("reckons nothing outside the handbook", () => {
  for (const folder of ["figures", "views", "data"]) {
    const path = `packages/plan/src/${folder}/`;
    for (const file of readdirSync(path).filter((one) => !BOUNDS.includes(path + one))) {
      const imports = readFileSync(path + file, "utf8").match(/import \{[^}]*\} from "@thrum\/maths"/gu) ?? [];
      expect(imports.join().match(/\b(?:sum|difference|times|ratio)\b/gu) ?? [], path + file).toEqual([]);
    }
  }
});

/** What is counted by a key, by what a part made, or by a figure of several ways. */
const COUNTED: Readonly<Record<string, string>> = {
  "job.betweenPieces.picks": "picks",
  "job.oldWarp.ends": "threads",
  "loom.ends": "ends",
  "piece.entriesOf": "entries",
  "piece.forSale": "entries",
  "piece.more": "entries",
  "piece.number": "entries",
  "piece.others": "entries",
  "remaining.number": "entries",
};

/** What a source counts; null for what no key changes. */
function countedBy(node: Node): readonly (string | null)[] {
  const known = COUNTED[nameOf(node)];
  if (known !== undefined) return [known];
  if (node.is === "counted") return [node.noun ?? `nothing, it is a word: ${nameOf(node)}`];
  if (node.is === "figure" && isCalculation(node.calculation)) return [node.calculation.declaration.result.noun];
  if (node.is === "always") return [null];
  if (node.is === "these") return node.ones.flatMap(countedBy);
  return "of" in node ? countedBy(node.of) : [`nothing that is said: ${nameOf(node)}`];
}

it("wires to each whole input what is counted in its noun", () => {
  let wired = 0;
  for (const node of nodes) {
    if (node.is !== "figure" || !isCalculation(node.calculation)) continue;
    const { name, inputs } = node.calculation.declaration;
    for (const [field, input] of Object.entries(inputs)) {
      const { what, noun } = input.member ?? input;
      const source = node.inputs[field];
      if (what !== "whole" || source === undefined) continue;
      const counted = countedBy(source).filter((one) => one !== null);
      expect(
        counted.filter((one) => one !== noun),
        `${nameOf(node)}: ${name} counts ${noun} in ${field}`,
      ).toEqual([]);
      wired += counted.length;
    }
  }
  expect(wired).toBeGreaterThan(25);
});

/** Where *not named* means *there is none*, with the none. */
const NONE: readonly string[] = [
  'job.join.order: "from end 1"',
  "job.oldWarp.faults: []",
  "job.oldWarp.none: false",
  "job.pieces.*.fringeEachEnd: 0 in",
  "job.pieces.*.hemEachEnd: 0 in",
  "job.winding.extra: []",
  "job.yarns: {}",
  "loom.ways: []",
];

it("takes for none only what is none where it is not named, and never a loss, a waste or a price", () => {
  const found = nodes.flatMap((node) => {
    if (node.is !== "orNone" || node.none.is !== "always" || node.none.value === null) return [];
    const { value } = node.none;
    const told = isQuantity(value) ? asText(value) : JSON.stringify(value);
    return [`${nameOf(node.of)}: ${told}`];
  });
  expect([...new Set(found)].sort((a, b) => (a < b ? -1 : 1))).toEqual(NONE);
  expect(NONE.filter((one) => /lost|loss|takeUp|waste|price|cost|ToFinished/iu.test(one))).toEqual([]);
});

it("gives a path to one figure alone, and a label to every figure", () => {
  const paths = LISTED.map(({ group, name }) => `${group}.${name}`);
  expect(new Set(paths).size).toBe(paths.length);
  const labels = LISTED.flatMap(({ node }) => ("label" in node && node.label !== null ? [node.label] : []));
  expect(labels.filter((label) => label.trim() === "" || label.length > 48)).toEqual([]);
});
