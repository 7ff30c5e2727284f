import { expect, test } from "vitest";
import { leans } from "./leaning.mjs";

/** What a published case needs of a source. */
export interface CitedSource {
  readonly key: string;
  readonly author: string;
  readonly title: string;
  readonly year: string;
  readonly place: string;
}

export interface Citation {
  readonly source: CitedSource;
  /** Where in the source: page, chapter, table, example. */
  readonly at: string;
  readonly status: "read" | "from memory" | "common practice, no source";
  /** The answer as the source prints it. */
  readonly prints: string;
  /** Worked out by hand or with another tool: a whole number, a decimal, a fraction such as 240/11, or text. */
  readonly exact: string;
  /** Where the printed answer is not the exact one rounded: why. */
  readonly differs?: string;
}

/** One row of the verification table: all that is needed to run the case again anywhere. */
export interface CitedRow extends Citation {
  readonly title: string;
  readonly call: string;
  readonly args: readonly unknown[];
  readonly read: string | null;
  readonly value: string;
}

interface NamedUnit {
  readonly name: string;
  readonly dimension: string;
}

/** A unit for a quantity, a path for a report, both for a quantity in a report, nothing for a plain number or text. */
type Reading = NamedUnit | string | null | readonly [path: string, unit: NamedUnit];

declare module "vitest" {
  interface TaskMeta {
    cited?: CitedRow;
  }
}

/** "240/11" and "26.34" as the double nearest to them; null for text that is no number. */
export function exactNumber(exact: string): number | null {
  const found = /^(-?\d+(?:\.\d+)?)(?:\/(\d+))?$/u.exec(exact);
  return found === null ? null : Number(found[1]) / Number(found[2] ?? 1);
}

/** Whether the printed figure is the exact one rounded to the digits printed; text that is no figure is not judged. */
function roundsTo(exact: number, prints: string): boolean {
  const [, whole, over, under] = /^(?:(\d+) )?(\d+)\/(\d+)$/u.exec(prints) ?? [];
  if (over !== undefined) return Math.abs(Number(whole ?? 0) + Number(over) / Number(under) - exact) < 1e-9;
  const figure = /^-?\d+(?:\.(\d+))?$/u.exec(prints);
  if (figure === null) return true;
  const half = 0.5 * 10 ** -(figure[1]?.length ?? 0);
  return Math.abs(Number(prints) - exact) <= half * (1 + 1e-9);
}

function readOut(result: unknown, read: Reading): unknown {
  if (read === null) return result;
  if (Array.isArray(read)) return readOut(readOut(result, read[0] as string), read[1] as NamedUnit);
  if (typeof read === "string") {
    return read.split(".").reduce<unknown>((at, key) => (at as Readonly<Record<string, unknown>>)[key], result);
  }
  return (result as { in(unit: NamedUnit): number }).in(read as NamedUnit);
}

/** The reading as the collected case keeps it: "cottonCount", "total.ends" or "count in tex". */
function readingText(read: Reading): string | null {
  if (read === null || typeof read === "string") return read;
  return Array.isArray(read) ? `${read[0] as string} in ${(read[1] as NamedUnit).name}` : (read as NamedUnit).name;
}

/** A case read in its source, where the answer is printed. */
export function published(source: CitedSource, at: string, prints: string, exact: string, differs?: string): Citation {
  return { source, at, status: "read", prints, exact, ...(differs === undefined ? {} : { differs }) };
}

/** A case worked by hand, of a sum that no source prints. */
export function byHand(source: CitedSource, exact: string): Citation {
  return { source, at: "worked by hand", status: "common practice, no source", prints: "", exact };
}

function callName(call: (...args: never[]) => unknown): string {
  const { declaration } = call as { declaration?: { name: string } };
  return declaration?.name ?? call.name;
}

/**
 * A published case beside the code it checks.
 *
 * The call's result is read out in `read`: a unit for a quantity, a path such as "total.ends" for a report, both for a
 * quantity in a report, nothing for a plain number or text. It must agree with `exact` to 1e-12.
 */
export function cited<A extends readonly unknown[]>(
  title: string,
  citation: Citation,
  call: (...args: A) => unknown,
  args: NoInfer<A>,
  read: Reading = null,
): void {
  test(title, ({ task }) => {
    const value = readOut(call(...args), read);
    const name = readingText(read);
    const row = { ...citation, title, call: callName(call), args: plain(args) as unknown[], read: name };
    task.meta.cited = { ...row, value: String(value) };
    const exact = exactNumber(citation.exact);
    if (exact === null || typeof value !== "number") expect(String(value)).toBe(citation.exact);
    else expect(Math.abs(value - exact)).toBeLessThanOrEqual(1e-12 * Math.abs(exact));
    const explained = citation.differs !== undefined || exact === null || roundsTo(exact, citation.prints);
    expect(explained, `${citation.prints} is not ${citation.exact} rounded: say why`).toBe(true);
    expect(citation.source.title).not.toBe("");
    expect(leans(title.replace(citation.source.title, "")), "a title stands alone, as a row of a table").toBe(false);
  });
}

/** Arguments as data: quantities as their own fields, units by name. */
function plain(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value, (_, one: unknown) => (typeof one === "function" ? { unit: one.name } : one)));
}
