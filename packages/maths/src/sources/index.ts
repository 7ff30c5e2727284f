import type { Source } from "../engine/formula/index.js";

export type { Source };

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
  place: "Blackburn",
};

/** William Davis's handbook, for its chapter on yarn counts. */
export const davis1920: Source = {
  key: "davis-1920",
  author: "William Davis",
  title: "Hosiery Manufacture",
  year: "1920",
  place: "London",
};

/** The Conference of Northern California Handweavers on why a shrinkage is divided out and not added. */
export const cnch2016: Source = {
  key: "cnch-2016",
  author: "Conference of Northern California Handweavers",
  title: "Ratios, Rationale, and Rate of Shrinkage, CNCHnet",
  year: "2016",
  place: "California",
};

/** A rule every weaver uses and none was found to have printed first. */
export const commonPractice: Source = {
  key: "common-practice",
  author: "",
  title: "common practice, no source",
  year: "",
  place: "",
};
