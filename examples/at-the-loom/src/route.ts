import { computed, ref } from "vue";
import type { ComputedRef } from "vue";
import { SCREENS } from "./screens.js";
import type { Screen } from "./screens.js";

/** What the address after # says. */
export interface Route {
  readonly screen: Screen;
  /** Of the job; null on the shelf. */
  readonly job: string | null;
  /** Place in the work, where nothing can be kept: `tie.9.0`. */
  readonly at: string | null;
  /** The packed job of a link, without its `j1.`. */
  readonly link: string | null;
}

const isScreen = (text: string): text is Screen => text in SCREENS;

/** Reads `#tie/JOB&at=tie.9.0`; what is no screen is the shelf. */
function routeOf(hash: string): Route {
  const [place = "", ...rest] = hash.replace(/^#/u, "").split("&");
  const at = rest.find((part) => part.startsWith("at="))?.slice(3) ?? null;
  if (place.startsWith("j1.")) return { screen: "link", job: null, at, link: place.slice(3) };
  if (place === "napkins") return { screen: "plan", job: "napkins", at, link: null };
  const [screen = "", job] = place.split("/");
  if (!isScreen(screen)) return { screen: "shelf", job: null, at: null, link: null };
  return { screen, job: job === undefined || job === "" ? null : decodeURIComponent(job), at, link: null };
}

export function hashOf(screen: Screen, job: string | null = null): string {
  return job === null ? `#${screen}` : `#${screen}/${encodeURIComponent(job)}`;
}

const hash = ref(location.hash);
addEventListener("hashchange", () => {
  hash.value = location.hash;
});

export const route: ComputedRef<Route> = computed(() => routeOf(hash.value));

export function go(screen: Screen, job: string | null = null): void {
  location.hash = hashOf(screen, job);
}

/** As `go`, but the way back does not lead here. */
export function goInstead(screen: Screen, job: string | null = null): void {
  location.replace(hashOf(screen, job));
}

/** Writes the place in the work into the address, for a device that keeps nothing. */
export function noteAt(at: string): void {
  const [place = ""] = location.hash.split("&");
  history.replaceState(null, "", `${place}&at=${at}`);
}
