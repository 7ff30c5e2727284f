/** What the shelf, the plan and the sheets say. */
export const plan = {
  skip: "Skip to the work",
  yourWarps: "Your warps",
} as const;
