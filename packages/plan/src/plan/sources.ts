import type { Source } from "@thrum/maths";

/** A weaving magazine on tying in front of the reed, and on the beam that rolled back. */
export const notesFromTheFell: Source = {
  key: "notes-from-the-fell",
  author: "Handwoven",
  title: "Notes from the Fell: tying a new warp to an existing one",
  year: "undated",
  place: "online",
};

/** The owner's manual of a loom on tying behind the heddles. */
export const loomManual: Source = {
  key: "avl-home-loom",
  author: "AVL Looms",
  title: "Home Loom, owner's manual, p. 6-4",
  year: "undated",
  place: "online",
};
