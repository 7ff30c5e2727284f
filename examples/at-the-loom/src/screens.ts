import type { Component } from "vue";

/** Every screen by the word of it in the address; each is loaded when it is first opened. */
export const SCREENS = {
  shelf: () => import("./screens/Shelf.vue"),
  link: () => import("./screens/Link.vue"),
  plan: () => import("./screens/Plan.vue"),
  edge: () => import("./screens/Edge.vue"),
  sheets: () => import("./screens/Sheets.vue"),
  order: () => import("./screens/Order.vue"),
  stopped: () => import("./screens/Stopped.vue"),
  count: () => import("./screens/Count.vue"),
  wind: () => import("./screens/Wind.vue"),
  cut: () => import("./screens/Steps.vue"),
  lay: () => import("./screens/Steps.vue"),
  tie: () => import("./screens/Tie.vue"),
  left: () => import("./screens/LeftOver.vue"),
  through: () => import("./screens/Steps.vue"),
  shafts: () => import("./screens/Shafts.vue"),
  inches: () => import("./screens/Measures.vue"),
  tape: () => import("./screens/Tape.vue"),
  measures: () => import("./screens/Measures.vue"),
  settings: () => import("./screens/Settings.vue"),
} as const satisfies Record<string, () => Promise<{ default: Component }>>;

export type Screen = keyof typeof SCREENS;
