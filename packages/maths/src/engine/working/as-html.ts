import { escaped, asMathML } from "./as-mathml.js";
import { sourceText } from "./as-text.js";
import { isRemarks } from "./remarks.js";
import type { Remarks } from "./remarks.js";
import type { Working } from "./working.js";

/** A piece of HTML: of a working, a table of what went in, the lines as MathML, the source; of remarks, a list. */
export function asHtml(working: Working | Remarks): string {
  if (isRemarks(working)) {
    const items = working.remarks.map((one) => `<li>${escaped(one)}</li>`);
    return [`<p>${escaped(working.about)}</p>`, `<ul>${items.join("")}</ul>`].join("\n");
  }
  const rows = working.inputs.map(
    ({ name, value, meaning }) =>
      `<tr><th scope="row">${escaped(name)}</th><td>${escaped(value)}</td><td>${escaped(meaning)}</td></tr>`,
  );
  const conversions = working.conversions.map(({ name, text }) => `<p>${escaped(name)}: ${escaped(text)}</p>`);
  return [
    `<table><caption>${escaped(working.name)}</caption><tbody>${rows.join("")}</tbody></table>`,
    ...conversions,
    asMathML(working),
    `<p>Source: ${escaped(sourceText(working.source))}</p>`,
  ].join("\n");
}
