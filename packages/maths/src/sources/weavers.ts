import type { Source } from "../engine/formula/index.js";

/** A chart of 29 sleying orders in nine reeds; its rule is printed the wrong way round. */
export const houseOfWool: Source = {
  key: "house-of-wool",
  author: "House of Wool",
  title: "Reed Substitution Guide",
  year: "undated",
  place: "online",
};

/** A weaving teacher on the chart of sleying orders. */
export const osterkampCharts: Source = {
  key: "osterkamp-charts",
  author: "Peggy Osterkamp",
  title: "Useful information: more charts",
  year: "2023",
  place: "online",
};

/** A question column on sleying orders. */
export const handwovenSpecificSetts: Source = {
  key: "handwoven-specific-setts",
  author: "Handwoven",
  title: "Sleying the Reed for Specific Setts",
  year: "undated",
  place: "handwovenmagazine.com",
};

/** A question column on one sleying order. */
export const handwovenEightDent: Source = {
  key: "handwoven-eight-dent",
  author: "Handwoven",
  title: "8/2 cotton in an 8-dent reed",
  year: "undated",
  place: "handwovenmagazine.com",
};

/** A teaching page with the rule of the sleying chart. */
export const sweetGeorgiaReeds: Source = {
  key: "sweet-georgia-reeds",
  author: "School of SweetGeorgia",
  title: "Reed Substitution Chart",
  year: "undated",
  place: "online",
};

/** A weaver counts her sleying. */
export const blossomMerz2012: Source = {
  key: "blossom-merz-2012",
  author: "Blossom Merz",
  title: "Sanity Checks During Sleying",
  year: "2012",
  place: "blossommerz.blogspot.com",
};

/** A weaver names her sleying order. */
export const lisaKay2013: Source = {
  key: "lisa-kay-2013",
  author: "Lisa Kay Knits",
  title: "Ocean warps and an interlude",
  year: "2013",
  place: "lisakayknits.blogspot.com",
};

/** A weaver counts the heddles of a block draft. */
export const lynneRides2017: Source = {
  key: "lynne-rides-2017",
  author: "Lynne Rides",
  title: "Weaving, the original programming project",
  year: "2017",
  place: "online",
};

/** A column on heddles. */
export const handwovenHeddles2022: Source = {
  key: "handwoven-heddles-2022",
  author: "Handwoven",
  title: "Notes from the Fell: on heddle management",
  year: "2022",
  place: "Handwoven, November and December 2022",
};

/** How to read the measures of an old Swedish book. */
export const bergdala: Source = {
  key: "bergdala",
  author: "Bergdala Spinnhus, on N. von Engeström, Praktisk vävbok (1896)",
  title: "Att läsa äldre vävlitteratur",
  year: "undated",
  place: "Bergdala",
};

/** A weaver spreads a warp in the raddle. */
export const ullgarnet2010: Source = {
  key: "ullgarnet-2010",
  author: "Ullgarnet",
  title: "Lång och rör",
  year: "2010",
  place: "online",
};

/** Old linens measured in inches and in centimetres. */
export const lingRoth1913: Source = {
  key: "ling-roth-1913",
  author: "H. Ling Roth, cloth table by W. W. Midgley",
  title: "Ancient Egyptian and Greek Looms",
  year: "1913",
  place: "Halifax",
};

/** An encyclopaedia on linen. */
export const britannica1911: Source = {
  key: "britannica-1911",
  author: "Encyclopaedia Britannica, 11th ed., vol. 16",
  title: "Linen and Linen Manufactures",
  year: "1911",
  place: "Cambridge",
};

/** A project that leaves dents empty. */
export const spaceSavingMats: Source = {
  key: "space-saving-mats",
  author: "a book of rigid-heddle projects, read in a copy",
  title: "Space-Saving Mats",
  year: "undated",
  place: "online",
};

/** Worked percentages of crimp and take-up. */
export const hossen2015: Source = {
  key: "hossen-2015",
  author: "S. M. Hossen Uzzal",
  title: "Calculate Crimp Percentage of Woven Fabric",
  year: "2015",
  place: "online",
};

/** A weaver measures a sample before and after the wash. */
export const yarnTails2009: Source = {
  key: "yarn-tails-2009",
  author: "Yarn Tails",
  title: "Sample This",
  year: "2009",
  place: "yarn-tails.blogspot.com",
};

/** A weaver plans a runner and mats on one warp. */
export const weaveAway: Source = {
  key: "weave-away",
  author: "Weave Away",
  title: "Placemats",
  year: "undated",
  place: "weave-away.blogspot.com",
};

/** A weaver finds that her winder turns eight inches too long. */
export const weaveSpinDance2012: Source = {
  key: "weave-spin-dance-2012",
  author: "Weave Spin Dance",
  title: "A winder that turns too long",
  year: "2012",
  place: "weavespindance.blogspot.com",
};

/** A trade page works one cloth through. */
export const clothQuantities: Source = {
  key: "cloth-quantities",
  author: "textilecalculations.com",
  title: "Calculation of total quantity of materials in a piece of cloth",
  year: "undated",
  place: "online",
};

/** Worked beams of a mill warp. */
export const warpingPlan2015: Source = {
  key: "warping-plan-2015",
  author: "Mahedi Hasan",
  title: "How to Calculate Warping Plan in Weaving",
  year: "2015",
  place: "online",
};

/** A list of mill formulas with their constants. */
export const fabricProduction2015: Source = {
  key: "fabric-production-2015",
  author: "Rofiquzzaman Raju",
  title: "Calculation of Fabric Production",
  year: "2015",
  place: "online",
};

/** A list of mill formulas with their constants. */
export const textileSchoolWeaving: Source = {
  key: "textile-school-weaving",
  author: "Textile School",
  title: "Weaving calculations",
  year: "undated",
  place: "textileschool.com",
};

/** A teaching page for weft yarn, metric. */
export const creativeThreadsWeft: Source = {
  key: "creative-threads-weft",
  author: "Creative Threads",
  title: "Calculating weft yarn quantity",
  year: "undated",
  place: "creative-threads.co.uk",
};

/** A dictionary of units on the beer. */
export const beerDefinition: Source = {
  key: "sizes-beer",
  author: "sizes.com",
  title: "beer (unit of warp threads)",
  year: "undated",
  place: "sizes.com",
};

/** A project of the same book, with its warp in yards and metres. */
export const stripedFloorCovering: Source = {
  key: "striped-floor-covering",
  author: "a book of rigid-heddle projects, read in a copy",
  title: "Striped floor covering",
  year: "undated",
  place: "online",
};

/** A weaver plans her stripes on squared paper. */
export const gaynes: Source = {
  key: "gaynes",
  author: "Margaret Gaynes",
  title: "Simple Twill Towels, Weaving Projects and Patterns for the 4-Shaft Loom",
  year: "undated",
  place: "F+W Media",
};

/** A teacher of rigid-heddle weaving measures her loom waste. */
export const yarnworker: Source = {
  key: "yarnworker",
  author: "Yarnworker",
  title: "Geeking Out: doing a loom waste audit",
  year: "undated",
  place: "yarnworker.com",
};

/** A weaver on what loom waste is made of. */
export const caws2023: Source = {
  key: "365-caws-2023",
  author: "365 Caws",
  title: "What Is Loom Waste?",
  year: "2023",
  place: "365caws.blogspot.com",
};

/** A weaver on the waste she allows on each of her looms. */
export const cawsThrums2023: Source = {
  key: "365-caws-thrums-2023",
  author: "365 Caws",
  title: "Up to My Eyeballs in Thrums",
  year: "2023",
  place: "365caws.blogspot.com",
};

/** A yarn seller on the loom waste of two patterns. */
export const gistYarn: Source = {
  key: "gist-yarn",
  author: "Gist Yarn",
  title: "How to Calculate and Adjust Loom Waste",
  year: "undated",
  place: "gistyarn.com",
};

/** A weaver's journal that prices a yarn by the ball and by the cone. */
export const leigh2023: Source = {
  key: "leigh-2023",
  author: "Leigh",
  title: "Leigh's Fiber Journal, November",
  year: "2023",
  place: "online",
};

/** A production weaver on the hours in a batch of shawls. */
export const fry2024: Source = {
  key: "fry-2024",
  author: "Laura Fry",
  title: "Step by step",
  year: "2024",
  place: "online",
};

/** A book of rag rugs that counts what one costs. */
export const wheeler1908: Source = {
  key: "wheeler-1908",
  author: "Candace Wheeler",
  title: "How to Make Rugs",
  year: "1908",
  place: "New York",
};

/** A weavers' magazine on tying in front of the reed. */
export const notesFromTheFell: Source = {
  key: "notes-from-the-fell",
  author: "Handwoven",
  title: "Notes from the Fell: tying a new warp to an existing one",
  year: "undated",
  place: "online",
};

/** The owner's manual of a loom on tying behind the heddles. */
export const loomManual: Source = {
  key: "avl-home-loom",
  author: "AVL Looms",
  title: "Home Loom, owner's manual, p. 6-4",
  year: "undated",
  place: "online",
};

/** A weaver on the thrums cut off her looms. */
export const cawsThrums2022: Source = {
  key: "caws-thrums-2022",
  author: "365 Caws",
  title: "Thrums",
  year: "2022",
  place: "online",
};

/** A weaver who measured three warps part by part. */
export const rogueWeaver2025: Source = {
  key: "rogue-weaver-2025",
  author: "The Rogue Weaver",
  title: "Warp Length, Take-up and Waste",
  year: "2025",
  place: "online",
};

/** A maker of looms with a plan for napkins in log cabin. */
export const allenNapery: Source = {
  key: "allen-log-cabin-napery",
  author: "Malynda Allen",
  title: "Log Cabin Napery",
  year: "undated",
  place: "online",
};

/** A weaver on how much yarn to have. */
export const fiberAddict: Source = {
  key: "fiberaddict-yarn",
  author: "fiberaddict",
  title: "Yarn requirements",
  year: "undated",
  place: "online",
};

/** The key of an entrance examination in textile technology, on power-loom reeds. */
export const reedAirSpace: Source = {
  key: "reed-air-space",
  author: "Collegedunia",
  title: "Recommended percentage of air space in reeds",
  year: "undated",
  place: "online",
};

/** A film of farm linen weavers who beam, tie on and size a warp. */
export const leinenweberei: Source = {
  key: "baeuerliche-leinenweberei",
  author: "subtitles of a film of a past craft",
  title: "Bäuerliche Leinenweberei 3: Aufbäumen, Anknüpfen und Schlichten der Webkette",
  year: "undated",
  place: "Hunsrück",
};

/** A mill designer on a very dense warp drawn in by hand. */
export const wovenWords2011: Source = {
  key: "woven-words-2011",
  author: "Woven Words",
  title: "Weaver’s Knot",
  year: "2011",
  place: "online",
};
