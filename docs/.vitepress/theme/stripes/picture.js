// The picture of an order: the fill of each colour by its name, and the drawing in colours, hatching or letters.
import { computed, ref } from "vue";
import { hatchedSvg, letteredSvg, stripesSvg } from "@thrum/stripes";

const NAPKINS = { natural: "#e8dcc0", indigo: "#2b3a6b", madder: "#a4392f" };
const KNOWN = {
  white: "#ffffff",
  black: "#1d1d1d",
  red: "#b3261e",
  blue: "#2c4d9e",
  green: "#3f6b3a",
  yellow: "#e3b93a",
  brown: "#6b4a2f",
  grey: "#8a8a86",
  pink: "#d98a9b",
  orange: "#cf6a28",
};
const SPARE = ["#7d5a9b", "#3b7f86", "#9b7a3b", "#b0527a", "#54708f", "#6d7d3a", "#a05f3c", "#4a4a63"];
export const DRAWN_IN = { colours: stripesSvg, hatching: hatchedSvg, letters: letteredSvg };

/** The picture of the order shown; a fill chosen by the reader goes before one known by name. */
export function usePicture(shown) {
  const drawnIn = ref("colours");
  const chosen = ref({});
  const fillOf = (name) =>
    chosen.value[name] ??
    NAPKINS[name] ??
    KNOWN[name.toLowerCase()] ??
    SPARE[Math.max(0, shown.value.names.indexOf(name)) % SPARE.length];
  const choose = (name, fill) => (chosen.value = { ...chosen.value, [name]: fill });

  const svg = computed(() => {
    const { names, sequence, total } = shown.value;
    const paintOf = (name) => ({ fill: fillOf(name), letter: name.slice(0, 1).toUpperCase(), name });
    const paints = new Map(names.map((name) => [name, paintOf(name)]));
    const height = Math.max(1, Math.round(total / 5));
    const description = `${total} ends from left to right`;
    try {
      return DRAWN_IN[drawnIn.value]({ sequence, paints, height, id: "warp", title: "The warp to scale", description });
    } catch (error) {
      if (error.name !== "StripeError") throw error;
      return "";
    }
  });
  return { drawnIn, fillOf, choose, svg };
}
