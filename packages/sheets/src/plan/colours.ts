/** Told apart by every common sort of colour vision, in light and dark as well as in hue. */
const COLOURS = ["E8DCC0", "B5432E", "2B4C7E", "D9A441", "7FA36B", "5B3A29", "8FC1D9", "C98BB9"];

/** The colour that stands for the yarn at this place in the plan, from 0. */
export function colourOf(at: number): string {
  return COLOURS[at % COLOURS.length] ?? "FFFFFF";
}
