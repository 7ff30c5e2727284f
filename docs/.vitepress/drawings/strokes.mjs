// What all drawings are made of: lines, words, and lengths marked between two ticks.
export const line = (d, more = "") => `<path d="${d}" ${more}/>`;

export const word = (x, y, text, anchor = "middle") =>
  `<text x="${x}" y="${y}" text-anchor="${anchor}" fill="currentColor" stroke="none">${text}</text>`;

/** A length along the page from one place to another, named above its line, or below it. */
export const across = (from, to, y, name, below = false) =>
  line(`M${from} ${y - 4}v8M${to} ${y - 4}v8M${from} ${y}H${to}`, 'stroke="var(--accent)"') +
  word((from + to) / 2, below ? y + 15 : y - 7, name);

/** A length down the page, named at its right. */
export const down = (x, from, to, name) =>
  line(`M${x - 4} ${from}h8M${x - 4} ${to}h8M${x} ${from}V${to}`, 'stroke="var(--accent)"') +
  word(x + 8, (from + to) / 2 + 4, name, "start");

export const times = (count, draw) => Array.from({ length: count }, (_, at) => draw(at)).join("");

export const drawing = (height, title, inside) =>
  `<svg class="measures" viewBox="0 0 640 ${height}" role="img" aria-label="${title}" fill="none" stroke="currentColor" font-size="14">${inside}</svg>`;
