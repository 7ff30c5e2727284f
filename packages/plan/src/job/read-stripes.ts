import type { Reading, RefusalCode } from "@thrum/maths";
import type { Runs } from "./runs.js";
import { stripes as form } from "./stripes.js";
import type { Stripe } from "./stripes.js";
import { textReading } from "./text-reading.js";
import { flowText } from "./yaml-lines.js";
import { yamlNode } from "./yaml-node.js";

/** Stripes, or everything that is wrong with them. */
export type StripesReading = Reading<Runs<Stripe>, RefusalCode>;

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
  return textReading(text, {
    name: "readStripes",
    what: "stripes, such as 24 natural, 6 indigo",
    longest: LONGEST,
    read: (given, tell) => {
      if (given.trim() === "") return null;
      const { node, faults } = yamlNode(isList(given) ? given : inBrackets(given));
      faults.forEach(tell);
      return faults.length > 0 ? null : form.read(node, { path: [], tell });
    },
  });
}

const isList = (text: string): boolean => /^\s*(?:-\s|\[)/u.test(text);

/** A run that begins a line needs no comma before it; lines stay lines, as a remark ends with its own. */
function inBrackets(text: string): string {
  const lines = text.split("\n").filter((line) => line.trim() !== "");
  const separated = lines.map((line, at) => {
    const [before = ","] = lines.slice(Math.max(0, at - 1), at);
    const begins = /^(?:\d|the rest|\{)/u.test(line.trim());
    return begins && !/,\s*(?:#.*)?$/u.test(before) ? `, ${line}` : line;
  });
  return `[${separated.join("\n")}\n]`;
}

/** Stripes on one line, as `readStripes` reads them. */
export function stripesText(stripes: Runs<Stripe>): string {
  const tree = form.write(stripes);
  return typeof tree === "object" && "list" in tree ? tree.list.map(flowText).join(", ") : flowText(tree);
}
