import { isDefinedName } from "@thrum/maths";
import { snakeCase } from "../names.js";

/** `finishedLength` in small letters and digits, as a name of a cell takes them. */
function inSmallLetters(text: string): string {
  return snakeCase(text)
    .replace(/[^a-z\d]+/gu, "_")
    .replace(/^_+|_+$/gu, "");
}

/** Gives names to cells, each once. */
export function cellNames(): (...parts: readonly (string | number)[]) => string {
  const taken = new Set<string>();
  return (...parts) => {
    const plain = parts.map((part) => inSmallLetters(String(part))).filter((part) => part !== "");
    const wanted = plain.join("_").slice(0, 150);
    const start = isDefinedName(wanted) ? wanted : `of_${wanted}`;
    const base = isDefinedName(start) ? start : "cell";
    let name = base;
    for (let again = 2; taken.has(name); again += 1) name = `${base}_no${String(again)}`;
    taken.add(name);
    return name;
  };
}
