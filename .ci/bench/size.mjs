// What a page pays for one function: bundled, minified, gzipped, beside decimal.js. Exit 1 past a budget.
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { built, mainModule, root } from "../support/built.mjs";
import { countAtMost, told } from "./row.mjs";
import { printTable } from "./table.mjs";

// A calculation: some 700 B of it remember units, frames and factors, which made it three times as quick.
// What a rule of thumb reckons in, converted at the door, is 300 of it; 180 say of an answer out of range what it is.
// A fault in one shape for every package, with what its sentence is made of, is some 800 B of it and 200 to 900 of the stripes.
// The check: most of it are the operators that make the wrong sums of any formula, with their sentences: the README
// beside this file. 500 B of it look for pairs of them, when a verdict is asked for these.
// Stripes: the larger functions read text and refuse it by the character; all of them together are some seventy functions.
const budgets = {
  calculation: 9700,
  furtherCalculation: 250,
  // With all it pulls, as a program pays that only catches an error.
  error: 2000,
  // The list of formulas is 11 kB of sentences, twenty formulas more than when it was drawn up; the other lists bring every unit with what makes a unit.
  catalogue: 15_000,
  everyList: 19_200,
  // A calculation, with the units it may name and the names of all that may be loaded: 3 kB of those.
  loaded: 16_000,
  checking: 19_700,
  sequenceFunction: 2400,
  allSequences: 8000,
  // The largest reads a list of stripes, by a legend or by the names themselves, an item a line.
  stripesFunction: 2800,
  // Of it 900 B Lab and the difference of two colours, and as much the readings in the shape of every package.
  allStripes: 16_700,
  // A job read and written: drawn up for 8 kB. Every key of the job has since got its form, and each form its sentences of what
  // is expected and what to write instead: of 48 kB minified a third are those words. It was 60 while it came with all figures.
  jobs: 19_300,
  // The plan of a job made by a program, so without a YAML parser: 14 kB of it check that job by the forms above, 30 are the
  // two hundred and more figures and parts with the sentences they are told in, 3 what works them out. The cheapest mixture of
  // packages, a twisted fringe and the sums behind the knots took the last of it.
  figures: 51_500,
  // Two renderers and a score of pages, of which a third are the pictures and the style of the sheets.
  views: 75_500,
  // Beside those 47: 12 kB decimal.js, 25 the formulas, units and readers of the maths. Drawn up for 45 in all, at two
  // thirds of the figures and without joining, winding, knots, and what is told of a warp.
  planned: 93_200,
};

/** Bytes of a module bundled and minified, decimal.js beside it where that is `external`. */
async function bundled(contents, external) {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root },
    bundle: true,
    minify: true,
    format: "esm",
    target: "es2022",
    external,
    write: false,
  });
  return gzipSync(outputFiles[0].contents, { level: 9 }).length;
}

const BESIDE = ["decimal.js", "*/decimal.js"];

const bytes = (name, imported) =>
  bundled(`export { ${imported.join(", ")} } from ${JSON.stringify(mainModule(name))};`, BESIDE);

/** What a page fetches that loads one formula by its name: its entry, that formula, and what the two bring with them. */
async function loaded(formula) {
  const catalogue = JSON.stringify(mainModule("maths").replace("index.js", "catalogue.js"));
  const contents = `import { loadFormula } from ${catalogue}; loadFormula(location.hash).then(console.log);`;
  const { outputFiles, metafile } = await build({
    stdin: { contents, resolveDir: root },
    bundle: true,
    minify: true,
    format: "esm",
    target: "es2022",
    splitting: true,
    outdir: "out",
    external: BESIDE,
    write: false,
    metafile: true,
    absWorkingDir: root,
  });
  const names = Object.keys(metafile.outputs);
  const entry = names.find((name) => metafile.outputs[name].entryPoint === "<stdin>");
  const own = names.find((name) => metafile.outputs[name].entryPoint?.endsWith(`/formulas/${formula}.js`));
  if (entry === undefined || own === undefined) throw new Error(`no chunk holds ${formula} alone`);
  const fetched = new Set([entry, own]);
  for (const name of fetched)
    for (const { kind, path } of metafile.outputs[name].imports)
      if (kind === "import-statement" && path in metafile.outputs) fetched.add(path);
  const contentsOf = (name) => outputFiles.find(({ path }) => path.endsWith(name)).contents;
  return [...fetched].reduce((sum, name) => sum + gzipSync(contentsOf(name), { level: 9 }).length, 0);
}

async function namesWhere(name, holds) {
  const names = Object.entries(await built(name)).filter(([, value]) => holds(value));
  if (names.length === 0) throw new Error(`@thrum/${name} exports nothing of the kind to be measured`);
  return names.map(([exported]) => exported);
}

/** The row of the largest of some figures, told by the name of the function it belongs to. */
function largest(what, names, figures, budget) {
  const figure = Math.max(...figures);
  return row(`${what} (${names[figures.indexOf(figure)]})`, figure, budget);
}

const row = (line, figure, budget) => countAtMost(line, figure, budget, "B");

async function mathsRows() {
  const names = await namesWhere("maths", (value) => typeof value === "function" && "declaration" in value);
  const units = await namesWhere("maths", (value) => typeof value === "function" && "scale" in value);
  const all = await bytes("maths", [...names, ...units]);
  const alone = [];
  const saved = [];
  for (const name of names) {
    alone.push(await bytes("maths", [name]));
    const others = names.filter((other) => other !== name);
    saved.push(all - (await bytes("maths", [...others, ...units])));
  }
  const explaining = ["warpLength", "explain", "asText"];
  const checking = (await bytes("maths", [...explaining, "check"])) - (await bytes("maths", explaining));
  const error = await bundled(`export { QuantityError } from ${JSON.stringify(mainModule("maths"))};`, []);
  const catalogue = JSON.stringify(mainModule("maths").replace("index.js", "catalogue.js"));
  const listed = (lists) => bundled(`export { ${lists} } from ${catalogue};`, [...BESIDE, "./index.js"]);
  return [
    row("QuantityError alone, with all it needs", error, budgets.error),
    row("the list of the formulas", await listed("formulaEntries"), budgets.catalogue),
    row(
      "every list of the catalogue",
      await listed("formulaEntries, unitEntries, kindEntries, countSystems"),
      budgets.everyList,
    ),
    row("one formula loaded by its name, with what loads it", await loaded("warp-length"), budgets.loaded),
    row("check, beside explain", checking, budgets.checking),
    largest("largest calculation alone", names, alone, budgets.calculation),
    largest("largest further one, beside the others and the units", names, saved, budgets.furtherCalculation),
  ];
}

/** What every use of the stripes begins with. */
const algebra =
  "sequence merge join repeat reverse mirror pivot slice rotate recolour endsPerColour colourOfEnd edges everyEnd".split(
    " ",
  );

async function stripesRows() {
  const names = await namesWhere("stripes", (value) => typeof value === "function");
  const alone = (of) => Promise.all(of.map((name) => bytes("stripes", [name])));
  const drawing = ["stripesSvg", "letteredSvg"];
  return [
    largest(
      "larger of the pictures in colours and in letters",
      drawing,
      await alone(drawing),
      budgets.sequenceFunction,
    ),
    largest("largest function of the sequences", algebra, await alone(algebra), budgets.sequenceFunction),
    row("all of the sequences together", await bytes("stripes", algebra), budgets.allSequences),
    largest("largest stripes function", names, await alone(names), budgets.stripesFunction),
    row("all of stripes", await bytes("stripes", names), budgets.allStripes),
  ];
}

const PLAN = ["@thrum/maths", "@thrum/stripes", "decimal.js", "yaml"];

/** The plan beside what it is built on, and a job planned with all that takes. */
async function planRows() {
  const of = (imported, external) =>
    bundled(`export { ${imported.join(", ")} } from ${JSON.stringify(mainModule("plan"))};`, external);
  const views = ["planWarp", "planText", "planHtml"];
  return [
    row("readJob and jobText, beside maths", await of(["readJob", "jobText"], PLAN), budgets.jobs),
    row("planWarp, beside maths", await of(["planWarp"], PLAN), budgets.figures),
    row("planWarp, planText and planHtml, beside maths", await of(views, PLAN), budgets.views),
    row("planWarp, with all it needs", await of(["planWarp"], []), budgets.planned),
  ];
}

/** One conversion by general libraries, with all they need, and the same by ours with decimal.js: no budget, a comparison. */
async function conversionRows() {
  const ways = {
    "@thrum/maths": `import { metres, yards } from ${JSON.stringify(mainModule("maths"))}; console.log(yards(3).in(metres));`,
    mathjs: 'import { unit } from "mathjs"; console.log(unit(3, "yd").toNumber("m"));',
    "js-quantities": 'import Qty from "js-quantities"; console.log(Qty(3, "yd").to("m").scalar);',
    "convert-units": 'import convert from "convert-units"; console.log(convert(3).from("yd").to("m"));',
    unitmath: 'import unit from "unitmath"; console.log(unit(3, "yd").to("m").getValue());',
    "safe-units":
      'import { Measure, meters, yards } from "safe-units"; console.log(Measure.of(3, yards).valueIn(meters));',
  };
  const figures = Object.entries(ways).map(async ([name, text]) =>
    told(`one conversion by ${name}, with all it needs`, await bundled(text, []), "B"),
  );
  return Promise.all(figures);
}

const rows = [...(await mathsRows()), ...(await stripesRows()), ...(await planRows()), ...(await conversionRows())];
process.exitCode = printTable(rows);
