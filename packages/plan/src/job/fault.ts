import type { RefusalCode } from "@thrum/maths";

/** A place in a job: names of keys, numbers of members counted from 0. */
export type FaultPath = readonly (string | number)[];

export type FaultCode = RefusalCode | "unknown-word" | "too-long";

/** One thing wrong: where it stands, what belongs there, what stood there, and what to do. */
export interface Fault {
  readonly code: FaultCode;
  /** The function that refuses. */
  readonly function: string;
  readonly path: FaultPath;
  readonly expected: string;
  readonly received: string;
  readonly remedy: string;
  /** What the sentence is made of, for a program that says it in another language. */
  readonly params: Readonly<Record<string, string | number | readonly (string | number)[]>>;
  /** The line of a file, counted from 1. */
  readonly line?: number;
}

const LONGEST = 60;

/** Text of a file made fit for any screen: on one line, without a control character or a mark of direction. */
export function printable(text: string, longest: number = LONGEST): string {
  const clean = text.slice(0, longest).replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, "�");
  return text.length > longest ? `${clean}…` : clean;
}

/** A place as one writes it: `stripes[2]`, `yarns["no. 2"].count`. */
export function pathText(path: FaultPath): string {
  const steps = path.map((step) => {
    if (typeof step === "number") return `[${String(step)}]`;
    return /^[\p{L}\p{N}_-]+$/u.test(step) ? `.${step}` : `[${JSON.stringify(printable(step))}]`;
  });
  return steps.join("").replace(/^\./u, "");
}

/** The fault in one sentence, for a screen. */
export function faultText(fault: Fault): string {
  const { line, path, expected, received, remedy } = fault;
  const place = [line === undefined ? "" : `line ${String(line)}`, pathText(path)].filter((part) => part !== "");
  const sentence = `expected ${expected}, received ${received}. ${remedy}`.trimEnd();
  return printable([place.join(", "), sentence].filter((part) => part !== "").join(": "), 2000);
}

const MOST_TOLD = 50;

/** Faults for a screen, one a line; of very many only the first are told. */
export function faultsText(faults: readonly Fault[]): string {
  const more = faults.length - MOST_TOLD;
  const told = faults.slice(0, MOST_TOLD).map(faultText);
  return (more > 0 ? [...told, `… and ${String(more)} more.`] : told).join("\n");
}

/** Why a text cannot be read as what belongs there; the form that reads it says where it stood. */
export class Unreadable extends Error {
  constructor(
    readonly remedy: string,
    readonly code: FaultCode = "unreadable",
    readonly expected?: string,
    readonly received?: string,
  ) {
    super(remedy);
  }
}
