import { Composer, Parser } from "yaml";
import type { CST, Document, LineCounter } from "yaml";
import type { Fault } from "./fault.js";
import { printable } from "./fault.js";

type Refused = Omit<Fault, "function">;
interface Composed {
  readonly document: Document | null;
  readonly fault: Refused | null;
}

const DEEPEST = 64;
const NO_REFERENCES = "every value written out";

/** What a job file may not hold though YAML may; null where the token is none of it. */
function tokenFault({
  type,
  source,
}: {
  readonly type: string;
  readonly source?: string;
}): Pick<Fault, "expected" | "received" | "remedy"> | null {
  const shown = printable(source ?? "");
  switch (type) {
    case "anchor":
    case "alias":
      return {
        expected: NO_REFERENCES,
        received: shown,
        remedy: "Write the value again where it is meant, or put the text in quotes.",
      };
    case "tag":
      return {
        expected: "values without tags",
        received: shown,
        remedy: "Take the tag away, or put the text in quotes.",
      };
    case "directive":
      return { expected: "a job file without directives", received: shown, remedy: "Take the line away." };
    default:
      return null;
  }
}

type Token = CST.Token | CST.SourceToken;

interface Item {
  readonly start: readonly CST.SourceToken[];
  readonly key?: CST.Token | null;
  readonly sep?: readonly CST.SourceToken[];
  readonly value?: CST.Token;
}

/** The tokens inside a token. */
function insideOf(token: Token): readonly Token[] {
  if (token.type === "document") return [...token.start, ...(token.value === undefined ? [] : [token.value])];
  if (token.type === "block-scalar") return token.props;
  if (token.type !== "block-map" && token.type !== "block-seq" && token.type !== "flow-collection") return [];
  const items: readonly Item[] = token.items;
  return items.flatMap(({ start, key, sep = [], value }) => {
    return [...start, ...(key ? [key] : []), ...sep, ...(value === undefined ? [] : [value])];
  });
}

/** The first token that a job file may not hold, or that lies too deep to be composed without harm. */
function firstRefused(
  tokens: readonly CST.Token[],
): { readonly offset: number; readonly why: Pick<Fault, "expected" | "received" | "remedy"> } | null {
  let level: readonly Token[] = tokens;
  let found: ReturnType<typeof firstRefused> = null;
  for (let depth = 0; level.length > 0; depth += 1) {
    for (const token of level) {
      const why = tokenFault(token);
      if (why !== null && (found === null || token.offset < found.offset)) found = { offset: token.offset, why };
    }
    const [first] = level;
    if (depth > DEEPEST && first !== undefined) {
      const why = {
        expected: `groups at most ${String(DEEPEST)} deep`,
        received: "deeper ones",
        remedy: "No job needs so many.",
      };
      return { offset: first.offset, why };
    }
    level = level.flatMap(insideOf);
  }
  return found;
}

const SAID: Readonly<Record<string, string>> = {
  BLOCK_AS_IMPLICIT_KEY: "A colon and a space make a group: put the text in quotes, or write it without.",
  BLOCK_IN_FLOW: "Within brackets everything stands in brackets.",
  MISSING_CHAR: "A bracket, a quote, a comma or a colon is missing here or just before.",
  BAD_INDENT: "Lines that belong together begin below one another.",
  TAB_AS_INDENT: "Indent with spaces, not with a tab.",
  BAD_SCALAR_START: "Put the text in quotes.",
  MULTIPLE_DOCS: "A job file holds one job: take away the line of dashes.",
  MULTILINE_IMPLICIT_KEY: "A key stands on one line, with its colon.",
  UNEXPECTED_TOKEN: "Put the text in quotes, or look for a bracket too many.",
};

/** The one document of a file, or why there is none: what is no YAML is one fault. */
export function composed(text: string, lines: LineCounter): Composed {
  const refuse = (offset: number, why: Pick<Fault, "expected" | "received" | "remedy">): Composed => {
    const { line } = lines.linePos(offset);
    return { document: null, fault: { code: "unreadable", path: [], line, params: {}, ...why } };
  };
  const tokens = [...new Parser(lines.addNewLine).parse(text)];
  const refused = firstRefused(tokens);
  if (refused !== null) return refuse(refused.offset, refused.why);
  const documents = tokens.filter(({ type }) => type === "document");
  const second = documents[1];
  if (second !== undefined)
    return refuse(second.offset, {
      expected: "one document",
      received: "a second one",
      remedy: SAID["MULTIPLE_DOCS"] ?? "",
    });
  const composer = new Composer({ version: "1.2", schema: "failsafe", uniqueKeys: false });
  const [document] = [...composer.compose(tokens, true, text.length)];
  const [error] = [...(document?.errors ?? []), ...(document?.warnings ?? [])].sort((a, b) => a.pos[0] - b.pos[0]);
  if (error === undefined) return { document: document ?? null, fault: null };
  const received = printable(text.slice(error.pos[0]).split("\n")[0] ?? "");
  const remedy = SAID[error.code] ?? "Put a text with unusual marks in quotes.";
  return refuse(error.pos[0], {
    expected: "plain YAML, or JSON",
    received: received === "" ? "the end of the line" : `"${received}"`,
    remedy,
  });
}
