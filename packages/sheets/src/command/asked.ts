import { parseArgs } from "node:util";
import { shownText } from "@thrum/plan/files";

/** What the command line asks for. */
export type Asked =
  | { readonly verb: "help" }
  | { readonly verb: "misread"; readonly says: string }
  | {
      readonly verb: "write";
      readonly job: string;
      /** Null for standard output. */
      readonly file: string | null;
      readonly existing: "keep" | "replace";
    };

const OPTIONS = {
  to: { type: "string" },
  replace: { type: "boolean" },
  help: { type: "boolean", short: "h" },
} as const;

function misread(says: string): Asked {
  return { verb: "misread", says };
}

/** Reads the command line; what it cannot read it says in a sentence. */
export function askedFor(args: readonly string[]): Asked {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true });
    const [job, ...others] = positionals;
    if (values.help === true || (job === undefined && Object.keys(values).length === 0)) return { verb: "help" };
    if (job === undefined) return misread("Which job file? Write thrum-sheets job.yaml, or - for standard input.");
    if (others.length > 0) return misread("One job file at a time; name the workbook with --to FILE.");
    if (values.to === "-") return misread("Without --to the workbook goes to standard output: leave it out.");
    if (values.to === "") return misread("--to needs the name of a file.");
    if (values.replace === true && values.to === undefined)
      return misread("--replace goes with --to FILE, the file to replace.");
    return { verb: "write", job, file: values.to ?? null, existing: values.replace === true ? "replace" : "keep" };
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    return misread(shownText(error.message));
  }
}
