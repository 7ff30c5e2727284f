import { bench } from "./bench.js";
import { tying } from "./tying.js";

/** What the screens at the loom say. */
export const loom = { ...bench, ...tying } as const;
