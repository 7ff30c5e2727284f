import { refuse } from "../refusal.js";
import { described } from "./described.js";

/** Refuses options that are none, and the first that is not known: it would be lost in silence. */
export function onlyOptions(caller: string, known: readonly string[], given: unknown): void {
  if (given === undefined) return;
  const isGroup = typeof given === "object" && given !== null;
  const unknown = isGroup ? Object.keys(given).find((field) => !known.includes(field)) : "options";
  if (unknown === undefined) return;
  refuse(
    isGroup ? "unknown-field" : "wrong-kind",
    [caller, unknown],
    isGroup ? `only ${known.join(", ")}` : "an object of options",
    described(isGroup ? Reflect.get(given, unknown) : given),
    `Give ${known.join(", ")}, or nothing.`,
    { candidates: known },
  );
}
