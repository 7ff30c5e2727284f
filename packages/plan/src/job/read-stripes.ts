import type { Fault } from "./fault.js";
import { frozen } from "./frozen.js";
import type { Runs } from "./runs.js";
import { stripes as form } from "./stripes.js";
import type { Stripe } from "./stripes.js";
import { flowText } from "./yaml-lines.js";
import { yamlNode } from "./yaml-node.js";

/** Stripes, or everything that is wrong with them. */
export type StripesReading =
  { readonly ok: true; readonly stripes: Runs<Stripe> } | { readonly ok: false; readonly faults: readonly Fault[] };

const LONGEST = 100_000;

/**
 * Reads stripes as they stand in a job file, with or without brackets: `24 natural, 6 indigo`, one a line, or with
 * repeats and mirrors.
 *
 * @param text runs, number first
 * @returns the stripes as they were written, or all faults at once
 * @example readStripes("24 natural, { mirror: [6 indigo, 12 natural], middle: once }").ok // true
 */
export function readStripes(text: unknown): StripesReading {
  const faults: Fault[] = [];
  const tell = (fault: Omit<Fault, "function">): void => void faults.push({ ...fault, function: "readStripes" });
  if (typeof text !== "string" || text.length > LONGEST || text.trim() === "") {
    const expected = `stripes in at most ${String(LONGEST)} characters`;
    const received = typeof text === "string" ? `${String(text.trim().length)} characters` : `a ${typeof text}`;
    tell({
      code: "unreadable",
      path: [],
      expected,
      received,
      remedy: "Write such as 24 natural, 6 indigo.",
      params: {},
    });
    return frozen({ ok: false, faults });
  }
  const isList = /^\s*(?:-\s|\[)/u.test(text);
  const lines = text
    .trim()
    .replace(/\s*\n\s*(?=\d|the rest|\{)/gu, ", ")
    .replace(/,\s*,/gu, ",");
  const { node, faults: unreadable } = yamlNode(isList ? text : `[${lines}]`);
  unreadable.forEach(tell);
  const stripes = unreadable.length > 0 ? null : form.read(node, { path: [], tell });
  return frozen(stripes === null ? { ok: false, faults } : { ok: true, stripes });
}

/** Stripes on one line, as `readStripes` reads them. */
export function stripesText(stripes: Runs<Stripe>): string {
  const tree = form.write(stripes);
  return typeof tree === "object" && "list" in tree ? tree.list.map(flowText).join(", ") : flowText(tree);
}
