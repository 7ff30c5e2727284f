// Markdown that is safe whatever stands in a source's title.

export const capital = (text) => `${text[0].toUpperCase()}${text.slice(1)}`;

/** Text with nothing left that Markdown, HTML or the templates of the site would act on. */
export const plain = (text) => text.replace(/[\\`*_[\]{}<>|#&~]/gu, (mark) => `&#${mark.codePointAt(0)};`);

export const table = (heads, rows) =>
  [heads, heads.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");

export const fence = (language, text) => `\`\`\`${language}\n${text}\n\`\`\``;

export const list = (items) => items.map((item) => `- ${item}`).join("\n");

/** A source with the place in it, as text. */
export const bookText = ({ author, title, year, place }, at) =>
  [author, title, year, place, at].filter(Boolean).join(", ");

/** The same where Markdown is written. */
export const book = (source, at) => plain(bookText(source, at));
