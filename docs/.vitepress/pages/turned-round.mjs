// What solveFor makes of every input of every formula: the lines back to it, or why there are none.
import { calculations, maths } from "./handbook.mjs";
import { plain, table } from "./markdown.mjs";

const { formulaStyle, inWords, rearrangement, treeText } = maths;
const style = formulaStyle((name) => name);

function turned({ name, kebab, declaration }, field) {
  const found = rearrangement(declaration, field);
  const lines = found.ok ? found.lines.map((line) => `${line.name} = ${treeText(line.tree, style)}`) : [];
  return { name, kebab, field, lines, why: found.ok ? null : found.why.slice(found.why.indexOf(": ") + 2) };
}

export function turnedRound() {
  const rows = calculations.flatMap((one) => Object.keys(one.declaration.inputs).map((field) => turned(one, field)));
  const refused = rows.filter(({ why }) => why !== null);
  const reasons = [...new Set(refused.map(({ why }) => why))];
  return [
    "# Formulas turned round",
    `\`solveFor\` turns the ${calculations.length} formulas to ${rows.length - refused.length} of their ${rows.length} inputs. It refuses the others:`,
    table(
      ["reason", "inputs"],
      reasons.map((why) => [plain(why), refused.filter((one) => one.why === why).length]),
    ),
    table(
      ["formula", "input", "lines, or why there are none"],
      rows.map(({ name, kebab, field, lines, why }) => [
        `[${inWords(name)}](./formulas/${kebab}.md)`,
        plain(inWords(field)),
        plain(why ?? lines.join("; ")),
      ]),
    ),
  ].join("\n\n");
}
