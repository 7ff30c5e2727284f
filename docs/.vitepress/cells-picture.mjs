// A sheet with the inputs of one sum in row 2 and its formula beside them, as it looks when it has been pasted.
import { maths } from "./pages/handbook.mjs";

const { inches, inWords, percentLost, spreadsheetFormula, warpLength, yards } = maths;
const LETTERS = "ABCDEFG";
const GIVEN = [
  ["pieces", 8, null],
  ["finishedLength", 21, inches],
  ["hemEachEnd", 1, inches],
  ["loomToFinished", 10, percentLost],
  ["takeUp", 8, percentLost],
  ["loomWaste", 30, inches],
];
const [WIDTH, HEIGHT] = [92, 24];

export function cells() {
  const placed = Object.fromEntries(
    GIVEN.map(([field, , unit], at) => [field, unit === null ? `${LETTERS[at]}2` : [`${LETTERS[at]}2`, unit]]),
  );
  const formula = spreadsheetFormula(warpLength, placed, yards);
  const input = Object.fromEntries(GIVEN.map(([field, value, unit]) => [field, unit === null ? value : unit(value)]));
  const columns = [
    ...GIVEN.map(([field, value, unit]) => [inWords(field) + (unit === null ? "" : `, ${unit.symbol}`), value]),
    ["warp, yd", warpLength(input).in(yards).toFixed(4)],
  ];
  const cell = (at, row, text, more = "") =>
    `<rect x="${30 + at * WIDTH}" y="${34 + row * HEIGHT}" width="${WIDTH}" height="${HEIGHT}" ${more}/><text x="${30 + at * WIDTH + WIDTH / 2}" y="${51 + row * HEIGHT}" fill="currentColor" stroke="none">${text}</text>`;
  const head = columns.map((_, at) => cell(at, 0, LETTERS[at], 'fill="var(--wash)"'));
  const body = columns.flatMap(([name, value], at) => [
    cell(at, 1, name),
    cell(at, 2, value, at === GIVEN.length ? 'stroke-width="2.5"' : ""),
  ]);
  const numbers = [1, 2].map(
    (row) => `<text x="16" y="${51 + row * HEIGHT}" fill="currentColor" stroke="none">${row}</text>`,
  );
  const bar = `<text x="30" y="22" text-anchor="start" fill="currentColor" stroke="none">G2  ${formula}</text>`;
  const svg = `<svg viewBox="0 0 680 112" role="img" aria-label="Row 1 names the inputs, row 2 holds them from A to F, and G2 holds the formula" fill="none" stroke="var(--line)" font-size="11" text-anchor="middle">${bar}${head.join("")}${body.join("")}${numbers.join("")}</svg>`;
  return `<figure class="drawn" tabindex="0" aria-label="The cells of one sum">${svg}<figcaption>The formula pasted into G2; its inputs in row 2, in inches and per cent.</figcaption></figure>`;
}
