// Jobs that somebody slipped in: the nine examples with values, lines or single marks changed.
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";

const FOLDER = "examples/jobs/";
const texts = readdirSync(FOLDER)
  .filter((name) => /^\d[^.]*\.yaml$/u.test(name))
  .map((name) => readFileSync(FOLDER + name, "utf8"));
const values = [...new Set(texts.flatMap((text) => text.match(/(?<=: |- |\[|, )[^,:{}[\]\n#]+/gu) ?? []))];
const marks = [
  ":",
  ",",
  "{",
  "}",
  "[",
  "]",
  "#",
  '"',
  "'",
  "-",
  "?",
  "&a ",
  "*a",
  "!b ",
  "%",
  "\t",
  "\n",
  "  ",
  "½",
  "\u0000",
  "\u202e",
];

type Mutation = (text: string, at: number, more: number) => string;

/** The value of one key, chosen by `at`, put through `change`. */
function onValue(text: string, at: number, change: (value: string) => string): string {
  const found = [...text.matchAll(/(?<=: |- |\[|, )[^,:{}[\]\n#]+/gu)];
  const one = found[at % Math.max(found.length, 1)];
  return one === undefined ? text : text.slice(0, one.index) + change(one[0]) + text.slice(one.index + one[0].length);
}

function onLines(text: string, change: (lines: string[]) => string[]): string {
  return change(text.split("\n")).join("\n");
}

const MUTATIONS: readonly Mutation[] = [
  (text, at, more) => onValue(text, at, () => values[more % values.length] ?? ""),
  (text, at, more) => onValue(text, at, (value) => value.replace(/\d+/u, String(more % 400))),
  (text, at, more) =>
    onValue(text, at, (value) =>
      value.replace(/\d+/u, ["0", "-1", "1.5", "1/2", "999999", "1e9", "½"][more % 7] ?? ""),
    ),
  (text, at, more) =>
    onValue(text, at, (value) =>
      value.replace(/\b(?:in|cm|yd|oz|g|lb|m)\b/u, ["in", "cm", "yd", "oz", "g", "ell"][more % 6] ?? ""),
    ),
  (text, at) => onValue(text, at, () => ""),
  (text, at) => onLines(text, (lines) => lines.filter((_, line) => line !== at % lines.length)),
  (text, at) =>
    onLines(text, (lines) => lines.flatMap((line, number) => (number === at % lines.length ? [line, line] : [line]))),
  (text, at, more) =>
    onLines(text, (lines) =>
      lines.map((line, number) => (number === at % lines.length ? (lines[more % lines.length] ?? "") : line)),
    ),
  (text, at, more) =>
    text.slice(0, at % text.length) + (marks[more % marks.length] ?? "") + text.slice(at % text.length),
  (text, at, more) => text.slice(0, at % text.length) + text.slice((at % text.length) + 1 + (more % 3)),
  (text, at) => text.slice(0, at % text.length),
];

/** One of the nine with one or two changes. */
export const mutatedJobs: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom(...texts),
    fc.array(fc.tuple(fc.constantFrom(...MUTATIONS), fc.nat(5000), fc.nat(5000)), { minLength: 1, maxLength: 2 }),
  )
  .map(([text, changes]) => changes.reduce((done, [mutation, at, more]) => mutation(done, at, more), text));
