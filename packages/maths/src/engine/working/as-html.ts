import { asMathML } from "./as-mathml.js";
import { escaped } from "./escaped.js";
import { sourceText } from "./as-text.js";
import { isTold } from "./working.js";
import type { Told, Working } from "./working.js";

/** A working as a piece of HTML: a table of what went in, the lines as MathML, the source; sentences as paragraphs. */
export function asHtml(working: Told | Working): string {
  if (isTold(working)) return working.says.map((text) => `<p>${escaped(text)}</p>`).join("\n");
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
