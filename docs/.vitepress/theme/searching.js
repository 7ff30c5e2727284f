// The search itself: MiniSearch over whole pages, with the field's words led to each other.
import MiniSearch from "minisearch";

const IDLE = new Set(
  "a an and are as be by can do for from how i in is it its many me my of on one or our should that the this to use what when which with you your".split(
    " ",
  ),
);

/** A word without the ending that only makes it more than one; thrums are no more than one Thrum. */
const stem = (word) =>
  word.length > 3 && word !== "thrums" && !/(?:ss|us|is)$/u.test(word)
    ? word.replace(/ies$/u, "y").replace(/s$/u, "")
    : word;

/** Words of a text: joined ones whole and in parts, for some write `take-up`, others `take up` or `takeUp`. */
function tokensOf(text) {
  const parts = text
    .replace(/(\p{Ll})(\p{Lu})/gu, "$1-$2")
    .toLowerCase()
    .split(/[^\p{L}\p{N}/.-]+/u);
  return parts.flatMap((part) => {
    const whole = part.replace(/^[./-]+|[./-]+$/gu, "");
    const pieces = whole.split(/[./-]+/u).filter(Boolean);
    return pieces.length > 1 ? [whole, pieces.join(""), ...pieces] : pieces;
  });
}

const processTerm = (term) => (IDLE.has(term) ? null : stem(term));

/** How much a kind of page counts beside the others. */
const WEIGHTS = { API: 0.25, About: 0.6, Error: 0.7, Notebook: 0.8 };

/** The search over the pages; `meant` leads a reader's words to those of the pages. */
export function searchOver(pages, meant) {
  const index = new MiniSearch({
    fields: ["title", "words", "headings", "lead", "text"],
    storeFields: ["link", "title", "kind", "text"],
    idField: "link",
    tokenize: tokensOf,
    processTerm,
  });
  index.addAll(pages);
  const keys = Object.keys(meant);
  const says = (text) => tokensOf(text).map(stem).join(" ");
  const phrases = new Map(keys.map((key) => [says(key), meant[key]]));

  return (asked) => {
    const own = says(asked.slice(0, 80));
    const others = [...phrases].filter(([phrase]) => ` ${own} `.includes(` ${phrase} `)).map(([, other]) => other);
    const options = {
      boost: { title: 6, words: 7, headings: 2, lead: 2 },
      prefix: (term) => term.length > 2,
      fuzzy: (term) => (/\d/u.test(term) || term.length < 5 ? 0 : term.length < 6 ? 1 : 2),
      weights: { prefix: 0.4, fuzzy: 0.25 },
      boostDocument: (_id, _term, { kind }) => WEIGHTS[kind] ?? 1,
    };
    const queries = [
      asked.slice(0, 80),
      ...others.map((other) => ({ queries: [other], boost: { title: 4, words: 4 } })),
    ];
    return index.search({ combineWith: "OR", queries }, options).slice(0, 12);
  };
}

/** A line of the page around the first word found in it. */
export function excerptOf({ text, terms }) {
  const low = text.toLowerCase();
  const at = Math.max(0, Math.min(...terms.map((term) => low.indexOf(term)).filter((place) => place >= 0), low.length));
  const from = at > 60 && at < low.length ? low.indexOf(" ", at - 50) + 1 : 0;
  return `${from > 0 ? "… " : ""}${text.slice(from, from + 110).replace(/\s\S*$/u, "")} …`;
}
