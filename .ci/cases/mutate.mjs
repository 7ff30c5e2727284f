// pnpm mutate: changes every operator, name, number and rounding of each formula, and every size of the units, one at a
// time, and asks whether the cited cases notice.
import { calculationsOf, loadedFrom, mathsSource, mathsText } from "../support/source.mjs";

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

/** The numbers in the definitions of the units, each in the text under a name of its own. */
const seeds = [];
const withNames = await mathsText((path, read) => {
  if (!/^units\/[a-z-]+\.ts$/u.test(path)) return null;
  const text = read();
  return text.replace(/(?<=(?:size|length|mass): \[[^\]]*?)\b\d+\b/gu, (number, at) => {
    const told = text.slice(text.lastIndexOf("name:", at), at + number.length).replace(/\s+/gu, " ");
    return `SEED_${String(seeds.push({ number: Number(number), says: `${path}: ${told}` }) - 1)}_`;
  });
});

const withOneLarger = (seed) =>
  withNames.replace(/\bSEED_(\d+)_/gu, (_, at) => String(seeds[at].number + (Number(at) === seed ? 1 : 0)));

/** A case that is refused notices as well as one that differs. */
function differs(mutant, one) {
  try {
    return digitsAgreeing(mutant.readOut(mutant[one.call](...mutant.argumentsOf(one)), one), one.exact) < 12;
  } catch {
    return true;
  }
}

// What noticed the last is asked first: neighbours are noticed by the same cases.
let asked = cases;
for (const [at, { says }] of seeds.entries()) {
  total += 1;
  const mutant = await loadedFrom(withOneLarger(at));
  const noticed = asked.find((one) => differs(mutant, one));
  if (noticed === undefined) survivors.push(`${says} made one larger`);
  else asked = [noticed, ...asked.filter((one) => one !== noticed)];
}

const killed = 1 - survivors.length / total;
process.stdout.write(`${survivors.map((line) => `survived  ${line}`).join("\n")}\n`);
process.stdout.write(
  `${total} mutants, ${total - survivors.length} noticed by the cited cases: ${(100 * killed).toFixed(1)} %\n`,
);
process.exitCode = killed >= REQUIRED ? 0 : 1;
