import type { Source } from "../engine/formula/index.js";

/** A manual of tappet and dobby looms, whose plans give the width of one warp off the loom in several weaves. */
export const roberts1912: Source = {
  key: "roberts-1912",
  author: "Thomas Roberts",
  title: "Tappet and Dobby Looms: Their Mechanism and Management",
  year: "1912",
  place: "Manchester",
};

/** A dictionary entry on a quilt that takes two beams. */
export const alhambraQuilts2014: Source = {
  key: "alhambra-quilts-2014",
  author: "not named",
  title: "Dictionary of the English textile terms, entry Alhambra Quilts",
  year: "2014",
  place: "en-academic.com",
};

/** A weaver who measured her cloth in the reed and after washing. */
export const carpenter2008: Source = {
  key: "carpenter-2008",
  author: "Margaret Carpenter",
  title: "Towels are done",
  year: "2008",
  place: "online",
};

/** A weaver on how far a rug drew in. */
export const filBoutABout2023: Source = {
  key: "fil-bout-a-bout-2023",
  author: "Le fil bout à bout",
  title: "Embuvage de trame ou retrait de largeur",
  year: "2023",
  place: "online",
};

/** The French encyclopaedia on velvets and their warps. */
export const encyclopedie1765: Source = {
  key: "encyclopedie-1765",
  author: "Diderot and d’Alembert (editors)",
  title: "Encyclopédie, vols. 15 and 16",
  year: "1765",
  place: "Paris",
};

/** A weaver who tied a warp of thrift yarn on before the good one. */
export const kilgus2025: Source = {
  key: "kilgus-2025",
  author: "Kate Kilgus",
  title: "A little experiment with a dummy warp",
  year: "2025",
  place: "online",
};

/** The great dictionary’s quotations on the beer of a reed. */
export const newEnglishDictionaryBeer: Source = {
  key: "new-english-dictionary-beer",
  author: "New English Dictionary, read in a copy",
  title: "entry Beer, sb. 3, quotations 1712 to 1880",
  year: "undated",
  place: "online",
};

/** A dictionary of units on the porter. */
export const sizesPorter: Source = {
  key: "sizes-porter",
  author: "sizes.com",
  title: "porter (unit)",
  year: "undated",
  place: "sizes.com",
};

/** The American guide to the units, read in a published transcription of its table. */
export const nistSp811: Source = {
  key: "nist-sp-811",
  author: "National Institute of Standards and Technology",
  title: "Guide for the Use of the SI, SP 811, appendix B.8",
  year: "2014",
  place: "Gaithersburg",
};

/** The United Nations’ codes for units of measure, read in a public copy. */
export const unRecommendation20: Source = {
  key: "un-recommendation-20",
  author: "UN/CEFACT",
  title: "Recommendation 20, Codes for Units of Measure, version 17.0",
  year: "undated",
  place: "Geneva",
};

/** A dictionary of units on line densities. */
export const dictionaryOfUnits: Source = {
  key: "dictionary-of-units",
  author: "author not shown",
  title: "Dictionary of Units, Line density",
  year: "undated",
  place: "hobbyprojects.com",
};

/** An online encyclopaedia on the reed. */
export const reedEncyclopedia: Source = {
  key: "wikipedia-reed",
  author: "Wikipedia",
  title: "Reed (weaving), Construction",
  year: "undated",
  place: "wikipedia.org",
};

/** A magazine on planning a project. */
export const handwovenPlanning: Source = {
  key: "handwoven-planning",
  author: "Handwoven",
  title: "Planning a Weaving Project, part 3",
  year: "undated",
  place: "online",
};

/** A weaver who measured a waffle weave. */
export const sleepingDog2006: Source = {
  key: "sleeping-dog-2006",
  author: "Sleeping Dog Studios",
  title: "Towel 6: 8-shaft waffle weave",
  year: "2006",
  place: "sleepingdogstudios.blogspot.com",
};

/** A German craft page, after an older manual. */
export const bastelfrau: Source = {
  key: "bastelfrau",
  author: "Bastelfrau",
  title: "Die Kette: Berechnung",
  year: "undated",
  place: "online",
};
