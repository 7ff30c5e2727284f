import type { Source } from "../engine/formula/index.js";

/** A rule every weaver uses and none was found to have printed first. */
export const commonPractice: Source = {
  key: "common-practice",
  author: "",
  title: "common practice, no source",
  year: "",
  place: "",
};
