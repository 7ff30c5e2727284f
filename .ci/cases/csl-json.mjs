// Whether the bibliography is in CSL-JSON: a library of the standard reads it, and what it cannot read it leaves out.
import { Cite } from "@citation-js/core";

/** The names of an item under which the library reads something else than stands there. */
export function notOfTheStandard(item) {
  const [read] = new Cite([item], { generateGraph: false }).format("data", { format: "object" });
  return Object.keys(item).filter((name) => JSON.stringify(read[name]) !== JSON.stringify(item[name]));
}
