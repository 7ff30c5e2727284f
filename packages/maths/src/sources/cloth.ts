import type { Source } from "../engine/formula/index.js";

/** A sheet of sums on woven cloth. */
export const wovenCalculation: Source = {
  key: "woven-fabric-calculation",
  author: "author not shown",
  title: "Woven Fabric Calculation",
  year: "undated",
  place: "scribd.com",
};

/** A teacher on shares of the closest sett. */
export const osterkampSettRevisited: Source = {
  key: "osterkamp-sett-revisited",
  author: "Peggy Osterkamp",
  title: "Sett revisited",
  year: "2023",
  place: "peggyosterkamp.com",
};

/** An article on making a cloth heavier. */
export const heavierOrLighter2026: Source = {
  key: "textile-notes-heavier-2026",
  author: "My Textile Notes, after an older textbook",
  title: "Changing yarn count to make cloth heavier or lighter",
  year: "2026",
  place: "mytextilenotes.blogspot.com",
};

/** A weaver’s notes on one project. */
export const silkWool2016: Source = {
  key: "silk-wool-2016",
  author: "LynneSS",
  title: "Silk-wool fabric: measuring the yarn",
  year: "2016",
  place: "github.com/LynneSS",
};

/** An examination question on a jammed cloth. */
export const jammedCloth2025: Source = {
  key: "cdquestions-jam-2025",
  author: "Collegedunia",
  title: "Square jammed plain cotton woven fabric from 10 Ne yarn",
  year: "2025",
  place: "cdquestions.com",
};

/** An examination question on the weight of a cloth. */
export const plainWeaveMass2025: Source = {
  key: "cdquestions-mass-2025",
  author: "Collegedunia",
  title: "Weight of a plain-weave fabric, 30 tex x 20 tex",
  year: "2025",
  place: "cdquestions.com",
};

/** An article on grams to the square metre. */
export const fabricWeight: Source = {
  key: "fabric-weight-gsm",
  author: "textilecalculations.com",
  title: "Fabric weight calculation (GSM)",
  year: "undated",
  place: "textilecalculations.com",
};

/** An article on the weight of a cloth from its construction. */
export const apparelAnalysis2013: Source = {
  key: "apparel-analysis-2013",
  author: "apparel-analysis.blogspot.com",
  title: "How to determine GSM of woven fabric from its construction",
  year: "2013",
  place: "apparel-analysis.blogspot.com",
};

/** A rule recalled; no text of it was found. */
export const curvatureRecalled: Source = {
  key: "ashenhurst-curvature",
  author: "Thomas R. Ashenhurst",
  title: "the curvature theory of setts, recalled",
  year: "text not found",
  place: "not shown",
};

/** An article that gives the two bases of crimp as formulas. */
export const crimpAndTakeUp2015: Source = {
  key: "crimp-and-take-up-2015",
  author: "Raju Tex",
  title: "Relation between crimp % and take-up %",
  year: "2015",
  place: "textilecalculation.blogspot.com",
};

/** A page of formulas in Chinese, with the base named. */
export const weavingShrinkage: Source = {
  key: "mlnxb-weaving-shrinkage",
  author: "mlnxb.com",
  title: "Tightness and weaving-shrinkage formulas (Chinese)",
  year: "undated",
  place: "mlnxb.com",
};

/** A reed maker’s page. */
export const sansyuSizai: Source = {
  key: "sansyu-sizai",
  author: "Sansyu Sizai",
  title: "Calculation method for reed selection",
  year: "undated",
  place: "sansyusizai.com",
};

/** A glossary, for the base of crimp. */
export const crimpGlossary: Source = {
  key: "textileindonesia-crimp",
  author: "textileindonesia.com",
  title: "Crimp",
  year: "undated",
  place: "textileindonesia.com",
};
