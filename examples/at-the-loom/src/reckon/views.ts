// What the worker answers, by name. Screens ask for it through client.ts; only this folder and draft/ import the packages.
import { loomViews } from "./loom-views.js";
import { planViews } from "./plan-views.js";

export const VIEWS = { ...planViews, ...loomViews };

export type Views = typeof VIEWS;
