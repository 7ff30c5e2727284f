import { jobPage } from "./job-page.js";
import { stripesPage } from "./stripes-page.js";
import { sizesPage } from "./sizes-page.js";
import { yarnPage } from "./yarn-page.js";
import type { View } from "./view.js";

/** Every page in the order of the loom. */
export const VIEWS: readonly View[] = [jobPage, stripesPage, sizesPage, yarnPage];
