import { escaped, asMathML } from "./as-mathml.js";
import { sourceText } from "./as-text.js";
import type { Working } from "./working.js";

/** A working as a piece of HTML: a table of what went in, the lines as MathML, the source. */
export function asHtml(working: Working): string {
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
