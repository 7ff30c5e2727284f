import type { Source } from "@thrum/maths";

/** A weaving magazine on tying in front of the reed, and on the beam that rolled back. */
export const notesFromTheFell: Source = {
  key: "notes-from-the-fell",
  author: "Handwoven",
  title: "Notes from the Fell: tying a new warp to an existing one",
  year: "undated",
  place: "online",
};
