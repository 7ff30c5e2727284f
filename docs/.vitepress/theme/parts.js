/** The parts of the site, each a list in the order one reads it; formulas bring their own list with them. */
export const parts = [
  {
    title: "At the loom",
    pages: [
      ["weavers-job.html", "The weaver’s job"],
      ["stripes.html", "Stripes and winding"],
      ["guides/counts.html", "Yarn count converter"],
      ["guides/percent.html", "What a percentage is of"],
      ["guides/rounding.html", "Rounding"],
      ["guides/sheets.html", "The printed sheets"],
      ["guides/progress.html", "Ticking off"],
      ["guides/limits.html", "Limits and safety"],
      ["glossary.html", "Words of the trade"],
    ],
  },
  {
    title: "In a program",
    pages: [
      ["start.html", "Start here"],
      ["guides/app-developer.html", "For app developers"],
      ["guides/spreadsheet.html", "In a spreadsheet"],
      ["guides/notebook.html", "In a notebook"],
      ["guides/stripes.html", "Stripes by program"],
      ["guides/loom.html", "Reed, join and beam by program"],
      ["guides/cloth.html", "From a weave to a cloth by program"],
      ["guides/recipes.html", "Recipes"],
      ["job-file.html", "The job file"],
      ["guides/command.html", "The thrum command"],
      ["turned-round.html", "Formulas turned round"],
      ["guides/reconcile.html", "Numbers that must agree"],
      ["errors/index.html", "Errors"],
      ["guides/upgrade.html", "From one version to the next"],
    ],
  },
  {
    title: "In a class",
    pages: [["guides/teacher.html", "For teachers"]],
  },
  {
    title: "Trust",
    pages: [
      ["trust.html", "What was checked"],
      ["guides/hand-checker.html", "Checking by hand"],
      ["verification.html", "Every published case"],
      ["errata.html", "Where books are wrong"],
      ["printed-mistakes.html", "Mistakes that were printed"],
      ["what-check-sees.html", "What a check can see"],
      ["sources.html", "Sources"],
    ],
  },
];
