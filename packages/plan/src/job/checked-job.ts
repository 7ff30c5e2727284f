import { crossFaults } from "./cross-faults.js";
import type { Fault, Faults } from "./fault.js";
import { Unreadable } from "./fault.js";
import { printable } from "../text/printable.js";
import type { At } from "./form.js";
import { frozen } from "./frozen.js";
import { jobForm } from "./job.js";
import type { Job } from "./job.js";
import { receivedText } from "./node.js";
import type { Node } from "./node.js";
import { placeIn } from "./place-in.js";
import { plainData } from "./plain-data.js";

/** A job, or everything that is wrong with it. */
export type JobReading =
  | { readonly ok: true; readonly value: Job; readonly told: readonly Fault[] }
  | { readonly ok: false; readonly faults: Faults };

const LONGEST_SENTENCE = 1000;

/** Jobs that were read or checked before: frozen through and through, they are what they were. */
const held = new WeakMap<object, Job>();

/** A fault before it is known which function refuses. */
export type FoundFault = Omit<Fault, "function">;

/** The job, or its faults in the order of their lines, where there are any. */
function readingOf(name: string, job: Job, told: readonly FoundFault[], faults: readonly FoundFault[]): JobReading {
  const clean = (text: string): string => printable(text, LONGEST_SENTENCE);
  const named = faults.map((fault): Fault => {
    const [expected, received, remedy] = [clean(fault.expected), clean(fault.received), clean(fault.remedy)];
    return { ...fault, function: name, expected, received, remedy };
  });
  const [first, ...others] = named.sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
  if (first !== undefined) return frozen({ ok: false, faults: [first, ...others] });
  held.set(job, job);
  return frozen({ ok: true, value: job, told: told.map((one) => ({ ...one, function: name })) });
}

/** What is wrong with a job, in the order of its lines. */
export function refused(name: string, faults: readonly [FoundFault, ...FoundFault[]]): JobReading {
  return readingOf(name, {}, [], faults);
}

/** What the form reads of it, and whether it holds together. */
export function checked(name: string, node: Node, earlier: readonly FoundFault[]): JobReading {
  const faults: FoundFault[] = [...earlier];
  const told: FoundFault[] = [];
  const at: At = { path: [], tell: (fault) => faults.push(fault) };
  const read = jobForm.read(node, at);
  const job = read ?? {};
  for (const { path, ...fault } of faults.length > 0 && read === null ? [] : crossFaults(job)) {
    const place = placeIn(node, path);
    faults.push({ ...fault, ...place });
  }
  for (const seen of emptyColours(node)) told.push(seen);
  return readingOf(name, job, told, faults);
}

/** After # stands a remark, so a colour without quotes is no colour: that is told. */
function emptyColours(node: Node): readonly FoundFault[] {
  const yarns = node.kind === "group" ? node.entries.find(({ key }) => key === "yarns")?.value : undefined;
  const named = yarns?.kind === "group" ? yarns.entries : [];
  return named.flatMap(({ key, value }): FoundFault[] => {
    const seen = value.kind === "group" ? value.entries.find((entry) => entry.key === "seen") : undefined;
    if (seen?.value.kind !== "nothing") return [];
    const expected = "a colour";
    const remedy = `In quotes: "#8e3b32"; after # stands a remark.`;
    const line = seen.line === undefined ? {} : { line: seen.line };
    return [
      { code: "missing", path: ["yarns", key, "seen"], expected, received: "nothing", remedy, params: {}, ...line },
    ];
  });
}

/**
 * A job that a program made, checked as a file is: the data hold quantities, and `undefined` is a key left out.
 *
 * @param value any value at all
 * @returns a frozen copy of the job, the job itself where it was read or checked before, or all its faults at once
 */
export function checkedJob(value: unknown): JobReading {
  const known = typeof value === "object" && value !== null ? held.get(value) : undefined;
  if (known !== undefined) return frozen({ ok: true, value: known, told: [] });
  const whole = { path: [], params: {} };
  try {
    const data = plainData(value);
    const isGroup = typeof data === "object" && data !== null && !Array.isArray(data);
    if (isGroup) return checked("checkedJob", { kind: "data", value: data }, []);
    const isNothing = data === undefined || data === null;
    const received = isNothing ? "nothing" : receivedText({ kind: "data", value: data });
    const [code, remedy] = [isNothing ? "missing" : "wrong-kind", "Give a group of the keys of a job."] as const;
    return refused("checkedJob", [{ ...whole, code, expected: "a job", received, remedy }]);
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    const { code, remedy, expected = "plain data", received = "other data" } = error;
    return refused("checkedJob", [{ ...whole, code, expected, received, remedy }]);
  }
}
