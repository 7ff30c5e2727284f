/** What a title may not begin with: in a list of titles, what it points back to is not there. */
export const BEGINS_LEANING =
  "^(?:again|also|and|as (?:above|before)|back|but|ditto|its?|likewise|or|such|th(?:at|en|ese|is|ose)|the others?|the same|too(?! (?:few|little|long|many|much|wide)))\\b";

const beginning = new RegExp(BEGINS_LEANING, "iu");
const within =
  /\b(?:same|its?|they|them|their|those|these|this|such|also|again|another|others?|likewise|ditto|above|instead|too(?! (?:few|little|long|many|much|wide)))\b/iu;

/** Whether a title begins by pointing to a row before it. */
export const beginsLeaning = (title) => beginning.test(title);

/** Whether a title points to a row before it anywhere: in a table sorted by title, that row stands elsewhere. */
export const leans = (title) => beginning.test(title) || within.test(title);
