import type { Source } from "../engine/formula/index.js";

/** J. T. Taylor's handbook of cotton weaving; pages are those of the copy read where it prints none. */
export const taylor1909: Source = {
  key: "taylor-1909",
  author: "John T. Taylor",
  title: "Cotton Weaving and Designing, 6th ed.",
  year: "1909",
  place: "London",
};

/** C. P. Brooks's handbook of cotton manufacturing. */
export const brooks1892: Source = {
  key: "brooks-1892",
  author: "C. P. Brooks",
  title: "Cotton Manufacturing",
  year: "1892",
  place: "Blackburn and London",
};

/** William Davis's handbook, for its chapter on yarn counts. */
export const davis1920: Source = {
  key: "davis-1920",
  author: "William Davis",
  title: "Hosiery Manufacture",
  year: "1920",
  place: "London",
};

/** A rule every weaver uses and none was found to have printed first. */
export const commonPractice: Source = {
  key: "common-practice",
  author: "",
  title: "common practice, no source",
  year: "",
  place: "",
};

/** T. F. Bell's book of figured weaving. */
export const bell1895: Source = {
  key: "bell-1895",
  author: "T. F. Bell",
  title: "Jacquard Weaving and Designing",
  year: "1895",
  place: "London",
};

/** A. E. Blanco's dictionary of the piece goods trade. */
export const blanco1917: Source = {
  key: "blanco-1917",
  author: "A. E. Blanco",
  title: "Piece Goods Manual",
  year: "1917",
  place: "Shanghai",
};

/** R. S. Brinton's book of carpets. */
export const brinton1919: Source = {
  key: "brinton-1919",
  author: "Reginald S. Brinton",
  title: "Carpets",
  year: "1919",
  place: "London",
};

/** W. H. Dooley's school book of textiles. */
export const dooley1914: Source = {
  key: "dooley-1914",
  author: "William H. Dooley",
  title: "Textiles for Commercial, Industrial, and Domestic Arts Schools, revised ed.",
  year: "1914",
  place: "Boston",
};

/** A machine maker's catalogue, for its table of wrapping dividends. */
export const howardBullough1909: Source = {
  key: "howard-bullough-1909",
  author: "Howard & Bullough American Machine Company",
  title: "Illustrated Catalogue of Cotton Machinery",
  year: "1909",
  place: "Pawtucket",
};

/** J. Nasmith's book of spinning, for hanks and their weights. */
export const nasmith1890: Source = {
  key: "nasmith-1890",
  author: "Joseph Nasmith",
  title: "Modern Cotton Spinning Machinery",
  year: "1890",
  place: "Manchester",
};

/** A. Wolfensberger's book of silk weaving, with whole dispositions worked out. */
export const wolfensberger1921: Source = {
  key: "wolfensberger-1921",
  author: "Arnold Wolfensberger",
  title: "Theory of Silk Weaving, 2nd ed.",
  year: "1921",
  place: "New York",
};

/** The jute trade, field to cloth. */
export const woodhouseKilgour1921: Source = {
  key: "woodhouse-kilgour-1921",
  author: "T. Woodhouse and P. Kilgour",
  title: "The Jute Industry: From Seed to Finished Cloth",
  year: "1921",
  place: "London",
};

/** An encyclopaedia of manufactures, on jute. */
export const spons: Source = {
  key: "spons-encyclopaedia",
  author: "Spons' Encyclopaedia",
  title: "Jute Manufactures",
  year: "19th century",
  place: "London",
};
