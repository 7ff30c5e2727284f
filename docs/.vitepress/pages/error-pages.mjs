// A page for every code an error can have, with a call that is refused and what it answers.
import { readdirSync, readFileSync } from "node:fs";
import { runInNewContext } from "node:vm";
import { build } from "esbuild";
import { CODES } from "./errors.mjs";
import { maths, root } from "./handbook.mjs";
import { fence, list, table } from "./markdown.mjs";

const unions = {
  maths: ["packages/maths/src/engine/fault.ts", "RefusalCode"],
  stripes: ["packages/stripes/src/refusal/stripe-error.ts", "StripeErrorCode"],
};

/** The members of a union of texts, as its file has them. */
function codesOf([path, type]) {
  const text = readFileSync(root + path, "utf8");
  const at = text.indexOf(`export type ${type} =`);
  return [...text.slice(at, text.indexOf(";", at)).matchAll(/"([a-z-]+)"/gu)].map(([, code]) => code);
}

async function stripesSource() {
  const { outputFiles } = await build({
    entryPoints: [`${root}packages/stripes/src/index.ts`],
    bundle: true,
    format: "esm",
    write: false,
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString("base64")}`);
}

const stripes = await stripesSource();
const napkin = stripes.sequence([
  { colour: "natural", ends: 24 },
  { colour: "indigo", ends: 40 },
]);
const scopes = { maths: { ...maths, JSON }, stripes: { ...stripes, napkin, Map } };
const SAID = { maths: "QuantityError", stripes: "StripeError" };

/** What the call answers; it must be refused, and with this code. */
function refusalOf(name, code, call) {
  try {
    runInNewContext(call, scopes[name], { timeout: 5000 });
  } catch (error) {
    if (error.code === code) return error.message;
    throw new Error(`the example of "${code}" (${name}) is refused with "${error.code}": ${error.message}`);
  }
  throw new Error(`the example of "${code}" (${name}) is not refused`);
}

function pageOf(code, packages) {
  const { says, ...calls } = CODES[code];
  const parts = packages.flatMap((name) => {
    const call = calls[name];
    if (call === undefined) return [`## ${SAID[name]} of @thrum/${name}`];
    const setting = call.includes("napkin") ? "Where `napkin` is 24 natural, 40 indigo:\n\n" : "";
    return [
      `## ${SAID[name]} of @thrum/${name}`,
      `${setting}${fence("js", call)}`,
      `is refused with`,
      fence("text", refusalOf(name, code, call)),
    ];
  });
  return [
    `# ${code}`,
    says,
    ...parts,
    "Each fault has `code`, `function`, `path`, `expected`, `received`, `remedy` and `params`, what its sentence is made of; one error lists them all in `faults`, and `attempt` gives them without throwing. [All codes](./index.md)",
  ].join("\n\n");
}

/** The plan refuses with codes of the maths: those that its sources name. */
const planText = readdirSync(`${root}packages/plan/src`, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.includes(".test"))
  .map((file) => readFileSync(`${root}packages/plan/src/${file}`, "utf8"))
  .join("\n");

/** The pages, by path. */
export function errorPages() {
  const known = Object.fromEntries(Object.entries(unions).map(([name, union]) => [name, codesOf(union)]));
  const codes = [...new Set(Object.values(known).flat())];
  for (const code of codes)
    if (CODES[code] === undefined) throw new Error(`errors.mjs does not say what "${code}" means`);
  const packagesOf = (code) => Object.keys(known).filter((name) => known[name].includes(code));
  const rows = codes.map((code) => [
    `[${code}](./${code}.md)`,
    [...packagesOf(code), ...(planText.includes(`"${code}"`) ? ["plan"] : [])].join(", "),
    CODES[code].says.split(/(?<=[.:]) /u)[0].replace(/:$/u, "."),
  ]);
  const index = [
    "# Errors",
    "A refusal is never silent and never a wrong number. The codes are a closed set: a program may switch on them.",
    table(["code", "in", "means"], rows),
    list([
      "`attempt(f, input)` returns `{ ok: false, faults }` instead of throwing, for any function of any package.",
      "No input is clamped, and no answer is NaN.",
    ]),
  ].join("\n\n");
  return new Map([
    ["docs/errors/index.md", index],
    ...codes.map((code) => [`docs/errors/${code}.md`, pageOf(code, packagesOf(code))]),
  ]);
}
