// The bibliography of all packages, an array in CSL-JSON, and its sources as formulas and cases name them.
import { readdirSync, readFileSync } from "node:fs";
import { root } from "./built.mjs";

export const bibliography = JSON.parse(readFileSync(`${root}docs/bibliography.json`, "utf8"));

/** "taylor-1909" in code: taylor1909. */
export const nameOf = (key) => key.replace(/-(.)/gu, (_, letter) => letter.toUpperCase());

const person = ({ literal, given, family }) => literal ?? `${given} ${family}`;

/** "A, B and C". */
const listed = (names) => [names.slice(0, -1).join(", "), names.at(-1)].filter(Boolean).join(" and ");

function yearOf({ issued, status }) {
  if (issued === undefined) return status === "undated" ? status : undefined;
  return issued.literal ?? issued["date-parts"].map(([year]) => year).join(" to ");
}

/** Where it came out: a town, a journal, a publisher, or the site on which it stands. */
function placeOf({ URL: address, publisher, ...item }) {
  const site = address === undefined ? undefined : new URL(address).hostname.replace(/^www\./u, "");
  return item["publisher-place"] ?? item["container-title"] ?? publisher ?? site;
}

export function sourceOf(item) {
  const author = item.author === undefined ? "author not shown" : listed(item.author.map(person));
  return { key: item.id, author, title: item.title, year: yearOf(item), place: placeOf(item) };
}

const sources = new Map(bibliography.map((item) => [item.id, sourceOf(item)]));

export function source(key) {
  if (!sources.has(key)) throw new RangeError(`no source "${key}" in docs/bibliography.json`);
  return sources.get(key);
}

function importedSources(text) {
  const [, names] = /^import \{([^}]*)\} from "(?:#ci|\.[./]*\/sources)\/(?:index|sources)\.js";$/mu.exec(text) ?? [];
  return names?.split(",").map((name) => name.trim()) ?? [];
}

/** The names of the sources that the tests of the packages import, or else what is published of them. */
export function namedIn(tests) {
  const packages = `${root}packages/`;
  const files = readdirSync(packages, { recursive: true })
    .map((file) => file.replaceAll("\\", "/"))
    .filter((file) => /^[a-z]+\/src\/.*\.ts$/u.test(file) && /\.test(-d)?\.ts$/u.test(file) === tests);
  return new Set(files.flatMap((file) => importedSources(readFileSync(packages + file, "utf8"))));
}
