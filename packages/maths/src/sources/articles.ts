import type { Source } from "../engine/formula/index.js";

/** The Conference of Northern California Handweavers on why a shrinkage is divided out and not added. */
export const cnch2016: Source = {
  key: "cnch-2016",
  author: "Conference of Northern California Handweavers",
  title: "Ratios, Rationale, and Rate of Shrinkage, CNCHnet",
  year: "2016",
  place: "California",
};

/** Published examination questions with worked solutions. */
export const gateTextile: Source = {
  key: "gate-tf",
  author: "GATE examination, textile engineering",
  title: "Questions with solutions by textiletriangle.com",
  year: "1992 to 2022",
  place: "online",
};

/** A page of count conversions with worked examples. */
export const countConversion: Source = {
  key: "count-conversion-tex",
  author: "textile article site",
  title: "Count conversion to tex",
  year: "undated",
  place: "online",
};

/** A course page on yarn numbering. */
export const groenKennisnet: Source = {
  key: "groen-kennisnet",
  author: "Groen Kennisnet wiki",
  title: "7.1.6 Yarn numbering and yarn counts",
  year: "undated",
  place: "online",
};

/** A page of count conversions. */
export const yarnConversions: Source = {
  key: "textile-school-conversions",
  author: "Textile School",
  title: "Yarn conversions",
  year: "undated",
  place: "online",
};

/** Worked folds and partner counts. */
export const countArticle: Source = {
  key: "count-article",
  author: "textile article blog",
  title: "Yarn count calculations",
  year: "undated",
  place: "online",
};

/** A yarn seller on the numbers of coned yarns. */
export const elkins: Source = {
  key: "elkins-webs",
  author: "Barbara Elkins",
  title: "What do the numbers mean in coned yarns",
  year: "undated",
  place: "WEBS, Northampton",
};

/** A weaving teacher on yarn systems. */
export const petrini: Source = {
  key: "petrini-yarn-systems",
  author: "Marcy Petrini",
  title: "Yarn Systems",
  year: "undated",
  place: "online",
};

/** A weaver on yarn counts. */
export const rude: Source = {
  key: "rude-odd-counts",
  author: "Sandra Rude",
  title: "Odd Yarn Count Numbers",
  year: "undated",
  place: "online",
};

/** A weaver on yarn counts. */
export const tbunny: Source = {
  key: "tbunny-counts",
  author: "tbunny",
  title: "Weaving Yarn Counts",
  year: "undated",
  place: "online",
};

/** A posting on the size of rug yarns. */
export const rugtalk: Source = {
  key: "rugtalk-yarn-size",
  author: "rugtalk list",
  title: "Yarn Size Explanation",
  year: "undated",
  place: "online",
};

/** Class notes on yarn counts. */
export const alessandrina: Source = {
  key: "alessandrina-counts",
  author: "alessandrina.com",
  title: "Class notes on yarn count",
  year: "undated",
  place: "online",
};

/** Two definitions with examples. */
export const textileindonesia: Source = {
  key: "textileindonesia-count",
  author: "textileindonesia knowledge base",
  title: "Cotton count; worsted count",
  year: "undated",
  place: "online",
};

/** A yarn seller on linen tubes. */
export const interlacements: Source = {
  key: "interlacements-linen",
  author: "Interlacements",
  title: "Linen tubes",
  year: "undated",
  place: "online",
};

/** A weaving teacher on shrinkage. */
export const osterkamp: Source = {
  key: "osterkamp-shrinkage",
  author: "Peggy Osterkamp",
  title: "Weaving tips: how to allow for shrinkage (from her Book 3)",
  year: "undated",
  place: "online",
};

/** A weaving teacher on take-up and shrinkage by the ratio method. */
export const jablonski: Source = {
  key: "jablonski-take-up",
  author: "Christine Jablonski",
  title: "How to Calculate Take-Up and Shrinkage in Weaving",
  year: "undated",
  place: "online",
};

/** A weaver works a balanced cloth through. */
export const sparksearcher: Source = {
  key: "sparksearcher-balanced",
  author: "sparksearcher",
  title: "Weaving Calculations for Balanced Weave",
  year: "undated",
  place: "online",
};

/** A weaver works a square cloth through. */
export const jeanWeaves: Source = {
  key: "jean-weaves-2014",
  author: "Jean Weaves",
  title: "Two trains left the station, traveling in opposite directions",
  year: "2014",
  place: "online",
};

/** A weaver works two cloaks through. */
export const weftHanded: Source = {
  key: "weft-handed-2010",
  author: "Mary Powell",
  title: "The Weft-Handed Weaver: And I told my teachers they did not need math",
  year: "2010",
  place: "online",
};

/** A project with its yarn totals. */
export const horton: Source = {
  key: "horton-placemats",
  author: "Susan E. Horton",
  title: "Raffia placemats, Little Looms",
  year: "undated",
  place: "online",
};

/** A project with its totals. */
export const patrick: Source = {
  key: "patrick-friendship",
  author: "Jane Patrick",
  title: "Weaving to Woo, Schacht Spindle blog",
  year: "undated",
  place: "Boulder",
};

/** A project with its totals. */
export const sammons: Source = {
  key: "sammons-gather",
  author: "Anne Sammons",
  title: "Gather Placemats, Schacht Spindle",
  year: "undated",
  place: "Boulder",
};

/** A weaver and writer on her projects. */
export const durhamWeaver: Source = {
  key: "durham-weaver",
  author: "Susan J. Foulkes",
  title: "Durham Weaver",
  year: "2014 to 2023",
  place: "online",
};

/** A weaver works a warp through. */
export const measuredThreads: Source = {
  key: "measured-threads",
  author: "measuredthreads",
  title: "Project notes",
  year: "undated",
  place: "online",
};

/** A project with its width. */
export const luncheon2019: Source = {
  key: "schacht-2019",
  author: "Schacht Spindle",
  title: "Newsletter, May 2019: luncheon napkin fabric",
  year: "2019",
  place: "Boulder",
};

/** A weaver on what went wrong. */
export const fiberGeekery: Source = {
  key: "fiber-geekery-2011",
  author: "Fiber Geekery",
  title: "Calculate Twice, Weave Once",
  year: "2011",
  place: "online",
};

/** A mill example of ends, tape length and hanks. */
export const textilecalculation: Source = {
  key: "textilecalculation-ends",
  author: "textilecalculation",
  title: "Calculation of the total quantity of warp",
  year: "undated",
  place: "online",
};

/** A beginners page with a worked project. */
export const allFiberArts: Source = {
  key: "all-fiber-arts",
  author: "All Fiber Arts",
  title: "Beginner weaving: calculate yarn",
  year: "undated",
  place: "online",
};

/** The magazine answers readers on sleying. */
export const handwovenQuestion: Source = {
  key: "handwoven-sleying",
  author: "Handwoven",
  title: "Sleying the Reed for Specific Setts; 8/2 cotton in an 8-dent reed",
  year: "undated",
  place: "Fort Collins",
};

/** A weaver finds that the wrong reed was used. */
export const dustBunnies: Source = {
  key: "dust-bunnies-2013",
  author: "Dust Bunnies Under My Loom",
  title: "8 Shaft Pinwheel Pattern",
  year: "2013",
  place: "online",
};

/** A weaver gives figures for rug warps. */
export const mallikerta: Source = {
  key: "mallikerta",
  author: "Mallikerta",
  title: "Pohja-en-4 and Colourful checks",
  year: "undated",
  place: "mallikerta.fi",
};

/** An article that works yarn diameters by the 0.9 rule. */
export const settArticle: Source = {
  key: "sett-article",
  author: "author not shown",
  title: "Sett by diameters, an article on yarn diameters",
  year: "undated",
  place: "online",
};

/** A page that works 8/2 cotton through. */
export const settPage: Source = {
  key: "sett-single-page",
  author: "author not shown",
  title: "Maximum sett from diameters",
  year: "undated",
  place: "online",
};

/** Notes that follow Ashenhurst, Textile Calculations. */
export const textileNotes: Source = {
  key: "textile-notes",
  author: "My Textile Notes",
  title: "Yarn diameter, after Ashenhurst",
  year: "undated",
  place: "online",
};

/** A weaver on a napkin warp. */
export const pegotty2009: Source = {
  key: "pegotty-2009",
  author: "Pegotty",
  title: "Napkins, finally",
  year: "2009",
  place: "online",
};

/** The standard tables of equivalent yarn numbers. */
export const astmD2260: Source = {
  key: "astm-d2260",
  author: "ASTM",
  title: "D2260-03(2013) Standard Tables of Conversion Factors and Equivalent Yarn Numbers",
  year: "2013",
  place: "West Conshohocken",
};

/** The customs nomenclature, which gives metric counts beside decitex. */
export const wcoNomenclature: Source = {
  key: "wco-5205",
  author: "World Customs Organization",
  title: "Harmonized System Nomenclature, heading 52.05",
  year: "undated",
  place: "Brussels",
};

/** An examination question bank. */
export const cdquestions: Source = {
  key: "cdquestions",
  author: "cdquestions",
  title: "Examination questions: folded yarn",
  year: "undated",
  place: "online",
};

/** A weaver plans with two percentages of ten. */
export const goodOnes: Source = {
  key: "tt820-2019",
  author: "tt820",
  title: "Good ones, weaving journal",
  year: "2019",
  place: "online",
};

/** A weaver works warp and weft through. */
export const starweaving: Source = {
  key: "starweaving-2012",
  author: "starweaving",
  title: "Calculating warp and weft",
  year: "2012",
  place: "online",
};

/** A weaver on thrums. */
export const caws: Source = {
  key: "365-caws",
  author: "365 Caws",
  title: "Thrums",
  year: "undated",
  place: "online",
};

/** A weaver on winding a fine warp. */
export const materialThoughts: Source = {
  key: "material-thoughts",
  author: "Material Thoughts",
  title: "Warp Speed",
  year: "undated",
  place: "online",
};
