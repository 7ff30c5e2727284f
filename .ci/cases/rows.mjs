// What the scripts over the cited cases share.

/** A published case was read in its source and has a printed answer there. */
export const isPublished = ({ status, prints }) => status === "read" && prints !== "";
