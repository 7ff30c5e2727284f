import { describe, expect, it } from "vitest";
import { bibliography, namedIn, nameOf, sourceOf } from "../support/bibliography.mjs";
import { notOfTheStandard } from "./csl-json.mjs";

type Item = Readonly<Record<string, unknown>>;

const imported = new Set([...namedIn(true), ...namedIn(false)]);

/** What is wrong with a bibliography whose sources are known by these names. */
function faultsOf(items: readonly Item[], names: ReadonlySet<string>): string[] {
  const unread = items.flatMap((item) =>
    notOfTheStandard(item).map((name) => `${String(item["id"])} tells ${name} otherwise`),
  );
  if (unread.length > 0) return unread;
  const sources = items.map(sourceOf);
  return sources.flatMap(({ key, author, title, year, place }, at) => {
    const earlier = sources.slice(0, at);
    const same = earlier.find((one) => one.author === author && one.title === title && one.year === year)?.key ?? key;
    const before = earlier.at(-1)?.key ?? "";
    return [
      ...(/^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/u.test(key) ? [] : [`${key} is no key`]),
      ...(/^(?! |undefined)(?!.* undefined)/u.test(author) && title !== ""
        ? []
        : [`${key} has no title, or a name without a part`]),
      ...(key === before ? [`${key} is told twice`] : []),
      ...(same === key ? [] : [`${key} tells the work of ${same} again`]),
      ...(key < before ? [`${key} stands after ${before}`] : []),
      ...(year === undefined ? [`${key} has no year, and is not said to be undated`] : []),
      ...(place === undefined ? [`${key} has no place and no address`] : []),
      ...(names.has(nameOf(key)) ? [] : [`${key} is named by nobody`]),
    ];
  });
}

describe("the bibliography", () => {
  it("tells each source once, in order, with its year and its place, and none that nobody names", () => {
    expect(bibliography.length).toBeGreaterThan(200);
    expect(faultsOf(bibliography, imported)).toEqual([]);
  });

  const first = { id: "baines-1835", type: "book", title: "First", status: "undated", "publisher-place": "London" };
  const work = { id: "clay-1920", type: "webpage", title: "Second" };
  const second = { ...work, issued: { "date-parts": [[1920]] }, URL: "https://a.example/b" };
  const both = new Set(["baines1835", "clay1920"]);

  it.each<[string, Item[], ReadonlySet<string>, string]>([
    ["a key told twice", [first, { ...first, title: "Other" }], both, "baines-1835 is told twice"],
    [
      "a work under two keys",
      [first, { ...first, id: "clay-1920" }],
      both,
      "clay-1920 tells the work of baines-1835 again",
    ],
    ["a key out of order", [second, first], both, "baines-1835 stands after clay-1920"],
    ["no year", [{ ...work, URL: second.URL }], both, "clay-1920 has no year, and is not said to be undated"],
    ["no place", [{ ...work, issued: second.issued }], both, "clay-1920 has no place and no address"],
    ["a source nobody names", [first, second], new Set(["clay1920"]), "baines-1835 is named by nobody"],
    ["a field CSL-JSON does not know", [{ ...first, year: 1835 }], both, "baines-1835 tells year otherwise"],
    ["a type CSL-JSON does not know", [{ ...first, type: "blog" }], both, "baines-1835 tells type otherwise"],
    ["a date written as text", [{ ...first, issued: "1835" }], both, "baines-1835 tells issued otherwise"],
    ["an author written as text", [{ ...first, author: "E. Baines" }], both, "baines-1835 tells author otherwise"],
    [
      "an author of a family name alone",
      [{ ...first, author: [{ family: "Baines" }] }],
      both,
      "baines-1835 has no title, or a name without a part",
    ],
    ["a key of capitals", [{ ...first, id: "Baines" }], new Set(["Baines"]), "Baines is no key"],
  ])("is refused with %s", (_, items, names, fault) => {
    expect(faultsOf(items, names)).toEqual([fault]);
  });
});
