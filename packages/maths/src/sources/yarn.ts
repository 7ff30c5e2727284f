import type { Source } from "../engine/formula/index.js";

/** An opening page of lengths and weights, the names of the systems lost. */
export const silkMillGuide: Source = {
  key: "silk-mill-guide-1920",
  author: "Textiles (periodical)",
  title: "Silk Mill Guide",
  year: "1920",
  place: "Boston",
};

/** A dictionary, for the lengths of heer, lea and spindle. */
export const websterDictionary: Source = {
  key: "webster-1913",
  author: "Noah Webster",
  title: "Webster’s Revised Unabridged Dictionary",
  year: "1913",
  place: "Springfield",
};

/** A dictionary, for the three lengths called lea. */
export const polymerDictionary: Source = {
  key: "encyclopedic-dictionary-of-polymers",
  author: "Encyclopedic Dictionary of Polymers, after Kadolph and Langford (2001)",
  title: "entry Lea",
  year: "undated",
  place: "Springer",
};

/** A formula sheet, with jute upside down. */
export const schoolFormulas: Source = {
  key: "textile-school-formulas",
  author: "Textile School",
  title: "Weaving formulas",
  year: "undated",
  place: "textileschool.com",
};

/** The standard of conversions to tex, recalled. */
export const isoTex: Source = {
  key: "iso-1144",
  author: "ISO",
  title: "ISO 1144, Tex system, conversion table",
  year: "1973",
  place: "Geneva",
};

/** The standard of yarn designations, recalled. */
export const isoDesignation: Source = {
  key: "iso-1139",
  author: "ISO",
  title: "ISO 1139, Designation of yarns",
  year: "1973",
  place: "Geneva",
};

/** A consultant’s tables of conversion factors. */
export const balasubramanian: Source = {
  key: "balasubramanian-factors",
  author: "N. Balasubramanian",
  title: "Useful Conversion Factors",
  year: "undated",
  place: "business.vsnl.com",
};

/** The same consultant on the geometry of cloth. */
export const balasubramanianCloth: Source = {
  key: "balasubramanian-cloth",
  author: "N. Balasubramanian",
  title: "Yarn and cloth: Fabric Geometry",
  year: "undated",
  place: "business.vsnl.com",
};

/** A thread maker’s table. */
export const tgeThreads: Source = {
  key: "tge-threads",
  author: "TGE GmbH",
  title: "Conversion table",
  year: "undated",
  place: "tge-gmbh.de",
};

/** A formula sheet of a spinning mill. */
export const spinningSheet: Source = {
  key: "spinning-sheet",
  author: "author not shown",
  title: "TPI TPM, a sheet of spinning formulas",
  year: "undated",
  place: "docx.com.vn",
};

/** A dictionary of units on the ways to number yarn. */
export const sizesYarnNumbers: Source = {
  key: "sizes-yarn-numbers",
  author: "Sizes Inc.",
  title: "Yarn number systems",
  year: "undated",
  place: "sizes.com",
};

/** A newspaper on the numbers of sewing cotton. */
export const threadNumbers1888: Source = {
  key: "thread-numbers-1888",
  author: "a New Zealand newspaper, after the New York Mail and Express",
  title: "How Thread is Numbered",
  year: "1888",
  place: "New Zealand",
};

/** A weaver weighs her yarn. */
export const fiberArtisan2014: Source = {
  key: "fiberartisan-2014",
  author: "fiberartisan",
  title: "February TotM: Yarn",
  year: "2014",
  place: "fiberartisan.blogspot.com",
};

/** The European regulation on fibre names, its worked example. */
export const euFibreNames: Source = {
  key: "eu-1007-2011",
  author: "European Union",
  title: "Regulation (EU) 1007/2011 on textile fibre names",
  year: "2011",
  place: "Brussels",
};

/** The American table of commercial moisture regains. */
export const astmD1909: Source = {
  key: "astm-d1909",
  author: "ASTM",
  title: "D1909, Standard Table of Commercial Moisture Regains",
  year: "2013",
  place: "West Conshohocken",
};

/** Teaching notes on cover, with the diameter of a yarn. */
export const coverFactor: Source = {
  key: "cover-factor",
  author: "author not shown",
  title: "Cover Factor, Part 1",
  year: "undated",
  place: "scribd.com",
};

/** Lecture slides on the geometry of cloth. */
export const fabricGeometry: Source = {
  key: "fabric-geometry",
  author: "author not shown",
  title: "Fabric Geometry, chapter 11",
  year: "undated",
  place: "scribd.com",
};

/** A spinners’ school on diameters without a ruler. */
export const sweetGeorgia: Source = {
  key: "sweet-georgia",
  author: "School of SweetGeorgia",
  title: "Avoid the Wrap: how to use maths to estimate yarn diameter",
  year: "undated",
  place: "schoolofsweetgeorgia.com",
};

/** A weaver compares the constants for diameters. */
export const quiltingClimber2017: Source = {
  key: "quilting-climber-2017",
  author: "quiltingclimber",
  title: "Grist and using Ashenhurst’s Rule",
  year: "2017",
  place: "quiltingclimber.blogspot.com",
};

/** An embroiderer works out the thickness of his threads. */
export const stickgarn2018: Source = {
  key: "stickgarn-2018",
  author: "hajo.me",
  title: "Stickgarn: Fadenstärke in Durchmesser umrechnen",
  year: "2018",
  place: "hajo.me",
};

/** A supplier’s table of yards to the pound. */
export const eugeneTextileCenter: Source = {
  key: "eugene-textile-center-2017",
  author: "Eugene Textile Center",
  title: "Textile Talk Tuesday",
  year: "2017",
  place: "Eugene, Oregon",
};

/** A shop’s page on mercerised cotton. */
export const fibreGarden: Source = {
  key: "fibre-garden",
  author: "The Fibre Garden",
  title: "Mercerised cotton",
  year: "undated",
  place: "fibregarden.ca",
};

/** A weaver reads a label. */
export const lottaStitches2016: Source = {
  key: "a-lotta-stitches-2016",
  author: "A Lotta Stitches",
  title: "Windy",
  year: "2016",
  place: "alottastitches.wordpress.com",
};

/** Samuel Brown’s book of narrow fabrics. */
export const brown1923: Source = {
  key: "brown-1923",
  author: "Samuel Brown",
  title: "Elastic and Non-Elastic Narrow Fabrics",
  year: "1923",
  place: "New York",
};

/** A weaving teacher on wraps and the rule of diameters. */
export const osterkampAshenhurst: Source = {
  key: "osterkamp-ashenhurst",
  author: "Peggy Osterkamp",
  title: "Weaving tip: Ashenhurst’s Rule (also in her book Winding a Warp & Using a Paddle)",
  year: "undated",
  place: "peggyosterkamp.com",
};

/** A teaching page on setts. */
export const creativeThreadsSett: Source = {
  key: "creative-threads-sett",
  author: "Creative Threads",
  title: "Calculating the sett",
  year: "undated",
  place: "creative-threads.co.uk",
};

/** A workshop's page on setts. */
export const hslu: Source = {
  key: "hslu-fadendichte",
  author: "Hochschule Luzern, textile workshop",
  title: "Ermitteln der Fadendichte",
  year: "undated",
  place: "Lucerne",
};
