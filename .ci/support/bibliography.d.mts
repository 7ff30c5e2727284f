import type { CitedSource } from "./cited.js";

type Item = Readonly<Record<string, unknown>>;

/** A source as it is told; its year and its place are undefined where the bibliography lacks them. */
type ToldSource = Omit<CitedSource, "year" | "place"> & Readonly<Record<"year" | "place", string | undefined>>;

export const bibliography: readonly Item[];
export function nameOf(key: string): string;
export function sourceOf(item: Item): ToldSource;
export function source(key: string): CitedSource;
export function namedIn(tests: boolean): ReadonlySet<string>;
