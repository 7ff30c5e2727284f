/** What the screens at the loom say. */
export const loom = {
  notYet: "This page is still to come.",
} as const;
