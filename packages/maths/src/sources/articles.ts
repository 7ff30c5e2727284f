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

/** A beginners page with a worked project. */
export const allFiberArts: Source = {
  key: "all-fiber-arts",
  author: "All Fiber Arts",
  title: "Beginner weaving: calculate yarn",
  year: "undated",
  place: "online",
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
  title: "Towels: good ones",
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

/** Worked beam counts of a textile trade page. */
export const beamCount2015: Source = {
  key: "beam-count-2015",
  author: "not named",
  title: "Beam Count Calculation in Warping",
  year: "2015",
  place: "textilecalculation.blogspot.com",
};

/** A trade page on reeds. */
export const reedCalculations2008: Source = {
  key: "reed-calculations-2008",
  author: "not named",
  title: "Reed Calculations",
  year: "2008",
  place: "mytextilenotes.blogspot.com",
};

/** A trade page on reed systems. */
export const reedCount2015: Source = {
  key: "reed-count-2015",
  author: "not named",
  title: "Counting of Reed Count and Heald Count in Weaving",
  year: "2015",
  place: "textilecalculation.blogspot.com",
};

/** A dictionary entry on the sett systems of the English districts. */
export const settSystems2014: Source = {
  key: "sett-systems-2014",
  author: "not named",
  title: "Dictionary of the English textile terms, entry Sett Systems",
  year: "2014",
  place: "en-academic.com",
};

/** Worked weights of sized warps. */
export const sizing2014: Source = {
  key: "sizing-2014",
  author: "not named",
  title: "Mathematical Problems of Sizing in Weaving",
  year: "2014",
  place: "textilecalculation.blogspot.com",
};

/** Worked weights of sized warps. */
export const sizingProblems: Source = {
  key: "sizing-problems",
  author: "not named",
  title: "Mathematical Problems and Solutions of Sizing in Textile Weaving",
  year: "undated",
  place: "textiletutorials.com",
};

/** A worked count from a weighed length. */
export const wrapping2024: Source = {
  key: "wrapping-2024",
  author: "not named",
  title: "Yarn count calculation formula",
  year: "2024",
  place: "textiletipszone.blogspot.com",
};

/** Worked counts from weighed lengths. */
export const yarnCount2015: Source = {
  key: "yarn-count-2015",
  author: "not named",
  title: "How to Determine Yarn Count",
  year: "2015",
  place: "textilecalculation.blogspot.com",
};

/** A warp costed yarn by yarn. */
export const allFiberArtsPricing: Source = {
  key: "all-fiber-arts-pricing",
  author: "All Fiber Arts",
  title: "Pricing Handwovens and Handspun Products",
  year: "undated",
  place: "allfiberarts.com",
};

/** A weaver's log. */
export const allOfMyLives2010: Source = {
  key: "all-of-my-lives-2010",
  author: "All of My Lives",
  title: "Mathilda Mathilda, you grey my hair",
  year: "2010",
  place: "allofmylives.blogspot.com",
};

/** A teaching page for warp yarn, metric. */
export const creativeThreads: Source = {
  key: "creative-threads",
  author: "Creative Threads",
  title: "Calculating warp yarn quantity",
  year: "undated",
  place: "creative-threads.co.uk",
};

/** A weaver's log on sectional warping. */
export const cupOnTheBus2018: Source = {
  key: "cup-on-the-bus-2018",
  author: "cuponthebus",
  title: "Arithmetic",
  year: "2018",
  place: "cuponthebus.blogspot.com",
};

/** A sample of an exchange, with its figures. */
export const franz2021: Source = {
  key: "franz-2021",
  author: "Patty Franz",
  title: "Towel Exchange sample MAFA2021-015",
  year: "2021",
  place: "mafafiber.org",
};

/** Metric reeds and the nearest inch reeds. */
export const handwovenReeds: Source = {
  key: "handwoven-reeds",
  author: "Handwoven",
  title: "Converting Metric Reeds to Inches",
  year: "undated",
  place: "interweave.com",
};

/** A reader's warp, taken apart. */
export const handwovenWarpLength: Source = {
  key: "handwoven-warp-length",
  author: "Handwoven",
  title: "Determining Warp Length",
  year: "2011",
  place: "interweave.com",
};

/** On winding many colours. */
export const handwovenWinding: Source = {
  key: "handwoven-winding",
  author: "Handwoven",
  title: "Winding a Warp with Complex Color Order",
  year: "undated",
  place: "interweave.com",
};

/** A Danish weavers' guild's worked plan. */
export const horsensVaevekreds: Source = {
  key: "horsens-vaevekreds",
  author: "Horsens Vævekreds",
  title: "Hvordan beregner man garnforbruget til tre vævede viskestykker",
  year: "undated",
  place: "Horsens",
};

/** Canadian notes on weaving. */
export const marissa: Source = {
  key: "marissa",
  author: "Marissa",
  title: "Métier à tisser: fils et dessins",
  year: "undated",
  place: "marissa1843.batcave.net",
};

/** A weaver's log. */
export const notFibonacci2020: Source = {
  key: "not-fibonacci-2020",
  author: "tt820",
  title: "Not Fibonacci Striped Towels",
  year: "2020",
  place: "tt820.blogspot.com",
};

/** A weaver's log. */
export const projectParade2017: Source = {
  key: "project-parade-2017",
  author: "Project Parade",
  title: "Scarf Project!",
  year: "2017",
  place: "projectparade.blogspot.com",
};

/** A forum's question on take-up. */
export const schoolOfWeaving: Source = {
  key: "school-of-weaving",
  author: "School of Weaving forum",
  title: "Take-up and shrinkage vs woven length on the loom",
  year: "undated",
  place: "schoolofweaving.tv",
};

/** A Swedish teaching page. */
export const sunnano: Source = {
  key: "sunnano",
  author: "Gunilla, Sunnanö",
  title: "Beräkning av varplängder",
  year: "undated",
  place: "sunnano.se",
};

/** Tables of Roth and Schulz (1993), as a weaver quotes them. */
export const sweatyKnitter2015: Source = {
  key: "sweaty-knitter-2015",
  author: "Sweaty Knitter, after Roth and Schulz",
  title: "What Are Those Numbers?",
  year: "2015",
  place: "sweatyknitter.wordpress.com",
};

/** A teaching page. */
export const tygartLake: Source = {
  key: "tygart-lake",
  author: "Tygart Lake Fiber Arts",
  title: "Calculating Warp",
  year: "undated",
  place: "tygartlakefiberarts.com",
};

/** Yards a spool for sectional warping. */
export const vogl2001: Source = {
  key: "vogl-2001",
  author: "Tom Vogl",
  title: "How to calculate how many yards of warp to put on each spool",
  year: "2001",
  place: "world.std.com",
};

/** Napkins in blocks on a rigid heddle, with their ends counted. */
export const trapunto2012: Source = {
  key: "trapunto-2012",
  author: "Trapunto",
  title: "Eternity Napkins",
  year: "2012",
  place: "trapunto.wordpress.com",
};

/** A weaver's log of her first napkins, every colour weighed. */
export const zaldoGrace2019: Source = {
  key: "zaldograce-2019",
  author: "ZaldoGrace",
  title: "My First Napkins, project page",
  year: "2019",
  place: "ravelry.com",
};

/** Worked problems on moisture regain and invoice mass. */
export const islam: Source = {
  key: "islam-invoice-mass",
  author: "M. Islam",
  title: "Calculation of correct invoice mass",
  year: "undated",
  place: "online",
};

/** A table of count conversions to tex. */
export const countTable: Source = {
  key: "count-conversion-tex",
  author: "textile article site",
  title: "Count conversion to tex",
  year: "undated",
  place: "online",
};

/** A list of count systems. */
export const countSystems: Source = {
  key: "count-systems-article",
  author: "textile article site",
  title: "Different yarn count systems",
  year: "undated",
  place: "online",
};

/** A dictionary of units. */
export const sizes: Source = {
  key: "sizes-typp",
  author: "Sizes Inc.",
  title: "typp",
  year: "undated",
  place: "sizes.com",
};

/** The American course on calculations. */
export const brooksWoollen: Source = {
  key: "brooks-woollen-calculations",
  author: "C. P. Brooks",
  title: "Calculations, Part IV, woollen counts",
  year: "undated",
  place: "American School of Correspondence",
};

/** A trade-theory manual. */
export const shawlWeaving: Source = {
  key: "shawl-weaving-artisan",
  author: "author not shown",
  title: "Shawl Weaving Artisan, trade theory",
  year: "undated",
  place: "India",
};

/** A dictionary with dated quotations. */
export const scottishDictionary: Source = {
  key: "scottish-national-dictionary",
  author: "Scottish National Dictionary",
  title: "Porter; Hunder",
  year: "undated",
  place: "Edinburgh",
};

/** A weaver measures old reeds. */
export const oddWeavings: Source = {
  key: "odd-weavings",
  author: "oddweavings",
  title: "Old wooden reeds",
  year: "undated",
  place: "oddweavings.blogspot.com",
};

/** A weavers' guild on yarn counts. */
export const centralOhio: Source = {
  key: "central-ohio-weavers",
  author: "Central Ohio Weavers' Guild",
  title: "Yarn count note",
  year: "undated",
  place: "Ohio",
};
