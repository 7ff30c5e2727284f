/** What the screens at the loom ask of a plan: each takes plain data and gives plain data. */
export const loomViews = {};
