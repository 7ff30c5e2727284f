import { parseArgs } from "node:util";
import { nearName } from "../text/near-name.js";
import { shownText } from "../text/clean.js";
import type { PrintOptions } from "../index.js";

/** The forms a plan can take. */
export const FORMS = ["text", "json", "html"] as const;
export type Form = (typeof FORMS)[number];

/** Where an answer goes, and in which form. */
export interface Output {
  readonly form: Form;
  readonly file: string | null;
  readonly existing: "keep" | "replace";
}

/** What the command line asks for. */
export type Asked =
  | { readonly verb: "help" }
  | { readonly verb: "schema" }
  | { readonly verb: "new" }
  | { readonly verb: "next"; readonly job: string }
  | { readonly verb: "check"; readonly job: string }
  | { readonly verb: "reconcile"; readonly page: string }
  | (Output & { readonly verb: "compare"; readonly jobs: readonly [first: string, second: string] })
  | (Output & { readonly verb: "plan"; readonly job: string; readonly print: PrintOptions })
  | { readonly verb: "misread"; readonly says: string };

const VERBS = ["new", "check", "plan", "compare", "next", "reconcile", "schema", "help"];
const OPTIONS = {
  as: { type: "string" },
  to: { type: "string" },
  replace: { type: "boolean" },
  without: { type: "string" },
  help: { type: "boolean", short: "h" },
} as const;

type Misread = Extract<Asked, { readonly verb: "misread" }>;

function misread(says: string): Misread {
  return { verb: "misread", says };
}

/** "Was plan meant?", where a word is near one that is known. */
function meant(word: string, known: readonly string[]): string {
  const near = nearName(word, known);
  return near === undefined ? `Choose one of ${known.join(", ")}.` : `Was ${near} meant?`;
}

type Given = ReturnType<typeof parse>;

function parse(args: readonly string[]) {
  return parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true });
}

function outputOf({ as, to, replace }: Given["values"]): Output | Misread {
  const form = FORMS.find((one) => one === (as ?? "text"));
  if (form === undefined) return misread(`There is no form "${shownText(as ?? "")}". ${meant(as ?? "", FORMS)}`);
  if (to === "-") return misread("Without --to the answer is printed: leave it out.");
  if (to === "") return misread("--to needs the name of a file.");
  if (replace === true && to === undefined) return misread("--replace goes with --to FILE, the file to replace.");
  return { form, file: to ?? null, existing: replace === true ? "replace" : "keep" };
}

function planAsked(job: string, values: Given["values"]): Asked {
  const output = outputOf(values);
  if ("verb" in output) return output;
  const { without } = values;
  if (without === undefined) return { verb: "plan", job, print: {}, ...output };
  if (without !== "workings") {
    return misread(`Nothing called "${shownText(without)}" can be left out. ${meant(without, ["workings"])}`);
  }
  if (output.form === "json") return misread("--without goes with text and html: the data are always whole.");
  return { verb: "plan", job, print: { without }, ...output };
}

/** The options that a verb takes. */
const TAKES: Readonly<Record<string, readonly string[]>> = {
  plan: ["as", "to", "replace", "without"],
  compare: ["as", "to", "replace"],
};

function asked({ values, positionals }: Given): Asked {
  const [verb, job, ...others] = positionals;
  if (values.help === true || verb === undefined || verb === "help") return { verb: "help" };
  if (!VERBS.includes(verb)) return misread(`There is no "${shownText(verb)}". ${meant(verb, VERBS)}`);
  const options = Object.keys(values);
  const strange = options.filter((option) => !(TAKES[verb] ?? []).includes(option));
  if (strange.length > 0) {
    const takers = Object.entries(TAKES).flatMap(([taker, takes]) =>
      strange.every((one) => takes.includes(one)) ? [taker] : [],
    );
    return misread(`--${strange.join(" and --")} goes with ${takers.join(" and ")} only.`);
  }
  if (verb === "schema" || verb === "new") return job === undefined ? { verb } : misread(`${verb} takes no file.`);
  if (verb === "reconcile") {
    return job === undefined || others.length > 0
      ? misread("reconcile takes one file of printed figures.")
      : { verb, page: job };
  }
  if (job === undefined) return misread(`Which job file? Write thrum ${verb} job.yaml, or - for standard input.`);
  if (verb === "compare") {
    const [second, ...more] = others;
    if (second === undefined || more.length > 0) return misread("compare takes two job files.");
    if (job === "-" && second === "-") return misread("Standard input can be read only once.");
    const output = outputOf(values);
    return "verb" in output ? output : { verb, jobs: [job, second], ...output };
  }
  if (others.length > 0) return misread("One job file at a time.");
  return verb === "check" || verb === "next" ? { verb, job } : planAsked(job, values);
}

/** Reads the command line; what it cannot read it says in a sentence. */
export function askedFor(args: readonly string[]): Asked {
  try {
    return asked(parse(args));
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    return misread(shownText(error.message));
  }
}
