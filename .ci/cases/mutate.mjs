// pnpm mutate: changes every operator, name, number and rounding of each formula, and every size of the units, one at a
// time, and asks whether the cited cases notice.
import { mathsSource, calculationsOf } from "../support/source.mjs";

const REQUIRED = 0.95;
const maths = await mathsSource();
const { run, dimensionsOf, cases, argumentsOf, digitsAgreeing, treeText, formulaStyle } = maths;

const OPERATORS = ["+", "−", "×", "÷"];
const ROUNDINGS = ["roundUp", "roundDown", "nearest"];

/** All trees that differ from this one in one place; `others` gives the names that may stand for a name. */
function changed(tree, others) {
  if (tree.op === "number") return [{ op: "number", text: String(Number(tree.text) + 1) }];
  if (tree.op === "name") return others(tree.name).map((name) => ({ op: "name", name }));
  if (tree.of !== undefined) {
    const inside = changed(tree.of, others).map((of) => ({ ...tree, of }));
    const roundings = ROUNDINGS.includes(tree.op) ? ROUNDINGS.filter((op) => op !== tree.op) : [];
    return [...inside, tree.of, ...roundings.map((op) => ({ ...tree, op }))];
  }
  return [
    ...OPERATORS.filter((op) => op !== tree.op).map((op) => ({ ...tree, op })),
    ...changed(tree.left, others).map((left) => ({ ...tree, left })),
    ...changed(tree.right, others).map((right) => ({ ...tree, right })),
  ];
}

/** Every formula with one place changed. */
function mutantsOf({ lines, ...declaration }) {
  const powers = dimensionsOf({ lines, ...declaration });
  return lines.flatMap((line, at) => {
    const known = [...powers.keys()].filter((name) => !lines.slice(at).some((later) => later.name === name));
    const alike = (name) =>
      known.filter((other) => other !== name && String(powers.get(other)) === String(powers.get(name)));
    return changed(line.tree, (name) => alike(name).slice(0, 2)).map((tree) => ({
      says: `${line.name} = ${treeText(
        tree,
        formulaStyle((name) => name),
      )}`,
      declaration: { ...declaration, lines: lines.map((one, i) => (i === at ? { ...one, tree } : one)) },
    }));
  });
}

function survives(declaration, own) {
  return own.every((one) => {
    try {
      const { value, unit } = run(declaration, argumentsOf(one)[0]);
      const answer =
        unit === null ? value.toNumber() : maths.inUnit(unit(value.toString()), maths[one.read]).in(maths[one.read]);
      return digitsAgreeing(answer, one.exact) >= 12;
    } catch {
      return false;
    }
  });
}

const survivors = [];
let total = 0;
for (const [name, { declaration }] of calculationsOf(maths)) {
  const own = cases.filter(({ call }) => call === name);
  if (own.length === 0) {
    survivors.push(`${name}: no cited case`);
    total += 1;
    continue;
  }
  for (const mutant of mutantsOf(declaration)) {
    total += 1;
    if (survives(mutant.declaration, own)) survivors.push(`${name}: ${mutant.says}`);
  }
}

/** The numbers in the definitions of the units: each is made one larger in a bundle of its own. */
async function seedMutants() {
  const texts = new Map();
  await mathsSource((path, read) => {
    if (/^units\/[a-z-]+\.ts$/u.test(path)) texts.set(path, read());
    return null;
  });
  return [...texts].flatMap(([path, text]) =>
    [...text.matchAll(/(?<=(?:size|length|mass): \[[^\]]*?)\b\d+\b/gu)].map((found) => ({
      path,
      says: `${path}: ${text.slice(text.lastIndexOf("name:", found.index), found.index + found[0].length).replace(/\s+/gu, " ")}`,
      text: `${text.slice(0, found.index)}${String(Number(found[0]) + 1)}${text.slice(found.index + found[0].length)}`,
    })),
  );
}

/** A case that is refused notices as well as one that differs. */
function isUnnoticed(selfTest) {
  try {
    const { cases: all, agreeing } = selfTest();
    return agreeing === all;
  } catch {
    return false;
  }
}

for (const { path, text, says } of await seedMutants()) {
  total += 1;
  const { selfTest } = await mathsSource((file) => (file === path ? text : null));
  if (isUnnoticed(selfTest)) survivors.push(`${says} made one larger`);
}

const killed = 1 - survivors.length / total;
process.stdout.write(`${survivors.map((line) => `survived  ${line}`).join("\n")}\n`);
process.stdout.write(
  `${total} mutants, ${total - survivors.length} noticed by the cited cases: ${(100 * killed).toFixed(1)} %\n`,
);
process.exitCode = killed >= REQUIRED ? 0 : 1;
