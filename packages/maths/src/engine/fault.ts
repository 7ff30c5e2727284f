/** Why something was refused. The set is closed: a program may switch on it. */
export type RefusalCode =
  | "missing"
  | "unknown-field"
  | "unknown-word"
  | "unknown-unit"
  | "wrong-kind"
  | "not-a-number"
  | "not-whole"
  | "out-of-range"
  | "empty"
  | "too-long"
  | "copied-quantity"
  | "unreadable"
  | "ambiguous"
  | "operator"
  | "no-answer";

/** A place in an input: names of fields, numbers of members counted from 0. */
export type FaultPath = readonly (string | number)[];

/** What a sentence about a fault is made of, for a program that says it in another language. */
export interface FaultParams {
  /** The kind wanted: "length", "ends per length", "loss". */
  readonly kind?: string;
  /** The limits; those of a percentage are fractions, as in the declaration. */
  readonly atLeast?: number;
  readonly above?: number;
  readonly below?: number;
  readonly atMost?: number;
  /** What may stand there instead: names of fields, words or units, or texts that have one reading. */
  readonly candidates?: readonly (string | number)[];
  /** Something of the right kind, as one writes it in a program or a field. */
  readonly example?: string;
  /** The calculation that a function such as `check` was given. */
  readonly calculation?: string;
  readonly [other: string]: string | number | readonly (string | number)[] | undefined;
}

/** The function that refuses, and the place in its input. */
export type Place = readonly [name: string, ...path: FaultPath];

/** A place as the fields of a fault. */
export function inPlace([name, ...path]: Place): { readonly function: string; readonly path: FaultPath } {
  return { function: name, path };
}

/** One thing wrong: where it stands, what belongs there, what stood there, and what to do. */
export interface Fault<Code extends string = RefusalCode> {
  readonly code: Code;
  /** The function that refuses. */
  readonly function: string;
  /** The place in its input; empty where the whole of it is meant. */
  readonly path: FaultPath;
  readonly expected: string;
  readonly received: string;
  readonly remedy: string;
  readonly params: FaultParams;
  /** The character of a text, counted from 1. */
  readonly position?: number;
  /** The line of a file, counted from 1. */
  readonly line?: number;
}

/** A fault as a refusal hands it over: without params where there are none. */
export type Refusal<Code extends string = RefusalCode> = Omit<Fault<Code>, "params"> & {
  readonly params?: FaultParams;
};

/** One fault or more. */
export type Faults<Code extends string = RefusalCode> = readonly [Fault<Code>, ...Fault<Code>[]];

const LONGEST = 60;
const MOST_TOLD = 50;

/** The code of a fault: nothing given is missing, whatever else might be wrong with it. */
export function missingOr(given: unknown, code: RefusalCode): RefusalCode {
  return given === undefined || given === null ? "missing" : code;
}

/** A name fit for any screen: never longer than a line, never a control character or a mark of direction. */
function printable(name: string): string {
  const clean = name.slice(0, LONGEST).replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, "�");
  return name.length > LONGEST ? `${clean}…` : clean;
}

/**
 * A place as one reads it; a name that is no word stands in quotes.
 *
 * @param path of a fault, or of anything else in an input
 * @example pathText(["yarns", "no. 2", "packages", 0]) // "yarns[\"no. 2\"].packages[0]"
 */
export function pathText(path: FaultPath): string {
  const steps = path.map((step) => {
    if (typeof step === "number") return `[${String(step)}]`;
    return /^[\p{L}\p{N}_-]+$/u.test(step) ? `.${printable(step)}` : `[${JSON.stringify(printable(step))}]`;
  });
  return steps.join("").replace(/^\./u, "");
}

function placeOf({ function: name, path, line }: Fault<string>): string {
  if (line !== undefined) return [`line ${String(line)}`, pathText(path)].filter(Boolean).join(", ");
  const inner = typeof path[0] === "string";
  return inner ? `${name}({ ${pathText(path)} })` : `${name}(…)${pathText(path)}`;
}

/**
 * A fault in one English sentence, or two: the one printer of them all.
 *
 * @param fault a fault of any package
 * @example faultText({ code: "missing", function: "reedWidth", path: ["ends"], expected: "a whole number of ends", received: "nothing", remedy: "", params: {} }) // "reedWidth({ ends }): expected a whole number of ends, received nothing."
 */
export function faultText(fault: Fault<string>): string {
  const { expected, received, remedy } = fault;
  return `${placeOf(fault)}: expected ${expected}, received ${received}. ${remedy}`.trimEnd();
}

/**
 * Faults for a screen, one a line; of very many only the first fifty are told.
 *
 * @param faults of any package
 * @example faultsText([]) // ""
 */
export function faultsText(faults: readonly Fault<string>[]): string {
  const more = faults.length - MOST_TOLD;
  const told = faults.slice(0, MOST_TOLD).map(faultText);
  return (more > 0 ? [...told, `… and ${String(more)} more.`] : told).join("\n");
}
