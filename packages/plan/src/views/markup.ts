/** Text that is HTML already; whatever else enters a page is escaped on its way in. */
export interface Markup {
  readonly markup: string;
}

type Part = string | number | Markup | readonly Markup[];

/** What a page would take for markup in any place, and what would turn its lines about. */
function escapedForHtml(text: string): string {
  const plain = text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]+/gu, " ");
  return plain.replace(/[&<>"'`]/gu, (sign) => `&#${String(sign.charCodeAt(0))};`);
}

function inserted(part: Part): string {
  if (typeof part === "string") return escapedForHtml(part);
  if (typeof part === "number") return String(part);
  return "markup" in part ? part.markup : part.map(({ markup }) => markup).join("");
}

/** A piece of a page. Only what is written in the source is markup: every text put into it is escaped. */
export function html(source: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return { markup: source.map((fixed, at) => fixed + inserted(parts[at] ?? "")).join("") };
}
