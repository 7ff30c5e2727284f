import { computed, ref } from "vue";
import type { ComputedRef } from "vue";
import { SCREENS } from "./screens.js";
import type { Screen } from "./screens.js";
import { isExample } from "./draft/examples.js";

/** What the address after # says. */
export interface Route {
  readonly screen: Screen;
  /** Of the job; null on the shelf. */
  readonly job: string | null;
  /** Place in the work, where nothing can be kept: `tie.9.0`. */
  readonly at: string | null;
  /** The packed job of a link, without its `j1.`. */
  readonly link: string | null;
  /** The number of the act at that place, and the packed job, for a device that keeps nothing. */
  readonly seq: number;
  readonly carried: string | null;
}

const isScreen = (text: string): text is Screen => text in SCREENS;

/** Reads `#tie/JOB&at=tie.9.0&seq=12&j1=…`; what is no screen is the shelf. */
function routeOf(hash: string): Route {
  const [place = "", ...rest] = hash.replace(/^#/u, "").split("&");
  const part = (name: string): string | null =>
    rest.find((one) => one.startsWith(`${name}=`))?.slice(name.length + 1) ?? null;
  const own = { at: part("at"), seq: Number(part("seq") ?? 0) || 0, carried: part("j1"), link: null };
  if (place.startsWith("j1.")) return { ...own, screen: "link", job: null, link: place.slice(3) };
  if (isExample(place)) return { ...own, screen: "plan", job: place };
  const [screen = "", job] = place.split("/");
  if (!isScreen(screen)) return { ...own, screen: "shelf", job: null, at: null };
  return { ...own, screen, job: job === undefined || job === "" ? null : decodeURIComponent(job) };
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

/** Writes the place in the work into the address, for a device that keeps nothing; with the job where that is not kept. */
export function noteAt(at: string, seq: number, packed: string | null): void {
  const [place = ""] = location.hash.split("&");
  const job = packed === null ? "" : `&j1=${packed}`;
  history.replaceState(null, "", `${place}&at=${at}&seq=${String(seq)}${job}`);
}
