// Written by pnpm generate, from docs/bibliography.json.
import type { Source } from "../engine/formula/index.js";

export const alessandrinaCounts: Source = {
  key: "alessandrina-counts",
  author: "alessandrina.com",
  title: "Class notes on yarn count",
  year: "undated",
  place: "alessandrina.com",
};
export const allFiberArts: Source = {
  key: "all-fiber-arts",
  author: "All Fiber Arts",
  title: "Beginner weaving: calculate yarn",
  year: "undated",
  place: "allfiberarts.com",
};
export const ashenhurstCurvature: Source = {
  key: "ashenhurst-curvature",
  author: "Thomas R. Ashenhurst",
  title: "the curvature theory of setts, recalled",
  year: "undated",
  place: "place not shown",
};
export const astmD1909: Source = {
  key: "astm-d1909",
  author: "ASTM",
  title: "D1909, Standard Table of Commercial Moisture Regains",
  year: "2013",
  place: "West Conshohocken",
};
export const astmD2260: Source = {
  key: "astm-d2260",
  author: "ASTM",
  title: "D2260-03(2013) Standard Tables of Conversion Factors and Equivalent Yarn Numbers",
  year: "2013",
  place: "West Conshohocken",
};
export const avlHomeLoom: Source = {
  key: "avl-home-loom",
  author: "AVL Looms",
  title: "Home Loom, owner's manual, p. 6-4",
  year: "undated",
  place: "online",
};
export const baeuerlicheLeinenweberei: Source = {
  key: "baeuerliche-leinenweberei",
  author: "subtitles of a film of a past craft",
  title: "Bäuerliche Leinenweberei 3: Aufbäumen, Anknüpfen und Schlichten der Webkette",
  year: "undated",
  place: "Hunsrück",
};
export const balasubramanianCloth: Source = {
  key: "balasubramanian-cloth",
  author: "N. Balasubramanian",
  title: "Yarn and cloth: Fabric Geometry",
  year: "undated",
  place: "business.vsnl.com",
};
export const bastelfrau: Source = {
  key: "bastelfrau",
  author: "Bastelfrau",
  title: "Die Kette: Berechnung",
  year: "undated",
  place: "bastelfrau.de",
};
export const bergdala: Source = {
  key: "bergdala",
  author: "Bergdala Spinnhus, on N. von Engeström, Praktisk vävbok (1896)",
  title: "Att läsa äldre vävlitteratur",
  year: "undated",
  place: "Bergdala",
};
export const brinton1919: Source = {
  key: "brinton-1919",
  author: "Reginald S. Brinton",
  title: "Carpets",
  year: "1919",
  place: "London",
};
export const brooks1892: Source = {
  key: "brooks-1892",
  author: "C. P. Brooks",
  title: "Cotton Manufacturing",
  year: "1892",
  place: "Blackburn",
};
export const caws2023: Source = {
  key: "caws-2023",
  author: "365 Caws",
  title: "What Is Loom Waste?",
  year: "2023",
  place: "365caws.blogspot.com",
};
export const cawsThrums2023: Source = {
  key: "caws-thrums-2023",
  author: "365 Caws",
  title: "Up to My Eyeballs in Thrums",
  year: "2023",
  place: "365caws.blogspot.com",
};
export const clothQuantities: Source = {
  key: "cloth-quantities",
  author: "textilecalculations.com",
  title: "Calculation of total quantity of materials in a piece of cloth",
  year: "undated",
  place: "textilecalculations.com",
};
export const cnch2016: Source = {
  key: "cnch-2016",
  author: "Conference of Northern California Handweavers",
  title: "Ratios, Rationale, and Rate of Shrinkage, CNCHnet",
  year: "2016",
  place: "California",
};
export const coverFactor: Source = {
  key: "cover-factor",
  author: "author not shown",
  title: "Cover Factor, Part 1",
  year: "undated",
  place: "id.scribd.com",
};
export const creativeThreadsWeft: Source = {
  key: "creative-threads-weft",
  author: "Creative Threads",
  title: "Calculating weft yarn quantity",
  year: "undated",
  place: "creative-threads.co.uk",
};
export const cupOnTheBus2018: Source = {
  key: "cup-on-the-bus-2018",
  author: "cuponthebus",
  title: "Arithmetic",
  year: "2018",
  place: "cuponthebus.blogspot.com",
};
export const davis1920: Source = {
  key: "davis-1920",
  author: "William Davis",
  title: "Hosiery Manufacture",
  year: "1920",
  place: "London",
};
export const durhamWeaver: Source = {
  key: "durham-weaver",
  author: "Susan J. Foulkes",
  title: "Durham Weaver",
  year: "2014 to 2023",
  place: "durhamweaver64.blogspot.com",
};
export const encyclopedie1765: Source = {
  key: "encyclopedie-1765",
  author: "Diderot and d’Alembert (editors)",
  title: "Encyclopédie, vols. 15 and 16",
  year: "1765",
  place: "Paris",
};
export const euFibreNames: Source = {
  key: "eu-fibre-names",
  author: "European Union",
  title: "Regulation (EU) 1007/2011 on textile fibre names",
  year: "2011",
  place: "Brussels",
};
export const fabricWeightGsm: Source = {
  key: "fabric-weight-gsm",
  author: "textilecalculations.com",
  title: "Fabric weight calculation (GSM)",
  year: "undated",
  place: "textilecalculations.com",
};
export const fry2024: Source = {
  key: "fry-2024",
  author: "Laura Fry",
  title: "Step by step",
  year: "2024",
  place: "laurasloom.blogspot.com",
};
export const gateTextile: Source = {
  key: "gate-textile",
  author: "GATE examination, textile engineering",
  title: "Questions with solutions by textiletriangle.com",
  year: "1992 to 2022",
  place: "textiletriangle.com",
};
export const gistYarn: Source = {
  key: "gist-yarn",
  author: "Gist Yarn",
  title: "How to Calculate and Adjust Loom Waste",
  year: "undated",
  place: "gistyarn.com",
};
export const handwovenPlanning: Source = {
  key: "handwoven-planning",
  author: "Handwoven",
  title: "Planning a Weaving Project, part 3",
  year: "undated",
  place: "handwovenmagazine.com",
};
export const horsensVaevekreds: Source = {
  key: "horsens-vaevekreds",
  author: "Horsens Vævekreds",
  title: "Hvordan beregner man garnforbruget til tre vævede viskestykker",
  year: "undated",
  place: "Horsens",
};
export const hossen2015: Source = {
  key: "hossen-2015",
  author: "S. M. Hossen Uzzal",
  title: "Calculate Crimp Percentage of Woven Fabric",
  year: "2015",
  place: "textilecalculation.blogspot.com",
};
export const hsluFadendichte: Source = {
  key: "hslu-fadendichte",
  author: "Hochschule Luzern, textile workshop",
  title: "Ermitteln der Fadendichte",
  year: "undated",
  place: "Lucerne",
};
export const islamInvoiceMass: Source = {
  key: "islam-invoice-mass",
  author: "M. Islam",
  title: "Calculation of correct invoice mass",
  year: "2015",
  place: "textilecalculation.blogspot.com",
};
export const iso1139: Source = {
  key: "iso-1139",
  author: "ISO",
  title: "ISO 1139, Designation of yarns",
  year: "1973",
  place: "Geneva",
};
export const leigh2023: Source = {
  key: "leigh-2023",
  author: "Leigh",
  title: "Leigh's Fiber Journal, November",
  year: "2023",
  place: "leighsfiberjournal.blogspot.com",
};
export const notesFromTheFell: Source = {
  key: "notes-from-the-fell",
  author: "Handwoven",
  title: "Notes from the Fell: tying a new warp to an existing one",
  year: "undated",
  place: "handwovenmagazine.com",
};
export const oddWeavings: Source = {
  key: "odd-weavings",
  author: "oddweavings",
  title: "Old wooden reeds",
  year: "2010",
  place: "oddweavings.blogspot.com",
};
export const osterkampAshenhurst: Source = {
  key: "osterkamp-ashenhurst",
  author: "Peggy Osterkamp",
  title: "Weaving tip: Ashenhurst’s Rule (also in her book Winding a Warp & Using a Paddle)",
  year: "undated",
  place: "peggyosterkamp.com",
};
export const osterkampSettRevisited: Source = {
  key: "osterkamp-sett-revisited",
  author: "Peggy Osterkamp",
  title: "Sett revisited",
  year: "2023",
  place: "peggyosterkamp.com",
};
export const osterkampShrinkage: Source = {
  key: "osterkamp-shrinkage",
  author: "Peggy Osterkamp",
  title: "Weaving tips: how to allow for shrinkage (from her Book 3)",
  year: "undated",
  place: "peggyosterkamp.com",
};
export const quiltingClimber2017: Source = {
  key: "quilting-climber-2017",
  author: "quiltingclimber",
  title: "Grist and using Ashenhurst’s Rule",
  year: "2017",
  place: "quiltingclimber.blogspot.com",
};
export const reedAirSpace: Source = {
  key: "reed-air-space",
  author: "Collegedunia",
  title: "Recommended percentage of air space in reeds",
  year: "undated",
  place: "cdquestions.com",
};
export const roberts1912: Source = {
  key: "roberts-1912",
  author: "Thomas Roberts",
  title: "Tappet and Dobby Looms: Their Mechanism and Management",
  year: "1912",
  place: "Manchester",
};
export const settSinglePage: Source = {
  key: "sett-single-page",
  author: "author not shown",
  title: "Maximum sett from diameters",
  year: "undated",
  place: "online",
};
export const settSystems2014: Source = {
  key: "sett-systems-2014",
  author: "author not shown",
  title: "Dictionary of the English textile terms, entry Sett Systems",
  year: "2014",
  place: "textile_terms.en-academic.com",
};
export const silkWool2016: Source = {
  key: "silk-wool-2016",
  author: "LynneSS",
  title: "Silk-wool fabric: measuring the yarn",
  year: "2016",
  place: "github.com",
};
export const sizesBeer: Source = {
  key: "sizes-beer",
  author: "sizes.com",
  title: "beer (unit of warp threads)",
  year: "undated",
  place: "sizes.com",
};
export const sizingProblems: Source = {
  key: "sizing-problems",
  author: "author not shown",
  title: "Mathematical Problems and Solutions of Sizing in Textile Weaving",
  year: "undated",
  place: "textiletutorials.com",
};
export const sleepingDog2006: Source = {
  key: "sleeping-dog-2006",
  author: "Sleeping Dog Studios",
  title: "Towel 6: 8-shaft waffle weave",
  year: "2006",
  place: "sleepingdogstudios.blogspot.com",
};
export const sparksearcherBalanced: Source = {
  key: "sparksearcher-balanced",
  author: "sparksearcher",
  title: "Weaving Calculations for Balanced Weave",
  year: "undated",
  place: "sparksearcher.livejournal.com",
};
export const sponsEncyclopaedia: Source = {
  key: "spons-encyclopaedia",
  author: "Spons' Encyclopaedia",
  title: "Jute Manufactures",
  year: "19th century",
  place: "London",
};
export const sunnano: Source = {
  key: "sunnano",
  author: "Gunilla, Sunnanö",
  title: "Beräkning av varplängder",
  year: "undated",
  place: "sunnano.se",
};
export const sweetGeorgia: Source = {
  key: "sweet-georgia",
  author: "School of SweetGeorgia",
  title: "Avoid the Wrap: how to use maths to estimate yarn diameter",
  year: "undated",
  place: "schoolofsweetgeorgia.com",
};
export const taylor1909: Source = {
  key: "taylor-1909",
  author: "John T. Taylor",
  title: "Cotton Weaving and Designing, 6th ed.",
  year: "1909",
  place: "London",
};
export const textileNotes: Source = {
  key: "textile-notes",
  author: "My Textile Notes",
  title: "Yarn diameter, after Ashenhurst",
  year: "undated",
  place: "online",
};
export const textileSchoolWeaving: Source = {
  key: "textile-school-weaving",
  author: "Textile School",
  title: "Weaving calculations",
  year: "undated",
  place: "textileschool.com",
};
export const vogl2001: Source = {
  key: "vogl-2001",
  author: "Tom Vogl",
  title: "How to calculate how many yards of warp to put on each spool",
  year: "2001",
  place: "world.std.com",
};
export const warpingPlan2015: Source = {
  key: "warping-plan-2015",
  author: "Mahedi Hasan",
  title: "How to Calculate Warping Plan in Weaving",
  year: "2015",
  place: "online",
};
export const weaveSpinDance2012: Source = {
  key: "weave-spin-dance-2012",
  author: "Weave Spin Dance",
  title: "A winder that turns too long",
  year: "2012",
  place: "weavespindance.blogspot.com",
};
export const weftHanded2010: Source = {
  key: "weft-handed-2010",
  author: "Mary Powell",
  title: "The Weft-Handed Weaver: And I told my teachers they did not need math",
  year: "2010",
  place: "thewefthandedweaver.com",
};
export const wolfensberger1921: Source = {
  key: "wolfensberger-1921",
  author: "Arnold Wolfensberger",
  title: "Theory of Silk Weaving, 2nd ed.",
  year: "1921",
  place: "New York",
};
export const woodhouseKilgour1921: Source = {
  key: "woodhouse-kilgour-1921",
  author: "T. Woodhouse and P. Kilgour",
  title: "The Jute Industry: From Seed to Finished Cloth",
  year: "1921",
  place: "London",
};
export const wovenFabricCalculation: Source = {
  key: "woven-fabric-calculation",
  author: "author not shown",
  title: "Woven Fabric Calculation",
  year: "undated",
  place: "scribd.com",
};
export const yarnworker: Source = {
  key: "yarnworker",
  author: "Yarnworker",
  title: "Geeking Out: doing a loom waste audit",
  year: "undated",
  place: "yarnworker.com",
};
