import { parseArgs } from "node:util";
import { nearName } from "../job/near-name.js";
import { shownText } from "../text/clean.js";

/** The forms a plan can take. */
export const FORMS = ["text", "json", "html"] as const;
export type Form = (typeof FORMS)[number];

/** What the command line asks for. */
export type Asked =
  | { readonly verb: "help" }
  | { readonly verb: "schema" }
  | { readonly verb: "check"; readonly job: string }
  | { readonly verb: "compare"; readonly jobs: readonly [first: string, second: string] }
  | {
      readonly verb: "plan";
      readonly job: string;
      readonly form: Form;
      readonly file: string | null;
      readonly existing: "keep" | "replace";
    }
  | { readonly verb: "misread"; readonly says: string };

const VERBS = ["plan", "check", "compare", "schema", "help"];
const OPTIONS = {
  as: { type: "string" },
  to: { type: "string" },
  replace: { type: "boolean" },
  help: { type: "boolean", short: "h" },
} as const;

function misread(says: string): Asked {
  return { verb: "misread", says };
}

/** "Was plan meant?", where a word is near one that is known. */
function meant(word: string, known: readonly string[]): string {
  const near = nearName(word, known);
  return near === null ? `Choose one of ${known.join(", ")}.` : `Was ${near} meant?`;
}

type Given = ReturnType<typeof parse>;

function parse(args: readonly string[]) {
  return parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true });
}

function planAsked(job: string, { as, to, replace }: Given["values"]): Asked {
  const form = FORMS.find((one) => one === (as ?? "text"));
  if (form === undefined) return misread(`There is no form "${shownText(as ?? "")}". ${meant(as ?? "", FORMS)}`);
  if (to === "-") return misread("Without --to the plan is printed: leave it out.");
  if (to === "") return misread("--to needs the name of a file.");
  if (replace === true && to === undefined) return misread("--replace goes with --to FILE, the file to replace.");
  return { verb: "plan", job, form, file: to ?? null, existing: replace === true ? "replace" : "keep" };
}

function asked({ values, positionals }: Given): Asked {
  const [verb, job, ...others] = positionals;
  if (values.help === true || verb === undefined || verb === "help") return { verb: "help" };
  if (!VERBS.includes(verb)) return misread(`There is no "${shownText(verb)}". ${meant(verb, VERBS)}`);
  const options = Object.keys(values);
  if (verb !== "plan" && options.length > 0) return misread(`--${options.join(" and --")} goes with plan only.`);
  if (verb === "schema") return job === undefined ? { verb } : misread("schema takes no file.");
  if (job === undefined) return misread(`Which job file? Write thrum ${verb} job.yaml, or - for standard input.`);
  if (verb === "compare") {
    const [second, ...more] = others;
    if (second === undefined || more.length > 0) return misread("compare takes two job files.");
    if (job === "-" && second === "-") return misread("Standard input can be read only once.");
    return { verb, jobs: [job, second] };
  }
  if (others.length > 0) return misread("One job file at a time.");
  return verb === "check" ? { verb, job } : planAsked(job, values);
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
