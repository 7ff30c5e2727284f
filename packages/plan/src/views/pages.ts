import { costPage } from "./cost-page.js";
import { countPage } from "./count-page.js";
import { cuttingPage } from "./cutting-page.js";
import { firstInchesPage } from "./first-inches-page.js";
import { jobPage } from "./job-page.js";
import { joiningPage } from "./joining-page.js";
import { labelPage } from "./label-page.js";
import { layingPage } from "./laying-page.js";
import { measuresPage } from "./measures-page.js";
import { partnersPage } from "./partners-page.js";
import { recordPage } from "./record-page.js";
import { shedsPage } from "./sheds-page.js";
import { sizesPage } from "./sizes-page.js";
import { stripesPage } from "./stripes-page.js";
import { tapePage } from "./tape-page.js";
import { throughPage } from "./through-page.js";
import type { View } from "./view.js";
import { windingPage } from "./winding-page.js";
import { yarnPage } from "./yarn-page.js";

/** Every page in the order of the loom: counted first, cut after. */
export const VIEWS: readonly View[] = [
  jobPage,
  stripesPage,
  countPage,
  sizesPage,
  yarnPage,
  windingPage,
  cuttingPage,
  layingPage,
  partnersPage,
  joiningPage,
  throughPage,
  shedsPage,
  firstInchesPage,
  tapePage,
  measuresPage,
  costPage,
  labelPage,
  recordPage,
];
